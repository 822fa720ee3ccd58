"""count-short: a row that leaves stitches unworked."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, count_of, in_size
from loopwright.check.neighbours import advice, turn_hint, whose
from loopwright.check.rule import Rule
from loopwright.problem import ERROR, Problem


def check(context: Context) -> Iterator[Problem]:
    for group in context.findings("count-short"):
        first = group[0]
        assert first.snag is not None
        misfit = first.snag.misfit
        left = misfit.have - misfit.used
        message = (
            f"{whose(first)} has {count_of(misfit.have, 'stitch')}{in_size(context, first.size)} "
            f"and works {misfit.used:,} of them: {left:,} "
            f"{'is' if left == 1 else 'are'} left on the needle."
        )
        look, help = advice(context, first)
        yield context.problem(
            group,
            "the row leaves stitches unworked",
            message + look,
            help=(help or f"work {left:,} more, or let a fill between stars take up the rest.")
            + turn_hint(context, first),
        )


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
