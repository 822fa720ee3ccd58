"""holder-empty: stitches are taken where none wait."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, count_of, in_size
from loopwright.check.holders import failed, meant, put_aside
from loopwright.check.rule import Rule
from loopwright.count.walk import Finding
from loopwright.model.pattern import BindOff, LeaveLive
from loopwright.notation.near import nearest
from loopwright.problem import ERROR, Label, Problem


def check(context: Context) -> Iterator[Problem]:
    for group in context.findings("holder-empty"):
        first = group[0]
        said = _SAYS[first.detail](context, first)
        if said is not None:
            text, help, labels = said
            yield context.problem(
                group, "no stitches wait under this name", text, help=help, labels=labels
            )


Said = tuple[str, str, tuple[Label, ...]]


def _taken(context: Context, first: Finding) -> Said:
    labels = (Label(first.other, "put aside here"),) if first.other is not None else ()
    return (
        f"{count_of(first.numbers[0], 'stitch')}{in_size(context, first.size)} waited under the "
        f"name “{first.name}”, but an earlier line has taken them already.",
        "take them once only, or hold others under a name of their own.",
        labels,
    )


def _piece(context: Context, first: Finding) -> Said | None:
    """A piece that is asked for, and has no live stitches."""
    pieces = context.pattern.pieces
    name = first.name
    piece = next(p for p in pieces if p.name.key == name)
    if pieces.index(piece) > pieces.index(first.piece):
        return (
            f"The piece “{name}” stands further down in the file, so it is not knitted yet here.",
            f"let “{name}” stand before “{first.piece.name.text}”, and end it with “leave live”.",
            (Label(piece.span, "it stands here"),),
        )
    ends = [item for item in piece.items if isinstance(item, BindOff)]
    if any(isinstance(item, LeaveLive) for item in piece.items):
        if failed(context, piece, first.size):
            return None  # what is wrong in that piece is said there
        ends = []
    labels = (Label(ends[-1].span, "bound off here"),) if ends else ()
    why = "it is bound off" if ends else "it does not end with “leave live”"
    return (
        f"The piece “{name}” has no live stitches: {why}.",
        f"end “{name}” with “leave live” instead of “bind off”."
        if ends
        else f"end “{name}” with “leave live”.",
        labels,
    )


def _never(context: Context, first: Finding) -> Said | None:
    """A name that holds nothing: put aside later, misspelled, or never put aside."""
    name = first.name
    places = [place for place in put_aside(context.pattern) if place.name == name]
    before = [place for place in places if place.span < first.span]
    if any(failed(context, place.piece, first.size) for place in before):
        return None  # the line that puts them aside was not reached: said there
    if places:
        return (
            f"No stitches wait under the name “{name}” yet: they are put aside further down.",
            "put them aside before they are taken.",
            (Label(places[0].span, "put aside here"),),
        )
    text = f"No stitches wait under the name “{name}”."
    other = meant(context, first)
    if other is not None:
        text += (
            f" {count_of(other.numbers[0], 'stitch')} wait as “{other.name}” and are never taken."
        )
        return text, f"did you mean “{other.name}”?", (Label(other.span, "put aside here"),)
    close = nearest(name, [place.name for place in put_aside(context.pattern)])
    if close is not None:
        return text, f"did you mean “{close}”?", ()
    help = f"write “hold 12 as {name}” where the stitches are put aside, before this line."
    return text, help, ()


_SAYS = {"taken": _taken, "piece": _piece, "never": _never}


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
