"""slip-long: the same stitch slipped in more rows on end than the fabric bears."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, count_of
from loopwright.check.limits import is_thick, slip_limit
from loopwright.check.rule import Rule
from loopwright.count.columns import SlipRun, is_sized, lay_out, narrow, slip_runs
from loopwright.count.walk import Walk, Worked
from loopwright.model.pattern import Motif, Row
from loopwright.problem import WARNING, Label, Problem
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class _Run:
    """Rows worked one after another: those of a motif `reps` times, or a piece's own."""

    rows: tuple[Row, ...]
    motif: Motif | None
    reps: int
    count: int
    rs: bool
    round: bool


@dataclass(frozen=True, slots=True)
class _Long:
    """The longest run of slips that is too long; `since` is the row that slips first."""

    run: SlipRun
    row: Row
    since: Row
    limit: int
    thick: bool
    whole: bool


def check(context: Context) -> Iterator[Problem]:
    slipping = context.slipping
    if not slipping:
        return
    enough = _enough(context)
    memo: dict[tuple[object, ...], _Long | None] = {}
    found: dict[tuple[int, int], tuple[_Long, Motif | None, set[int]]] = {}
    for walk in context.walks:
        for run in _runs(walk, slipping, enough):
            bodies = {id(row.body): row.body for row in run.rows}
            sized = any(is_sized(body) for body in bodies.values())
            key = (*map(id, run.rows), run.reps, run.count, run.rs, run.round, sized and walk.size)
            if key not in memo:
                memo[key] = _longest(context, run, walk.size)
            long = memo[key]
            if long is None:
                continue
            place = (long.row.place.start, long.run.cell.step.span.start)
            found.setdefault(place, (long, run.motif, set()))[2].add(walk.size)
    for long, motif, sizes in found.values():
        yield _problem(context, long, motif, sizes)


def _runs(walk: Walk, slipping: set[int], enough: int) -> Iterator[_Run]:
    """The runs of a walk in which something is slipped."""
    own: list[Row] = []
    head: Worked | None = None
    for event in walk.events:
        is_row = isinstance(event, Worked) and event.motif is None
        if not is_row and head is not None:
            yield from _own(own, head, slipping)
            own, head = [], None
        if not isinstance(event, Worked) or any(e.misfit for e in event.chunk.entries):
            continue
        rows = tuple(entry.row for entry in event.chunk.entries)
        start = event.chunk.entries[0].start.at(0)
        if is_row:
            if head is None or head.round != event.round:
                if head is not None:
                    yield from _own(own, head, slipping)
                own, head = [], event
            own += rows * min(event.rows, enough)
            continue
        if not any(id(row.body) in slipping for row in rows):
            continue
        reps = min(event.chunk.reps, -(-enough // len(rows)) + 1)
        yield _Run(rows, event.motif, reps, start, event.rs, event.round)
    if head is not None:
        yield from _own(own, head, slipping)


def _own(rows: list[Row], head: Worked, slipping: set[int]) -> Iterator[_Run]:
    if any(id(row.body) in slipping for row in rows):
        start = head.chunk.entries[0].start.at(0)
        yield _Run(tuple(rows), None, 1, start, head.rs, head.round)


def _enough(context: Context) -> int:
    """Rows after which a run that is too long has shown itself, and a few more."""
    return min(max(slip_limit(context.pattern, s) for s in _keys(context)) + 4, 10_000)


def _keys(context: Context) -> list[str | None]:
    return [None, *(strand.name.key for strand in context.pattern.strands)]


def _longest(context: Context, run: _Run, size: int) -> _Long | None:
    pattern = context.pattern
    tapes = [context.tapes.of(row.body, size) for row in run.rows]
    narrowed = narrow(tapes, run.count)
    if narrowed is None:
        return None
    laid = None
    for reps in dict.fromkeys((run.reps, 1)):
        laid = lay_out(run.rows, tapes, size, narrowed[0], reps, run.rs, run.round)
        if laid is not None:
            break
    if laid is None:
        return None
    strands: list[str | None] = []
    current = pattern.strands[0].name.key if len(pattern.strands) == 1 else None
    for row in laid:
        current = row.row.strand.key if row.row.strand is not None else current
        strands.append(current)
    worst: _Long | None = None
    for one in slip_runs(laid, strands):
        limit = slip_limit(pattern, one.strand or (current if len(pattern.strands) == 1 else None))
        if one.length <= limit or (worst is not None and one.length <= worst.run.length):
            continue
        worst = _Long(
            one,
            laid[one.at].row,
            laid[one.at - one.length + 1].row,
            limit,
            is_thick(pattern, one.strand),
            one.length == len(laid) and run.motif is not None and run.reps > 1,
        )
    return worst


def _problem(context: Context, long: _Long, motif: Motif | None, sizes: set[int]) -> Problem:
    length = count_of(long.run.length, "row")
    of = f" of {motif.name.text}" if motif is not None else ""
    word = "round" if long.row.round else "row"
    length = length.replace("row", word)
    if long.whole:
        message = f"Every {word}{of} slips this stitch, so it is never worked while the motif runs"
    elif motif is not None:
        message = (
            f"{word.capitalize()} {long.row.number}{of} slips a stitch that has been slipped since "
            f"{word} {long.since.number}: {length} on end"
        )
    else:
        message = f"This {word} slips a stitch that is now slipped in {length} on end"
    thick = " in this thick yarn" if long.thick else ""
    message += (
        f". One loop then spans them all; more than {count_of(long.limit, word)}{thick} pull the "
        "fabric together."
    )
    labels: tuple[Label, ...] = ()
    if long.since.place != long.row.place:
        labels = (Label(long.since.place, "slipped from here on"),)
    return Problem(
        "slip-long",
        WARNING,
        f"a stitch is slipped in {'every ' + word if long.whole else length + ' on end'}",
        message,
        long.row.in_body(long.run.cell.step.span) if long.row.as_row is None else long.row.place,
        labels,
        f"work the stitch in one of these {word}s"
        + (
            "."
            if long.whole
            else "; or, if the fabric is meant to gather, write “bound slip "
            f"{long.run.length} rows” in the pattern."
        ),
        context.size_names(sizes),
    )


RULE = Rule(
    name="slip-long",
    severity=WARNING,
    title="a stitch is slipped in many rows on end",
    what="A slipped stitch is stretched over the rows in which it is slipped. It bears 2 rows on "
    "end, or 4 in a thick yarn (weight 5 and up); over more the fabric puckers. Every stitch is "
    "followed from row to row, on both sides and from one repeat of a motif into the next. “bound "
    "slip 6 rows” in the pattern sets another bound. Rows with several fills between markers are "
    "not followed, nor more than some ten "
    "thousand rows of a piece written one by one, nor a stitch from one item of the piece into a "
    "motif.",
    wrong="""pattern "Puckered"
motif tuck over 4n + 3
  row 1: k1 sl1 * k3 sl1 * k1
  row 2: k1 sl1 wyif * k3 sl1 wyif * k1
  row 3: k1 sl1 * k3 sl1 * k1
  row 4: k1 * p1 * k1
piece swatch flat
  cast on 23
  work tuck x4
  bind off
""",
    right="""pattern "Flat"
motif tuck over 4n + 3
  row 1: k1 sl1 * k3 sl1 * k1
  row 2: k1 sl1 wyif * k3 sl1 wyif * k1
  row 3: knit
  row 4: k1 * p1 * k1
piece swatch flat
  cast on 23
  work tuck x4
  bind off
""",
    check=check,
)
