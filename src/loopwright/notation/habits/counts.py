"""Numbers as print writes them, and what stitch words take."""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import lru_cache

from loopwright.facts.tables import table

_NAMED = ("one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
          "eleven", "twelve")  # fmt: skip
_VALUE = {name: str(number) for number, name in enumerate(_NAMED, 1)}
_TENS = ("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")
_VALUE |= {name: str(10 * number) for number, name in enumerate(_TENS, 2)}
_VALUE |= {"once": "1", "twice": "2", "thrice": "3"}

# One number, a size list of ours, or one of print: 180 (240, 300) and 180 (240) 300.
NUMBER = (
    r"(?:\d{1,10}(?:/\d{1,10}){1,40}|\d{1,10}\s*[(\[]\s*\d{1,10}(?:\s*[,;:/]\s*\d{1,10}){1,40}\s*"
    r"[)\]]|\d{1,10}|(?:"
    + "|".join(_NAMED)
    + ")\\b|(?:"
    + "|".join(_TENS)
    + ")(?:[- ](?:"
    + "|".join(_NAMED[:9])
    + r"))?\b)"
)
# As above; two sizes alone (180 (240)) are told from other brackets by what follows.
NUMBER_OR_TWO = r"(?:\d{1,10}\s*[(\[]\s*\d{1,10}\s*[)\]]|" + NUMBER + ")"
STITCHES = r"(?:stitches|stitch|sts|st)\b\.?"


def number(text: str) -> str:
    """A number as the notation has it: ``180 (240, 300)`` is ``180/240/300``, ``two`` is 2."""
    lowered = text.strip().lower()
    parts = re.split("[- ]", lowered)
    if all(part in _VALUE for part in parts):
        return str(sum(int(_VALUE[part]) for part in parts))
    return "/".join(re.findall(r"\d+", lowered))


def values(text: str) -> tuple[int, ...]:
    """The values of a number of ours, one a size."""
    return tuple(int(part) for part in text.split("/"))


def total(parts: list[tuple[int, ...]]) -> tuple[int, ...] | None:
    """The sum of numbers size by size; None where the size lists differ in length."""
    sizes = max((len(part) for part in parts), default=1)
    if any(len(part) not in (1, sizes) for part in parts):
        return None
    return tuple(
        sum(part[size] if len(part) > 1 else part[0] for part in parts) for size in range(sizes)
    )


def times(one: tuple[int, ...], other: tuple[int, ...]) -> tuple[int, ...] | None:
    """The product of two numbers size by size; None where the size lists differ in length."""
    if len(one) > 1 and len(other) > 1 and len(one) != len(other):
        return None
    sizes = max(len(one), len(other))
    return tuple(
        (one[size] if len(one) > 1 else one[0]) * (other[size] if len(other) > 1 else other[0])
        for size in range(sizes)
    )


@lru_cache(maxsize=1)
def _trade() -> Mapping[str, int]:
    return {row["word"]: int(row["takes"]) for row in table("stitches")}


def takes(word: str, own: Mapping[str, int]) -> tuple[int, ...] | None:
    """How many stitches a word of the notation takes, by size; None for an unknown word."""
    known = {**_trade(), **own}
    if word in known:
        return (known[word],)
    family = re.fullmatch(r"[kp](\d{1,3})tog|[ct](\d{1,3})[fb]", word)
    if family:
        width = int(family[1] or family[2])
        return (width,) if width >= 2 else None
    counted = re.fullmatch(r"(.*?)(\d+(?:/\d+)*)", word)
    if counted and counted[1]:
        one = takes(counted[1], own) if not counted[1][-1].isdigit() else None
        return None if one is None else tuple(one[0] * value for value in values(counted[2]))
    return None
