"""A row that works more or fewer stitches than hang there: what both rules of it say."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, count_of, in_size
from loopwright.check.neighbours import advice, turn_hint, whose
from loopwright.count.walk import Finding
from loopwright.problem import Problem


def misfits(context: Context, rule: str) -> Iterator[Problem]:
    """The problems of ``count-over`` or ``count-short``."""
    for group in context.findings(rule):
        first = group[0]
        if first.snag is None or first.snag.misfit.kind == "past":
            continue  # said by the rule itself
        misfit = first.snag.misfit
        over = rule == "count-over"
        amount = abs(misfit.have - misfit.used)
        message = (
            f"{whose(first)} has {count_of(misfit.have, 'stitch')}{in_size(context, first.size)} "
        )
        if over:
            fixed = "works" if misfit.unit == 0 else "works, even without its fill,"
            message += f"and {fixed} {misfit.used:,}: {amount:,} too many."
            title = "the row works more stitches than there are"
        else:
            left = f"{amount:,} {'is' if amount == 1 else 'are'} left on the needle."
            message += f"and works {misfit.used:,} of them: {left}"
            title = "the row leaves stitches unworked"
        if first.repeat:
            fine = count_of(first.repeat, "repeat")
            message += f" It comes out in the first {fine}, and not in the next."
        sideways = advice(context, first)
        yield context.problem(
            group,
            title,
            message + sideways.look,
            help=(sideways.help or _help(first, over, amount))
            + ("" if over else turn_hint(context, first)),
            fix=sideways.fix,
        )


def _help(finding: Finding, over: bool, amount: int) -> str:
    """What would be right; a repeat that comes later has not the count that was begun with."""
    if finding.repeat:
        times = count_of(finding.repeat, "time")
        if over:
            return f"work the motif {times}, or begin it with more stitches."
        return f"work the motif {times}, or let a fill between stars take up the rest."
    if over:
        return f"work {amount:,} fewer, or begin with {amount:,} more."
    return f"work {amount:,} more, or let a fill between stars take up the rest."
