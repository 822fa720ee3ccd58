"""Measures in full words, for reading aloud: ``43¼ in`` is ``43 and a quarter inches``."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from loopwright.edition.catalogue import Catalogue

UNITS = {
    "cm": ("{n} centimetre", "{n} centimetres"),
    "mm": ("{n} millimetre", "{n} millimetres"),
    "in": ("{n} inch", "{n} inches"),
    "m": ("{n} metre", "{n} metres"),
    "yd": ("{n} yard", "{n} yards"),
    "g": ("{n} gram", "{n} grams"),
    "oz": ("{n} ounce", "{n} ounces"),
}
_FRACTIONS = {
    "¼": "a quarter", "½": "a half", "¾": "three quarters", "⅓": "a third",
    "⅔": "two thirds", "⅛": "an eighth", "⅜": "three eighths", "⅝": "five eighths",
    "⅞": "seven eighths",
}  # fmt: skip
_MEASURE = re.compile(r"(\d[\d.,]*)?([¼½¾⅓⅔⅛⅜⅝⅞])?( ?)(cm|mm|in|m|yd|g|oz)\b(?!\.\w)")
_ABBREVIATED = (
    (re.compile(r"\bsts\b"), "stitches"),
    (re.compile(r"\bst\b"), "stitch"),
    (re.compile(r"\brnds\b"), "rounds"),
    (re.compile(r"\brnd\b"), "round"),
    (re.compile(r"(?<=\d) ?× ?(?=\d)"), " by "),
)


def broken(unit: str, part: str) -> tuple[str, str]:
    """The messages for a whole number with a fraction of a unit, and for the fraction alone.

    ``("{n} and a quarter inches", "a quarter of an inch")``.
    """
    one, many = (message.removeprefix("{n} ") for message in UNITS[unit])
    said = _FRACTIONS[part]
    article = "an" if one[0] in "aeiou" else "a"
    return f"{{n}} and {said} {many}", f"{said} of {article} {one}"


# Of the figures that the editions print, only inches and ounces are in quarters.
BROKEN = tuple(broken(unit, part) for unit in ("in", "oz") for part in "¼½¾")


def measures_aloud(text: str, words: Catalogue) -> str:
    """Figures in both units (never a writer's text) as they are said in the words' language."""

    def said(match: re.Match[str]) -> str:
        whole, part, unit = match[1], match[2], match[4]
        if not whole and not part:
            return match[0]
        if not part:
            number = float(whole.replace(",", ""))
            return words.many(*UNITS[unit], number, n=whole)
        many, alone = broken(unit, part)
        if not whole:
            return words.text(alone) if words.is_english or alone in words.messages else match[0]
        if words.is_english or many in words.plurals:
            return words.many(many, many, float(whole.replace(",", "")), n=whole)
        return match[0]

    return _MEASURE.sub(said, text).replace(" / ", words.text(", or "))


def in_full(text: str, words: Catalogue) -> str:
    """An English writer's measures and abbreviations in full words; other texts stay."""
    if not words.is_english:
        return text
    text = measures_aloud(text, words)
    for pattern, word in _ABBREVIATED:
        text = pattern.sub(word, text)
    return text.replace(" = ", " make ")
