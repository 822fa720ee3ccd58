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
    text = f"Row {up.row:,}"
    if up.motif is not None:
        text += f" (row {up.number} of {up.motif.name.text}"
        text += f", in repeat {up.repeat + 1:,})" if up.repeat else ")"
    elif up.number == 0 and up.motif is None:
        pass
    return text
