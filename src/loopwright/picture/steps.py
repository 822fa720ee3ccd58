"""A body written out stitch by stitch, as far as a picture needs it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from loopwright.model.body import Body, Fill, Group, Stitches
from loopwright.model.stitch import Stitch
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class Op:
    """One stitch as worked, a marker, or a group worked into the same stitches.

    `takes` and `makes` are stitches, `yarn` plain loops. `stitch` is None for a group, whose
    stitches stand in `inner`. Equal stitches of a row share one `Op`.
    """

    stitch: Stitch | None
    modifiers: tuple[str, ...]
    takes: int
    makes: int
    yarn: float
    inner: tuple[Op, ...] = ()

    @property
    def is_marker(self) -> bool:
        return self.stitch is not None and self.stitch.kind == "marker"

    @property
    def is_turn(self) -> bool:
        return self.stitch is not None and self.stitch.kind == "turn"

    @property
    def is_point(self) -> bool:
        """A marker or a turn: it stands on the line between two stitches."""
        return self.is_marker or self.is_turn

    @property
    def goes(self) -> bool:
        """It takes stitches and makes none: bound off or dropped."""
        return self.makes == 0 and self.takes > 0


@dataclass(frozen=True, slots=True)
class Stretch:
    """Where a fill came to lie: ops `start` to `stop` are its unit of `unit` ops, repeated.

    `index` counts the fills of the row in the order in which they are worked.
    """

    index: int
    start: int
    stop: int
    unit: int


@dataclass(frozen=True, slots=True)
class Laid:
    """A row's ops in the order in which they are worked, and where its fills lie."""

    ops: tuple[Op, ...]
    stretches: tuple[Stretch, ...]

    @property
    def takes(self) -> int:
        return sum(op.takes for op in self.ops)

    @property
    def makes(self) -> int:
        return sum(op.makes for op in self.ops)


def lay_out(body: Body, size: int, fills: Sequence[int]) -> Laid:
    """The ops of a body whose fills are worked so many times, in order.

    Costs time by the number of stitches. Steps of a kind that this room does not know are passed
    over, so that `Laid.takes` then differs from what hangs on the needle.
    """
    layer = _Layer(size, fills)
    layer.add(body.steps)
    return Laid(tuple(layer.ops), tuple(layer.stretches))


class _Layer:
    def __init__(self, size: int, fills: Sequence[int]) -> None:
        self.size = size
        self.fills = fills
        self.ops: list[Op] = []
        self.stretches: list[Stretch] = []
        self.fill = 0

    def add(self, steps: Sequence[Any]) -> None:
        for step in steps:
            if isinstance(step, Stitches):
                self.ops += [_one(step)] * step.number(self.size)
            elif isinstance(step, Fill):
                self._fill(step)
            elif isinstance(step, Group):
                self._group(step)

    def _fill(self, step: Fill) -> None:
        index = self.fill
        self.fill += 1
        times = self.fills[index] if index < len(self.fills) else 0
        start = len(self.ops)
        self.add(step.steps)
        unit = self.ops[start:]
        del self.ops[start:]
        self.ops += unit * times
        if times and unit:
            self.stretches.append(Stretch(index, start, len(self.ops), len(unit)))

    def _group(self, step: Group) -> None:
        if step.into is None:
            self._times(step)
            return
        inner = _Layer(self.size, ())
        inner.add(step.steps)
        self.ops.append(
            Op(
                None,
                (),
                step.into.at(self.size),
                sum(op.makes for op in inner.ops),
                sum(op.yarn for op in inner.ops),
                tuple(inner.ops),
            )
        )

    def _times(self, step: Group) -> None:
        """A group so many times: written out once, unless fills in it each lie elsewhere."""
        for done in range(step.number(self.size)):
            before, fill = len(self.ops), self.fill
            self.add(step.steps)
            if fill == self.fill:
                self.ops += self.ops[before:] * (step.number(self.size) - done - 1)
                return


def _one(step: Stitches) -> Op:
    stitch = step.stitch
    return Op(stitch, step.modifiers, stitch.takes, stitch.makes, stitch.yarn)
