"""What the rules about strands share: sizes worked alike, and words."""

from __future__ import annotations

from collections.abc import Iterable

from loopwright.count.strands import Pickup
from loopwright.count.walk import Walk, Worked
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


def alike(walks: Iterable[Walk]) -> list[list[Walk]]:
    """The walks of each piece, those whose rows run alike (however many stitches) together."""
    groups: dict[tuple[object, ...], list[Walk]] = {}
    for walk in walks:
        key: list[object] = [id(walk.piece)]
        for event in walk.events:
            key += (type(event), getattr(event, "index", None))
            if isinstance(event, Worked):
                chunk = event.chunk
                key += (event.first_row, event.rs, event.round, len(chunk.entries), chunk.reps)
        groups.setdefault(tuple(key), []).append(walk)
    return list(groups.values())
