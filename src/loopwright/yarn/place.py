"""Which stitch of a row a length of yarn reaches to."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.model.body import Fill, Group, Step, Stitches
from loopwright.notation.tree import Special

_CRUMB = 1e-9  # loops; what rounding may lose


def stitch_at(
    steps: tuple[Step, ...], stitches: int, fills: tuple[int, ...], size: int, loops: float
) -> int:
    """How many of a row's `stitches` on the left needle `loops` plain loops work.

    `fills` says how often each fill of the row is repeated.
    """
    return min(_reach(steps, size, iter(fills), loops + _CRUMB)[0], stitches)


def _reach(
    steps: tuple[Step, ...], size: int, fills: Iterator[int], loops: float
) -> tuple[int, float | None]:
    """The stitches taken, and the loops left; None left where they ended within the steps."""
    taken = 0
    left = loops
    for step in steps:
        if isinstance(step, Stitches):
            number, each, takes = step.number(size), step.stitch.yarn, step.stitch.takes
            inner: tuple[Step, ...] = ()
        elif isinstance(step, Fill):
            inner = step.steps
            number = next(fills, 0)
            takes, each = _measure(inner, size)
        elif isinstance(step, Special):
            inner = ()
            number = step.count.at(size) if step.count is not None else 0
            takes = 1 if step.kind == "hold" else 0
            each = 1.0 if step.kind == "pick" else 0.0
            if step.kind not in ("hold", "pick"):
                continue
        elif step.into is not None:
            inner = ()
            number = 1
            takes, each = step.into.at(size), _measure(step.steps, size)[1]
        elif _has_fill(step):
            for _ in range(step.number(size)):
                more, rest = _reach(step.steps, size, fills, left)
                taken += more
                if rest is None:
                    return taken, None
                left = rest
            continue
        else:
            inner = step.steps
            number = step.number(size)
            takes, each = _measure(inner, size)
        whole = number if each <= 0 else min(number, int(left / each))
        taken += whole * takes
        left -= whole * each
        if whole < number:
            if inner:
                taken += _reach(inner, size, iter(()), left)[0]
            return taken, None
    return taken, left


def _has_fill(step: Group) -> bool:
    return any(
        isinstance(inner, Fill) or (isinstance(inner, Group) and _has_fill(inner))
        for inner in step.steps
    )


def _measure(steps: tuple[Step, ...], size: int) -> tuple[int, float]:
    """The stitches that steps without fills take, and their loops."""
    taken, loops = 0, 0.0
    for step in steps:
        if isinstance(step, Stitches):
            taken += step.stitch.takes * step.number(size)
            loops += step.stitch.yarn * step.number(size)
        elif not isinstance(step, Special):
            more, each = _measure(step.steps, size)
            into = step.into if isinstance(step, Group) else None
            times = step.number(size) if isinstance(step, Group) and into is None else 1
            taken += into.at(size) if into is not None else more * times
            loops += each * times
    return taken, loops
