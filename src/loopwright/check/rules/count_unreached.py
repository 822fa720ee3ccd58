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
            f"“{name}” begins with {count_of(count, 'stitch')}{in_size(context, first.size)} and "
            f"is to be worked until {target:,}. "
        )
        if count == target:
            message += "It has that count already, before the first repeat."
        elif (target - count) * (after - before) < 0:
            message += (
                f"Its repeats make {'fewer' if after < before else 'more'} stitches, and "
                f"{target:,} is {'more' if target > count else 'fewer'} than it begins with."
            )
        elif before == after:
            message += f"It keeps coming back to {before:,}."
        else:
            message += f"Whole repeats lead to {before:,} and then to {after:,}, past {target:,}."
        yield context.problem(
            group,
            "the count is never reached",
            message,
            help=_help(count, target, before, after),
        )


def _help(count: int, target: int, before: int, after: int) -> str:
    reached = [n for n in (after, before) if n not in (count, 0) and n > 0]
    if before == after:
        return "let the motif change its count, or say how often it is worked: “x8”."
    if not reached or (target - count) * (after - before) <= 0:
        return "begin with another count, or say how often it is worked: “x8”."
    return f"work until {' or '.join(f'{n:,}' for n in reached)}, or begin with another count."


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
