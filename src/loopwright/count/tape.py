"""A body for one size, boiled down to what counting needs."""

from __future__ import annotations

from dataclasses import dataclass

from loopwright.model.body import Body, Fill, Group, Step, Stitches, words_of
from loopwright.notation.bounds import MAX_MARKERS
from loopwright.notation.source import Span

FIXED, FILL, PLACE, SLIP, REMOVE = range(5)
_MARKERS = {"pm": PLACE, "sm": SLIP, "rm": REMOVE}


@dataclass(frozen=True, slots=True)
class Op:
    """Fixed stitches (once), a fill's unit, or a marker word.

    `takes`, `makes` are stitches and `yarn` plain loops, of the fixed stitches or of one unit.
    `span` counts from the start of the body's line.
    """

    kind: int
    takes: int
    makes: int
    yarn: float
    span: Span


@dataclass(frozen=True, slots=True, eq=False)
class Tape:
    """The ops of a body. `even` where every step makes as many stitches as it takes;
    `marked` where a marker word stands in it; `trouble` is the fill that cannot be counted
    (``zero``: its unit takes nothing; ``two``: another fill stands before it without a marker
    between; ``markers``: too many) with its place.
    """

    ops: tuple[Op, ...]
    even: bool
    marked: bool
    trouble: tuple[str, Span] | None
    broken: bool

    @property
    def fixed_takes(self) -> int:
        return sum(op.takes for op in self.ops if op.kind == FIXED)

    @property
    def fixed_makes(self) -> int:
        return sum(op.makes for op in self.ops if op.kind == FIXED)

    @property
    def fills(self) -> tuple[Op, ...]:
        return tuple(op for op in self.ops if op.kind == FILL)


@dataclass(slots=True)
class _Sum:
    takes: int = 0
    makes: int = 0
    yarn: float = 0.0
    even: bool = True


def _measure(steps: tuple[Step, ...], size: int) -> _Sum:
    """What steps without fills and markers take, make and eat."""
    total = _Sum()
    for step in steps:
        if isinstance(step, Stitches):
            number = step.number(size)
            stitch = step.stitch
            total.takes += stitch.takes * number
            total.makes += stitch.makes * number
            total.yarn += stitch.yarn * number
            total.even = total.even and stitch.takes == stitch.makes
        else:
            inner = _measure(step.steps, size)
            if isinstance(step, Group) and step.into is not None:
                total.takes += step.into.at(size)
                total.makes += inner.makes
                total.even = total.even and inner.makes == step.into.at(size) == 1
            else:
                times = step.number(size) if isinstance(step, Group) else 1
                total.takes += inner.takes * times
                total.makes += inner.makes * times
                inner.yarn *= times
                total.even = total.even and inner.even
            total.yarn += inner.yarn
    return total


def _is_plain(step: Step) -> bool:
    """No fill and no marker inside."""
    if isinstance(step, Stitches):
        return step.stitch.kind != "marker"
    return not isinstance(step, Fill) and all(_is_plain(inner) for inner in step.steps)


def tape_of(body: Body, size: int) -> Tape:
    """The tape of a body for one size (by its place in `sizes`)."""
    ops: list[Op] = []
    maker = _Maker(ops, size)
    if not body.broken:
        maker.add(body.steps)
        maker.close()
    return Tape(tuple(ops), maker.even, maker.markers > 0, maker.trouble, body.broken)


class _Maker:
    """Gathers fixed stitches that follow one another, and makes one op of them at their end."""

    def __init__(self, ops: list[Op], size: int) -> None:
        self.ops = ops
        self.size = size
        self.even = True
        self.markers = 0
        self.open_fill = False
        self.trouble: tuple[str, Span] | None = None
        self.first: Span | None = None
        self.last: Span | None = None
        self.takes = self.makes = 0
        self.yarn = 0.0

    def add(self, steps: tuple[Step, ...]) -> None:
        for step in steps:
            if type(step) is Stitches and step.stitch.kind != "marker":
                number = step.number(self.size)
                stitch = step.stitch
                takes, makes = stitch.takes, stitch.makes
                if takes != makes:
                    self.even = False
                self._fixed(takes * number, makes * number, stitch.yarn * number, step.span)
                continue
            if _is_plain(step):
                found = _measure((step,), self.size)
                self.even = self.even and found.even
                self._fixed(found.takes, found.makes, found.yarn, step.span)
            elif isinstance(step, Fill):
                self._fill(step)
            elif isinstance(step, Group):
                self._group(step)
            else:
                self._marker(step)
            if self.trouble is not None:
                return

    def close(self) -> None:
        """Make an op of the fixed stitches gathered so far."""
        if self.first is not None and self.last is not None:
            span = Span(self.first.start, self.last.end)
            self.ops.append(Op(FIXED, self.takes, self.makes, self.yarn, span))
            self.first = None

    def _added(self) -> tuple[int, int]:
        return len(self.ops) + (self.first is not None), self.markers

    def _group(self, step: Group) -> None:
        """A group with markers or fills, written out; its markers bound how often."""
        if step.into is not None:
            self.trouble = ("into", step.span)
            return
        for _ in range(step.number(self.size)):
            before = self._added()
            self.add(step.steps)
            if self.trouble is not None or before == self._added():
                return

    def _fixed(self, takes: int, makes: int, yarn: float, span: Span) -> None:
        if self.first is None:
            self.first = span
            self.takes, self.makes, self.yarn = takes, makes, yarn
        else:
            self.takes += takes
            self.makes += makes
            self.yarn += yarn
        self.last = span

    def _fill(self, step: Fill) -> None:
        found = _measure(step.steps, self.size)
        self.even = self.even and found.even
        if any(s.stitch.kind == "marker" for s in words_of(step.steps)):
            self.trouble = ("inside", step.span)
        elif found.takes == 0:
            self.trouble = ("zero", step.span)
        elif self.open_fill:
            self.trouble = ("two", step.span)
        self.open_fill = True
        self.close()
        self.ops.append(Op(FILL, found.takes, found.makes, found.yarn, step.span))

    def _marker(self, step: Stitches) -> None:
        kind = _MARKERS[step.stitch.word]
        self.close()
        for _ in range(step.number(self.size)):
            self.markers += 1
            if self.markers > MAX_MARKERS:
                self.trouble = ("markers", step.span)
                return
            self.ops.append(Op(kind, 0, 0, 0.0, step.span))
            # A placed marker does not part the stitches that are still to be worked.
            if kind != PLACE:
                self.open_fill = False
