"""The lines of a piece, as they stand in the tree: casting on, working, holding, binding off."""

from __future__ import annotations

from loopwright.notation.quantity import Quantity
from loopwright.notation.source import Span
from loopwright.notation.tree_values import Count, Name, Text
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class PieceLine:
    name: Name
    in_round: bool
    starts_ws: bool
    span: Span


@dataclass(frozen=True, slots=True)
class CastOnLine:
    """`count` is None for ``cast on for width``; `more` where stitches hang already."""

    count: Count | None
    strand: Name | None
    method: Text | None
    span: Span
    more: bool = False


@dataclass(frozen=True, slots=True)
class BindOffLine:
    strand: Name | None
    method: Text | None
    span: Span


@dataclass(frozen=True, slots=True)
class Times:
    """``x8``."""

    count: Count
    span: Span


@dataclass(frozen=True, slots=True)
class ForRows:
    """``for 20 rows``."""

    rows: Count
    span: Span


@dataclass(frozen=True, slots=True)
class ToLength:
    """``to 110 cm`` (`measure` set) or ``to length`` with what is taken off or added.

    `sign` is -1 or 1; `rows_off` or `measure_off` is what `sign` belongs to.
    """

    measure: Quantity | None
    sign: int
    rows_off: Count | None
    measure_off: Quantity | None
    span: Span


@dataclass(frozen=True, slots=True)
class UntilStitches:
    """``until 8 stitches``."""

    count: Count
    span: Span


@dataclass(frozen=True, slots=True)
class UntilSpent:
    """``until A is spent, keep 3 rows``."""

    strand: Name
    keep: Count | None
    span: Span


Amount = Times | ForRows | ToLength | UntilStitches | UntilSpent


@dataclass(frozen=True, slots=True)
class WorkLine:
    motif: Name
    amount: Amount
    span: Span


@dataclass(frozen=True, slots=True)
class JoinLine:
    """``join round`` (no names), or ``join front, back``."""

    names: tuple[Name, ...]
    span: Span


@dataclass(frozen=True, slots=True)
class HoldLine:
    """``hold 12 as thumb``; `count` is None for ``hold all as front``."""

    count: Count | None
    name: Name
    span: Span


@dataclass(frozen=True, slots=True)
class TakeLine:
    """``take thumb, palm``: held stitches come back onto the needle, in this order."""

    names: tuple[Name, ...]
    span: Span


@dataclass(frozen=True, slots=True)
class PickLine:
    """``pick up 17 in A along left edge``."""

    count: Count
    strand: Name | None
    edge: Name | None
    span: Span


@dataclass(frozen=True, slots=True)
class LeaveLine:
    """``leave round``, or ``leave live "graft the toes"`` (`live` is true)."""

    live: bool
    text: Text | None
    span: Span


@dataclass(frozen=True, slots=True)
class BeginLine:
    """``begin round after 9``: the rounds begin so many stitches later from here on."""

    count: Count
    span: Span


@dataclass(frozen=True, slots=True)
class SpreadLine:
    """``spread narrow x13 in plain over 60 rows``."""

    change: Name
    times: Times | UntilStitches
    plain: Name
    over: ForRows | ToLength
    span: Span
