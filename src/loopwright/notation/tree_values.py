"""What every line of the tree is made of: names, texts and whole numbers."""

from __future__ import annotations

from loopwright.notation.source import Span
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class Name:
    """A name as the writer spelled it; `key` is what it is looked up by."""

    text: str
    span: Span

    @property
    def key(self) -> str:
        return self.text.casefold()


@dataclass(frozen=True, slots=True)
class Text:
    """Text for the reader, without its quotes."""

    text: str
    span: Span


@dataclass(frozen=True, slots=True)
class Count:
    """A whole number, or a size list of whole numbers."""

    values: tuple[int, ...]
    span: Span

    def at(self, size: int) -> int:
        """The number for a size (by its place in `sizes`, from 0)."""
        values = self.values
        return values[size] if size < len(values) else values[-1]
