"""count-unreached: a count that no repeat of the motif leads to."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, count_of, in_size
from loopwright.check.rule import Rule
from loopwright.problem import ERROR, Problem


def check(context: Context) -> Iterator[Problem]:
    for group in context.findings("count-unreached"):
        first = group[0]
        count, target, before, after = first.numbers
        assert first.motif is not None
        name = first.motif.name.text
        message = (
            f"{name} begins with {count_of(count, 'stitch')}{in_size(context, first.size)} and "
            f"is to be worked until {target:,}. "
        )
        if before == after:
            message += f"It keeps coming back to {before:,}."
        else:
            message += f"Whole repeats lead to {before:,} and then to {after:,}, past {target:,}."
        yield context.problem(
            group,
            "the count is never reached",
            message,
            help=f"work until {after:,} or {before:,}, or begin with another count."
            if before != after
            else "let the motif change its count, or say how often it is worked: “x8”.",
        )


RULE = Rule(
    name="count-unreached",
    severity=ERROR,
    title="the count is never reached",
    what="“work crown until 8 stitches” works whole motifs until exactly so many stitches are "
    "left. From the count at hand no number of repeats leads there.",
    wrong="""pattern "Past it"
motif crown over 2n
  round 1: * k2tog *
  round 2: knit
piece cap round
  cast on 96
  work crown until 8 stitches
  bind off
""",
    right="""pattern "There"
motif crown over 2n
  round 1: * k2tog *
  round 2: knit
piece cap round
  cast on 64
  work crown until 8 stitches
  bind off
""",
    check=check,
)
