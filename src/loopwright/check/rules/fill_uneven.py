"""fill-uneven: a repeat between stars that does not come out."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, count_of, in_size
from loopwright.check.neighbours import advice, stretch
from loopwright.check.rule import Rule
from loopwright.problem import ERROR, Problem


def check(context: Context) -> Iterator[Problem]:
    for group in context.findings("fill-uneven"):
        first = group[0]
        assert first.snag is not None
        misfit = first.snag.misfit
        rest = misfit.have - misfit.used
        times, left = divmod(rest, misfit.unit)
        message = (
            f"The fill has {count_of(rest, 'stitch')} to cover{stretch(misfit)} "
            f"({misfit.have:,}, less {misfit.before:,} before it and {misfit.after:,} after it)"
            f"{in_size(context, first.size)}, and its unit of {misfit.unit:,} goes into them "
            f"{count_of(times, 'time')} with {left:,} left over."
        )
        if first.repeat:
            fine = count_of(first.repeat, "repeat")
            message += f" It comes out in the first {fine}, and not in the next."
        sideways = advice(context, first)
        look, help = sideways.look, sideways.help
        fewer, more = misfit.have - left, misfit.have - left + misfit.unit
        part = "this stretch" if misfit.segments > 1 else "the row"
        change = f"let {part} have {fewer:,} or {more:,} stitches instead of {misfit.have:,}."
        if first.repeat and not help:
            change = f"work the motif {count_of(first.repeat, 'time')}, or make its unit fit."
        yield context.problem(
            group,
            "the fill does not come out even",
            message + look,
            help=f"{help.rstrip('.')}; or {change}" if help else change,
            fix=sideways.fix,
        )


RULE = Rule(
    name="fill-uneven",
    severity=ERROR,
    title="the fill does not come out even",
    what="What stands between two stars is repeated as often as it fits between the stitches "
    "before it and after it. Here it does not fit a whole number of times: some stitches are "
    "left over.",
    wrong="""pattern "Uneven rib"
piece swatch flat
  cast on 13
  row: k2 * p2 k2 *
  bind off
""",
    right="""pattern "Even rib"
piece swatch flat
  cast on 14
  row: k2 * p2 k2 *
  bind off
""",
    check=check,
)
