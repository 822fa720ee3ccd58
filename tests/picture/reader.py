"""Reads a chart's SVG back as a knitter reads it, sharing nothing with the room that drew it.

From the lines of the grid it takes the squares of each row, from the strokes what stands in them,
from the labels the numbers and on which side they stand.
"""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET
from dataclasses import dataclass
from itertools import pairwise

SVG = "{http://www.w3.org/2000/svg}"
_NUMBER = re.compile(r"-?(?:\d+\.?\d*|\.\d+)")
_COMMAND = re.compile(r"([MmLlHhVvCcAaZz])([^MmLlHhVvCcAaZz]*)")


@dataclass(frozen=True)
class Square:
    """What stands in one square, or over several: the symbol's name (``k`` for an empty one)."""

    symbol: str
    right: int
    cells: int


@dataclass(frozen=True)
class Hook:
    """Where a row turns: the line it stands on, on which side it bends, and the wrapped square.

    `way` is 1 to the left; `wrapped` is -1 where no stitch has a ring.
    """

    symbol: str
    line: int
    way: int
    wrapped: int


@dataclass(frozen=True)
class ReadRow:
    """A row as read: from right to left, with the lines on which markers stand.

    A square of the symbol ``waiting`` is a run of stitches without a grid, on a thin line.
    """

    number: int
    rs: bool
    strand: str
    squares: tuple[Square, ...]
    marks: tuple[tuple[str, int], ...]
    hook: Hook | None = None

    @property
    def waiting(self) -> tuple[int, ...]:
        """The columns of stitches that wait."""
        return tuple(
            column
            for square in self.squares
            if square.symbol == "waiting"
            for column in range(square.right, square.right + square.cells)
        )


def points(d: str) -> list[list[tuple[float, float]]]:
    """The points of each subpath; of curves their ends and the middle of an arc's chord."""
    paths: list[list[tuple[float, float]]] = []
    x = y = 0.0
    for letter, text in _COMMAND.findall(d):
        numbers = [float(n) for n in _NUMBER.findall(text)]
        if letter == "M":
            x, y = numbers
            paths.append([(x, y)])
        elif letter in "lh" or letter in "vac":
            steps = {"l": 2, "h": 1, "v": 1, "a": 7, "c": 6}[letter]
            for at in range(0, len(numbers), steps):
                part = numbers[at : at + steps]
                dx, dy = {
                    "l": lambda p: (p[0], p[1]),
                    "h": lambda p: (p[0], 0.0),
                    "v": lambda p: (0.0, p[0]),
                    "a": lambda p: (p[5], p[6]),
                    "c": lambda p: (p[4], p[5]),
                }[letter](part)
                paths[-1].append((x + dx / 2, y + dy / 2))
                x, y = x + dx, y + dy
                paths[-1].append((x, y))
        else:
            assert letter in "z", letter
    return paths


def read_chart(svg: str) -> list[ReadRow]:
    """The rows of a chart, the first one first."""
    root = ET.fromstring(svg)
    bands = {
        int(rect.attrib["data-row"]): float(rect.attrib["y"])
        for rect in root.iter(f"{SVG}rect")
        if rect.attrib.get("class") == "row"
    }
    (grid,) = [p for p in root.iter(f"{SVG}path") if p.attrib["class"] == "grid"]
    lines = points(grid.attrib["d"])
    across = [line for line in lines if line[0][1] == line[-1][1]]
    upright = [line for line in lines if line[0][0] == line[-1][0]]
    threads = [
        line
        for path in root.iter(f"{SVG}path")
        if path.attrib.get("data-symbol") == "waiting"
        for line in points(path.attrib["d"])
    ]
    left = min(p[0] for line in across + threads for p in line)
    right = max(p[0] for line in across + threads for p in line)
    rows = []
    for number in sorted(bands):
        top = bands[number]
        middle = top + 5
        stops = sorted(
            {line[0][0] for line in upright if line[0][1] - 0.1 < middle < line[-1][1] + 0.1}
        )
        # Where stitches wait there is no grid: the field goes on to the end of the chart.
        stops = sorted({left, *stops, right})
        squares = [
            Square(
                _what(root, a, b, top),
                round((right - b) / 10),
                round((b - a) / 10),
            )
            for a, b in pairwise(stops)
        ]
        for (a, b), square in zip(pairwise(stops), squares, strict=True):
            assert square.symbol == "waiting" or _framed(across, a, b, top), (number, square)
        rs, strand = _label(root, number, middle, left, right)
        marks = tuple(sorted(_marks(root, top, right), key=lambda m: m[1]))
        hook = _hook(root, top, right)
        rows.append(ReadRow(number, rs, strand, tuple(squares[::-1]), marks, hook))
    return rows


def _framed(across: list[list[tuple[float, float]]], a: float, b: float, top: float) -> bool:
    """Whether a square has a line above and one below it."""
    for y in (top, top + 10):
        ends = [(line[0][0], line[-1][0]) for line in across if abs(line[0][1] - y) < 0.1]
        if not any(min(end) <= a and b <= max(end) for end in ends):
            return False
    return True


def _hook(root: ET.Element, top: float, right: float) -> Hook | None:
    """The hook in a row, and the square that has the ring which goes with it."""
    found: list[tuple[str, int, int]] = []
    wrapped = -1
    for path in root.iter(f"{SVG}path"):
        name = path.attrib.get("data-symbol", "")
        if name.removesuffix("~") not in ("turn", "w&t"):
            continue
        for start, line in zip(path.attrib["d"].split("M")[1:], points(path.attrib["d"])):  # noqa: B905
            if not top < line[0][1] < top + 10:
                continue
            if start.endswith("z"):
                middle = (line[0][0] + line[len(line) // 2][0]) / 2
                assert wrapped == -1
                wrapped = int((right - middle) // 10)
            else:
                out = max(line, key=lambda p: abs(p[0] - line[0][0]))[0] - line[0][0]
                found.append((name, round((right - line[0][0]) / 10), 1 if out < 0 else -1))
    if not found:
        assert wrapped == -1
        return None
    ((name, at, way),) = found
    return Hook(name.removesuffix("~"), at, way, wrapped)


def _what(root: ET.Element, a: float, b: float, top: float) -> str:
    """The one symbol whose strokes lie in a field; an empty field is a knit stitch."""
    found = set()
    for path in root.iter(f"{SVG}path"):
        name = path.attrib.get("data-symbol")
        if name is None or name.removesuffix("~") in ("pm", "sm", "rm", "turn", "w&t"):
            continue
        for line in points(path.attrib["d"]):
            x = (min(p[0] for p in line) + max(p[0] for p in line)) / 2
            y = (min(p[1] for p in line) + max(p[1] for p in line)) / 2
            if a < x < b and top < y < top + 10:
                found.add(name)
            elif name == "no stitch" and min(p[0] for p in line) <= a < b <= max(
                p[0] for p in line
            ):
                if top < y < top + 10:
                    found.add(name)
    assert len(found) <= 1, found
    return found.pop() if found else "k"


def _marks(root: ET.Element, top: float, right: float) -> list[tuple[str, int]]:
    marks = []
    for path in root.iter(f"{SVG}path"):
        name = path.attrib.get("data-symbol")
        if name in ("pm", "sm", "rm"):
            for line in points(path.attrib["d"]):
                tall = max(p[1] for p in line) - min(p[1] for p in line)
                if tall > 9 and abs(min(p[1] for p in line) - top) < 0.1:
                    marks.append((str(name), round((right - line[0][0]) / 10)))
    return marks


def _label(
    root: ET.Element, number: int, middle: float, left: float, right: float
) -> tuple[bool, str]:
    """On which side the row's number stands, and the letter of the strand beside it."""
    sides, strand = [], ""
    for text in root.iter(f"{SVG}text"):
        if abs(float(text.attrib["y"]) - 2.1 - middle) > 1:
            continue
        x = float(text.attrib["x"])
        if text.text == str(number) and text.attrib.get("font-weight") is None:
            sides.append(x > right)
        else:
            strand = text.text or ""
            assert x < left or x > right
    (side,) = sides
    return side, strand
