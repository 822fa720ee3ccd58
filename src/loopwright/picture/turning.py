"""The stitches that a chart of rows which turn is drawn on.

Such a motif mostly begins in the middle of a short row, so it is drawn on what hangs where it is
first worked, made as narrow as its rows allow; or, where its rows grow or shrink from time to time
and all of them have room in one picture, on every stitch and as often as it is worked.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Callable, Sequence
from functools import partial
from math import lcm

from loopwright.count.affine import Affine
from loopwright.count.live import Live, Parts, summed, total
from loopwright.count.row import Outcome, work_row
from loopwright.count.tape import Tape
from loopwright.model.pattern import Motif
from loopwright.picture.ground import (
    MOST_COLUMNS,
    MOST_COUNT,
    MOST_ROWS,
    Ground,
    growth_of,
    whole_states,
)
from loopwright.record import dataclass

_KEPT = 2
"""Stitches that wait at an end and are still drawn: enough to be seen as going on."""
_MOST_SEGMENTS = 12

ALL_TIMES = "All {times} times that these rows are worked, one above the other."
FIRST_TIME = "Drawn as worked the first time; later the rows turn at other places."
MORE_WAIT = "More stitches wait at the ends than are drawn."


@dataclass(frozen=True, slots=True)
class Start:
    """How a motif is begun: what hangs, which side is in front, and how many rows follow."""

    live: Live
    rs: bool
    round: bool
    rows: int


@dataclass(frozen=True, slots=True)
class _Seen:
    """What a row did: how often its fills were worked, the stitches that waited behind it and that
    it left, and all the stitches there were."""

    fills: tuple[int, ...]
    behind: int
    rest: int
    all: int
    shape: tuple[int, int, bool]


def turning_ground(
    motif: Motif, tapes: Sequence[Tape], starts: Sequence[Start], in_round: bool
) -> Ground | None:
    """The ground of rows that turn, begun as `starts` say; None where they have no narrow one."""
    if any(tape.broken or tape.trouble is not None for tape in tapes):
        return None
    changes = sum(tape.turns or not in_round for tape in tapes)
    twice = changes % 2 and any(start.rows > len(tapes) for start in starts)
    if motif.form is not None and all(start.live.is_plain for start in starts):
        tapes = [*tapes, *tapes] if twice else tapes
        return _on_form(tapes, Affine(motif.form.fixed, motif.form.unit), in_round)
    if not starts:
        return _anywhere(tapes, in_round)
    first = starts[0]
    whole = _all_times(tapes, starts)
    if whole is not None:
        return whole
    if twice:  # every second time falls on the other side
        tapes = [*tapes, *tapes]
    drawn = _narrow(tapes, first, exact=False)
    if drawn is None:
        return None
    live, real, seen = drawn
    times = tuple(row.fills for row in seen)
    varies = ((FIRST_TIME, 1),) if _varies(tapes, starts) else ()
    once = tuple(tuple(min(t, 1) for t in ts) for ts in times)
    return Ground(times, once, live, (*varies, *_waits(real, seen)))


def _on_form(tapes: Sequence[Tape], form: Affine, in_round: bool) -> Ground | None:
    """The least n on which the rows do what they do on a wide one."""
    wide = MOST_COUNT if form.unit else 0
    real = _seen(tapes, Live.of(form.at(wide)), in_round)
    growth = growth_of(tapes, form, in_round)
    if real is None or growth is None:
        return None
    for n in range(1, max(MOST_COUNT // form.unit, 1) + 1) if form.unit else (0,):
        live = Live.of(form.at(n))
        seen = _seen(tapes, live, in_round)
        if seen is None or not _does_as_much(tapes, live, in_round, real):
            continue
        times = tuple(row.fills for row in seen)
        if all(t >= g for ts, gs in zip(times, growth, strict=True) for t, g in zip(ts, gs)):  # noqa: B905
            return Ground(times, growth, live, _waits(real, seen))
    return None


def _anywhere(tapes: Sequence[Tape], in_round: bool) -> Ground | None:
    """Rows that no piece works and that have no form: over the fewest stitches that they take."""
    for live in whole_states(tapes, in_round):
        seen = _seen(tapes, live, in_round)
        if seen is not None:
            times = tuple(row.fills for row in seen)
            return Ground(times, tuple(tuple(min(t, 1) for t in ts) for ts in times), live)
    return None


def _waits(real: Sequence[_Seen], drawn: Sequence[_Seen]) -> tuple[tuple[str, int], ...]:
    fewer = any((a.behind, a.rest) != (b.behind, b.rest) for a, b in zip(real, drawn, strict=True))
    return ((MORE_WAIT, 1),) if fewer else ()


def _seen(tapes: Sequence[Tape], live: Live, in_round: bool) -> list[_Seen] | None:
    """What each row does, worked once after another; None where one does not fit."""
    out: list[_Seen] = []
    for tape in tapes:
        outcome = work_row(tape, live)
        if outcome.misfit is not None:
            return None
        out.append(_look(outcome, live))
        live = outcome.after(live, in_round)
    return out


def _look(outcome: Outcome, live: Live) -> _Seen:
    return _Seen(
        tuple(fill.fixed for fill in outcome.fills),
        _sum(live.behind),
        _sum(outcome.rest),
        max(total(live).fixed, _sum(live.behind) + _sum(outcome.made) + _sum(outcome.rest)),
        (len(outcome.made), len(outcome.rest), outcome.turned),
    )


def _sum(parts: Parts) -> int:
    return summed(parts).fixed if parts else 0


def _all_times(tapes: Sequence[Tape], starts: Sequence[Start]) -> Ground | None:
    """Every time that the rows are worked, where that has room; None where it has not.

    Only where some row is not the same each time; else once says it all.
    """
    first = starts[0]
    if len(set(starts)) > 1 or not len(tapes) < first.rows <= MOST_ROWS:
        return None
    rows = [tapes[at % len(tapes)] for at in range(first.rows)]
    drawn = _narrow(rows, first, exact=True)
    if drawn is None:
        return None
    live, real, seen = drawn
    same = all(row.fills == seen[at % len(tapes)].fills for at, row in enumerate(seen))
    if same or max(row.all for row in seen) > MOST_COLUMNS:
        return None
    notes = ((ALL_TIMES, -(-first.rows // len(tapes))), *_waits(real, seen))
    nothing = tuple(tuple(0 for _ in row.fills) for row in seen)
    times = tuple(row.fills for row in seen)
    return Ground(times, nothing, live, notes)


def _varies(tapes: Sequence[Tape], starts: Sequence[Start]) -> bool:
    """Whether the rows turn elsewhere when they are worked again, or in another place."""
    once: list[tuple[int, ...]] = []
    for start in starts:
        rows = [tapes[at % len(tapes)] for at in range(min(start.rows, 2 * len(tapes)))]
        seen = _seen(rows, start.live, start.round)
        if seen is None:
            return True
        once = once or [row.fills for row in seen[: len(tapes)]]
        if any(row.fills != once[at % len(tapes)] for at, row in enumerate(seen)):
            return True
    return False


def _narrow(
    tapes: Sequence[Tape], start: Start, exact: bool
) -> tuple[Live, list[_Seen], list[_Seen]] | None:
    """The fewest stitches, stretch by stretch, over which the rows do what they really do.

    Beside it what they really do and what they do there. `exact` where every fill is worked as
    often as it is, so that only stitches which no row reaches are left out.
    """
    real = _seen(tapes, start.live, start.round)
    lengths, split = _segments(start.live)
    if real is None or len(lengths) > _MOST_SEGMENTS:
        return None
    unit = lcm(*(op.takes for tape in tapes for op in tape.fills))

    def fits(at: int, fewer: int) -> bool:
        lengths[at] = fewer
        live = _joined(lengths, start.live, split)
        return _does_as_much(tapes, live, start.round, real, exact)

    for at, length in enumerate(lengths):
        fewest = _fewest(length, unit, partial(fits, at))
        if fewest is None:
            return None
        lengths[at] = fewest
    live = _joined(lengths, start.live, split)
    seen = _seen(tapes, live, start.round)
    return None if seen is None else (live, real, seen)


def _fewest(length: int, unit: int, fits: Callable[[int], bool]) -> int | None:
    """The fewest stitches of a stretch; fills of `unit` mostly take it in steps of that many.

    Where they do, what fits goes on fitting as it grows, so that it is looked for by halves.
    """
    steps = range(length % unit, min(length, MOST_COUNT) + 1, unit)
    place = bisect_left(steps, True, key=fits)
    if place < len(steps) and fits(steps[place]):
        return steps[place]
    return next((fewer for fewer in range(min(length, MOST_COUNT) + 1) if fits(fewer)), None)


def _does_as_much(
    tapes: Sequence[Tape], live: Live, in_round: bool, real: Sequence[_Seen], exact: bool = False
) -> bool:
    for tape, want in zip(tapes, real, strict=True):
        outcome = work_row(tape, live)
        if outcome.misfit is not None:
            return False
        found = _look(outcome, live)
        if found.shape != want.shape or any(
            got < min(most, _KEPT)
            for got, most in ((found.behind, want.behind), (found.rest, want.rest))
        ):
            return False
        for fill, most in zip(found.fills, want.fills, strict=True):
            if fill < min(most, 1) or (exact and fill != most):
                return False
        live = outcome.after(live, in_round)
    return True


def _segments(live: Live) -> tuple[list[int], int]:
    """The stretches ahead and behind as numbers, that with the gap in two; which one, or -1."""
    lengths = [part.fixed for part in (*live.ahead, *live.behind)]
    gap = live.gap.fixed if live.gap is not None else -1
    for at, part in enumerate(live.ahead if gap >= 0 else ()):
        if gap <= part.fixed:
            return [*lengths[:at], gap, part.fixed - gap, *lengths[at + 1 :]], at
        gap -= part.fixed
    return lengths, -1


def _joined(lengths: list[int], live: Live, split: int) -> Live:
    """The stretches as they hang, with other numbers."""
    gap = live.gap
    if split >= 0:
        gap = Affine(sum(lengths[: split + 1]))
        lengths = [
            *lengths[:split], lengths[split] + lengths[split + 1], *lengths[split + 2 :]
        ]  # fmt: skip
    parts = tuple(map(Affine, lengths))
    return Live(parts[: len(live.ahead)], parts[len(live.ahead) :], gap)
