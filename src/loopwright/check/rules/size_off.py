"""size-off: the stated width or length and the counts at gauge differ."""

from __future__ import annotations

from collections.abc import Iterator
from math import lcm

from loopwright.check.context import Context
from loopwright.check.rule import Rule
from loopwright.count.measure import height_of_row, width_gauge, width_of
from loopwright.count.tape import FILL
from loopwright.count.walk import Walk, Worked
from loopwright.model.pattern import Pattern, Piece
from loopwright.notation.quantity import Quantity
from loopwright.problem import WARNING, Problem


def check(context: Context) -> Iterator[Problem]:
    pattern = context.pattern
    if not pattern.gauges or pattern.gauges[0].over.unit is None:
        return
    for number, piece in enumerate(pattern.pieces):
        # The pattern's own measures are those of its first piece.
        for kind in ("width", "length"):
            own = getattr(piece, kind)
            measure = own or (getattr(pattern, kind) if number == 0 else None)
            wrong = measure is not None and len(measure.values) not in (1, len(context.sizes))
            if measure is not None and measure.unit is not None and not wrong:
                yield from _check(context, piece, kind, measure)


def _check(context: Context, piece: Piece, kind: str, measure: Quantity) -> Iterator[Problem]:
    off: list[tuple[int, float, float]] = []
    for walk in context.walks_of(piece):
        if not walk.sound or walk.cast_on is None:
            continue
        said = measure.mm(walk.size)
        found = (
            _width(context, walk, said) if kind == "width" else _length(context.pattern, walk, said)
        )
        if found is not None:
            off.append((walk.size, said, found))
    if not off:
        return
    names = context.sizes
    texts = [
        f"{_cm(s, measure)} stated and {_cm(f, measure)} by the counts"
        + (f" in size {names[i]}" if len(names) > 1 else "")
        for i, s, f in off
    ]
    way = "stitches" if kind == "width" else "rows"
    yield Problem(
        "size-off",
        WARNING,
        f"the {kind} and the counts do not agree",
        f"The {way} of “{piece.name.text}” at the stated gauge do not give the stated {kind}: "
        f"{'; '.join(texts)}. That is more than half a repeat off.",
        measure.span,
        help=f"state the {kind} that the counts give, or let Loopwright find the counts: "
        + ("“cast on for width”." if kind == "width" else "“work … to length”."),
        sizes=context.size_names(i for i, _, _ in off),
    )


def _cm(mm: float, measure: Quantity) -> str:
    if measure.unit in ("in", "yd"):
        return f"{mm / 25.4:.4g} in"
    return f"{mm / 10:.4g} cm"


def _unit(context: Context, walk: Walk) -> int:
    """The stitches of one repeat of the whole piece."""
    unit = 1
    for event in walk.events:
        if not isinstance(event, Worked):
            continue
        if event.motif is not None and event.motif.form is not None and event.motif.form.unit:
            unit = lcm(unit, event.motif.form.unit)
        for entry in event.chunk.entries:
            for op in context.tapes.of(entry.row.body, walk.size).ops:
                if op.kind == FILL:
                    unit = lcm(unit, op.takes)
        if unit > 10_000:
            break
    return unit


def _width(context: Context, walk: Walk, said: float) -> float | None:
    gauge = width_gauge(context.pattern, walk.piece)
    if gauge is None or gauge.over.unit is None:
        return None
    found = width_of(gauge, walk.widest)
    half = width_of(gauge, max(_unit(context, walk), 2)) / 2
    return found if abs(found - said) > half * (1 + 1e-9) else None


def _length(pattern: Pattern, walk: Walk, said: float) -> float | None:
    if walk.height is None or walk.height == 0:
        return None
    tallest = max(
        (
            (height_of_row(pattern, e.motif) or 0) * len(e.chunk.entries)
            for e in walk.events
            if isinstance(e, Worked)
        ),
        default=0.0,
    )
    half = max(tallest / 2, height_of_row(pattern, None) or 0)
    return walk.height if abs(walk.height - said) > half * (1 + 1e-9) else None


RULE = Rule(
    name="size-off",
    severity=WARNING,
    title="the stated size and the counts do not agree",
    what="The stitches of the widest row and the rows of the piece, at the stated gauge, give "
    "another width or length than the pattern states, by more than half a repeat. In the round "
    "the width is the way round.",
    wrong="""pattern "Too wide"
  width 30 cm
  gauge 20 stitches 40 rows = 10 cm
piece swatch flat
  cast on 50
  rows 40: knit
  bind off
""",
    right="""pattern "As wide as it says"
  width 25 cm
  gauge 20 stitches 40 rows = 10 cm
piece swatch flat
  cast on 50
  rows 40: knit
  bind off
""",
    check=check,
)
