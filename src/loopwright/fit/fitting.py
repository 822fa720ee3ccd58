"""The table that `fit` prints, as text and as plain values for JSON."""

from __future__ import annotations

from typing import Any

from loopwright.check.checked import Checked
from loopwright.check.context import listed
from loopwright.fit.levers import Choice
from loopwright.fit.nearest import Fit, Together
from loopwright.fit.units import both, cm, inches
from loopwright.model.pattern import Gauge


def fit_table(checked: Checked, found: list[Fit], inches_first: bool = False) -> str:
    """The nearest count, the next smaller and the next larger of every piece and size."""
    return "\n".join(_block(checked, fit, inches_first) for fit in found)


def _block(checked: Checked, fit: Fit, inches_first: bool) -> str:
    names = checked.pattern.sizes
    where = fit.piece.name.text
    if len(names) > 1:
        sizes = listed(names[size] for size in fit.sizes)
        where += ", every size" if len(fit.sizes) == len(names) else f", size {sizes}"
    way = "around" if fit.piece.in_round else "wide"
    head = (
        f"{where}: {_pair(fit.asked, inches_first)} {way} is {fit.wanted:.4g} stitches "
        f"({gauge_text(fit.gauge)})"
    )
    if fit.motif is not None:
        head += f"\n  its width hangs on how often {fit.motif} is worked"
    elif fit.form is not None:
        head += f"\n  cast-ons that every row takes: {fit.form}"
    else:
        head += "\n  only one cast-on suits all its rows"
    if fit.nearest is None:
        return head + "\n  no count near that width suits all its rows\n"
    rows = [("", *_head(fit), "width", "off by")]
    for name, choice in (
        ("nearest", fit.nearest),
        ("next smaller", fit.smaller),
        ("next larger", fit.larger),
    ):
        if choice is None:
            rows.append((name, *("–",) * (len(_head(fit)) + 2)))
        else:
            rows.append(
                (
                    name,
                    *_numbers(fit, choice),
                    _pair(choice.width, inches_first),
                    off_text(choice.width - fit.asked, inches_first),
                )
            )
    widths = [max(len(row[i]) for row in rows) for i in range(len(rows[0]))]
    lines = [
        "  "
        + "  ".join(
            [row[0].ljust(widths[0])] + [cell.rjust(widths[i]) for i, cell in enumerate(row) if i]
        ).rstrip()
        for row in rows
    ]
    if fit.far:
        lines.append(f"  no count fits within half a repeat of {_pair(fit.asked, inches_first)}")
    return "\n".join([head, *lines]) + "\n"


def _shaped(fit: Fit) -> bool:
    return any(c is not None and c.widest != c.cast_on for c in _all(fit))


def _all(fit: Fit) -> tuple[Choice | None, ...]:
    return (fit.nearest, fit.smaller, fit.larger)


def _head(fit: Fit) -> tuple[str, ...]:
    if fit.motif is not None:
        return (f"{fit.motif} x", "widest row")
    return ("cast on", "widest row") if _shaped(fit) else ("cast on",)


def _numbers(fit: Fit, choice: Choice) -> tuple[str, ...]:
    if fit.motif is not None:
        return (f"{choice.repeats:,}", f"{choice.widest:,}")
    if _shaped(fit):
        return (f"{choice.cast_on:,}", f"{choice.widest:,}")
    return (f"{choice.cast_on:,}",)


def _pair(mm: float, inches_first: bool) -> str:
    return f"{inches(mm)} / {cm(mm)}" if inches_first else both(mm)


def off_text(mm: float, inches_first: bool = False) -> str:
    """``exact``, ``1 mm narrower``, ``1.3 cm wider``, ``½ in wider``: finer than a printed size."""
    if abs(mm) < 0.05:
        return "exact"
    word = "wider" if mm > 0 else "narrower"
    size = abs(mm)
    if inches_first:
        return f"{size / 25.4:.2f} in {word}"
    return (
        f"{size:.0f} mm {word}"
        if 1 <= size < 10
        else (f"{size / 10:.1f} cm {word}" if size >= 10 else f"{size:.1f} mm {word}")
    )


def gauge_text(gauge: Gauge) -> str:
    """``20 stitches = 10 cm in woven``, as the file says it."""
    over = gauge.over
    text = f"{gauge.stitches:g} stitches = {over.at(0):g} {over.unit}"
    return text + (f" in {gauge.fabric.text}" if gauge.fabric is not None else "")


def together_text(found: Together, names: tuple[str, ...]) -> str:
    """A sentence on pieces that share their stitches."""
    where = f" in size {names[found.size]}" if len(names) > 1 else ""
    pieces = listed(found.pieces)
    if found.nearest is None:
        return f"{pieces} together{where}: no cast-on suits them all\n"
    others = [f"{n:,}" for n in (found.smaller, found.larger) if n is not None]
    form = f" ({found.form})" if found.form else ""
    tail = f"; next {' and '.join(others)}" if others else ""
    return f"{pieces} together{where}: {found.nearest:,} stitches{form}{tail}\n"


def fit_json(checked: Checked, found: list[Fit]) -> dict[str, Any]:
    """The same for a program: lengths in mm, counts as numbers."""
    title = checked.pattern.title
    return {
        "pattern": title.text if title else "",
        "pieces": [
            {
                "piece": fit.piece.name.text,
                "sizes": [checked.pattern.sizes[size] for size in fit.sizes],
                "asked_mm": round(fit.asked, 3),
                "wanted_stitches": round(fit.wanted, 4),
                "form": fit.form,
                "motif": fit.motif,
                "nearest": _choice(fit.nearest),
                "smaller": _choice(fit.smaller),
                "larger": _choice(fit.larger),
                "within_half_a_repeat": not fit.far,
            }
            for fit in found
        ],
    }


def _choice(choice: Choice | None) -> dict[str, Any] | None:
    if choice is None:
        return None
    return {
        "cast_on": choice.cast_on,
        "widest": choice.widest,
        "repeats": choice.repeats,
        "width_mm": round(choice.width, 3),
    }
