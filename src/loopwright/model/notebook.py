"""What is noted while a source is put together: problems, and what the rules will ask about."""

from __future__ import annotations

from collections.abc import Iterable

from loopwright.model.pattern import Reference, RowClash, RowGap, UnknownWord
from loopwright.notation.source import Span
from loopwright.notation.tree import Name
from loopwright.problem import ERROR, Label, Problem


class Notebook:
    """Problems in the order in which they were met, names used, words and rows not known."""

    def __init__(self) -> None:
        self.problems: list[Problem] = []
        self.references: list[Reference] = []
        self.unknown: dict[UnknownWord, None] = {}  # in order, each once
        self.clashes: list[RowClash] = []
        self.gaps: list[RowGap] = []

    def error(
        self,
        rule: str,
        title: str,
        message: str,
        span: Span,
        help: str = "",
        labels: tuple[Label, ...] = (),
    ) -> None:
        """Note an error; the words are those of `Problem`."""
        self.problems.append(Problem(rule, ERROR, title, message, span, labels, help))

    def refer(self, kind: str, name: Name) -> None:
        """Note that a name is used; `kind` is motif, strand, shade or yarn."""
        self.references.append(Reference(kind, name))

    def twice(self, kind: str, names: Iterable[Name]) -> None:
        """An error for each name that an earlier one of its kind has."""
        seen: dict[str, Name] = {}
        for name in names:
            first = seen.setdefault(name.key, name)
            if first is not name:
                self.error(
                    "name-twice",
                    f"two {kind}s have the name “{name.text}”",
                    f"Each {kind} needs a name of its own; the first one counts.",
                    name.span,
                    "give one of them another name.",
                    (Label(first.span, "the first is here"),),
                )
