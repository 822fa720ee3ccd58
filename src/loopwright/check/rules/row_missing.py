"""row-missing: a row number that no line gives."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, listed
from loopwright.check.rule import Rule
from loopwright.model.pattern import RowGap
from loopwright.notation.source import Span
from loopwright.problem import ERROR, Label, Problem


def _numbers(numbers: tuple[int, ...]) -> str:
    if len(numbers) > 6:
        return f"{', '.join(map(str, numbers[:5]))} and {len(numbers) - 5:,} more"
    return listed(map(str, numbers))


def check(context: Context) -> Iterator[Problem]:
    for gap in context.pattern.gaps:
        one = len(gap.numbers) == 1
        yield Problem(
            "row-missing",
            ERROR,
            f"the motif “{gap.motif.text}” has no row {gap.numbers[0]}",
            f"Its last row is row {gap.last}, and no line gives "
            f"row{'' if one else 's'} {_numbers(gap.numbers)}.",
            gap.span,
            _beside(context, gap),
            help=f"add “row {gap.numbers[0]}: …”, or an every-line for all rows of a side.",
        )
    for group in context.findings("row-missing"):
        expected, given = group[0].numbers
        yield context.problem(
            group,
            "a row of the piece is missing",
            f"The piece has come to row {expected:,}, and this line is row {given:,}.",
            help=f"give row {expected:,} first, or leave the number out: “row: …” is the next row.",
        )


def _beside(context: Context, gap: RowGap) -> tuple[Label, ...]:
    """The lines that give the rows before and after what is missing: one may have its number."""
    motif = next((m for m in context.pattern.motifs if m.name is gap.motif), None)
    rows = motif.rows if motif is not None else ()
    missing = set(gap.numbers)
    near: dict[Span, int] = {}
    for row in rows:
        if row.number + 1 in missing or row.number - 1 in missing:
            near.setdefault(row.place, row.number)
    return tuple(Label(place, f"gives row {number}") for place, number in list(near.items())[:3])


RULE = Rule(
    name="row-missing",
    severity=ERROR,
    title="a row is missing",
    what="The rows of a motif stand for themselves from row 1 to its last; a number that no line "
    "gives is a row that nobody can knit. In a piece the rows run on by themselves, and a number "
    "that is written must be the one that comes next.",
    wrong="""pattern "Gap"
motif ridge over n
  row 1: knit
  row 2: purl
  row 4: knit
piece swatch flat
  cast on 20
  work ridge x4
  bind off
""",
    right="""pattern "No gap"
motif ridge over n
  row 1: knit
  row 2: purl
  row 3: knit
  row 4: knit
piece swatch flat
  cast on 20
  work ridge x4
  bind off
""",
    check=check,
)
