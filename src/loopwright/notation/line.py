"""One line by itself: its code and its comment, what no parser need see, whether it can be read."""

from __future__ import annotations

from loopwright.notation.bounds import MAX_LINE, MAX_NESTING
from loopwright.notation.grammar import line_reader
from loopwright.notation.hidden import is_hidden
from loopwright.notation.lalr import Unread
from loopwright.notation.source import Span
from loopwright.problem import ERROR, Problem

LOWER = str.maketrans("ABCDEFGHIJKLMNOPQRSTUVWXYZ", "abcdefghijklmnopqrstuvwxyz")
"""The parser sees a line in small letters; no character moves."""


def split_comment(line: str) -> tuple[str, str]:
    """A line's code and its comment (with the dashes); a string's dashes are no comment."""
    at = line.find("--")
    while at >= 0:
        if line.count('"', 0, at) % 2 == 0:
            return line[:at], line[at:]
        at = line.find("--", at + 1)
    return line, ""


def reads(code: str) -> bool:
    """Whether a line, without its comment, follows the notation."""
    code, _ = split_comment(code)
    code = code.strip()
    if not code or is_hidden(code) or before_parsing(code, 0) is not None:
        return False
    reader, shaper = line_reader()
    shaper.original = code
    shaper.base = 0
    shaper.problems = []
    shaper.size_lists = []
    try:
        reader.parse(code.translate(LOWER))
    except Unread:
        return False
    return not shaper.problems


def before_parsing(code: str, base: int) -> Problem | None:
    """What must be said before the parser sees the line: size, nesting."""
    if len(code) > MAX_LINE:
        return Problem(
            "number-too-big",
            ERROR,
            "the line is too long",
            f"This line has {len(code):,} characters; a line may have {MAX_LINE:,}.",
            Span(base, base + 40),
            help="split the row into groups, or use a fill between stars.",
        )
    if code.count("(") <= MAX_NESTING:
        return None
    depth = 0
    for at, letter in enumerate(code):
        if letter == '"':
            break
        if letter == "(":
            depth += 1
            if depth > MAX_NESTING:
                return Problem(
                    "number-too-big",
                    ERROR,
                    "groups are nested too deep",
                    f"Here {depth} groups are open inside one another; {MAX_NESTING} are allowed.",
                    Span(base + at, base + at + 1),
                    help="work the inner groups out, or split the row.",
                )
        elif letter == ")":
            depth -= 1
    return None
