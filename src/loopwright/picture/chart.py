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


UNREAD = "it cannot be read"
NEVER_TURNED = "its rows turn, and no piece works them, which would show where they begin"
TOO_LONG, TOO_LONG_ROUND = "it has more than {n} rows", "it has more than {n} rounds"
OFF_NEEDLE = "it holds, takes or picks up stitches"
TURNS_WIDE = "its rows turn, and they fit no small number of stitches that would show them"
TOO_WIDE = "no small number of stitches would show it whole"
NO_SQUARE = "it has a step that no square can show"
LEFT_WORDS = (TOO_LONG, TOO_LONG_ROUND, OFF_NEEDLE, TURNS_WIDE, TOO_WIDE, NO_SQUARE)
"""Why a motif that a piece works has no chart: messages."""


@dataclass(frozen=True, slots=True)
class Left:
    """A motif of which no chart can be drawn (in one size, if that is given), and why.

    `message` is one of the texts above, `n` its number where it has one.
    """

    name: str
    message: str
    n: int = 0
    size: str = ""

    @property
    def reason(self) -> str:
        """The message in English."""
        return self.message.format(n=self.n)
