"""The words of a catalogue for reading aloud, and measures in full words.

``43¼ in`` is ``43 and a quarter inches``.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from loopwright.record import replace

if TYPE_CHECKING:
    from loopwright.edition.catalogue import Catalogue

ENGLISH_ALOUD = {
    "Rnd": "Round",
    "Rnds": "Rounds",
    "rnd": "round",
    "rnds": "rounds",
    "Between the shaping rnds, {text}.": "Between the shaping rounds, {text}.",
    "Work the shaping rnd {when}.": "Work the shaping round {when}.",
    "Work the shaping rnd {when}; then work {rest} without shaping.": "Work the shaping round "
    "{when}; then work {rest} without shaping.",
    "Work the {name} rnds in turn between the shaping rnds.": "Work the {name} rounds in turn "
    "between the shaping rounds.",
    "{stitches} {sts} and {rows} {row} = {size}": "{stitches} {sts} and {rows} {row} make {size}",
}
"""What English itself says otherwise aloud than in print."""

SIDES = {"RS": "right side", "WS": "wrong side"}
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


def aloud(words: Catalogue) -> Catalogue:
    """The same words for reading aloud: no abbreviation, and measures in full words."""
    if words.aloud:
        return words
    said = ENGLISH_ALOUD if words.is_english else words.spoken
    messages = {**words.messages, **said}
    short = dict(words.short)
    for name in ("st", "sts", "rep", "foll"):
        short[name] = words.term(name)[1]
    for name, message in SIDES.items():
        short[name] = messages.get(message, message)
    return replace(words, messages=messages, short=short, aloud=True)


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
