"""needle-short: a circular needle against the stitches that it must hold."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from loopwright.check.context import Context
from loopwright.check.rule import Rule
from loopwright.count.measure import width_gauge, width_of
from loopwright.count.walk import Walk, Worked
from loopwright.facts.circulars import flat_capacity, long_loop, round_capacity, smallest_round
from loopwright.model.pattern import Gauge, Needle, Pattern, Piece
from loopwright.problem import WARNING, Label, Problem
from loopwright.record import dataclass

_SLACK = 1.0 + 1e-9


@dataclass(frozen=True, slots=True)
class _Held:
    """So many stitches at row `row`, `mm` wide, hang on the needle."""

    stitches: int
    row: int
    mm: float
    size: int


def check(context: Context) -> Iterator[Problem]:
    pattern = context.pattern
    circulars = [n for n in pattern.needles if n.kind is not None and n.kind.key == "circular"]
    if not circulars or any(n.length is None or n.length.unit is None for n in circulars):
        return  # of a needle whose length nobody states nothing can be said
    lengths = {n.length.mm(): n for n in circulars if n.length is not None}
    for piece in pattern.pieces:
        gauge = width_gauge(pattern, piece)
        if gauge is None or gauge.over.unit is None or gauge.stitches <= 0:
            continue
        walks = [walk for walk in context.walks_of(piece) if walk.sound]
        most = {flat: [_held(w, flat, max, gauge) for w in walks] for flat in (True, False)}
        least = [_held(w, False, min, gauge) for w in walks]
        yield from _too_many(context, piece, lengths, most)
        yield from _too_few(context, piece, lengths, least)


def _held(walk: Walk, flat: bool, choose: Callable[[int, int], int], gauge: Gauge) -> _Held | None:
    """The most or the fewest stitches of a walk's flat rows or rounds."""
    best: tuple[int, int] | None = None
    for event in walk.events:
        if not isinstance(event, Worked) or event.round == flat:
            continue
        length = len(event.chunk.entries)
        for index, entry in enumerate(event.chunk.entries):
            # Counts run evenly, so the first and the last repeat hold the extremes.
            for repeat in {0, event.chunk.reps - 1}:
                row = event.first_row + repeat * length + index
                here = (entry.start.at(repeat), row)
                if best is None or choose(here[0], best[0]) != best[0]:
                    best = here
    if best is None:
        return None
    return _Held(best[0], best[1], width_of(gauge, best[0]), walk.size)


def _too_many(
    context: Context,
    piece: Piece,
    lengths: dict[float, Needle],
    most: dict[bool, list[_Held | None]],
) -> Iterator[Problem]:
    longest = max(lengths)
    for flat, found in most.items():
        holds = flat_capacity(longest) if flat else round_capacity(longest)
        over = [held for held in found if held is not None and held.mm > holds * _SLACK]
        if not over:
            continue
        if flat and any(
            n.kind is None or n.kind.key != "circular" for n in context.pattern.needles
        ):
            continue  # other needles are there that may hold it
        worst = max(over, key=lambda held: held.mm)
        needle = lengths[longest]
        how = (
            "A flat fabric sits on up to 3 times the cable (the needle less "
            f"{_long(203.2, needle)} of tips)"
            if flat
            else "A round sits on a needle of at least half its length"
        )
        yield Problem(
            "needle-short",
            WARNING,
            "the needle is too short for the stitches",
            f"{_who(context, worst, piece, flat, needle)}, and a circular needle of "
            f"{_long(longest, needle)} holds about {_long(holds, needle)}. {how}.",
            needle.span,
            (Label(piece.span, "worked here"),),
            f"name a needle of {_wanted(worst.mm, flat, needle)} or more.",
            context.size_names(held.size for held in over),
        )


def _wanted(mm: float, flat: bool, needle: Needle) -> str:
    """The shortest length in shops that holds a fabric."""
    capacity = flat_capacity if flat else round_capacity
    inches = needle.length is not None and needle.length.unit in ("in", "yd")
    for cm, inch in ((40, 16), (60, 24), (80, 32), (100, 40), (120, 47), (150, 60)):
        if capacity(inch * 25.4 if inches else cm * 10.0) >= mm:
            return f"{inch} in" if inches else f"{cm} cm"
    return "60 in (or several)" if inches else "150 cm (or several)"


def _too_few(
    context: Context, piece: Piece, lengths: dict[float, Needle], least: list[_Held | None]
) -> Iterator[Problem]:
    pattern = context.pattern
    if _other_needles(pattern) or max(lengths) >= long_loop():
        return
    shortest = min(lengths)
    under = [held for held in least if held is not None and held.mm * _SLACK < shortest]
    if not under:
        return
    worst = min(under, key=lambda held: held.mm)
    needle = lengths[shortest]
    if worst.mm < smallest_round():
        help = f"name double-pointed needles, or a circular needle of {_long(long_loop(), needle)} "
        help += "and more for a long loop."
        more = f" Below {_long(smallest_round(), needle)} no circular needle is short enough."
    else:
        help = f"name a circular needle of {_long(worst.mm // 100 * 100, needle)}."
        more = ""
    yield Problem(
        "needle-short",
        WARNING,
        "the stitches do not reach round the needle",
        f"{_who(context, worst, piece, False, needle)}, and the shortest needle named is "
        f"{_long(shortest, needle)} long: the stitches do not reach round it.{more}",
        needle.span,
        (Label(piece.span, "worked here"),),
        help,
        context.size_names(held.size for held in under),
    )


def _other_needles(pattern: Pattern) -> bool:
    """Whether needles are named that may take a small round, such as double-pointed ones."""
    return any(
        n.kind is None or n.kind.key not in ("circular", "straight") for n in pattern.needles
    )


def _who(context: Context, held: _Held, piece: Piece, flat: bool, needle: Needle) -> str:
    names = context.sizes
    size = f" in size {names[held.size]}" if len(names) > 1 else ""
    row, way = ("Row", "wide") if flat else ("Round", "round")
    return (
        f"{row} {held.row:,} of {piece.name.text} has {held.stitches:,} stitches{size}, which are "
        f"{_long(held.mm, needle)} {way} at the gauge"
    )


def _long(mm: float, needle: Needle) -> str:
    """A length in the units in which the needle's own is given."""
    if needle.length is not None and needle.length.unit in ("in", "yd"):
        return f"{mm / 25.4:.3g} in"
    return f"{mm / 10:.4g} cm"


RULE = Rule(
    name="needle-short",
    severity=WARNING,
    title="a circular needle does not suit the stitches it must hold",
    what="A flat fabric sits on a circular needle as long as it is at most 3 times as wide as the "
    "cable, which is 8 inches shorter than the needle. In the round the needle must not be longer "
    "than the fabric is round, and holds at most twice its own length; below 40 cm round "
    "double-pointed needles or a long loop (a needle of 80 cm or more) are needed. All are rules "
    "of practice. The widths are those of the stated gauge; nothing is said where a circular "
    "needle has no length or the file has no gauge.",
    wrong="""pattern "A crowded needle"
  gauge 20 stitches 40 rows = 10 cm
  needle circular 4.5 mm 60 cm
piece throw flat
  cast on 300
  rows 8: knit
  bind off
""",
    right="""pattern "Room enough"
  gauge 20 stitches 40 rows = 10 cm
  needle circular 4.5 mm 80 cm
piece throw flat
  cast on 300
  rows 8: knit
  bind off
""",
    check=check,
)
