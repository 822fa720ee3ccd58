"""How well two shades are told apart, by normal eyes and with the three common deficiencies.

Contrast is the ratio of WCAG 2.2: (L1 + 0.05) / (L2 + 0.05) with relative luminance L of sRGB.
The difference is Delta E*ab of CIE 1976 under D65. Deficiencies are simulated with the matrices
of the table ``vision`` on linear sRGB.
"""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from math import sqrt

from loopwright.facts.amounts import estimate
from loopwright.facts.tables import table
from loopwright.record import dataclass

RGB = tuple[float, float, float]
NORMAL = "normal vision"

# IEC 61966-2-1: linear sRGB to XYZ under D65, and its white.
_XYZ = (
    (0.4124, 0.3576, 0.1805),
    (0.2126, 0.7152, 0.0722),
    (0.0193, 0.1192, 0.9505),
)
_WHITE = (0.9505, 1.0, 1.089)


@dataclass(frozen=True, slots=True)
class Sight:
    """Two shades in one kind of vision: contrast ratio (1 to 21) and Delta E*ab."""

    vision: str
    ratio: float
    difference: float

    @property
    def close(self) -> bool:
        """Neither lightness nor hue tells them apart."""
        return self.ratio < estimate("close contrast") and self.difference < estimate(
            "close difference"
        )


def sights(one: str, other: str) -> tuple[Sight, ...]:
    """Two #rrggbb colours in normal vision and in each deficiency. Raises ValueError."""
    a, b = _linear(one), _linear(other)
    found = [Sight(NORMAL, contrast(a, b), difference(a, b))]
    for vision, matrix in _visions().items():
        seen = _through(matrix, a), _through(matrix, b)
        found.append(Sight(vision, contrast(*seen), difference(*seen)))
    return tuple(found)


def contrast(one: RGB, other: RGB) -> float:
    """The contrast ratio of two linear colours."""
    light, dark = sorted((luminance(one), luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def luminance(colour: RGB) -> float:
    """The relative luminance of a linear sRGB colour."""
    return sum(part * value for part, value in zip(_XYZ[1], colour, strict=True))


def difference(one: RGB, other: RGB) -> float:
    """Delta E*ab (CIE 1976) of two linear sRGB colours."""
    return sqrt(sum((a - b) ** 2 for a, b in zip(_lab(one), _lab(other), strict=True)))


def simulated(colour: str, vision: str) -> str:
    """A #rrggbb colour as a deficiency sees it. Raises KeyError for another name."""
    seen = _through(_visions()[vision], _linear(colour))
    return "#" + "".join(f"{round(_encoded(value) * 255):02x}" for value in seen)


@cache
def _visions() -> Mapping[str, tuple[RGB, RGB, RGB]]:
    def row(cells: Mapping[str, str], letter: str) -> RGB:
        return float(cells[letter + "r"]), float(cells[letter + "g"]), float(cells[letter + "b"])

    return {
        cells["vision"]: (row(cells, "r"), row(cells, "g"), row(cells, "b"))
        for cells in table("vision")
    }


def _through(matrix: tuple[RGB, RGB, RGB], colour: RGB) -> RGB:
    red, green, blue = (
        min(max(sum(m * c for m, c in zip(row, colour, strict=True)), 0.0), 1.0) for row in matrix
    )
    return red, green, blue


def _linear(code: str) -> RGB:
    if len(code) != 7 or code[0] != "#":
        raise ValueError(f"{code} is no #rrggbb")
    red, green, blue = (_decoded(int(code[i : i + 2], 16) / 255) for i in (1, 3, 5))
    return red, green, blue


def _decoded(value: float) -> float:
    return value / 12.92 if value <= 0.04045 else ((value + 0.055) / 1.055) ** 2.4


def _encoded(value: float) -> float:
    return float(12.92 * value if value <= 0.0031308 else 1.055 * value ** (1 / 2.4) - 0.055)


def _lab(colour: RGB) -> RGB:
    def curve(value: float) -> float:
        low = value <= (6 / 29) ** 3
        return value / (3 * (6 / 29) ** 2) + 4 / 29 if low else float(value ** (1 / 3))

    x, y, z = (
        curve(sum(m * c for m, c in zip(row, colour, strict=True)) / white)
        for row, white in zip(_XYZ, _WHITE, strict=True)
    )
    return 116 * y - 16, 500 * (x - y), 200 * (y - z)
