"""Other colours for a pattern's shades, as a maker types them."""

from __future__ import annotations

import re

from loopwright.model.pattern import Pattern
from loopwright.notation.hidden import visible
from loopwright.picture.thread import Colours
from loopwright.record import dataclass

_COLOUR = re.compile(r"#(?:[0-9a-f]{6}|[0-9a-f]{3})")
MOST = 24


@dataclass(frozen=True, slots=True)
class Choice:
    """Colours to try, with a name where they have one."""

    name: str
    colours: Colours


def read_choice(text: str, pattern: Pattern, name: str = "") -> Choice:
    """``kelp=#2f5d62, dune=#c9a66b``. Raises ValueError with a sentence for the maker."""
    known = {shade.name.key: shade.name.text for shade in pattern.shades}
    colours: dict[str, str] = {}
    for part in text.split(","):
        if not part.strip():
            continue
        word, sign, colour = (piece.strip() for piece in part.partition("="))
        if not sign:
            raise ValueError(f"“{_short(part)}” is no shade with its colour: write kelp=#2f5d62")
        if word.casefold() not in known:
            names = ", ".join(known.values()) or "none"
            raise ValueError(f"there is no shade “{_short(word)}”; the pattern has {names}")
        code = colour.lower()
        if not _COLOUR.fullmatch(code):
            raise ValueError(f"“{_short(colour)}” is no colour: write # and six figures, #2f5d62")
        if len(code) == 4:
            code = "#" + "".join(figure * 2 for figure in code[1:])
        colours[word.casefold()] = code
    return Choice(name, colours)


def read_choices(text: str, pattern: Pattern) -> list[Choice]:
    """A file of palettes: a line each, ``Harbour: kelp=#2f5d62, dune=#c9a66b``.

    The name and its colon may be left out; a name with nothing behind it shows the colours as the
    pattern has them. ``--`` begins a comment. Raises ValueError with the line's number.
    """
    choices = []
    for number, line in enumerate(text.splitlines(), 1):
        content = line.partition("--")[0].strip()
        if not content:
            continue
        name, sign, rest = content.partition(":")
        try:
            shown = visible(name.strip()) if sign else ""
            choice = read_choice(rest if sign else content, pattern, shown)
        except ValueError as error:
            raise ValueError(f"line {number}: {error}") from None
        choices.append(choice)
        if len(choices) > MOST:
            raise ValueError(f"line {number}: a sheet holds {MOST} palettes at most")
    if not choices:
        raise ValueError("the file holds no palette: write a line such as Harbour: kelp=#2f5d62")
    return choices


def _short(text: str) -> str:
    text = "".join(c if c.isprintable() else " " for c in text.strip())
    return text if len(text) <= 30 else text[:29] + "…"
