"""out-of-place: a line in the wrong block."""

from __future__ import annotations

from loopwright.check.rule import Rule, found_while_reading
from loopwright.problem import ERROR

RULE = Rule(
    name="out-of-place",
    severity=ERROR,
    title="a line in the wrong block",
    what="A block runs from its opening line (pattern, motif, piece) to the next opening line. "
    "This line belongs to another kind of block.",
    wrong="""pattern "Astray"
  cast on 20
piece swatch flat
  cast on 20
  rows 8: knit
  bind off
""",
    right="""pattern "At home"
piece swatch flat
  cast on 20
  rows 8: knit
  bind off
""",
    check=found_while_reading,
)
