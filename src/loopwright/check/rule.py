"""What a rule is: its name, its words, its examples and its check."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from loopwright.check.context import Context
from loopwright.problem import Problem
from loopwright.record import dataclass

Check = Callable[[Context], Iterable[Problem]]


def found_while_reading(_context: Context) -> Iterable[Problem]:
    """For rules whose problems the reader of the source has already said."""
    return ()


@dataclass(frozen=True, slots=True)
class Rule:
    """One rule of the checker.

    `what` says in a paragraph what is wrong and why it matters; `wrong` and `right` are whole
    sources: the wrong one has a problem of this rule, the right one has none at all.
    """

    name: str
    severity: str
    title: str
    what: str
    wrong: str
    right: str
    check: Check
