"""row-twice: a row that two lines give."""

from __future__ import annotations

import re
from collections.abc import Iterator

from loopwright.check.context import Context
from loopwright.check.rule import Rule
from loopwright.model.pattern import RowClash
from loopwright.notation.source import Span
from loopwright.problem import ERROR, Edit, Fix, Label, Problem

_HEAD = re.compile(r"(?:row|round)\s*(\d+)\s*(?:in\s|:)", re.IGNORECASE)


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
            fix=_fix(context, clash),
        )
    for group in context.findings("row-twice"):
        expected, given = group[0].numbers
        yield context.problem(
            group,
            "a row of the piece is given again",
            f"The piece has come to row {expected:,}, and this line is row {given:,} again.",
            help=f"write row {expected:,}, or leave the number out: “row: …” is the next row.",
        )


def _fix(context: Context, clash: RowClash) -> Fix | None:
    """The one number that is missing, where one of the two lines stands just where it would.

    It is where the motif lacks one row only, the next or the one before, and the two lines
    follow each other.
    """
    source = context.pattern.source
    gaps = [g for g in context.pattern.gaps if clash.motif and g.motif is clash.motif.name]
    if len(gaps) != 1 or len(gaps[0].numbers) != 1:
        return None
    missing = gaps[0].numbers[0]
    heads = [(_HEAD.match(source.slice(span)), span) for span in (clash.first, clash.again)]
    lines = [source.line_column(span.start)[0] for _, span in heads]
    if lines[1] != lines[0] + 1 or abs(missing - clash.number) != 1:
        return None
    for head, _ in heads:
        if head is None or int(head[1]) != clash.number:
            return None
    head, span = heads[missing > clash.number]
    assert head is not None
    at = Span(span.start + head.start(1), span.start + head.end(1))
    which = "second" if missing > clash.number else "first"
    return Fix(f"write row {missing} for the {which} row {clash.number}", (Edit(at, str(missing)),))


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
