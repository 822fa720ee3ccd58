"""unit-missing: a quantity without its unit."""

from __future__ import annotations

from loopwright.check.rule import Rule, found_while_reading
from loopwright.problem import ERROR

RULE = Rule(
    name="unit-missing",
    severity=ERROR,
    title="a quantity without its unit",
    what="A length, a weight or a yarn length carries its unit (cm, mm, in, m, yd, g, oz). Without "
    "it nobody can tell centimetres from inches.",
    wrong="""pattern "No unit"
  width 90
  gauge 20 stitches 40 rows = 10 cm
piece swatch flat
  cast on 20
  rows 8: knit
  bind off
""",
    right="""pattern "Unit"
  width 10 cm
  gauge 20 stitches 40 rows = 10 cm
piece swatch flat
  cast on 20
  rows 8: knit
  bind off
""",
    check=found_while_reading,
)
