"""edge-broken: a row whose outer stitches break the declared edge."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, count_of
from loopwright.check.edges import EdgeRow, breaks, edge_edits, outer, seed_phase
from loopwright.check.rule import Rule
from loopwright.count.walk import Worked
from loopwright.model.pattern import Edge, Motif
from loopwright.notation.source import Span
from loopwright.problem import ERROR, Fix, Label, Problem

_MEANS = {
    "garter": "knit in every row",
    "stockinette": "knit on the right side and purled on the wrong side",
    "slipped": "slipped at one end of each row and worked at the other",
    "seed": "knit and purl by turns, beside and above one another",
}

_WANT = {
    "slipped": "sl1 at its beginning and k1 at its end, with k and p beside them",
    "seed": "k1 p1 by turns, against the row below",
}


def check(context: Context) -> Iterator[Problem]:
    said: set[Span] = set()
    for motif in context.pattern.motifs:
        if motif.edge is not None:
            rows = _of_motif(motif)
            yield from _check(context, motif.edge, rows, motif.name.text, said)
    for piece in context.pattern.pieces:
        if piece.edge is None:
            continue
        for walk in context.walks_of(piece)[:1]:
            rows = []
            for event in walk.events:
                if not isinstance(event, Worked):
                    continue
                if event.motif is not None and event.motif.edge is not None:
                    continue  # the motif's own edge stands
                for index, entry in enumerate(event.chunk.entries):
                    rs = event.round or (event.rs == (index % 2 == 0))
                    rows.append(EdgeRow(entry.row, rs, event.first_row + index))
                    if len(event.chunk.entries) == 1 and event.rows > 1 and not event.round:
                        # One line worked several times falls on both sides.
                        rows.append(EdgeRow(entry.row, not rs, event.first_row + 1))
            yield from _check(context, piece.edge, rows, piece.name.text, said)


def _of_motif(motif: Motif) -> list[EdgeRow]:
    rows = [EdgeRow(row, motif.is_rs(row.number), row.number) for row in motif.rows]
    if len(rows) == 1 and not motif.in_round:
        rows.append(EdgeRow(rows[0].row, not rows[0].rs, 2))
    return rows


def _check(
    context: Context, edge: Edge, rows: list[EdgeRow], name: str, said: set[Span]
) -> Iterator[Problem]:
    if edge.kind not in _MEANS:
        return  # said by unknown-name
    phases: dict[str, bool] = {}
    for item in rows:
        row = item.row
        if row.body.broken or row.place in said:
            continue
        for size in range(len(context.sizes)):
            count = min(edge.count.at(size), 64)
            place = breaks(edge.kind, count, item, size)
            if place is None and edge.kind == "seed":
                place = _out_of_turn(item, size, phases)
            if place is not None:
                said.add(row.place)
                sure = _others_keep(edge, rows, item, count)
                seed = _seed_wanted(item, place, count, size, phases)
                yield _problem(edge, item, place, count, size, name, seed, sure)
                break


def _others_keep(edge: Edge, rows: list[EdgeRow], item: EdgeRow, count: int) -> bool:
    """Whether every other row keeps the edge, and this row's line is worked on one side only."""
    body = item.row.body
    others = [other for other in rows if other.row.body is not body]
    return (
        bool(others)
        and len(set(edge.count.values)) == 1
        and all(breaks(edge.kind, count, other, 0) is None for other in others)
        and all(other.rs == item.rs for other in rows if other.row.body is body)
    )


def _out_of_turn(item: EdgeRow, size: int, phases: dict[str, bool]) -> str | None:
    """A seed edge that repeats the row below it instead of changing."""
    for place in ("beginning", "end"):
        face = seed_phase(item, place, size)
        if face is None:
            continue
        side = place if item.rs else {"beginning": "end", "end": "beginning"}[place]
        turn = face == (item.number % 2 == 1)
        if phases.setdefault(side, turn) != turn:
            return place
    return None


def _seed_wanted(item: EdgeRow, place: str, count: int, size: int, phases: dict[str, bool]) -> str:
    """The stitches of a seed edge at this place of the row, as they are worked: ``p1 k1``.

    The outermost stitch goes by the rows that were right before; where there is none, by the
    row's own outermost stitch.
    """
    side = place if item.rs else {"beginning": "end", "end": "beginning"}[place]
    turn = phases.get(side)
    own = seed_phase(item, place, size)
    face = (turn == (item.number % 2 == 1)) if turn is not None else own is not False
    signs = ["k1" if (face == item.rs) == (stitch % 2 == 0) else "p1" for stitch in range(count)]
    shown = signs if place == "beginning" else signs[::-1]
    return " ".join(shown[:8]) + (" …" if count > 8 else "")


def _problem(
    edge: Edge,
    item: EdgeRow,
    place: str,
    count: int,
    size: int,
    name: str,
    seed: str,
    sure: bool,
) -> Problem:
    row = item.row
    items = outer(row.body.steps, count, size, place == "end")
    signs = [i.sign if i.sign != "?" else "another stitch" for i in items]
    shown = signs if place == "beginning" else signs[::-1]
    side = "right" if item.rs else "wrong"
    label = f"row {row.number} of “{name}”" if row.number else f"this row of “{name}”"
    verb = "begins" if place == "beginning" else "ends"
    span = row.at(row.span) if row.as_row else row.in_body(row.body.span)
    does = f"{verb} with {' '.join(shown)}"
    help = f"work {_WANT.get(edge.kind, '')}."
    if edge.kind == "slipped":
        does, help = _slipped(item, size, does)
    elif edge.kind == "seed":
        help = f"{verb.removesuffix('s')} it with {seed}, against the row below."
    else:
        want = f"{'k' if edge.kind == 'garter' or item.rs else 'p'}{count}"
        help = f"{verb.removesuffix('s')} it with {want}."
    edits = edge_edits(edge.kind, count, item) if sure else None
    return Problem(
        "edge-broken",
        ERROR,
        f"the row breaks the {edge.kind} edge",
        f"The {edge.kind} edge is {count_of(count, 'stitch')} wide: {_MEANS[edge.kind]}. "
        f"{label[0].upper()}{label[1:]}, a {side}-side row, {does}.",
        span,
        (Label(edge.span, "the edge"),),
        help,
        (),
        Fix(f"work the {edge.kind} edge in {label}", edits) if edits else None,
    )


def _slipped(item: EdgeRow, size: int, does: str) -> tuple[str, str]:
    """What a row does at both its ends, where both or neither of them is slipped."""
    first, last = (outer(item.row.body.steps, 1, size, end) for end in (False, True))
    ends = [items[0].sign if items else "nothing" for items in (first, last)]
    if ends.count("sl") == 2:
        return (
            "slips its first stitch and its last",
            "slip one of the two and work the other: sl1 at its beginning, k1 or p1 at its end.",
        )
    if "sl" not in ends:
        return (
            f"begins with {_named(ends[0])} and ends with {_named(ends[1])}: neither is slipped",
            "slip one of the two: sl1 at its beginning, and the last stitch worked.",
        )
    return does, f"work {_WANT['slipped']}."


def _named(sign: str) -> str:
    return "another stitch" if sign == "?" else sign


RULE = Rule(
    name="edge-broken",
    severity=ERROR,
    title="the row breaks the edge",
    what="An “edge” line promises that the outer stitches of both sides are the same in every "
    "row, on the right side and on the wrong side. This row works them otherwise.",
    wrong="""pattern "Broken edge"
motif panel over n + 4
  edge 2 garter
  row 1: knit
  row 2: k2 * p1 * p2
piece swatch flat
  cast on 20
  work panel x4
  bind off
""",
    right="""pattern "Whole edge"
motif panel over n + 4
  edge 2 garter
  row 1: knit
  row 2: k2 * p1 * k2
piece swatch flat
  cast on 20
  work panel x4
  bind off
""",
    check=check,
)
