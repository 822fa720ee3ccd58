"""Names near to a mistyped one, for "did you mean"."""

from __future__ import annotations

from collections.abc import Iterable


def distance(one: str, other: str, limit: int = 2) -> int:
    """Typing slips between two words: letters added, dropped, changed or swapped.

    The optimal string alignment distance; gives ``limit + 1`` as soon as it is above `limit`.
    """
    if abs(len(one) - len(other)) > limit:
        return limit + 1
    older: list[int] = []
    row = list(range(len(other) + 1))
    for i, letter in enumerate(one, 1):
        previous, row = row, [i]
        for j, wanted in enumerate(other, 1):
            best = min(previous[j] + 1, row[j - 1] + 1, previous[j - 1] + (letter != wanted))
            if i > 1 and j > 1 and letter == other[j - 2] and one[i - 2] == wanted:
                best = min(best, older[j - 2] + 1)
            row.append(best)
        if min(row) > limit:
            return limit + 1
        older = previous
    return min(row[-1], limit + 1)


def nearest(word: str, known: Iterable[str]) -> str | None:
    """The one known word within a small distance of `word`, or None (also where two tie).

    One slip is allowed up to four letters, two above; a word of one letter has no neighbours.
    """
    word = word.casefold()
    limit = 0 if len(word) < 2 else 1 if len(word) <= 4 else 2
    if limit == 0:
        return None
    found = sorted(
        (score, name)
        for name in set(known)
        if (score := distance(word, name.casefold(), limit)) <= limit
    )
    if not found or (len(found) > 1 and found[0][0] == found[1][0]):
        return None
    return found[0][1]
