"""Numbers as the trade prints them."""

from __future__ import annotations

from collections.abc import Callable, Sequence

_ONES = (
    "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven",
    "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen",
)  # fmt: skip
_TENS = ("", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")


def in_words(number: int) -> str:
    """``seven``, ``forty-nine``; figures from 100 on."""
    if 0 <= number < 20:
        return _ONES[number]
    if number < 100:
        tens, ones = divmod(number, 10)
        return _TENS[tens] + (f"-{_ONES[ones]}" if ones else "")
    return str(number)


def sized(values: Sequence[int], show: Callable[[int], str] = str, apart: str = ", ") -> str:
    """``180 (240, 300)``, or one number where all agree; ``– (2, 4)`` where a size has none.

    `apart` is what parts the sizes: a language with a decimal comma has no comma for it.
    """
    if len(set(values)) == 1:
        return show(values[0])
    texts = [show(value) if value else "–" for value in values]
    return f"{texts[0]} ({apart.join(texts[1:])})"


def ordinal(number: int) -> str:
    """``6th``, ``2nd``, ``13th``."""
    tail = {1: "st", 2: "nd", 3: "rd"}.get(number % 10, "th")
    return f"{number}{'th' if number % 100 in (11, 12, 13) else tail}"
