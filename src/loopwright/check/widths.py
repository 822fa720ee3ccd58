"""How many stitches wide a piece is, where its count changes."""

from __future__ import annotations

from math import lcm

from loopwright.count.live import total
from loopwright.count.tape import FILL, Tapes
from loopwright.count.walk import Walk, Worked


def telling_counts(walk: Walk) -> tuple[int, ...]:
    """The counts that may be meant by a piece's width, the widest first.

    The widest at which a motif or row begins or ends (not what comes and goes within a repeat),
    and the count on which most rows begin.
    """
    widest = walk.cast_on or 0
    rows: dict[int, int] = {}
    for event in walk.events:
        if not isinstance(event, Worked) or not event.chunk.entries:
            continue
        start = event.chunk.entries[0].start
        after = total(event.chunk.after).fixed
        widest = max(widest, start.at(0), after)
        if start.unit == 0:
            rows[start.fixed] = rows.get(start.fixed, 0) + event.rows
    most = max(rows, key=lambda count: rows[count], default=widest)
    return (widest,) if most == widest else (widest, most)


def is_straight(walk: Walk) -> bool:
    """Whether the piece keeps the count it is cast on with, from one motif to the next."""
    return telling_counts(walk) == (walk.cast_on,)


def repeat_of(walk: Walk, tapes: Tapes) -> tuple[int, bool]:
    """The stitches of one repeat of the whole piece, and whether it can be given more of them.

    It cannot where a row has no fill, or a motif is for one count only.
    """
    unit, free = 1, True
    seen: set[int] = set()
    for event in walk.events:
        if not isinstance(event, Worked):
            continue
        form = event.motif.form if event.motif is not None else None
        if form is not None:
            unit = lcm(unit, form.unit or 1)
            free = free and form.unit > 0
        for entry in event.chunk.entries:
            if id(entry.row.body) in seen:
                continue
            seen.add(id(entry.row.body))
            fills = [op.takes for op in tapes.of(entry.row.body, walk.size).ops if op.kind == FILL]
            free = free and bool(fills)
            unit = lcm(unit, *fills)
        if unit > 10_000:
            break
    return unit, free
