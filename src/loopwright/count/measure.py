"""From stitches and rows to millimetres, at the file's gauges."""

from __future__ import annotations

from loopwright.model.pattern import Gauge, Motif, Pattern, Piece


def height_of_row(pattern: Pattern, motif: Motif | None) -> float | None:
    """The height of one row in millimetres, in a motif's own gauge where the file has one."""
    gauge = pattern.gauge_for(motif.name.text if motif is not None else None)
    if gauge is None or gauge.over.unit is None or gauge.rows <= 0:
        return None
    return gauge.over.mm() / gauge.rows


def width_gauge(pattern: Pattern, piece: Piece) -> Gauge | None:
    """The gauge a piece's width is counted with.

    The file's first gauge where any motif of the piece is measured with it (or where it has
    none), else the gauge of the first motif that it works.
    """
    main = pattern.gauge_for(None)
    found: Gauge | None = None
    for item in piece.items:
        # Work, and a spread line, whose `plain` is the fabric between its changes.
        motif = getattr(item, "plain", None) or getattr(item, "motif", None)
        if motif is None:
            continue
        gauge = pattern.gauge_for(motif.name.text)
        if gauge is main:
            return main
        found = found or gauge
    return found or main


def width_of(gauge: Gauge, stitches: int) -> float:
    """The width of stitches in millimetres at a gauge whose unit is known."""
    return stitches * gauge.over.mm() / gauge.stitches
