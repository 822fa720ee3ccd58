"""one-pattern: not exactly one pattern."""

from __future__ import annotations

from loopwright.check.rule import Rule, found_while_reading
from loopwright.problem import ERROR

RULE = Rule(
    name="one-pattern",
    severity=ERROR,
    title="not exactly one pattern",
    what="A source holds one pattern: one line “pattern” with its title in double quotes.",
    wrong="""piece swatch flat
  cast on 20
  rows 8: knit
  bind off
""",
    right="""pattern "Titled"
piece swatch flat
  cast on 20
  rows 8: knit
  bind off
""",
    check=found_while_reading,
)
