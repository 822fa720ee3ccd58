"""How much yarn one plain loop takes."""

from __future__ import annotations

from dataclasses import dataclass
from math import sqrt

from loopwright.facts.loops import loop_constants
from loopwright.model.pattern import Gauge, Pattern, Yarn


@dataclass(frozen=True, slots=True)
class Loop:
    """The length of a plain loop in metres, and what it was found from: swatch or geometry."""

    metres: float
    ground: str


def munden_loop(gauge: Gauge, ks: float) -> float:
    """The loop length in metres by the plain-knit geometry of Munden: l = sqrt(ks / S).

    S is the stitch density at the gauge in loops per square metre; `ks` is dimensionless.
    Source: D. L. Munden, J. Text. Inst. 50 (1959), T448–T471.
    """
    side = gauge.over.metres()
    density = (gauge.stitches / side) * (gauge.rows / side)
    return sqrt(ks / density)


def washed_ks() -> float:
    """The stitch-density constant of plain wool knit in the washed (wet-relaxed) state."""
    return loop_constants("plain knit", "wet relaxed").ks


def loop_length(pattern: Pattern, yarn: Yarn | None) -> Loop | None:
    """The loop of a pattern: from a weighed swatch and the ball, else from its gauge."""
    for swatch in pattern.swatches:
        if swatch.weight is None or swatch.weight.unit is None or yarn is None:
            continue
        if yarn.grams and yarn.metres:
            loops = swatch.stitches * swatch.rows
            return Loop(swatch.weight.grams() * yarn.metres / yarn.grams / loops, "swatch")
    gauge = pattern.gauge_for(None)
    if gauge is None or gauge.over.unit is None or gauge.stitches <= 0 or gauge.rows <= 0:
        return None
    return Loop(munden_loop(gauge, washed_ks()), "geometry")
