"""What the commands share: how they speak, what they return, and a call that is wrong."""

from __future__ import annotations

import os
import sys
from collections.abc import Iterable, Sequence
from typing import TextIO

from loopwright.check.checked import Checked
from loopwright.check.printing import Style, problems_text
from loopwright.compile import check_source
from loopwright.files import read_source
from loopwright.notation.hidden import in_json, visible
from loopwright.notation.source import Source
from loopwright.problem import Problem

OK, BAD_PATTERN, BAD_CALL = 0, 1, 2


class Usage(Exception):
    """A call that is wrong; the text says how."""


def say(text: str) -> None:
    """To standard error: everything that is no result. A terminal gets no character to obey."""
    print(visible(text), file=sys.stderr)


def tell(text: str, stream: TextIO | None = None, end: str = "\n") -> None:
    """A result in words, to standard output or another stream, with no character to obey."""
    print(visible(text), file=stream or sys.stdout, end=end)


def tell_json(value: object) -> None:
    """A result for programs, to standard output."""
    import json

    print(in_json(json.dumps(value, ensure_ascii=False, indent=2)))


def show(problems: Iterable[Problem], source: Source, stream: TextIO | None = None) -> None:
    """Problems as they are printed, in colour on a terminal; they hold no character to obey."""
    stream = stream or sys.stderr
    print(problems_text(problems, source, style(stream)), file=stream)


def style(stream: TextIO | None = None) -> Style:
    """Colour only on a terminal, and never with NO_COLOR set."""
    plain = "NO_COLOR" in os.environ or os.environ.get("TERM") == "dumb"
    return Style(colour=(stream or sys.stderr).isatty() and not plain)


def report(checked: Checked) -> None:
    """The problems of a file, to standard error."""
    if checked.problems:
        show(checked.problems, checked.source)


def read_and_check(path: str) -> Checked:
    """Check a file and report its problems. Raises `Unreadable`."""
    checked = check_source(read_source(path))
    report(checked)
    return checked


def miscounted(checked: Checked) -> bool:
    """Whether a pattern has errors beside balls that do not last: those need no other counts."""
    return any(p.is_error and p.rule != "yarn-short" for p in checked.problems)


def status_of(checked: Sequence[Checked]) -> int:
    """The exit status that the problems of some files ask for."""
    return BAD_PATTERN if any(c.has_errors for c in checked) else OK
