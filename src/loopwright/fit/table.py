"""What a resize changed: figures of every piece and size, before and after."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from loopwright.check.checked import Checked
from loopwright.count.walk import Walk
from loopwright.count.widths import piece_width, widest_of
from loopwright.fit.costs import ShadeCost, needle_length_mm, shade_costs, tail_mm, yarn_of
from loopwright.fit.units import both, cm, inches, metres_and_yards
from loopwright.record import dataclass
from loopwright.yarn.report import YarnReport

COUNT, LENGTH, YARN = "count", "length", "yarn"


@dataclass(frozen=True, slots=True)
class Figure:
    """One line of the table. `kind` is ``count``, ``length`` (mm) or ``yarn`` (m); None: not
    there, in a size that only one of the two has."""

    name: str
    kind: str
    before: float | None
    after: float | None


@dataclass(frozen=True, slots=True)
class Group:
    """The figures of a piece in a size, or (`piece` empty) of a size's yarn."""

    size: str
    piece: str
    figures: tuple[Figure, ...]


def compare(before: Checked, after: Checked) -> tuple[Group, ...]:
    """The figures of two states of one pattern, in the order of the second's sizes and pieces."""
    groups: list[Group] = []
    eaten = yarn_of(before), yarn_of(after)
    for size, name in enumerate(after.pattern.sizes):
        old_size = _old_size(before, after, name)
        for walk in after.walks:
            if walk.size != size:
                continue
            old = _walk(before, walk.piece.name.key, old_size)
            groups.append(
                Group(name, walk.piece.name.text, tuple(_piece(before, old, after, walk)))
            )
        yarn = tuple(_yarn(before, old_size, after, size, eaten))
        if yarn:
            groups.append(Group(name, "", yarn))
    return tuple(groups)


def _old_size(before: Checked, after: Checked, name: str) -> int | None:
    names = before.pattern.sizes
    if name in names:
        return names.index(name)
    return 0 if len(names) == len(after.pattern.sizes) == 1 else None


def _walk(checked: Checked, piece: str, size: int | None) -> Walk | None:
    return next((w for w in checked.walks if w.piece.name.key == piece and w.size == size), None)


def _piece(before: Checked, old: Walk | None, after: Checked, new: Walk) -> Iterator[Figure]:
    def figure(name: str, kind: str, find: Any) -> Figure:
        return Figure(name, kind, find(before, old) if old is not None else None, find(after, new))

    yield figure("stitches", COUNT, lambda c, w: w.cast_on or 0)
    each = "round" if new.piece.in_round else "row"
    widest = figure(f"widest {each}", COUNT, lambda c, w: widest_of(c.pattern, w))
    if widest.after != (new.cast_on or 0) or (old and widest.before != (old.cast_on or 0)):
        yield widest
    yield figure("rounds" if new.piece.in_round else "rows", COUNT, lambda c, w: w.rows)
    wide = figure(
        "around" if new.piece.in_round else "width", LENGTH, lambda c, w: piece_width(c.pattern, w)
    )
    for found in (wide, figure("length", LENGTH, lambda c, w: w.height)):
        if found.before is not None or found.after is not None:
            yield found
    if wide.after is not None:
        yield figure(
            "circular needle",
            LENGTH,
            lambda c, w: needle_length_mm(w, piece_width(c.pattern, w) or 0.0),
        )
    tail = figure("cast-on tail", LENGTH, tail_mm)
    if tail.after is not None:
        yield tail


def _yarn(
    before: Checked,
    old_size: int | None,
    after: Checked,
    size: int,
    eaten: tuple[YarnReport, YarnReport],
) -> Iterator[Figure]:
    old: dict[str, ShadeCost] = {}
    if old_size is not None:
        old = {cost.shade: cost for cost in shade_costs(before, eaten[0], old_size)}
    for cost in shade_costs(after, eaten[1], size):
        was = old.get(cost.shade)
        if cost.metres <= 0 and (was is None or was.metres <= 0):
            continue  # a shade that waits behind balls enough
        yield Figure(cost.shade, YARN, was.metres if was else None, cost.metres)
        if cost.balls is not None:
            yield Figure(f"{cost.shade}, balls", COUNT, was.balls if was else None, cost.balls)


def value_text(kind: str, value: float | None, inches_first: bool = False) -> str:
    """A figure as printed: ``240``, ``120 cm / 47¼ in``, ``812 m / 888 yd``, or ``–``."""
    if value is None:
        return "–"
    if kind == COUNT:
        return f"{value:,.0f}"
    if kind == YARN:
        text = metres_and_yards(value)
        return " / ".join(reversed(text.split(" / "))) if inches_first else text
    return f"{inches(value)} / {cm(value)}" if inches_first else both(value)


def change_text(figure: Figure) -> str:
    """``+20``, ``-1.5 cm``, ``+31 m``; ``–`` where nothing changed."""
    if figure.before is None or figure.after is None:
        return "new" if figure.before is None and figure.after is not None else "–"
    by = figure.after - figure.before
    if figure.kind == COUNT:
        return f"{by:+,.0f}" if by else "–"
    if figure.kind == YARN:
        return f"{by:+,.0f} m" if abs(by) >= 0.5 else "–"
    return f"{by / 10:+,.1f} cm" if abs(by) >= 0.05 else "–"


def table_rows(before: Checked, after: Checked) -> list[tuple[str, str, str, str]]:
    """The table as cells; a row with a heading has three empty ones."""
    several = len(after.pattern.sizes) > 1
    many = len(after.pattern.pieces) > 1
    measure = after.pattern.width or after.pattern.length
    inches_first = measure is not None and measure.unit in ("in", "yd")
    rows: list[tuple[str, str, str, str]] = []
    for group in compare(before, after):
        parts = [group.piece if group.piece and (many or not several) else ""]
        parts.append(group.size if several else "")
        if not group.piece:
            parts[0] = "yarn" if many else ""
        label = ", ".join(part for part in parts if part)
        if label and (group.piece or many):
            rows.append((label, "", "", ""))
        for figure in group.figures:
            rows.append(
                (
                    f"  {figure.name}",
                    value_text(figure.kind, figure.before, inches_first),
                    value_text(figure.kind, figure.after, inches_first),
                    change_text(figure),
                )
            )
    return rows


def before_after(before: Checked, after: Checked) -> str:
    """Every figure of every piece and size, before, after and its change, as a text table."""
    head = ("", "before", "after", "change")
    rows = [head, *table_rows(before, after)]
    widths = [max(len(row[i]) for row in rows) for i in range(4)]
    lines = []
    for row in rows:
        cells = [row[0].ljust(widths[0])] + [row[i].rjust(widths[i]) for i in range(1, 4)]
        lines.append("  ".join(cells).rstrip())
    return "\n".join(lines) + "\n"


def table_json(before: Checked, after: Checked) -> list[dict[str, Any]]:
    """The same for a program: lengths in mm, yarn in m, counts as whole numbers."""

    def plain(kind: str, value: float | None) -> float | int | None:
        if value is None:
            return None
        return int(value) if kind == COUNT else round(value, 2)

    return [
        {
            "size": group.size,
            "piece": group.piece or None,
            "figures": [
                {
                    "name": figure.name,
                    "unit": {COUNT: None, LENGTH: "mm", YARN: "m"}[figure.kind],
                    "before": plain(figure.kind, figure.before),
                    "after": plain(figure.kind, figure.after),
                }
                for figure in group.figures
            ],
        }
        for group in compare(before, after)
    ]
