"""Quantities as written, and their fixed unit words.

The notation knows ten unit words with exact factors, so that reading a source needs no unit
library; `fit.units` reads anything else a command line may hold. Inside, lengths are
millimetres, yarn lengths metres and weights grams.
"""

from __future__ import annotations

from loopwright.notation.source import Span
from loopwright.record import dataclass

UNIT_WORDS: dict[str, str] = {
    "mm": "mm",
    "cm": "cm",
    "in": "in",
    "inch": "in",
    "inches": "in",
    "m": "m",
    "metre": "m",
    "metres": "m",
    "meter": "m",
    "meters": "m",
    "yd": "yd",
    "yard": "yd",
    "yards": "yd",
    "g": "g",
    "gram": "g",
    "grams": "g",
    "oz": "oz",
    "ounce": "oz",
    "ounces": "oz",
}

# International yard and pound agreement of 1959: 1 in = 25.4 mm, 1 oz = 28.349523125 g, exactly.
LENGTH_MM: dict[str, float] = {"mm": 1.0, "cm": 10.0, "in": 25.4, "m": 1000.0, "yd": 914.4}
WEIGHT_G: dict[str, float] = {"g": 1.0, "oz": 28.349523125}

FRACTIONS: dict[str, float] = {
    "¼": 1 / 4,
    "½": 1 / 2,
    "¾": 3 / 4,
    "⅓": 1 / 3,
    "⅔": 2 / 3,
    "⅛": 1 / 8,
    "⅜": 3 / 8,
    "⅝": 5 / 8,
    "⅞": 7 / 8,
}


def read_number(text: str) -> float:
    """Read ``7``, ``7.5``, ``7½`` or ``½``. Raises ValueError for anything else."""
    part = FRACTIONS.get(text[-1:])
    if part is None:
        return float(text)
    return (float(text[:-1]) if len(text) > 1 else 0.0) + part


@dataclass(frozen=True, slots=True)
class Quantity:
    """Numbers (one, or one a size) with the unit word they were written with, or none."""

    values: tuple[float, ...]
    unit: str | None
    span: Span

    @property
    def is_length(self) -> bool:
        return self.unit in LENGTH_MM

    @property
    def is_weight(self) -> bool:
        return self.unit in WEIGHT_G

    def at(self, size: int) -> float:
        """The number as written for a size (by its place in `sizes`)."""
        values = self.values
        return values[size] if size < len(values) else values[-1]

    def mm(self, size: int = 0) -> float:
        """The length for a size in millimetres. Raises KeyError where it is no length."""
        return self.at(size) * LENGTH_MM[self.unit or ""]

    def metres(self, size: int = 0) -> float:
        """The length for a size in metres. Raises KeyError where it is no length."""
        return self.mm(size) / 1000.0

    def grams(self, size: int = 0) -> float:
        """The weight for a size in grams. Raises KeyError where it is no weight."""
        return self.at(size) * WEIGHT_G[self.unit or ""]
