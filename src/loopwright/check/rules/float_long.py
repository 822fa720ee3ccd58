"""float-long: the yarn passes more slipped stitches than it should."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, count_of
from loopwright.check.floats import Float, longest_float
from loopwright.check.limits import float_limit
from loopwright.check.rule import Rule
from loopwright.count.columns import is_sized
from loopwright.model.pattern import Motif, PieceRow, Row
from loopwright.problem import WARNING, Problem


def check(context: Context) -> Iterator[Problem]:
    pattern = context.pattern
    slipping = context.slipping
    if not slipping:
        return
    rows: list[tuple[Row, Motif | None]] = [(r, m) for m in pattern.motifs for r in m.rows]
    rows += [(i.row, None) for p in pattern.pieces for i in p.items if isinstance(i, PieceRow)]
    seen: dict[tuple[int, int], list[tuple[int, Float]]] = {}
    for row, motif in rows:
        body = row.body
        if id(body) not in slipping or row.as_row is not None:
            continue  # a row worked as another one: said there
        limit, stitch = float_limit(pattern, motif)
        key = (id(body), limit)
        if key not in seen:
            sizes = range(len(context.sizes)) if is_sized(body) else (0,)
            found = ((size, longest_float(body, size)) for size in sizes)
            seen[key] = [(s, f) for s, f in found if f is not None and f.stitches > limit]
        if seen[key]:
            yield _problem(context, row, motif, seen[key], limit, stitch)


def _problem(
    context: Context,
    row: Row,
    motif: Motif | None,
    long: list[tuple[int, Float]],
    limit: int,
    stitch: float | None,
) -> Problem:
    most = max((found for _, found in long), key=lambda one: one.stitches)
    word = "round" if row.round else "row"
    who = f"{word.capitalize()} {row.number} of {motif.name.text}" if motif else f"This {word}"
    passed, borne = count_of(most.stitches, "stitch"), count_of(limit, "stitch")
    wide = wide_limit = ""
    if stitch is not None:
        wide = f", about {most.stitches * stitch / 10:.3g} cm at the gauge"
        wide_limit = " (2.5 cm, an inch)"
    return Problem(
        "float-long",
        WARNING,
        f"the yarn passes {passed}",
        f"{who} slips {passed} on end, so the yarn lies past them loose{wide}. A float longer than "
        f"{borne}{wide_limit} catches on fingers and buttons, or pulls the row in.",
        row.in_body(most.span),
        (),
        f"work a stitch between the slips, or write “bound float {most.stitches} stitches” in the "
        "pattern if the long floats are meant.",
        context.size_names(size for size, _ in long) if is_sized(row.body) else (),
    )


RULE = Rule(
    name="float-long",
    severity=WARNING,
    title="the yarn passes many slipped stitches",
    what="Where stitches are slipped one after another the yarn passes them in a float. Longer "
    "than an inch (common practice; in stitches at the stated gauge, 5 where none is stated) it "
    "snags or pulls. Slips on end are counted across groups and from one unit of a fill into the "
    "next; a row that only slips is no float. “bound float 7 stitches” in the pattern sets "
    "another bound.",
    wrong="""pattern "Long floats"
motif tuck over 10n + 3
  row 1: k3 * sl7 wyif k3 *
  row 2: purl
piece swatch flat
  cast on 23
  work tuck x4
  bind off
""",
    right="""pattern "Short floats"
motif tuck over 8n + 3
  row 1: k3 * sl5 wyif k3 *
  row 2: purl
piece swatch flat
  cast on 27
  work tuck x4
  bind off
""",
    check=check,
)
