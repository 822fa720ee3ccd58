"""A piece of its lines, in their order; motifs are looked up by name."""

from __future__ import annotations

from collections.abc import Mapping

from loopwright.model.blocks import PieceBlock, edge_of
from loopwright.model.body import Body
from loopwright.model.notebook import Notebook
from loopwright.model.pattern import (
    BeginRound,
    BindOff,
    CastOn,
    Hold,
    Item,
    JoinRound,
    LeaveLive,
    LeaveRound,
    Motif,
    PickUp,
    Piece,
    PieceRow,
    Remark,
    Spread,
    Take,
    Work,
)
from loopwright.model.rows import NOT_A_ROW, Bodies, no_such_row, refer_to_strand, row_of
from loopwright.notation import tree
from loopwright.notation.quantity import Quantity

_Move = (
    tree.JoinLine | tree.HoldLine | tree.TakeLine | tree.PickLine | tree.LeaveLine | tree.BeginLine
)


def piece_of(
    block: PieceBlock, motifs: Mapping[str, Motif], bodies: Bodies, notes: Notebook
) -> Piece:
    """The piece of a block. Its names are noted, with the rows it cannot follow."""
    head = block.head
    items: list[Item] = []
    measures: dict[str, Quantity] = {}
    rows = _PieceRows(head.name.text, bodies, notes)
    for placed in block.lines:
        node = placed.statement
        if isinstance(node, tree.MeasureLine):
            measures.setdefault(node.kind, node.quantity)
        elif isinstance(node, tree.RowLine):
            items.append(rows.next(placed, node))
        elif isinstance(node, tree.WorkLine | tree.SpreadLine):
            items.append(_worked(node, placed.line, motifs, notes))
            rows.lose_count()
        elif isinstance(node, tree.CastOnLine | tree.BindOffLine):
            if node.strand:
                notes.refer("strand", node.strand)
            if isinstance(node, tree.CastOnLine):
                items.append(CastOn(node.count, node.strand, node.method, node.span, node.more))
            else:
                items.append(BindOff(node.strand, node.method, node.span))
        elif isinstance(node, tree.TextLine):
            items.append(Remark(node.kind, node.text, node.span))
        elif isinstance(node, _Move):
            items.append(_moved(node, notes))
    return Piece(
        head.name,
        head.in_round,
        head.starts_ws,
        edge_of(block.lines),
        measures.get("width"),
        measures.get("length"),
        tuple(items),
        head.span,
    )


def _worked(
    node: tree.WorkLine | tree.SpreadLine,
    line: int,
    motifs: Mapping[str, Motif],
    notes: Notebook,
) -> Work | Spread:
    """A line that works motifs."""
    if isinstance(node, tree.WorkLine):
        notes.refer("motif", node.motif)
        if isinstance(node.amount, tree.UntilSpent):
            notes.refer("strand", node.amount.strand)
        return Work(node.motif, motifs.get(node.motif.key), node.amount, node.span, line)
    notes.refer("motif", node.change)
    notes.refer("motif", node.plain)
    return Spread(
        node.change,
        motifs.get(node.change.key),
        node.times,
        node.plain,
        motifs.get(node.plain.key),
        node.over,
        node.span,
        line,
    )


def _moved(node: _Move, notes: Notebook) -> Item:
    """A line that moves stitches between needle, holders and pieces, or changes the rounds."""
    if isinstance(node, tree.HoldLine):
        return Hold(node.count, node.name, node.span)
    if isinstance(node, tree.TakeLine):
        return Take(node.names, False, node.span)
    if isinstance(node, tree.PickLine):
        if node.strand:
            notes.refer("strand", node.strand)
        return PickUp(node.count, node.strand, node.edge, node.span)
    if isinstance(node, tree.LeaveLine):
        return LeaveLive(node.text, node.span) if node.live else LeaveRound(node.span)
    if isinstance(node, tree.BeginLine):
        return BeginRound(node.count, node.span)
    if node.names:
        return Take(node.names, True, node.span)
    return JoinRound(node.span)


class _PieceRows:
    """The rows of a piece; they are numbered on while the number is the same in every size."""

    def __init__(self, name: str, bodies: Bodies, notes: Notebook) -> None:
        self._name = name
        self._bodies = bodies
        self._notes = notes
        self._numbered: dict[int, tuple[Body, int]] = {}  # with the base of the body's line
        self._at: int | None = 1

    def lose_count(self) -> None:
        """How many rows a motif is worked for is not known here."""
        self._at = None

    def next(self, placed: tree.Placed, node: tree.RowLine) -> PieceRow:
        """The row of a line."""
        base = placed.base
        refer_to_strand(node, base, self._notes)
        times, first, last = _how_often(node, base)
        as_row: int | None = None
        if isinstance(node.body, tree.AsRow):
            as_row = node.body.number
            found = self._numbered.get(as_row)
            if found is None:
                no_such_row(node.body, base, self._name, self._notes)
            body, body_base = found or (NOT_A_ROW, base)
        else:
            body, body_base = self._bodies.of(node.body, base), base
        row = row_of(0, placed, node, body, body_base, as_row)
        if first is not None:
            self._at = first.values[0]
        if self._at is not None:
            self._numbered.setdefault(self._at, (body, body_base))
            if times is not None:
                same = len(set(times.values)) == 1
                self._at = self._at + times.values[0] if same else None
            elif last is not None:
                self._at = last.values[0] + 1
        return PieceRow(row, times, first, last, row.place)


def _how_often(
    node: tree.RowLine, base: int
) -> tuple[tree.Count | None, tree.Count | None, tree.Count | None]:
    """What the numbers of a piece's row line say: how many times, or the first and last row."""
    if not node.numbers:
        return tree.Count((1,), node.span.shifted(base)), None, None
    first, last = node.numbers[0], node.numbers[-1]
    plain = len(node.numbers) == 1 and first.first is first.last
    shifted = tree.Count(first.first.values, first.first.span.shifted(base))
    if plain and node.plural:
        return shifted, None, None
    return None, shifted, tree.Count(last.last.values, last.last.span.shifted(base))
