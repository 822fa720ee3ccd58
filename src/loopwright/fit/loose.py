"""Rows that are written out for one count: which of their numbers follow the width.

A row without a fill, such as ``(k11/12/13 pm) x7 k11/12/13``, holds on one count only. The
numbers that differ from size to size are the ones that the writer lets follow the size; where no
number of the row does, the largest plain one is taken (each time it stands there).
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from loopwright.count.tape import Tape
from loopwright.model.body import Evenly, Group, Step, Stitches
from loopwright.model.pattern import Row
from loopwright.notation.source import Source, Span
from loopwright.record import dataclass

_COUNT = re.compile(r"[^\W\d_]+(\d+(?:/\d+)*)(?=\W|$)")
_SPREAD = re.compile(r"[x×]\s*(\d+(?:/\d+)*)$")
_REACH = 4  # stitches a number may differ from its share, so that the sum comes out
_LEAST = 2  # a single stitch is a column of its own and never follows the width


@dataclass(frozen=True, slots=True)
class Part:
    """One number of the row, wherever it stands: `often` it is worked, in the size at hand."""

    values: tuple[int, ...]
    spans: tuple[Span, ...]
    often: int
    now: int


@dataclass(frozen=True, slots=True)
class Loose:
    """A row whose `parts` follow the width; the rest of it takes `fixed` stitches."""

    row: Row
    parts: tuple[Part, ...]
    fixed: int

    def share(self, count: int) -> list[int] | None:
        """New numbers for `count` stitches in all, near to the old proportions; None: none fit."""
        left = count - self.fixed
        now = sum(part.often * part.now for part in self.parts)
        if now <= 0 or left < sum(part.often for part in self.parts):
            return None
        return shares([(p.often, p.now * left / now) for p in self.parts], left)


def shares(parts: list[tuple[int, float]], left: int) -> list[int] | None:
    """Whole numbers v with sum(often × v) = `left`, each at least 1 and near to its target.

    Of all such numbers within reach those with the smallest sum of distances; exact.
    """
    bases = [max(round(target), 1) for _, target in parts]
    gap = left - sum(often * base for (often, _), base in zip(parts, bases, strict=True))
    best: dict[int, tuple[float, tuple[int, ...]]] = {0: (0.0, ())}
    for (often, target), base in zip(parts, bases, strict=True):
        grown: dict[int, tuple[float, tuple[int, ...]]] = {}
        for done, (cost, chosen) in best.items():
            for by in range(-_REACH, _REACH + 1):
                value = base + by
                if value < 1:
                    continue
                price = (cost + often * abs(value - target), (*chosen, value))
                at = done + often * by
                if at not in grown or price < grown[at]:
                    grown[at] = price
        best = grown
    found = best.get(gap)
    return list(found[1]) if found is not None else None


def loose_row(source: Source, row: Row, tape: Tape, size: int) -> Loose | None:
    """The numbers of a row that may follow the width; None where a fill does, or none can."""
    if tape.fills or tape.broken or tape.trouble is not None or row.as_row is not None:
        return None
    found = [
        (step, often, span)
        for step, often in _plain(row.body.steps, size, 1)
        if (span := _number_span(source, row, step)) is not None and step.number(size) >= _LEAST
    ]
    if not found:
        return None
    listed = [f for f in found if len(set(f[0].count)) > 1]
    if not listed:
        most = max(step.number(size) for step, _, _ in found)
        listed = [f for f in found if f[0].number(size) == most]
    groups: dict[tuple[int, ...], list[tuple[Stitches, int, Span]]] = {}
    for entry in listed:
        groups.setdefault(entry[0].count, []).append(entry)
    parts = tuple(
        Part(
            values,
            tuple(span for _, _, span in group),
            sum(often for _, often, _ in group),
            group[0][0].number(size),
        )
        for values, group in groups.items()
    )
    return Loose(row, parts, tape.fixed_takes - sum(p.often * p.now for p in parts))


def _plain(steps: tuple[Step, ...], size: int, often: int) -> Iterator[tuple[Stitches, int]]:
    """Plain knit and purl stitches outside fills, with how often each is worked."""
    for step in steps:
        if isinstance(step, Stitches):
            if step.stitch.word in ("k", "p"):
                yield step, often
        elif isinstance(step, Group) and step.into is None:
            yield from _plain(step.steps, size, often * step.number(size))


def _number_span(source: Source, row: Row, step: Stitches) -> Span | None:
    place = row.in_body(step.span)
    match = _COUNT.match(source.slice(place))
    if match is None:
        return None
    return Span(place.start + match.start(1), place.start + match.end(1))


@dataclass(frozen=True, slots=True)
class Even:
    """A ``spread k2tog x8`` of a row: its number, how it is written, what one change adds."""

    row: Row
    values: tuple[int, ...]
    span: Span
    now: int
    by: int


def even_row(source: Source, row: Row, size: int) -> Even | None:
    """The spread of a row whose number may follow the width; None where it has not just one."""
    found = [step for step in row.body.steps if isinstance(step, Evenly)]
    if len(found) != 1 or row.as_row is not None or row.body.broken:
        return None
    step = found[0]
    by = step.change.stitch.makes - step.change.stitch.takes
    place = row.in_body(step.span)
    match = _SPREAD.search(source.slice(place))
    if match is None or by == 0:
        return None
    values = tuple(int(part) for part in match[1].split("/"))
    if values != step.change.count:
        return None  # the word has a count of its own
    span = Span(place.start + match.start(1), place.start + match.end(1))
    return Even(row, values, span, step.change.number(size), by)
