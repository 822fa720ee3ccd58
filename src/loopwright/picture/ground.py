"""The stitches a chart is drawn on: as few as show every row's repeat once."""

from __future__ import annotations

from collections.abc import Sequence

from loopwright.count.affine import Affine, Range
from loopwright.count.live import Live, total
from loopwright.count.row import work_row
from loopwright.count.tape import FILL, PLACE, REMOVE, SLIP, Op, Tape
from loopwright.model.pattern import Motif
from loopwright.record import dataclass

_MOST_REPEATS = 40
_MOST_IN_STRETCH = 72
_MOST_COUNT = 160
_WIDEST = 1_000
"""Stitches of a row that a chart still shows."""


@dataclass(frozen=True, slots=True)
class Ground:
    """For each row of a chart, how often each fill is worked and how much of that is one repeat.

    Both are lists in the order in which the row works its fills.
    """

    times: tuple[tuple[int, ...], ...]
    growth: tuple[tuple[int, ...], ...]
    start: int


def ground_of(
    motif: Motif, tapes: Sequence[Tape], in_round: bool, count: int | None
) -> Ground | None:
    """The ground of a motif, or None where its rows fit no small number of stitches.

    `count` is what hangs where the motif is first worked, if it is known.
    """
    if not tapes or any(tape.broken or tape.trouble is not None for tape in tapes):
        return None
    form = motif.form
    if form is not None and form.unit:
        growth = _growth(tapes, Affine(form.fixed, form.unit), in_round)
        if growth is None:
            return None
        spare: Ground | None = None
        for n in range(1, _MOST_REPEATS + 1):
            times = _times(tapes, Live.of(form.unit * n + form.fixed), in_round)
            if times is None:
                continue
            found = Ground(times, growth, form.unit * n + form.fixed)
            if all(t >= g for ts, gs in zip(times, growth, strict=True) for t, g in zip(ts, gs)):  # noqa: B905
                return found
            spare = spare or found
        return spare
    for state in _states(motif, tapes, in_round, count):
        times = _times(tapes, state, in_round)
        if times is not None:
            once = tuple(tuple(min(t, 1) for t in ts) for ts in times)
            if form is not None:
                once = tuple(tuple(0 for _ in ts) for ts in times)
            return Ground(times, once, total(state).fixed)
    return None


def _times(
    tapes: Sequence[Tape], state: Live, in_round: bool
) -> tuple[tuple[int, ...], ...] | None:
    """How often each fill is worked, or None where a row does not fit (or a page would not)."""
    if total(state).fixed > _WIDEST:
        return None
    out: list[tuple[int, ...]] = []
    for tape in tapes:
        outcome = work_row(tape, state)
        if outcome.misfit is not None:
            return None
        out.append(tuple(fill.fixed for fill in outcome.fills))
        state = outcome.after(state, in_round)
        if total(state).fixed > _WIDEST:
            return None
    return tuple(out)


def _growth(
    tapes: Sequence[Tape], count: Affine, in_round: bool
) -> tuple[tuple[int, ...], ...] | None:
    state = Live((count,))
    out: list[tuple[int, ...]] = []
    for tape in tapes:
        outcome = work_row(tape, state, Range(_MOST_REPEATS, None))
        if outcome.misfit is not None:
            return None
        out.append(tuple(max(fill.unit, 0) for fill in outcome.fills))
        state = outcome.after(state, in_round)
    return tuple(out)


def _states(motif: Motif, tapes: Sequence[Tape], in_round: bool, count: int | None) -> list[Live]:
    """Stitches to begin with, the likeliest first."""
    if motif.form is not None:
        return [Live.of(motif.form.fixed)]
    found: list[Live] = []
    parts = 1 + max(sum(op.kind in (SLIP, REMOVE) for op in tape.ops) for tape in tapes)
    if not any(op.kind in (PLACE, REMOVE) for tape in tapes for op in tape.ops):
        for least in (1, 0):
            stretches = [_least(tapes, part, parts, in_round, least) for part in range(parts)]
            if all(number is not None for number in stretches):
                found.append(Live(tuple(Affine(number or 0) for number in stretches)))
    elif not any(op.kind in (SLIP, REMOVE) for op in tapes[0].ops):
        # It places its markers itself, so that one stretch hangs before it.
        found += _whole(tapes, in_round)
    if count is not None and count <= _MOST_COUNT and parts == 1:
        found.append(Live.of(count))
    return found


def _whole(tapes: Sequence[Tape], in_round: bool) -> list[Live]:
    """The least number of stitches on which every fill is worked, else on which the rows fit."""
    spare: list[Live] = []
    for number in range(1, _MOST_COUNT + 1):
        state = Live.of(number)
        times = _times(tapes, state, in_round)
        if times is not None:
            if all(t for ts in times for t in ts):
                return [state]
            spare = spare or [state]
    return spare


def _least(tapes: Sequence[Tape], part: int, parts: int, in_round: bool, least: int) -> int | None:
    """The fewest stitches of one stretch between markers that every row takes."""
    rows: list[list[Op]] = []
    place = part
    for tape in tapes:
        segments: list[list[Op]] = [[]]
        for op in tape.ops:
            if op.kind == SLIP:
                segments.append([])
            else:
                segments[-1].append(op)
        if len(segments) == parts:
            rows.append(segments[place])
        if not in_round:
            place = parts - 1 - place
    for number in range(1, _MOST_IN_STRETCH + 1):
        have = number
        for ops in rows:
            takes = sum(op.takes for op in ops if op.kind != FILL)
            fill = next((op for op in ops if op.kind == FILL), None)
            rest = have - takes
            have = sum(op.makes for op in ops if op.kind != FILL)
            if fill is None:
                if rest:
                    break
            else:
                if rest % fill.takes or rest < least * fill.takes:
                    break
                have += rest // fill.takes * fill.makes
        else:
            return number
    return None
