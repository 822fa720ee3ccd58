"""The phrases of print around the steps of a row: how far, how often, how many are left."""

from __future__ import annotations

import re

from loopwright.notation.habits.counts import NUMBER, NUMBER_OR_TWO, STITCHES


def _shape(text: str) -> re.Pattern[str]:
    return re.compile(
        text.replace("NUMBER_2", NUMBER_OR_TWO)
        .replace("NUMBER", NUMBER)
        .replace("STITCHES", STITCHES),
        re.I,
    )


_OF_ROW = r"(?:\s+of\s+(?:the\s+|this\s+)?(?:row|round|rnd|rd|needle)s?)?"
END = _shape(
    rf"[\s,;]*(?:(?:to|until|till)\s+(?:the\s+)?end{_OF_ROW}|(?:all\s+(?:the\s+way\s+)?)?"
    r"(?:across|around)(?:\s+(?:the\s+)?(?:whole\s+|entire\s+)?(?:row|round|rnd))?)(?![\w])"
)
LAST = _shape(
    r"[\s,;]*(?:to|until|till)\s+(?:(?:the\s+)?last\s+(?P<n>NUMBER)?\s*(?:STITCHES)?|"
    r"(?P<rem>NUMBER)\s*(?:STITCHES)\s+(?:rem(?:ains?|ain)?|left|before\s+(?:the\s+)?end"
    rf"{_OF_ROW}))\b\.?"
)
MARKER = _shape(
    r"[\s,;]*(?:to|until|till)\s+(?:(?:the\s+)?(?P<n>NUMBER)\s*(?:STITCHES)?\s+before\s+)?"
    r"(?:the\s+)?(?:next\s+|first\s+|last\s+)?(?:marker|m|mkr)(?![\w])"
)
MORE = _shape(
    r"[\s,;]*(?:(?P<n>NUMBER|once|twice)\s+more(?:\s+times?)?|(?P<m>NUMBER)\s+times?\s+more)"
    r"(?![\w])"
)
IN_ALL = _shape(
    r"[\s,;]*(?:(?P<n>NUMBER)\s+times?|(?P<m>twice|thrice)|(?P<o>NUMBER)\s*x|x\s*(?P<p>NUMBER))"
    r"[\s,]*(?:in\s+(?:all|total)|altogether|total)(?![\w])"
)
TIMES = _shape(
    r"[\s,;]*(?:(?P<n>NUMBER)\s*-?\s*times?|(?P<m>once|twice|thrice)|x\s*(?P<o>NUMBER)"
    r"|(?P<p>NUMBER)\s*x)(?![\w])"
)
REPEAT = _shape(
    r"[\s,;.:]*\b(?:rep(?:eat)?(?:ing|ed)?|cont(?:inue)?)\b\.?"
    r"(?:\s+(?:from|between|the\s+(?:part|section)\s+between)\s+(?:the\s+)?(?:first\s+)?"
    r"(?:\*'?s?|stars|asterisks?)(?:\s*(?:to|and|-)\s*(?:the\s+)?(?:next\s+|second\s+)?\*"
    r"(?:s\b)?)?)?"
)
REPEAT_STAR = _shape(r"[\s,;.:]*\b(?:rep(?:eat)?(?:ing)?|cont(?:inue)?)\b")
INTO = _shape(
    r"[\s,;]*(?:all\s+)?in(?:to)?\s+(?:the\s+)?(?:(?:next|same|first|last|1|one)\s+)+STITCHES"
)
INTO_OURS = _shape(r"\s*in\s+(?P<n>NUMBER)(?![\w])(?!\s*STITCHES)")
ENDING = _shape(r"(?:,?\s*)(?:end(?:ing)?|finish(?:ing)?)(?:\s+(?:with|by))?(?=[\s:])[\s:]*")
CLAIM = _shape(
    r"[\s,;.:]*(?:(?P<mark>[(\[]|[-=]+>?|→)\s*)?(?:you\s+(?:should\s+)?(?:now\s+)?have\s+)?"
    r"(?P<n>NUMBER_2)\s*(?:STITCHES)\s*(?:in\s+total|total|in\s+all|rem(?:ain(?:s|ing)?)?|left|"
    r"on\s+(?:the\s+)?needles?|now)?\.?\s*[)\]]?\s*\.?\s*$"
)
CHANGE = _shape(
    r"[\s,;.:]*(?:[(\[]|-+)?\s*(?P<n>NUMBER)\s*(?:STITCHES)?\s*"
    r"(?P<way>inc|dec)(?:'?d|r?eased|\.)?\.?\s*[)\]]?\s*\.?\s*$"
)
CLAIM_OURS = _shape(
    r"[\s,;]*(?P<arrow>=>|->|→|=)\s*(?P<sign>[-+−]?)\s*(?P<n>NUMBER)\s*(?:STITCHES)?\s*\.?$"
)
BARE_CLAIM = _shape(r"[\s,;.:]*[(\[]\s*(?P<n>\d+)\s*[)\]]\s*\.?\s*$")
SEPARATOR = re.compile(r"[\s,]+|;|\.(?=\s|$)|(?:and|then)\b(?:\s+then\b)?", re.I)
WORD = re.compile(r"[^\W\d_][\w&]*(?:/\d+)*(?:\s*\(\s*\d+(?:\s*,\s*\d+)+\s*\))?")
ALL = _shape(
    r"(?P<stitch>knit|purl|k|p)(?=[\s,;]+(?:(?:to|until|till)\b|(?:all\s+)?(?:across|around)\b))"
)
WHOLE = _shape(
    r"(?P<stitch>knit|purl|k|p)(?![\w])(?:\s+(?:(?:in\s+)?(?:all|every|each|the|rem(?:aining)?)\b\s*)+"
    r"(?:STITCHES)?|\s+(?:the\s+)?(?:whole|entire)\s+(?:row|round|rnd))?"
    r"(?P<rest>[\s.]*$|(?=\s*[(\[.,;:=→-]))"
)
AS_ROW = _shape(
    r"(?:(?:work\s+)?(?:the\s+)?(?:same\s+)?as\s+(?:for\s+)?|rep(?:eat)?\s+|like\s+)"
    r"(?P<what>row|round|rnd)\s*(?P<n>\d+)[\s.]*$"
)
RIB = _shape(
    r"(?:work\s+)?(?:in\s+)?(?P<a>[kp]\s?\d+)[\s,/]+(?P<b>[kp]\s?\d+)\s+rib(?:bing)?"
    rf"(?:\s+(?:as\s+set\s+)?(?:to\s+(?:the\s+)?end{_OF_ROW}|across))?[\s.]*$"
)
