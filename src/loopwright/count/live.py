"""What hangs on the needles before a row: ahead of the hands, behind them, and between markers."""

from __future__ import annotations

from loopwright.count.affine import Affine
from loopwright.record import dataclass

Parts = tuple[Affine, ...]
"""Stitches between the markers (and the ends), nearest first."""


@dataclass(frozen=True, slots=True)
class Live:
    """The live stitches of a piece before a row.

    `ahead` are those the row can work, in the order in which it meets them; `behind` those that
    a turned row has not reached, nearest first (empty in whole rows); `gap` is how many stitches
    lie before the gap that the turn before the last has left (None: no gap).
    """

    ahead: Parts
    behind: Parts = ()
    gap: Affine | None = None

    @staticmethod
    def of(count: int) -> Live:
        """So many stitches, no marker, the hands at their start."""
        return Live((Affine(count),))

    @property
    def is_plain(self) -> bool:
        """One stretch of stitches, all of them ahead."""
        return len(self.ahead) == 1 and not self.behind and self.gap is None

    def values(self) -> Parts:
        """All its numbers in one order."""
        return self.ahead + self.behind + ((self.gap,) if self.gap is not None else ())

    def with_values(self, values: Parts) -> Live:
        """The same shape with other numbers."""
        at, end = len(self.ahead), len(self.ahead) + len(self.behind)
        gap = values[end] if self.gap is not None else None
        return Live(values[:at], values[at:end], gap)

    def like(self, other: Live) -> bool:
        """The same shape: as many stretches ahead and behind, and a gap or none."""
        return (
            len(self.ahead) == len(other.ahead)
            and len(self.behind) == len(other.behind)
            and (self.gap is None) == (other.gap is None)
        )


def summed(parts: Parts) -> Affine:
    """All the stitches of some stretches."""
    if len(parts) == 1:
        return parts[0]
    return Affine(sum(p.fixed for p in parts), sum(p.unit for p in parts))


def total(live: Live) -> Affine:
    """All the stitches on the needles."""
    if live.behind:
        return summed(live.ahead + live.behind)
    return summed(live.ahead)


def end_to_end(first: Parts, then: Parts) -> Parts:
    """Two runs of stretches as one; no marker hangs where they meet."""
    if not first or not then:
        return first or then
    return (*first[:-1], first[-1] + then[0], *then[1:])


def parted(parts: list[int], count: int) -> tuple[list[int], list[int]]:
    """Stretches parted behind the first `count` stitches; both runs have one stretch or more.

    A marker that hangs just there stays with the second run.
    """
    first: list[int] = []
    left, at = count, 0
    while left > parts[at]:
        first.append(parts[at])
        left -= parts[at]
        at += 1
    return [*first, left], [parts[at] - left, *parts[at + 1 :]]


def after_row(live: Live, made: Parts, rest: Parts, turned: bool, in_round: bool) -> Live:
    """What the next row meets.

    `made` are the stretches the row has made, in its own order; `rest` those it has not reached,
    nearest first. A whole row of flat work, or any row that turns, is followed from its own end;
    a round goes on in its direction from its start.
    """
    if in_round and not turned:
        gap = summed(live.behind) if live.behind else None
        return Live(end_to_end(live.behind[::-1], made), (), gap)
    if not live.behind and not rest:
        return Live(made if len(made) == 1 else made[::-1])
    gap = summed(made) if live.behind else None
    return Live(end_to_end(made[::-1], live.behind), rest, gap)


def unworked(live: Live, in_round: bool) -> Live:
    """What the next row would meet if the row left every stitch as it is."""
    return after_row(live, live.ahead, (), False, in_round)
