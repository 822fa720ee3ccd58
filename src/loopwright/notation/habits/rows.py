"""A whole printed row: its head and its stitches, written as one line of the notation."""

from __future__ import annotations

import re

from loopwright.notation.habits.answer import Answer, Reader
from loopwright.notation.habits.body import read_body
from loopwright.notation.habits.heads import read_head
from loopwright.notation.habits.printed import Unread
from loopwright.notation.habits.sentences import general_help, said

_BIND = re.compile(
    r"(?:bind\s*-?\s*off|bo|cast\s*-?\s*off)(?:\s+(?:all|rem(?:aining)?|the))*"
    r"(?:\s+(?:stitches|sts))?[\s.]*$",
    re.I,
)
_ROWS_OF = re.compile(
    r"(?:(?P<stitch>knit|purl|k|p)\s+(?P<n>\d{1,6}|one|two|three|four|five|six|eight|ten)\s+"
    r"(?P<word>rows?|rounds?|rnds?)|work\s+(?P<m>\d{1,6})\s+(?P<rows>rows?)\s+(?:in|of)\s+garter"
    r"(?:\s+(?:stitch|st))?)[\s.]*$",
    re.I,
)
_COUNT = {"one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "eight": 8, "ten": 10}
# A line without a head is taken for stitches only where it can be nothing else.
_STITCHES = re.compile(
    r"\s*(?:[*(\[{]|(?:k|p|sl|yo|m|c|t)\d|(?:knit|purl|k|p|yo|pm|sm|rm|ssk|skp|kfb|slip|sl|place"
    r"\s+marker)\b)",
    re.I,
)


def printed_row(line: str, reader: Reader) -> Answer | None:
    """The answer to a row in the words of print, or None where it is no such row."""
    several = _ROWS_OF.match(line.strip())
    if several is not None:
        return _rows_of(several)
    head = read_head(line)
    if not head.given and not _STITCHES.match(head.rest):
        return None
    if head.given and _BIND.match(head.rest):
        return Answer(
            "Binding off all stitches is a line of its own, without the word “row”.",
            lines=("bind off",),
        )
    try:
        body = read_body(head.rest, reader.own)
    except Unread as stop:
        if not stop.habit:
            return None
        message = stop.message or said([stop.habit])
        return Answer(message, general_help([stop.habit]))
    habits = (*head.habits, *body.habits)
    if not habits:
        return None
    lines = []
    for text, reading in zip(body.texts, body.readings, strict=True):
        written = f"{head.text}: {text}"
        if not reader.reads(written):
            return None
        lines.append(f"{written}  -- {reading}" if reading else written)
    certain = head.certain and body.certain and len(lines) == 1
    help = ""
    if len(lines) > 1:
        help = general_help(["more-or-all"])
    elif "star-open" in habits:
        help = general_help(["star-open"])
    elif "side-first" in habits:
        help = general_help(["side-first"])
    elif not head.given:
        help = "in a motif put the row's number behind “row”."
    return Answer(said(habits), help, tuple(lines), certain)


def _rows_of(match: re.Match[str]) -> Answer:
    count_text = (match["n"] or match["m"]).lower()
    count = _COUNT.get(count_text) or int(count_text)
    rounds = (match["word"] or "row").lower().startswith(("rou", "rn"))
    word = "round" if rounds else "row"
    body = "purl" if (match["stitch"] or "k").lower().startswith("p") else "knit"
    head = word if count == 1 else f"{word}s {count}"
    return Answer(said(["rows-of"]), lines=(f"{head}: {body}",), certain=True)
