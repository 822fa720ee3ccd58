"""What a walk tells: the rows and moves of a piece as they were worked, and what was met."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.count.live import Live
from loopwright.count.repeat import Chunk, Snag
from loopwright.model.pattern import (
    BeginRound,
    BindOff,
    CastOn,
    Hold,
    JoinRound,
    LeaveLive,
    LeaveRound,
    Motif,
    PickUp,
    Piece,
    PieceRow,
    Remark,
    Row,
    Spread,
    Take,
    Work,
)
from loopwright.notation.source import Span
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class Finding:
    """Something the walk met, in one size; the rules turn it into a problem.

    `rule` names the rule, `detail` the case within it. `numbers` are what its message needs.
    `row_number` is the row of the piece and `repeat` the repeat of the motif (from 0); `name` is
    a holder's or a piece's, `other` a further place that belongs to it.
    """

    rule: str
    size: int
    span: Span
    piece: Piece
    detail: str = ""
    row: Row | None = None
    motif: Motif | None = None
    snag: Snag | None = None
    row_number: int = 0
    repeat: int = 0
    numbers: tuple[int, ...] = ()
    name: str = ""
    other: Span | None = None


@dataclass(frozen=True, slots=True)
class Worked:
    """Rows as worked: `chunk.entries`, `chunk.reps` times.

    `first_row` is the number of the first row in the piece, `rs` whether it is a right-side row.
    """

    item: PieceRow | Work | Spread
    index: int
    motif: Motif | None
    first_row: int
    rs: bool
    round: bool
    chunk: Chunk

    @property
    def rows(self) -> int:
        return self.chunk.rows

    def is_rs(self, index: int) -> bool:
        """Whether the row at `index` (from 0) is worked with the right side in front.

        Flat work changes sides with every row, a round only where a row turns.
        """
        if not self.round:
            return self.rs == (index % 2 == 0)
        entries = self.chunk.entries
        turns = sum(entry.turns for entry in entries)
        if not turns:
            return self.rs
        k, at = divmod(index, len(entries))
        return self.rs == ((k * turns + sum(e.turns for e in entries[:at])) % 2 == 0)

    def is_round(self, index: int) -> bool:
        """Whether that row goes all the way round, from the right side, without turning."""
        entry = self.chunk.entries[index % len(self.chunk.entries)]
        return self.round and not entry.turns and self.is_rs(index)


@dataclass(frozen=True, slots=True)
class Cast:
    """Stitches cast on."""

    item: CastOn
    index: int
    count: int


@dataclass(frozen=True, slots=True)
class Bound:
    """Stitches bound off, or left live at the end of the piece."""

    item: BindOff | LeaveLive
    index: int
    count: int


@dataclass(frozen=True, slots=True)
class Moved:
    """Stitches that come onto the needle (`count` above 0) or go off it, between rows.

    `counts` are those of each name of the line, in its order; `total` is what hangs afterwards.
    """

    item: Hold | Take | PickUp | CastOn
    index: int
    count: int
    counts: tuple[int, ...]
    total: int


@dataclass(frozen=True, slots=True)
class Said:
    """A note, a section, or a change between rows and rounds."""

    item: Remark | JoinRound | LeaveRound | BeginRound
    index: int


Event = Worked | Cast | Bound | Moved | Said


@dataclass(frozen=True, slots=True)
class ListedRow:
    """A row as `rows` lists it; `line` counts from 1."""

    row: int
    side: str
    strand: str | None
    start: int
    end: int
    line: int


@dataclass(frozen=True, slots=True)
class Site:
    """Where a motif is begun: with how many stitches, and how they hang; `rs` and `round` are as
    in `Worked`."""

    motif: Motif
    item: Work
    count: int
    size: int
    live: Live
    rs: bool
    round: bool


@dataclass(frozen=True, slots=True, eq=False)
class Walk:
    """One piece in one size. `height` is in millimetres at the file's gauges (None: no gauge)."""

    piece: Piece
    size: int
    events: tuple[Event, ...]
    findings: tuple[Finding, ...]
    sites: tuple[Site, ...]
    cast_on: int | None
    widest: int
    rows: int
    height: float | None
    sound: bool
    heights: tuple[tuple[int, float], ...]

    def height_after(self, row: int) -> float:
        """The height in millimetres when row `row` of the piece is done (at the file's gauges)."""
        at, height = 0, 0.0
        for last, reached in self.heights:
            if last >= row:
                return height + (reached - height) * (row - at) / max(last - at, 1)
            at, height = last, reached
        return height

    def is_round(self, row: int) -> bool:
        """Whether row `row` of the piece goes all the way round; False where there is none."""
        for event in self.events:
            if isinstance(event, Worked) and 0 <= row - event.first_row < event.rows:
                return event.is_round(row - event.first_row)
        return False

    def listed(self, first: int = 1) -> Iterator[ListedRow]:
        """Every row in order, from row `first` of the piece, one at a time."""
        for event in self.events:
            if isinstance(event, Worked) and event.first_row + event.rows > first:
                yield from _listed(event, first)


def _listed(event: Worked, first: int) -> Iterator[ListedRow]:
    entries = event.chunk.entries
    skip = max(0, first - event.first_row)
    for index in range(skip, event.rows):
        k, at = divmod(index, len(entries))
        entry = entries[at]
        rs = event.is_rs(index)
        row = entry.row
        yield ListedRow(
            event.first_row + index,
            "rs" if rs else "ws",
            row.strand.text if row.strand else None,
            entry.start.at(k),
            entry.end.at(k),
            row.line,
        )
