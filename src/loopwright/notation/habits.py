"""What a knitter who has only ever read printed patterns writes, and what to write instead.

Looked at only for a line that could not be read. Each habit is a shape of text, the sentence
that answers it and what to write; the first that fits is used, so the narrow ones come first.
"""

from __future__ import annotations

import re
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Habit:
    """`shape` finds the habit in a lowered line; `help` may use the groups of `shape`."""

    shape: re.Pattern[str]
    message: str
    help: str


def _habit(shape: str, message: str, help: str) -> Habit:
    return Habit(re.compile(shape), message, help)


_LOOKED_AT = 300  # characters of a line; some shapes look at each more than once
_ROW = r"^\s*(?:rows?|rounds?|every)\b.*"

HABITS: tuple[Habit, ...] = (
    _habit(
        "[“”„«»]",
        "Text stands in straight double quotes here; these are curly.",
        'use the plain quote: "like this".',
    ),
    _habit(
        r"^\s*(?:row|rnd|round)s?\s+(\d+)\s*[\[(]\s*(?:rs|ws)\s*[\])]\s*:?",
        "The side of a row is not written: row 1 of a motif is a right-side row unless its "
        "opening line says “starts ws”.",
        "write “row {1}:” and leave the side out.",
    ),
    _habit(
        r"^\s*(?:rnd)s?\b\.?\s*(\d*)",
        "The word “round” is written out.",
        "write “round {1}:”.",
    ),
    _habit(
        r"^\s*(\d+)(?:st|nd|rd|th)\s+(row|round)s?\b",
        "The number of a row stands behind the word.",
        "write “{2} {1}:”.",
    ),
    _habit(
        r"^\s*(?:cast-on|co)\s+(\d+)",
        "Casting on is written as two words.",
        "write “cast on {1}”.",
    ),
    _habit(
        r"^\s*cast(?:\s+|-)off\b",
        "Casting off is called binding off here.",
        "write “bind off”, with “in A” and “by METHOD” behind it where you want them.",
    ),
    _habit(
        r"^\s*(?:bind-off|bo)\b",
        "Binding off is written as two words.",
        "write “bind off”, with “in A” and “by METHOD” behind it where you want them.",
    ),
    _habit(
        r"^\s*(?:repeat|rep)\b",
        "Rows are not repeated by their numbers here: put them in a motif and work the motif.",
        "write “motif NAME over 2n + 4” with its rows, and in the piece “work NAME x8”.",
    ),
    _habit(
        r";?\s*\brep(?:eat)?\b\.?\s+from\s+\*",
        "A repeat stands between two stars and says nothing more: it is worked as often as it "
        "fits between what stands before and after it.",
        "write “* k1 p1 *” and behind the second star the stitches after the repeat.",
    ),
    _habit(
        r"\bto\s+(?:the\s+)?(?:end|last\b)",
        "What is worked “to the end” or “to the last stitches” stands between two stars; the "
        "stitches after it follow the second star.",
        "write “* k1 * k2” for “knit to the last 2 stitches, k2”.",
    ),
    _habit(
        _ROW + r"[\])]\s*(\d+)\s*times",
        "How often a group is worked stands behind it as x and the number.",
        "write “(k1 p1) x{1}”.",
    ),
    _habit(
        _ROW + r"[\])]\s*(twice)",
        "How often a group is worked stands behind it as x and the number.",
        "write “(k1 p1) x2”.",
    ),
    _habit(
        _ROW + r"[\])]\s*into\s+(?:the\s+)?next\b",
        "A group that is all worked into the same stitch ends with “in 1”.",
        "write “(k1 yo k1) in 1”.",
    ),
    _habit(
        _ROW + r"[\[\]]",
        "Groups stand in round parentheses, also inside one another.",
        "write “(k1 p1) x4”.",
    ),
    _habit(
        _ROW + r"[^()]*\(\s*(\d+)\s*(?:sts?|stitches)\.?\s*\)",
        "The count after a row is a claim, which is checked.",
        "write “=> {1}” at the end of the row.",
    ),
    _habit(
        _ROW + r"\b(k|p|sl|yo|bo|co)\s+(\d+)\b(?!\s*(?:tog|times))",
        "A stitch and its count are written together.",
        "write “{1}{2}”.",
    ),
    _habit(
        _ROW + r"\b([kp])\s*(\d+)\s+tog\b",
        "The word is written together.",
        "write “{1}{2}tog”.",
    ),
    _habit(
        r"^\s*(?:rows?|rounds?)\s*[\d\s,\-–]*(?:in\s+\w+\s*)?[.;–—-]?\s*"
        r"(?:k|p|sl|yo|knit|purl|\*)\S*(?:\s|$)",
        "A colon stands between a row's number and its stitches.",
        "write “row 1: k2 p2”.",
    ),
    _habit(
        _ROW + r"\bp(?:ass|sso)",
        "A slipped stitch passed over is one word: skp takes 2 stitches, sk2p takes 3.",
        "write “skp” or “sk2p”.",
    ),
    _habit(
        "[–—]",
        "A long dash stands where the notation wants a plain one.",
        "write “-” in “6-10” and “to length - 2 rows”, and “--” before a comment.",
    ),
    _habit(
        r"^\s*(?:width|length|needle|gauge|yarn|work)\b.*\d\s*[\"”″']",
        "Inches are written with their word, since double quotes hold text.",
        "write “48 in”.",
    ),
    _habit(
        r"^\s*(?:width|length|needle|gauge|yarn|work)\b.*\d+\s+\d+/\d+",
        "A slash is always a size list; a broken number is written with the fraction sign or a "
        "point.",
        "write “7½ in” or “7.5 in”.",
    ),
    _habit(
        r"^\s*(?:width|length)\b.*\d,\d",
        "A broken number has a point.",
        "write “7.5 cm”.",
    ),
    _habit(
        r"\d,\d{3}\b",
        "A number is written without a comma in it.",
        "write “1000”.",
    ),
    _habit(
        r"^\s*(?:colou?r|yarn)\b.*\bmc\b|\bcc\b",
        "Colours are named as shades and worked as strands.",
        "write “strand A feeds kelp”, and “row 1 in A: …”.",
    ),
)


def habit_of(line: str) -> tuple[str, str] | None:
    """The answer to the first habit found in a line: message and help, or None."""
    lowered = line[:_LOOKED_AT].lower()
    for habit in HABITS:
        match = habit.shape.search(lowered)
        if match:
            help = habit.help
            for number, group in enumerate(match.groups(), 1):
                help = help.replace(f"{{{number}}}", group or "")
            return habit.message, " ".join(help.split()).replace(" :", ":")
    return None
