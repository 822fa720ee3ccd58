"""Units at the border: quantities from a command line read, and figures printed for a knitter.

Inside, lengths are plain floats in millimetres, yarn in metres and weight in grams. The unit words
of the notation have exact factors in `notation.quantity`; any other word ("5 ft", "2 lb") is looked
up in pint, which is imported only then: it costs a quarter of a second.
"""

from __future__ import annotations

import re
from functools import cache
from math import ceil, floor, isfinite
from typing import Any

from loopwright.notation.bounds import MAX_NUMBER
from loopwright.notation.quantity import (
    FRACTIONS,
    LENGTH_MM,
    UNIT_WORDS,
    WEIGHT_G,
    Quantity,
    read_number,
)
from loopwright.notation.source import Span

MAX_TEXT = 200
"""Characters of one quantity on a command line."""

_MARKS = {'"': "in", "″": "in", "”": "in", "''": "in", "'": "ft", "′": "ft", "’": "ft"}
_GLYPHS = "".join(FRACTIONS)
_NUMBER = rf"(?:[0-9]+(?:\.[0-9]+)?[{_GLYPHS}]?|[0-9]*\.[0-9]+|[{_GLYPHS}])"
_ONE_NUMBER = re.compile(_NUMBER)
_QUANTITY = re.compile(rf"({_NUMBER}(?:/{_NUMBER})*)\s*(.*)", re.DOTALL)
_NEGATIVE = re.compile(r"[-−]\s*[0-9.]")
_WORD = re.compile(r"[A-Za-z]+\.?")
_QUARTERS = ("", "¼", "½", "¾")
# Below ten, a whole metre or gram is too coarse a step.
_WHOLE_FROM = 10


def fraction(text: str) -> float:
    """Read ``7``, ``7.5``, ``7½`` or ``½``. Raises ValueError for anything else, signs too."""
    text = text.strip()
    if not _ONE_NUMBER.fullmatch(text):
        raise ValueError(f"“{_shown(text)}” is no number: write 7, 7.5 or 7½")
    return read_number(text)


def parse_quantity(text: str) -> Quantity:
    """Read a quantity as typed on a command line.

    ``150cm``, ``60 inches``, ``60"``, ``7½ in``, ``5 ft`` and ``90/120/150 cm`` (a number for each
    size). The result has one of the notation's units: a length in another unit is in cm, a weight
    in g; its span is the whole text. Raises ValueError with a sentence for the knitter.
    """
    text = text.strip()
    shown = _shown(text)
    if not text:
        raise ValueError("a quantity is missing: write a number and a unit, as in 150 cm")
    match = _QUANTITY.fullmatch(text) if len(text) <= MAX_TEXT else None
    if match is None and _NEGATIVE.match(text):
        raise ValueError(f"{shown} is less than nothing: a measure must be more than 0")
    if match is None:
        raise ValueError(f"“{shown}” is no quantity: write a number and a unit, as in 150 cm")
    numbers, word = match[1], match[2].strip()
    if not word:
        raise ValueError(f"{numbers} has no unit: write {numbers} cm or {numbers} in")
    unit, factor = _unit(word, numbers, shown)
    # Rounded, so that 5 ft is 152.4 cm also where a result is written into a source.
    values = tuple(round(read_number(number) * factor, 9) for number in numbers.split("/"))
    if min(values) <= 0:
        raise ValueError(f"{shown} is nothing: a measure must be more than 0")
    if max(values) > MAX_NUMBER:
        raise ValueError(f"{shown} is too much: a number may be {MAX_NUMBER:,} at most")
    return Quantity(values, unit, Span(0, len(text)))


def cm(mm: float) -> str:
    """``110 cm`` or ``21.5 cm``: to the nearest half centimetre."""
    return f"{_figure(_nearest(mm / 10, 2))} cm"


def inches(mm: float) -> str:
    """``43¼ in``: to the nearest quarter inch."""
    return f"{_in_quarters(mm / LENGTH_MM['in'])} in"


def both(mm: float) -> str:
    """``110 cm / 43¼ in``."""
    return f"{cm(mm)} / {inches(mm)}"


def at_least(mm: float) -> str:
    """``2.8 cm / 1¼ in``: the next tenth of a centimetre and quarter of an inch that are enough."""
    tenths, quarters = ceil(mm - 1e-6), ceil(mm / LENGTH_MM["in"] * 4 - 1e-6)
    return f"{_figure(tenths / 10)} cm / {_in_quarters(quarters / 4)} in"


def metres_and_yards(m: float) -> str:
    """``812 m / 888 yd``: whole numbers, tenths below ten."""
    return f"{_whole(m)} m / {_whole(m * 1000 / LENGTH_MM['yd'])} yd"


def grams_and_ounces(g: float) -> str:
    """``100 g / 3½ oz``: whole grams, tenths below ten; quarter ounces, tenths below an eighth."""
    ounces = g / WEIGHT_G["oz"]
    small = abs(ounces) < 1 / 8
    return f"{_whole(g)} g / {_figure(_nearest(ounces, 10)) if small else _in_quarters(ounces)} oz"


def _unit(word: str, numbers: str, shown: str) -> tuple[str, float]:
    """The unit of the notation for a word as typed, and how many of it one of the word is."""
    name = _MARKS.get(word, word)
    if _WORD.fullmatch(name) is None:
        if word[0] == ",":
            raise ValueError(f"“{shown}”: a broken number has a point, as in 7.5 cm")
        if "/" in numbers + word:
            raise ValueError(
                f"“{shown}”: a slash parts the sizes, as in 90/120 cm; write a half as 7½ or 7.5"
            )
        raise ValueError(f"“{shown}” is no quantity: write a number and a unit, as in 150 cm")
    name = name.removesuffix(".")
    if name.lower() in UNIT_WORDS:
        return UNIT_WORDS[name.lower()], 1.0
    found = _from_pint(name) or _from_pint(name.lower())
    if found is None:
        raise ValueError(
            f"“{_shown(word)}” is no unit of length or weight: write {numbers} cm or {numbers} in"
        )
    return found


def _from_pint(name: str) -> tuple[str, float] | None:
    """A unit of the notation and how many of it one `name` is, or None where pint has no such."""
    import pint

    registry = _registry()
    try:
        # `name` is letters only, so pint has no expression to evaluate.
        one = registry.Quantity(1.0, registry.Unit(name))
        if one.check("[length]"):
            return "cm", float(one.m_as("cm"))
        if one.check("[mass]"):
            return "g", float(one.m_as("g"))
    except (pint.PintError, ValueError, TypeError, AttributeError):
        return None
    return None


@cache
def _registry() -> Any:
    import pint

    return pint.UnitRegistry()


def _nearest(value: float, parts: int) -> float:
    """`value` to the nearest 1/`parts`, halves away from zero, and never a negative zero."""
    if not isfinite(value):
        raise ValueError(f"{value} is no figure to print")
    steps = floor(abs(value) * parts + 0.5)
    return (-steps if value < 0 else steps) / parts if steps else 0.0


def _figure(value: float) -> str:
    return f"{value:.0f}" if value == int(value) else f"{value:.1f}"


def _whole(value: float) -> str:
    return _figure(_nearest(value, 1 if abs(value) >= _WHOLE_FROM else 10))


def _in_quarters(value: float) -> str:
    quarters = int(_nearest(value, 4) * 4)
    whole, rest = divmod(abs(quarters), 4)
    digits = f"{whole}{_QUARTERS[rest]}" if whole else _QUARTERS[rest] or "0"
    return f"-{digits}" if quarters < 0 else digits


def _shown(text: str) -> str:
    """The text for a message: short, and without anything a terminal would act on."""
    clean = "".join(c if c.isprintable() else "\N{REPLACEMENT CHARACTER}" for c in text)
    return clean if len(clean) <= 40 else clean[:39] + "…"
