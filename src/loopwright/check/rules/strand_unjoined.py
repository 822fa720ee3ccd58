"""strand-unjoined: nobody knows with which strand."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context
from loopwright.check.rule import Rule
from loopwright.model.pattern import BindOff, CastOn, Piece, PieceRow, Work
from loopwright.notation.source import Span
from loopwright.problem import WARNING, Label, Problem


def check(context: Context) -> Iterator[Problem]:
    if len(context.pattern.strands) < 2:
        return
    for piece in context.pattern.pieces:
        found = _first_unknown(piece)
        if found is not None:
            what, span, labels = found
            names = [strand.name.text for strand in context.pattern.strands]
            text = f": {', '.join(names)}" if len(names) <= 6 else ""
            yield Problem(
                "strand-unjoined",
                WARNING,
                "nobody knows with which strand",
                f"{what} of “{piece.name.text}” names no strand, and none has been named in the "
                f"piece before it. The pattern has {len(names)} strands{text}.",
                span,
                labels,
                f"say which: “in {names[0]}”. Rows after it that name none go on with that strand.",
            )


def _first_unknown(piece: Piece) -> tuple[str, Span, tuple[Label, ...]] | None:
    """The first thing worked without a strand, before any strand is named."""
    for item in piece.items:
        if isinstance(item, CastOn) and item.strand is None:
            continue  # it is cast on with what the first row names
        if isinstance(item, CastOn | BindOff):
            return None if item.strand is not None else ("The bind-off", item.span, ())
        if isinstance(item, PieceRow):
            return None if item.row.strand is not None else ("The row", item.span, ())
        if isinstance(item, Work):
            if item.motif is None or not item.motif.rows:
                return None
            row = item.motif.rows[0]
            if row.strand is not None:
                return None
            return f"Row 1 of {item.motif.name.text}", row.place, (Label(item.span, "worked here"),)
        if getattr(item, "text", None) is None:
            return None  # something else is worked first: not certain
    return None


RULE = Rule(
    name="strand-unjoined",
    severity=WARNING,
    title="nobody knows with which strand",
    what="In a pattern of several strands the first thing that is worked in a piece must name its "
    "strand; what follows goes on with the strand named last. Where none has been named yet, the "
    "knitter cannot know which ball to join. A cast-on that names none is worked "
    "with the strand of the first row.",
    wrong="""pattern "Which ball"
strand A
strand B
piece swatch flat
  cast on 20
  rows 2: knit
  rows 2 in A: knit
  rows 2 in B: knit
  bind off in B
""",
    right="""pattern "This ball"
strand A
strand B
piece swatch flat
  cast on 20 in A
  rows 2: knit
  rows 2 in B: knit
  bind off
""",
    check=check,
)
