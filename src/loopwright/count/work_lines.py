"""The lines of a piece that work rows: a row of its own, and a motif so many times."""

from __future__ import annotations

from loopwright.count.amount import amount_of
from loopwright.count.cast_on import on_form
from loopwright.count.live import Live
from loopwright.count.progress import Progress
from loopwright.count.tape import Tape
from loopwright.count.walk import Site
from loopwright.count.worked_rows import check_claims, work_rows
from loopwright.model.pattern import Motif, PieceRow, Work
from loopwright.notation.tree import UntilStitches


def work_piece_row(so_far: Progress, index: int, item: PieceRow, following: Tape | None) -> bool:
    """Work the piece's own row, once or several times."""
    if item.first is not None and item.last is not None:
        first, last = item.first.at(so_far.size), item.last.at(so_far.size)
        if first > so_far.row:
            so_far.find("row-missing", item.span, "piece", numbers=(so_far.row, first))
        elif first < so_far.row:
            so_far.find("row-twice", item.span, "piece", numbers=(so_far.row, first))
        times = max(last - first + 1, 1)
    else:
        times = item.times.at(so_far.size) if item.times is not None else 1
    if times < 1:
        return True
    return work_rows(so_far, index, item, None, (item.row,), times, 0, following)


def work_motif(so_far: Progress, index: int, item: Work, following: Tape | None) -> bool:
    """Work a motif as often as its line says."""
    motif = item.motif
    if motif is None or not motif.rows:
        return False  # said by unknown-name or row-missing; nothing after it can be counted
    so_far.sites.append(
        Site(motif, item, so_far.count, so_far.size, so_far.live, so_far.rs, so_far.round)
    )
    fits = on_form(so_far, item, motif)
    _check_side(so_far, item, motif)
    if isinstance(item.amount, UntilStitches):
        return _until_stitches(so_far, index, item, item.amount, motif, fits, following)
    amount = amount_of(so_far, item, motif)
    if amount is None:
        return False
    reps, part = amount
    _check_odd_rows(so_far, item, motif, reps + (part > 0))
    if not fits:
        # Pass over a motif that does not fit the count: what hangs is taken to stay.
        so_far.advance(motif, reps * len(motif.rows) + part)
        so_far.moved = True
        return True
    return work_rows(so_far, index, item, motif, motif.rows, reps, part, following)


def _until_stitches(
    so_far: Progress,
    index: int,
    item: Work,
    amount: UntilStitches,
    motif: Motif,
    fits: bool,
    following: Tape | None,
) -> bool:
    """Whole motifs until so many stitches hang; where they never do, go on as if they did."""
    target = amount.count.at(so_far.size)
    if fits:
        count = so_far.count
        pairs = [(row, so_far.tape(row)) for row in motif.rows]
        reps, nearest = so_far.repeater.until(pairs, so_far.live, target, so_far.round)
        if reps is not None:
            _check_odd_rows(so_far, item, motif, reps)
            return work_rows(so_far, index, item, motif, motif.rows, reps, 0, following)
        # A claim in the motif says nearer which row is not as it was meant.
        once, _ = so_far.repeater.run(pairs, so_far.live, 1, 0, so_far.round, None)
        check_claims(so_far, once, motif, len(motif.rows))
        numbers = (count, target, *nearest)
        so_far.find("count-unreached", amount.span, motif=motif, numbers=numbers)
    so_far.state = Live.of(target)
    so_far.unsure = True
    return True


def _check_side(so_far: Progress, item: Work, motif: Motif) -> None:
    """In flat work a motif is begun on the side of its first row."""
    if so_far.round:
        return
    if motif.in_round:
        so_far.find("side-flip", item.span, "rounds", motif=motif)
    elif not motif.is_one_body and motif.is_rs(1) != so_far.rs:
        numbers = (so_far.row, int(so_far.rs))
        so_far.find("side-flip", item.span, "start", motif=motif, numbers=numbers)


def _check_odd_rows(so_far: Progress, item: Work, motif: Motif, reps: int) -> None:
    """Repeated in flat work, a motif of an odd number of rows changes its sides."""
    rows = len(motif.rows)
    if rows and motif.rows[-1].number != rows:
        return  # a row is missing: said by row-missing
    if so_far.round or motif.in_round or motif.is_one_body:
        return
    if rows % 2 and reps > 1:
        so_far.find("side-flip", item.span, "odd", motif=motif, numbers=(rows,))
