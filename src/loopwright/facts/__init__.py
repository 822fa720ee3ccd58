"""Facts of the trade: tables with a source in every row, and the functions that read them."""

from __future__ import annotations

from loopwright.facts.loops import LoopConstants, Rule, loop_constants, rule_of_thumb
from loopwright.facts.needles import Needle, nearest_needle, needle_label, needles
from loopwright.facts.sizes import BlanketSize, blanket_sizes
from loopwright.facts.tables import table
from loopwright.facts.words import safety_caution, terms, uk_terms
from loopwright.facts.yarns import YarnWeight, yarn_weight, yarn_weights

__all__ = [
    "BlanketSize",
    "LoopConstants",
    "Needle",
    "Rule",
    "YarnWeight",
    "blanket_sizes",
    "loop_constants",
    "needle_label",
    "nearest_needle",
    "needles",
    "rule_of_thumb",
    "safety_caution",
    "table",
    "terms",
    "uk_terms",
    "yarn_weight",
    "yarn_weights",
]
