"""Self-striping yarn: colours by the metre along the ball, and how they fall over the rows."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.facts.amounts import estimate
from loopwright.model.pattern import Pattern, Shade
from loopwright.record import dataclass
from loopwright.yarn.ledger import Rows
from loopwright.yarn.report import SizeYarn


@dataclass(frozen=True, slots=True)
class StripeFall:
    """One repeat of a self-striping shade over the rows of a strand.

    A repeat of `repeat` metres is `rows` rows of `stitches` stitches; `heights` are the rows of
    each stripe. `pools` is (times, rows) where that many repeats are nearly exactly those rows,
    so that the colours stand over one another; else None.
    """

    strand: str | None
    shade: Shade
    repeat: float
    rows: float
    stitches: int
    heights: tuple[float, ...]
    pools: tuple[int, int] | None


def repeat_metres(shade: Shade) -> float:
    """The metres after which the colours of a shade begin again; 0 where it has no stripes."""
    return sum(stripe.length.metres() for stripe in shade.stripes if stripe.length.is_length)


def stripe_falls(pattern: Pattern, size: SizeYarn) -> Iterator[StripeFall]:
    """For each strand and striped shade that it eats, over the motif it works the longest."""
    for strand in size.strands:
        seen: set[str] = set()
        for run in strand.runs:
            shade = pattern.shade(run.shade)
            if shade is None or run.shade in seen or repeat_metres(shade) <= 0:
                continue
            seen.add(run.shade)
            fall = _fall(size, strand.key, shade)
            if fall is not None:
                yield fall


def _fall(size: SizeYarn, key: str | None, shade: Shade) -> StripeFall | None:
    parts = [part for part in size.ledger.parts if isinstance(part, Rows)]
    longest = max(parts, key=lambda part: part.metres_of(key), default=None)
    if longest is None or longest.metres_of(key) <= 0:
        return None
    rows = [row for row in longest.rows if row.strand == key]
    middle = longest.reps // 2
    each = sum(row.metres(middle) for row in rows) / len(rows)
    repeat = repeat_metres(shade)
    heights = tuple(stripe.length.metres() / each for stripe in shade.stripes)
    in_round = rows[0].row.round
    return StripeFall(
        key,
        shade,
        repeat,
        repeat / each,
        rows[0].stitches(middle),
        heights,
        pooling(repeat / each, in_round),
    )


def pooling(rows: float, in_round: bool) -> tuple[int, int] | None:
    """Whether a repeat of so many rows falls in step with them, as (repeats, rows).

    In flat work the strand comes back to the same place after two rows, in the round after one.
    Where a whole number of repeats is as long as that way, each colour meets itself; a drift
    below the table's share of a repeat still looks so. Derived from the path of the strand. A
    repeat of more than that way makes stripes, not pools.
    """
    way = 1 if in_round else 2
    times = round(way / rows)
    if times >= 1 and abs(way / rows - times) <= estimate("pooling drift"):
        return times, way
    return None
