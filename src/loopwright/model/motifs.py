"""A motif of its lines: which line gives which row, and which rows are worked as others."""

from __future__ import annotations

from loopwright.model.blocks import MotifBlock, edge_of
from loopwright.model.free import Free
from loopwright.model.notebook import Notebook
from loopwright.model.pattern import Motif, Row, RowClash, RowGap
from loopwright.model.rows import NOT_A_ROW, Bodies, no_such_row, refer_to_strand, row_of
from loopwright.notation import tree
from loopwright.notation.bounds import MAX_MOTIF_ROWS
from loopwright.notation.source import Span
from loopwright.record import dataclass, field

_End = tuple[tree.Body, int] | tree.AsRow
_Clash = tuple[int, Span, Span]


@dataclass(frozen=True, slots=True)
class _Line:
    """A row line with its place in the file."""

    placed: tree.Placed
    node: tree.RowLine

    @property
    def base(self) -> int:
        return self.placed.base

    @property
    def span(self) -> Span:
        """Its place in the file."""
        return self.node.span.shifted(self.placed.base)


@dataclass(slots=True)
class _Given:
    """The row lines of a motif: by the numbers they give, and those for every row of a kind.

    `clashes` are numbers that two lines give; `nameless` where a line gives none.
    """

    rows: dict[int, _Line] = field(default_factory=dict)
    free: Free = field(default_factory=Free)
    every: list[_Line] = field(default_factory=list)
    clashes: list[_Clash] = field(default_factory=list)
    nameless: bool = False
    in_round: bool = False


def motif_of(block: MotifBlock, bodies: Bodies, notes: Notebook) -> Motif:
    """The motif of a block; rows that are missing, or given twice, are noted."""
    head = block.head
    lines = [
        _Line(placed, placed.statement)
        for placed in block.lines
        if isinstance(placed.statement, tree.RowLine)
    ]
    given = _given(lines, notes)
    last = _last_row(given, head.starts_ws)
    chosen = dict(given.rows)
    for number in range(1, last + 1):
        if number not in chosen:
            line = _every_for(number, given.every, head.starts_ws)
            if line is not None:
                chosen[number] = line
    missing = tuple(n for n in range(1, last + 1) if n not in chosen)
    if missing and not given.nameless:
        notes.gaps.append(RowGap(head.name, missing, last, head.span))
    ends: dict[int, _End] = {}
    rows = tuple(_row(n, chosen, ends, head.name.text, bodies, notes) for n in sorted(chosen))
    if not lines:
        notes.error(
            "row-missing",
            f"the motif “{head.name.text}” has no rows",
            "A motif is made of its rows, and none stands under this line.",
            head.span,
            "write “row 1: …” under it.",
        )
    in_round = head.in_round or given.in_round
    edge = edge_of(block.lines)
    motif = Motif(head.name, head.form, head.starts_ws, in_round, edge, rows, head.span)
    notes.clashes += [RowClash(motif, n, again, first) for n, again, first in given.clashes]
    return motif


# --- which line gives which row ---------------------------------------------------------------


def _given(lines: list[_Line], notes: Notebook) -> _Given:
    given = _Given()
    for line in lines:
        node = line.node
        given.in_round = given.in_round or node.round
        refer_to_strand(node, line.base, notes)
        if node.every is not None:
            given.every.append(line)
        elif not node.numbers:
            given.nameless = True
            notes.error(
                "line-unclear",
                "the row has no number",
                "Inside a motif every row says which one it is.",
                line.span,
                "write “row 1: …”, or “every ws row: …”.",
            )
        for part in node.numbers if node.every is None else ():
            _add(given, line, part, notes)
    return given


def _add(given: _Given, line: _Line, part: tree.RowSpan, notes: Notebook) -> None:
    """Enter a line for some of its numbers: 6-10, or one."""
    low, high = part.first.values[0], part.last.values[0]
    if high > MAX_MOTIF_ROWS or low < 1 or high < low:
        _bad_numbers(part, line.base, low, high, notes)
        return
    number = given.free.at_or_above(low)
    taken = low if number > low else None
    while number <= high:
        given.rows[number] = line
        after = number + 1
        number = given.free.take(number)
        if taken is None and after < number and after <= high:
            taken = after
    if taken is not None:
        given.clashes.append((taken, line.span, given.rows[taken].span))


def _bad_numbers(part: tree.RowSpan, base: int, low: int, high: int, notes: Notebook) -> None:
    span = part.span.shifted(base)
    if high > MAX_MOTIF_ROWS:
        notes.error(
            "number-too-big",
            "the motif has too many rows",
            f"Row {high:,} is asked for; a motif may have {MAX_MOTIF_ROWS:,} rows.",
            span,
            "let the piece repeat a shorter motif: “work NAME x8”.",
        )
    else:
        notes.error(
            "line-unclear",
            "these row numbers cannot be",
            f"Rows are counted from 1 upwards, and this says {low} to {high}.",
            span,
        )


def _last_row(given: _Given, starts_ws: bool) -> int:
    last = max(given.rows, default=0)
    if last == 0:
        wanted = [n for n in (1, 2) if _every_for(n, given.every, starts_ws)]
        alone = all(line.node.every == "all" for line in given.every)
        return min(len(wanted), 1) if alone else max(wanted, default=0)
    # An every-line also closes the motif: rows 1, 3, 5 and every ws row make six rows.
    if last % 2 == 1:
        line = _every_for(last + 1, given.every, starts_ws)
        if line is not None and line.node.every != "all":
            return last + 1
    return last


def _every_for(number: int, every: list[_Line], starts_ws: bool) -> _Line | None:
    """The every-line that gives a row: the narrower one where an ``every row`` stands beside."""
    odd = number % 2 == 1
    fits = {"all", "odd" if odd else "even", "rs" if odd != starts_ws else "ws"}
    found: _Line | None = None
    for line in every:
        if line.node.every in fits:
            if line.node.every != "all":
                return line
            found = found or line
    return found


# --- rows worked as other rows ----------------------------------------------------------------


def _row(
    number: int,
    chosen: dict[int, _Line],
    ends: dict[int, _End],
    name: str,
    bodies: Bodies,
    notes: Notebook,
) -> Row:
    """A row of the motif `name`, its body found where it is written out."""
    line = chosen[number]
    node, base = line.node, line.base
    if not isinstance(node.body, tree.AsRow):
        return row_of(number, line.placed, node, bodies.of(node.body, base), base, None)
    as_row = node.body.number
    found = _followed(number, chosen, ends)
    if isinstance(found, tree.AsRow):
        no_such_row(found, base, name, notes)
        return row_of(number, line.placed, node, NOT_A_ROW, base, as_row)
    body, body_base = found
    return row_of(number, line.placed, node, bodies.of(body, body_base), body_base, as_row)


def _followed(number: int, chosen: dict[int, _Line], ends: dict[int, _End]) -> _End:
    """The body at the end of a chain of ``as row`` with the base of its line, or the link
    that leads nowhere (no such row, or one of the chain again). `ends` keeps what was found, so
    that each row of a motif is passed once."""
    path: list[int] = []
    place: dict[int, int] = {}
    at = number
    while at not in ends:
        body = chosen[at].node.body
        if not isinstance(body, tree.AsRow):
            ends[at] = (body, chosen[at].base)
        elif body.number not in chosen:
            ends[at] = body
        elif body.number in place or body.number == at:
            path.append(at)
            ring = path[place.get(body.number, len(path) - 1) :]
            for one, before in zip(ring, [*ring[-1:], *ring[:-1]], strict=True):
                link = chosen[before].node.body
                assert isinstance(link, tree.AsRow)
                ends[one] = link
            at = ring[0]
        else:
            place[at] = len(path)
            path.append(at)
            at = body.number
    for one in path:
        ends.setdefault(one, ends[at])
    return ends[number]
