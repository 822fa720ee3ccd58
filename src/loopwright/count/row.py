"""One row worked over the stitches that hang: what is left of them, or why it does not fit."""

from __future__ import annotations

from math import gcd

from loopwright.count.affine import Affine, Range, first_negative, first_not_zero
from loopwright.count.live import Live, Parts, after_row, summed
from loopwright.count.tape import FILL, FIXED, GAP, LAST, PLACE, REMOVE, SLIP, TURN, Op, Tape
from loopwright.notation.source import Span
from loopwright.record import dataclass, replace

ONCE = Range(0, 0)


@dataclass(frozen=True, slots=True)
class Misfit:
    """Why a row does not fit.

    `kind` is ``short`` (stitches are left over), ``over`` (there are too few), ``uneven`` (the
    fill does not come out), ``past`` (the place where the fill should end lies behind already),
    ``no-gap``, ``no-marker``, ``marker-missed``, ``trouble`` or ``held`` (it takes stitches back
    whose number is not known here). `n` is the first n
    (or repeat, from 0) at which it happens and `have` the stitches of the stretch there; `before`
    and `after` are the fixed stitches around the fill of `unit` (0: no fill). `segment` counts
    the stretches between markers from 0, of `segments`. `always` is true where it happens at
    every n. `end` says where the stretch ends, if not at its marker or the end of the needle,
    and `begin` where it begins, if not at its marker or the start of the row. `behind` are the
    stitches that an earlier turn has left out of the row's reach.
    `span` counts from the start of the body's line.
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
    end: str = ""
    begin: str = ""
    behind: int = 0

    @property
    def used(self) -> int:
        return self.before + self.after


@dataclass(frozen=True, slots=True)
class Outcome:
    """What a row makes of the live stitches: the stretches `made`, in the row's own order, and
    the `rest` it has not reached, where it has `turned`. `fills` says how often each fill is
    repeated, in order; `yarn` is (fixed, per n) in plain loops. Behind a `misfit` nothing is made.
    """

    made: Parts
    misfit: Misfit | None
    fills: tuple[Affine, ...]
    yarn: tuple[float, float]
    rest: Parts = ()
    turned: bool = False

    def after(self, live: Live, in_round: bool) -> Live:
        """What the next row meets; `live` is what this one met."""
        return after_row(live, self.made, self.rest, self.turned, in_round)


def work_row(tape: Tape, live: Live, over: Range = ONCE) -> Outcome:
    """Work a row for every n of `over` at once."""
    if tape.broken:
        return Outcome(live.ahead, None, (), (0.0, 0.0))
    if tape.asks:
        # Nobody has said yet how many stitches its holders give back (`Tape.with_held`).
        return _fail(Misfit("held", over.low, 0, 0, 0, 0, 0, 1, True, tape.asks[0].span))
    if tape.trouble is not None:
        kind, span = tape.trouble
        return _fail(Misfit("trouble", over.low, 0, 0, 0, 0, 0, 1, True, span, kind))
    if len(live.ahead) > 1 and not tape.marked:
        return _pass_markers(tape, live, over)
    return _Worker(tape, live, over).run()


def _fail(misfit: Misfit) -> Outcome:
    return Outcome((), misfit, (), (0.0, 0.0))


def _pass_markers(tape: Tape, live: Live, over: Range) -> Outcome:
    """A row that speaks of no markers: they stay where they are if no stitch moves."""
    parts = live.ahead
    if tape.turns and not tape.even:
        # It may shape what lies before the first marker, if it turns before it gets there.
        near = _Worker(tape, live, over).run()
        if near.misfit is None:
            return near
    outcome = _Worker(tape, Live((summed(parts),), live.behind, live.gap), over).run()
    if outcome.misfit is not None:
        return outcome
    split = _split(parts, outcome.made[0], over) if outcome.turned else (parts, ())
    if not tape.even or split is None:
        span = tape.ops[0].span if tape.ops else None
        return _fail(
            Misfit(
                "marker-missed", over.low, parts[0].at(over.low), 0, 0, 0, 0, len(parts), True, span
            )
        )
    made, rest = split
    return Outcome(made, None, outcome.fills, outcome.yarn, rest, outcome.turned)


def _split(parts: Parts, taken: Affine, over: Range) -> tuple[Parts, Parts] | None:
    """Stretches parted behind the first `taken` stitches; None if it crosses a marker as n runs."""
    done = Affine(0)
    for at, part in enumerate(parts):
        left = (done + part) - taken
        if first_negative(left, over) is None:
            inside = taken - done
            if first_negative(inside, over) is not None:
                return None
            rest = _rest(left, parts[at + 1 :])
            return (*parts[:at], inside), rest
        if left.at(over.low) >= 0:
            return None
        done = done + part
    return None


def _rest(left: Affine, more: Parts) -> Parts:
    """What a turn leaves; nothing, where the row was worked to its end."""
    return () if left == Affine(0) and not more else (left, *more)


class _Worker:
    """Walks a tape: `part` gathers what lies between two hanging markers."""

    def __init__(self, tape: Tape, live: Live, over: Range) -> None:
        self.tape = tape
        self.live = live
        self.parts = live.ahead
        self.over = over
        self.segment = 0
        self.have = live.ahead[0]  # of this stretch, not yet worked
        self.done = Affine(0)  # worked since the row began
        self.out: list[Affine] = []
        self.fills: list[Affine] = []
        self.yarn_fixed = 0.0
        self.yarn_unit = 0.0
        self.carried = Affine(0)
        self.begin = ""

    def run(self) -> Outcome:
        part: list[Op] = []
        rest: Parts = ()
        turned = False
        misfit: Misfit | None = None
        for op in self.tape.ops:
            if op.kind in (SLIP, REMOVE):
                misfit = self._to_marker(part, op)
            elif op.kind in (LAST, GAP):
                misfit = self._to_point(part, op)
            elif op.kind == TURN:
                turned = True
                misfit, rest = self._turn(part, op)
            else:
                part.append(op)
                continue
            if misfit is not None:
                return _fail(misfit)
            part = []
        if not turned:
            misfit = self._to_marker(part, None)
            if misfit is not None:
                return _fail(misfit)
        made = (*self.out, self.carried) if turned else tuple(self.out)
        return Outcome(
            made, None, tuple(self.fills), (self.yarn_fixed, self.yarn_unit), rest, turned
        )

    def _to_marker(self, part: list[Op], marker: Op | None) -> Misfit | None:
        """Work the steps up to a hanging marker (None: up to the end of the row)."""
        segments = len(self.parts)
        last = self.segment == segments - 1
        low = self.over.low
        if marker is not None and last:
            return Misfit("no-marker", low, 0, 0, 0, 0, self.segment, segments, True, marker.span)
        if marker is None and not last:
            span = part[-1].span if part else (self.tape.ops[-1].span if self.tape.ops else None)
            return self._missed(span)
        misfit = self._segment(part, self.have)
        if misfit is not None:
            return misfit
        self.done = self.done + self.have
        if marker is None or marker.kind == SLIP:
            self.out.append(self.carried)
            self.carried = Affine(0)
        self.segment += 1
        self.begin = ""
        if self.segment < segments:
            self.have = self.parts[self.segment]
        return None

    def _missed(self, span: Span | None) -> Misfit:
        low = self.over.low
        have = self.parts[self.segment].at(low)
        return Misfit(
            "marker-missed", low, have, 0, 0, 0, self.segment, len(self.parts), True, span
        )

    def _to_point(self, part: list[Op], op: Op) -> Misfit | None:
        """Work the steps up to a place that the row names: so many before the end or the gap."""
        later = (
            summed(self.parts[self.segment + 1 :])
            if self.segment + 1 < len(self.parts)
            else Affine(0)
        )
        low = self.over.low
        segments = len(self.parts)
        if op.kind == LAST:
            reach = (self.have + later).plus(-op.takes)
            end = f"the last {op.takes:,}"
        elif self.live.gap is None:
            return Misfit("no-gap", low, 0, 0, 0, 0, self.segment, segments, True, op.span)
        else:
            reach = (self.live.gap - self.done).plus(-op.takes)
            end = f"{op.takes:,} before the gap" if op.takes else "the gap"
        n = first_negative(reach, self.over)
        if n is not None:
            have = (self.have + later).at(n)
            return Misfit(
                "past", n, have, 0, op.takes, 0, self.segment, segments, True, op.span, end=end
            )
        if first_negative(self.have - reach, self.over) is not None:
            return self._missed(op.span)  # a marker hangs before that place
        misfit = self._segment(part, reach)
        if misfit is not None:
            return replace(misfit, end=end)
        self.done = self.done + reach
        self.have = self.have - reach
        self.begin = end
        return None

    def _turn(self, part: list[Op], op: Op) -> tuple[Misfit | None, Parts]:
        """Work the steps before a turn; what hangs behind them is left."""
        takes = sum(step.takes for step in part if step.kind == FIXED)
        left = self.have.plus(-takes)
        n = first_negative(left, self.over)
        if n is not None:
            return self._misfit("over", n, self.have, part or [op], None), ()
        misfit = self._segment(part, Affine(takes))
        return misfit, _rest(left, self.parts[self.segment + 1 :])

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
        gone = Affine(0)
        for at, op in enumerate(part):
            if op.kind == FIXED:
                # Held stitches come back here: what is worked before them must hang already.
                n = first_negative(have - gone, self.over) if op.takes < 0 else None
                if n is not None:
                    early = self._misfit("over", n, have, part[:at], None)
                    return replace(
                        early, before=gone.at(n), after=0, end="where stitches are taken"
                    )
                gone = gone.plus(op.takes)
                made = made.plus(op.makes)
                self.yarn_fixed += op.yarn
            elif op.kind == FILL:
                gone = gone + Affine(op.takes * times.fixed, op.takes * times.unit)
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
            len(self.parts),
            self._always(kind, have.plus(-before - after), unit),
            span,
            begin=self.begin,
            behind=summed(self.live.behind).at(n) if self.live.behind else 0,
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
