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
    """``180 (240, 300)``, or one number where all agree; ``– (2, 4)`` where a size has none."""
    if len(set(values)) == 1:
        return show(values[0])
    texts = [show(value) if value else "–" for value in values]
    return f"{texts[0]} ({', '.join(texts[1:])})"


def ordinal(number: int) -> str:
    """``6th``, ``2nd``, ``13th``."""
    tail = {1: "st", 2: "nd", 3: "rd"}.get(number % 10, "th")
    return f"{number}{'th' if number % 100 in (11, 12, 13) else tail}"


def more_times(values: Sequence[int]) -> str:
    """`` once more``, `` seven more times``, ``, 96 (133, 168) more times``.

    Begins with what parts it from the row numbers before it: figures need the comma.
    """
    if len(set(values)) == 1:
        number = values[0]
        if number == 1:
            return " once more"
        if number == 2:
            return " twice more"
        if number < 100:
            return f" {in_words(number)} more times"
    return f", {sized(values)} more times"


def many_times(values: Sequence[int]) -> str:
    """`` once``, `` eight times``, ``, 120 times``, ``, 96 (133, 168) times``."""
    if len(set(values)) == 1 and values[0] < 100:
        return {1: " once", 2: " twice"}.get(values[0], f" {in_words(values[0])} times")
    return f", {sized(values)} times"


def times(values: Sequence[int]) -> str:
    """``once``, ``twice``, ``4 times``, ``4 (5, 6) times``."""
    if len(set(values)) == 1:
        return {1: "once", 2: "twice"}.get(values[0], f"{values[0]} times")
    return f"{sized(values)} times"


def count_text(values: Sequence[int | None]) -> str:
    """``(240 sts)``, ``(180, 240, 300 sts)``, ``(1 st)``; ``(–, 240 sts)`` for a size without."""
    if len(set(values)) == 1:
        return f"({values[0]} st{'' if values[0] == 1 else 's'})"
    return f"({', '.join('–' if v is None else str(v) for v in values)} sts)"
