"""hidden-character: a character that no reader sees."""

from __future__ import annotations

from loopwright.check.rule import Rule, found_while_reading
from loopwright.problem import ERROR

RULE = Rule(
    name="hidden-character",
    severity=ERROR,
    title="a character that cannot be seen",
    what="A text may hold characters that show nothing: controls, and those that turn the "
    "direction in which a screen shows the words. Behind such a one a reader sees another line "
    "than the one that is worked, in a comment too, so the line is not read at all and nothing is "
    "made of the source. Words that are written from right to left need none of them. What a word "
    "processor only leaves behind (a space of no width, a soft hyphen) is a warning inside a text. "
    "Here each is shown by its number, as \\u202e.",
    wrong="""pattern "Turned"
piece swatch flat
  cast on 20
  note "Work 21 rows, \u202ework 12 rows"
  rows 8: knit
  bind off
""",
    right="""pattern "Straight"
piece swatch flat
  cast on 20
  note "Work 21 rows"
  rows 8: knit
  bind off
""",
    check=found_while_reading,
)
