"""Rows of a piece worked so many times: what happened, and what of it the rules must know."""

from __future__ import annotations

from loopwright.count.affine import Affine
from loopwright.count.progress import Progress
from loopwright.count.repeat import Chunk, Entry, Pair, Snag
from loopwright.count.tape import Tape
from loopwright.count.waiting import Waiting
from loopwright.count.walk import Worked
from loopwright.model.pattern import Motif, PieceRow, Row, Spread, Work
from loopwright.notation.bounds import MAX_NUMBER

Line = PieceRow | Work | Spread
"""A line of a piece that works rows."""

_RULES = {
    "short": "count-short",
    "over": "count-over",
    "uneven": "fill-uneven",
    "no-marker": "marker-missing",
    "marker-missed": "marker-missed",
    "past": "count-over",
    "no-gap": "fill-unclear",
    "trouble": "fill-unclear",
    "grown": "number-too-big",
}
"""The rule that says each kind of snag."""


def work_rows(
    so_far: Progress,
    index: int,
    item: Line,
    motif: Motif | None,
    rows: tuple[Row, ...],
    reps: int,
    part: int,
    following: Tape | None,
) -> bool:
    """Work `rows` `reps` times and the first `part` of them once more.

    `following` is the row that comes after. False where the piece cannot be walked further.
    """
    pairs = _with_holders(so_far, [(row, so_far.tape(row)) for row in rows], reps, part)
    if pairs is None:
        return False
    back = _runs_back(so_far, pairs, reps * len(pairs) + part)
    if back is not None and not so_far.unsure:
        so_far.find("stitches-unreached", back.place, "back", row=back)
        return False
    before = so_far.count
    chunks, snags = so_far.repeater.run(pairs, so_far.live, reps, part, so_far.round, following)
    # Short rows live on one another: behind the first that fails the rest say nothing new.
    for snag in snags[:1] if any(tape.turns for _, tape in pairs) else snags:
        _tell_snag(so_far, snag, motif, rows)
    for chunk in chunks:
        _pass(so_far, index, item, motif, chunk)
        if so_far.row > MAX_NUMBER:
            so_far.find("number-too-big", item.span, "rows", numbers=(so_far.row,))
            return False
    if chunks:
        so_far.state = chunks[-1].after
    # Claims are checked where the count is sure.
    if not any(snag.kind in ("no-marker", "marker-missed", "trouble") for snag in snags):
        check_claims(so_far, chunks, motif, len(rows))
    count = so_far.count
    if count != before or snags:
        so_far.moved = True
    so_far.widest = max(so_far.widest, count)
    if count > MAX_NUMBER and not any(snag.kind == "grown" for snag in snags):
        so_far.find("number-too-big", item.span, "stitches", numbers=(count,))
        return False
    return True


def _pass(so_far: Progress, index: int, item: Line, motif: Motif | None, chunk: Chunk) -> None:
    """The rows of a chunk are done."""
    so_far.events.append(Worked(item, index, motif, so_far.row, so_far.rs, so_far.round, chunk))
    turned = 0
    for entry in chunk.entries:
        if entry.row.strand:
            so_far.strand = entry.row.strand.key
        if entry.turns and so_far.round:
            turned += chunk.reps
    so_far.advance(motif, chunk.rows)
    if turned % 2:
        so_far.rs = not so_far.rs


def _runs_back(so_far: Progress, pairs: list[Pair], rows: int) -> Row | None:
    """The first row that goes on from the wrong side in the round without turning.

    The sides come again after two repeats at the latest.
    """
    rs = so_far.rs
    for at in range(min(rows, 2 * len(pairs)) if so_far.round else 0):
        row, tape = pairs[at % len(pairs)]
        if not rs and not tape.turns:
            return row
        rs = rs != tape.turns
    return None


# --- rows that hold stitches, or take them ----------------------------------------------------


def _with_holders(so_far: Progress, pairs: list[Pair], reps: int, part: int) -> list[Pair] | None:
    """The rows with the stitches they take from holders; None where they cannot be worked.

    What they hold is put aside. All this can be done once only.
    """
    if not any(tape.holds or tape.asks for _, tape in pairs):
        return pairs
    for at, (row, tape) in enumerate(pairs):
        special = tape.holds or tape.asks
        times = reps + (1 if at < part else 0)
        if special and times > 1:
            so_far.find(
                "holder-full",
                row.in_body(special[0].span),
                "again",
                row=row,
                name=special[0].name,
                numbers=(times,),
            )
            return None
        for op in tape.holds:
            place = row.in_body(op.span)
            at_row = so_far.row + at
            so_far.put(Waiting(op.name, op.takes, so_far.piece, at_row, place, False))
    resolved = [(row, _resolved(so_far, row, tape)) for row, tape in pairs]
    pairs = [(row, tape) for row, tape in resolved if tape is not None]
    return pairs if len(pairs) == len(resolved) else None


def _resolved(so_far: Progress, row: Row, tape: Tape) -> Tape | None:
    """The tape with held stitches taken from their holders; None where one is empty."""
    held: dict[str, int] = {}
    for op in tape.asks:
        count = so_far.take(op.name, row.in_body(op.span))
        if count is None:
            return None
        held[op.name] = count
    return tape.with_held(held) if held else tape


# --- what is told -----------------------------------------------------------------------------


def _tell_snag(so_far: Progress, snag: Snag, motif: Motif | None, rows: tuple[Row, ...]) -> None:
    """The finding of a row that did not fit."""
    if so_far.unsure:
        return
    row = snag.row
    span = row.in_body(snag.misfit.span) if snag.misfit.span else row.at(row.body.span)
    if row.as_row is not None:
        span = row.at(row.span)
    if snag.kind in ("no-marker", "marker-missed"):
        so_far.unsure = True
    so_far.find(
        _RULES[snag.kind],
        span,
        snag.kind if snag.kind != "trouble" else snag.misfit.detail,
        row=row,
        motif=motif,
        snag=snag,
        row_number=so_far.row + snag.repeat * len(rows) + snag.index,
        repeat=snag.repeat,
    )


def check_claims(so_far: Progress, chunks: list[Chunk], motif: Motif | None, length: int) -> None:
    """A finding for each claim of the rows just worked that does not hold, at its first repeat.

    `length` is how many rows a repeat has; a chunk may have fewer, or two repeats.
    """
    first_row = so_far.row - sum(chunk.rows for chunk in chunks)
    wrong: dict[Row, tuple[int, int, Entry]] = {}  # the earliest place of each row
    done = 0
    for chunk in chunks:
        for index, entry in enumerate(chunk.entries):
            claim = entry.row.claim
            if claim is None or entry.misfit or entry.row.body.broken:
                continue
            said = claim.count.at(so_far.size)
            repeat = _first_wrong(entry, claim.sign, said, chunk.reps)
            if repeat is None:
                continue
            at = done + repeat * len(chunk.entries) + index
            if entry.row not in wrong or at < wrong[entry.row][0]:
                wrong[entry.row] = (at, repeat, entry)
        done += chunk.rows
    for row, (at, repeat, entry) in wrong.items():
        assert row.claim is not None
        so_far.find(
            "claim-wrong",
            row.at(row.claim.span),
            row.claim.sign or "=",
            row=row,
            motif=motif,
            row_number=first_row + at,
            repeat=at // length,
            numbers=(
                entry.start.at(repeat),
                entry.end.at(repeat),
                row.claim.count.at(so_far.size),
            ),
        )


def _first_wrong(entry: Entry, sign: str, said: int, times: int) -> int | None:
    """The first repeat (from 0) at which a claim does not hold."""
    if sign:
        value = Affine(entry.end.fixed - entry.start.fixed, entry.end.unit - entry.start.unit)
        said = -said if sign == "-" else said
    else:
        value = entry.end
    if value.fixed != said:
        return 0
    return 1 if value.unit and times > 1 else None
