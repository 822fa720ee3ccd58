"""spread-tight: changes that cannot be spread over the rows there are."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, count_of, in_size
from loopwright.check.rule import Rule
from loopwright.notation.bounds import MAX_SPREAD_ROWS
from loopwright.problem import ERROR, Problem


def check(context: Context) -> Iterator[Problem]:
    for group in context.findings("spread-tight"):
        first = group[0]
        assert first.motif is not None
        name = first.motif.name.text
        if first.detail == "motif":
            yield context.problem(
                group,
                "what is spread must be one row",
                f"{name} has {count_of(len(first.motif.rows), 'row')}, and the rows between its "
                "changes come from the motif behind “in”.",
                help=f"leave only the row of {name} that changes the count.",
            )
            continue
        if first.detail == "far":
            yield context.problem(
                group,
                "the changes lie too far apart",
                f"From one {name} to the next there would be more than {MAX_SPREAD_ROWS:,} rows.",
                help="spread them over fewer rows.",
            )
            continue
        changes, rows, step = first.numbers
        how = (
            "one in every round"
            if step == 1
            else f"one in every {step} {'rows, on the right side' if step == 2 else 'rows'}"
        )
        yield context.problem(
            group,
            "too few rows for so many changes",
            f"{name} is to be worked {changes:,} times over {count_of(rows, 'row')}"
            f"{in_size(context, first.size)}. At most {how}, that is room for {rows // step:,}.",
            help=f"give it {changes * step:,} rows or more, or spread {rows // step:,} changes.",
        )


RULE = Rule(
    name="spread-tight",
    severity=ERROR,
    title="changes that cannot be spread so",
    what="“spread narrow x13 in plain over 60 rows” works the one row of narrow so many times, "
    "evenly over the rows, with rows of plain between. In flat work every change falls on a "
    "right-side row, so each needs two rows (or a whole repeat of plain, where that is longer).",
    wrong="""pattern "Too steep"
motif plain over n
  row 1: knit
  row 2: purl
motif narrow
  row 1: k1 ssk * k1 * k2tog k1
piece sleeve flat
  cast on 60
  spread narrow x13 in plain over 20 rows
  bind off
""",
    right="""pattern "Even"
motif plain over n
  row 1: knit
  row 2: purl
motif narrow
  row 1: k1 ssk * k1 * k2tog k1
piece sleeve flat
  cast on 60
  spread narrow x13 in plain over 60 rows
  bind off
""",
    check=check,
)
