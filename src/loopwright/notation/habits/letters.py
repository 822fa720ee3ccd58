"""Characters that word processors and web pages put in place of plain ones."""

from __future__ import annotations

import re

_UNSEEN = re.compile(
    "[\u00ad\u061c\u180e\u200b-\u200f\u2060-\u2065\u206a-\u206f\ufeff\ufff9-\ufffb"
    "\U000e0000-\U000e007f]"
)
_SPACES = re.compile("[\u00a0\u1680\u2000-\u200a\u202f\u205f\u3000]")
_CURLY = re.compile("[“”„‟«»＂]")
_STARS = re.compile("[∗⁎＊✱✲٭]")
_DASHES = re.compile("[–—‒―‐‑]")
_PRIMES = re.compile("[″〞]|''|’’")
_SLASHES = re.compile("[⁄∕]")
_FRACTIONS = {"1/2": "½", "1/4": "¼", "3/4": "¾", "1/3": "⅓", "2/3": "⅔", "1/8": "⅛", "3/8": "⅜",
              "5/8": "⅝", "7/8": "⅞"}  # fmt: skip


def plain(line: str) -> str:
    """The line with plain quotes, and outside of quotes with plain dashes, stars and spaces."""
    line = _CURLY.sub('"', _UNSEEN.sub("", line))
    parts = line.split('"')
    if len(parts) % 2 == 0 and len(parts) > 2:
        return line
    # An odd quote is an inch mark, not the opening of a text.
    for index in range(0, len(parts), 2 if len(parts) % 2 else 1):
        part = _SPACES.sub(" ", parts[index])
        part = _STARS.sub("*", _DASHES.sub("-", part))
        part = _SLASHES.sub("/", _PRIMES.sub('"', part))
        parts[index] = part.replace("×", "x").replace("’", "'").replace("‘", "'")
    return '"'.join(parts)


def commented(line: str) -> str:
    """The line up to a long dash between blanks that a word processor made of two dashes."""
    match = re.search(r"\s[–—]\s*\w", line)
    return f"{line[: match.start()]} -- {line[match.end() - 1 :]}" if match else line


def fraction(whole: str, part: str) -> str | None:
    """``7 1/2`` with the fraction sign, or as a decimal; None where it is no plain fraction."""
    part = part.replace(" ", "")
    if part in _FRACTIONS:
        return f"{whole}{_FRACTIONS[part]}"
    top, bottom = map(int, part.split("/"))
    if bottom in (2, 4, 5, 8, 10, 16) and 0 < top < bottom:
        return f"{int(whole or 0) + top / bottom:.10g}"
    return None


def what_is_odd(line: str) -> tuple[str, str] | None:
    """Which character of a word processor the line holds: message and help."""
    unseen = _UNSEEN.search(line)
    if unseen:
        return (
            f"There is a character here that cannot be seen (U+{ord(unseen.group()):04X}); web "
            "pages and word processors leave such ones behind.",
            "delete it.",
        )
    if _CURLY.search(line):
        return (
            "Text stands in straight double quotes here; these are curly.",
            'use the plain quote: "like this".',
        )
    if _STARS.search(line):
        return ("The star here is not the plain one of the keyboard.", "use *.")
    if _SLASHES.search(line):
        return (
            "The stroke here is not the plain slash of the keyboard.",
            "a fraction is one sign (½), a size list has plain slashes.",
        )
    if _DASHES.search(line):
        return (
            "A long dash stands where the notation wants a plain one.",
            "write “-” in “6-10” and “to length - 2 rows”, and “--” before a comment.",
        )
    return None
