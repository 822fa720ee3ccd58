"""Gauge, needle and yarn weight against the published yarn weights.

The table speaks of stockinette. Its ranges overlap and leave gaps, so a gauge or a needle belongs
to a set of weights, never to one.
"""

from __future__ import annotations

from math import ceil, floor

from loopwright.facts.yarns import YarnWeight, yarn_weights
from loopwright.model.pattern import Gauge

_STOCKINETTE = ("stockinette", "stocking", "stocking-stitch", "stockinet", "plain")
_LACE = 0


def stitches_to_four_inches(gauge: Gauge) -> float:
    """The gauge as the table counts it. 10 cm stand for 4 inches, as the trade has it."""
    inches = gauge.over.unit in ("in", "yd")
    return gauge.stitches * (101.6 if inches else 100.0) / gauge.over.mm()


def is_stockinette(gauge: Gauge) -> bool:
    """Whether the gauge names stockinette, or no fabric at all (which is read as stockinette)."""
    return gauge.fabric is None or gauge.fabric.key in _STOCKINETTE


def weights_for_gauge(stitches: float) -> tuple[YarnWeight, ...]:
    """The weights for which so many stitches to 4 inches are usual.

    The table counts whole stitches, so half a one belongs to both its neighbours.
    """
    return tuple(
        w
        for w in yarn_weights()
        if w.usual_stitches(floor(stitches)) or w.usual_stitches(ceil(stitches))
    )


def weights_for_needle(mm: float) -> tuple[YarnWeight, ...]:
    """The weights for which a needle is usual; lace, which is worked on any, is left out."""
    return tuple(w for w in yarn_weights() if w.category != _LACE and w.usual_needle(mm))


def is_far(mm: float, weight: YarnWeight) -> bool:
    """Whether a needle is outside the ranges of a weight and of both its neighbours."""
    near = [w for w in yarn_weights() if abs(w.category - weight.category) <= 1]
    lows = [w.needle_min_mm for w in near]
    highs = [w.needle_max_mm for w in near]
    low = min((x for x in lows if x is not None), default=0.0)
    if mm < low:
        return True
    return None not in highs and mm > max(x for x in highs if x is not None)


def weight_text(weight: YarnWeight) -> str:
    """``weight 4 (medium)``."""
    return f"weight {weight.category} ({weight.name.lower()})"


def range_text(low: float | None, high: float | None, unit: str) -> str:
    """``4.5 to 5.5 mm``, ``12.75 mm and more``, ``6 and fewer``."""
    if low is None:
        return f"up to {high:g}{unit}"
    if high is None:
        return f"{low:g}{unit} and more"
    return f"{low:g} to {high:g}{unit}"
