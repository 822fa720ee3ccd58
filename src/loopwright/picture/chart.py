"""What a chart is: squares, marks and turns, row above row, as seen from the right side."""

from __future__ import annotations

from loopwright.picture.faces import KeyEntry
from loopwright.picture.frames import Frame
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class Placed:
    """A symbol in a row: columns `right` to `left`, counted from 0 at the right edge."""

    symbol: str
    right: int
    left: int

    @property
    def cells(self) -> int:
        return self.left - self.right + 1


@dataclass(frozen=True, slots=True)
class Mark:
    """A marker in a row, on the line to the left of so many columns."""

    symbol: str
    boundary: int


@dataclass(frozen=True, slots=True)
class Turn:
    """Where a row turns: on the line to the left of so many columns; the next stitch it wraps.

    `wrapped` is a column, or -1.
    """

    symbol: str
    boundary: int
    wrapped: int


@dataclass(frozen=True, slots=True)
class ChartRow:
    """A row as drawn. `placed` goes from right to left and holds no empty squares.

    `strand` is its name where the pattern has more than one, with the colours it begins with.
    `blank` are the columns in which there is no stitch, `waiting` those whose stitch waits on the
    needle while the row turns before it, or begins behind it.
    """

    number: int
    rs: bool
    strand: str
    colours: tuple[str, ...]
    placed: tuple[Placed, ...]
    marks: tuple[Mark, ...]
    blank: tuple[int, ...]
    waiting: tuple[int, ...] = ()
    turn: Turn | None = None


@dataclass(frozen=True, slots=True)
class Chart:
    """A motif as a chart. `rows` go upwards from row 1; `size` is set where sizes differ.

    `notes` are what has to be known of rows that turn: messages, and how often the rows are
    worked (the ``times`` of a message that has a place for it).
    """

    name: str
    size: str
    round: bool
    columns: int
    rows: tuple[ChartRow, ...]
    frames: tuple[Frame, ...]
    key: tuple[KeyEntry, ...]
    start: int
    notes: tuple[tuple[str, int], ...] = ()

    @property
    def note(self) -> str:
        """The notes in English, as sentences; empty where there are none."""
        return " ".join(message.format(times=times) for message, times in self.notes)

    @property
    def title(self) -> str:
        """``Woven``, with the size where the chart is that of one size."""
        text = self.name.replace("-", " ").replace("_", " ")
        return text[:1].upper() + text[1:] + (f", size {self.size}" if self.size else "")

    @property
    def word(self) -> str:
        return "Rnd" if self.round and not self.turns else "Row"

    @property
    def turns(self) -> bool:
        """Whether a row of it turns before its end."""
        return any(row.turn is not None for row in self.rows)

    @property
    def sided(self) -> bool:
        """Whether some rows are worked from the wrong side."""
        return any(not row.rs for row in self.rows)


@dataclass(frozen=True, slots=True)
class Left:
    """A motif of which no chart can be drawn, and why, in words."""

    name: str
    reason: str
