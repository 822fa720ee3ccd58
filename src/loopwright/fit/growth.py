"""The lever of a piece that begins small and grows: how often its growing motif is worked."""

from __future__ import annotations

from loopwright.check.checked import Checked
from loopwright.count.affine import CountSet
from loopwright.count.live import total
from loopwright.count.walk import Walk, Worked
from loopwright.fit.levers import CastLever, Choice, Lever
from loopwright.fit.slots import Sheet
from loopwright.model.pattern import Pattern, Piece, Work
from loopwright.notation.tree import ForRows, Times


class GrowthLever(Lever):
    """The width hangs on how often the motif is worked that grows the piece most."""

    def __init__(
        self, checked: Checked, piece: Piece, size: int, width: float, item: Work, gain: int
    ) -> None:
        super().__init__(checked, piece, size, width)
        self.item = item
        self.gain = gain
        assert item.motif is not None
        amount = item.amount
        assert isinstance(amount, Times | ForRows)
        self.length = len(item.motif.rows)
        self.count = amount.count if isinstance(amount, Times) else amount.rows
        self.rest = 0 if isinstance(amount, Times) else self.count.at(size) % self.length
        self.now = self.count.at(size) // (1 if isinstance(amount, Times) else self.length)

    @property
    def counts(self) -> CountSet:
        return CountSet(self.widest_now, self.gain, self.widest_now - self.gain * (self.now - 1))

    @property
    def aim(self) -> float:
        return self.wanted

    def _repeats(self, value: int) -> int:
        return self.now + (value - self.widest_now) // self.gain

    def _write(self, value: int, exact: bool) -> Sheet | None:
        sheet = Sheet(len(self.pattern.sizes))
        times = self._repeats(value)
        if isinstance(self.item.amount, ForRows):
            times = times * self.length + self.rest
        sheet.put_count(self.count, self.size, times)
        return sheet

    def _walk(self, pattern: Pattern, piece: Piece, cast_on: int | None) -> Walk | None:
        return super()._walk(pattern, piece, None)

    def _choice(self, value: int, walk: Walk, sheet: Sheet) -> Choice:
        found = super()._choice(value, walk, sheet)
        return Choice(value, found.cast_on, found.widest, found.width, sheet, self._repeats(value))


def lever_for(checked: Checked, piece: Piece, size: int, width: float) -> Lever:
    """The lever of a piece in one size for a width in mm. Raises ValueError without a gauge."""
    walk = next(w for w in checked.walks if w.piece is piece and w.size == size)
    gains: dict[int, tuple[Work, int, int]] = {}
    for event in walk.events:
        if not isinstance(event, Worked) or not isinstance(event.item, Work):
            continue
        gain = total(event.chunk.after).fixed - event.chunk.entries[0].start.fixed
        if isinstance(event.item.amount, Times | ForRows) and gain > 0:
            by = _gain_of_a_repeat(event, gain)
            if event.index in gains:
                _, before, known = gains[event.index]
                gain += before
                if by is None:
                    by = known
                elif by != known:
                    by = 0  # it multiplies its stitches: no even growth to go by
            gains[event.index] = (event.item, gain, max(by or 0, 0))
    grown = sum(gain for _, gain, _ in gains.values())
    if gains and grown > (walk.cast_on or 0):
        item, _, by = max(gains.values(), key=lambda entry: entry[1])
        if by > 0:
            return GrowthLever(checked, piece, size, width, item, by)
    return CastLever(checked, piece, size, width)


def _gain_of_a_repeat(event: Worked, gain: int) -> int | None:
    """What one repeat of the motif adds; None for the first rows of one that is not finished.

    `gain` is what all the rows of the event add. A motif of an odd number of rows may be worked
    two repeats at a time.
    """
    repeats, rest = divmod(event.rows, len(event.motif.rows) if event.motif else 1)
    if rest:
        return None
    by, uneven = divmod(gain, repeats)
    return 0 if uneven else by
