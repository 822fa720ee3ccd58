"""The lines that stop a resize."""

from __future__ import annotations

from loopwright.notation.source import Span
from loopwright.problem import ERROR, Problem


class CannotResize(Exception):
    """The pattern cannot be made that size; `problems` say which lines stop it."""

    def __init__(self, problems: list[Problem]) -> None:
        super().__init__(problems[0].message)
        self.problems = problems


class Stops:
    """Gathers what stops a resize, so that one run names every line."""

    def __init__(self) -> None:
        self.problems: list[Problem] = []

    def add(self, span: Span, title: str, message: str, help: str = "") -> None:
        """A line that stops it; each line once."""
        if all(problem.span != span for problem in self.problems):
            self.problems.append(Problem("", ERROR, title, message, span, help=help))

    def raise_any(self) -> None:
        """Raises CannotResize where something was added."""
        if self.problems:
            raise CannotResize(self.problems)
