"""count-over: a row that wants more stitches than there are."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, count_of, in_size
from loopwright.check.neighbours import advice, whose
from loopwright.check.rule import Rule
from loopwright.problem import ERROR, Problem


def check(context: Context) -> Iterator[Problem]:
    for group in context.findings("count-over"):
        first = group[0]
        assert first.snag is not None
        misfit = first.snag.misfit
        lack = misfit.used - misfit.have
        fixed = "works" if misfit.unit == 0 else "works, even without its fill,"
        message = (
            f"{whose(first)} has {count_of(misfit.have, 'stitch')}{in_size(context, first.size)} "
            f"and {fixed} {misfit.used:,}: {lack:,} too many."
        )
        look, help = advice(context, first)
        yield context.problem(
            group,
            "the row works more stitches than there are",
            message + look,
            help=help or f"work {lack:,} fewer, or begin with {lack:,} more.",
        )


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
