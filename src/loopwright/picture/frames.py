"""The frame round the repeat of a chart: one repeat of every row's fill, as straight as can be."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class Window:
    """A fill of a row: ops `start` to `stop` (from the right), of which `wide` are one repeat.

    `columns` are those of every op of the row, as identities; `right` and `left` those of the
    stitches beside the row that it does not work.
    """

    start: int
    stop: int
    wide: int
    columns: tuple[list[int], ...]
    right: tuple[int, ...] = ()
    left: tuple[int, ...] = ()


@dataclass(frozen=True, slots=True)
class Frame:
    """For each row (upwards) the lines it runs between, counted from the right; None: no frame."""

    sides: tuple[tuple[int, int] | None, ...]


@dataclass(frozen=True, slots=True)
class _Choice:
    """One place of a row's frame: the lines on which its right and left side may run."""

    right: tuple[int, int]
    left: tuple[int, int]


def frames_of(
    rows: Sequence[Sequence[Window]], place: dict[int, int], columns: int, edge: int
) -> tuple[Frame, ...]:
    """The frames of a chart, each through all rows that have as many fills as it needs.

    `place` gives a column's place from the right; `edge` is how many stitches an edge has.
    """
    depth = max((len(windows) for windows in rows), default=0)
    frames = []
    for index in range(depth):
        choices = [_choices(_for_frame(windows, index), place, columns) for windows in rows]
        frames.append(_straightest(choices, edge))
    return tuple(frame for frame in frames if any(frame.sides))


def _for_frame(windows: Sequence[Window], index: int) -> Window | None:
    """The fill of a row for one of the frames; a row of one fill all through serves them all."""
    if len(windows) == 1 and windows[0].stop - windows[0].start == len(windows[0].columns):
        return windows[0]
    return windows[index] if index < len(windows) else None


def _choices(window: Window | None, place: dict[int, int], columns: int) -> list[_Choice]:
    found: list[_Choice] = []
    if window is None:
        return found
    for start in range(window.start, window.stop - window.wide + 1):
        choice = _choice(window, start, start + window.wide, place, columns)
        if choice is not None:
            found.append(choice)
    return found


def _choice(
    window: Window, start: int, stop: int, place: dict[int, int], columns: int
) -> _Choice | None:
    def span(first: int, last: int) -> list[int]:
        return [place[c] for op in window.columns[first:last] for c in op]

    inside = span(start, stop)
    if not inside:
        return None
    before = [*(place[c] for c in window.right), *span(0, start)]
    after = [*span(stop, len(window.columns)), *(place[c] for c in window.left)]
    right = (max(before) + 1 if before else 0, min(inside))
    left = (max(inside) + 1, min(after) if after else columns)
    return _Choice(right, left)


def _straightest(rows: list[list[_Choice]], edge: int) -> Frame:
    """Each row's frame on the lines that most rows can share, the rest as near as may be."""
    fixed = [choices for choices in rows if len(choices) == 1]
    voters = fixed or [choices for choices in rows if choices]
    rights: Counter[int] = Counter()
    lefts: Counter[int] = Counter()
    for choices in voters:
        rights.update({n for c in choices for n in range(c.right[0], c.right[1] + 1)})
        lefts.update({n for c in choices for n in range(c.left[0], c.left[1] + 1)})
    if not rights:
        return Frame(tuple(None for _ in rows))
    right = min(rights, key=lambda n: (-rights[n], abs(n - edge), n))
    left = min(lefts, key=lambda n: (-lefts[n], abs(n - _usual(voters, right)), n))
    sides: list[tuple[int, int] | None] = []
    for choices in rows:
        if not choices:
            sides.append(None)
            continue
        best = min(choices, key=lambda c: (_off(c.right, right) + _off(c.left, left), c.right))
        sides.append((_near(best.right, right), _near(best.left, left)))
    return Frame(tuple(sides))


def _usual(rows: list[list[_Choice]], right: int) -> int:
    """The left line of the first frame that runs along `right`."""
    for choices in rows:
        for choice in choices:
            if _off(choice.right, right) == 0:
                return choice.left[0]
    return right


def _off(lines: tuple[int, int], wanted: int) -> int:
    return abs(_near(lines, wanted) - wanted)


def _near(lines: tuple[int, int], wanted: int) -> int:
    low, high = lines
    return low if wanted < low else min(wanted, max(low, high))
