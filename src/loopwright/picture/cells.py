"""A motif laid out as the cells of a chart: right-side view, the first row at the bottom."""

from __future__ import annotations

from collections.abc import Sequence

from loopwright.count.tape import tape_of
from loopwright.count.walk import Walk, Worked
from loopwright.model.body import Fill, Group, Step, Stitches
from loopwright.model.pattern import Motif, Pattern, Row
from loopwright.picture.columns import Cell, Columns
from loopwright.picture.faces import NO_STITCH, KeyEntry, key_entry, symbol_of
from loopwright.picture.frames import Frame, Window, frames_of
from loopwright.picture.ground import Ground, ground_of
from loopwright.picture.steps import Laid, Op, lay_out
from loopwright.record import dataclass

_FIRST = ("k", "p", "k tbl", "p tbl", "yo")
_MOST_ROWS = 400


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
class ChartRow:
    """A row as drawn. `placed` goes from right to left and holds no empty squares.

    `strand` is its name where the pattern has more than one, with the colours it begins with.
    """

    number: int
    rs: bool
    strand: str
    colours: tuple[str, ...]
    placed: tuple[Placed, ...]
    marks: tuple[Mark, ...]
    blank: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Chart:
    """A motif as a chart. `rows` go upwards from row 1; `size` is set where sizes differ."""

    name: str
    size: str
    round: bool
    columns: int
    rows: tuple[ChartRow, ...]
    frames: tuple[Frame, ...]
    key: tuple[KeyEntry, ...]
    start: int

    @property
    def title(self) -> str:
        """``Woven``, with the size where the chart is that of one size."""
        text = self.name.replace("-", " ").replace("_", " ")
        return text[:1].upper() + text[1:] + (f", size {self.size}" if self.size else "")

    @property
    def word(self) -> str:
        return "Rnd" if self.round else "Row"


@dataclass(frozen=True, slots=True)
class Left:
    """A motif of which no chart can be drawn, and why, in words."""

    name: str
    reason: str


@dataclass(frozen=True, slots=True)
class _Use:
    """How a motif is first worked: sides, and how many stitches hang."""

    rs: bool
    round: bool
    count: int | None
    again: bool


def charts_of(
    pattern: Pattern, walks: Sequence[Walk], sizes: Sequence[int]
) -> tuple[tuple[Chart, ...], tuple[Left, ...]]:
    """The charts of every motif, in the order of the source, and the motifs that have none.

    A motif whose rows differ from size to size has a chart for each of `sizes`.
    """
    charts: list[Chart] = []
    left: list[Left] = []
    for motif in pattern.motifs:
        made: list[Chart] = []
        for size in sizes[: None if _sized(motif) else 1]:
            name = pattern.sizes[size] if _sized(motif) and len(sizes) > 1 else ""
            found = chart_of(pattern, motif, walks, size, name)
            if isinstance(found, Left):
                left.append(found)
                break
            made.append(found)
        charts += made
    return tuple(charts), tuple(left)


def chart_of(
    pattern: Pattern, motif: Motif, walks: Sequence[Walk], size: int, size_name: str = ""
) -> Chart | Left:
    """The chart of one motif in one size."""
    if not motif.rows or any(row.body.broken for row in motif.rows):
        return Left(motif.name.text, "a row of it cannot be read")
    if len(motif.rows) > _MOST_ROWS:
        return Left(motif.name.text, f"it has more than {_MOST_ROWS} rows")
    use = _use(motif, walks, size)
    rows = motif.rows
    if len(rows) % 2 and use.again and not use.round:
        rows = rows * 2  # worked flat, every second time falls on the other side
    tapes = [tape_of(row.body, size) for row in rows]
    if any(tape.turns for tape in tapes):
        return Left(motif.name.text, "its rows turn before their end, which a chart cannot show")
    ground = ground_of(motif, tapes, use.round, use.count)
    if ground is None:
        return Left(
            motif.name.text, "its rows fit no small number of stitches that would show them"
        )
    try:
        return _Draughtsman(pattern, motif, rows, use, ground, size, size_name).draw()
    except ValueError:
        return Left(motif.name.text, "a row of it holds a step that no square can show")


def _sized(motif: Motif) -> bool:
    """Whether its rows say something else for another size."""
    return any(_lists(row.body.steps) for row in motif.rows)


def _lists(steps: Sequence[Step]) -> bool:
    for step in steps:
        if isinstance(step, Stitches):
            if len(set(step.count)) > 1:
                return True
            continue
        if isinstance(step, Group):
            for count in (step.times, step.into):
                if count is not None and len(set(count.values)) > 1:
                    return True
        if isinstance(step, Group | Fill) and _lists(step.steps):
            return True
    return False


def _use(motif: Motif, walks: Sequence[Walk], size: int) -> _Use:
    for walk in walks:
        if walk.size != size:
            continue
        count = next((s.count for s in walk.sites if s.motif is motif), None)
        mine = [e for e in walk.events if isinstance(e, Worked) and e.motif is motif]
        if mine:
            rows = sum(e.rows for e in mine)
            return _Use(mine[0].rs, mine[0].round, count, rows > len(motif.rows))
    return _Use(motif.is_rs(1), motif.in_round, None, False)


class _Draughtsman:
    def __init__(
        self,
        pattern: Pattern,
        motif: Motif,
        rows: tuple[Row, ...],
        use: _Use,
        ground: Ground,
        size: int,
        size_name: str,
    ) -> None:
        self.pattern = pattern
        self.motif = motif
        self.rows = rows
        self.use = use
        self.ground = ground
        self.size = size
        self.size_name = size_name
        self.columns = Columns(ground.start)
        self.drawn_by: dict[str, tuple[Op, int]] = {}

    def draw(self) -> Chart:
        laid: list[tuple[bool, tuple[Op, ...], list[Cell]]] = []
        spans: list[list[Window]] = []
        for index, row in enumerate(self.rows):
            rs = self.use.round or self.use.rs == (index % 2 == 0)
            worked = lay_out(row.body, self.size, self.ground.times[index])
            ops = worked.ops if rs else worked.ops[::-1]
            stitches = tuple(op for op in ops if not op.is_marker)
            cells = self.columns.work(stitches)
            laid.append((rs, ops, cells))
            spans.append(_windows(worked, self.ground.growth[index], rs, cells))
        place = {column: at for at, column in enumerate(self.columns.order)}
        rows = []
        strand = self._last_strand()
        for index, (rs, ops, cells) in enumerate(laid):
            row = self.rows[index]
            if row.strand is not None:
                strand = row.strand.key
            rows.append(self._row(index, rs, ops, cells, place, strand))
        edge = self.motif.edge.count.at(self.size) if self.motif.edge else 0
        frames = frames_of(spans, place, len(self.columns.order), edge)
        return Chart(
            self.motif.name.text,
            self.size_name,
            self.use.round,
            len(self.columns.order),
            tuple(rows),
            frames,
            self._key(rows),
            self.ground.start,
        )

    def _last_strand(self) -> str | None:
        """The strand that row 1 goes on with where it names none: that of the row before it."""
        for row in reversed(self.rows):
            if row.strand is not None:
                return row.strand.key
        return None

    def _row(
        self,
        index: int,
        rs: bool,
        ops: tuple[Op, ...],
        cells: list[Cell],
        place: dict[int, int],
        strand: str | None,
    ) -> ChartRow:
        stitches = [op for op in ops if not op.is_marker]
        placed: list[Placed] = []
        filled: set[int] = set()
        for cell in cells:
            op = stitches[cell.op]
            at = [place[column] for column in cell.columns]
            symbol = symbol_of(op, rs)
            one = Placed(symbol, min(at), max(at))
            placed.append(one)
            filled.update(range(one.right, one.left + 1))
            self.drawn_by.setdefault(symbol, (op, one.cells))
        blank = tuple(c for c in range(len(place)) if c not in filled)
        name, colours = self._strand(strand)
        marks = tuple(_marks(ops, placed, cells, rs))
        for mark in marks:
            op = next(o for o in ops if o.is_marker and symbol_of(o, rs) == mark.symbol)
            self.drawn_by.setdefault(mark.symbol, (op, 1))
        return ChartRow(index + 1, rs, name, colours, tuple(placed), marks, blank)

    def _strand(self, key: str | None) -> tuple[str, tuple[str, ...]]:
        if key is None or len(self.pattern.strands) < 2:
            return "", ()
        strand = self.pattern.strand(key)
        if strand is None:
            return "", ()
        shade = self.pattern.shade(strand.feeds[0].shade.key) if strand.feeds else None
        return strand.name.text, shade.colours[:1] if shade is not None else ()

    def _key(self, rows: list[ChartRow]) -> tuple[KeyEntry, ...]:
        used = list(self.drawn_by)
        if any(row.blank for row in rows):
            used.append(NO_STITCH)
        out = []
        for symbol in sorted(used, key=_rank):
            op, cells = self.drawn_by.get(symbol, (None, 1))
            out.append(key_entry(symbol, op, cells))
        return tuple(out)


def _rank(symbol: str) -> tuple[int, int, str]:
    if symbol == NO_STITCH:
        return (2, 0, "")
    return (0, _FIRST.index(symbol), "") if symbol in _FIRST else (1, 0, symbol)


def _marks(ops: tuple[Op, ...], placed: list[Placed], cells: list[Cell], rs: bool) -> list[Mark]:
    """Markers on the lines between columns; `ops` in the order of the view, from the right."""
    marks: list[Mark] = []
    last = {cell.op: one.left for cell, one in zip(cells, placed, strict=True)}
    stitch, boundary = 0, 0
    for op in ops:
        if op.is_marker:
            marks.append(Mark(symbol_of(op, rs), boundary))
        else:
            boundary = last.get(stitch, boundary - 1) + 1
            stitch += 1
    return marks


def _windows(worked: Laid, growth: tuple[int, ...], rs: bool, cells: list[Cell]) -> list[Window]:
    """For each fill with a repeat: where one repeat of it may be framed, in the view's order."""
    stitches = [op for op in worked.ops if not op.is_marker]
    place: list[int] = []  # of each op (markers too) among the stitches
    at = 0
    for op in worked.ops:
        place.append(at)
        at += not op.is_marker
    place.append(at)
    marks = {place[i] for i, op in enumerate(worked.ops) if op.is_marker}
    by_op: dict[int, list[int]] = {}
    for cell in cells:
        by_op.setdefault(cell.op, []).extend(cell.columns)
    columns = tuple(by_op.get(i, []) for i in range(len(stitches)))
    windows = []
    for stretch in worked.stretches:
        times = growth[stretch.index] if stretch.index < len(growth) else 0
        if not times:
            continue
        start, stop = place[stretch.start], place[stretch.stop]
        wide = (place[stretch.start + stretch.unit] - start) * times
        # Stitches beside the fill that go on as it does may take part: * k2 p2 * k2 is also
        # k2 * p2 k2 *, and the frame runs straighter if it may be either.
        while start and start not in marks and stitches[start - 1] == stitches[start - 1 + wide]:
            start -= 1
        while (
            stop < len(stitches) and stop not in marks and stitches[stop] == stitches[stop - wide]
        ):
            stop += 1
        if not rs:
            start, stop = len(stitches) - stop, len(stitches) - start
        windows.append(Window(start, stop, wide, columns))
    return windows if rs else windows[::-1]
