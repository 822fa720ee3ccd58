"""line-unclear: a line that cannot be read."""

from __future__ import annotations

from loopwright.check.rule import Rule, found_while_reading
from loopwright.problem import ERROR

RULE = Rule(
    name="line-unclear",
    severity=ERROR,
    title="a line that cannot be read",
    what="The line does not follow the notation. The message says where it stops being clear, what "
    "could stand there, and what to write for a phrase of printed patterns. Each such line is "
    "reported by itself, and the others are still checked.",
    wrong="""pattern "Unclear"
piece swatch flat
  cast on 20
  row: *k1, p1; rep from * to end
  bind off
""",
    right="""pattern "Clear"
piece swatch flat
  cast on 20
  row: * k1 p1 *
  bind off
""",
    check=found_while_reading,
)
