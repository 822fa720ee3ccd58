"""The tree of a source: one statement a line, each node with its span.

Spans are places in the file, except inside `RowLine`: there they count from the start of the
line, since equal lines share one `RowLine` (see `Placed.base`).
"""

from __future__ import annotations

from loopwright.notation.quantity import Quantity
from loopwright.notation.source import Span
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class Name:
    """A name as the writer spelled it; `key` is what it is looked up by."""

    text: str
    span: Span

    @property
    def key(self) -> str:
        return self.text.casefold()


@dataclass(frozen=True, slots=True)
class Text:
    """Text for the reader, without its quotes."""

    text: str
    span: Span


@dataclass(frozen=True, slots=True)
class Count:
    """A whole number, or a size list of whole numbers."""

    values: tuple[int, ...]
    span: Span

    def at(self, size: int) -> int:
        """The number for a size (by its place in `sizes`, from 0)."""
        values = self.values
        return values[size] if size < len(values) else values[-1]


# --- bodies -----------------------------------------------------------------------------------


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


# --- statements -------------------------------------------------------------------------------


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


@dataclass(frozen=True, slots=True)
class JoinByLine:
    """``join by worked-in, tail 18 in``: how balls are joined; `tail` overrides the usual one."""

    method: Text
    tail: Quantity | None
    span: Span


Statement = (
    PatternLine
    | TextLine
    | LevelLine
    | CareLine
    | SizesLine
    | MeasureLine
    | GaugeLine
    | SwatchLine
    | NeedleLine
    | BoundLine
    | YarnLine
    | ShadeLine
    | StrandLine
    | StitchLine
    | MotifLine
    | EdgeLine
    | RowLine
    | PieceLine
    | CastOnLine
    | BindOffLine
    | WorkLine
    | JoinLine
    | JoinByLine
    | HoldLine
    | TakeLine
    | PickLine
    | LeaveLine
    | BeginLine
    | SpreadLine
)


@dataclass(frozen=True, slots=True)
class Placed:
    """A statement where it stands: line number from 1, offset of the line's first character."""

    line: int
    base: int
    statement: Statement
