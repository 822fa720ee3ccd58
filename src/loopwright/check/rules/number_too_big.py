"""number-too-big: a bound is passed."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, in_size
from loopwright.check.rule import Rule
from loopwright.notation.bounds import MAX_GEOMETRIC, MAX_NUMBER
from loopwright.problem import ERROR, Problem


def check(context: Context) -> Iterator[Problem]:
    for group in context.findings("number-too-big"):
        first = group[0]
        where = in_size(context, first.size)
        if first.detail == "rows":
            message = (
                f"This comes to {first.numbers[0]:,} rows{where}; a piece may have {MAX_NUMBER:,}."
            )
        elif first.detail == "stitches":
            message = (
                f"This comes to {first.numbers[0]:,} stitches{where}; a row may have "
                f"{MAX_NUMBER:,}."
            )
        else:
            message = (
                f"The motif multiplies its stitches{where}; it may be repeated "
                f"{MAX_GEOMETRIC:,} times and reach {MAX_NUMBER:,} stitches."
            )
        yield context.problem(group, "the number is too big", message, help="work it fewer times.")


RULE = Rule(
    name="number-too-big",
    severity=ERROR,
    title="a bound is passed",
    what="Loopwright keeps bounds so that it always answers at once: numbers up to "
    f"{MAX_NUMBER:,}, and bounds on the size of a file, the length of a line, the nesting of "
    "groups and the number of sizes. The message names the bound.",
    wrong="""pattern "Out of hand"
piece swatch flat
  cast on 5000000000
  rows 2: knit
  bind off
""",
    right="""pattern "Large"
piece swatch flat
  cast on 10000000
  rows 2: knit
  bind off
""",
    check=check,
)
