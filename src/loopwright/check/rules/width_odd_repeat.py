"""width-odd-repeat: the stated width falls between the widths that whole repeats give."""

from __future__ import annotations

from collections.abc import Iterator
from math import ceil, floor

from loopwright.check.context import Context, count_of, in_size, listed
from loopwright.check.rule import Rule
from loopwright.check.widths import is_straight, repeat_of
from loopwright.count.affine import CountSet
from loopwright.count.measure import width_gauge, width_of
from loopwright.count.walk import Walk
from loopwright.facts.loops import rule_of_thumb
from loopwright.model.pattern import Gauge, Piece
from loopwright.notation.quantity import Quantity
from loopwright.problem import ADVICE, Problem
from loopwright.record import dataclass

_TRIFLE = 10.0
"""Millimetres that no width of a hand-knit fabric is stated to."""


@dataclass(frozen=True, slots=True)
class _Between:
    """A size's stated width in mm, the counts below and above it that the rows take (0: none
    below), the stitches of a repeat, and the nearer of the two."""

    size: int
    said: float
    low: int
    high: int
    repeat: int
    nearest: int


def check(context: Context) -> Iterator[Problem]:
    pattern = context.pattern
    for number, piece in enumerate(pattern.pieces):
        measure = piece.width or (pattern.width if number == 0 else None)
        gauge = width_gauge(pattern, piece)
        if measure is None or measure.unit is None or gauge is None or gauge.over.unit is None:
            continue
        if gauge.stitches <= 0 or len(measure.values) not in (1, len(context.sizes)):
            continue
        found = [
            one
            for walk in context.walks_of(piece)
            if (one := _between(context, walk, measure, gauge)) is not None
        ]
        yield from _check(context, piece, measure, gauge, found)


def _between(context: Context, walk: Walk, measure: Quantity, gauge: Gauge) -> _Between | None:
    if not walk.sound or walk.cast_on is None or not is_straight(walk):
        return None
    repeat, free = repeat_of(walk, context.tapes)
    if not free or repeat < 2:
        return None
    counts = CountSet(walk.cast_on, repeat, 1)
    said = measure.mm(walk.size)
    wanted = said * gauge.stitches / gauge.over.mm()
    low, high = counts.below(floor(wanted + 1e-9)) or 0, counts.above(ceil(wanted - 1e-9))
    nearest = counts.nearest(wanted)
    if high is None or nearest is None or walk.cast_on not in (low, high):
        return None  # another count was chosen: that is for size-off
    return _Between(walk.size, said, low, high, counts.modulus, nearest)


def _check(
    context: Context, piece: Piece, measure: Quantity, gauge: Gauge, found: list[_Between]
) -> Iterator[Problem]:
    name = piece.name.text
    same: dict[int, list[_Between]] = {}
    for one in found:
        same.setdefault(one.nearest, []).append(one)
    for count, sizes in same.items():
        if len({one.said for one in sizes}) < 2:
            continue
        names = listed(context.sizes[one.size] for one in sizes)
        repeat = sizes[0].repeat
        yield _problem(
            context,
            measure,
            "two widths come to the same count",
            f"Sizes {names} of {name} are to have different widths, but a repeat of "
            f"{count_of(repeat, 'stitch')} is {_cm(width_of(gauge, repeat), measure)} wide at the "
            f"gauge, and {count_of(count, 'stitch')} are the nearest count for each of them.",
            "state widths that lie whole repeats apart, or choose a smaller repeat for these "
            "sizes.",
            sizes,
        )
        return
    bear = rule_of_thumb("repeat against width").high
    poor = [
        one
        for one in found
        if min(abs(width_of(gauge, n) - one.said) for n in (one.low, one.high))
        > max(bear * one.said, _TRIFLE)
    ]
    if not poor:
        return
    worst = max(poor, key=lambda one: abs(width_of(gauge, one.nearest) - one.said) / one.said)
    near = listed(
        (
            f"{count_of(n, 'stitch')} ({_cm(width_of(gauge, n), measure)})"
            for n in (worst.low, worst.high)
            if n > 0
        ),
        "or",
    )
    yield _problem(
        context,
        measure,
        "the width is no whole number of repeats",
        f"A width of {_cm(worst.said, measure)} falls between the counts that {name} takes"
        f"{in_size(context, worst.size)}: a repeat has {count_of(worst.repeat, 'stitch')}, and the "
        f"nearest are {near}.",
        "state the width that whole repeats give, or choose a smaller repeat or a wider border.",
        poor,
    )


def _problem(
    context: Context,
    measure: Quantity,
    title: str,
    message: str,
    help: str,
    sizes: list[_Between],
) -> Problem:
    names = context.size_names(one.size for one in sizes)
    return Problem("width-odd-repeat", ADVICE, title, message, measure.span, (), help, names)


def _cm(mm: float, measure: Quantity) -> str:
    if measure.unit in ("in", "yd"):
        return f"{mm / 25.4:.4g} in"
    return f"{mm / 10:.4g} cm"


RULE = Rule(
    name="width-odd-repeat",
    severity=ADVICE,
    title="the stated width does not go with whole repeats",
    what="The counts that a piece's rows take lie a repeat apart, and so do its possible widths. "
    "Where the repeat is so wide that both counts beside the stated width miss it by more than a "
    "twentieth (and a centimetre), or that two sizes of different widths come to the same count, "
    "the width or the repeat should be thought over. This is said where the cast-on is one of the "
    "two counts beside the stated width; a count further off is a matter for size-off. Pieces "
    "whose count changes from motif to motif are left alone.",
    wrong="""pattern "Wide repeats"
  width 30 cm
  gauge 20 stitches 28 rows = 10 cm
motif waves over 24n
  row 1: * k12 p12 *
  row 2: * k12 p12 *
piece scarf flat
  cast on 72
  work waves x4
  bind off
""",
    right="""pattern "Whole repeats"
  width 36 cm
  gauge 20 stitches 28 rows = 10 cm
motif waves over 24n
  row 1: * k12 p12 *
  row 2: * k12 p12 *
piece scarf flat
  cast on 72
  work waves x4
  bind off
""",
    check=check,
)
