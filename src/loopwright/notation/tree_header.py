"""The lines of the pattern itself, as they stand in the tree: texts, sizes, measures, tools."""

from __future__ import annotations

from loopwright.notation.quantity import Quantity
from loopwright.notation.source import Span
from loopwright.notation.tree_values import Name, Text
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class PatternLine:
    title: Text
    span: Span


@dataclass(frozen=True, slots=True)
class TextLine:
    """``designer``, ``summary``, ``notion``, ``note`` or ``section`` with its text."""

    kind: str
    text: Text
    span: Span


@dataclass(frozen=True, slots=True)
class LevelLine:
    level: Name
    span: Span


@dataclass(frozen=True, slots=True)
class CareLine:
    """``care hand wash, no bleach, dry flat``: each part is a phrase of `facts.care`."""

    parts: tuple[Text, ...]
    span: Span


@dataclass(frozen=True, slots=True)
class SizesLine:
    names: tuple[Name, ...]
    span: Span


@dataclass(frozen=True, slots=True)
class MeasureLine:
    """``width`` or ``length``."""

    kind: str
    quantity: Quantity
    span: Span


@dataclass(frozen=True, slots=True)
class GaugeLine:
    """Stitches and rows (floats, one value) over a length."""

    stitches: float
    rows: float
    over: Quantity
    fabric: Name | None
    needle: Quantity | None
    worked: str | None
    blocking: str | None
    span: Span


@dataclass(frozen=True, slots=True)
class SwatchLine:
    stitches: int
    rows: int
    weight: Quantity | None
    width: Quantity | None
    height: Quantity | None
    fabric: Name | None
    span: Span


@dataclass(frozen=True, slots=True)
class NeedleLine:
    kind: Name | None
    size: Quantity
    length: Quantity | None
    span: Span


BOUND_UNITS = {"slip": "rows", "carry": "rows", "float": "stitches"}


@dataclass(frozen=True, slots=True)
class BoundLine:
    """``bound slip 4 rows``: what the checker bears in place of its default.

    `kind` is ``slip``, ``carry`` or ``float``; `number` counts rows, or stitches of a float.
    """

    kind: Name
    number: int
    span: Span


@dataclass(frozen=True, slots=True)
class JoinByLine:
    """``join by worked-in, tail 18 in``: how balls are joined; `tail` overrides the usual one."""

    method: Text
    tail: Quantity | None
    span: Span
