"""holder-empty: stitches are taken where none wait."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, count_of
from loopwright.check.rule import Rule
from loopwright.notation.near import nearest
from loopwright.problem import ERROR, Label, Problem


def check(context: Context) -> Iterator[Problem]:
    for group in context.findings("holder-empty"):
        first = group[0]
        name = first.name
        labels: tuple[Label, ...] = ()
        help = f"write “hold 12 as {name}” where the stitches are put aside, before this line."
        if first.detail == "taken":
            text = (
                f"{count_of(first.numbers[0], 'stitch')} waited under the name “{name}”, but an "
                "earlier line has taken them already."
            )
            help = "take them once only, or hold others under a name of their own."
            if first.other is not None:
                labels = (Label(first.other, "put aside here"),)
        elif first.detail == "piece":
            text = (
                f"The piece “{name}” has no live stitches here: it is bound off, or it stands "
                "further down in the file."
            )
            help = f"end “{name}” with “leave live”, and let it stand before this piece."
        else:
            text = f"No stitches wait under the name “{name}”."
            close = nearest(name, _names(context))
            if close is not None:
                help = f"did you mean “{close}”?"
        yield context.problem(
            group, "no stitches wait under this name", text, help=help, labels=labels
        )


def _names(context: Context) -> list[str]:
    """The names under which stitches are put aside somewhere in the file."""
    from loopwright.model.body import specials_of
    from loopwright.model.pattern import Hold, LeaveLive, PieceRow

    found: list[str] = []
    for piece in context.pattern.pieces:
        for item in piece.items:
            if isinstance(item, Hold):
                found.append(item.name.key)
            elif isinstance(item, LeaveLive):
                found.append(piece.name.key)
            elif isinstance(item, PieceRow):
                steps = specials_of(item.row.body.steps)
                found += [s.name.key for s in steps if s.kind == "hold" and s.name is not None]
    return found


RULE = Rule(
    name="holder-empty",
    severity=ERROR,
    title="no stitches wait under this name",
    what="“take” and “join” bring stitches back onto the needle that an earlier line has held, or "
    "that an earlier piece has left live. Where none wait under that name, or they were taken "
    "before, there is nothing to work.",
    wrong="""pattern "Thumbless"
piece mitten round
  cast on 40
  rounds 20: knit
  bind off
piece thumb round
  take thumb
  rounds 10: knit
  bind off
""",
    right="""pattern "Mitten with a thumb"
piece mitten round
  cast on 40
  rounds 10: knit
  round: k14 hold 12 as thumb co12 k14
  rounds 9: knit
  bind off
piece thumb round
  take thumb
  rounds 10: knit
  bind off
""",
    check=check,
)
