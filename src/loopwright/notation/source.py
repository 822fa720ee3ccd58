"""A source text and places in it."""

from __future__ import annotations

from bisect import bisect_right

from loopwright.record import dataclass, field


@dataclass(frozen=True, slots=True, order=True)
class Span:
    """Characters `start` up to `end` (exclusive) of a source, counted from 0.

    Spans inside a row's body are counted from the start of the row's line, because equal lines
    share one body; `Row.at` turns them into places in the file.
    """

    start: int
    end: int

    def shifted(self, offset: int) -> Span:
        """The same stretch `offset` characters further on."""
        return Span(self.start + offset, self.end + offset)

    def to(self, other: Span) -> Span:
        """From the start of this span to the end of the other."""
        return Span(self.start, other.end)


@dataclass(frozen=True, slots=True)
class Source:
    """The text of one pattern source, with its name for messages.

    Line ends are LF here; `read_source` has turned the others into LF and dropped a byte-order
    mark.
    """

    name: str
    text: str
    line_starts: tuple[int, ...] = field(repr=False)

    @staticmethod
    def of(name: str, text: str) -> Source:
        """Make a source of a text as it was read: any line ends, with or without a BOM."""
        text = text.removeprefix("\ufeff").replace("\r\n", "\n").replace("\r", "\n")
        starts = [0]
        at = text.find("\n")
        while at >= 0:
            starts.append(at + 1)
            at = text.find("\n", at + 1)
        return Source(name, text, tuple(starts))

    def line_column(self, offset: int) -> tuple[int, int]:
        """Line and column of a character, both counted from 1."""
        line = bisect_right(self.line_starts, offset)
        return line, offset - self.line_starts[line - 1] + 1

    def line_text(self, line: int) -> str:
        """The text of a line (counted from 1) without its line end."""
        start = self.line_starts[line - 1]
        end = self.line_starts[line] - 1 if line < len(self.line_starts) else len(self.text)
        return self.text[start:end]

    def slice(self, span: Span) -> str:
        """The writer's own text at a span."""
        return self.text[span.start : span.end]
