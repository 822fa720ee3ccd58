"""The answer in general words, for a line of print that cannot be written anew as a whole.

Each habit is a shape of text, the sentence that answers it and what to write; the first that fits
is used, so the narrow ones come first.
"""

from __future__ import annotations

import re

from loopwright.notation.habits.answer import Answer
from loopwright.notation.habits.sentences import SENTENCES

_ROW = r"^\s*(?:rows?|rounds?|every)\b.*"

# The key of a sentence of `sentences`, for a shape in a lowered line.
_KEYS: tuple[tuple[str, re.Pattern[str]], ...] = tuple(
    (key, re.compile(shape))
    for key, shape in (
        ("side", r"^\s*(?:row|rnd|round)s?\s+\d+\s*[\[(]\s*(?:rs|ws)\s*[\])]"),
        ("round-short", r"^\s*rnds?\b"),
        ("row-short", r"^\s*r\d+\b"),
        ("ordinal", r"^\s*\d+(?:st|nd|rd|th)\s+(?:row|round)s?\b"),
        ("rep-from", r"\brep(?:eat)?\b\.?\s+(?:from|between)\b"),
        ("to-end", r"\bto\s+(?:the\s+)?(?:end|last\b)"),
        ("times", _ROW + r"[\])]\s*(?:\d+\s*times|twice)"),
        ("times", _ROW + r"\b\d+\s*[x×]?\s*[(\[*]"),
        ("into", _ROW + r"[\])]\s*into\s+(?:the\s+)?next\b"),
        ("brackets", _ROW + r"[\[\]{}]"),
        ("claim", _ROW + r"[^()]*\(\s*\d+\s*(?:sts?|stitches)\.?\s*\)"),
        ("x-bare", _ROW + r"\w\s+x\s*\d"),
        ("alternate", r"^\s*every\s+(?:other|alt\w*|second|2nd)\b"),
        ("modifier", r"\bwith\s+(?:the\s+)?yarn\b|\byarn\s+in\b"),
        ("spaced", _ROW + r"\b(?:k|p|sl|yo|bo|co)\s+\d+\b(?!\s*(?:tog|times))"),
        ("together", _ROW + r"\b[kp]\s*\d+\s+tog\b"),
        ("psso", _ROW + r"\bp(?:ass|sso)\b"),
        ("no-colon", r"^\s*(?:rows?|rounds?)\s*[\d\s,\-]*(?:in\s+\w+\s*)?[.;-]?\s*"
                     r"(?:k|p|sl|yo|knit|purl|\*)\S*(?:\s|$)"),
    )
)  # fmt: skip

_WORDS: tuple[tuple[re.Pattern[str], str, str], ...] = tuple(
    (re.compile(shape), message, help)
    for shape, message, help in (
        (
            r"\b(?:knit|k)\s+(?:the\s+)?(?:knits?|k)\b.*\b(?:purl|p)\s+(?:the\s+)?(?:purls?|p)\b|"
            r"\bas\s+they\s+(?:appear|present|face|come)\b",
            "Which stitches look like knits from this side follows from the row below, and the "
            "notation does not look there: a row says its own stitches.",
            "write the row's stitches, as in “row 2: p2 * k2 p2 *”; a row that is the same as "
            "another is “as row 1”.",
        ),
        (
            r"^\s*(?:knit|purl|k|p)\s+(?:every|all|each)\s+rows?\b",
            "How many rows are worked stands before the colon.",
            "write “rows 20: knit”, or put “row 1: knit” into a motif and “work NAME to 20 cm”.",
        ),
        (
            r"^\s*cast\s+on\s+(?:for\s+\d|(?:a\s+)?mult)",
            "Behind “cast on” stands how many stitches, or “for width”: the count nearest to the "
            "stated width that every row takes.",
            "write “cast on 240 in A”; or “width 40 cm” above, and here “cast on for width”.",
        ),
        (
            r"^\s*bind\s+off\s+\d",
            "The line “bind off” takes all live stitches; a few of them are bound off in a row.",
            "write “bind off” for all, or a row such as “row: bo4 * k1 *”.",
        ),
        (
            r"^\s*(?:garter|stockinette|stocking|st\s*st|ribb?ing|rib|seed|moss)\b",
            "A fabric is said by its rows: garter is knit in every row, stockinette knit on the "
            "right side and purled on the wrong side.",
            "write “rows 4: knit”, or a motif with its rows and “work NAME for 20 rows”.",
        ),
        (
            r"^\s*(?:rows?|rounds?)\b.*(?:\.\.|…|\betc\b)",
            "A row does not end in dots: what is repeated stands between two stars.",
            "write “* k1 p1 *”.",
        ),
        (
            r"^\s*(?:the\s+)?(?:end|finish(?:ed)?|done)\W*$",
            "Nothing closes a block: it runs to the next opening line, or to the end of the file.",
            "leave the line out; a piece ends with “bind off”.",
        ),
        (
            r"^\s*cast\s*-?\s*on\s*$",
            "Behind “cast on” stands how many stitches: a number, or the width they should give.",
            "write “cast on 240 in A by long-tail” or “cast on for width”.",
        ),
        (
            r"^\s*(?:cast-on|co)\b",
            "Casting on is written as two words, with the number of stitches behind them.",
            "write “cast on 240 in A by long-tail”.",
        ),
        (
            r"^\s*(?:cast(?:\s+|-)off|bind-off|bo)\b",
            "Casting off or binding off is written “bind off”.",
            "write “bind off”, with “in A” and “by METHOD” behind it where you want them.",
        ),
        (
            r"^\s*(?:repeat|rep)\b",
            "Rows are not repeated by their numbers here: put them in a motif and work the motif.",
            "write “motif NAME over 2n + 4” with its rows, and in the piece “work NAME x8”.",
        ),
        (
            r"^\s*work\s+\S+\s+\S",
            "The line “work” names a motif, and behind it how far it is worked.",
            "write “work NAME x8”, “work NAME for 20 rows” or “work NAME to 20 cm”.",
        ),
        (
            r"^\s*(?:width|length|needle|gauge|yarn|work)\b.*\d\s*\"",
            "Inches are written with their word, since double quotes hold text.",
            "write “48 in”.",
        ),
        (
            r"^\s*(?:width|length|needle|gauge|yarn|work)\b.*\d+\s+\d+/\d+",
            "A slash is always a size list; a broken number is written with the fraction sign or "
            "a point.",
            "write “7½ in” or “7.5 in”.",
        ),
        (
            r"^\s*(?:width|length)\b.*\d,\d",
            "A broken number has a point.",
            "write “7.5 cm”.",
        ),
        (r"\d,\d{3}\b", "A number is written without a comma in it.", "write “1000”."),
        (
            r"^\s*(?:colou?r|yarn)\b.*\bmc\b|\bcc\b",
            "Colours are named as shades and worked as strands.",
            "write “strand A feeds kelp”, and “row 1 in A: …”.",
        ),
    )
)


def _unpaired(lowered: str) -> Answer | None:
    """A row whose parentheses or stars do not come in pairs."""
    if not re.match(r"\s*(?:rows?|rounds?|every)\b", lowered):
        return None
    opened = sum(map(lowered.count, "([{"))
    closed = sum(map(lowered.count, ")]}"))
    for key, fits in (("open", opened > closed), ("closed", closed > opened)):
        if fits:
            return Answer(*SENTENCES[key])
    stars = lowered.count("*")
    if stars % 2 and "rep" not in lowered:
        have = "1 star" if stars == 1 else f"{stars} stars"
        return Answer(
            f"A fill stands between two stars; this row has {have}, so one has no partner.",
            SENTENCES["rep-from"][1],
        )
    return None


def general_answer(line: str) -> Answer | None:
    """The answer in general words to the first habit found in the line, or None."""
    lowered = line.lower()
    answer = _unpaired(lowered)
    if answer is not None:
        return answer
    for key, shape in _KEYS:
        if shape.search(lowered):
            return Answer(*SENTENCES[key])
    for shape, message, help in _WORDS:
        if shape.search(lowered):
            return Answer(message, help)
    return None
