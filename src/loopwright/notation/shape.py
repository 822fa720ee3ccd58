"""Turns what the parser reduces into tree nodes, while it parses: a class for each kind of line."""

from __future__ import annotations

from loopwright.notation.shape_header import HeaderLines
from loopwright.notation.shape_materials import MaterialLines
from loopwright.notation.shape_pieces import PieceLines
from loopwright.notation.shape_rows import RowLines


class Shaper(HeaderLines, MaterialLines, RowLines, PieceLines):
    """The parser's callbacks, one method for each rule of the grammar.

    Before a line is read, `original` and `base` are set and the two lists emptied (see `Values`).
    """
