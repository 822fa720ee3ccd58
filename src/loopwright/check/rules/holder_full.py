"""holder-full: stitches are held under a name that others have already."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, count_of, in_size
from loopwright.check.rule import Rule
from loopwright.problem import ERROR, Label, Problem


def check(context: Context) -> Iterator[Problem]:
    for group in context.findings("holder-full"):
        first = group[0]
        name = first.name
        if first.detail == "again":
            yield context.problem(
                group,
                "the row is worked again, and its holder is in use",
                f"This row is worked {first.numbers[0]:,} times, but a holder such as “{name}” is "
                "filled or emptied once.",
                help="write the row that holds or takes stitches as a line of the piece, once.",
            )
            continue
        more, there = first.numbers
        labels = (Label(first.other, "put aside here before"),) if first.other is not None else ()
        yield context.problem(
            group,
            "stitches wait under this name already",
            f"{count_of(more, 'stitch')} {'is' if more == 1 else 'are'} put aside as "
            f"“{name}”{in_size(context, first.size)}, where {count_of(there, 'stitch')} "
            f"{'waits' if there == 1 else 'wait'} still.",
            help="take those before, or give these a name of their own.",
            labels=labels,
        )


RULE = Rule(
    name="holder-full",
    severity=ERROR,
    title="stitches wait under this name already",
    what="Each holder has a name of its own, so that “take” brings back the stitches that are "
    "meant. A row that holds or takes stitches is worked once.",
    wrong="""pattern "Two thumbs, one name"
piece mitten flat
  cast on 40
  row: k4 hold 6 as thumb k20 hold 6 as thumb k4
  rows 7: knit
  bind off
piece tip flat
  take thumb
  bind off
""",
    right="""pattern "Two thumbs"
piece mitten flat
  cast on 40
  row: k4 hold 6 as left-thumb k20 hold 6 as right-thumb k4
  rows 7: knit
  bind off
piece left-tip flat
  take left-thumb
  bind off
piece right-tip flat
  take right-thumb
  bind off
""",
    check=check,
)
