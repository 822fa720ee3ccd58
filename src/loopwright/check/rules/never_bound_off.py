"""never-bound-off: live stitches at the end of a piece."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, count_of, in_size
from loopwright.check.rule import Rule
from loopwright.problem import ERROR, Problem


def check(context: Context) -> Iterator[Problem]:
    for group in context.findings("never-bound-off"):
        first = group[0]
        live = count_of(first.numbers[0], "stitch")
        name = first.piece.name.text
        if first.detail == "again":
            message = (
                f"{live} of “{name}” still hang on the needle{in_size(context, first.size)} when "
                "it casts on again."
            )
        else:
            message = f"{live} of “{name}” are left on the needle{in_size(context, first.size)}."
        help = "end it with “bind off”."
        if first.detail == "again":
            help = "bind off before it, or begin another piece."
        yield context.problem(group, "the piece is never bound off", message, help=help)


RULE = Rule(
    name="never-bound-off",
    severity=ERROR,
    title="the piece is never bound off",
    what="A piece that ends with live stitches unravels. Every piece is bound off at its end.",
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
