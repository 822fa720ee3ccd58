"""The strokes of a chart's symbols, drawn by this project in the trade's generic sense.

A cell is 10 by 10 units, y downwards. A symbol is a list of strokes, each a starting point and the
relative path commands that follow it, so that a stroke is moved by moving its starting point.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from functools import cache

from loopwright.picture.faces import INTO, NO_STITCH, OWN, TURNS, WAITING
from loopwright.picture.lettering import letters
from loopwright.record import dataclass, field

CELL = 10.0
LINE, FINE, BOLD = 0.9, 0.65, 1.6
"""The widths of lines: of symbols, of words in squares, of markers."""

HOOK = 3.4
"""How far the hook of a turn reaches over the line at which the row turns."""

Stroke = tuple[float, float, str]
"""A starting point in the cell, and relative path commands."""


@dataclass(frozen=True, slots=True)
class Symbol:
    """What is drawn in the cells of a stitch: lines, and dots (lines of no length, round-ended).

    `bold` lines are those of markers, drawn on the line between two cells. `dot` is how wide the
    dots are and `line` how wide the lines, in units.
    """

    lines: tuple[Stroke, ...] = ()
    dots: tuple[Stroke, ...] = ()
    bold: tuple[Stroke, ...] = ()
    dot: float = 0.0
    line: float = LINE


@dataclass(slots=True)
class _Pen:
    """Gathers strokes; coordinates are in units from the left upper corner of the cells."""

    lines: list[Stroke] = field(default_factory=list)
    dots: list[Stroke] = field(default_factory=list)
    width: float = 0.0

    def line(self, *points: tuple[float, float]) -> None:
        (x, y), *rest = points
        steps = []
        for px, py in rest:
            steps.append(f"l{number(px - x)} {number(py - y)}")
            x, y = px, py
        self.lines.append((*points[0], "".join(steps)))

    def path(self, x: float, y: float, commands: str) -> None:
        self.lines.append((x, y, commands))

    def ring(self, x: float, y: float, r: float) -> None:
        # Two curves rather than arcs, which a PDF writer takes far longer to work out.
        up, across = number(4 / 3 * r), number(2 * r)
        self.lines.append(
            (x - r, y, f"c0 -{up} {across} -{up} {across} 0c0 {up} -{across} {up} -{across} 0z")
        )

    def dot(self, x: float, y: float, r: float) -> None:
        self.dots.append((x, y, "h0"))
        self.width = 2 * r

    def done(self) -> Symbol:
        return Symbol(tuple(self.lines), tuple(self.dots), (), self.width)


def number(value: float) -> str:
    """A coordinate as short as it can be written."""
    text = f"{value:.2f}".rstrip("0").rstrip(".")
    return "0" if text in ("-0", "") else text


def _right(pen: _Pen) -> None:
    pen.line((2, 8.5), (8, 1.5))


def _left(pen: _Pen) -> None:
    pen.line((8, 8.5), (2, 1.5))


def _together(pen: _Pen, count: int) -> None:
    """Strokes that lean to the right, one for each stitch that is taken away."""
    if count == 2:
        _right(pen)
        return
    gap = 1.5 if count < 5 else 1.1
    for index in range(count - 1):
        pen.line((1.6 + gap * index, 8.5), (6.6 - 0.4 * (count - 3) + gap * index, 1.5))


def _loop(pen: _Pen) -> None:
    pen.path(2.2, 8.5, "c10 -9.6 -4.4 -9.6 5.6 0")


def _letter_m(pen: _Pen, bottom: float = 8.2) -> None:
    pen.line((2.3, bottom), (2.3, 1.8), (5, 5.2), (7.7, 1.8), (7.7, bottom))


def _bent(pen: _Pen, way: int, bar: bool) -> None:
    """A stroke that grows out of the row below and bends to one side."""
    foot = 7.2 if bar else 8.6
    pen.path(5 - 1.2 * way, foot, f"v-2.6c0 -1.8 {number(0.4 * way)} -2.8 {number(3.2 * way)} -3.2")
    if bar:
        pen.line((2.2, 8.6), (7.8, 8.6))


def _fork(pen: _Pen, width: float) -> None:
    middle = width / 2
    pen.line((middle, 8.6), (middle, 5.4), (middle - width / 4, 1.8))
    pen.line((middle, 5.4), (middle + width / 4, 1.8))


def _vee(pen: _Pen, top: float = 2.2, foot: float = 8.0) -> None:
    pen.line((2.4, top), (5, foot), (7.6, top))


def _caret(pen: _Pen) -> None:
    pen.line((1.6, 8.5), (5, 2), (8.4, 8.5))
    pen.line((5, 2), (5, 8.5))


def _arch(pen: _Pen) -> None:
    pen.path(2.8, 8.5, "v-3.6c0 -3.2 4.4 -3.2 4.4 0v3.6")


def _sssk(pen: _Pen) -> None:
    pen.line((6.9, 8.5), (1.9, 1.5))
    pen.line((8.4, 8.5), (3.4, 1.5))


def _knitwise(pen: _Pen, foot: float = 8.0) -> None:
    _vee(pen, foot=foot)
    pen.line((5, 2), (5, 5))


def _slipped_over(pen: _Pen) -> None:
    _vee(pen, top=3.4, foot=8.4)
    pen.path(2.2, 2.9, "c0 -2.6 5.6 -2.6 5.6 0")


def _foot(pen: _Pen) -> None:
    pen.line((5, 1.6), (5, 8.4))
    pen.line((2.6, 8.4), (7.4, 8.4))


def _arrow(pen: _Pen) -> None:
    pen.line((5, 1.6), (5, 8.6))
    pen.line((2.6, 6), (5, 8.6), (7.4, 6))


def _bar(pen: _Pen) -> None:
    pen.line((2, 9), (8, 9))


def _hook(pen: _Pen, way: int) -> None:
    """Where a row turns: out over the line at x = 0 and back."""
    out, back = number(HOOK / 2 * way), number(-HOOK / 2 * way)
    bulge = number(HOOK / 1.5 * way)  # a curve reaches three quarters of the way to its points
    pen.path(0, 2.4, f"h{out}c{bulge} 0 {bulge} 5.2 0 5.2h{back}")


def ring(way: int) -> Stroke:
    """Round a wrapped stitch, whose loop waits; clear of the hook that bends `way` (-1: left)."""
    return (3.6 + way, 5, "c0 -3.6 2.8 -3.6 2.8 0c0 3.6 -2.8 3.6 -2.8 0z")


def _cast_on(pen: _Pen) -> None:
    pen.path(2, 4.2, "c0 4 6 4 6 0")
    pen.line((2, 4.2), (8, 4.2))


def _dot(x: float, y: float, r: float = 1.05) -> Callable[[_Pen], None]:
    return lambda pen: pen.dot(x, y, r)


_DRAWN: dict[str, tuple[Callable[[_Pen], None], ...]] = {
    "k": (),
    "p": (_dot(5, 5, 1.7),),
    "k tbl": (_loop,),
    "p tbl": (_loop, _dot(5, 8.3)),
    "yo": (lambda pen: pen.ring(5, 5, 2.9),),
    "m1": (_letter_m,),
    "m1p": (lambda pen: _letter_m(pen, 6.6), _dot(5, 8.4)),
    "m1l": (lambda pen: _bent(pen, -1, False),),
    "m1r": (lambda pen: _bent(pen, 1, False),),
    "lli": (lambda pen: _bent(pen, -1, True),),
    "rli": (lambda pen: _bent(pen, 1, True),),
    "ssk": (_left,),
    "ssp": (_left, _dot(2.6, 7.4)),
    "skp": (_left, lambda pen: pen.line((3.4, 6.6), (6.6, 3.4))),
    "sssk": (_sssk,),
    "sk2p": (_left, lambda pen: pen.line((5, 5), (2, 8.5))),
    "s2kp": (_caret,),
    "cdd": (_caret,),
    "sl": (_vee,),
    "sl front": (lambda pen: _vee(pen, 1.6, 6.8), _bar),
    "sl kwise": (_knitwise,),
    "sl kwise front": (lambda pen: _knitwise(pen, 6.8), _bar),
    "sl1yo": (_slipped_over,),
    "k1b": (_foot,),
    "brk": (_arch,),
    "brp": (_arch, _dot(5, 6.6)),
    "bo": (lambda pen: pen.path(1.8, 7.2, "c0 -4.2 6.4 -4.2 6.4 0"),),
    "co": (_cast_on,),
    "drop": (_arrow,),
}
_TOGETHER = re.compile(r"([kp])(\d+)tog$")
_CABLE = re.compile(r"([ct])(\d+)([fb])$")


@cache
def symbol(name: str, cells: int, mark: int = 0) -> Symbol:
    """The strokes of a symbol over so many cells.

    `mark` tells groups of one chart apart that make as many stitches: so many short bars.
    """
    pen = _Pen()
    width = CELL * cells
    if name in (NO_STITCH, WAITING):
        return Symbol()
    if name.startswith(OWN):
        return _boxed(name.removeprefix(OWN), cells)
    if name.startswith(INTO):
        _fan(pen, cells, mark)
        return pen.done()
    if name in ("pm", "sm", "rm"):
        return _marker(name)
    word, far = name.removesuffix("~"), name.endswith("~")
    if word in TURNS:
        _hook(pen, 1 if far else -1)
        return pen.done()
    drawn = _DRAWN.get(word)
    together = _TOGETHER.match(word)
    cable = _CABLE.match(word)
    if word in ("kfb", "pfb"):
        _fork(pen, width)
        if word == "pfb":
            pen.dot(width / 2 + 2.6, 7.6, 1.05)
    elif drawn is not None:
        for draw in drawn:
            draw(pen)
    elif together:
        _together(pen, int(together[2]))
        if together[1] == "p":
            pen.dot(8.1, 7.6, 1.05)
    elif cable:
        count = int(cable[2])
        _crossing(pen, count, _held(cable[1], cable[3], count), cable[3] == "f", width)
        if cable[1] == "t":
            pen.dot(width / 2, 8.4, 1.05)
    elif word in ("rt", "lt"):
        _crossing(pen, 2, 1, word == "lt", width)
    else:
        return _boxed(name, cells)
    if far:
        pen.dot(width - 1.7, 8.3, 1.05)
    return pen.done()


def _held(kind: str, where: str, count: int) -> int:
    """How many stitches wait on the cable needle, as `model.stitch` words it."""
    back = count // 2
    if kind == "c":
        return back
    knit = count - 1 if count < 4 else count - back
    return knit if where == "f" else count - knit


def _crossing(pen: _Pen, count: int, held: int, front: bool, width: float) -> None:
    """Two groups that change places; the one in front is drawn through, the other broken.

    The held stitches are those at the right. In front they cross to the left over the others.
    """
    step = width / count
    cut = width - held * step  # where the two groups part at the foot
    # Each group as two lines from its foot to its head: held moves left, the rest moves right.
    held_lines = [((width - 0.9, 8.8), (held * step - 0.9, 1.2)), ((cut + 0.9, 8.8), (0.9, 1.2))]
    rest_lines = [
        ((0.9, 8.8), (held * step + 0.9, 1.2)),
        ((cut - 0.9, 8.8), (width - 0.9, 1.2)),
    ]
    if count == 2:
        held_lines, rest_lines = [((width - 2, 8.8), (2, 1.2))], [((2, 8.8), (width - 2, 1.2))]
    through, broken = (held_lines, rest_lines) if front else (rest_lines, held_lines)
    for a, b in through:
        pen.line(a, b)
    for a, b in broken:
        for start, stop in _outside(a, b, through):
            pen.line(_along(a, b, start), _along(a, b, stop))


def _outside(
    a: tuple[float, float],
    b: tuple[float, float],
    through: list[tuple[tuple[float, float], tuple[float, float]]],
) -> list[tuple[float, float]]:
    """The parts of a line (from 0 to 1) that are not behind the band of the lines in front."""
    meets = sorted(_meeting(a, b, c, d) for c, d in through)
    first, last = max(meets[0] - 0.1, 0.0), min(meets[-1] + 0.1, 1.0)
    return [(s, t) for s, t in ((0.0, first), (last, 1.0)) if t - s > 0.06]


def _meeting(
    a: tuple[float, float], b: tuple[float, float], c: tuple[float, float], d: tuple[float, float]
) -> float:
    """Where the line from a to b meets that from c to d, both between the same heights."""
    apart_foot, apart_head = a[0] - c[0], b[0] - d[0]
    return min(max(apart_foot / (apart_foot - apart_head), 0.0), 1.0)


def _along(a: tuple[float, float], b: tuple[float, float], part: float) -> tuple[float, float]:
    return (a[0] + (b[0] - a[0]) * part, a[1] + (b[1] - a[1]) * part)


def _fan(pen: _Pen, cells: int, mark: int) -> None:
    """Strokes from one foot to a head in each cell: all of it into the same stitches."""
    middle = CELL * cells / 2
    for index in range(cells):
        pen.line((middle, 8.6), (CELL * index + 5, 1.8))
    for index in range(mark):
        pen.line((middle - 1.6, 6.9 - 1.3 * index), (middle + 1.6, 6.9 - 1.3 * index))


def _boxed(text: str, cells: int) -> Symbol:
    """A word in its square, or in a box over its squares."""
    width = CELL * cells
    pen = _Pen()
    if cells > 1:
        inner = number(width - 1.6)
        pen.path(0.8, 1.2, f"h{inner}v7.6h-{inner}z")
    for x, y, commands in letters(text, 1.4, 2.4, width - 2.8, 5.2):
        pen.path(x, y, commands)
    return Symbol(tuple(pen.lines), line=FINE)


def _marker(name: str) -> Symbol:
    pen = _Pen()
    if name == "pm":
        pen.ring(0, 2.2, 1.4)
    elif name == "rm":
        pen.line((-1.3, 0.9), (1.3, 3.5))
        pen.line((1.3, 0.9), (-1.3, 3.5))
    return Symbol(tuple(pen.lines), (), ((0.0, 0.0, "v10"),))
