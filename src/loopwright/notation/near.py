"""Names near to a mistyped one, for "did you mean"."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable


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


_LETTERS = "abcdefghijklmnopqrstuvwxyz"
_LONGEST = 24
_SHORTEST = 3  # letters of a word that one slip can still be told from another


def one_slip(word: str, known: Iterable[str]) -> str | None:
    """The one known word that is a single slip of the keys away, or None where that is not sure.

    Surer than `nearest`, since a fix may never guess: no second word lies as near, the slip is
    in the letters (a digit tells two names apart on purpose), and the word is no mere initial.
    """
    word = word.casefold()
    names = {name.casefold(): name for name in known}
    if word in names:
        return None
    near = [name for key, name in names.items() if distance(word, key, 1) == 1]
    if len(near) != 1 or _digits(near[0]) != _digits(word):
        return None
    return near[0] if _is_sure(word, near[0].casefold()) else None


def slips_of(word: str, is_known: Callable[[str], bool]) -> list[str]:
    """Every known word a single slip of the letters away, where the known cannot be listed."""
    word = word.casefold()
    made: set[str] = set()
    if len(word) > _LONGEST:
        return []
    for at in range(len(word) + 1):
        head, tail = word[:at], word[at:]
        made.update(head + letter + tail for letter in _LETTERS)
        if not tail:
            continue
        if len(tail) > 1:
            made.add(head + tail[1] + tail[0] + tail[2:])
        if not tail[0].isdigit():
            made.add(head + tail[1:])
            made.update(head + letter + tail[1:] for letter in _LETTERS)
    made -= {word, ""}
    near = sorted(other for other in made if _digits(other) == _digits(word) and is_known(other))
    return [other for other in near if _is_sure(word, other)] if len(near) == 1 else near


def _digits(word: str) -> str:
    return re.sub(r"\D", "", word)


def _is_sure(word: str, other: str) -> bool:
    """Whether two words share enough letters; a doubled letter is plain in the shortest too."""
    if len(re.sub(r"[\W\d_]", "", word)) >= _SHORTEST:
        return len(re.sub(r"[\W\d_]", "", other)) >= 2
    return re.sub(r"(.)\1", r"\1", word) == other
