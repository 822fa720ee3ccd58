"""Values edited in place: everything else of the text stays as it was."""

from __future__ import annotations

from collections.abc import Iterable

from loopwright.problem import Edit


def apply_edits(text: str, edits: Iterable[Edit]) -> str:
    """The text with each span replaced. Raises ValueError where two edits overlap."""
    out: list[str] = []
    at = 0
    for edit in sorted(set(edits), key=lambda e: (e.span.start, e.span.end)):
        if edit.span.start < at:
            raise ValueError("two edits overlap")
        out.append(text[at : edit.span.start])
        out.append(edit.text)
        at = edit.span.end
    out.append(text[at:])
    return "".join(out)
