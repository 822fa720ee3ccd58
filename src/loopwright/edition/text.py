"""The text edition: plain UTF-8, one instruction a line, never wrapped."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING
from unicodedata import combining, east_asian_width

from loopwright.edition.render import clean, environment, headings, shade_columns

if TYPE_CHECKING:
    from collections.abc import Sequence

    from loopwright.edition.document import Abbreviation, Document, Line, Shade

_LONGEST_RULE = 72


def render_text(doc: Document) -> str:
    """The whole pattern as plain text that pastes well and that a screen reader reads in order.

    A row is exactly its label, text and count joined by single spaces. Nothing is wrapped, so
    that a mail program or a braille line can do it its own way.
    """
    template = environment().get_template("pattern.txt")
    plain, heading = clean(doc), headings(doc.catalogue)
    text = template.render(
        doc=plain,
        heading=heading,
        one_line=one_line,
        columns=columns,
        rule=rule,
        shades=_shade_rows(plain.shades, heading),
        abbreviations=_abbreviation_rows(plain.abbreviations),
    )
    # The template leaves a gap for each part a pattern lacks.
    text = re.sub(r"[ \t]+$", "", text, flags=re.MULTILINE)
    return re.sub(r"\n{3,}", "\n\n", text).strip("\n") + "\n"


def one_line(line: Line) -> str:
    """`LABEL TEXT COUNT`, single spaces between those that are there."""
    return " ".join(part for part in (line.label, line.text, line.count) if part)


def rule(text: str, mark: str) -> str:
    """A line of `mark` under a heading, as wide as it is, within reason."""
    return mark * min(max(_width(text), 1), _LONGEST_RULE)


def columns(rows: Sequence[Sequence[str]]) -> list[str]:
    """The rows of a table with their columns aligned, two spaces apart."""
    widths = [max(map(_width, column)) for column in zip(*rows, strict=True)]
    return [
        "  ".join(
            cell + " " * (width - _width(cell)) for cell, width in zip(row, widths, strict=True)
        ).rstrip()
        for row in rows
    ]


def _shade_rows(shades: tuple[Shade, ...], heading: dict[str, str]) -> list[tuple[str, ...]]:
    names = shade_columns(shades)
    head = tuple(heading[name] for name in names)
    return [head, *(tuple(getattr(shade, name) for name in names) for shade in shades)]


def _abbreviation_rows(abbreviations: tuple[Abbreviation, ...]) -> list[tuple[str, str]]:
    return [
        (a.short, f"{a.meaning} ({a.stitches})" if a.stitches else a.meaning) for a in abbreviations
    ]


def _width(text: str) -> int:
    """Columns on a terminal: wide East Asian letters take two, combining marks none."""
    return sum(
        0 if combining(letter) else 2 if east_asian_width(letter) in "WF" else 1 for letter in text
    )
