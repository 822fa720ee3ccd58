"""Yarns, shades, strands and stitches of the file, as they stand in the tree."""

from __future__ import annotations

from loopwright.notation.quantity import Quantity
from loopwright.notation.source import Span
from loopwright.notation.tree_values import Count, Name, Text
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class YarnLine:
    name: Name
    text: Text | None
    quantities: tuple[Quantity, ...]
    weight: Count | None
    fibre: Text | None
    span: Span


@dataclass(frozen=True, slots=True)
class Stripe:
    colour: str
    length: Quantity
    span: Span


@dataclass(frozen=True, slots=True)
class ShadeLine:
    name: Name
    text: Text | None
    yarn: Name
    colour: str | None
    stripes: tuple[Stripe, ...]
    span: Span


@dataclass(frozen=True, slots=True)
class Feed:
    """One entry of a strand's feed: `half` a ball, a weighed `amount`, or `balls` whole ones."""

    shade: Name
    half: bool
    amount: Quantity | None
    balls: Count | None
    span: Span


@dataclass(frozen=True, slots=True)
class StrandLine:
    name: Name
    feeds: tuple[Feed, ...]
    span: Span


@dataclass(frozen=True, slots=True)
class StitchLine:
    name: Name
    text: Text | None
    takes: Count | None
    makes: Count | None
    eats: float | None
    how: Text | None
    span: Span
