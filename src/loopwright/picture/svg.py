"""Charts as SVG: one path for each kind of symbol and each colour, whatever the chart's size.

No script, no address, no style sheet: colours are attributes, so that a page may set others by the
classes (``ink``, ``grid``, ``blank``, ``frame``, ``strand``, ``label``).
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from html import escape

from loopwright.picture.chart import Chart, ChartRow
from loopwright.picture.faces import INTO, NO_STITCH, TURNS, WAITING, KeyEntry
from loopwright.picture.frames import Frame
from loopwright.picture.strips import Strip, cell_mm
from loopwright.picture.symbols import BOLD, CELL, HOOK, LINE, Stroke, Symbol, number, ring, symbol
from loopwright.picture.wording import PLAIN, Wording, named
from loopwright.picture.words import chart_words

INK, GRID, BLANK, FRAME, QUIET = "#1b1d1f", "#b9bfc1", "#d3d7d8", "#1d5b63", "#55595e"
_GRID_LINE = f'fill="none" stroke="{GRID}" stroke-width="0.5"'
FACE = "system-ui, -apple-system, 'DejaVu Sans', sans-serif"

_LABEL = 9.0
_STRAND = 14.0
_THREAD = 0.5
"""The line through stitches that wait on the needle."""


def marks_of(chart: Chart) -> dict[str, int]:
    """For groups that make equally many stitches: the number of bars that tells them apart."""
    seen: dict[int, int] = {}
    marks: dict[str, int] = {}
    for entry in chart.key:
        if entry.symbol.startswith(INTO):
            marks[entry.symbol] = seen.get(entry.cells, 0)
            seen[entry.cells] = marks[entry.symbol] + 1
    return marks


def chart_svg(chart: Chart, strip: Strip, name: str, title: str | None = None) -> str:
    """One strip as an ``<svg>`` element; `name` begins the ids of its rows.

    A row's band has the class ``row`` and ``data-row``, its number; the id ``NAME-row-3`` is that
    of the first strip which shows the row.
    """
    return _Sheet(chart, strip, name).svg(title or chart_words(chart), cell_mm(chart) / CELL)


def key_svg(entry: KeyEntry, mark: int = 0, mm: float = 4.8, words: Wording = PLAIN) -> str:
    """The square of a key's entry as an ``<svg>`` element; its alternative text is the meaning."""
    width = CELL * entry.cells
    told = words.say("Symbol for {name}", name=named(entry, words))
    scale = mm / CELL
    return (
        f'<svg class="symbol" xmlns="http://www.w3.org/2000/svg" role="img" '
        f'width="{number((width + 1) * scale)}mm" height="{number(11 * scale)}mm" '
        f'viewBox="-0.5 -0.5 {number(width + 1)} 11"><title>{escape(told)}</title>'
        f"{key_square(entry, 0, 0, mark)}</svg>"
    )


def key_square(entry: KeyEntry, x: float, y: float, mark: int) -> str:
    """The paths of a key's square with its left upper corner at x, y."""
    if entry.symbol.removesuffix("~") in TURNS:
        return _turn_square(entry, x, y)
    if entry.symbol == WAITING:
        return _thread([(x, y + CELL / 2, "h10")], "")
    out = []
    cells = range(entry.cells)
    if entry.symbol == NO_STITCH:
        out.append(_path([(x, y, "h10v10h-10z")], "blank", f'fill="{BLANK}"'))
    out.append(
        _path(
            [(x + CELL * c, y, "h10v10h-10z") for c in cells],
            "grid",
            _GRID_LINE,
        )
    )
    shape = symbol(entry.symbol, entry.cells, mark)
    half = CELL / 2 if shape.bold else 0.0
    out.append(_strokes([(x + half + a, y + b, c) for a, b, c in shape.bold], "", BOLD))
    out.append(_strokes([(x + half + a, y + b, c) for a, b, c in shape.lines], "", shape.line))
    out.append(_strokes([(x + a, y + b, c) for a, b, c in shape.dots], "", shape.dot))
    return "".join(out)


def _turn_square(entry: KeyEntry, x: float, y: float) -> str:
    """A turn with what lies on both its sides: the last stitch worked, and one that waits."""
    name, rs = entry.symbol, not entry.symbol.endswith("~")
    worked, waits = (x + CELL, x) if rs else (x, x + CELL)
    lines = [(x + CELL + a, y + b, c) for a, b, c in symbol(name, 1).lines]
    if name.startswith("w&t"):
        a, b, c = ring(-1 if rs else 1)
        lines.append((waits + a, y + b, c))
    from_x = waits if rs else waits + HOOK + 1
    return (
        _thread([(from_x, y + CELL / 2, f"h{number(CELL - HOOK - 1)}")], "")
        + _path([(worked, y, "h10v10h-10z")], "grid", _GRID_LINE)
        + _strokes(lines, "", LINE)
    )


def _thread(strokes: list[Stroke], data: str) -> str:
    return _path(strokes, "ink", f'{data}fill="none" stroke="{INK}" stroke-width="{_THREAD}"')


def _path(strokes: Iterable[Stroke], kind: str, attributes: str) -> str:
    d = "".join(f"M{number(x)} {number(y)}{commands}" for x, y, commands in strokes)
    return f'<path class="{kind}" {attributes} d="{d}"/>' if d else ""


def _strokes(strokes: list[Stroke], data: str, width: float) -> str:
    return _path(
        strokes,
        "ink",
        f'{data}fill="none" stroke="{INK}" stroke-width="{number(width)}" stroke-linecap="round" '
        'stroke-linejoin="round"',
    )


class _Sheet:
    """One strip of a chart; x grows to the right, the first row lies at the bottom."""

    def __init__(self, chart: Chart, strip: Strip, name: str) -> None:
        self.chart = chart
        self.strip = strip
        self.name = name
        self.rows = chart.rows[strip.bottom : strip.top]
        strand = _STRAND if any(row.strand for row in chart.rows) else 0.0
        digits = len(str(len(chart.rows)))
        label = max(_LABEL, 3.9 * digits + 4) + strand
        self.left = label if any(not row.rs for row in chart.rows) else 1.0
        self.right = label if any(row.rs for row in chart.rows) else 1.0
        for row in chart.rows:  # a hook over the chart's own edge
            if row.turn is not None and row.turn.boundary == (chart.columns if row.rs else 0):
                if row.rs:
                    self.left = max(self.left, HOOK + 1.6)
                else:
                    self.right = max(self.right, HOOK + 1.6)
        self.width = CELL * (strip.left - strip.right)
        self.height = CELL * len(self.rows)

    def x(self, line: int) -> float:
        """The place of a line between columns, counted from the right of the chart."""
        return self.left + CELL * (self.strip.left - line)

    def y(self, row: int) -> float:
        """The upper edge of a row, by its place in the chart."""
        return 1 + CELL * (self.strip.top - 1 - row)

    def svg(self, title: str, scale: float) -> str:
        wide, high = self.left + self.width + self.right, self.height + 2
        parts = [
            f'<svg class="chart" xmlns="http://www.w3.org/2000/svg" role="img" '
            f'width="{number(wide * scale)}mm" height="{number(high * scale)}mm" '
            f'viewBox="0 0 {number(wide)} {number(high)}" font-family="{FACE}">',
            f"<title>{escape(title)}</title>",
            *self._bands(wide),
            self._blanks(),
            self._swatches(),
            self._threads(),
            self._grid(),
            *self._symbols(),
            self._frames(),
            *self._labels(),
            "</svg>",
        ]
        return "".join(parts)

    def _bands(self, wide: float) -> list[str]:
        bands = []
        for at, row in enumerate(self.rows, self.strip.bottom):
            own = f' id="{escape(self.name)}-row-{row.number}"' if self.strip.right == 0 else ""
            bands.append(
                f'<rect class="row" data-row="{row.number}"{own} x="0" y="{number(self.y(at))}" '
                f'width="{number(wide)}" height="10" fill="none"/>'
            )
        return bands

    def _blanks(self) -> str:
        strokes = []
        for at, row in enumerate(self.rows, self.strip.bottom):
            shown = [c for c in row.blank if self.strip.right <= c < self.strip.left]
            for first, last in _runs(shown):
                wide = number(CELL * (last - first + 1))
                strokes.append((self.x(last + 1), self.y(at), f"h{wide}v10h-{wide}z"))
        return _path(strokes, "blank", f'data-symbol="{NO_STITCH}" fill="{BLANK}"')

    def _threads(self) -> str:
        """A line through the stitches that wait, as if it were the needle; it ends at a hook."""
        strokes: list[Stroke] = []
        for at, row in enumerate(self.rows, self.strip.bottom):
            shown = [c for c in row.waiting if self.strip.right <= c < self.strip.left]
            for first, last in _runs(shown):
                left, right = self.x(last + 1), self.x(first)
                if row.turn is not None and row.rs and row.turn.boundary == first:
                    right -= HOOK + 1
                elif row.turn is not None and not row.rs and row.turn.boundary == last + 1:
                    left += HOOK + 1
                strokes.append((left, self.y(at) + CELL / 2, f"h{number(right - left)}"))
        return _thread(strokes, f'data-symbol="{WAITING}" ')

    def _grid(self) -> str:
        """Lines between squares; none inside a symbol that spans several, nor between stitches
        that wait."""
        strokes: list[Stroke] = []
        wide = range(self.strip.right, self.strip.left)
        idle = [set(row.waiting) for row in self.rows]
        squares = [[c not in waits for c in wide] for waits in idle]
        none = [False] * len(wide)
        for at in range(len(self.rows) + 1):
            below = squares[-at] if at else none
            above = squares[-at - 1] if at < len(self.rows) else none
            drawn = [c for c, one, other in zip(wide, below, above, strict=True) if one or other]
            for first, last in _runs(drawn):
                length = number(CELL * (last - first + 1))
                strokes.append((self.x(last + 1), 1 + CELL * at, f"h{length}"))
        inner: dict[int, set[int]] = {}
        for at, row in enumerate(self.rows):
            for placed in row.placed:
                for line in range(placed.right + 1, placed.left + 1):
                    inner.setdefault(line, set()).add(at)
        for line in range(self.strip.right, self.strip.left + 1):
            sides = [c for c in (line - 1, line) if c in wide]
            open_rows = [
                at
                for at in range(len(self.rows))
                if at not in inner.get(line, ()) and any(c not in idle[at] for c in sides)
            ]
            for first, last in _runs(open_rows):
                top = 1 + CELL * (len(self.rows) - 1 - last)
                strokes.append((self.x(line), top, f"v{number(CELL * (last - first + 1))}"))
        return _path(strokes, "grid", _GRID_LINE)

    def _symbols(self) -> list[str]:
        marks = marks_of(self.chart)
        lines: dict[str, list[Stroke]] = {}
        dots: dict[str, list[Stroke]] = {}
        bold: dict[str, list[Stroke]] = {}
        shapes: dict[str, Symbol] = {}
        cut = False
        for at, row in enumerate(self.rows, self.strip.bottom):
            y = self.y(at)
            for placed in row.placed:
                if placed.left < self.strip.right or placed.right >= self.strip.left:
                    continue
                cut = cut or placed.right < self.strip.right or placed.left >= self.strip.left
                shape = symbol(placed.symbol, placed.cells, marks.get(placed.symbol, 0))
                x = self.x(placed.left + 1)
                _add(lines, placed.symbol, shape.lines, x, y)
                _add(dots, placed.symbol, shape.dots, x, y)
                shapes[placed.symbol] = shape
            for mark in row.marks:
                if self.strip.right <= mark.boundary <= self.strip.left:
                    shape = shapes[mark.symbol] = symbol(mark.symbol, 1)
                    _add(lines, mark.symbol, shape.lines, self.x(mark.boundary), y)
                    _add(bold, mark.symbol, shape.bold, self.x(mark.boundary), y)
            self._turn(row, y, lines, shapes)
        out = []
        for entry in self.chart.key:
            data = f'data-symbol="{escape(entry.symbol)}" '
            shape = shapes.get(entry.symbol, Symbol())
            out.append(_strokes(bold.get(entry.symbol, []), data, BOLD))
            out.append(_strokes(lines.get(entry.symbol, []), data, shape.line))
            out.append(_strokes(dots.get(entry.symbol, []), data, shape.dot))
        return self._clipped(out) if cut else out

    def _turn(
        self, row: ChartRow, y: float, lines: dict[str, list[Stroke]], shapes: dict[str, Symbol]
    ) -> None:
        """A hook stands in the strip that shows what lies beyond it."""
        turn, strip = row.turn, self.strip
        if turn is None:
            return
        beyond = turn.boundary if row.rs else turn.boundary - 1
        shape = shapes[turn.symbol] = symbol(turn.symbol, 1)
        if strip.right <= min(max(beyond, 0), self.chart.columns - 1) < strip.left:
            _add(lines, turn.symbol, shape.lines, self.x(turn.boundary), y)
        if strip.right <= turn.wrapped < strip.left:
            _add(lines, turn.symbol, [ring(-1 if row.rs else 1)], self.x(turn.wrapped + 1), y)

    def _clipped(self, parts: list[str]) -> list[str]:
        """A symbol through which the strips are cut stands in both, as far as each goes."""
        name = f"{escape(self.name)}-clip-{self.strip.right}-{self.strip.bottom}"
        field = (
            f'<clipPath id="{name}"><rect x="{number(self.left)}" y="0" '
            f'width="{number(self.width)}" height="{number(self.height + 2)}"/></clipPath>'
        )
        return [field, f'<g clip-path="url(#{name})">', *parts, "</g>"]

    def _frames(self) -> str:
        strokes = [stroke for frame in self.chart.frames for stroke in self._frame(frame)]
        return _path(
            strokes,
            "frame",
            f'fill="none" stroke="{FRAME}" stroke-width="1.4" stroke-linecap="square"',
        )

    def _frame(self, frame: Frame) -> list[Stroke]:
        strokes: list[Stroke] = []
        low, high = self.strip.right, self.strip.left
        for side in (0, 1):
            for at in range(self.strip.bottom, self.strip.top):
                here = frame.sides[at]
                if here is not None and low <= here[side] <= high:
                    strokes.append((self.x(here[side]), self.y(at), "v10"))
        for at in range(self.strip.bottom, self.strip.top + 1):
            below = frame.sides[at - 1] if at > 0 else None
            above = frame.sides[at] if at < len(frame.sides) else None
            y = self.y(at) + CELL
            if below is None or above is None:
                spans = [side for side in (below, above) if side is not None]
            else:
                spans = [(below[s], above[s]) for s in (0, 1) if below[s] != above[s]]
            for one, other in spans:
                first, last = max(min(one, other), low), min(max(one, other), high)
                if first < last:
                    strokes.append((self.x(last), y, f"h{number(CELL * (last - first))}"))
        return strokes

    def _swatches(self) -> str:
        by_colour: dict[str, list[Stroke]] = {}
        for at, row in enumerate(self.rows, self.strip.bottom):
            if row.strand and row.colours:
                x = self._swatch_x(row)
                stroke = (x, self.y(at) + 2, "h6v6h-6z")
                by_colour.setdefault(row.colours[0], []).append(stroke)
        return "".join(
            _path(
                strokes,
                "strand",
                f'fill="{escape(colour)}" stroke="{QUIET}" stroke-width="0.5"',
            )
            for colour, strokes in by_colour.items()
        )

    def _swatch_x(self, row: ChartRow) -> float:
        inner = self.left + self.width
        return inner + self.right - _STRAND if row.rs else _STRAND - 6

    def _labels(self) -> list[str]:
        out = []
        inner = self.left + self.width
        for at, row in enumerate(self.rows, self.strip.bottom):
            y = self.y(at) + 7.1
            x = inner + 2 if row.rs else self.left - 2
            out.append(_text(x, y, str(row.number), "start" if row.rs else "end"))
            if row.strand:
                swatch = self._swatch_x(row)
                at_x = swatch + 7.2 if row.rs else swatch - 1.2
                out.append(_text(at_x, y, row.strand[:3], "start" if row.rs else "end", bold=True))
        return out


def _text(x: float, y: float, text: str, anchor: str, bold: bool = False) -> str:
    weight = ' font-weight="600"' if bold else ""
    return (
        f'<text class="label" x="{number(x)}" y="{number(y)}" font-size="6.2"{weight} '
        f'text-anchor="{anchor}" fill="{INK}">{escape(text)}</text>'
    )


def _add(
    found: dict[str, list[Stroke]], name: str, strokes: Iterable[Stroke], x: float, y: float
) -> None:
    for dx, dy, commands in strokes:
        found.setdefault(name, []).append((x + dx, y + dy, commands))


def _runs(values: Sequence[int]) -> list[tuple[int, int]]:
    """Numbers in order as runs: first and last."""
    runs: list[tuple[int, int]] = []
    for value in values:
        if runs and runs[-1][1] == value - 1:
            runs[-1] = (runs[-1][0], value)
        else:
            runs.append((value, value))
    return runs
