"""The outline of a piece from its walk: how wide it is at each height, at the gauge."""

from __future__ import annotations

from collections.abc import Iterator
from math import pi

from loopwright.count.live import total
from loopwright.count.measure import width_gauge, width_of
from loopwright.count.walk import Bound, Cast, Moved, Said, Walk, Worked
from loopwright.model.pattern import Pattern
from loopwright.record import dataclass

_MOST_POINTS = 4000


@dataclass(frozen=True, slots=True)
class Outline:
    """A piece in one size, in millimetres.

    `points` are (height, width) from the cast-on upwards, widths as the rows count; `around` where
    it is a tube, of which the widths are the way round. `disc` where it is worked in the round
    outwards from (or inwards to) a middle, so that it lies flat as a disc of radius `height`.
    """

    points: tuple[tuple[float, float], ...]
    around: bool
    disc: bool

    @property
    def height(self) -> float:
        return self.points[-1][0]

    @property
    def lower(self) -> float:
        return self.points[0][1]

    @property
    def upper(self) -> float:
        return self.points[-1][1]

    @property
    def widest(self) -> float:
        return max(width for _, width in self.points)

    @property
    def is_even(self) -> bool:
        """As wide everywhere, to a hundredth."""
        return self.widest - min(width for _, width in self.points) < 0.01 * self.widest


def is_one_cloth(walk: Walk) -> bool:
    """Whether the rows lie on one another: no short rows, nothing held, taken or picked up.

    What begins a piece may have come from a holder or an edge.
    """
    stitches = [event for event in walk.events if not isinstance(event, Said)]
    if any(isinstance(event, Moved) for event in stitches[1:]):
        return False
    return not any(
        entry.turns
        for event in stitches
        if isinstance(event, Worked)
        for entry in event.chunk.entries
    )


def outline_of(pattern: Pattern, walk: Walk) -> Outline | None:
    """The outline of a walk, or None where no gauge says how large a stitch and a row are."""
    gauge = width_gauge(pattern, walk.piece)
    if not is_one_cloth(walk):
        return None  # held stitches and short rows give a shape that widths do not tell
    if gauge is None or gauge.over.unit is None or not walk.height or walk.cast_on is None:
        return None
    points: list[tuple[float, float]] = []
    rounds = 0
    for row, count in _counts(walk):
        here = (walk.height_after(row) if row else 0.0, width_of(gauge, count))
        if len(points) > 1 and _between(points[-2], points[-1], here):
            points[-1] = here
        elif not points or points[-1] != here:
            points.append(here)
        if len(points) > _MOST_POINTS:
            return None
    for event in walk.events:
        if isinstance(event, Worked) and event.round:
            rounds += event.rows
    if len(points) < 2 or points[-1][0] <= 0:
        return None
    around = rounds * 2 > walk.rows
    return Outline(tuple(points), around, around and _opens_flat(points))


def _counts(walk: Walk) -> Iterator[tuple[int, int]]:
    """How many stitches hang after a row, where that changes.

    Within a motif only where rows bind off or cast on: lace that gives and takes stitches by turns
    does not change the cloth's width.
    """
    done = 0
    for event in walk.events:
        if isinstance(event, Cast):
            yield 0, event.count
        elif isinstance(event, Worked):
            done = event.first_row - 1 + event.rows
            entries = event.chunk.entries
            stepped = any(steps_out(entry.row.body.steps) for entry in entries)
            first = event.first_row - 1
            if entries:
                yield first, entries[0].start.at(0)
            if stepped and event.rows <= _MOST_POINTS:
                for index in range(event.rows):
                    repeat, at = divmod(index, len(entries))
                    yield first + index + 1, entries[at].end.at(repeat)
            else:
                yield first + event.rows, total(event.chunk.after).fixed
        elif isinstance(event, Moved):
            yield done, event.total
        elif isinstance(event, Bound) and event.count:
            yield walk.rows, event.count


def steps_out(steps: tuple[object, ...]) -> bool:
    """Whether stitches are bound off or cast on in a row, so that its edge steps in or out."""
    for step in steps:
        stitch = getattr(step, "stitch", None)
        if stitch is not None and stitch.kind in ("bind", "cast"):
            return True
        if steps_out(getattr(step, "steps", ())):
            return True
    return False


def _between(a: tuple[float, float], b: tuple[float, float], c: tuple[float, float]) -> bool:
    """Whether b lies on the line from a to c, to a hundredth of a millimetre."""
    if c[0] == a[0]:
        return False
    on_line = a[1] + (c[1] - a[1]) * (b[0] - a[0]) / (c[0] - a[0])
    return abs(on_line - b[1]) < 0.01


def _opens_flat(points: list[tuple[float, float]]) -> bool:
    """Whether a tube grows from (or shrinks to) almost nothing as fast as a disc does.

    A disc of radius r is 2π·r round. A shawl whose stitches double now and then has between half
    of that and all of it, and is blocked flat (common practice).
    """
    low, high = points[0][1], points[-1][1]
    if min(low, high) > 0.2 * max(low, high):
        return False
    return abs(high - low) > 0.5 * 2 * pi * points[-1][0]
