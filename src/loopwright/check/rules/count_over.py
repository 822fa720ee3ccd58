"""count-over: a row that wants more stitches than there are."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context
from loopwright.check.misfits import misfits
from loopwright.check.rule import Rule
from loopwright.problem import ERROR, Problem


def check(context: Context) -> Iterator[Problem]:
    return misfits(context, "count-over")


RULE = Rule(
    name="count-over",
    severity=ERROR,
    title="the row works more stitches than there are",
    what="A row can work only the stitches that hang on the needle. This one runs out of them "
    "before it is done.",
    wrong="""pattern "Too long a row"
piece swatch flat
  cast on 12
  row: k4 p10
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
