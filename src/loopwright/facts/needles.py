"""Needle sizes: millimetres are the size, US and UK numbers are labels of it.

US 10 is 6 mm and UK 10 is 3.25 mm, so a number without its country says nothing.
"""

from __future__ import annotations

from functools import cache

from loopwright.facts.tables import table
from loopwright.record import dataclass

# Sizes lie at least 0.25 mm apart; this only forgives a conversion from inches.
_SAME_MM = 0.005


@dataclass(frozen=True, slots=True)
class Needle:
    """A size as sold: diameter in mm, its US and (older) UK numbers, or "" where it has none."""

    mm: float
    us: str
    uk: str
    source: str
    note: str

    @property
    def label(self) -> str:
        """``4.5 mm (US 7, UK 7)``, or the millimetres alone."""
        numbers = [f"US {self.us}"] * bool(self.us) + [f"UK {self.uk}"] * bool(self.uk)
        return _mm(self.mm) + (f" ({', '.join(numbers)})" if numbers else "")


@cache
def needles() -> tuple[Needle, ...]:
    """Every size of the table, thinnest first."""
    return tuple(
        Needle(float(row["mm"]), row["us"], row["uk"], row["source"], row["note"])
        for row in table("needle_sizes")
    )


def nearest_needle(mm: float) -> Needle:
    """The size sold that is nearest to `mm`; halfway, the thinner. Raises ValueError unless > 0."""
    if not mm > 0:
        raise ValueError(f"a needle of {mm:g} mm is none")
    return min(needles(), key=lambda needle: (abs(needle.mm - mm), needle.mm))


def needle_label(mm: float) -> str:
    """How a needle is printed: ``3.5 mm (US 4)``; a size not in the table has no numbers."""
    needle = nearest_needle(mm)
    return needle.label if abs(needle.mm - mm) < _SAME_MM else _mm(mm)


def _mm(mm: float) -> str:
    return f"{round(mm, 2):g} mm"
