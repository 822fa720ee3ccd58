"""Facts of the trade: tables with a source in every row, and the functions that read them.

The names below are looked up when first used, so that a check loads only the stitch table.
"""

from __future__ import annotations

from importlib import import_module
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from loopwright.facts.loops import LoopConstants, Rule, loop_constants, rule_of_thumb
    from loopwright.facts.needles import Needle, nearest_needle, needle_label, needles
    from loopwright.facts.sizes import BlanketSize, blanket_sizes
    from loopwright.facts.tables import table
    from loopwright.facts.words import safety_caution, terms, uk_terms
    from loopwright.facts.yarns import YarnWeight, yarn_weight, yarn_weights

_HOMES = {
    "loops": ("LoopConstants", "Rule", "loop_constants", "rule_of_thumb"),
    "needles": ("Needle", "nearest_needle", "needle_label", "needles"),
    "sizes": ("BlanketSize", "blanket_sizes"),
    "tables": ("table",),
    "words": ("safety_caution", "terms", "uk_terms"),
    "yarns": ("YarnWeight", "yarn_weight", "yarn_weights"),
}

__all__ = [
    "BlanketSize",
    "LoopConstants",
    "Needle",
    "Rule",
    "YarnWeight",
    "blanket_sizes",
    "loop_constants",
    "nearest_needle",
    "needle_label",
    "needles",
    "rule_of_thumb",
    "safety_caution",
    "table",
    "terms",
    "uk_terms",
    "yarn_weight",
    "yarn_weights",
]


def __getattr__(name: str) -> Any:
    for home, names in _HOMES.items():
        if name in names:
            return getattr(import_module(f"{__name__}.{home}"), name)
    raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
