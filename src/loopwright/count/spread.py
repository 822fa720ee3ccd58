"""Changes spread evenly: n of them over m rows, or over the stitches of a row. Exact.

Over rows the distance from one change to the next goes by whole steps (two rows in flat work, so
that every change falls on a right-side row), and two distances differ by at most one step: the
longer ones come first, as patterns print it ("every 6th row 4 times, then every 4th row 9
times"). Over stitches the plain stitches between the changes differ by at most one, where those
before the first change and after the last count together as one gap.
"""

from __future__ import annotations

from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class RowSpread:
    """n changes over m rows: `blocks` are (rows from change to change, how often), longer first.

    Of each distance the change is the row at `place` from its end (0: its last row, 1: the one
    before it). `tail` rows without a change follow, fewer than a step.
    """

    blocks: tuple[tuple[int, int], ...]
    place: int
    tail: int

    @property
    def changes(self) -> int:
        return sum(times for _, times in self.blocks)

    @property
    def rows(self) -> int:
        return sum(every * times for every, times in self.blocks) + self.tail


def spread_over_rows(changes: int, rows: int, step: int, place: int = 0) -> RowSpread | None:
    """Spread `changes` over `rows`, every distance a multiple of `step`; None: too few rows.

    No change is no distance: all the rows are the tail then.
    """
    if changes == 0:
        return RowSpread((), place, rows)
    base, longer = divmod(rows // step, changes)
    if base < 1:
        return None
    blocks = ((base * step + step, longer), (base * step, changes - longer))
    return RowSpread(tuple(b for b in blocks if b[1]), place, rows % step)


@dataclass(frozen=True, slots=True)
class StitchSpread:
    """n changes among plain stitches: `first` of them, then `blocks` of (plain stitches between
    two changes, how often), then `last`. There are `changes` changes and one gap fewer."""

    changes: int
    first: int
    blocks: tuple[tuple[int, int], ...]
    last: int

    @property
    def plain(self) -> int:
        return self.first + sum(gap * times for gap, times in self.blocks) + self.last


def spread_over_stitches(changes: int, plain: int) -> StitchSpread:
    """Spread `changes` among `plain` stitches; the gap parted between both ends is a longer one."""
    if changes == 0:
        return StitchSpread(0, plain, (), 0)
    gap, longer = divmod(plain, changes)
    ends = gap + (1 if longer else 0)
    longer = max(longer - 1, 0)
    blocks = ((gap + 1, longer), (gap, changes - 1 - longer))
    return StitchSpread(changes, (ends + 1) // 2, tuple(b for b in blocks if b[1]), ends // 2)
