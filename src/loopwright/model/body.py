"""Bodies of rows with their words looked up.

Spans count from the start of the line a body stands on, because equal lines share one body.
"""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.model.stitch import Stitch
from loopwright.notation.source import Span
from loopwright.notation.tree import Count, Special
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True, eq=False)
class Stitches:
    """`count` (a size list, or one number) of one stitch."""

    stitch: Stitch
    count: tuple[int, ...]
    modifiers: tuple[str, ...]
    span: Span

    def number(self, size: int) -> int:
        count = self.count
        return count[size] if size < len(count) else count[-1]


@dataclass(frozen=True, slots=True, eq=False)
class Group:
    """Steps worked `times`, or once with all of it in the next `into` stitches."""

    steps: tuple[Step, ...]
    times: Count | None
    into: Count | None
    span: Span

    def number(self, size: int) -> int:
        return 1 if self.times is None else self.times.at(size)


@dataclass(frozen=True, slots=True, eq=False)
class Fill:
    """A unit repeated as often as it fits."""

    steps: tuple[Step, ...]
    span: Span


@dataclass(frozen=True, slots=True, eq=False)
class Evenly(Group):
    """A stitch spread evenly over the stitches there are.

    It counts as what it comes to: a fill of plain stitches and the changes (`steps` are these
    two); only the words tell how they take turns.
    """

    plain: Stitches
    change: Stitches


Step = Stitches | Group | Fill | Special


@dataclass(frozen=True, slots=True, eq=False)
class Body:
    """The steps of a row. `whole` is ``k`` or ``p`` where the row was given as one word.

    `broken` is true where a word was not known, so that nothing can be counted.
    """

    steps: tuple[Step, ...]
    whole: str | None
    span: Span
    broken: bool


def words_of(steps: tuple[Step, ...]) -> list[Stitches]:
    """Every `Stitches` of some steps, each written one once, in order."""
    found: list[Stitches] = []
    for step in steps:
        if isinstance(step, Stitches):
            found.append(step)
        elif not isinstance(step, Special):
            found += words_of(step.steps)
    return found


def specials_of(steps: tuple[Step, ...]) -> Iterator[Special]:
    """Every step that is no stitch word: holding, taking, picking up, and where a fill ends."""
    for step in steps:
        if isinstance(step, Special):
            yield step
        elif isinstance(step, Group):
            yield from specials_of(step.steps)


def same_body(one: Body, other: Body) -> bool:
    """Whether two bodies say the same, wherever they stand."""
    return one is other or (one.whole == other.whole and _same(one.steps, other.steps))


def _same(one: tuple[Step, ...], other: tuple[Step, ...]) -> bool:
    if len(one) != len(other):
        return False
    for a, b in zip(one, other, strict=True):
        if isinstance(a, Stitches) and isinstance(b, Stitches):
            if (a.stitch, a.count, a.modifiers) != (b.stitch, b.count, b.modifiers):
                return False
        elif isinstance(a, Group) and isinstance(b, Group):
            counts = [c.values if c else None for c in (a.times, a.into)]
            if counts != [c.values if c else None for c in (b.times, b.into)]:
                return False
            if not _same(a.steps, b.steps):
                return False
        elif isinstance(a, Fill) and isinstance(b, Fill):
            if not _same(a.steps, b.steps):
                return False
        elif isinstance(a, Special) and isinstance(b, Special):
            if _said(a) != _said(b):
                return False
        else:
            return False
    return True


def _said(step: Special) -> tuple[object, ...]:
    count = step.count.values if step.count is not None else None
    return step.kind, count, step.name.key if step.name is not None else None
