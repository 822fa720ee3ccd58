"""All charts of a pattern on one SVG with their keys: what ``picture --what chart`` writes."""

from __future__ import annotations

from collections.abc import Sequence
from html import escape

from loopwright.notation.hidden import isolated
from loopwright.picture.chart import Chart
from loopwright.picture.faces import KeyEntry
from loopwright.picture.strips import cell_mm, strips_of
from loopwright.picture.svg import FACE, INK, QUIET, chart_svg, key_square, marks_of
from loopwright.picture.symbols import number
from loopwright.picture.turnwords import notes_of
from loopwright.picture.words import chart_words, strip_words, title_of
from loopwright.record import dataclass

_MM = 2.4  # units of this sheet in a millimetre
_LETTER = 0.56  # the width of an average letter in its size: common practice
_SIZE = 8.0
_GAP = 12.0


@dataclass(slots=True)
class _Page:
    parts: list[str]
    y: float = _GAP
    width: float = 0.0

    def text(self, x: float, text: str, size: float, colour: str = INK, bold: bool = False) -> None:
        weight = ' font-weight="600"' if bold else ""
        self.parts.append(
            f'<text x="{number(x)}" y="{number(self.y)}" font-size="{number(size)}" '
            f'fill="{colour}"{weight}>{escape(isolated(text))}</text>'
        )
        self.width = max(self.width, x + len(text) * size * _LETTER)


def sheet_svg(title: str, charts: Sequence[Chart]) -> str:
    """The charts under one another, each with its key; a whole SVG file."""
    page = _Page([])
    page.y += 12
    page.text(_GAP, title, 14, bold=True)
    page.y += 8
    for number_of, chart in enumerate(charts):
        _one(page, chart, f"chart-{number_of + 1}")
    wide, high = page.width + _GAP, page.y + _GAP
    words = " ".join(chart_words(chart) for chart in charts)
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" role="img" width="{number(wide / _MM)}mm" '
        f'height="{number(high / _MM)}mm" viewBox="0 0 {number(wide)} {number(high)}" '
        f'font-family="{FACE}"><title>{escape(title)}</title><desc>{escape(words)}</desc>'
        f'<rect width="100%" height="100%" fill="#ffffff"/>{"".join(page.parts)}</svg>\n'
    )


def _one(page: _Page, chart: Chart, name: str) -> None:
    page.y += 18
    page.text(_GAP, title_of(chart), 11, bold=True)
    page.y += 6
    for strip in strips_of(chart):
        drawn = chart_svg(chart, strip, name)
        part = strip_words(chart, strip)
        if strip.right == strip.bottom == 0:
            part = f"{notes_of(chart)} {part}".strip()
        if part:
            page.y += 7
            page.text(_GAP, part, 7, QUIET)
            page.y += 4
        wide, high = _measure(drawn)
        # A chart inside the sheet takes its place by x and y.
        placed = drawn.replace(
            "<svg ", f'<svg x="{number(_GAP)}" y="{number(page.y)}" ', 1
        ).replace(f'width="{wide}mm" height="{high}mm"', _units(wide, high), 1)
        page.parts.append(placed)
        page.y += float(high) * _MM + 6
        page.width = max(page.width, _GAP + float(wide) * _MM)
    page.y += 8
    marks = marks_of(chart)
    square = cell_mm(chart) * _MM
    for entry in chart.key:
        _entry(page, chart, entry, marks.get(entry.symbol, 0), square)


def _measure(drawn: str) -> tuple[str, str]:
    head = drawn.split('width="', 1)[1]
    wide = head.split("mm", 1)[0]
    high = head.split('height="', 1)[1].split("mm", 1)[0]
    return wide, high


def _units(wide: str, high: str) -> str:
    return f'width="{number(float(wide) * _MM)}" height="{number(float(high) * _MM)}"'


def _entry(page: _Page, chart: Chart, entry: KeyEntry, mark: int, square: float) -> None:
    lines = key_lines(entry, not chart.sided)
    scale = square / 10
    page.parts.append(
        f'<g transform="translate({number(_GAP)} {number(page.y)}) scale({number(scale)})">'
        f"{key_square(entry, 0, 0, mark)}</g>"
    )
    x = _GAP + max(square * entry.cells, 3 * square) + 8
    page.y += square * 0.72
    for index, line in enumerate(lines):
        for part in wrapped(line, 86):
            page.text(x, part, _SIZE, QUIET if index and entry.long == line else INK)
            page.y += _SIZE * 1.3
    page.y += max(square * 0.28 - _SIZE * 0.3, 3) + 2


def key_lines(entry: KeyEntry, one_side: bool) -> list[str]:
    """An entry in words: one line where both sides say the same, else one for each side."""
    if entry.rs == entry.ws or one_side or not (entry.rs and entry.ws):
        side = "" if entry.rs == entry.ws or one_side else ("RS: " if entry.rs else "WS: ")
        lines = [side + (entry.rs or entry.ws)]
    else:
        lines = [f"RS: {entry.rs} · WS: {entry.ws}"]
    if entry.long and entry.long not in lines:
        lines.append(entry.long)
    return lines


def wrapped(text: str, width: int) -> list[str]:
    """A text cut at its spaces into lines of at most so many letters."""
    lines = [""]
    for word in text.split():
        if lines[-1] and len(lines[-1]) + 1 + len(word) > width:
            lines.append(word)
        else:
            lines[-1] = f"{lines[-1]} {word}".strip()
    return lines
