"""Words that are written from right to left among those that are not.

Each text of the writer's that holds such words is set apart by Unicode's isolates (FSI … PDI of
UAX #9), so that it stands in its own order and changes that of nothing beside it: neither of the
numbers behind a name nor of the next name in a list. A pattern without such words is left as it is.
"""

from __future__ import annotations

import re
from collections.abc import Callable

from loopwright.notation.hidden import RIGHT_TO_LEFT, has_right_to_left

FSI, PDI = "\u2068", "\u2069"
_WRITTEN = re.compile(r'"([^"\n]*)"|([^\W\d][\w-]*)')
_MOST = 200  # texts that are looked for as they are written; further ones by their letters alone
_BETWEEN = " '’\"\u200c-\u200f\u0300-\u036f-"
_STRONG = re.compile(f"(?P<rtl>{RIGHT_TO_LEFT})|[^\\W\\d_]")


def isolator(source: str) -> Callable[[str], str] | None:
    """What sets apart the right-to-left texts of a source in a text; None where it has none."""
    if not has_right_to_left(source):
        return None
    texts = {text or name for text, name in _WRITTEN.findall(source)}
    known = sorted(filter(has_right_to_left, texts), key=lambda t: (-len(t), t))[:_MOST]
    run = f"{RIGHT_TO_LEFT}(?:(?:{RIGHT_TO_LEFT}|[{_BETWEEN}])*{RIGHT_TO_LEFT})?"
    pattern = re.compile("|".join([*map(re.escape, known), run]))

    def apart(text: str) -> str:
        if not has_right_to_left(text):
            return text
        return pattern.sub(lambda match: f"{FSI}{match[0]}{PDI}", text)

    return apart


def direction(text: str) -> str:
    """``rtl`` for a text whose first letter is written from right to left, else empty.

    A text that is set apart as a whole has the direction of what is in it; one that only holds
    such a text has its own.
    """
    whole = text.startswith(FSI) and text.find(PDI) == len(text) - 1
    inside = text[1:-1] if whole else re.sub(f"{FSI}[^{PDI}]*{PDI}", "", text)
    first = _STRONG.search(inside) if has_right_to_left(inside) else None
    return "rtl" if first is not None and first["rtl"] else ""


def cut(text: str, length: int) -> str:
    """The text, or so many characters of it with ``…`` for the rest; nothing is left set apart by
    half."""
    if len(text) <= length:
        return text
    short = f"{text[: length - 1]}…"
    return short + PDI * (short.count(FSI) - short.count(PDI))


def joined(text: str) -> str:
    """The text without what sets parts of it apart: for a window's title, or a search engine."""
    return text.replace(FSI, "").replace(PDI, "")
