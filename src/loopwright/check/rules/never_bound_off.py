"""never-bound-off: live stitches at the end of a piece."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, count_of, in_size, listed
from loopwright.check.holders import meant, never_taken, unknown
from loopwright.check.rule import Rule
from loopwright.count.walk import Finding
from loopwright.problem import ERROR, Problem


def check(context: Context) -> Iterator[Problem]:
    for group in context.findings("never-bound-off"):
        first = group[0]
        if first.detail == "held":
            if not _said_elsewhere(context, first):
                yield _held(context, group)
            continue
        live = count_of(first.numbers[0], "stitch")
        name = first.piece.name.text
        if first.detail == "again":
            message = (
                f"{live} of “{name}” still hang on the needle{in_size(context, first.size)} when "
                "it casts on again."
            )
        else:
            are = "is" if first.numbers[0] == 1 else "are"
            message = f"{live} of “{name}” {are} left on the needle{in_size(context, first.size)}"
            message += f": {_whence(*first.numbers)}."
        help = "end it with “bind off”, or with “leave live” and what becomes of the stitches."
        if first.detail == "again":
            help = "bind off before it, or begin another piece."
        yield context.problem(group, "the piece is never bound off", message, help=help)


def _whence(live: int, cast: int, brought: int, held: int) -> str:
    """Where the live stitches came from, in the knitter's numbers."""
    parts = [f"{_were(cast)} cast on"] if cast else []
    if brought:
        parts.append(f"{_were(brought)} taken from holders or picked up")
    if held:
        parts.append(f"{_were(held)} put onto holders")
    change = live - (cast + brought - held)
    if change:
        way = "made" if change > 0 else "worked away"
        parts.append(f"{_were(abs(change))} {way} in the rows")
    return listed(parts)


def _were(count: int) -> str:
    return f"{count:,} {'was' if count == 1 else 'were'}"


def _said_elsewhere(context: Context, held: Finding) -> bool:
    """Whether the line that takes them was not reached, or asks for them by a wrong name."""
    if held not in never_taken(context, held.size):
        return True
    return any(meant(context, empty) is held for empty in unknown(context, held.size))


def _held(context: Context, group: list[Finding]) -> Problem:
    """Stitches that wait on a holder for ever."""
    first = group[0]
    count = first.numbers[0]
    name = first.name
    where = f"after row {first.row_number:,} of “{first.piece.name.text}”"
    return context.problem(
        group,
        "held stitches are never taken",
        f"{count_of(count, 'stitch')}{in_size(context, first.size)} "
        f"{'waits' if count == 1 else 'wait'} on the holder “{name}”, where "
        f"{'it was' if count == 1 else 'they were'} put {where}, and no later line takes "
        f"{'it' if count == 1 else 'them'}.",
        help=f"write “take {name}” where {'it is' if count == 1 else 'they are'} worked again, in "
        "this piece or in a later one.",
    )


RULE = Rule(
    name="never-bound-off",
    severity=ERROR,
    title="the piece is never bound off",
    what="A piece that ends with live stitches unravels. Every stitch that is cast on is at the "
    "end bound off, held and taken again by a later line, or named as left live (leave live).",
    wrong="""pattern "Live"
piece swatch flat
  cast on 20
  rows 8: knit
""",
    right="""pattern "Bound off"
piece swatch flat
  cast on 20
  rows 8: knit
  bind off
""",
    check=check,
)
