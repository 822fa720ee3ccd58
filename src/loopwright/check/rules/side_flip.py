"""side-flip: a motif whose right-side rows would fall on the wrong side."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context
from loopwright.check.rule import Rule
from loopwright.problem import ERROR, Label, Problem


def check(context: Context) -> Iterator[Problem]:
    for group in context.findings("side-flip"):
        first = group[0]
        motif = first.motif
        assert motif is not None
        name = motif.name.text
        labels = (Label(motif.span, "the motif"),)
        if first.detail == "rounds":
            yield context.problem(
                group,
                "a motif of rounds is worked flat",
                f"“{name}” is written in rounds, each a right-side row, but the piece is worked "
                "flat here.",
                help="write “join round” before it, or write the motif in rows.",
                labels=labels,
            )
        elif first.detail == "odd":
            yield context.problem(
                group,
                "right-side rows land on the wrong side",
                f"“{name}” has {first.numbers[0]} rows. Repeated flat, its second time begins on "
                "the other side, so its right-side rows land on the wrong side.",
                help="give the motif an even number of rows (write it out twice if need be).",
                labels=labels,
            )
        else:
            row, rs = first.numbers
            side = "right" if rs else "wrong"
            starts = "wrong" if motif.starts_ws else "right"
            yield context.problem(
                group,
                "the motif begins on the wrong side"
                if not rs
                else "the motif begins on the right side",
                f"Row 1 of “{name}” is a {starts}-side row, but row {row:,} of the piece, where it "
                f"begins, is a {side}-side row.",
                help="work one row more or fewer before it"
                + (", or let the motif start on the wrong side (“starts ws”)." if not rs else "."),
                labels=labels,
            )


RULE = Rule(
    name="side-flip",
    severity=ERROR,
    title="right-side rows land on the wrong side",
    what="In flat work the sides change with every row. A motif that is begun on the wrong side, "
    "or that has an odd number of rows and is repeated, shows its back where its face should be. "
    "A motif of one row (or of rows all alike) has no side and may be worked anywhere.",
    wrong="""pattern "Three rows"
motif ridge over 2n
  row 1: knit
  row 2: purl
  row 3: * k1 p1 *
piece swatch flat
  cast on 20
  work ridge x4
  bind off
""",
    right="""pattern "Four rows"
motif ridge over 2n
  row 1: knit
  row 2: purl
  row 3: * k1 p1 *
  row 4: purl
piece swatch flat
  cast on 20
  work ridge x4
  bind off
""",
    check=check,
)
