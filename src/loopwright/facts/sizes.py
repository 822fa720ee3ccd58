"""Usual sizes of blankets and scarves. No standard stands behind them; size charts differ."""

from __future__ import annotations

from functools import cache

from loopwright.facts.tables import table
from loopwright.record import dataclass

_MM_IN_INCH = 25.4


@dataclass(frozen=True, slots=True)
class BlanketSize:
    """A usual size by name: width and length from and to, in mm."""

    name: str
    width_min: float
    width_max: float
    length_min: float
    length_max: float
    source: str


@cache
def blanket_sizes() -> tuple[BlanketSize, ...]:
    """Every size of the table; the charts are in whole inches."""
    return tuple(
        BlanketSize(
            row["name"],
            float(row["width_min_in"]) * _MM_IN_INCH,
            float(row["width_max_in"]) * _MM_IN_INCH,
            float(row["length_min_in"]) * _MM_IN_INCH,
            float(row["length_max_in"]) * _MM_IN_INCH,
            row["source"],
        )
        for row in table("blanket_sizes")
    )
