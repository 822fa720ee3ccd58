"""How wide a walked piece is, each of its fabrics measured with its own gauge."""

from __future__ import annotations

from loopwright.count.live import total
from loopwright.count.measure import width_gauge, width_of
from loopwright.count.walk import Cast, Walk, Worked
from loopwright.model.pattern import Gauge, Motif, Pattern
from loopwright.notation.source import Span
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class Stretch:
    """Rows of one fabric on end: the stitches at both ends of it, and the widest.

    `motif` is None for the piece's own row lines and the cast-on. `span` is the line.
    """

    motif: Motif | None
    gauge: Gauge
    first: int
    last: int
    widest: int
    rows: int
    span: Span

    def width(self, stitches: int) -> float:
        """So many stitches of this fabric in millimetres."""
        return width_of(self.gauge, stitches)


def stretches(pattern: Pattern, walk: Walk) -> tuple[Stretch, ...]:
    """The fabrics of a walked piece in order; empty where a gauge is missing or has no unit."""
    found: list[Stretch] = []
    for event in walk.events:
        if isinstance(event, Cast):
            motif, first, last, rows = None, event.count, event.count, 0
        elif isinstance(event, Worked) and event.chunk.entries:
            motif = event.motif
            first = event.chunk.entries[0].start.fixed
            last = total(event.chunk.after).fixed
            rows = event.rows
        else:
            continue
        gauge = pattern.gauge_for(motif.name.text if motif is not None else None)
        if gauge is None or gauge.over.unit is None or gauge.stitches <= 0:
            return ()
        found.append(Stretch(motif, gauge, first, last, max(first, last), rows, event.item.span))
    return tuple(found)


def widest_of(pattern: Pattern, walk: Walk) -> int:
    """The stitches of the widest row in the piece's main fabric (see `width_gauge`)."""
    gauge = width_gauge(pattern, walk.piece)
    if len(pattern.gauges) < 2:
        return walk.widest
    mine = [s.widest for s in stretches(pattern, walk) if s.gauge is gauge]
    return max(mine, default=walk.widest)


def piece_width(pattern: Pattern, walk: Walk) -> float | None:
    """The width of a piece in millimetres: its widest row in the main fabric, at that gauge.

    In the round it is the way round. None where no gauge can say it.
    """
    gauge = width_gauge(pattern, walk.piece)
    if gauge is None or gauge.over.unit is None or gauge.stitches <= 0:
        return None
    return width_of(gauge, widest_of(pattern, walk))
