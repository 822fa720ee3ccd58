"""edge-odd-one-out: no edge declared, but one row's border differs from all the others'."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, count_of, listed
from loopwright.check.edges import MAX_INFERRED, EdgeRow, breaks, edge_edits, fixed_at_both_ends
from loopwright.check.rule import Rule
from loopwright.model.pattern import Motif
from loopwright.problem import WARNING, Fix, Problem

_KINDS = ("garter", "slipped", "stockinette")


def check(context: Context) -> Iterator[Problem]:
    for motif in context.pattern.motifs:
        if motif.edge is None and not motif.in_round and len(motif.rows) >= 4:
            yield from _look(motif)


def _look(motif: Motif) -> Iterator[Problem]:
    if any(row.body.broken for row in motif.rows):
        return
    distinct: dict[tuple[int, bool], EdgeRow] = {}
    numbers: dict[tuple[int, bool], list[int]] = {}
    for row in motif.rows:
        key = (id(row.body), motif.is_rs(row.number))
        distinct.setdefault(key, EdgeRow(row, key[1], row.number))
        numbers.setdefault(key, []).append(row.number)
    rows = [(item, len(numbers[key])) for key, item in distinct.items()]
    total = len(motif.rows)
    best: tuple[int, int, int, str, list[tuple[EdgeRow, str]]] | None = None
    for kind in _KINDS:
        for count in range(1, MAX_INFERRED + 1):
            odd: list[tuple[EdgeRow, str]] = []
            witnesses = 0
            for item, times in rows:
                place = breaks(kind, count, item, 0)
                if place is not None:
                    odd += [(item, place)] * times
                    if len(odd) > 2:
                        break
                elif fixed_at_both_ends(item, count, 0):
                    witnesses += times
            # The border must be written out in most rows to be one; one or two may fall out.
            if len(odd) > 2 or len(odd) * 4 > total:
                break  # a row that breaks a border breaks every wider one
            if witnesses * 3 < total * 2:
                continue
            if not odd:
                if best is None or count >= best[2]:
                    best = (witnesses, 0, count, kind, [])
                continue
            found = (witnesses, -len(odd), count, kind, odd)
            if best is None or best[:3] < found[:3]:
                if best is None or best[4] or count > best[2]:
                    best = found
    if best is None or not best[4]:
        return
    _, _, count, kind, odd = best
    bad_numbers = {
        n for key, item in distinct.items() if any(item is b for b, _ in odd) for n in numbers[key]
    }
    others = [str(row.number) for row in motif.rows if row.number not in bad_numbers][:12]
    odd = list({bad.number: (bad, place) for bad, place in odd}.values())
    for bad, place in odd:
        row = bad.row
        span = row.at(row.span) if row.as_row else row.in_body(row.body.span)
        yield Problem(
            "edge-odd-one-out",
            WARNING,
            "one row's border differs from the others'",
            f"Rows {listed(others)} of “{motif.name.text}” have a border of "
            f"{count_of(count, 'stitch')} in {kind}; row {row.number} breaks it at its {place}.",
            span,
            help=f"work the border there too, and declare it: “edge {count} {kind}”.",
            fix=_fix(motif, kind, count, odd),
        )


def _fix(motif: Motif, kind: str, count: int, odd: list[tuple[EdgeRow, str]]) -> Fix | None:
    """The border worked there too, where it is one row that all the others differ from."""
    if len(odd) != 1 or kind == "slipped":
        return None
    item = odd[0][0]
    others = [row for row in motif.rows if row is not item.row]
    keep = all(
        row.body is not item.row.body
        and fixed_at_both_ends(other := EdgeRow(row, motif.is_rs(row.number), row.number), count, 0)
        and breaks(kind, count, other, 0) is None
        for row in others
    )
    edits = edge_edits(kind, count, item) if keep else None
    return Fix(f"work the {kind} border in row {item.number}", edits) if edits else None


RULE = Rule(
    name="edge-odd-one-out",
    severity=WARNING,
    title="one row's border differs from the others'",
    what="All rows of the motif but one or two have the same border, though no “edge” line "
    "declares it. A single row that works the outer stitches otherwise is mostly a slip.",
    wrong="""pattern "Odd border"
motif panel over 2n + 4
  row 1: k2 * sl1 wyif k1 * k2
  row 2: k2 * p1 * k2
  row 3: k2 * k1 sl1 wyif * k2
  row 4: k2 * p1 * p2
piece swatch flat
  cast on 20
  work panel x4
  bind off
""",
    right="""pattern "Even border"
motif panel over 2n + 4
  row 1: k2 * sl1 wyif k1 * k2
  row 2: k2 * p1 * k2
  row 3: k2 * k1 sl1 wyif * k2
  row 4: k2 * p1 * k2
piece swatch flat
  cast on 20
  work panel x4
  bind off
""",
    check=check,
)
