"""Row numbers that are still free: a span that is taken already is passed in one step."""

from __future__ import annotations


class Free:
    """Whole numbers, all free at first.

    Each number that is taken points further on; the pointers on a way are drawn out to its end,
    so that passing a taken span again and again costs as good as nothing.
    """

    def __init__(self) -> None:
        self._next: dict[int, int] = {}

    def at_or_above(self, number: int) -> int:
        """The smallest free number that is at least `number`."""
        following = self._next
        end = number
        while end in following:
            end = following[end]
        while number != end:
            following[number], number = end, following[number]
        return end

    def take(self, number: int) -> int:
        """Take a free number; gives the next free one above it."""
        end = self.at_or_above(number + 1)
        self._next[number] = end
        return end
