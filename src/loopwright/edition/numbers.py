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


def sized(values: Sequence[int], show: Callable[[int], str] = str) -> str:
    """``180 (240, 300)``, or one number where all agree."""
    if len(set(values)) == 1:
        return show(values[0])
    return f"{show(values[0])} ({', '.join(show(v) for v in values[1:])})"
