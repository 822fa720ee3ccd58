"""The table of what a resize changed."""

from __future__ import annotations

from loopwright.check.checked import Checked
from loopwright.count.measure import width_gauge, width_of
from loopwright.count.walk import Walk
from loopwright.fit.units import both


def before_after(before: Checked, after: Checked) -> str:
    """Stitches, rows, width and length of every piece and size, before and after."""
    names = before.pattern.sizes
    several = len(names) > 1
    many = len(before.pattern.pieces) > 1
    head = ("", "before", "after", "change")
    rows: list[tuple[str, str, str, str]] = []
    for old, new in zip(before.walks, after.walks, strict=True):
        label = ", ".join(
            part
            for part in (
                old.piece.name.text if many or not several else "",
                names[old.size] if several else "",
            )
            if part
        )
        rows.append((label, "", "", ""))
        rows.append(_numbers("stitches", old.cast_on or 0, new.cast_on or 0))
        if old.widest != old.cast_on or new.widest != new.cast_on:
            rows.append(_numbers("widest", old.widest, new.widest))
        rows.append(_numbers("rows", old.rows, new.rows))
        rows += _lengths("width", _width(before, old), _width(after, new))
        rows += _lengths("length", old.height, new.height)
    widths = [max(len(r[i]) for r in (*rows, head)) for i in range(4)]
    lines = []
    for row in (head, *rows):
        cells = [row[0].ljust(widths[0])] + [row[i].rjust(widths[i]) for i in range(1, 4)]
        lines.append("  ".join(cells).rstrip())
    return "\n".join(lines) + "\n"


def _width(checked: Checked, walk: Walk) -> float | None:
    gauge = width_gauge(checked.pattern, walk.piece)
    if gauge is None or gauge.over.unit is None:
        return None
    return width_of(gauge, walk.widest)


def _numbers(name: str, old: int, new: int) -> tuple[str, str, str, str]:
    change = f"{new - old:+,}" if new != old else "–"
    return f"  {name}", f"{old:,}", f"{new:,}", change


def _lengths(name: str, old: float | None, new: float | None) -> list[tuple[str, str, str, str]]:
    if old is None or new is None:
        return []
    change = f"{(new - old) / 10:+.1f} cm" if abs(new - old) > 0.05 else "–"
    return [(f"  {name}", both(old), both(new), change)]
