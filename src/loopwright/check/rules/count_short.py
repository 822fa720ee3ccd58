"""count-short: a row that leaves stitches unworked."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context
from loopwright.check.misfits import misfits
from loopwright.check.rule import Rule
from loopwright.problem import ERROR, Problem


def check(context: Context) -> Iterator[Problem]:
    return misfits(context, "count-short")


RULE = Rule(
    name="count-short",
    severity=ERROR,
    title="the row leaves stitches unworked",
    what="Every row works all the stitches that hang on the needle. This one stops before the "
    "end, so that some are left and every count after it is wrong.",
    wrong="""pattern "Short row"
piece swatch flat
  cast on 12
  row: k4 p6
  bind off
""",
    right="""pattern "Whole row"
piece swatch flat
  cast on 12
  row: k4 p8
  bind off
""",
    check=check,
)
