"""Words for strands that several rules share."""

from __future__ import annotations

from loopwright.count.strands import Pickup
from loopwright.model.pattern import Pattern


def strand_name(pattern: Pattern, key: str) -> str:
    """A strand's name as the writer declares it."""
    found = pattern.strand(key)
    return found.name.text if found is not None else key


def called_at(up: Pickup) -> str:
    """``Row 12`` or ``Row 12 (row 3 of woven, in repeat 4)``, as the start of a sentence."""
    if up.bind_off:
        return "The bind-off"
    word = "Round" if up.round else "Row"
    text = f"{word} {up.row:,}"
    if up.motif is not None:
        text += f" ({word.lower()} {up.number} of {up.motif.name.text}"
        text += f", in repeat {up.repeat + 1:,})" if up.repeat else ")"
    return text
