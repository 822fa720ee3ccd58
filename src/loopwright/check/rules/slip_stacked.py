"""slip-stacked: rows whose slips should alternate slip the same stitches."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from loopwright.check.context import Context, count_of, listed
from loopwright.check.rule import Rule
from loopwright.count.columns import SlipRow, slip_rows
from loopwright.count.walk import Worked
from loopwright.model.body import same_body
from loopwright.model.pattern import Motif
from loopwright.problem import ADVICE, Label, Problem

_SHOWN = 6


def check(context: Context) -> Iterator[Problem]:
    slipping = context.slipping
    if not slipping:
        return
    worked: dict[int, tuple[int, int]] = {}
    for walk in context.walks:
        for event in walk.events:
            if isinstance(event, Worked) and event.motif is not None and event.chunk.entries:
                count = event.chunk.entries[0].start.at(0)
                worked.setdefault(id(event.motif), (count, walk.size))
    for motif in context.pattern.motifs:
        found = worked.get(id(motif))
        if found is None or not any(id(row.body) in slipping for row in motif.rows):
            continue
        yield from _check(context, motif, *found)


def _check(context: Context, motif: Motif, count: int, size: int) -> Iterator[Problem]:
    tapes = [context.tapes.of(row.body, size) for row in motif.rows]
    rs = motif.is_rs(1)
    laid = slip_rows(motif.rows, tapes, size, count, rs, motif.in_round)
    if laid is None:
        return
    rows, unit = laid
    bands = _bands(rows)
    pair = _odd_pair(bands)
    if pair is None:
        return
    first, second = pair
    one, other = first[0].row, second[0].row
    strands = {row.row.strand.key for row in (first[0], second[0]) if row.row.strand is not None}
    turn = "the strands take turns" if len(strands) == 2 else "the rows are written as a pair"
    if len(bands) > 2:
        turn = "the slips of the other rows take turns"
    yield Problem(
        "slip-stacked",
        ADVICE,
        "slips that should take turns stand above one another",
        f"Rows {one.number} and {other.number} of {motif.name.text} slip the same stitches, though "
        f"{turn}. {_columns(rows, unit)}",
        other.in_body(other.body.span) if other.as_row is None else other.place,
        (Label(one.in_body(one.body.span), "slips the same stitches"),),
        f"shift the slips of row {other.number} (or of row {one.number}); if they are to stand "
        f"above one another, write row {other.number} as “as row {one.number}”.",
    )


def _bands(rows: tuple[SlipRow, ...]) -> list[list[SlipRow]]:
    """Rows that slip, those on end that slip the same stitches together."""
    bands: list[list[SlipRow]] = []
    before: SlipRow | None = None
    for row in rows:
        if row.columns:
            if before is not None and before.columns == row.columns:
                bands[-1].append(row)
            else:
                bands.append([row])
        before = row
    return bands


def _odd_pair(bands: list[list[SlipRow]]) -> tuple[list[SlipRow], list[SlipRow]] | None:
    """Two bands, one after the other, that slip the same and were hardly meant to."""
    if len(bands) < 2:
        return None
    for one, other in pairwise(bands):
        # Written with its slip at another place, and yet on the same stitches.
        a, b = one[0], other[0]
        if a.columns == b.columns and a.rs == b.rs and a.written != b.written:
            if "s" in a.written and "s" in b.written:
                return one, other
    sets = [band[0].columns for band in bands]
    if len(bands) == 2:
        up, down = bands[0][0].row, bands[1][0].row
        strands = {s.key for s in (up.strand, down.strand) if s is not None}
        typed = down.as_row is None and up.as_row is None and up.base != down.base
        same = sets[0] == sets[1] and same_body(up.body, down.body)
        if same and typed and len(strands) == 2:
            return bands[0], bands[1]
        return None
    kinds = set(sets)
    if len(kinds) != 2 or len(sets) % 2 or len(sets) < 4:
        return None
    # One band changed makes them take turns: that one is the slip of the keys.
    for start in kinds:
        wanted = [start if i % 2 == 0 else next(iter(kinds - {start})) for i in range(len(sets))]
        wrong = [i for i, (has, want) in enumerate(zip(sets, wanted, strict=True)) if has != want]
        if len(wrong) == 1:
            at = wrong[0]
            odd, before = bands[at][0].row, bands[at - 1 if at else 1][0].row
            if odd.as_row is not None or odd.base == before.base:
                return None  # written as another row: meant so
            return (bands[at - 1], bands[at]) if at else (bands[1], bands[0])
    return None


def _columns(rows: tuple[SlipRow, ...], unit: int) -> str:
    """What each column of a repeat does, counted from its right."""
    parts: list[str] = []
    for column in range(min(unit, _SHOWN)):
        numbers = [str(row.row.number) for row in rows if column in row.columns]
        verb = f"is slipped in row{'s' if len(numbers) > 1 else ''} {listed(numbers)}"
        parts.append(f"stitch {column + 1} {verb if numbers else 'is always worked'}")
    more = f", and so on for {unit - _SHOWN} more" if unit > _SHOWN else ""
    return (
        f"Of every {count_of(unit, 'stitch')} from the right edge, seen from the right side, "
        f"{listed(parts)}{more}."
    )


RULE = Rule(
    name="slip-stacked",
    severity=ADVICE,
    title="slips that should take turns stand above one another",
    what="In a slipped texture the slips of one row mostly stand between those of the next such "
    "row. Where two rows slip the same stitches though they are written as a pair (the fill begins "
    "elsewhere, or the strands take turns, or all other rows alternate), one of them was probably "
    "typed wrong: the slipped stitches stack up in ribs and half of the fabric is never slipped. "
    "Patterns that stack their slips everywhere, such as a slipped rib or a heel, are left alone; "
    "so are rows given together (“rows 1, 3”) or as one another (“as row 1”).",
    wrong="""pattern "Not woven"
strand A
strand B
motif woven over 2n + 4
  row 1 in B: k2 * sl1 wyif k1 * k2
  row 2 in B: k2 * p1 * k2
  row 3 in A: k3 * k1 sl1 wyif * k1
  row 4 in A: as row 2
piece swatch flat
  cast on 24 in A
  rows 2 in A: knit
  work woven x4
  bind off in A
""",
    right="""pattern "Woven"
strand A
strand B
motif woven over 2n + 4
  row 1 in B: k2 * sl1 wyif k1 * k2
  row 2 in B: k2 * p1 * k2
  row 3 in A: k2 * k1 sl1 wyif * k2
  row 4 in A: as row 2
piece swatch flat
  cast on 24 in A
  rows 2 in A: knit
  work woven x4
  bind off in A
""",
    check=check,
)
