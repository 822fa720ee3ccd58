"""strand-far-side: a strand is called for at the edge where it does not hang."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, listed
from loopwright.check.rule import Rule
from loopwright.check.strand_words import alike, called_at, strand_name
from loopwright.count.strands import Pickup
from loopwright.problem import ERROR, Label, Problem

# Where rows lie otherwise than the writer meant, edges would only say it again.
_KEPT = 100

_SIDES_UNSURE = ("side-flip", "row-missing", "row-twice")


def check(context: Context) -> Iterator[Problem]:
    if len(context.pattern.strands) < 2:
        return
    found: dict[tuple[int, int], tuple[list[Pickup], set[int]]] = {}
    for walks in alike(context.walks):
        if any(f.rule in _SIDES_UNSURE for walk in walks for f in walk.findings):
            continue
        for up in context.pickups_of(walks[0]):
            if up.edge is None or up.hangs is None or up.edge == up.hangs:
                continue
            # One slip in a motif or an item of the piece turns all that follows in it.
            group = found.setdefault((id(walks[0].piece), up.index), ([], set()))
            if up.place not in {other.place for other in group[0][:_KEPT]}:
                group[0].append(up)
            group[1].update(walk.size for walk in walks)
    for ups, sizes in found.values():
        yield _problem(context, ups, sizes)


def _problem(context: Context, ups: list[Pickup], sizes: set[int]) -> Problem:
    up, rest = ups[0], ups[1:]
    name = strand_name(context.pattern, up.strand)
    side = "right" if up.edge == "right" else "wrong"
    since = "it was cast on with" if up.last == 0 else f"row {up.last:,}"
    message = (
        f"{called_at(up)} is a {side}-side row and begins at the {up.edge} edge, but strand "
        f"{name} hangs at the {up.hangs} edge since {since}."
    )
    if up.bind_off:
        message = message.replace(f"is a {side}-side row and begins", "begins", 1)
    if rest:
        others = listed(
            f"{strand_name(context.pattern, other.strand)} in row {other.row:,}"
            for other in rest[:4]
        )
        message += f" The same goes for {others}{' and more' if len(rest) > 4 else ''}."
    labels = (Label(up.was, f"{name} was used here"),) if up.was != up.place else ()
    return Problem(
        "strand-far-side",
        ERROR,
        f"strand {name} hangs at the other edge",
        message,
        up.place,
        labels,
        f"work an even number of rows with the other strand before {name} comes back; or slide "
        "the stitches to the other end of the needle, or break the yarn and join it again, and "
        f"say so in a note before the row (note “Cut {name} and join it again.”).",
        context.size_names(sizes),
    )


RULE = Rule(
    name="strand-far-side",
    severity=ERROR,
    title="a strand is called for at the edge where it does not hang",
    what="In flat work a strand hangs at the edge where its last row ended: at the left edge after "
    "a right-side row, at the right edge after a wrong-side row. A right-side row begins at the "
    "right edge, a wrong-side row at the left one, so a strand that rested for an odd number of "
    "rows is out of reach. In the round every strand waits at the round's start. A note between "
    "the two uses that says that the strand is cut, broken, joined again or that the stitches are "
    "slid settles it; so does a new cast-on.",
    wrong="""pattern "Three-row stripes"
strand A
strand B
piece swatch flat
  cast on 20 in A
  rows 3 in A: knit
  rows 3 in B: knit
  rows 2 in A: knit
  bind off in A
""",
    right="""pattern "Two-row stripes"
strand A
strand B
piece swatch flat
  cast on 20 in A
  rows 2 in A: knit
  rows 4 in B: knit
  rows 2 in A: knit
  bind off in A
""",
    check=check,
)
