"""carry-long: a strand carried up the edge over more rows than is neat."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, count_of
from loopwright.check.limits import carry_limit
from loopwright.check.rule import Rule
from loopwright.check.strand_words import alike, called_at, strand_name
from loopwright.count.strands import Pickup
from loopwright.problem import ADVICE, Label, Problem


def check(context: Context) -> Iterator[Problem]:
    if len(context.pattern.strands) < 2:
        return
    limit = carry_limit(context.pattern)
    found: dict[tuple[int, str], tuple[Pickup, set[int]]] = {}
    for walks in alike(context.walks):
        for up in context.pickups_of(walks[0]):
            if up.told or up.rested <= limit:
                continue
            key = (up.was.start, up.strand)
            longest, sizes = found.setdefault(key, (up, set()))
            sizes.update(walk.size for walk in walks)
            if up.rested > longest.rested:
                found[key] = (up, sizes)
    for up, sizes in found.values():
        yield _problem(context, up, sizes, limit)


def _problem(context: Context, up: Pickup, sizes: set[int], limit: int) -> Problem:
    name = strand_name(context.pattern, up.strand)
    since = "since the cast-on" if up.last == 0 else f"since row {up.last:,}"
    most = " at most" if len(sizes) > 1 else ""
    return Problem(
        "carry-long",
        ADVICE,
        f"strand {name} rests for {count_of(up.rested, 'row')}",
        f"{called_at(up)} takes strand {name} up again, which has rested {since}: it would be "
        f"carried up the edge over {count_of(up.rested, 'row')}{most}, and more than "
        f"{count_of(limit, 'row')} pull the edge in or hang in loops.",
        up.place,
        (Label(up.was, f"{name} was used here"),) if up.was != up.place else (),
        f"tell the knitter what becomes of it: note “Cut {name} and join it again.”, or twist it "
        f"with the working strand on the way; or write “bound carry {up.rested} rows” in the "
        "pattern.",
        context.size_names(sizes),
    )


RULE = Rule(
    name="carry-long",
    severity=ADVICE,
    title="a strand is carried up the edge over many rows",
    what="A strand that rests between two uses is carried up the edge. Over more than 8 rows "
    "(common practice: about an inch) that shows, pulls the edge in or leaves loops, so the "
    "pattern should say whether to cut it or how to catch it. A strand that is never used again is "
    "just cut. A note between the two uses that speaks of it settles it; “bound carry 12 rows” in "
    "the pattern sets another bound.",
    wrong="""pattern "Broad stripes"
strand A
strand B
piece swatch flat
  cast on 20 in A
  rows 2 in A: knit
  rows 12 in B: knit
  rows 2 in A: knit
  bind off in A
""",
    right="""pattern "Broad stripes"
strand A
strand B
piece swatch flat
  cast on 20 in A
  rows 2 in A: knit
  rows 12 in B: knit
  note "Cut A at the first stripe and join it again here."
  rows 2 in A: knit
  bind off in A
""",
    check=check,
)
