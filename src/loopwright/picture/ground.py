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
MOST_COUNT = 160
_WIDEST = 1_000
"""Stitches of a row that a chart still shows."""

MOST_COLUMNS = 40
"""Columns of one strip: with row numbers they take the width of a page in legible squares."""
MOST_ROWS = 58
"""Rows of one strip: with a heading they take the height of a page."""


@dataclass(frozen=True, slots=True)
class Ground:
    """For each row of a chart, how often each fill is worked and how much of that is one repeat.

    Both are lists in the order in which the row works its fills. `live` is what hangs before the
    first row, and `notes` what a reader has to know of how the chart was made narrow (see
    `Chart`).
    """

    times: tuple[tuple[int, ...], ...]
    growth: tuple[tuple[int, ...], ...]
    live: Live
    notes: tuple[tuple[str, int], ...] = ()

    @property
    def start(self) -> int:
        """All the stitches before the first row."""
        return total(self.live).fixed


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
        growth = growth_of(tapes, Affine(form.fixed, form.unit), in_round)
        if growth is None:
            return None
        spare: Ground | None = None
        for n in range(1, _MOST_REPEATS + 1):
            live = Live.of(form.unit * n + form.fixed)
            times = _times(tapes, live, in_round)
            if times is None:
                continue
            found = Ground(times, growth, live)
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
            return Ground(times, once, state)
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


def growth_of(
    tapes: Sequence[Tape], count: Affine, in_round: bool
) -> tuple[tuple[int, ...], ...] | None:
    """By how much each fill is worked more often with each n of `count`."""
    state = Live((count,))
    out: list[tuple[int, ...]] = []
    for tape in tapes:
        outcome = work_row(tape, state, Range(MOST_COUNT, None))
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
        found += whole_states(tapes, in_round)
    if count is not None and count <= MOST_COUNT and parts == 1:
        found.append(Live.of(count))
    return found


def whole_states(tapes: Sequence[Tape], in_round: bool) -> list[Live]:
    """The least number of stitches on which every fill is worked, else on which the rows fit."""
    spare: list[Live] = []
    for number in range(1, MOST_COUNT + 1):
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
