"""The standard yarn weights, categories 0 (lace) to 7 (jumbo).

They say what is usual. Categories 2 and 3 overlap at 23 and 24 stitches, and a gauge is always
an input: it is never inferred from a category.
"""

from __future__ import annotations

from functools import cache

from loopwright.facts.tables import table
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class YarnWeight:
    """A category: stitches to 4 inches of stockinette, needles in mm, metres to 100 g.

    A bound is None where the standard leaves that side open.
    """

    category: int
    name: str
    yarns: tuple[str, ...]
    stitches_min: int | None
    stitches_max: int | None
    needle_min_mm: float | None
    needle_max_mm: float | None
    metres_min: float | None
    metres_max: float | None
    source: str
    note: str

    def usual_stitches(self, stitches: float) -> bool:
        """Whether so many stitches to 4 inches are within the category."""
        return _within(stitches, self.stitches_min, self.stitches_max)

    def usual_needle(self, mm: float) -> bool:
        """Whether the needle is within the category."""
        return _within(mm, self.needle_min_mm, self.needle_max_mm)

    def usual_metres(self, metres: float) -> bool:
        """Whether so many metres to 100 g are within what is sold as this category."""
        return _within(metres, self.metres_min, self.metres_max)


@cache
def yarn_weights() -> tuple[YarnWeight, ...]:
    """Every category, thinnest first."""
    return tuple(
        YarnWeight(
            category=int(row["category"]),
            name=row["name"],
            yarns=tuple(row["yarns"].split(", ")),
            stitches_min=_whole(row["stitches_min"]),
            stitches_max=_whole(row["stitches_max"]),
            needle_min_mm=_number(row["needle_min_mm"]),
            needle_max_mm=_number(row["needle_max_mm"]),
            metres_min=_number(row["metres_min"]),
            metres_max=_number(row["metres_max"]),
            source=row["source"],
            note=row["note"],
        )
        for row in table("yarn_weights")
    )


def yarn_weight(category: int) -> YarnWeight:
    """The category of that number. Raises KeyError unless it is 0 to 7."""
    for weight in yarn_weights():
        if weight.category == category:
            return weight
    raise KeyError(category)


def _within(value: float, low: float | None, high: float | None) -> bool:
    return (low is None or value >= low) and (high is None or value <= high)


def _number(text: str) -> float | None:
    return float(text) if text else None


def _whole(text: str) -> int | None:
    return int(text) if text else None
