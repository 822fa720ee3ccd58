"""New values for numbers of a source, written where the old ones stand."""

from __future__ import annotations

from collections.abc import Iterable

from loopwright.notation.quantity import FRACTIONS, LENGTH_MM, Quantity
from loopwright.notation.source import Source, Span
from loopwright.notation.tree import Count
from loopwright.problem import Edit
from loopwright.record import dataclass, field

_GLYPHS = {value: glyph for glyph, value in FRACTIONS.items()}
_DIGITS = "0123456789./" + "".join(FRACTIONS)


@dataclass(slots=True)
class Sheet:
    """Whole numbers to be written into a source, one size at a time.

    `sizes` is how many sizes the pattern has. A size list stays one, and one number becomes a
    list only where the sizes no longer agree.
    """

    sizes: int
    _old: dict[Span, tuple[int, ...]] = field(default_factory=dict)
    _new: dict[Span, dict[int, int]] = field(default_factory=dict)

    def put(self, span: Span, values: tuple[int, ...], size: int, value: int) -> None:
        """The number written at `span` (as `values`) becomes `value` in one size."""
        self._old[span] = values
        self._new.setdefault(span, {})[size] = value

    def put_count(self, count: Count, size: int, value: int) -> None:
        self.put(count.span, count.values, size, value)

    def take(self, other: Sheet) -> None:
        """All that another sheet holds."""
        for span, by_size in other._new.items():
            for size, value in by_size.items():
                self.put(span, other._old[span], size, value)

    def edits(self) -> list[Edit]:
        """The edits, in order of place; none where nothing changes."""
        out = []
        for span in sorted(self._new):
            old = self._old[span]
            now = [old[s] if s < len(old) else old[-1] for s in range(self.sizes)]
            new = [self._new[span].get(s, now[s]) for s in range(self.sizes)]
            if new != now:
                out.append(Edit(span, number_list(new, len(old) > 1)))
        return out


def number_list(values: list[int], was_list: bool) -> str:
    """Numbers as the source writes them: a size list stays one."""
    if len(set(values)) == 1 and not was_list:
        return str(values[0])
    return "/".join(map(str, values))


def measure_edit(
    source: Source, quantity: Quantity | None, wanted: Iterable[float | None]
) -> list[Edit]:
    """A measure with new lengths in mm (None: as it is), in the writer's unit and spelling."""
    if quantity is None or quantity.unit not in LENGTH_MM:
        return []
    factor = LENGTH_MM[quantity.unit]
    targets = list(wanted)
    old = [quantity.at(size) for size in range(len(targets))]
    values = [
        now if mm is None else round(mm / factor, 9) for now, mm in zip(old, targets, strict=True)
    ]
    text = source.slice(quantity.span)
    unit = text.lstrip(_DIGITS)
    parts = text[: len(text) - len(unit)].split("/")
    broken = any(part[-1:] in FRACTIONS for part in parts)
    shown = [
        parts[min(size, len(parts) - 1)]
        if abs(value - old[size]) < 0.005
        else measure_text(value, broken)
        for size, value in enumerate(values)
    ]
    if len(set(shown)) == 1 and len(quantity.values) == 1:
        shown = shown[:1]
    new = "/".join(shown) + unit
    return [Edit(quantity.span, new)] if new != text else []


def measure_text(value: float, broken: bool = False) -> str:
    """``152.4``; with `broken`, ``7½`` where the writer spells halves and quarters so."""
    whole = int(value)
    glyph = _GLYPHS.get(round(value - whole, 9))
    if broken and glyph:
        return f"{whole or ''}{glyph}"
    return f"{value:.2f}".rstrip("0").rstrip(".")
