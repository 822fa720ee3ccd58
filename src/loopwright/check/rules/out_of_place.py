"""out-of-place: a line in the wrong block."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context
from loopwright.check.rule import Rule
from loopwright.problem import ERROR, Problem


def check(context: Context) -> Iterator[Problem]:
    """Lines in a wrong block are said by the reader; this is what only the walk can know."""
    for group in context.findings("out-of-place"):
        yield context.problem(
            group,
            "no round is worked here",
            "“begin round after” moves the beginning of the rounds, but here the piece is worked "
            "back and forth.",
            help="write it behind “join round”, and behind the rows that turn back.",
        )


RULE = Rule(
    name="out-of-place",
    severity=ERROR,
    title="a line in the wrong block",
    what="A block runs from its opening line (pattern, motif, piece) to the next opening line. "
    "This line belongs to another kind of block.",
    wrong="""pattern "Astray"
  cast on 20
piece swatch flat
  cast on 20
  rows 8: knit
  bind off
""",
    right="""pattern "At home"
piece swatch flat
  cast on 20
  rows 8: knit
  bind off
""",
    check=check,
)
