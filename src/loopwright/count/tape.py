"""A body for one size, boiled down to what counting needs."""

from __future__ import annotations

from collections.abc import Mapping

from loopwright.model.body import Body, Fill, Group, Step, Stitches, words_of
from loopwright.notation.bounds import MAX_MARKERS
from loopwright.notation.source import Span
from loopwright.notation.tree import Special
from loopwright.record import dataclass, replace

FIXED, FILL, PLACE, SLIP, REMOVE, TURN, LAST, GAP, TAKE = range(9)
_MARKERS = {"pm": PLACE, "sm": SLIP, "rm": REMOVE}
_POINTS = ("marker", "turn")


@dataclass(frozen=True, slots=True)
class Op:
    """Fixed stitches (once), a fill's unit, a marker word, a turn, or where a fill ends.

    `takes`, `makes` are stitches and `yarn` plain loops, of the fixed stitches or of one unit;
    of `LAST` and `GAP` `takes` is how many stitches before the end or the gap the fill stops.
    `name` is the holder that fixed stitches go to, or that `TAKE` empties. `span` counts from the
    start of the body's line.
    """

    kind: int
    takes: int
    makes: int
    yarn: float
    span: Span
    name: str = ""


@dataclass(frozen=True, slots=True, eq=False)
class Tape:
    """The ops of a body. `even` where every step makes as many stitches as it takes;
    `marked` where a marker word stands in it; `trouble` is the step that cannot be counted
    (``zero``: the fill's unit takes nothing; ``two``: another fill stands before it without a
    marker between; ``markers``: too many; ``turn``: a fill before a turn says not where it stops;
    ``turned``: steps behind a turn; ``anchor``: no fill before the words that end one) with its
    place. `turns` where the row turns before its end.
    """

    ops: tuple[Op, ...]
    even: bool
    marked: bool
    trouble: tuple[str, Span] | None
    broken: bool
    turns: bool = False

    @property
    def holds(self) -> tuple[Op, ...]:
        """The stitches that go onto holders."""
        return tuple(op for op in self.ops if op.name and op.kind == FIXED)

    @property
    def asks(self) -> tuple[Op, ...]:
        """The holders that the row empties."""
        return tuple(op for op in self.ops if op.kind == TAKE)

    def with_held(self, held: Mapping[str, int]) -> Tape:
        """The tape with the held stitches put back on the left needle; unknown holders: none."""
        ops = tuple(
            Op(FIXED, -held.get(op.name, 0), 0, 0.0, op.span) if op.kind == TAKE else op
            for op in self.ops
        )
        return replace(self, ops=ops)

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
        elif not isinstance(step, Special):
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


def stitches_of(steps: tuple[Step, ...], size: int) -> tuple[int, int]:
    """What steps take and make in one size; a fill among them counts as one unit."""
    found = _measure(steps, size)
    return found.takes, found.makes


def _is_plain(step: Step) -> bool:
    """No fill, no marker, no turn and nothing that is not a stitch inside."""
    if isinstance(step, Stitches):
        return step.stitch.kind not in _POINTS
    if isinstance(step, Fill | Special):
        return False
    return all(_is_plain(inner) for inner in step.steps)


def tape_of(body: Body, size: int) -> Tape:
    """The tape of a body for one size (by its place in `sizes`)."""
    ops: list[Op] = []
    maker = _Maker(ops, size)
    if not body.broken:
        maker.add(body.steps)
    return Tape(tuple(ops), maker.even, maker.markers > 0, maker.trouble, body.broken, maker.turned)


class Tapes:
    """Tapes by body and size, each made once."""

    def __init__(self) -> None:
        self._made: dict[tuple[int, int], Tape] = {}
        self._kept: list[Body] = []  # ids stay valid while the bodies live

    def of(self, body: Body, size: int) -> Tape:
        key = (id(body), size)
        found = self._made.get(key)
        if found is None:
            found = self._made[key] = tape_of(body, size)
            self._kept.append(body)
        return found


class _Maker:
    def __init__(self, ops: list[Op], size: int) -> None:
        self.ops = ops
        self.size = size
        self.even = True
        self.markers = 0
        self.open_fill = False
        self.turned = False
        self.trouble: tuple[str, Span] | None = None

    def add(self, steps: tuple[Step, ...]) -> None:
        plain = 0  # the steps before this place are in the tape
        for at, step in enumerate(steps):
            if not self.turned and _is_plain(step):
                continue
            if plain < at:
                self._fixed(steps[plain:at])
            plain = at + 1
            if self.turned:
                self.trouble = ("turned", step.span)
            elif isinstance(step, Fill):
                self._fill(step)
            elif isinstance(step, Group):
                self._group(step)
            elif isinstance(step, Special):
                self._special(step)
            elif step.stitch.kind == "turn":
                self._turn(step)
            else:
                self._marker(step)
            if self.trouble is not None:
                return
        if plain < len(steps):
            self._fixed(steps[plain:])

    def _group(self, step: Group) -> None:
        """A group with markers or fills, written out; its markers bound how often."""
        if step.into is not None:
            self.trouble = ("into", step.span)
            return
        for _ in range(step.number(self.size)):
            before = (len(self.ops), self.markers)
            self.add(step.steps)
            if self.trouble is not None or before == (len(self.ops), self.markers):
                return

    def _fixed(self, steps: tuple[Step, ...]) -> None:
        """Plain steps beside each other, at once."""
        found = _measure(steps, self.size)
        span = steps[0].span if len(steps) == 1 else steps[0].span.to(steps[-1].span)
        self.even = self.even and found.even
        last = self.ops[-1] if self.ops else None
        if last is not None and last.kind == FIXED and not last.name:
            self.ops[-1] = Op(
                FIXED,
                last.takes + found.takes,
                last.makes + found.makes,
                last.yarn + found.yarn,
                last.span.to(span),
            )
        else:
            self.ops.append(Op(FIXED, found.takes, found.makes, found.yarn, span))

    def _fill(self, step: Fill) -> None:
        found = _measure(step.steps, self.size)
        self.even = self.even and found.even
        if any(s.stitch.kind in _POINTS for s in words_of(step.steps)):
            self.trouble = ("inside", step.span)
        elif found.takes == 0:
            self.trouble = ("zero", step.span)
        elif self.open_fill:
            self.trouble = ("two", step.span)
        self.open_fill = True
        self.ops.append(Op(FILL, found.takes, found.makes, found.yarn, step.span))

    def _turn(self, step: Stitches) -> None:
        if self.open_fill:
            self.trouble = ("turn", step.span)
        self.turned = True
        self.ops.append(Op(TURN, 0, 0, 0.0, step.span))

    def _special(self, step: Special) -> None:
        count = step.count.at(self.size) if step.count is not None else 0
        name = step.name.key if step.name is not None else ""
        if step.kind == "hold":
            self.ops.append(Op(FIXED, count, 0, 0.0, step.span, name))
            self.even = False
        elif step.kind == "take":
            self.ops.append(Op(TAKE, 0, 0, 0.0, step.span, name))
            self.even = False
        elif step.kind == "pick":
            self.ops.append(Op(FIXED, 0, count, float(count), step.span))
            self.even = False
        else:
            if not self.open_fill:
                self.trouble = ("anchor", step.span)
            self.open_fill = False
            self.ops.append(Op(LAST if step.kind == "last" else GAP, count, 0, 0.0, step.span))

    def _marker(self, step: Stitches) -> None:
        kind = _MARKERS[step.stitch.word]
        for _ in range(step.number(self.size)):
            self.markers += 1
            if self.markers > MAX_MARKERS:
                self.trouble = ("markers", step.span)
                return
            self.ops.append(Op(kind, 0, 0, 0.0, step.span))
            # A placed marker does not part the stitches that are still to be worked.
            if kind != PLACE:
                self.open_fill = False
