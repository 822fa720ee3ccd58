"""How much the fabric bears: the file's own bounds, else the trade's rules of thumb.

The defaults and where they come from stand in ``facts/rules_of_thumb.csv``.
"""

from __future__ import annotations

from loopwright.facts.loops import rule_of_thumb
from loopwright.model.pattern import Motif, Pattern, Yarn


def carry_limit(pattern: Pattern) -> int:
    """The rows over which a resting strand may be carried up the edge."""
    own = pattern.bound("carry")
    return int(rule_of_thumb("carried strand").high) if own is None else own


def slip_limit(pattern: Pattern, strand: str | None) -> int:
    """The rows on end in which a stitch of this strand (None: not known) may be slipped."""
    own = pattern.bound("slip")
    if own is not None:
        return own
    thick = is_thick(pattern, strand)
    return int(rule_of_thumb("slipped rows of thick yarn" if thick else "slipped rows").high)


def is_thick(pattern: Pattern, strand: str | None) -> bool:
    """Whether every yarn the strand feeds on (or, not known, that the file has) is bulky or up."""
    yarns = strand_yarns(pattern, strand) if strand is not None else list(pattern.yarns)
    thick = rule_of_thumb("thick yarn").low
    return bool(yarns) and all(y.weight is not None and y.weight >= thick for y in yarns)


def strand_yarns(pattern: Pattern, strand: str) -> list[Yarn]:
    """The yarns a strand feeds on, each once."""
    found = pattern.strand(strand)
    yarns: list[Yarn] = []
    for feed in found.feeds if found is not None else ():
        shade = pattern.shade(feed.shade.key)
        yarn = pattern.yarn(shade.yarn.key) if shade is not None else None
        if yarn is not None and yarn not in yarns:
            yarns.append(yarn)
    return yarns


def float_limit(pattern: Pattern, motif: Motif | None) -> tuple[int, float | None]:
    """The stitches a yarn may pass, and the width of one in mm where a gauge gave the bound."""
    own = pattern.bound("float")
    if own is not None:
        return own, None
    gauge = pattern.gauge_for(motif.name.text if motif is not None else None)
    if gauge is None or gauge.over.unit is None or gauge.stitches <= 0:
        return int(rule_of_thumb("uncaught float in stitches").high), None
    stitch = gauge.over.mm() / gauge.stitches
    # An inch is 25.4 mm and the trade says 2.5 cm of it: a tenth of a stitch decides nothing.
    return max(int(rule_of_thumb("uncaught float").high / stitch + 0.1), 1), stitch
