"""What each strand eats, part by part of the work: sums of series, never a loop over the rows.

A part is a lump (an edge, an end) or rows repeated. The yarn of a repeated row is
``fixed + unit·k`` metres in repeat k, so that k repeats are ``fixed·k + unit·k(k - 1)/2``.
"""

from __future__ import annotations

from bisect import bisect_right

from loopwright.count.repeat import Entry
from loopwright.count.walk import Worked
from loopwright.model.pattern import Motif, Piece, Row
from loopwright.record import dataclass
from loopwright.yarn.place import stitch_at

CAST_ON, BIND_OFF, PICK_UP, END = "cast-on", "bind-off", "picking up", "end"


@dataclass(frozen=True, slots=True)
class Lump:
    """Yarn eaten at one place: an edge of `stitches`, or the end that is woven in.

    `piece` is the place of the piece in the pattern, `row` the row after which it lies (0: before
    the first), `metres` its yarn.
    """

    kind: str
    piece: int
    row: int
    strand: str | None
    metres: float
    stitches: int = 0

    def metres_of(self, strand: str | None) -> float:
        return self.metres if strand == self.strand else 0.0


@dataclass(frozen=True, slots=True)
class RowYarn:
    """One row of a repeat: its strand, its yarn in metres as ``fixed + unit·k``, its counts.

    `loop` is the length of a plain loop in metres there; `shift` is what k lags behind the
    repeats of `entry`.
    """

    strand: str | None
    fixed: float
    unit: float
    entry: Entry
    shift: int
    loop: float

    @property
    def row(self) -> Row:
        return self.entry.row

    def metres(self, k: int) -> float:
        """The yarn of the row in repeat k (from 0)."""
        return self.fixed + self.unit * k

    def stitches(self, k: int) -> int:
        """The stitches that the row begins with in repeat k."""
        return self.entry.start.at(k + self.shift)

    def fills(self, k: int) -> tuple[int, ...]:
        """How often each fill of the row is repeated in repeat k."""
        return tuple(fill.at(k + self.shift) for fill in self.entry.fills)


@dataclass(frozen=True, slots=True)
class Rows:
    """`rows` worked `reps` times, from row `first` on.

    `item` is the place of the line in its piece, `event` the rows as the walk worked them.
    """

    piece: int
    item: int
    motif: Motif | None
    first: int
    rows: tuple[RowYarn, ...]
    reps: int
    event: Worked

    def is_round(self, row: int) -> bool:
        """Whether a row, by its number in the piece, goes all the way round."""
        return self.event.is_round(row - self.event.first_row)

    @property
    def count(self) -> int:
        return len(self.rows) * self.reps

    @property
    def last(self) -> int:
        return self.first + self.count - 1

    def series(self, strand: str | None) -> tuple[float, float]:
        """The yarn of one repeat for a strand: ``fixed + unit·k``."""
        fixed = unit = 0.0
        for row in self.rows:
            if row.strand == strand:
                fixed += row.fixed
                unit += row.unit
        return fixed, unit

    def metres_of(self, strand: str | None) -> float:
        return self.through(strand, self.count)

    def through(self, strand: str | None, rows: int) -> float:
        """The yarn of the first `rows` rows."""
        k, rest = divmod(rows, len(self.rows))
        fixed, unit = self.series(strand)
        whole = fixed * k + unit * (k * (k - 1) / 2)
        if not rest:
            return whole
        return whole + sum(row.metres(k) for row in self.rows[:rest] if row.strand == strand)

    def repeats_within(self, strand: str | None, metres: float) -> int:
        """The most whole repeats that `metres` of a strand are enough for."""
        fixed, unit = self.series(strand)
        low, high = 0, self.reps + 1  # low fits, high is too many
        while high - low > 1:
            k = (low + high) // 2
            if fixed * k + unit * (k * (k - 1) / 2) <= metres:
                low = k
            else:
                high = k
        return low


Part = Lump | Rows


@dataclass(frozen=True, slots=True)
class Spot:
    """A place in the work: after `stitch` stitches of row `row` of a piece.

    `where` is ``row``, ``cast-on``, ``bind-off`` or ``end``; `row` is then the row before it.
    `stitches` is what the row (or edge) has, `before` the strand's yarn up to the row's start and
    `into` the yarn of the row before the spot. `part` and `line` lead back to the part, `k` is the
    repeat; `round` tells that `row` is a round.
    """

    where: str
    piece: int
    row: int
    stitch: int
    stitches: int
    before: float
    into: float
    part: int
    line: int = 0
    k: int = 0
    round: bool = False


class Ledger:
    """All the parts of one size in the order of the work, piece after piece."""

    def __init__(
        self,
        size: int,
        pieces: tuple[Piece, ...],
        parts: list[Part],
        spread: dict[str | None, float],
    ) -> None:
        self.size = size
        self.pieces = pieces
        self.parts = tuple(parts)
        self.spread = spread
        self._sums: dict[str | None, tuple[list[int], list[float]]] = {}
        self._by_piece: dict[int, list[Rows]] | None = None

    @property
    def strands(self) -> tuple[str | None, ...]:
        """The strands that eat anything, in the order of their first use."""
        found: dict[str | None, None] = {}
        for part in self.parts:
            if isinstance(part, Lump):
                found.setdefault(part.strand)
            else:
                for row in part.rows:
                    found.setdefault(row.strand)
        return tuple(found)

    def sums(self, strand: str | None) -> tuple[list[int], list[float]]:
        """The parts that a strand eats in, and its yarn up to the end of each."""
        known = self._sums.get(strand)
        if known is None:
            places: list[int] = []
            sums: list[float] = []
            so_far = 0.0
            for place, part in enumerate(self.parts):
                metres = part.metres_of(strand)
                if metres > 0:
                    so_far += metres
                    places.append(place)
                    sums.append(so_far)
            known = self._sums[strand] = (places, sums)
        return known

    def total(self, strand: str | None) -> float:
        """All the yarn of a strand in metres."""
        sums = self.sums(strand)[1]
        return sums[-1] if sums else 0.0

    def through(self, strand: str | None, piece: int, row: int) -> float:
        """The yarn of a strand when row `row` of a piece is done (0: after its cast-on)."""
        so_far = 0.0
        for part in self.parts:
            if part.piece > piece:
                break
            if isinstance(part, Lump):
                if part.piece < piece or _before(part, row):
                    so_far += part.metres_of(strand)
            elif part.piece < piece or part.last <= row:
                so_far += part.metres_of(strand)
            elif part.first <= row:
                so_far += part.through(strand, row - part.first + 1)
        return so_far

    def spot(self, strand: str | None, metres: float) -> Spot | None:
        """Where a strand has eaten `metres`; None where it never eats more than that."""
        places, sums = self.sums(strand)
        at = bisect_right(sums, metres)
        if at >= len(places):
            return None
        before = sums[at - 1] if at else 0.0
        place = places[at]
        part = self.parts[place]
        left = metres - before
        if isinstance(part, Lump):
            stitch = int(part.stitches * left / part.metres) if part.metres else 0
            return Spot(
                part.kind,
                part.piece,
                part.row,
                stitch,
                part.stitches,
                before,
                left,
                place,
                round=self.is_round(part.piece, part.row),
            )
        k = part.repeats_within(strand, left)
        fixed, unit = part.series(strand)
        done = fixed * k + unit * (k * (k - 1) / 2)
        left, before = max(left - done, 0.0), before + done
        last = None
        for line, row in enumerate(part.rows):
            if row.strand != strand:
                continue
            need = row.metres(k)
            last = (line, row, need)
            if left < need:
                break
            left, before = left - need, before + need
        else:
            # Rounding put the spot behind the last row of the part: it is at that row's end.
            if last is None:
                return None
            left, before = last[2], before - last[2]
        line, row, _ = last
        stitch = stitch_at(
            row.row.body.steps, row.stitches(k), row.fills(k), self.size, left / row.loop
        )
        number = part.first + k * len(part.rows) + line
        return Spot(
            "row",
            part.piece,
            number,
            stitch,
            row.stitches(k),
            before,
            left,
            place,
            line,
            k,
            part.is_round(number),
        )

    def is_round(self, piece: int, row: int) -> bool:
        """Whether a row of a piece goes all the way round; False where there is none."""
        part = self.rows_at(piece, row)
        return part is not None and part.is_round(row)

    def rows_at(self, piece: int, row: int) -> Rows | None:
        """The part that row `row` of a piece is worked in; None where there is none."""
        if self._by_piece is None:
            self._by_piece = {}
            for part in self.parts:
                if isinstance(part, Rows):
                    self._by_piece.setdefault(part.piece, []).append(part)
        parts = self._by_piece.get(piece, [])
        at = bisect_right(parts, row, key=lambda part: part.first) - 1
        return parts[at] if at >= 0 and row <= parts[at].last else None


def _before(lump: Lump, row: int) -> bool:
    """Whether a lump of the same piece is done when row `row` is: the last edge only at the end."""
    return lump.row < row or (lump.row == row and lump.kind != BIND_OFF and row == 0)
