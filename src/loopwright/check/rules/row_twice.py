"""row-twice: a row that two lines give."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context
from loopwright.check.rule import Rule
from loopwright.problem import ERROR, Label, Problem


def check(context: Context) -> Iterator[Problem]:
    said = set()
    for clash in context.pattern.clashes:
        if clash.again in said:
            continue
        said.add(clash.again)
        yield Problem(
            "row-twice",
            ERROR,
            f"row {clash.number} is given twice",
            f"Two lines give row {clash.number}; the first one counts.",
            clash.again,
            (Label(clash.first, "given here first"),),
            "give one of the two another number, or delete it.",
        )
    for group in context.findings("row-twice"):
        expected, given = group[0].numbers
        yield context.problem(
            group,
            "a row of the piece is given again",
            f"The piece has come to row {expected:,}, and this line is row {given:,} again.",
            help=f"write row {expected:,}, or leave the number out: “row: …” is the next row.",
        )


RULE = Rule(
    name="row-twice",
    severity=ERROR,
    title="a row is given twice",
    what="Each row of a motif is given by one line. (An every-line gives only what no other line "
    "gives.)",
    wrong="""pattern "Twice"
motif ridge over n
  row 1: knit
  row 2: purl
  row 2: knit
piece swatch flat
  cast on 20
  work ridge x4
  bind off
""",
    right="""pattern "Once"
motif ridge over n
  row 1: knit
  row 2: purl
piece swatch flat
  cast on 20
  work ridge x4
  bind off
""",
    check=check,
)
