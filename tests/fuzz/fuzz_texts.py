"""Pieces of text that a page, a terminal or a program might take for more than text."""

from __future__ import annotations

import random
from collections.abc import Sequence

UNSEEN = ["\u202e", "\u2066", "\u2068", "\u200f", "\u200b", "\u00ad", "\ufeff", "\u2028", "\x00",
          "\x1b[31m", "\x9b2J", "\u3164", "\U000e0041"]  # fmt: skip
WRITTEN = [
    "שלום (3)", "مرحبا ١٢", "می\u200cخواهم", "👩\u200d🌾", "e\u0301", "<script>", "</main>",
    "&amp;", "'", "\\", "{{ 7*7 }}", "{n}", "%s", "[red]", "]]>", "--", "*", "( )", "1/2",
    "10 cm / 4 in", "x" * 90, " ",
]  # fmt: skip
"""Of the former each is a problem wherever it stands, of the latter none in a text."""


def strange(tokens: list[str], dice: random.Random, pool: Sequence[str]) -> None:
    """Something strange inside a text in quotes, or a comment, of a source cut into tokens."""
    places = [at for at, token in enumerate(tokens) if len(token) > 1 and token[0] in '"-']
    if places:
        at = dice.choice(places)
        token = tokens[at]
        middle = dice.randrange(1, len(token)) if token[0] == '"' else len(token)
        what = dice.choice(WRITTEN if dice.random() < 0.7 else UNSEEN)
        tokens[at] = token[:middle] + what + token[middle:]
