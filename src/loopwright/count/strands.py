"""Where each strand hangs while a piece is worked, and how long it rests between two uses.

A row begins at the right edge on a right-side row and at the left edge on a wrong-side row, and
leaves its strand at the other edge. A motif's rows put a strand back to the same edge in every
second repeat, so a few repeats at both ends stand for all of them.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from loopwright.count.walk import Bound, Cast, Said, Walk, Worked
from loopwright.model.pattern import BindOff, JoinRound, LeaveLive, Motif, Pattern, Remark, Row
from loopwright.notation.source import Span
from loopwright.notation.tree import Name
from loopwright.record import dataclass

RIGHT, LEFT = "right", "left"
_NEXT = "next"  # cast on: the strand hangs where the first row begins
_SHOWN = 3  # repeats looked at before those that are all alike

# Notes that say what becomes of a resting strand: it hangs nowhere any more, or it is carried.
_CUT = re.compile(
    r"\b(?:cut|cuts|break|breaks|broken|rejoin\w*|re-join\w*|slide|slides|fasten off|"
    r"joins? (?:it|them|again|anew|the (?:yarn|strand)))\b",
    re.IGNORECASE,
)
_CARRY = re.compile(r"\b(?:carry|carries|carried|twist\w*|catch|caught)\b", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Pickup:
    """A strand taken up again at row `row` of the piece.

    `told` is true where a note since its last use says how it is carried. `edge` is where that row
    begins and `hangs` where the strand was left (None: at no edge in
    particular); `last` is the row of its last use, `place` and `was` where the two are called for
    in the file. `number` is the motif's row and `repeat` counts its repeats from 0.
    """

    strand: str
    row: int
    edge: str | None
    hangs: str | None
    last: int
    place: Span
    was: Span
    motif: Motif | None
    number: int
    repeat: int
    index: int
    told: bool
    round: bool
    bind_off: bool = False

    @property
    def rested(self) -> int:
        """How many rows were worked between the two uses."""
        return self.row - self.last - 1


@dataclass(slots=True)
class _Left:
    """Where a strand was left: after which row, at which edge, called for at which place."""

    row: int
    edge: str | None
    place: Span
    told: bool = False


def pickups(pattern: Pattern, walk: Walk) -> Iterator[Pickup]:
    """Every time a strand of a walked piece is taken up again, in order.

    Repeats in the middle of many are left out: they are as those before them. What is not known
    (rows without a strand before any was named, events of another kind) is passed over.
    """
    return _Hanging(pattern, walk).run()


class _Hanging:
    def __init__(self, pattern: Pattern, walk: Walk) -> None:
        self.pattern = pattern
        self.walk = walk
        self.current: str | None = None
        if len(pattern.strands) == 1:
            self.current = pattern.strands[0].name.key
        self.left: dict[str, _Left] = {}
        self.row = 0
        self.rs = not walk.piece.starts_ws
        self.round = walk.piece.in_round

    def run(self) -> Iterator[Pickup]:
        events: tuple[object, ...] = self.walk.events  # kinds not known here are passed over
        for event in events:
            if isinstance(event, Worked):
                yield from self._worked(event)
            elif isinstance(event, Cast):
                self.left.clear()
                self._name(event.item.strand)
                if self.current is not None:
                    edge = None if self.round else _NEXT
                    place = event.item.strand.span if event.item.strand else event.item.span
                    self.left[self.current] = _Left(self.row, edge, place)
            elif isinstance(event, Bound) and isinstance(event.item, LeaveLive):
                self.left.clear()
            elif isinstance(event, Bound) and isinstance(event.item, BindOff):
                self._name(event.item.strand)
                if self.current is not None:
                    edge = None if self.round else (RIGHT if self.rs else LEFT)
                    place = event.item.strand.span if event.item.strand else event.item.span
                    self._settle_next(edge)
                    yield from self._use(
                        self.current, self.row + 1, edge, None, place, None, -1, 0, event.index
                    )
                self.left.clear()
            elif isinstance(event, Said):
                self._said(event)
            else:
                self.left.clear()

    def _name(self, name: Name | None) -> None:
        if name is not None:
            self.current = name.key

    def _said(self, event: Said) -> None:
        if isinstance(event.item, JoinRound):
            self.round = True
            for left in self.left.values():
                left.edge = None
            return
        if not isinstance(event.item, Remark):
            return
        text = event.item.text.text
        cut = _CUT.search(text) is not None
        if not cut and not _CARRY.search(text):
            return
        named = {
            s.name.key
            for s in self.pattern.strands
            if re.search(rf"(?<!\w){re.escape(s.name.text)}(?!\w)", text)
        }
        for key in (named or set(self.left)) & set(self.left):
            if cut:
                del self.left[key]
            else:
                self.left[key].told = True

    def _settle_next(self, edge: str | None) -> None:
        for left in self.left.values():
            if left.edge == _NEXT:
                left.edge = edge

    def _use(
        self,
        strand: str,
        row: int,
        begins: str | None,
        ends: str | None,
        place: Span,
        motif: Motif | None,
        number: int,
        repeat: int,
        index: int,
    ) -> Iterator[Pickup]:
        left = self.left.get(strand)
        if left is not None:
            yield Pickup(
                strand, row, begins, left.edge, left.row, place, left.place, motif, number,
                repeat, index, left.told, self.round, number < 0,
            )  # fmt: skip
        self.left[strand] = _Left(row, ends, place)

    def _worked(self, event: Worked) -> Iterator[Pickup]:
        self.row = event.first_row - 1
        self.rs, self.round = event.rs, event.round
        entries, reps = event.chunk.entries, event.chunk.reps
        if any(entry.turns for entry in entries):
            # A short row ends inside the piece: where its strand hangs then is not at an edge.
            self.left.clear()
            self.row += event.rows
            self.rs = event.is_rs(event.rows)
            for entry in entries:
                self._name(entry.row.strand)
            return
        if all(entry.row.strand is None for entry in entries):
            # One strand throughout: it is taken up at the first row and left after the last.
            yield from self._plain(event)
            return
        skip = reps - 2 * _SHOWN
        if len(entries) * skip % 2:
            skip -= 1  # so that the repeats after the gap begin on the side of those before it
        if skip <= 0:
            skip = 0
        before = _SHOWN if skip else reps
        for repeat in range(before):
            yield from self._rows(event, repeat, len(entries))
        if skip:
            rows = skip * len(entries)
            for left in self.left.values():
                if left.row > event.first_row + len(entries) - 1:
                    left.row += rows
            self.row += rows
            for repeat in range(before + skip, reps):
                yield from self._rows(event, repeat, len(entries))

    def _plain(self, event: Worked) -> Iterator[Pickup]:
        rows = event.rows
        if self.current is not None and rows:
            first = event.chunk.entries[0].row
            begin, end = self._edges(self.rs)
            if rows % 2 == 0:
                end = begin if not self.round else None
            self._settle_next(begin)
            yield from self._use(
                self.current, self.row + 1, begin, end, _place(first), event.motif,
                first.number, 0, event.index,
            )  # fmt: skip
            self.left[self.current].row = self.row + rows
        self.row += rows
        if rows % 2 and not self.round:
            self.rs = not self.rs

    def _edges(self, rs: bool) -> tuple[str | None, str | None]:
        """Where a row begins and where it ends."""
        if self.round:
            return None, None
        return (RIGHT, LEFT) if rs else (LEFT, RIGHT)

    def _rows(self, event: Worked, repeat: int, count: int) -> Iterator[Pickup]:
        for entry in event.chunk.entries[:count]:
            row = entry.row
            self._name(row.strand)
            self.row += 1
            begin, end = self._edges(self.rs)
            self._settle_next(begin)
            if not self.round:
                self.rs = not self.rs
            if self.current is None:
                continue
            yield from self._use(
                self.current, self.row, begin, end, _place(row), event.motif, row.number, repeat,
                event.index,
            )  # fmt: skip


def _place(row: Row) -> Span:
    return row.at(row.strand.span) if row.strand is not None else row.place
