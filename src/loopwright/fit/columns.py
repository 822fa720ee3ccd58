"""Sizes as columns: one more in every size list, or one alone."""

from __future__ import annotations

import re

from loopwright.check.checked import Checked
from loopwright.count.widths import piece_width
from loopwright.notation.rewrite import apply_edits
from loopwright.notation.source import Source, Span
from loopwright.problem import Edit

_LIST = re.compile(r"[\d.¼½¾⅓⅔⅛⅜⅝⅞]+(?:/[\d.¼½¾⅓⅔⅛⅜⅝⅞]+)+")
_PLAIN_NAME = re.compile(r"\w[\w.+-]*")


def _lists(checked: Checked) -> list[tuple[Span, list[str]]]:
    """Every size list of the source: its place and its numbers as written."""
    found = []
    names = len(checked.pattern.size_names)
    for length, span in checked.pattern.size_lists:
        match = _LIST.search(checked.source.slice(span))
        if length == names and match is not None:
            place = Span(span.start + match.start(), span.start + match.end())
            found.append((place, match.group().split("/")))
    return found


def _width(checked: Checked, size: int) -> float | None:
    measure = checked.pattern.width
    if measure is not None and measure.unit is not None:
        return measure.mm(size)
    walk = next((w for w in checked.walks if w.size == size), None)
    return piece_width(checked.pattern, walk) if walk is not None else None


def add_column(checked: Checked, name: str, width: float, length: float) -> tuple[Source, int, int]:
    """A source with one more size, its numbers those of the size nearest in width.

    Gives the source, the place of the new size (by width, where the sizes ascend in width, else
    the last) and the place that the size it copies had. Raises ValueError with a sentence where
    the pattern has no sizes, or has that one.
    """
    pattern = checked.pattern
    names = pattern.size_names
    if not names:
        raise ValueError("the pattern names no sizes; add a line such as “sizes one” first")
    if any(n.text.casefold() == name.casefold() for n in names):
        raise ValueError(f"the pattern has a size “{name}” already; --size {name} changes it")
    widths = [_width(checked, size) for size in range(len(names))]
    known = [w for w in widths if w is not None]
    if len(known) < len(names):
        raise ValueError("the sizes cannot be told apart by width, for want of a gauge or a width")
    lengths = [pattern.length.mm(s) if pattern.length and pattern.length.unit else 0.0
               for s in range(len(names))]  # fmt: skip
    model = min(
        range(len(names)), key=lambda s: (abs(known[s] - width), abs(lengths[s] - length), s)
    )
    place = len(names)
    if known == sorted(known):
        place = sum((w, high) <= (width, length) for w, high in zip(known, lengths, strict=True))
    edits = []
    for span, numbers in _lists(checked):
        edits.append(Edit(span, "/".join([*numbers[:place], numbers[model], *numbers[place:]])))
    shown = name if _PLAIN_NAME.fullmatch(name) else f'"{name}"'
    if place < len(names):
        at = names[place].span.start
        edits.append(Edit(Span(at, at), f"{shown}, "))
    else:
        at = names[-1].span.end
        edits.append(Edit(Span(at, at), f", {shown}"))
    source = Source.of(checked.source.name, apply_edits(checked.source.text, edits))
    return source, place, model


def only_column(checked: Checked, size: int) -> Source:
    """A source of one size: its number in every size list, its name alone in `sizes`."""
    names = checked.pattern.size_names
    edits = [Edit(span, numbers[size]) for span, numbers in _lists(checked)]
    if names:
        whole = Span(names[0].span.start, names[-1].span.end)
        edits.append(Edit(whole, checked.source.slice(names[size].span)))
    return Source.of(checked.source.name, apply_edits(checked.source.text, edits))
