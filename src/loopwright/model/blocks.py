"""Lines put into their blocks: the pattern, a motif or a piece, up to the next opening line."""

from __future__ import annotations

import re

from loopwright.model.notebook import Notebook
from loopwright.model.pattern import Edge
from loopwright.notation import tree
from loopwright.notation.parse import Parsed
from loopwright.notation.source import Span
from loopwright.problem import Label
from loopwright.record import dataclass, field

_OPENING = re.compile(r"\s*(pattern|motif|piece)\b", re.IGNORECASE)
_OFFERED = re.compile(r"^(?:write: |did you mean “)(?:pattern|motif|piece)\b", re.MULTILINE)
_IN_PATTERN = (
    tree.LevelLine,
    tree.CareLine,
    tree.SizesLine,
    tree.GaugeLine,
    tree.SwatchLine,
    tree.NeedleLine,
    tree.BoundLine,
    tree.JoinByLine,
    tree.MeasureLine,
)
_IN_PIECE = (
    tree.EdgeLine,
    tree.MeasureLine,
    tree.CastOnLine,
    tree.BindOffLine,
    tree.WorkLine,
    tree.JoinLine,
    tree.HoldLine,
    tree.TakeLine,
    tree.PickLine,
    tree.LeaveLine,
    tree.BeginLine,
    tree.SpreadLine,
)
_LINE_NAMES: dict[type, str] = {
    tree.LevelLine: "level",
    tree.CareLine: "care",
    tree.SizesLine: "sizes",
    tree.GaugeLine: "gauge",
    tree.SwatchLine: "swatch",
    tree.NeedleLine: "needle",
    tree.BoundLine: "bound",
    tree.JoinByLine: "join by",
    tree.EdgeLine: "edge",
    tree.RowLine: "row",
    tree.CastOnLine: "cast on",
    tree.BindOffLine: "bind off",
    tree.WorkLine: "work",
    tree.JoinLine: "join",
    tree.HoldLine: "hold",
    tree.TakeLine: "take",
    tree.PickLine: "pick up",
    tree.LeaveLine: "leave",
    tree.BeginLine: "begin",
    tree.SpreadLine: "spread",
}
_HOMES = {
    "section": "a piece",
    "edge": "a motif or a piece",
    "row": "a motif or a piece",
    "every": "a motif",
    "cast on": "a piece",
    "bind off": "a piece",
    "work": "a piece",
    "join": "a piece",
    "hold": "a piece",
    "take": "a piece",
    "pick up": "a piece",
    "leave": "a piece",
    "begin": "a piece",
    "spread": "a piece",
    "note": "the pattern or a piece",
    "width": "the pattern or a piece",
    "length": "the pattern or a piece",
}
"""The blocks that a line's first word belongs to; all others belong to the pattern."""

Single = tree.YarnLine | tree.ShadeLine | tree.StrandLine | tree.StitchLine


@dataclass(slots=True)
class MotifBlock:
    """A motif's opening line and the lines under it."""

    head: tree.MotifLine
    lines: list[tree.Placed] = field(default_factory=list)


@dataclass(slots=True)
class PieceBlock:
    """A piece's opening line and the lines under it."""

    head: tree.PieceLine
    lines: list[tree.Placed] = field(default_factory=list)


@dataclass(slots=True)
class Blocks:
    """The lines of a source by the block they stand in; `singles` are blocks of one line."""

    heads: list[tree.PatternLine] = field(default_factory=list)
    in_pattern: list[tree.Placed] = field(default_factory=list)
    singles: list[Single] = field(default_factory=list)
    motifs: list[MotifBlock] = field(default_factory=list)
    pieces: list[PieceBlock] = field(default_factory=list)


def blocks_of(parsed: Parsed, notes: Notebook) -> Blocks:
    """The blocks of a source; a line that stands in none of its own is noted and left out."""
    blocks = Blocks()
    where: str | None = None
    lines: list[tree.Placed] = []  # of the block that is open
    unread = _unread_openings(parsed)
    for placed in parsed.lines:
        node = placed.statement
        if unread and unread[-1] < placed.line:
            # What stands under it belongs to no block; that it could not be read is said already.
            while unread and unread[-1] < placed.line:
                unread.pop()
            where, lines = "unread", []
        if isinstance(node, tree.PatternLine):
            blocks.heads.append(node)
            where, lines = "pattern", blocks.in_pattern
        elif isinstance(node, tree.MotifLine):
            motif = MotifBlock(node)
            blocks.motifs.append(motif)
            where, lines = "motif", motif.lines
        elif isinstance(node, tree.PieceLine):
            piece = PieceBlock(node)
            blocks.pieces.append(piece)
            where, lines = "piece", piece.lines
        elif isinstance(node, Single):
            blocks.singles.append(node)
            where = "single"
        elif where == "unread":
            continue
        elif _fits(node, where):
            lines.append(placed)
        else:
            _out_of_place(placed, where, notes)
    _check_heads(blocks.heads, parsed, notes)
    return blocks


def _unread_openings(parsed: Parsed) -> list[int]:
    """The numbers of opening lines that could not be read, the last one first."""
    if not parsed.recovered:
        return []
    source = parsed.source
    read = {placed.line for placed in parsed.lines}
    told = {source.line_column(p.span.start)[0]: p.help for p in parsed.problems}
    return sorted(
        (
            n
            for n, help in told.items()
            # What is offered in its place may open a block where what was written does not.
            if n not in read and (_OPENING.match(source.line_text(n)) or _OFFERED.search(help))
        ),
        reverse=True,
    )


def edge_of(lines: list[tree.Placed]) -> Edge | None:
    """The edge that a block declares."""
    edges = [p.statement for p in lines if isinstance(p.statement, tree.EdgeLine)]
    return Edge(edges[0].count, edges[0].kind.key, edges[0].span) if edges else None


def _fits(node: tree.Statement, where: str | None) -> bool:
    if where == "pattern":
        if isinstance(node, tree.TextLine):
            return node.kind != "section"
        return isinstance(node, _IN_PATTERN)
    if where == "motif":
        return isinstance(node, tree.EdgeLine | tree.RowLine)
    if where == "piece":
        if isinstance(node, tree.TextLine):
            return node.kind in ("note", "section")
        if isinstance(node, tree.RowLine):
            return node.every is None
        return isinstance(node, _IN_PIECE)
    return False


def _out_of_place(placed: tree.Placed, where: str | None, notes: Notebook) -> None:
    node = placed.statement
    if isinstance(node, tree.TextLine | tree.MeasureLine):
        word = node.kind
    else:
        word = _LINE_NAMES.get(type(node), "this")
    span = node.span
    if isinstance(node, tree.RowLine):
        span = span.shifted(placed.base)
        word = "every" if node.every else word
    home = _HOMES.get(word, "the pattern")
    here = {
        None: "before any opening line",
        "single": "behind a one-line entry, which ends the block before it",
    }.get(where, f"in a {where}")
    notes.error(
        "out-of-place",
        f"“{word}” stands in the wrong block",
        f"The word “{word}” begins a line of {home}; this one stands {here}. A block "
        "runs from its opening line (pattern, motif, piece) to the next opening line.",
        span,
        f"move it under the opening line of {home}.",
    )


def _check_heads(heads: list[tree.PatternLine], parsed: Parsed, notes: Notebook) -> None:
    """A source has one pattern line."""
    if not heads and not parsed.recovered:
        end = parsed.lines[0].statement.span if parsed.lines else Span(0, 0)
        if parsed.lines and isinstance(parsed.lines[0].statement, tree.RowLine):
            end = end.shifted(parsed.lines[0].base)
        notes.error(
            "one-pattern",
            "the file names no pattern",
            "A source holds exactly one pattern, and this one has no “pattern” line.",
            end,
            'begin the file with pattern "Title of the pattern".',
        )
    for extra in heads[1:]:
        notes.error(
            "one-pattern",
            "the file names a second pattern",
            "A source holds exactly one pattern.",
            extra.span,
            "put the second pattern into a file of its own.",
            (Label(heads[0].span, "the first is here"),),
        )
