"""Text to tree, a line at a time: an error stays in its line, and one run finds them all."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Any

from loopwright.notation.bounds import (
    MAX_LINE,
    MAX_NESTING,
    MAX_UNCLEAR_CHARACTERS,
    MAX_UNCLEAR_LINES,
)
from loopwright.notation.grammar import line_reader
from loopwright.notation.hidden import hidden_lines, hidden_words, is_hidden
from loopwright.notation.lalr import Memo, Unread
from loopwright.notation.near import nearest, one_slip
from loopwright.notation.source import Source, Span
from loopwright.notation.terminals import LINE_WORDS, expected_text, keyword
from loopwright.notation.tree import (
    Count,
    FillOf,
    GroupOf,
    NeedleLine,
    Node,
    Placed,
    RowLine,
    RowSpan,
    Special,
    Statement,
    Steps,
)
from loopwright.problem import ERROR, Edit, Fix, Problem
from loopwright.record import dataclass, replace

if TYPE_CHECKING:
    from loopwright.notation.habits import Answer, Reader

_LOWER = str.maketrans("ABCDEFGHIJKLMNOPQRSTUVWXYZ", "abcdefghijklmnopqrstuvwxyz")
_FIRST_WORD = re.compile(r"[^\W\d_][\w&-]*")
_OWN_STITCH = re.compile(
    r"^[ \t]*stitch[ \t]+([^\W\d_]\w*)(?:[^\n]*?\btakes[ \t]+(\d+))?", re.I | re.M
)
_OWN_LOOKED_AT = 100_000  # characters of a source in which its own stitches are looked for
_ROW_STARTS = ("row", "rou", "eve")
_NUMBERED = re.compile(r"([ \t]*(?:row|round)s?[ \t]+)([0-9]{1,9})(?=[ \t]*:|[ \t]+in[ \t])", re.I)
_MAX_KEPT = 100_000


@dataclass(frozen=True, slots=True)
class Parsed:
    """The tree of a source. `recovered` is true where a line could not be read."""

    source: Source
    lines: tuple[Placed, ...]
    problems: tuple[Problem, ...]
    recovered: bool
    size_lists: tuple[tuple[int, Span], ...]


@dataclass(frozen=True, slots=True)
class _Read:
    """What one line gave: its statement, the problems of its values, its size lists."""

    statement: Statement
    slips: tuple[Problem, ...]
    size_lists: tuple[tuple[int, Span], ...]


def split_comment(line: str) -> tuple[str, str]:
    """A line's code and its comment (with the dashes); a string's dashes are no comment."""
    at = line.find("--")
    while at >= 0:
        if line.count('"', 0, at) % 2 == 0:
            return line[:at], line[at:]
        at = line.find("--", at + 1)
    return line, ""


def parse(source: Source) -> Parsed:
    """Read a source. Never raises for what the text holds."""
    placed: list[Placed] = []
    problems: list[Problem] = []
    size_lists: list[tuple[int, Span]] = []
    memo: dict[str, _Read] = {}
    plain: dict[str, Statement] = {}  # of `memo` those that say no more than their statement
    shapes: dict[tuple[str, int, str], _Read] = {}
    tokens: Memo = {}
    unclear = unclear_length = 0
    starts = source.line_starts
    hidden = hidden_lines(source)
    for number, (base, line) in enumerate(zip(starts, source.text.split("\n"), strict=True), 1):
        known = plain.get(line)
        if known is not None:
            placed.append(Placed(number, base, known))
            continue
        if hidden and number in hidden:
            problems.append(hidden[number])
            unclear += 1
            unclear_length += len(line)
            if unclear > MAX_UNCLEAR_LINES or unclear_length > MAX_UNCLEAR_CHARACTERS:
                problems.append(_gave_up(unclear, number, len(starts), base, line))
                break
            continue
        code = line
        if "--" in line:
            code, _ = split_comment(line)
        code = code.rstrip()
        bare = code.lstrip()
        if not bare:
            continue
        is_row = bare[:3].translate(_LOWER) in _ROW_STARTS
        found = memo.get(code) if is_row else None
        if found is None:
            if is_row:
                result = _parse_row(code, shapes, tokens, source)
            else:
                result = _parse_line(code, base, None, source)
            if isinstance(result, Problem):
                if is_row:
                    result = _shifted(result, base)
                problems.append(result)
                unclear += 1
                unclear_length += len(code)
                if unclear > MAX_UNCLEAR_LINES or unclear_length > MAX_UNCLEAR_CHARACTERS:
                    problems.append(_gave_up(unclear, number, len(starts), base, code))
                    break
                continue
            found = result
            if is_row:
                memo[code] = found
                if not found.slips and not found.size_lists:
                    plain[line] = found.statement
        for slip in found.slips:
            problems.append(_shifted(slip, base) if is_row else slip)
        for length, span in found.size_lists:
            size_lists.append((length, span.shifted(base) if is_row else span))
        placed.append(Placed(number, base, found.statement))
    problems += hidden_words(source, hidden, split_comment)
    return Parsed(source, tuple(placed), tuple(problems), unclear > 0, tuple(size_lists))


def reads(code: str) -> bool:
    """Whether a line, without its comment, follows the notation."""
    code, _ = split_comment(code)
    code = code.strip()
    if not code or is_hidden(code) or _before_parsing(code, 0) is not None:
        return False
    reader, shaper = line_reader()
    shaper.original = code
    shaper.base = 0
    shaper.problems = []
    shaper.size_lists = []
    try:
        reader.parse(code.translate(_LOWER))
    except Unread:
        return False
    return not shaper.problems


def habit_reader(source: Source) -> Reader:
    """What the room of habits may ask about a source: its lines, and its own stitches."""
    own = {
        match[1].lower(): int(match[2] or 1)
        for match in _OWN_STITCH.finditer(source.text, 0, _OWN_LOOKED_AT)
    }
    from loopwright.notation.habits import Reader

    return Reader(reads, own)


def whole_line_fix(answer: Answer, code: str, base: int) -> Fix | None:
    """The corrected line in place of the written one, where it is certain."""
    if not answer.certain or len(answer.lines) != 1:
        return None
    start = len(code) - len(code.lstrip())
    line = answer.lines[0]
    span = Span(base + start, base + len(code.rstrip()))
    return Fix(f"write “{line}”", (Edit(span, line),))


def _parse_row(
    code: str, shapes: dict[tuple[str, int, str], _Read], tokens: Memo, source: Source
) -> _Read | Problem:
    """The same for a row's line: one that differs from an earlier one by its number alone (with
    as many digits, so that all stands at the same place) shares its body."""
    numbered = _NUMBERED.match(code)
    if numbered is None:
        return _parse_line(code, 0, tokens, source)
    before, digits = numbered.groups()
    end = numbered.end()
    shape = (before, end, code[end:])
    found = shapes.get(shape)
    if found is None:
        result = _parse_line(code, 0, tokens, source)
        if isinstance(result, _Read) and isinstance(result.statement, RowLine):
            shapes[shape] = result
        return result
    row = found.statement
    assert isinstance(row, RowLine)
    span = Span(len(before), end)
    count = Count((int(digits),), span)
    again = RowLine(
        row.plural,
        row.round,
        row.every,
        (RowSpan(count, count, span),),
        row.strand,
        row.body,
        row.claim,
        row.span,
    )
    return _Read(again, found.slips, found.size_lists)


def _parse_line(code: str, base: int, tokens: Memo | None, source: Source) -> _Read | Problem:
    """The statement of one line and the problems of its values, or the one problem of the line.

    Spans of a row line count from the line's start (`base` is 0 for it), so its `tokens` are
    kept for other lines that have the same word at the same place.
    """
    early = _before_parsing(code, base)
    if early is not None:
        return early
    reader, shaper = line_reader()
    if tokens is not None and len(tokens) > _MAX_KEPT:
        tokens.clear()
    shaper.original = code
    shaper.base = base
    shaper.problems = []
    shaper.size_lists = []
    try:
        statement: Any = reader.parse(code.translate(_LOWER), tokens)
    except Unread as error:
        return _unclear(code, base, error, source)
    if isinstance(statement, RowLine) and "to" in code.translate(_LOWER):
        printed = _printed_end(statement, code, base, source)
        if printed is not None:
            return printed
    slips, size_lists = tuple(shaper.problems), tuple(shaper.size_lists)
    if slips and slips[0].rule == "unit-missing" and isinstance(statement, NeedleLine):
        slips = (_needle_slip(slips[0], code, base, source), *slips[1:])
    return _Read(statement, slips, size_lists)


def _needle_slip(slip: Problem, code: str, base: int, source: Source) -> Problem:
    """A needle by its number alone (``needle US 7``) is answered with its millimetres."""
    from loopwright.notation.habits import measured, plain

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


def _before_parsing(code: str, base: int) -> Problem | None:
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


def _unclear(code: str, base: int, error: Unread, source: Source) -> Problem:
    lowered = code.translate(_LOWER)
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
    if start >= len(code):
        tail = code.rsplit(maxsplit=1)[-1]
        message = f"The line ends after “{tail}”, where {expected_text(names)} should follow."
    else:
        wrong = code[start:end]
        message = f"“{wrong}” cannot stand here; what can is {expected_text(names)}."
    if len(names) > 12 or not names:
        message = f"“{code[start:end] or code.strip()}” cannot be read here."
    return Problem("line-unclear", ERROR, "this line cannot be read", message, span)


def _printed_end(row: RowLine, code: str, base: int, source: Source) -> Problem | None:
    """``k to last 2``: words that end a fill, as print has them, where no fill stands before."""
    fill = False
    for step in row.body.steps if isinstance(row.body, Steps) else ():
        fill = fill or _fills(step)
        if isinstance(step, Special) and step.kind in ("last", "gap"):
            if not fill:
                answer = _habit(code, source)
                return _answered(answer, code, base, step.span) if answer is not None else None
            fill = False
    return None


def _fills(step: Node) -> bool:
    """Whether a step is a fill, or a group that holds one."""
    if isinstance(step, GroupOf):
        return any(map(_fills, step.steps))
    return isinstance(step, FillOf)


def _habit(code: str, source: Source) -> Answer | None:
    """What the room of habits answers; a source that can be read never loads it."""
    from loopwright.notation.habits import answer_to

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
    slip = close is not None and reads(corrected)
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


def _gave_up(unclear: int, number: int, lines: int, base: int, code: str) -> Problem:
    return Problem(
        "line-unclear",
        ERROR,
        "too many lines cannot be read",
        f"{unclear:,} of the lines up to line {number:,} of {lines:,} cannot be read, so the "
        f"rest was left unread: the reader stops after {MAX_UNCLEAR_LINES} such lines, or after "
        f"{MAX_UNCLEAR_CHARACTERS:,} characters of them.",
        Span(base, base + len(code)),
        help="this may not be a pattern source at all; start one with “loopwright new FILE”.",
    )


def _shifted(problem: Problem, base: int) -> Problem:
    fix = problem.fix
    if fix is not None:
        fix = Fix(fix.title, tuple(Edit(e.span.shifted(base), e.text) for e in fix.edits))
    return replace(problem, span=problem.span.shifted(base), fix=fix)
