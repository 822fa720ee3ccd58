"""What each piece should measure, where a width or length is asked for the pattern."""

from __future__ import annotations

from loopwright.check.checked import Checked
from loopwright.count.walk import Walk
from loopwright.count.widths import piece_width
from loopwright.model.pattern import Pattern, Piece
from loopwright.notation.quantity import Quantity

_ALIKE = 0.05
"""A piece whose measure is within this part of the pattern's is taken to be meant by it."""

Wanted = tuple[float | None, ...]
"""A measure in mm for each size; None leaves a size as it is."""


def stated(pattern: Pattern, piece: Piece, kind: str, size: int) -> float | None:
    """The width or length in mm that the source states for a piece, or None."""
    own: Quantity | None = getattr(piece, kind)
    if own is None and pattern.pieces and piece is pattern.pieces[0]:
        own = getattr(pattern, kind)
    return own.mm(size) if own is not None and own.unit is not None else None


def width_target(checked: Checked, walk: Walk, wanted: float | None) -> float | None:
    """The new width of a piece: the one asked, or in proportion where it has another now."""
    return _target(checked, walk, "width", wanted, piece_width(checked.pattern, walk))


def length_target(checked: Checked, walk: Walk, wanted: float | None) -> float | None:
    """The new length of a piece, by the same rule."""
    return _target(checked, walk, "length", wanted, walk.height)


def _target(
    checked: Checked, walk: Walk, kind: str, wanted: float | None, now: float | None
) -> float | None:
    whole: Quantity | None = getattr(checked.pattern, kind)
    piece = walk.piece
    if wanted is None or now is None:
        return wanted
    first = checked.pattern.pieces[0] is piece
    if whole is None or whole.unit is None:
        if first:
            return wanted
        base = _now(checked, kind, walk.size)
    else:
        base = whole.mm(walk.size)
    if base is None or base <= 0:
        return wanted
    if (first and getattr(piece, kind) is None) or abs(now - base) <= base * _ALIKE:
        return wanted
    return now * wanted / base


def _now(checked: Checked, kind: str, size: int) -> float | None:
    """What the first piece measures."""
    first = checked.pattern.pieces[0]
    walk = next((w for w in checked.walks if w.piece is first and w.size == size), None)
    if walk is None:
        return None
    return piece_width(checked.pattern, walk) if kind == "width" else walk.height
