"""swatch-differs: the swatch that was knit says another gauge than the one stated."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, listed
from loopwright.check.rule import Rule
from loopwright.model.pattern import Gauge, Swatch
from loopwright.problem import WARNING, Label, Problem

TOLERANCE = 0.03
"""The part by which swatch and gauge may differ: a swatch is not measured more exactly."""


def check(context: Context) -> Iterator[Problem]:
    for swatch in context.pattern.swatches:
        fabric = swatch.fabric.text if swatch.fabric is not None else None
        gauge = context.pattern.gauge_for(fabric)
        if gauge is None or gauge.over.unit is None or gauge.stitches <= 0 or gauge.rows <= 0:
            continue
        # A swatch in a fabric that no gauge names has nothing to differ from.
        named = gauge.fabric.key if gauge.fabric is not None else None
        if fabric is not None and named is not None and named != fabric.casefold():
            continue
        texts = [text for text in (_stitches(swatch, gauge), _rows(swatch, gauge)) if text]
        if texts:
            yield Problem(
                "swatch-differs",
                WARNING,
                "the swatch and the gauge do not agree",
                f"By its own measures the swatch has {listed(texts)}. That is more than 3 % apart.",
                swatch.span,
                (Label(gauge.span, "the gauge is here"),),
                "measure the swatch once more after washing, and let the gauge line say what it "
                "says: sizes and yarn hang on it.",
            )


def _stitches(swatch: Swatch, gauge: Gauge) -> str | None:
    if swatch.width is None or swatch.width.unit is None:
        return None
    return _differs(swatch.stitches, swatch.width.mm(), gauge.stitches, gauge, "stitches")


def _rows(swatch: Swatch, gauge: Gauge) -> str | None:
    if swatch.height is None or swatch.height.unit is None:
        return None
    return _differs(swatch.rows, swatch.height.mm(), gauge.rows, gauge, "rows")


def _differs(number: int, over: float, stated: float, gauge: Gauge, noun: str) -> str | None:
    if over <= 0:
        return None
    found = number * gauge.over.mm() / over
    if abs(found - stated) <= stated * TOLERANCE:
        return None
    length = f"{gauge.over.at(0):g} {gauge.over.unit}"
    return f"{found:.1f} {noun} to {length} where {stated:g} are stated"


RULE = Rule(
    name="swatch-differs",
    severity=WARNING,
    title="the swatch and the gauge do not agree",
    what="A swatch line with its own measures gives a gauge too. Where it differs from the stated "
    "gauge of the same fabric by more than 3 % in stitches or in rows, one of them is not what was "
    "knit.",
    wrong="""pattern "Another swatch"
  gauge 20 stitches 28 rows = 10 cm
  swatch 44 stitches 60 rows measures 24 x 21.5 cm
piece cloth flat
  cast on 50
  rows 40: knit
  bind off
""",
    right="""pattern "This swatch"
  gauge 20 stitches 28 rows = 10 cm
  swatch 44 stitches 60 rows measures 22 x 21.5 cm
piece cloth flat
  cast on 50
  rows 40: knit
  bind off
""",
    check=check,
)
