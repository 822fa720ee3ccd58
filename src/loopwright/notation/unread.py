"""What is said of a line that cannot be read: a slip of the keys, a phrase of print, or neither.

Loaded only where there is such a line.
"""

from __future__ import annotations

import re

from loopwright.notation.habits import Answer, Reader, answer_to, measured, plain
from loopwright.notation.lalr import Unread
from loopwright.notation.line import LOWER, reads
from loopwright.notation.near import nearest, one_slip
from loopwright.notation.source import Source, Span
from loopwright.notation.terminals import LINE_WORDS, expected_text, keyword, line_help
from loopwright.notation.tree import Special
from loopwright.problem import ERROR, Edit, Fix, Problem

_FIRST_WORD = re.compile(r"[^\W\d_][\w&-]*")
_OWN_STITCH = re.compile(
    r"^[ \t]*stitch[ \t]+([^\W\d_]\w*)(?:[^\n]*?\btakes[ \t]+(\d+))?", re.I | re.M
)
_MOTIF = re.compile(r"^[ \t]*motif[ \t]+([^\W\d_][\w-]*)", re.I | re.M)
_OWN_LOOKED_AT = 100_000  # characters of a source in which its own stitches are looked for


def unread_line(code: str, base: int, error: Unread, source: Source) -> Problem:
    """The one problem of a line that begins at `base` and that the parser stopped in."""
    lowered = code.translate(LOWER)
    names = error.names
    start = len(code) if error.start is None else error.start
    # Where something is missing at the line's end, the place is the end: nothing stands there.
    end = min(start + 1 if error.end is None else error.end, len(code))
    first = _FIRST_WORD.match(lowered.lstrip())
    if first and first.group() not in LINE_WORDS:
        return _unknown_start(code, base, first.group(), source)
    span = Span(base + start, base + end)
    slip = _keyword_slip(code, base, start, names)
    if slip is not None:
        return slip
    answer = _habit(code, source)
    if answer is not None:
        return _answered(answer, code, base, span)
    word = first.group() if first else ""
    wanted = expected_text(names, word)
    if start >= len(code):
        tail = code.rsplit(maxsplit=1)[-1]
        message = f"The line ends after “{tail}”, where {wanted} should follow."
    else:
        message = f"“{code[start:end]}” cannot stand here; what can is {wanted}."
    if len(names) > 12 or not names:
        message = f"“{code[start:end] or code.strip()}” cannot be read here."
    return Problem(
        "line-unclear", ERROR, "this line cannot be read", message, span, help=line_help(word)
    )


def _keyword_slip(code: str, base: int, start: int, names: set[str]) -> Problem | None:
    """A slip of the keys in a word of the notation itself: ``motif rib ovr 2n``."""
    found = _FIRST_WORD.match(code, start)
    if found is None:
        return None
    words = {word for name in names if (word := keyword(name)) is not None}
    close = nearest(found.group(), words)
    if close is None or close == found.group().lower():
        return None
    line = code[: found.start()] + close + code[found.end() :]
    if not reads(line):
        return None
    span = Span(base + found.start(), base + found.end())
    return Problem(
        "line-unclear",
        ERROR,
        "this line cannot be read",
        f"“{found.group()}” is no word that can stand here.",
        span,
        help=f"did you mean “{close}”?",
        fix=Fix(f"write “{close}”", (Edit(span, close),)),
    )


def _unknown_start(code: str, base: int, word: str, source: Source) -> Problem:
    """A line whose first word no line starts with: a slip of the keys, else a habit or unknown."""
    start = len(code) - len(code.lstrip())
    span = Span(base + start, base + start + len(word))
    close = nearest(word, LINE_WORDS)
    corrected = code[:start] + (close or "") + code[start + len(word) :]
    # A slip of one word is not to be told as a habit of print, nor the other way round.
    # (“scarf flat” is nearer to a piece without its word than to “care flat”.)
    slip = close is not None and close == one_slip(word, LINE_WORDS) and reads(corrected)
    answer = None if slip else _habit(code, source)
    if answer is not None:
        return _answered(answer, code, base, span)
    if close is not None:
        fix = None
        if one_slip(word, LINE_WORDS) == close:
            fix = Fix(f"write “{close}” for “{word}”", (Edit(span, close),))
        return Problem(
            "unknown-word",
            ERROR,
            f"no line starts with “{word}”",
            f"A line starts with the word that says what it is, and “{word}” is none of them.",
            span,
            help=f"did you mean “{close}”?",
            fix=fix,
        )
    return Problem(
        "unknown-word",
        ERROR,
        f"no line starts with “{word}”",
        "A line starts with the word that says what it is: pattern, yarn, motif, row, piece, "
        "cast on, work, bind off and so on.",
        span,
        help='a line for the reader is written as note "…"; a comment starts with two dashes.',
    )


def printed_end(step: Special, code: str, base: int, source: Source) -> Problem | None:
    """``k to last 2``: words that end a fill, as print has them, where no fill stands before."""
    answer = _habit(code, source)
    return _answered(answer, code, base, step.span) if answer is not None else None


def needle_slip(slip: Problem, code: str, base: int, source: Source) -> Problem:
    """A needle by its number alone (``needle US 7``) is answered with its millimetres."""
    answer = measured(plain(code), habit_reader(source))
    if answer is None:
        return slip
    return Problem(
        slip.rule,
        slip.severity,
        slip.title,
        answer.message,
        slip.span,
        help=answer.advice,
        fix=whole_line_fix(answer, code, base),
    )


def habit_reader(source: Source) -> Reader:
    """What the room of habits may ask about a source: its lines, and its own stitches."""
    own = {
        match[1].lower(): int(match[2] or 1)
        for match in _OWN_STITCH.finditer(source.text, 0, _OWN_LOOKED_AT)
    }
    motifs = {m[1].lower() for m in _MOTIF.finditer(source.text, 0, _OWN_LOOKED_AT)}
    return Reader(reads, own, frozenset(motifs))


def _habit(code: str, source: Source) -> Answer | None:
    """What the room of habits answers."""
    return answer_to(code, habit_reader(source))


def _answered(answer: Answer, code: str, base: int, span: Span) -> Problem:
    return Problem(
        "line-unclear",
        ERROR,
        "this line cannot be read",
        answer.message,
        span,
        help=answer.advice,
        fix=whole_line_fix(answer, code, base),
    )


def whole_line_fix(answer: Answer, code: str, base: int) -> Fix | None:
    """The corrected line in place of the written one, where it is certain."""
    if not answer.certain or len(answer.lines) != 1:
        return None
    start = len(code) - len(code.lstrip())
    line = answer.lines[0]
    span = Span(base + start, base + len(code.rstrip()))
    return Fix(f"write “{line}”", (Edit(span, line),))
