"""One row worked over the stitches that hang: what is left of them, or why it does not fit."""

from __future__ import annotations

from dataclasses import dataclass
from math import gcd

from loopwright.count.affine import Affine, Range, first_negative, first_not_zero
from loopwright.count.tape import FILL, FIXED, PLACE, REMOVE, SLIP, Op, Tape
from loopwright.notation.source import Span

ONCE = Range(0, 0)
State = tuple[Affine, ...]
"""Stitches between the markers (and the ends), in the order in which the row meets them."""


@dataclass(frozen=True, slots=True)
class Misfit:
    """Why a row does not fit.

    `kind` is ``short`` (stitches are left over), ``over`` (there are too few), ``uneven`` (the
    fill does not come out), ``no-marker``, ``marker-missed`` or ``trouble``. `n` is the first n
    (or repeat, from 0) at which it happens and `have` the stitches of the stretch there; `before`
    and `after` are the fixed stitches around the fill of `unit` (0: no fill). `segment` counts
    the stretches between markers from 0, of `segments`. `always` is true where it happens at
    every n. `span` counts from the start of the body's line.
    """

    kind: str
    n: int
    have: int
    before: int
    after: int
    unit: int
    segment: int
    segments: int
    always: bool
    span: Span | None
    detail: str = ""

    @property
    def used(self) -> int:
        return self.before + self.after


@dataclass(frozen=True, slots=True)
class Outcome:
    """What a row makes of a state. `fills` says how often each fill is repeated, in order;
    `yarn` is (fixed, per n) in plain loops."""

    state: State
    misfit: Misfit | None
    fills: tuple[Affine, ...]
    yarn: tuple[float, float]


def total(state: State) -> Affine:
    """All the stitches of a state."""
    if len(state) == 1:
        return state[0]
    return Affine(sum(s.fixed for s in state), sum(s.unit for s in state))


def work_row(tape: Tape, state: State, over: Range = ONCE) -> Outcome:
    """Work a row for every n of `over` at once.

    On a misfit the outcome's state is the one that came in, and its fills are empty.
    """
    if tape.broken:
        return Outcome(state, None, (), (0.0, 0.0))
    if tape.trouble is not None:
        kind, span = tape.trouble
        return _fail(state, Misfit("trouble", over.low, 0, 0, 0, 0, 0, 1, True, span, kind))
    if len(state) > 1 and not tape.marked:
        return _pass_markers(tape, state, over)
    return _Worker(tape, state, over).run()


def _fail(state: State, misfit: Misfit) -> Outcome:
    return Outcome(state, misfit, (), (0.0, 0.0))


def _pass_markers(tape: Tape, state: State, over: Range) -> Outcome:
    """A row that speaks of no markers: they stay where they are if no stitch moves."""
    outcome = _Worker(tape, (total(state),), over).run()
    if outcome.misfit is not None:
        return Outcome(state, outcome.misfit, (), (0.0, 0.0))
    if not tape.even:
        span = tape.ops[0].span if tape.ops else None
        return _fail(
            state,
            Misfit(
                "marker-missed", over.low, state[0].at(over.low), 0, 0, 0, 0, len(state), True, span
            ),
        )
    return Outcome(state, None, outcome.fills, outcome.yarn)


class _Worker:
    """Walks a tape: `part` gathers what lies between two hanging markers."""

    def __init__(self, tape: Tape, state: State, over: Range) -> None:
        self.tape = tape
        self.state = state
        self.over = over
        self.segment = 0
        self.out: list[Affine] = []
        self.fills: list[Affine] = []
        self.yarn_fixed = 0.0
        self.yarn_unit = 0.0
        self.carried = Affine(0)

    def run(self) -> Outcome:
        part: list[Op] = []
        if not self.tape.marked:
            part += self.tape.ops
        else:
            for op in self.tape.ops:
                if op.kind in (SLIP, REMOVE):
                    misfit = self._close(part, op)
                    if misfit is not None:
                        return _fail(self.state, misfit)
                    part = []
                else:
                    part.append(op)
        misfit = self._close(part, None)
        if misfit is not None:
            return _fail(self.state, misfit)
        return Outcome(tuple(self.out), None, tuple(self.fills), (self.yarn_fixed, self.yarn_unit))

    def _close(self, part: list[Op], marker: Op | None) -> Misfit | None:
        """Work the steps up to a hanging marker (None: up to the end of the row)."""
        segments = len(self.state)
        last = self.segment == segments - 1
        low = self.over.low
        if marker is not None and last:
            return Misfit("no-marker", low, 0, 0, 0, 0, self.segment, segments, True, marker.span)
        if marker is None and not last:
            span = part[-1].span if part else (self.tape.ops[-1].span if self.tape.ops else None)
            return Misfit(
                "marker-missed",
                low,
                self.state[self.segment].at(low),
                0,
                0,
                0,
                self.segment,
                segments,
                True,
                span,
            )
        have = self.state[self.segment]
        misfit = self._segment(part, have)
        if misfit is not None:
            return misfit
        if marker is None or marker.kind == SLIP:
            self.out.append(self.carried)
            self.carried = Affine(0)
        self.segment += 1
        return None

    def _segment(self, part: list[Op], have: Affine) -> Misfit | None:
        fill: Op | None = None
        takes = 0
        for op in part:
            if op.kind == FIXED:
                takes += op.takes
            elif op.kind == FILL and fill is None:
                fill = op
        rest = have.plus(-takes)
        times = Affine(0)
        if fill is None:
            n = first_not_zero(rest, 0, self.over)
            if n is not None:
                kind = "short" if rest.at(n) > 0 else "over"
                return self._misfit(kind, n, have, part, None)
        else:
            n = first_negative(rest, self.over)
            m = first_not_zero(rest, fill.takes, self.over)
            if n is not None and (m is None or n <= m):
                return self._misfit("over", n, have, part, fill)
            if m is not None:
                return self._misfit("uneven", m, have, part, fill)
            times = Affine(rest.fixed // fill.takes, rest.unit // fill.takes)
            self.fills.append(times)
        made = self.carried
        for op in part:
            if op.kind == FIXED:
                made = made.plus(op.makes)
                self.yarn_fixed += op.yarn
            elif op.kind == FILL:
                made = made + Affine(op.makes * times.fixed, op.makes * times.unit)
                self.yarn_fixed += op.yarn * times.fixed
                self.yarn_unit += op.yarn * times.unit
            else:
                assert op.kind == PLACE
                self.out.append(made)
                made = Affine(0)
        self.carried = made
        return None

    def _misfit(self, kind: str, n: int, have: Affine, part: list[Op], fill: Op | None) -> Misfit:
        before = after = 0
        seen = fill is None
        for op in part:
            if op is fill:
                seen = True
            elif op.kind == FIXED:
                if seen and fill is not None:
                    after += op.takes
                else:
                    before += op.takes
        unit = fill.takes if fill is not None else 0
        number = have.at(n)
        if fill is not None:
            span: Span | None = fill.span
        else:
            spans = [op.span for op in part]
            span = spans[0].to(spans[-1]) if spans else None
        return Misfit(
            kind,
            n,
            number,
            before,
            after,
            unit,
            self.segment,
            len(self.state),
            self._always(kind, have.plus(-before - after), unit),
            span,
        )

    def _always(self, kind: str, rest: Affine, unit: int) -> bool:
        """Whether no n of the range would fit."""
        if rest.unit == 0 or self.over.high == self.over.low:
            return True
        if kind == "uneven":
            # fixed + unit·n runs through all residues of its gcd: some fits if the gcd divides.
            return rest.fixed % gcd(rest.unit, unit) != 0
        if unit == 0:
            n = -rest.fixed // rest.unit
            inside = n >= self.over.low and (self.over.high is None or n <= self.over.high)
            return rest.at(n) != 0 or not inside
        return False
