"""count-over: a row that wants more stitches than there are."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, count_of, in_size
from loopwright.check.misfits import misfits
from loopwright.check.neighbours import whose
from loopwright.check.rule import Rule
from loopwright.count.walk import Finding
from loopwright.problem import ERROR, Problem


def check(context: Context) -> Iterator[Problem]:
    for group in context.findings("count-over"):
        snag = group[0].snag
        if snag is None:
            yield _hold(context, group)
        elif snag.misfit.kind == "past":
            yield _past(context, group)
    yield from misfits(context, "count-over")


def _hold(context: Context, group: list[Finding]) -> Problem:
    """A line that wants more stitches than the next row could reach."""
    wanted, have = group[0].numbers
    if group[0].detail == "begin":
        return context.problem(
            group,
            "the round cannot begin so far on",
            f"The round has {count_of(have, 'stitch')}{in_size(context, group[0].size)}, and it "
            f"is to begin after {wanted:,} of them.",
            help="name fewer stitches than the round has.",
        )
    return context.problem(
        group,
        "more stitches are held than there are",
        f"{count_of(wanted, 'stitch')} are to go onto the holder, but "
        f"{count_of(have, 'stitch')} {'lies' if have == 1 else 'lie'} ahead"
        f"{in_size(context, group[0].size)}.",
        help="hold fewer, or write “hold all as NAME”.",
    )


def _past(context: Context, group: list[Finding]) -> Problem:
    """A fill that should end at a place the row has already passed."""
    first = group[0]
    assert first.snag is not None
    misfit = first.snag.misfit
    if misfit.end.endswith("the gap"):
        text = "the gap, or what is kept before it, lies behind the stitches already worked"
    else:
        text = f"only {count_of(misfit.have, 'stitch')} are left, fewer than {misfit.after:,}"
    return context.problem(
        group,
        "the place where the fill should end is passed already",
        f"{whose(first)} comes to this point{in_size(context, first.size)} when {text}.",
        help="work fewer stitches before it, or keep fewer back.",
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
