"""Text to tree, a line at a time: an error stays in its line, and one run finds them all."""

from __future__ import annotations

import re
from typing import Any

from loopwright.notation.bounds import MAX_UNCLEAR_CHARACTERS, MAX_UNCLEAR_LINES
from loopwright.notation.grammar import line_reader
from loopwright.notation.hidden import hidden_lines, hidden_words
from loopwright.notation.lalr import Memo, Unread
from loopwright.notation.line import LOWER, before_parsing, split_comment
from loopwright.notation.source import Source, Span
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
        is_row = bare[:3].translate(LOWER) in _ROW_STARTS
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
    early = before_parsing(code, base)
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
        statement: Any = reader.parse(code.translate(LOWER), tokens)
    except Unread as error:
        from loopwright.notation.unread import unread_line

        return unread_line(code, base, error, source)
    if isinstance(statement, RowLine) and "to" in code.translate(LOWER):
        step = _end_of_no_fill(statement)
        if step is not None:
            from loopwright.notation.unread import printed_end

            printed = printed_end(step, code, base, source)
            if printed is not None:
                return printed
    slips, size_lists = tuple(shaper.problems), tuple(shaper.size_lists)
    if slips and slips[0].rule == "unit-missing" and isinstance(statement, NeedleLine):
        from loopwright.notation.unread import needle_slip

        slips = (needle_slip(slips[0], code, base, source), *slips[1:])
    return _Read(statement, slips, size_lists)


def _end_of_no_fill(row: RowLine) -> Special | None:
    """The first step that says where a fill ends, if no fill stands before it."""
    fill = False
    for step in row.body.steps if isinstance(row.body, Steps) else ():
        fill = fill or _fills(step)
        if isinstance(step, Special) and step.kind in ("last", "gap"):
            if not fill:
                return step
            fill = False
    return None


def _fills(step: Node) -> bool:
    """Whether a step is a fill, or a group that holds one."""
    if isinstance(step, GroupOf):
        return any(map(_fills, step.steps))
    return isinstance(step, FillOf)


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
