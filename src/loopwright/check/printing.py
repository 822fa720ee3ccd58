"""How a problem is printed for a knitter, and how it looks as JSON."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable

from loopwright.check.context import listed
from loopwright.notation.hidden import named
from loopwright.notation.source import Source, Span
from loopwright.problem import ADVICE, ERROR, WARNING, Edit, Problem
from loopwright.record import dataclass

WIDTH = 88
MAX_SHOWN = 50
_COLOURS = {ERROR: "31", WARNING: "33", ADVICE: "36"}


@dataclass(frozen=True, slots=True)
class Style:
    """Whether terminal colours are used."""

    colour: bool = False

    def paint(self, text: str, code: str) -> str:
        return f"\x1b[{code}m{text}\x1b[0m" if self.colour and text else text


def problem_text(problem: Problem, source: Source, style: Style = Style()) -> str:
    """A problem with its place, the line it is in with a mark, what happened, and what to do."""
    head = f"{problem.severity}: {shortened(named(problem.title), 76)}"
    gap = max(WIDTH - len(head) - len(problem.rule), 2)
    line, column = source.line_column(problem.span.start)
    colour = _COLOURS[problem.severity]
    rule = " " * gap + style.paint(problem.rule, "2") if problem.rule else ""
    out = [
        style.paint(f"{problem.severity}:", f"1;{colour}")
        + style.paint(head.removeprefix(f"{problem.severity}:"), "1")
        + rule,
        f"  {named(source.name)}:{line}:{column}",
        *_marked(source, problem.span, "", style, colour),
    ]
    for label in problem.labels:
        if label.span != problem.span:
            out += _marked(source, label.span, label.text, style, "34")
    message = shortened(named(problem.message), 900)
    # One size is mostly named in the message already.
    if problem.sizes and not (len(problem.sizes) == 1 and f"size {problem.sizes[0]}" in message):
        word = "size" if len(problem.sizes) == 1 else "sizes"
        message += f" ({word} {named(listed(problem.sizes))})"
    out += _wrapped(message)
    for part in map(named, problem.help.splitlines()):
        # A corrected line is there to be copied, so it is never broken.
        is_line = part.startswith("write: ")
        out += [f"  {part}"] if is_line else _wrapped(f"help: {shortened(part, 500)}")
    return "\n".join(out) + "\n"


def _wrapped(text: str) -> list[str]:
    import textwrap

    return textwrap.wrap(
        text, WIDTH, initial_indent="  ", subsequent_indent="  ", break_on_hyphens=False
    )


def shortened(text: str, length: int) -> str:
    """The text, or as much of it as a screen can bear."""
    return text if len(text) <= length else text[: length - 1] + "…"


def _marked(source: Source, span: Span, text: str, style: Style, colour: str) -> list[str]:
    """A source line and the mark under it; long lines are cut around the mark."""
    line, column = source.line_column(span.start)
    shown = source.line_text(line).replace("\t", " ")
    shown = "".join(c if c.isprintable() else "�" for c in shown)
    start = column - 1
    length = max(min(span.end - span.start, len(shown) - start), 1)
    if len(shown) > 100:
        cut = max(start - 30, 0)
        shown = ("…" if cut else "") + shown[cut : cut + 98] + "…"
        start -= cut - (1 if cut else 0)
        length = min(length, max(len(shown) - start, 1))
    number = f"{line:>5} │ "
    mark = "━" * length
    return [
        style.paint(number, "2") + shown.rstrip(),
        " " * (len(number) + start)
        + style.paint(mark, colour)
        + (f" {named(text)}" if text else ""),
    ]


def problems_text(problems: Iterable[Problem], source: Source, style: Style = Style()) -> str:
    """All problems, up to a number a screen can bear; errors first only by their place."""
    items = list(problems)
    parts = [problem_text(problem, source, style) for problem in items[:MAX_SHOWN]]
    if len(items) > MAX_SHOWN:
        parts.append(f"… and {len(items) - MAX_SHOWN:,} more problems in {named(source.name)}\n")
    return "\n".join(parts)


def summary(problems: Iterable[Problem]) -> str:
    """``2 errors, 1 warning``; ``no problems`` for none."""
    words = {
        ERROR: ("error", "errors"),
        WARNING: ("warning", "warnings"),
        ADVICE: ("piece of advice", "pieces of advice"),
    }
    found = Counter(problem.severity for problem in problems)
    texts = [
        f"{found[severity]:,} {one if found[severity] == 1 else many}"
        for severity, (one, many) in words.items()
        if found[severity]
    ]
    return ", ".join(texts) or "no problems"


def problem_json(problem: Problem, source: Source) -> dict[str, object]:
    """A problem as `check --json` prints it; lines and columns count from 1.

    ``fix`` is there where the one right change is certain.
    """
    line, column = source.line_column(problem.span.start)
    end_line, end_column = source.line_column(problem.span.end)
    found: dict[str, object] = {
        "rule": problem.rule,
        "severity": problem.severity,
        "line": line,
        "column": column,
        "end_line": end_line,
        "end_column": end_column,
        "message": problem.message,
        "help": problem.help,
        "sizes": list(problem.sizes),
    }
    if problem.fix is not None:
        found["fix"] = {
            "title": problem.fix.title,
            "edits": [_edit_json(edit, source) for edit in problem.fix.edits],
        }
    return found


def _edit_json(edit: Edit, source: Source) -> dict[str, object]:
    line, column = source.line_column(edit.span.start)
    end_line, end_column = source.line_column(edit.span.end)
    return {
        "line": line,
        "column": column,
        "end_line": end_line,
        "end_column": end_column,
        "text": edit.text,
    }
