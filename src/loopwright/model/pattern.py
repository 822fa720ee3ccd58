"""What a pattern is: frozen nodes, each with its span."""

from __future__ import annotations

from loopwright.model.body import Body, same_body
from loopwright.model.stitch import Stitch
from loopwright.notation.quantity import Quantity
from loopwright.notation.source import Source, Span
from loopwright.notation.tree import (
    Amount,
    BoundLine,
    CareLine,
    Claim,
    Count,
    Feed,
    Form,
    ForRows,
    GaugeLine,
    JoinByLine,
    Name,
    NeedleLine,
    Stripe,
    SwatchLine,
    Text,
    Times,
    ToLength,
    UntilStitches,
)
from loopwright.record import dataclass

Gauge = GaugeLine
Swatch = SwatchLine
Needle = NeedleLine
Bound = BoundLine
JoinBy = JoinByLine
Care = CareLine

ONE_SIZE = "one"
EDGE_KINDS = ("garter", "stockinette", "slipped", "seed")


@dataclass(frozen=True, slots=True)
class Yarn:
    """A base: grams and metres of one ball (None where the file does not say)."""

    name: Name
    text: Text | None
    grams: float | None
    metres: float | None
    weight: int | None
    fibre: Text | None
    span: Span

    @property
    def made_of(self) -> str:
        """What the yarn says it is: its fibre, and its printed name, which often says it."""
        return " ".join(part.text for part in (self.fibre, self.text) if part is not None)


@dataclass(frozen=True, slots=True)
class Shade:
    """A colour of a yarn; `stripes` for one that changes along the ball."""

    name: Name
    text: Text | None
    yarn: Name
    colour: str | None
    stripes: tuple[Stripe, ...]
    span: Span

    @property
    def colours(self) -> tuple[str, ...]:
        """The #rrggbb colours, in order along the ball."""
        codes = tuple(s.colour for s in self.stripes) or ((self.colour,) if self.colour else ())
        return tuple(c if len(c) == 7 else "#" + "".join(x * 2 for x in c[1:]) for c in codes)


@dataclass(frozen=True, slots=True)
class Strand:
    """A working strand and the balls it eats, in order."""

    name: Name
    feeds: tuple[Feed, ...]
    span: Span


@dataclass(frozen=True, slots=True)
class Edge:
    """The outer `count` stitches of both sides are of this kind in every row."""

    count: Count
    kind: str
    span: Span


@dataclass(frozen=True, slots=True, eq=False)
class Row:
    """A row of a motif, or a row line of a piece.

    `number` is the row's number in its motif (0 for a piece's line). `base` is the offset of the
    line that gives the row, `body_base` of the line its body stands on: another one for
    ``as row 2`` (`as_row` holds the 2). `every` is set where an every-line gives the row.
    """

    number: int
    round: bool
    strand: Name | None
    body: Body
    claim: Claim | None
    base: int
    body_base: int
    line: int
    as_row: int | None
    every: str | None
    span: Span

    def at(self, span: Span) -> Span:
        """The place in the file of a span of this row's own line."""
        return span.shifted(self.base)

    def in_body(self, span: Span) -> Span:
        """The place in the file of a span of the body (at its own line, for ``as row``)."""
        return span.shifted(self.body_base)

    @property
    def place(self) -> Span:
        """The place of the whole row line in the file."""
        return self.span.shifted(self.base)


@dataclass(frozen=True, slots=True, eq=False)
class Motif:
    """Rows that are worked again and again. `rows` stand in order from row 1 without gaps."""

    name: Name
    form: Form | None
    starts_ws: bool
    in_round: bool
    edge: Edge | None
    rows: tuple[Row, ...]
    span: Span

    @property
    def is_one_body(self) -> bool:
        """All rows alike (same body, same strand): it has no side to fall on."""
        first = self.rows[0]
        return all(
            same_body(row.body, first.body)
            and (row.strand and row.strand.key) == (first.strand and first.strand.key)
            for row in self.rows
        )

    def is_rs(self, number: int) -> bool:
        """Whether a row is a right-side row, worked flat as written."""
        return self.in_round or (number % 2 == 1) != self.starts_ws


@dataclass(frozen=True, slots=True, eq=False)
class PieceRow:
    """A row line of a piece: worked `times`, or exactly the rows `first` to `last`."""

    row: Row
    times: Count | None
    first: Count | None
    last: Count | None
    span: Span


@dataclass(frozen=True, slots=True, eq=False)
class CastOn:
    """`count` is None for ``cast on for width``; `more` where stitches hang already."""

    count: Count | None
    strand: Name | None
    method: Text | None
    span: Span
    more: bool = False


@dataclass(frozen=True, slots=True, eq=False)
class BindOff:
    strand: Name | None
    method: Text | None
    span: Span


@dataclass(frozen=True, slots=True, eq=False)
class Work:
    """``work woven x8``; `motif` is None where no motif has that name."""

    name: Name
    motif: Motif | None
    amount: Amount
    span: Span
    line: int


@dataclass(frozen=True, slots=True, eq=False)
class Spread:
    """``spread narrow x13 in plain over 60 rows``: the one row of `motif` so many times, evenly,
    and rows of `plain` between. Either is None where no motif has that name."""

    name: Name
    motif: Motif | None
    times: Times | UntilStitches
    plain_name: Name
    plain: Motif | None
    over: ForRows | ToLength
    span: Span
    line: int


@dataclass(frozen=True, slots=True, eq=False)
class JoinRound:
    span: Span


@dataclass(frozen=True, slots=True, eq=False)
class LeaveRound:
    """From here on the piece is worked back and forth."""

    span: Span


@dataclass(frozen=True, slots=True, eq=False)
class Hold:
    """``hold 12 as thumb``: the stitches the next row would meet first; `count` None: all."""

    count: Count | None
    name: Name
    span: Span


@dataclass(frozen=True, slots=True, eq=False)
class Take:
    """Held stitches (`joined` false) or live stitches of other pieces come onto the needle."""

    names: tuple[Name, ...]
    joined: bool
    span: Span


@dataclass(frozen=True, slots=True, eq=False)
class PickUp:
    """Stitches picked up along an edge; they are a cast-on where none hang."""

    count: Count
    strand: Name | None
    edge: Name | None
    span: Span


@dataclass(frozen=True, slots=True, eq=False)
class BeginRound:
    """The first `count` stitches are knit, and the rounds begin behind them from here on."""

    count: Count
    span: Span


@dataclass(frozen=True, slots=True, eq=False)
class LeaveLive:
    """The piece ends with its stitches live; `text` says what becomes of them."""

    text: Text | None
    span: Span


@dataclass(frozen=True, slots=True, eq=False)
class Remark:
    """``note`` or ``section`` inside a piece."""

    kind: str
    text: Text
    span: Span


Item = (
    PieceRow
    | CastOn
    | BindOff
    | Work
    | Spread
    | JoinRound
    | LeaveRound
    | BeginRound
    | Hold
    | Take
    | PickUp
    | LeaveLive
    | Remark
)


@dataclass(frozen=True, slots=True, eq=False)
class Piece:
    name: Name
    in_round: bool
    starts_ws: bool
    edge: Edge | None
    width: Quantity | None
    length: Quantity | None
    items: tuple[Item, ...]
    span: Span


@dataclass(frozen=True, slots=True)
class Reference:
    """A name used: `kind` is motif, strand, shade or yarn."""

    kind: str
    name: Name


@dataclass(frozen=True, slots=True)
class UnknownWord:
    """A word of a body that no dictionary holds; `span` is its place in the file."""

    text: str
    span: Span


@dataclass(frozen=True, slots=True)
class RowClash:
    """A motif row that two lines give; the first counts."""

    motif: Motif | None
    number: int
    again: Span
    first: Span


@dataclass(frozen=True, slots=True)
class RowGap:
    """Numbers that no line of a motif gives."""

    motif: Name
    numbers: tuple[int, ...]
    last: int
    span: Span


@dataclass(frozen=True, slots=True, eq=False)
class Pattern:
    """A whole source, its names looked up. Measures are the file's, for every size."""

    source: Source
    title: Text | None
    designer: Text | None
    summary: Text | None
    level: Name | None
    size_names: tuple[Name, ...]
    width: Quantity | None
    length: Quantity | None
    gauges: tuple[Gauge, ...]
    swatches: tuple[Swatch, ...]
    needles: tuple[Needle, ...]
    notions: tuple[Text, ...]
    notes: tuple[Text, ...]
    yarns: tuple[Yarn, ...]
    shades: tuple[Shade, ...]
    strands: tuple[Strand, ...]
    stitches: tuple[Stitch, ...]
    motifs: tuple[Motif, ...]
    pieces: tuple[Piece, ...]
    references: tuple[Reference, ...]
    unknown_words: tuple[UnknownWord, ...]
    clashes: tuple[RowClash, ...]
    gaps: tuple[RowGap, ...]
    size_lists: tuple[tuple[int, Span], ...]
    span: Span
    bounds: tuple[Bound, ...] = ()
    join: JoinBy | None = None
    care: Care | None = None

    @property
    def sizes(self) -> tuple[str, ...]:
        """The size names in order; ``one`` alone where the file has none."""
        return tuple(name.text for name in self.size_names) or (ONE_SIZE,)

    def strand(self, key: str) -> Strand | None:
        return next((s for s in self.strands if s.name.key == key), None)

    def shade(self, key: str) -> Shade | None:
        return next((s for s in self.shades if s.name.key == key), None)

    def yarn(self, key: str) -> Yarn | None:
        return next((y for y in self.yarns if y.name.key == key), None)

    def bound(self, kind: str) -> int | None:
        """What the file says is borne of a kind (``slip``, ``carry``, ``float``), or None."""
        return next((b.number for b in self.bounds if b.kind.key == kind), None)

    def gauge_for(self, fabric: str | None) -> Gauge | None:
        """The gauge measured in a fabric (a motif's name), else the file's first."""
        for gauge in self.gauges:
            if fabric and gauge.fabric and gauge.fabric.key == fabric.casefold():
                return gauge
        return self.gauges[0] if self.gauges else None
