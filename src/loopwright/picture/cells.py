"""A motif laid out as the cells of a chart: right-side view, the first row at the bottom."""

from __future__ import annotations

from collections.abc import Sequence

from loopwright.count.live import summed, total
from loopwright.count.tape import tape_of
from loopwright.count.walk import Walk, Worked
from loopwright.model.body import Fill, Group, Step, Stitches, specials_of
from loopwright.model.pattern import Motif, Pattern, Row
from loopwright.notation.tree import Special
from loopwright.picture.chart import (
    NEVER_TURNED,
    NO_SQUARE,
    OFF_NEEDLE,
    TOO_LONG,
    TOO_LONG_ROUND,
    TOO_WIDE,
    TURNS_WIDE,
    UNREAD,
    Chart,
    ChartRow,
    Left,
    Mark,
    Placed,
    Turn,
)
from loopwright.picture.columns import Cell, Columns
from loopwright.picture.faces import NO_STITCH, TURNS, WAITING, KeyEntry, key_entry, symbol_of
from loopwright.picture.frames import Window, frames_of
from loopwright.picture.ground import Ground, ground_of
from loopwright.picture.steps import Laid, Op, lay_out
from loopwright.picture.turning import Start, turning_ground
from loopwright.record import dataclass, replace

_FIRST = ("k", "p", "k tbl", "p tbl", "yo")
_MOST_ROWS = 400
_OFF_NEEDLE = ("hold", "take", "pick")


@dataclass(frozen=True, slots=True)
class _Use:
    """How a motif is first worked: sides, and how many stitches hang."""

    rs: bool
    round: bool
    count: int | None
    again: bool
    worked: bool = True
    starts: tuple[Start, ...] = ()


def charts_of(
    pattern: Pattern, walks: Sequence[Walk], sizes: Sequence[int]
) -> tuple[tuple[Chart, ...], tuple[Left, ...]]:
    """The charts of every motif, in the order of the source, and the motifs that have none.

    A motif whose rows differ from size to size has a chart for each of `sizes`.
    """
    charts: list[Chart] = []
    left: list[Left] = []
    for motif in pattern.motifs:
        places = sizes[: None if _sized(motif) or _turns(motif) else 1]
        found = [chart_of(pattern, motif, walks, size) for size in places]
        if all(one == found[0] for one in found) and (
            not _sized(motif) or isinstance(found[0], Left)
        ):
            found = found[:1]
        elif len(sizes) > 1:
            found = [
                replace(one, size=pattern.sizes[size])
                for one, size in zip(found, places, strict=True)
            ]
        charts += [one for one in found if isinstance(one, Chart)]
        left += [one for one in found if isinstance(one, Left)]
    return tuple(charts), tuple(left)


def chart_of(pattern: Pattern, motif: Motif, walks: Sequence[Walk], size: int) -> Chart | Left:
    """The chart of one motif in one size."""
    name = motif.name.text
    if not motif.rows or any(row.body.broken for row in motif.rows):
        return Left(name, UNREAD)
    if len(motif.rows) > _MOST_ROWS:
        return Left(name, TOO_LONG_ROUND if motif.in_round else TOO_LONG, _MOST_ROWS)
    if any(step.kind in _OFF_NEEDLE for row in motif.rows for step in specials_of(row.body.steps)):
        return Left(name, OFF_NEEDLE)
    use = _use(motif, walks, size)
    rows = motif.rows
    if len(rows) % 2 and use.again and not use.round and not _turns(motif):
        rows = rows * 2  # worked flat, every second time falls on the other side
    tapes = [tape_of(row.body, size) for row in rows]
    if _turns(motif):
        ground = turning_ground(motif, tapes, use.starts, use.round)
        reason = TURNS_WIDE if use.starts or use.worked else NEVER_TURNED
    else:
        ground = ground_of(motif, tapes, use.round, use.count)
        reason = TOO_WIDE
    if ground is None:
        return Left(name, reason)
    rows = tuple(rows[at % len(rows)] for at in range(len(ground.times)))
    try:
        return _Draughtsman(pattern, motif, rows, use, ground, size).draw()
    except ValueError:
        return Left(name, NO_SQUARE)


def _turns(motif: Motif) -> bool:
    return any(tape_of(row.body, 0).turns for row in motif.rows)


def _sized(motif: Motif) -> bool:
    """Whether its rows say something else for another size."""
    return any(_lists(row.body.steps) for row in motif.rows)


def _lists(steps: Sequence[Step]) -> bool:
    for step in steps:
        if isinstance(step, Stitches):
            if len(set(step.count)) > 1:
                return True
            continue
        if isinstance(step, Special):
            if step.count is not None and len(set(step.count.values)) > 1:
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
    starts: list[Start] = []
    found: _Use | None = None
    for walk in walks:
        if walk.size != size:
            continue
        mine = [e for e in walk.events if isinstance(e, Worked) and e.motif is motif]
        for site in walk.sites:
            if site.motif is motif:
                rows = sum(e.rows for e in mine if e.item is site.item)
                starts += [Start(site.live, site.rs, site.round, rows)] if rows else []
        if mine and found is None:
            count = next((s.count for s in walk.sites if s.motif is motif), None)
            again = sum(e.rows for e in mine) > len(motif.rows)
            found = _Use(mine[0].rs, mine[0].round, count, again)
    if found is None:
        return _Use(motif.is_rs(1), motif.in_round, None, False, worked=False)
    return replace(found, starts=tuple(starts))


@dataclass(frozen=True, slots=True)
class _LaidRow:
    """A row laid out: its ops from the right, its cells, and the columns (as identities) of the
    stitches that wait to its right and to its left."""

    rs: bool
    worked: Laid
    ops: tuple[Op, ...]
    cells: tuple[Cell, ...]
    right: tuple[int, ...]
    left: tuple[int, ...]


class _Draughtsman:
    def __init__(
        self,
        pattern: Pattern,
        motif: Motif,
        rows: tuple[Row, ...],
        use: _Use,
        ground: Ground,
        size: int,
    ) -> None:
        self.pattern = pattern
        self.motif = motif
        self.rows = rows
        self.use = use
        self.ground = ground
        self.size = size
        self.columns = Columns(ground.start, _turns(motif))
        self.drawn_by: dict[str, tuple[Op, int]] = {}
        live = ground.live
        self.rs = use.rs
        # The loops to the right of the hands.
        behind = summed(live.behind).fixed if live.behind else 0
        self.at = behind if self.rs else total(live).fixed - behind

    def draw(self) -> Chart:
        laid = [self._lay(index, row) for index, row in enumerate(self.rows)]
        place = {column: at for at, column in enumerate(self.columns.order)}
        rows: list[ChartRow] = []
        strand = self._last_strand()
        for row, found in zip(self.rows, laid, strict=True):
            if row.strand is not None:
                strand = row.strand.key
            rows.append(self._row(len(rows), found, place, strand))
        spans = [_windows(one, self.ground.growth[index]) for index, one in enumerate(laid)]
        edge = self.motif.edge.count.at(self.size) if self.motif.edge else 0
        frames = frames_of(spans, place, len(self.columns.order), edge)
        return Chart(
            self.motif.name.text,
            "",
            self.use.round,
            len(self.columns.order),
            tuple(rows),
            frames,
            self._key(rows),
            self.ground.start,
            self.ground.notes,
        )

    def _lay(self, index: int, row: Row) -> _LaidRow:
        """Work a row from where the hands are."""
        rs, loops = self.rs, self.columns.loops
        worked = lay_out(row.body, self.size, self.ground.times[index])
        ops = worked.ops if rs else worked.ops[::-1]
        takes, turned = worked.takes, any(op.is_turn for op in ops)
        start, stop = (self.at, self.at + takes) if rs else (self.at - takes, self.at)
        if not turned and (start, stop)[rs] != (0, len(loops))[rs]:
            raise ValueError("a row that does not turn leaves stitches")
        right, left = tuple(loops[: max(start, 0)]), tuple(loops[stop:])
        cells = self.columns.work([op for op in ops if not op.is_point], start, stop, back=not rs)
        made = len(self.columns.loops) - len(right) - len(left)
        if turned or not self.use.round:
            self.at, self.rs = (start + made if rs else start), not rs
        else:
            self.at = 0
        return _LaidRow(rs, worked, ops, tuple(cells), right, left)

    def _last_strand(self) -> str | None:
        """The strand that row 1 goes on with where it names none: that of the row before it."""
        for row in reversed(self.rows):
            if row.strand is not None:
                return row.strand.key
        return None

    def _row(
        self, index: int, laid: _LaidRow, place: dict[int, int], strand: str | None
    ) -> ChartRow:
        rs, ops, cells = laid.rs, laid.ops, laid.cells
        stitches = [op for op in ops if not op.is_point]
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
        right, left = ([place[c] for c in side] for side in (laid.right, laid.left))
        waiting = tuple(sorted(c for c in (*right, *left) if c not in filled))
        blank = tuple(c for c in range(len(place)) if c not in filled and c not in waiting)
        name, colours = self._strand(strand)
        # The lines between which the row is worked.
        first = placed[0].right if placed else right[-1] + 1 if right else (left or [0])[0]
        last = placed[-1].left + 1 if placed else first
        marks = tuple(_marks(ops, placed, cells, rs, first))
        for mark in marks:
            op = next(o for o in ops if o.is_marker and symbol_of(o, rs) == mark.symbol)
            self.drawn_by.setdefault(mark.symbol, (op, 1))
        turn = None
        for op in ops:
            if op.is_turn:
                symbol = symbol_of(op, rs)
                beyond = left[:1] if rs else right[-1:]
                wraps = op.stitch is not None and op.stitch.word == "w&t"
                turn = Turn(symbol, last if rs else first, beyond[0] if wraps and beyond else -1)
                self.drawn_by.setdefault(symbol, (op, 2))
        return ChartRow(index + 1, rs, name, colours, tuple(placed), marks, blank, waiting, turn)

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
        if any(row.waiting for row in rows):
            used.append(WAITING)
        out = []
        for symbol in sorted(used, key=_rank):
            op, cells = self.drawn_by.get(symbol, (None, 1))
            out.append(key_entry(symbol, op, cells))
        return tuple(out)


def _rank(symbol: str) -> tuple[int, int, str]:
    if symbol == NO_STITCH:
        return (4, 0, "")
    if symbol == WAITING:
        return (3, 0, "")
    if symbol.removesuffix("~") in TURNS:
        return (2, 0, symbol)
    return (0, _FIRST.index(symbol), "") if symbol in _FIRST else (1, 0, symbol)


def _marks(
    ops: tuple[Op, ...], placed: list[Placed], cells: Sequence[Cell], rs: bool, first: int
) -> list[Mark]:
    """Markers on the lines between columns; `ops` in the order of the view, from the right."""
    marks: list[Mark] = []
    last = {cell.op: one.left for cell, one in zip(cells, placed, strict=True)}
    stitch, boundary = 0, first
    for op in ops:
        if op.is_marker:
            marks.append(Mark(symbol_of(op, rs), boundary))
        elif not op.is_turn:
            boundary = last.get(stitch, boundary - 1) + 1
            stitch += 1
    return marks


def _windows(laid: _LaidRow, growth: tuple[int, ...]) -> list[Window]:
    """For each fill with a repeat: where one repeat of it may be framed, in the view's order."""
    worked, rs, cells = laid.worked, laid.rs, laid.cells
    stitches = [op for op in worked.ops if not op.is_point]
    place: list[int] = []  # of each op (markers and turns too) among the stitches
    at = 0
    for op in worked.ops:
        place.append(at)
        at += not op.is_point
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
        windows.append(Window(start, stop, wide, columns, laid.right, laid.left))
    return windows if rs else windows[::-1]
