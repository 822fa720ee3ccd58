"""marker-missed: a row passes a marker without saying what becomes of it."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, count_of
from loopwright.check.neighbours import whose
from loopwright.check.rule import Rule
from loopwright.problem import ERROR, Problem


def check(context: Context) -> Iterator[Problem]:
    for group in context.findings("marker-missed"):
        first = group[0]
        assert first.snag is not None
        misfit = first.snag.misfit
        hang = misfit.segments - 1
        who = whose(first).split(", in stretch")[0]
        yield context.problem(
            group,
            "a marker is forgotten",
            f"{count_of(hang, 'marker')} {'hangs' if hang == 1 else 'hang'} on the needle, the "
            f"next after {count_of(misfit.have, 'stitch')}, and {who[0].lower()}{who[1:]} does "
            f"not slip or remove {'it' if hang == 1 else 'them all'}.",
            help="write sm (or rm) where the row comes to each marker. A row without any marker "
            "word leaves them where they hang, if it makes no stitch more or fewer.",
        )


RULE = Rule(
    name="marker-missed",
    severity=ERROR,
    title="a marker is forgotten",
    what="A row that shapes, or that names some markers, must say of each what becomes of it: "
    "sm slips it, rm removes it. Otherwise nobody knows between which markers the stitches lie.",
    wrong="""pattern "Forgotten"
piece swatch flat
  cast on 20
  row: k10 pm k10
  row: k1 yo * k1 * yo k1
  bind off
""",
    right="""pattern "Slipped"
piece swatch flat
  cast on 20
  row: k10 pm k10
  row: k1 yo * k1 * sm * k1 * yo k1
  bind off
""",
    check=check,
)
