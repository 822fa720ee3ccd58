"""From stitches and rows to millimetres, at the file's gauges."""

from __future__ import annotations

from loopwright.model.pattern import Gauge, Motif, Pattern, Piece, Work


def height_of_row(pattern: Pattern, motif: Motif | None) -> float | None:
    """The height of one row in millimetres, in a motif's own gauge where the file has one."""
    gauge = pattern.gauge_for(motif.name.text if motif is not None else None)
    if gauge is None or gauge.over.unit is None or gauge.rows <= 0:
        return None
    return gauge.over.mm() / gauge.rows


def width_gauge(pattern: Pattern, piece: Piece) -> Gauge | None:
    """The gauge a piece's width is counted with: that of its first motif, else the file's first."""
    for item in piece.items:
        if isinstance(item, Work) and item.motif is not None:
            return pattern.gauge_for(item.motif.name.text)
    return pattern.gauge_for(None)


def width_of(gauge: Gauge, stitches: int) -> float:
    """The width of stitches in millimetres at a gauge whose unit is known."""
    return stitches * gauge.over.mm() / gauge.stitches
