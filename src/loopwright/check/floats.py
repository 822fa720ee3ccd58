"""How far the yarn passes slipped stitches in one row, without working the row out.

A row is boiled down to the slips it begins with, ends with and the most it has on end; two such
parts are put together, and a part repeated any number of times is put together twice.
"""

from __future__ import annotations

from loopwright.model.body import Body, Fill, Group, Step, Stitches
from loopwright.notation.source import Span
from loopwright.notation.tree import Special
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class Float:
    """`stitches` slipped on end; `span` counts from the start of the body's line."""

    stitches: int
    span: Span


@dataclass(frozen=True, slots=True)
class _Part:
    """`head` and `tail` are the floats at its ends, `most` the longest; `all` where nothing is
    worked in it at all (then all three are the same)."""

    head: Float | None
    tail: Float | None
    most: Float | None
    all: bool


_NOTHING = _Part(None, None, None, True)
_WORKED = _Part(None, None, None, False)


def longest_float(body: Body, size: int) -> Float | None:
    """The longest float of a row in one size; None where it slips nothing, or everything."""
    part = _of(body.steps, size)
    return None if part.all or body.broken else part.most


def _of(steps: tuple[Step, ...], size: int) -> _Part:
    part = _NOTHING
    for step in steps:
        part = _joined(part, _step(step, size))
    return part


def _step(step: Step, size: int) -> _Part:
    if isinstance(step, Stitches):
        number = step.number(size)
        if step.stitch.kind in ("marker", "turn", "cast") or number == 0:
            return _NOTHING
        if step.stitch.word != "sl":
            return _WORKED
        slipped = Float(number, step.span)
        return _Part(slipped, slipped, slipped, True)
    if isinstance(step, Special):
        return _WORKED if step.kind in ("pick", "take") else _NOTHING
    if isinstance(step, Group) and step.into is not None:
        return _WORKED
    inner = _of(step.steps, size)
    if isinstance(step, Fill):
        # Worked at least twice, as a rule; how often does not matter unless it only slips.
        return _joined(inner, inner)
    times = step.number(size)
    if times == 0:
        return _NOTHING
    if inner.all and inner.most is not None:
        slipped = Float(inner.most.stitches * times, step.span)
        return _Part(slipped, slipped, slipped, True)
    return inner if times == 1 else _joined(inner, inner)


def _plus(one: Float | None, other: Float | None) -> Float | None:
    if one is None or other is None:
        return one or other
    low, high = min(one.span.start, other.span.start), max(one.span.end, other.span.end)
    return Float(one.stitches + other.stitches, Span(low, high))


def _longer(*floats: Float | None) -> Float | None:
    found = [one for one in floats if one is not None]
    return max(found, key=lambda one: one.stitches) if found else None


def _joined(one: _Part, other: _Part) -> _Part:
    middle = _plus(one.tail, other.head)
    return _Part(
        middle if one.all else one.head,
        middle if other.all else other.tail,
        _longer(one.most, other.most, middle),
        one.all and other.all,
    )
