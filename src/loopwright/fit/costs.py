"""What a size costs in yarn, for the table of a resize: the one place that asks the yarn room."""

from __future__ import annotations

from loopwright.check.checked import Checked
from loopwright.count.walk import Walk
from loopwright.facts.loops import rule_of_thumb
from loopwright.model.pattern import Pattern
from loopwright.record import dataclass
from loopwright.yarn.report import YarnReport, yarn_report


@dataclass(frozen=True, slots=True)
class ShadeCost:
    """The yarn of one shade in one size: metres without a margin, balls to buy with it."""

    shade: str
    metres: float
    balls: int | None


def yarn_of(checked: Checked) -> YarnReport:
    """The yarn of every size, which `shade_costs` reads off."""
    return yarn_report(checked.pattern, checked.walks)


def shade_costs(checked: Checked, report: YarnReport, size: int) -> tuple[ShadeCost, ...]:
    """The yarn of every shade, in the order of the file; empty where it cannot be reckoned."""
    found = next((one for one in report.sizes if one.size == size), None)
    if found is None:
        return ()
    costs = {one.key: one for one in found.shades}
    return tuple(
        ShadeCost(
            shade.text.text if shade.text else shade.name.text,
            costs[shade.name.key].metres,
            costs[shade.name.key].balls,
        )
        for shade in checked.pattern.shades
        if shade.name.key in costs
    )


def tail_mm(checked: Checked, walk: Walk) -> float | None:
    """The long-tail tail of a cast-on in mm: once round the needle a stitch, and the margin.

    None without a needle size. Source: `facts/rules_of_thumb.csv`, common practice.
    """
    mm = needle_mm(checked.pattern)
    if mm is None or walk.cast_on is None:
        return None
    rule = rule_of_thumb("long-tail tail by needle")
    return walk.cast_on * mm * rule.high * rule_of_thumb("safety margin").high


def needle_mm(pattern: Pattern) -> float | None:
    """The needle of the pattern: that of its first gauge, else its first needle line."""
    gauge = pattern.gauge_for(None)
    if gauge is not None and gauge.needle is not None and gauge.needle.unit is not None:
        return gauge.needle.mm()
    for needle in pattern.needles:
        if needle.size.unit is not None:
            return needle.size.mm()
    return None


_SOLD = (400, 600, 800, 1000, 1200, 1500)
_CABLE_LESS = 228.6  # 8 to 10 inches


def needle_length_mm(walk: Walk, width: float) -> float:
    """The circular needle for a width in mm: the longest that goes round, or the first that holds
    the fabric on its cable; lengths as sold.

    Source: `facts/rules_of_thumb.csv` (a flat fabric up to three times the cable; in the round no
    longer than the way round), common practice.
    """
    if walk.piece.in_round:
        fit = [length for length in _SOLD if length <= width]
        return float(max(fit, default=_SOLD[0]))
    most = rule_of_thumb("flat on circular needle")
    fit = [length for length in _SOLD if width <= (length - _CABLE_LESS) * most.low]
    return float(min(fit, default=_SOLD[-1]))
