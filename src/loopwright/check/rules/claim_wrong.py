"""claim-wrong: the writer's count after a row is not the row's."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, count_of, in_size
from loopwright.check.neighbours import whose
from loopwright.check.rule import Rule
from loopwright.problem import ERROR, Problem


def check(context: Context) -> Iterator[Problem]:
    for group in context.findings("claim-wrong"):
        first = group[0]
        start, end, said = first.numbers
        where = in_size(context, first.size)
        if first.detail == "=":
            message = (
                f"{whose(first)} starts with {count_of(start, 'stitch')}{where} and leaves "
                f"{end:,}; the claim says {said:,}."
            )
            help = (
                f"write => {end:,}, if the row is right."
                if not first.repeat
                else "the count changes from repeat to repeat: claim the change, as in => +2."
            )
        else:
            change = end - start
            message = (
                f"{whose(first)} goes from {start:,} to {count_of(end, 'stitch')}{where}, "
                f"a change of {change:+,}; the claim says {first.detail}{said:,}."
            )
            help = f"write => {change:+,}, if the row is right."
        yield context.problem(group, "the claimed count is not the row's", message, help=help)


RULE = Rule(
    name="claim-wrong",
    severity=ERROR,
    title="the claimed count is not the row's",
    what="Behind => stands the count that the writer expects after the row, or its change. The "
    "row as written leaves another count, so one of the two is wrong.",
    wrong="""pattern "Wrong claim"
piece swatch flat
  cast on 12
  row: k1 yo * k1 * yo k1 => 13
  bind off
""",
    right="""pattern "Right claim"
piece swatch flat
  cast on 12
  row: k1 yo * k1 * yo k1 => 14
  bind off
""",
    check=check,
)
