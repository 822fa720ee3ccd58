"""Rows laid out stitch by stitch, as columns seen from the right side.

A fabric is as wide as its repeats, so a layout narrows it first: whole repeats of the fills are
left out as long as every row still fits. What a column does in the narrow layout, every column
like it does in the wide one. Only rows with at most one fill are laid out, and only up to a bound
of cells; everything else is answered with None, never with a guess.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from math import lcm

from loopwright.count.tape import FILL, Tape
from loopwright.model.body import Body, Fill, Group, Step, Stitches, words_of
from loopwright.model.pattern import Pattern, PieceRow, Row
from loopwright.notation.tree import Special
from loopwright.record import dataclass

MAX_WIDTH = 2_000
"""Cells a laid-out row may have."""

MAX_CELLS = 200_000
"""Cells that are laid out for one run of rows."""


@dataclass(frozen=True, slots=True)
class Cell:
    """One thing worked: a stitch word once, or a group worked into `takes` stitches.

    `filled` is true inside a fill. `span` counts from the start of the body's line.
    """

    step: Stitches | Group
    takes: int
    makes: int
    filled: bool

    @property
    def is_slip(self) -> bool:
        """Slipped as it is: the loop stays on the needle unworked."""
        return isinstance(self.step, Stitches) and self.step.stitch.word == "sl"


@dataclass(frozen=True, slots=True, eq=False)
class LaidRow:
    """A row's cells in the order in which it works them; `rs` tells the way."""

    row: Row
    rs: bool
    cells: tuple[Cell, ...]

    def from_right(self) -> tuple[Cell, ...]:
        """The cells as they lie from the right edge, seen from the right side."""
        return self.cells if self.rs else self.cells[::-1]


def slips(body: Body) -> bool:
    """Whether a body slips a stitch anywhere."""
    return any(word.stitch.word == "sl" for word in words_of(body.steps))


def slipping_bodies(pattern: Pattern) -> set[int]:
    """The ids of the bodies that slip a stitch; equal lines share one body, so they are few."""
    bodies = {id(row.body): row.body for motif in pattern.motifs for row in motif.rows}
    for piece in pattern.pieces:
        for item in piece.items:
            if isinstance(item, PieceRow):
                bodies[id(item.row.body)] = item.row.body
    return {key for key, body in bodies.items() if slips(body)}


def is_sized(body: Body) -> bool:
    """Whether a body has a size list, so that it differs from size to size."""
    return any(True for _ in _size_lists(body.steps))


def _size_lists(steps: tuple[Step, ...]) -> Iterator[Step]:
    for step in steps:
        if isinstance(step, Stitches):
            if len(step.count) > 1:
                yield step
            continue
        if isinstance(step, Special):
            if step.count is not None and len(step.count.values) > 1:
                yield step
            continue
        if isinstance(step, Group):
            if any(c is not None and len(c.values) > 1 for c in (step.times, step.into)):
                yield step
        yield from _size_lists(step.steps)


def narrow(tapes: Iterable[Tape], count: int, spare: int = 3) -> tuple[int, int] | None:
    """A count as few as `spare` repeats allow that every row takes as it takes `count`.

    Gives it with the stitches of the repeat that all rows share (1 where no row has a fill, or
    only ``* k1 *``). None where a row cannot be laid out.
    """
    unit, need, fixed = 1, 0, False
    for tape in tapes:
        fills = tape.fills
        if tape.broken or tape.trouble is not None or len(fills) > 1:
            return None
        if fills:
            unit = lcm(unit, fills[0].takes)
        else:
            fixed = True  # written out: its stitches cannot be made fewer
        need = max(need, tape.fixed_takes)
        if unit > MAX_WIDTH:
            return None
    if not fixed:
        need += spare * unit
        if count > need:
            count -= (count - need) // unit * unit
    return (count, unit) if 0 < count <= MAX_WIDTH else None


def cells_of(body: Body, tape: Tape, size: int, count: int) -> tuple[Cell, ...] | None:
    """The cells of a row over `count` stitches; None where it does not come out or is too long."""
    fills = [op for op in tape.ops if op.kind == FILL]
    times, left = 0, count - tape.fixed_takes
    if tape.broken or tape.trouble is not None or len(fills) > 1:
        return None
    if fills and fills[0].takes:
        times, left = divmod(left, fills[0].takes)
    if left != 0 or times < 0:
        return None
    cells: list[Cell] = []
    return tuple(cells) if _expand(body.steps, size, times, False, cells) else None


def _expand(steps: tuple[Step, ...], size: int, fill: int, filled: bool, out: list[Cell]) -> bool:
    """Append the cells of steps; False where they are too many."""
    for step in steps:
        if isinstance(step, Stitches):
            stitch, number = step.stitch, step.number(size)
            if stitch.kind == "marker":
                continue
            if len(out) + number > MAX_WIDTH:
                return False
            out += [Cell(step, stitch.takes, stitch.makes, filled)] * number
        elif isinstance(step, Special):
            return False  # holders and short rows: no column is followed through them
        elif isinstance(step, Group) and step.into is not None:
            inner: list[Cell] = []
            if not _expand(step.steps, size, 0, filled, inner):
                return False
            out.append(Cell(step, step.into.at(size), sum(c.makes for c in inner), filled))
        else:
            number = fill if isinstance(step, Fill) else step.number(size)
            inside = filled or isinstance(step, Fill)
            once: list[Cell] = []
            if not _expand(step.steps, size, fill, inside, once):
                return False
            if len(out) + len(once) * number > MAX_WIDTH:
                return False
            out += once * number
    return True


def lay_out(
    rows: Sequence[Row],
    tapes: Sequence[Tape],
    size: int,
    count: int,
    reps: int,
    rs: bool,
    in_round: bool,
) -> list[LaidRow] | None:
    """`rows` worked `reps` times over `count` stitches, the first a right-side row if `rs`.

    `tapes` belong to the rows, in order. None where a row does not come out or the whole is too
    large.
    """
    laid: list[LaidRow] = []
    known: dict[tuple[int, int], tuple[Cell, ...] | None] = {}  # equal lines share a body
    total = 0
    if len(rows) * reps > MAX_CELLS // 4:
        return None
    for _ in range(reps):
        for row, tape in zip(rows, tapes, strict=True):
            key = (id(row.body), count)
            if key not in known:
                known[key] = cells_of(row.body, tape, size, count)
            cells = known[key]
            if cells is None:
                return None
            total += len(cells)
            if total > MAX_CELLS:
                return None
            laid.append(LaidRow(row, rs or in_round, cells))
            count = sum(cell.makes for cell in cells)
            rs = not rs
    return laid


@dataclass(frozen=True, slots=True)
class SlipRun:
    """A stitch slipped in `length` rows on end, the last of them row `at` (from 0) of a layout.

    `column` counts from 1 at the right edge, seen from the right side; `strand` is that of the row
    that made the stitch (None: not known, or cast on).
    """

    length: int
    at: int
    column: int
    cell: Cell
    strand: str | None


def slip_runs(laid: Sequence[LaidRow], strands: Sequence[str | None]) -> Iterator[SlipRun]:
    """Every slip of a layout with how many rows on end its stitch has now been slipped.

    Loops are followed one by one, so it holds where counts change as well. `strands` says what
    each row is worked with.
    """
    loops: list[tuple[int, str | None]] | None = None
    for at, row in enumerate(laid):
        if loops is None:
            loops = [(0, None)] * sum(cell.takes for cell in row.cells)
        width = sum(cell.makes for cell in row.cells)
        meets = loops if row.rs else loops[::-1]
        out: list[tuple[int, str | None]] = []
        taken = 0
        for cell in row.cells:
            if cell.is_slip:
                age, strand = meets[taken]
                column = len(out) + 1 if row.rs else width - len(out)
                out.append((age + 1, strand))
                yield SlipRun(age + 1, at, column, cell, strand)
            else:
                out += [(0, strands[at])] * cell.makes
            taken += cell.takes
        loops = out if row.rs else out[::-1]


@dataclass(frozen=True, slots=True, eq=False)
class SlipRow:
    """What a row slips in one repeat of a pattern.

    `columns` are those it slips, from 0 at the right of the repeat, seen from the right side;
    `written` is the unit of its fill as written, ``s`` for a slip and ``.`` for anything else.
    """

    row: Row
    rs: bool
    columns: frozenset[int]
    written: str


def slip_rows(
    rows: Sequence[Row], tapes: Sequence[Tape], size: int, count: int, rs: bool, in_round: bool
) -> tuple[tuple[SlipRow, ...], int] | None:
    """The columns that each row slips, in the middle of the fabric, and how many make a repeat.

    None where a row changes the count, slips outside a fill only, or cannot be laid out.
    """
    if not all(tape.even for tape in tapes):
        return None
    found = narrow(tapes, count, 6)
    if found is None:
        return None
    count, unit = found
    need = max((t.fixed_takes for t in tapes), default=0) + 3 * unit
    if any(not tape.fills for tape in tapes):
        return None
    while count < need:
        count += unit
    laid = lay_out(rows, tapes, size, count, 1, rs, in_round)
    if laid is None:
        return None
    # A stretch of one repeat that every row works inside its fill.
    low = max(_filled(row)[0] for row in laid)
    high = min(_filled(row)[1] for row in laid)
    start = -(-low // unit) * unit
    if start + unit > high:
        return None
    made: list[SlipRow] = []
    for row in laid:
        window = _per_stitch(row)[start : start + unit]
        columns = frozenset(i for i, cell in enumerate(window) if cell.is_slip)
        inside = [cell for cell in row.cells if cell.filled]
        length = _unit_cells(row, tapes[len(made)])
        written = "".join("s" if c.is_slip else "." for c in inside[:length])
        made.append(SlipRow(row.row, row.rs, columns, written * (unit // max(length, 1))))
    return tuple(made), unit


def _per_stitch(row: LaidRow) -> list[Cell]:
    """A cell for each stitch, from the right edge."""
    return [cell for cell in row.from_right() for _ in range(cell.takes)]


def _filled(row: LaidRow) -> tuple[int, int]:
    """The first column of a row's fill and the one behind its last, from the right edge."""
    per = _per_stitch(row)
    inside = [i for i, cell in enumerate(per) if cell.filled]
    return (inside[0], inside[-1] + 1) if inside else (len(per), 0)


def _unit_cells(row: LaidRow, tape: Tape) -> int:
    """How many cells one unit of the fill has."""
    inside = [cell for cell in row.cells if cell.filled]
    takes = sum(cell.takes for cell in inside)
    units = takes // tape.fills[0].takes if tape.fills else 0
    return len(inside) // units if units else 0
