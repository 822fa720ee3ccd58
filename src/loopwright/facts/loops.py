"""Loop geometry and the rules of thumb for yarn, floats and needles."""

from __future__ import annotations

from functools import cache

from loopwright.facts.tables import table
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class LoopConstants:
    """Munden's constants of a relaxed fabric whose stitch holds a loop of length l.

    Stitches per length = kw / l, rows per length = kc / l, stitches per area = ks / l²: all without
    unit.
    """

    structure: str
    state: str
    kc: float
    kw: float
    ks: float
    source: str


@dataclass(frozen=True, slots=True)
class Rule:
    """A rule of thumb: from `low` to `high` times, or of, `unit` (lengths in mm)."""

    name: str
    low: float
    high: float
    unit: str
    source: str
    note: str


@cache
def loop_constants(structure: str = "plain knit", state: str = "wet relaxed") -> LoopConstants:
    """The constants of a structure in a state. Raises KeyError where the table has none."""
    for row in table("loop_constants"):
        if (row["structure"], row["state"]) == (structure, state):
            return LoopConstants(
                structure,
                state,
                float(row["kc"]),
                float(row["kw"]),
                float(row["ks"]),
                row["source"],
            )
    raise KeyError((structure, state))


@cache
def rule_of_thumb(name: str) -> Rule:
    """The rule of that name. Raises KeyError where the table has none."""
    for row in table("rules_of_thumb"):
        if row["name"] == name:
            low, high = float(row["low"]), float(row["high"])
            return Rule(name, low, high, row["unit"], row["source"], row["note"])
    raise KeyError(name)
