"""The grammar, built once a process."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path

from lark import Lark

import loopwright.grammars
from loopwright.notation.shape import Shaper


def grammar_text() -> str:
    """The text of the grammar that the package carries."""
    return (Path(loopwright.grammars.__file__).parent / "loop.lark").read_text("utf-8")


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
