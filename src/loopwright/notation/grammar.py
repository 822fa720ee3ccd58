"""The grammar, built once a process."""

from __future__ import annotations

from functools import lru_cache
from importlib import import_module
from pathlib import Path

from lark import Lark

from loopwright.notation.shape import Shaper


def grammar_text() -> str:
    """The text of the grammar that the package carries."""
    # Found by name: the folder lies outside src/, and Path is cheaper than importlib.resources.
    package = import_module("loopwright.grammars")
    return Path(str(package.__file__)).with_name("loop.lark").read_text("utf-8")


@lru_cache(maxsize=1)
def line_parser() -> tuple[Lark, Shaper]:
    """The LALR parser of one line and the shaper that its callbacks belong to."""
    shaper = Shaper()
    parser = Lark(
        grammar_text(),
        parser="lalr",
        start=["line"],
        transformer=shaper,
        maybe_placeholders=False,
    )
    return parser, shaper
