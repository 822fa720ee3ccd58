"""A chart cut into strips that fit a page, and how large its squares are there."""

from __future__ import annotations

from itertools import pairwise
from math import ceil

from loopwright.picture.chart import Chart
from loopwright.picture.ground import MOST_COLUMNS, MOST_ROWS
from loopwright.record import dataclass

_LEAST_MM, _MOST_MM = 3.6, 4.8
_PAGE_MM = 168.0
_PAGE_HIGH_MM = 209.0


@dataclass(frozen=True, slots=True)
class Strip:
    """A part of a chart that is drawn in one piece: columns and rows from (and up to, excluded)."""

    right: int
    left: int
    bottom: int
    top: int


def strips_of(chart: Chart) -> tuple[Strip, ...]:
    """The chart cut so that each part fits a page; from the right, and from the bottom.

    No symbol is cut where another line can be found for the cut.
    """
    edges = _cuts(chart)
    heights = _even(len(chart.rows), MOST_ROWS)
    return tuple(
        Strip(right, left, bottom, top)
        for bottom, top in heights
        for right, left in pairwise(edges)
    )


def _even(total: int, most: int) -> list[tuple[int, int]]:
    parts = max(ceil(total / most), 1)
    size = ceil(total / parts)
    return [(at, min(at + size, total)) for at in range(0, max(total, 1), max(size, 1))]


def _cuts(chart: Chart) -> list[int]:
    through: set[int] = set()
    for row in chart.rows:
        for placed in row.placed:
            through.update(range(placed.right + 1, placed.left + 1))
    parts = max(ceil(chart.columns / MOST_COLUMNS), 1)
    cuts = [0]
    for part in range(1, parts):
        wanted = round(chart.columns * part / parts)
        near = sorted(range(max(cuts[-1] + 1, wanted - 12), wanted + 1), key=lambda n: wanted - n)
        cuts.append(next((n for n in near if n not in through), wanted))
    return [*cuts, chart.columns]


def extent(chart: Chart, strip: Strip) -> tuple[tuple[int, int] | None, tuple[int, int] | None]:
    """The first and the last row of a strip, and its squares from the right; None for all."""
    rows = squares = None
    if strip.top - strip.bottom < len(chart.rows):
        rows = (strip.bottom + 1, strip.top)
    if strip.left - strip.right < chart.columns:
        squares = (strip.right + 1, strip.left)
    return rows, squares


def cell_mm(chart: Chart) -> float:
    """The side of a square in millimetres, the same in all strips of a chart."""
    strips = strips_of(chart)
    widest = max(strip.left - strip.right for strip in strips)
    highest = max(strip.top - strip.bottom for strip in strips)
    fits = min(_PAGE_MM / (widest + 5), _PAGE_HIGH_MM / highest)
    return min(max(fits, _LEAST_MM), _MOST_MM)
