"""A reader's edition: what was asked, what the pattern was made for, and what changed."""

from __future__ import annotations

from collections.abc import Sequence

from loopwright.check.checked import Checked
from loopwright.edition.document import Personal, Table
from loopwright.edition.words import gauge_sentence, pair
from loopwright.fit.asked import Wish
from loopwright.fit.table import change_text, compare, value_text
from loopwright.fit.targets import Wanted


def make_personal(
    before: Checked,
    after: Checked,
    wish: Wish,
    notes: Sequence[str],
    size: str | None = None,
    units: str | None = None,
) -> Personal:
    """The words of the first page. `size` is the one size printed, `units` which stands first."""
    measure = before.pattern.width or before.pattern.length
    inches_first = units == "in" or (
        units is None and measure is not None and measure.unit in ("in", "yd")
    )
    return Personal(
        _asked(before, wish, inches_first),
        _made_for(before, size, inches_first),
        _changes(before, after, size, inches_first),
        tuple(notes),
    )


def _asked(before: Checked, wish: Wish, inches_first: bool) -> tuple[str, ...]:
    names = before.pattern.sizes
    out = []
    for gauge in wish.gauges:
        rows = f" and {gauge.rows:g} rows" if gauge.rows is not None else ""
        fabric = f" in {gauge.fabric}" if gauge.fabric else ""
        out.append(f"A gauge of {gauge.stitches:g} stitches{rows} = {gauge.text}{fabric}.")
    for kind, wanted in (("width", wish.width), ("length", wish.length)):
        text = _measures(wanted, names, inches_first)
        if text:
            out.append(f"A {kind} of {text}.")
    if wish.scale is not None:
        out.append(f"All at {wish.scale * 100:g} % of its size.")
    return tuple(out)


def _measures(wanted: Wanted, names: tuple[str, ...], inches_first: bool) -> str:
    found = [(name, mm) for name, mm in zip(names, wanted, strict=True) if mm is not None]
    if not found:
        return ""
    if len({mm for _, mm in found}) == 1:
        sizes = "" if len(found) == len(names) else f" in size {found[0][0]}"
        return pair(found[0][1], inches_first) + sizes
    return ", ".join(f"{pair(mm, inches_first)} ({name})" for name, mm in found)


def _made_for(before: Checked, size: str | None, inches_first: bool) -> tuple[str, ...]:
    out = [f"Gauge: {gauge_sentence(gauge, inches_first)}." for gauge in before.pattern.gauges]
    for group in compare(before, before):
        if not group.piece or (size is not None and group.size != size):
            continue
        parts = [
            f"{figure.name} {value_text(figure.kind, figure.after, inches_first)}"
            for figure in group.figures
            if figure.name in ("stitches", "widest row", "width", "around", "length")
        ]
        name = group.piece if len(before.pattern.pieces) > 1 else ""
        where = ", ".join(
            part for part in (name, group.size if len(before.pattern.sizes) > 1 else "") if part
        )
        out.append(f"{where + ': ' if where else ''}{', '.join(parts)}.")
    return tuple(out)


def _changes(before: Checked, after: Checked, size: str | None, inches_first: bool) -> Table | None:
    rows: list[tuple[str, ...]] = []
    several = len(after.pattern.sizes) > 1 and size is None
    many = len(after.pattern.pieces) > 1
    for group in compare(before, after):
        if size is not None and group.size != size:
            continue
        label = ", ".join(
            part
            for part in (
                (group.piece or "yarn") if many else "",
                group.size if several else "",
            )
            if part
        )
        for figure in group.figures:
            if change_text(figure) == "–":
                continue
            rows.append(
                (
                    f"{label}: {figure.name}" if label else figure.name,
                    value_text(figure.kind, figure.before, inches_first),
                    value_text(figure.kind, figure.after, inches_first),
                    change_text(figure).replace("-", "−"),
                )
            )
    head = ("What changed", "Made for", "This copy", "Change")
    return Table("", head, tuple(rows)) if rows else None
