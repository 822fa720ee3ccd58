"""no-cast-on: something is worked before there is a stitch."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context
from loopwright.check.rule import Rule
from loopwright.problem import ERROR, Problem


def check(context: Context) -> Iterator[Problem]:
    for group in context.findings("no-cast-on"):
        first = group[0]
        name = first.piece.name.text
        message = {
            "never": f"This line of “{name}” comes before anything is cast on.",
            "bound": f"“{name}” is already bound off here: no stitch hangs on the needle.",
            "more": f"No stitch of “{name}” hangs on the needle, so none can be added.",
            "empty": f"Nothing is ever cast on for “{name}”.",
        }[first.detail]
        yield context.problem(
            group, "there is no stitch to work", message, help=_HELP[first.detail]
        )


_HELP = {
    "never": "write “cast on 20” before it.",
    "bound": "let it come before the binding off, or cast on, pick up or take stitches first.",
    "more": "write it without “more”, or let it come behind the line that brings the stitches.",
    "empty": "begin it with “cast on 20”, or pick up, take or join stitches.",
}


RULE = Rule(
    name="no-cast-on",
    severity=ERROR,
    title="there is no stitch to work",
    what="A piece begins with “cast on”. Rows before it, or after the binding off, have no "
    "stitches to be worked on.",
    wrong="""pattern "Out of thin air"
piece swatch flat
  rows 8: knit
  bind off
""",
    right="""pattern "Cast on"
piece swatch flat
  cast on 20
  rows 8: knit
  bind off
""",
    check=check,
)
