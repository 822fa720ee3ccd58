"""The one type in which anything that is wrong with a source is said."""

from __future__ import annotations

from loopwright.notation.source import Span
from loopwright.record import dataclass

ERROR = "error"
WARNING = "warning"
ADVICE = "advice"


@dataclass(frozen=True, slots=True)
class Label:
    """A further place a problem points to, with a few words on it."""

    span: Span
    text: str


@dataclass(frozen=True, slots=True)
class Edit:
    """Replace the text at `span` with `text`."""

    span: Span
    text: str


@dataclass(frozen=True, slots=True)
class Fix:
    """The one right change, where it is certain."""

    title: str
    edits: tuple[Edit, ...]


@dataclass(frozen=True, slots=True)
class Problem:
    """A finding of one rule.

    `title` is the line beside the rule's name, `message` the sentences that say what happened
    with the knitter's numbers, `help` what to do. `sizes` is empty where all sizes have it.
    """

    rule: str
    severity: str
    title: str
    message: str
    span: Span
    labels: tuple[Label, ...] = ()
    help: str = ""
    sizes: tuple[str, ...] = ()
    fix: Fix | None = None

    @property
    def is_error(self) -> bool:
        return self.severity == ERROR
