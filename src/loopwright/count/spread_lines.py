"""The lines of a piece that spread the changes of a motif evenly over the rows of another."""

from __future__ import annotations

from math import lcm

from loopwright.count.amount import reps_to_length
from loopwright.count.progress import Progress
from loopwright.count.spread import RowSpread, spread_over_rows
from loopwright.count.tape import Tape
from loopwright.count.worked_rows import work_rows
from loopwright.model.pattern import Motif, Row, Spread
from loopwright.notation.bounds import MAX_SPREAD_ROWS
from loopwright.notation.tree import ForRows, Times
from loopwright.record import replace


def work_spread(so_far: Progress, index: int, item: Spread, following: Tape | None) -> bool:
    """Changes evenly over rows: the longer distances, the shorter ones, what is left over."""
    change, plain = item.motif, item.plain
    if change is None or plain is None or not plain.rows or not change.rows:
        return False  # said by unknown-name or row-missing
    if len(change.rows) > 1:
        so_far.find("spread-tight", item.name.span, "motif", motif=change)
        return False
    # The last right-side row of each distance: its last row where the next row is a wrong one.
    place = 1 if so_far.rs and not so_far.round else 0
    spread = _spread_of(so_far, item, change, plain, place)
    if spread is None:
        return False
    if plain.in_round and not so_far.round:
        so_far.find("side-flip", item.span, "rounds", motif=plain)
    between = _rows_between(so_far, plain)
    for every, times in spread.blocks:
        entries = [between[at % len(between)] for at in range(every)]
        entries[every - 1 - place] = change.rows[0]
        if not work_rows(so_far, index, item, plain, tuple(entries), times, 0, following):
            return False
    if spread.tail:
        return work_rows(so_far, index, item, plain, between, 0, spread.tail, following)
    return True


def _spread_of(
    so_far: Progress, item: Spread, change: Motif, plain: Motif, place: int
) -> RowSpread | None:
    """The distances from change to change; None, and why, where there are none."""
    rows = _rows_in_all(so_far, item, plain)
    changes = _changes_in_all(so_far, item, change) if rows is not None else None
    if rows is None or changes is None:
        return None
    length = len(plain.rows)
    step = length if so_far.round else lcm(length, 2)
    spread = spread_over_rows(changes, rows, step, place)
    if spread is None:
        numbers = (changes, rows, step)
        so_far.find("spread-tight", item.over.span, "rows", motif=change, numbers=numbers)
        return None
    if spread.blocks and spread.blocks[0][0] > MAX_SPREAD_ROWS:
        so_far.find("spread-tight", item.over.span, "far", motif=change)
        return None
    return spread


def _rows_between(so_far: Progress, plain: Motif) -> tuple[Row, ...]:
    """The rows of the fabric, from the one that comes next: begun on the other side of a flat
    piece, it goes on with its row of that side."""
    turned = not so_far.round and not plain.is_one_body and plain.is_rs(1) != so_far.rs
    return plain.rows[turned:] + plain.rows[:turned]


def _rows_in_all(so_far: Progress, item: Spread, plain: Motif) -> int | None:
    """Over how many rows; to a length it is the nearest number that ends on the same side."""
    if isinstance(item.over, ForRows):
        return item.over.rows.at(so_far.size)
    one = 1 if so_far.round else 2
    part = replace(plain, rows=(plain.rows * one)[:one])
    times = reps_to_length(so_far, part, item.over)
    return None if times is None else times * one


def _changes_in_all(so_far: Progress, item: Spread, change: Motif) -> int | None:
    """How often the change is worked; None, and why, where it never leads to the count."""
    if isinstance(item.times, Times):
        return item.times.count.at(so_far.size)
    count, target = so_far.count, item.times.count.at(so_far.size)
    pairs = [(change.rows[0], so_far.tape(change.rows[0]))]
    reps, nearest = so_far.repeater.until(pairs, so_far.live, target, True)
    if reps is None:
        numbers = (count, target, *nearest)
        so_far.find("count-unreached", item.times.span, motif=change, numbers=numbers)
    return reps
