"""name-twice: a name given twice."""

from __future__ import annotations

from loopwright.check.rule import Rule, found_while_reading
from loopwright.problem import ERROR

RULE = Rule(
    name="name-twice",
    severity=ERROR,
    title="a name given twice",
    what="Two motifs, pieces, strands, shades, yarns, stitches or sizes have the same name, or a "
    "line that may stand once stands twice. The first one counts.",
    wrong="""pattern "Twice"
piece swatch flat
  cast on 20
  rows 8: knit
  bind off
piece swatch flat
  cast on 20
  rows 8: knit
  bind off
""",
    right="""pattern "Once"
piece swatch flat
  cast on 20
  rows 8: knit
  bind off
""",
    check=found_while_reading,
)
