"""The set of counts that a piece can be cast on with, solved exactly.

The walk is done once with an unknown cast-on x: every count is ``factor * x + offset``, every
fill and form a congruence, every row a bound. Where a motif multiplies its stitches and is
worked until a count, the number of repeats depends on x; such counts are left to the walk, which
tries the members of the set one by one.
"""

from __future__ import annotations

from fractions import Fraction
from typing import Protocol

from loopwright.count.affine import CountSet
from loopwright.count.tape import FILL, FIXED, GAP, LAST, PLACE, REMOVE, SLIP, TAKE, TURN, Op, Tape
from loopwright.model.body import Body
from loopwright.model.pattern import (
    BeginRound,
    BindOff,
    CastOn,
    Hold,
    JoinRound,
    LeaveLive,
    LeaveRound,
    Motif,
    PickUp,
    Piece,
    PieceRow,
    Spread,
    Take,
    Work,
)
from loopwright.notation.tree import Count, ForRows, Times, UntilStitches
from loopwright.record import dataclass

_BEYOND = (TURN, LAST, GAP, TAKE)
_MANY = 3  # three repeats show whether a motif adds evenly; that is all a congruence needs


class TapesLike(Protocol):
    def of(self, body: Body, size: int) -> Tape: ...


@dataclass(frozen=True, slots=True)
class Line:
    """``factor * x + offset``."""

    factor: Fraction
    offset: Fraction

    def __add__(self, other: Line) -> Line:
        return Line(self.factor + other.factor, self.offset + other.offset)

    def plus(self, number: int) -> Line:
        return Line(self.factor, self.offset + number)

    def scaled(self, by: Fraction) -> Line:
        return Line(self.factor * by, self.offset * by)


_ZERO = Line(Fraction(0), Fraction(0))
Lines = tuple[Line, ...]


class _Stopped(Exception):
    """The piece cannot be followed further with an unknown count."""


@dataclass(slots=True)
class _Solver:
    found: CountSet
    fill_once: bool = False

    def congruent(self, line: Line, modulus: int) -> None:
        self.found = self.found.congruent(line.factor, line.offset, modulus)

    def at_least_zero(self, line: Line) -> None:
        self.found = self.found.at_least(line.factor, line.offset)

    def row(self, tape: Tape, state: Lines) -> Lines:
        """Work a row; every condition narrows the set."""
        if tape.broken or tape.trouble is not None:
            raise _Stopped
        if any(op.kind in _BEYOND for op in tape.ops):
            raise _Stopped  # short rows and holders are left to the walk
        if len(state) > 1 and not tape.marked:
            if not tape.even:
                raise _Stopped
            whole = _ZERO
            for segment in state:
                whole = whole + segment
            self._segment(list(tape.ops), whole, [])
            return state
        out: list[Line] = []
        carried = _ZERO
        part: list[Op] = []
        at = 0
        for op in tape.ops:
            if op.kind in (SLIP, REMOVE):
                if at >= len(state) - 1:
                    raise _Stopped
                carried = carried + self._segment(part, state[at], out, carried)
                if op.kind == SLIP:
                    out.append(carried)
                    carried = _ZERO
                part = []
                at += 1
            else:
                part.append(op)
        if at != len(state) - 1:
            raise _Stopped
        last = self._segment(part, state[at], out, carried)
        out.append(carried + last)
        return tuple(out)

    def _segment(self, part: list[Op], have: Line, out: list[Line], carried: Line = _ZERO) -> Line:
        """What a stretch between markers becomes, less what was carried into it."""
        fill = next((op for op in part if op.kind == FILL), None)
        rest = have.plus(-sum(op.takes for op in part if op.kind == FIXED))
        times = _ZERO
        if fill is None:
            self.congruent(rest, 0)
        else:
            self.at_least_zero(rest.plus(-fill.takes) if self.fill_once else rest)
            self.congruent(rest, fill.takes)
            times = rest.scaled(Fraction(1, fill.takes))
        made = carried
        for op in part:
            if op.kind == FIXED:
                made = made.plus(op.makes)
            elif op.kind == FILL:
                made = made + times.scaled(Fraction(op.makes))
            elif op.kind == PLACE:
                out.append(made)
                made = carried = _ZERO
        return Line(made.factor - carried.factor, made.offset - carried.offset)

    def form(self, motif: Motif, state: Lines) -> None:
        form = motif.form
        if form is None:
            return
        whole = _ZERO
        for segment in state:
            whole = whole + segment
        rest = whole.plus(-form.fixed)
        if form.unit == 0:
            self.congruent(rest, 0)
            return
        self.congruent(rest, form.unit)
        self.at_least_zero(rest.plus(-form.unit))

    def more(self, state: Lines, count: int, in_round: bool) -> Lines:
        """Stitches added at the end of the row just worked."""
        if in_round:
            return (*state[:-1], state[-1].plus(count))
        return (state[0].plus(count), *state[1:])

    def held(self, state: Lines, count: int) -> Lines:
        """The first stitches go onto a holder."""
        self.at_least_zero(state[0].plus(-count))
        return (state[0].plus(-count), *state[1:])

    def rows(self, tapes: list[Tape], state: Lines, in_round: bool) -> Lines:
        for tape in tapes:
            state = self.row(tape, state)
            if not in_round and len(state) > 1:
                state = state[::-1]
        return state

    def repeat(
        self, tapes: list[Tape], state: Lines, reps: int, in_round: bool, motif: Motif | None
    ) -> Lines:
        """`reps` repeats: a few are worked, the rest follow where each adds the same."""
        seen: list[Lines] = [state]
        for done in range(reps):
            if motif is not None:
                self.form(motif, state)
            state = self.rows(tapes, state, in_round)
            seen.append(state)
            if done + 1 >= _MANY and len(seen[-1]) == len(seen[-2]) == len(seen[-3]):
                first = _difference(seen[-3], seen[-2])
                if first == _difference(seen[-2], seen[-1]):
                    left = reps - done - 1
                    end = tuple(
                        Line(s.factor + d.factor * left, s.offset + d.offset * left)
                        for s, d in zip(state, first, strict=True)
                    )
                    for line in end:
                        self.at_least_zero(line)
                    return end
            if done > 200:
                raise _Stopped
        return state


def _difference(before: Lines, after: Lines) -> Lines:
    return tuple(
        Line(b.factor - a.factor, b.offset - a.offset) for a, b in zip(before, after, strict=True)
    )


def counts_for(piece: Piece, size: int, tapes: TapesLike) -> CountSet:
    """The cast-on counts that the rows and motif forms of a piece take, in one size.

    Exact where no motif multiplies its stitches until a count; there it is a set that holds
    every right count, and the walk decides.
    """
    solver = _Solver(CountSet.every(1))
    state: Lines = ()
    in_round = piece.in_round
    try:
        for item in piece.items:
            if isinstance(item, CastOn) and not (item.more and state):
                if state:
                    break
                state = (Line(Fraction(1), Fraction(0)),)
            elif isinstance(item, JoinRound | LeaveRound):
                in_round = isinstance(item, JoinRound)
            elif isinstance(item, BindOff | LeaveLive | Take | BeginRound):
                break
            elif not state:
                continue
            elif isinstance(item, CastOn | PickUp):
                assert item.count is not None or isinstance(item, CastOn)
                if item.count is None:
                    break
                state = solver.more(state, item.count.at(size), in_round)
            elif isinstance(item, Hold):
                if item.count is None:
                    break
                state = solver.held(state, item.count.at(size))
            elif isinstance(item, PieceRow):
                state = _piece_row(solver, item, size, state, in_round, tapes)
            elif isinstance(item, Spread):
                if item.motif is None or item.plain is None:
                    break
                state = _spread(solver, item, item.motif, item.plain, size, state, in_round, tapes)
            elif isinstance(item, Work):
                if item.motif is None:
                    break
                state = _work(solver, item, item.motif, size, state, in_round, tapes)
    except _Stopped:
        pass
    return solver.found


def _piece_row(
    solver: _Solver, item: PieceRow, size: int, state: Lines, in_round: bool, tapes: TapesLike
) -> Lines:
    if item.times is not None:
        times = item.times.at(size)
    elif item.first is not None and item.last is not None:
        times = item.last.at(size) - item.first.at(size) + 1
    else:
        times = 1
    return solver.repeat([tapes.of(item.row.body, size)], state, times, in_round, None)


def _spread(
    solver: _Solver,
    item: Spread,
    motif: Motif,
    plain: Motif,
    size: int,
    state: Lines,
    in_round: bool,
    tapes: TapesLike,
) -> Lines:
    """The rows between keep the count: one change and they, so many times over."""
    change = Work(item.name, motif, item.times, item.span, item.line)
    between = ForRows(Count((len(plain.rows),), item.span), item.span)
    rest = Work(item.plain_name, plain, between, item.span, item.line)
    state = _work(solver, rest, plain, size, state, in_round, tapes)
    state = _work(solver, change, motif, size, state, True, tapes)
    return _work(solver, rest, plain, size, state, in_round, tapes)


def _work(
    solver: _Solver,
    item: Work,
    motif: Motif,
    size: int,
    state: Lines,
    in_round: bool,
    tapes: TapesLike,
) -> Lines:
    rows = [tapes.of(row.body, size) for row in motif.rows]
    if not rows:
        return state  # none could be read, or none is written: that is said elsewhere
    amount = item.amount
    if isinstance(amount, UntilStitches):
        solver.form(motif, state)
        after = solver.rows(rows, state, in_round)
        if len(after) != len(state):
            raise _Stopped
        step = _difference(state, after)
        whole = _ZERO
        change = _ZERO
        for segment, moved in zip(state, step, strict=True):
            whole, change = whole + segment, change + moved
        if change.factor != 0 or change.offset == 0 or change.offset.denominator != 1:
            raise _Stopped
        by = int(change.offset)
        gap = whole.plus(-amount.count.at(size))
        solver.congruent(gap, abs(by))
        solver.at_least_zero(gap.plus(by) if by < 0 else gap.scaled(Fraction(-1)).plus(-by))
        # The second repeat shows the conditions that grow; then what hangs is known.
        solver.rows(rows, after, in_round)
        if len(state) == 1:
            return (Line(Fraction(0), Fraction(amount.count.at(size))),)
        raise _Stopped
    if isinstance(amount, Times):
        return solver.repeat(rows, state, amount.count.at(size), in_round, motif)
    if isinstance(amount, ForRows):
        reps, part = divmod(amount.rows.at(size), len(rows))
        state = solver.repeat(rows, state, reps, in_round, motif)
        return solver.rows(rows[:part], state, in_round)
    # By length or by yarn: how often does not change which counts fit, if it changes none.
    solver.form(motif, state)
    after = solver.rows(rows, state, in_round)
    if after != state:
        solver.rows(rows, after, in_round)
        raise _Stopped
    return after


def holds_on(motif: Motif, size: int, tapes: TapesLike) -> CountSet:
    """The counts on which a motif's own rows hold with each fill worked, whatever its form says."""
    solver = _Solver(CountSet.every(1), fill_once=True)
    try:
        state: Lines = (Line(Fraction(1), Fraction(0)),)
        rows = [tapes.of(row.body, size) for row in motif.rows]
        solver.rows(rows, state, motif.in_round)
    except _Stopped:
        return CountSet.none()
    return solver.found
