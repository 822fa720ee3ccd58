"""The grammar and the reader made of its tables, once a process."""

from __future__ import annotations

from functools import lru_cache
from importlib import import_module
from pathlib import Path

from loopwright.notation.lalr import Reader, Tables
from loopwright.notation.shape import Shaper
from loopwright.notation.tables import make_tables, mark_of

TABLE_NAME = "loop.table"


def _folder() -> Path:
    # The folder lies outside src/, and Path is cheaper than importlib.resources.
    return Path(str(import_module("loopwright.grammars").__file__)).parent


def grammar_text() -> str:
    """The text of the grammar that the package carries."""
    return (_folder() / "loop.lark").read_text("utf-8")


def tables_text() -> str:
    """The tables of the grammar: those that lie beside it, or made anew where they are missing
    or belong to another grammar (a changed one, before ``make tables``)."""
    try:
        text = (_folder() / TABLE_NAME).read_text("utf-8")
    except (OSError, UnicodeDecodeError):
        text = ""
    grammar = grammar_text()
    if text.partition("\n")[0] == f"mark {mark_of(grammar)}":
        return text
    return make_tables(grammar)


@lru_cache(maxsize=1)
def line_reader() -> tuple[Reader, Shaper]:
    """The reader of one line and the shaper that its callbacks belong to."""
    shaper = Shaper()
    return Reader(Tables(tables_text()), shaper), shaper
