"""Motifs and rows as they stand in the tree: forms, edges, bodies, claims.

The spans of a `RowLine` count from the start of its line, since equal lines share one."""

from __future__ import annotations

from loopwright.notation.source import Span
from loopwright.notation.tree_values import Count, Name
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class Word:
    """A stitch word with its modifiers, not yet looked up: ``sl1 wyif``."""

    text: str
    modifiers: tuple[str, ...]
    span: Span


@dataclass(frozen=True, slots=True)
class GroupOf:
    """Steps in parentheses; `times` for ``x4``, `into` for ``in 1``."""

    steps: tuple[Node, ...]
    times: Count | None
    into: Count | None
    span: Span


@dataclass(frozen=True, slots=True)
class FillOf:
    """Steps between two stars."""

    steps: tuple[Node, ...]
    span: Span


@dataclass(frozen=True, slots=True)
class Special:
    """A step that is no stitch word.

    `kind` is ``hold`` (the next `count` stitches go onto a holder of that `name`), ``take`` (the
    stitches of a holder come next on the left needle), ``pick`` (`count` are picked up along the
    edge `name`), ``last`` or ``gap``: the fill before it ends `count` stitches before the end of
    the needle, or before the gap that a turn has left.
    """

    kind: str
    count: Count | None
    name: Name | None
    span: Span


@dataclass(frozen=True, slots=True)
class EvenlyOf:
    """``spread m1 x12``: a stitch so many times, evenly over the stitches there are."""

    word: Word
    count: Count
    span: Span


Node = Word | GroupOf | FillOf | Special | EvenlyOf


@dataclass(frozen=True, slots=True)
class Steps:
    """A body given step by step."""

    steps: tuple[Node, ...]
    span: Span


@dataclass(frozen=True, slots=True)
class Whole:
    """``knit`` or ``purl``: the whole row."""

    word: str
    span: Span


@dataclass(frozen=True, slots=True)
class AsRow:
    """``as row 2``."""

    number: int
    span: Span


Body = Steps | Whole | AsRow


@dataclass(frozen=True, slots=True)
class Claim:
    """What the writer says the count is after the row; `sign` is ``+``, ``-`` or empty."""

    sign: str
    count: Count
    span: Span


@dataclass(frozen=True, slots=True)
class Form:
    """``2n + 4``: `unit` times n plus `fixed`; `unit` is 0 for a motif of one count only."""

    unit: int
    fixed: int
    span: Span

    def __str__(self) -> str:
        return form_text(self.unit, self.fixed)


def form_text(unit: int, fixed: int) -> str:
    """A form as the trade writes it: ``2n + 4``, ``n``, ``12``."""
    if unit == 0:
        return str(fixed)
    head = "n" if unit == 1 else f"{unit}n"
    if fixed == 0:
        return head
    return f"{head} {'+' if fixed > 0 else '−'} {abs(fixed)}"


@dataclass(frozen=True, slots=True)
class MotifLine:
    name: Name
    form: Form | None
    starts_ws: bool
    in_round: bool
    span: Span


@dataclass(frozen=True, slots=True)
class EdgeLine:
    count: Count
    kind: Name
    span: Span


@dataclass(frozen=True, slots=True)
class RowSpan:
    """``6-10``, or one number (`first` = `last`)."""

    first: Count
    last: Count
    span: Span


@dataclass(frozen=True, slots=True)
class RowLine:
    """A row line. `every` is ``rs``, ``ws``, ``even``, ``odd`` or ``all`` for an every-line.

    All spans here count from the start of the line.
    """

    plural: bool
    round: bool
    every: str | None
    numbers: tuple[RowSpan, ...]
    strand: Name | None
    body: Body
    claim: Claim | None
    span: Span
