"""stitches-unreached: short rows that are never worked to their end."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, count_of, in_size
from loopwright.check.rule import Rule
from loopwright.problem import ERROR, Problem

_THEN = {
    "bind": "the piece is bound off",
    "join": "the piece is joined in the round",
    "leave": "the round is left",
}


def check(context: Context) -> Iterator[Problem]:
    for group in context.findings("stitches-unreached"):
        first = group[0]
        if first.detail == "back":
            yield context.problem(
                group,
                "the round runs backwards",
                "The row before this one has turned, so this one runs back with the wrong side in "
                "front, and it does not turn again.",
                help="end it with turn (or w&t); the row after it then goes on in the round.",
            )
            continue
        left = first.numbers[0]
        yield context.problem(
            group,
            "a turn has left stitches behind",
            f"{count_of(left, 'stitch')} {'lies' if left == 1 else 'lie'} behind the last turn"
            f"{in_size(context, first.size)}, on the other side of where the yarn hangs, when "
            f"{_THEN[first.detail]}.",
            help="work a row over all stitches first.",
        )


RULE = Rule(
    name="stitches-unreached",
    severity=ERROR,
    title="a turn has left stitches behind",
    what="A row that turns before its end leaves live stitches. They are worked by a later row; "
    "before the piece is bound off, joined or opened, the yarn must come from the end of the "
    "needle. In the round a turned row is followed by one that turns back.",
    wrong="""pattern "Half bound off"
piece swatch flat
  cast on 20
  row: k15 turn
  bind off
""",
    right="""pattern "Wedge"
piece swatch flat
  cast on 20
  row: k15 turn
  row: purl
  row: knit
  bind off
""",
    check=check,
)
