"""Each piece walked for each size, with exact whole numbers and no unrolled repeats."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from math import lcm
from typing import Protocol

from loopwright.count.affine import Affine, CountSet
from loopwright.count.live import Live, end_to_end, parted, summed, total
from loopwright.count.measure import height_of_row, width_gauge
from loopwright.count.repeat import Chunk, Entry, Repeater, Snag
from loopwright.count.spread import spread_over_rows
from loopwright.count.tape import Tape, tape_of
from loopwright.count.waiting import Holders, Waiting
from loopwright.model.body import Body
from loopwright.model.pattern import (
    BeginRound,
    BindOff,
    CastOn,
    Hold,
    Item,
    JoinRound,
    LeaveLive,
    LeaveRound,
    Motif,
    Pattern,
    PickUp,
    Piece,
    PieceRow,
    Remark,
    Row,
    Spread,
    Take,
    Work,
)
from loopwright.notation.bounds import MAX_NUMBER, MAX_SPREAD_ROWS
from loopwright.notation.source import Span
from loopwright.notation.tree import ForRows, Times, ToLength, UntilSpent, UntilStitches
from loopwright.record import dataclass, field, replace

_TRIED = 64
"""Counts walked on each side for a cast-on that fits."""

_NO_MATTER = ("gauge-missing", "claim-wrong", "never-bound-off", "side-flip", "row-twice",
              "row-missing", "length-unreached")  # fmt: skip
"""Findings that no other cast-on would mend."""


class Estimate(Protocol):
    """What the yarn room knows, for work that ends when a strand is spent."""

    def repeats(
        self, piece: Piece, size: int, item: Work, trial: Callable[[int], Walk]
    ) -> int | None:
        """The most repeats of `item` that its strand lasts for, to the end of the piece.

        `trial` walks the piece with that many repeats. None where it cannot be said.
        """

    def note(self, walk: Walk) -> None:
        """A piece that is walked to its end."""


@dataclass(frozen=True, slots=True)
class Finding:
    """Something the walk met, in one size; the rules turn it into a problem.

    `rule` names the rule, `detail` the case within it. `numbers` are what its message needs.
    `row_number` is the row of the piece and `repeat` the repeat of the motif (from 0); `name` is
    a holder's or a piece's, `other` a further place that belongs to it.
    """

    rule: str
    size: int
    span: Span
    piece: Piece
    detail: str = ""
    row: Row | None = None
    motif: Motif | None = None
    snag: Snag | None = None
    row_number: int = 0
    repeat: int = 0
    numbers: tuple[int, ...] = ()
    name: str = ""
    other: Span | None = None


@dataclass(frozen=True, slots=True)
class Worked:
    """Rows as worked: `chunk.entries` `chunk.reps` times, then the first `part` of them.

    `first_row` is the number of the first row in the piece, `rs` whether it is a right-side row.
    """

    item: PieceRow | Work | Spread
    index: int
    motif: Motif | None
    first_row: int
    rs: bool
    round: bool
    chunk: Chunk

    @property
    def rows(self) -> int:
        return self.chunk.rows

    def is_rs(self, index: int) -> bool:
        """Whether the row at `index` (from 0) is worked with the right side in front.

        Flat work changes sides with every row, a round only where a row turns.
        """
        if not self.round:
            return self.rs == (index % 2 == 0)
        entries = self.chunk.entries
        turns = sum(entry.turns for entry in entries)
        if not turns:
            return self.rs
        k, at = divmod(index, len(entries))
        return self.rs == ((k * turns + sum(e.turns for e in entries[:at])) % 2 == 0)

    def is_round(self, index: int) -> bool:
        """Whether that row goes all the way round, from the right side, without turning."""
        entry = self.chunk.entries[index % len(self.chunk.entries)]
        return self.round and not entry.turns and self.is_rs(index)


@dataclass(frozen=True, slots=True)
class Cast:
    """Stitches cast on."""

    item: CastOn
    index: int
    count: int


@dataclass(frozen=True, slots=True)
class Bound:
    """Stitches bound off, or left live at the end of the piece."""

    item: BindOff | LeaveLive
    index: int
    count: int


@dataclass(frozen=True, slots=True)
class Moved:
    """Stitches that come onto the needle (`count` above 0) or go off it, between rows.

    `counts` are those of each name of the line, in its order; `total` is what hangs afterwards.
    """

    item: Hold | Take | PickUp | CastOn
    index: int
    count: int
    counts: tuple[int, ...]
    total: int


@dataclass(frozen=True, slots=True)
class Said:
    """A note, a section, or a change between rows and rounds."""

    item: Remark | JoinRound | LeaveRound | BeginRound
    index: int


Event = Worked | Cast | Bound | Moved | Said


@dataclass(frozen=True, slots=True)
class ListedRow:
    """A row as `rows` lists it; `line` counts from 1."""

    row: int
    side: str
    strand: str | None
    start: int
    end: int
    line: int


@dataclass(frozen=True, slots=True)
class Site:
    """Where a motif is begun: with how many stitches, and how they hang; `rs` and `round` are as
    in `Worked`."""

    motif: Motif
    item: Work
    count: int
    size: int
    live: Live
    rs: bool
    round: bool


@dataclass(frozen=True, slots=True, eq=False)
class Walk:
    """One piece in one size. `height` is in millimetres at the file's gauges (None: no gauge)."""

    piece: Piece
    size: int
    events: tuple[Event, ...]
    findings: tuple[Finding, ...]
    sites: tuple[Site, ...]
    cast_on: int | None
    widest: int
    rows: int
    height: float | None
    sound: bool
    heights: tuple[tuple[int, float], ...]

    def height_after(self, row: int) -> float:
        """The height in millimetres when row `row` of the piece is done (at the file's gauges)."""
        at, height = 0, 0.0
        for last, reached in self.heights:
            if last >= row:
                return height + (reached - height) * (row - at) / max(last - at, 1)
            at, height = last, reached
        return height

    def listed(self, first: int = 1) -> Iterator[ListedRow]:
        """Every row in order, from row `first` of the piece, one at a time."""
        for event in self.events:
            if isinstance(event, Worked) and event.first_row + event.rows > first:
                yield from _listed(event, first)


def _listed(event: Worked, first: int) -> Iterator[ListedRow]:
    entries = event.chunk.entries
    skip = max(0, first - event.first_row)
    for index in range(skip, event.rows):
        k, at = divmod(index, len(entries))
        entry = entries[at]
        rs = event.is_rs(index)
        row = entry.row
        yield ListedRow(
            event.first_row + index,
            "rs" if rs else "ws",
            row.strand.text if row.strand else None,
            entry.start.at(k),
            entry.end.at(k),
            row.line,
        )


class Tapes:
    """Tapes by body and size, each made once."""

    def __init__(self) -> None:
        self._made: dict[tuple[int, int], Tape] = {}
        self._kept: list[Body] = []  # ids stay valid while the bodies live

    def of(self, body: Body, size: int) -> Tape:
        key = (id(body), size)
        found = self._made.get(key)
        if found is None:
            found = self._made[key] = tape_of(body, size)
            self._kept.append(body)
        return found


def walk_piece(
    pattern: Pattern,
    piece: Piece,
    size: int,
    tapes: Tapes,
    repeater: Repeater,
    estimate: Estimate | None = None,
    cast_on: int | None = None,
    holders: Holders | None = None,
    forced: Mapping[Work, int] | None = None,
) -> Walk:
    """Walk one piece in one size. `cast_on` stands in for the written cast-on count.

    `holders` are the stitches that earlier pieces have put aside; the walk changes them.
    `forced` says how often lines that end by yarn are worked; with it any other such line is
    worked once.
    """
    holders = Holders() if holders is None else holders
    return _Walker(
        pattern, piece, size, tapes, repeater, estimate, cast_on, holders, forced=forced
    ).run()


def walk_size(
    pattern: Pattern, size: int, tapes: Tapes, repeater: Repeater, estimate: Estimate | None = None
) -> tuple[Walk, ...]:
    """Walk every piece in one size, in file order: later ones take what earlier ones hold."""
    holders = Holders()
    walks: list[Walk] = []
    for piece in pattern.pieces:
        walk = walk_piece(pattern, piece, size, tapes, repeater, estimate, None, holders)
        walks.append(walk)
        if estimate is not None:
            estimate.note(walk)
    for left in holders.waiting.values():
        if left.live:
            continue
        found = Finding(
            "never-bound-off",
            size,
            left.span,
            left.piece,
            "held",
            row_number=left.row,
            numbers=(left.count,),
            name=left.name,
        )
        at = pattern.pieces.index(left.piece)
        walks[at] = replace(walks[at], findings=(*walks[at].findings, found), sound=False)
    return tuple(walks)


@dataclass(slots=True)
class _Walker:
    pattern: Pattern
    piece: Piece
    size: int
    tapes: Tapes
    repeater: Repeater
    estimate: Estimate | None
    instead: int | None
    holders: Holders
    before: Holders = field(default_factory=Holders)
    forced: Mapping[Work, int] | None = None
    events: list[Event] = field(default_factory=list)
    findings: list[Finding] = field(default_factory=list)
    sites: list[Site] = field(default_factory=list)
    state: Live | None = None
    first_cast: int | None = None
    cast_span: Span | None = None
    moved: bool = False  # the count is no longer what was cast on
    unsure: bool = False  # markers are lost: what follows would only repeat the first error
    widest: int = 0
    brought: int = 0  # stitches taken or picked up
    put_aside: int = 0  # stitches held
    row: int = 1
    rs: bool = True
    round: bool = False
    height: float | None = 0.0
    strand: str | None = None
    loops: dict[str, float] = field(default_factory=dict)
    spent: dict[Work, int] = field(default_factory=dict)
    reached: list[tuple[int, float]] = field(default_factory=list)

    def run(self) -> Walk:
        self.before = self.holders.copy()
        self.rs = not self.piece.starts_ws
        self.round = self.piece.in_round
        if len(self.pattern.strands) == 1:
            self.strand = self.pattern.strands[0].name.key
        items = self.piece.items
        for index, item in enumerate(items):
            if not self._item(index, item, items):
                break
        else:
            self._end()
        return Walk(
            self.piece,
            self.size,
            tuple(self.events),
            tuple(self.findings),
            tuple(self.sites),
            self.first_cast,
            self.widest,
            self.row - 1,
            self.height,
            not self.findings,
            tuple(self.reached),
        )

    def _find(self, rule: str, span: Span, detail: str = "", **more: object) -> None:
        found = Finding(rule, self.size, span, self.piece, detail)
        self.findings.append(replace(found, **more) if more else found)  # type: ignore[arg-type]

    def _item(self, index: int, item: Item, items: tuple[Item, ...]) -> bool:
        """Walk one item; False where the piece cannot be walked further."""
        if isinstance(item, Remark):
            self.events.append(Said(item, index))
            return True
        if isinstance(item, CastOn) and not item.more:
            return self._cast_on(index, item)
        if isinstance(item, PickUp | Take | CastOn):
            return self._bring(index, item)
        if self.state is None:
            detail = "bound" if any(isinstance(e, Bound) for e in self.events) else "never"
            self._find("no-cast-on", item.span, detail)
            return False
        if isinstance(item, Hold):
            return self._hold(index, item)
        if isinstance(item, JoinRound | LeaveRound):
            return self._change_round(index, item)
        if isinstance(item, BeginRound):
            return self._begin_round(index, item)
        if isinstance(item, BindOff | LeaveLive):
            return self._finish(index, item)
        following: Item | None = None
        for place in range(index + 1, len(items)):
            if isinstance(items[place], PieceRow | Work | Spread):
                following = items[place]
                break
        if isinstance(item, PieceRow):
            return self._piece_row(index, item, following)
        if isinstance(item, Spread):
            return self._spread(index, item, following)
        return self._work(index, item, following)

    def _end(self) -> None:
        if self.state is None:
            if not any(isinstance(e, Cast | Moved) for e in self.events):
                self._find("no-cast-on", self.piece.span, "empty")
            return
        live = total(self.state).fixed
        if live > 0:
            cast = sum(e.count for e in self.events if isinstance(e, Cast))
            numbers = (live, cast, self.brought, self.put_aside)
            self._find("never-bound-off", self.piece.span, "end", numbers=numbers)

    # --- stitches that come and go between rows -----------------------------------------------

    def _finish(self, index: int, item: BindOff | LeaveLive) -> bool:
        assert self.state is not None
        count = total(self.state).fixed
        if isinstance(item, BindOff):
            self._unreached(item.span, "bind")
            if item.strand:
                self.strand = item.strand.key
        else:
            name = self.piece.name.key
            self._put(Waiting(name, count, self.piece, self.row - 1, item.span, True))
        self.events.append(Bound(item, index, count))
        self.state = None
        return True

    def _unreached(self, span: Span, detail: str) -> None:
        """Stitches that a short row has left must be worked before the whole piece goes on."""
        assert self.state is not None
        behind = sum(part.fixed for part in self.state.behind)
        if behind and not self.unsure:
            self._find("stitches-unreached", span, detail, numbers=(behind,))

    def _change_round(self, index: int, item: JoinRound | LeaveRound) -> bool:
        assert self.state is not None
        self._unreached(item.span, "join" if isinstance(item, JoinRound) else "leave")
        if isinstance(item, JoinRound) and not self.round and not self.rs:
            # Joined at the end of a right-side row, not turned: the round meets it from its start.
            live = self.state
            gap = None if live.gap is None else summed(live.ahead) - live.gap
            self.state = Live(live.ahead[::-1], live.behind, gap)
        self.round = isinstance(item, JoinRound)
        self.rs = True
        self.events.append(Said(item, index))
        return True

    def _begin_round(self, index: int, item: BeginRound) -> bool:
        """The beginning of the rounds moves; the stitches up to it are knit."""
        assert self.state is not None
        count, have = item.count.at(self.size), total(self.state).fixed
        if not self.round or not self.rs or self.state.behind:
            self._find("out-of-place", item.span, "begin")
            return False
        if count >= have:
            self._find("count-over", item.span, "begin", numbers=(count, have))
            return False
        first, rest = parted([part.fixed for part in self.state.ahead], count)
        parts = tuple(map(Affine, rest))
        gap = self.state.gap
        if gap is not None:
            gap = gap.plus(-count) if gap.fixed >= count else None  # knit past, it is closed
        self.state = Live(end_to_end(parts, tuple(map(Affine, first))), (), gap)
        self._eat(float(count))
        self.events.append(Said(item, index))
        return True

    def _put(self, stitches: Waiting) -> None:
        self.put_aside += stitches.count
        there = self.holders.put(stitches)
        if there is not None:
            self._find(
                "holder-full",
                stitches.span,
                "live" if stitches.live else "held",
                numbers=(stitches.count, there.count),
                name=stitches.name,
                other=there.span,
            )

    def _hold(self, index: int, item: Hold) -> bool:
        assert self.state is not None
        have = total(self.state).fixed
        if item.count is None:
            count, self.state = have, None
        else:
            count = item.count.at(self.size)
            parts = [part.fixed for part in self.state.ahead]
            if count > sum(parts):
                self._find("count-over", item.span, "hold", numbers=(count, sum(parts)))
                return False
            kept = tuple(map(Affine, parted(parts, count)[1]))
            gap = self.state.gap
            if gap is not None:
                gap = gap.plus(-count) if gap.fixed >= count else None
            rest = Live(kept, self.state.behind, gap)
            self.state = rest if have > count else None
        self.moved = True
        self._put(Waiting(item.name.key, count, self.piece, self.row - 1, item.span, False))
        self.events.append(Moved(item, index, -count, (count,), have - count))
        return True

    def _bring(self, index: int, item: Take | PickUp | CastOn) -> bool:
        """More stitches on the needle: at the end of the row just worked, or behind the others."""
        if isinstance(item, Take):
            counts = []
            for name in item.names:
                found = self._take(name.key, name.span)
                if found is None:
                    return False
                counts.append(found)
        else:
            assert item.count is not None
            counts = [item.count.at(self.size)]
            self.brought += counts[0]
            if item.strand:
                self.strand = item.strand.key
            self._eat((2.0 if isinstance(item, CastOn) else 1.0) * counts[0])
        count = sum(counts)
        if self.state is None:
            if isinstance(item, CastOn):
                self._find("no-cast-on", item.span, "more")
                return False
            self.state = Live.of(count)
        else:
            self.state = _with_more(self.state, count, self.round, isinstance(item, Take))
        if self.first_cast is None:
            self.first_cast = count
        self.moved = True
        now = total(self.state).fixed
        self.widest = max(self.widest, now)
        self.events.append(Moved(item, index, count, tuple(counts), now))
        if now > MAX_NUMBER:
            self._find("number-too-big", item.span, "stitches", numbers=(now,))
            return False
        return True

    def _take(self, name: str, span: Span) -> int | None:
        found = self.holders.take(name)
        if found is not None:
            self.brought += found.count
            return found.count
        gone = self.holders.taken.get(name)
        later = any(p.name.key == name and p is not self.piece for p in self.pattern.pieces)
        detail = "taken" if gone is not None else "piece" if later else "never"
        self._find(
            "holder-empty",
            span,
            detail,
            name=name,
            numbers=(gone.count if gone is not None else 0,),
            other=gone.span if gone is not None else None,
        )
        return None

    def _resolved(self, row: Row, tape: Tape) -> Tape | None:
        """The tape with held stitches taken from their holders; None where one is empty."""
        held: dict[str, int] = {}
        for op in tape.asks:
            count = self._take(op.name, row.in_body(op.span))
            if count is None:
                return None
            held[op.name] = count
        return tape.with_held(held) if held else tape

    def _holders_of(self, pairs: list[tuple[Row, Tape]], reps: int, part: int) -> bool:
        """Rows that hold or take stitches: worked once only. False where they cannot be."""
        for at, (row, tape) in enumerate(pairs):
            special = tape.holds or tape.asks
            if not special:
                continue
            times = reps + (1 if at < part else 0)
            if times > 1:
                self._find(
                    "holder-full",
                    row.in_body(special[0].span),
                    "again",
                    row=row,
                    name=special[0].name,
                    numbers=(times,),
                )
                return False
            for op in tape.holds:
                place = row.in_body(op.span)
                self._put(Waiting(op.name, op.takes, self.piece, self.row + at, place, False))
        return True

    # --- casting on -------------------------------------------------------------

    def _cast_on(self, index: int, item: CastOn) -> bool:
        if self.state is not None:
            live = total(self.state).fixed
            self._find("never-bound-off", item.span, "again", numbers=(live,))
        if self.instead is not None and self.first_cast is None:
            count: int | None = self.instead
        elif item.count is not None:
            count = item.count.at(self.size)
        else:
            count = self._count_for_width(item)
        if count is None:
            return False
        if item.strand:
            self.strand = item.strand.key
        self._eat(2.0 * count)
        self.state = Live.of(count)
        self.cast_span = item.count.span if item.count is not None else item.span
        self.moved = item.count is None
        if self.first_cast is None:
            self.first_cast = count
        self.widest = max(self.widest, count)
        self.events.append(Cast(item, index, count))
        return True

    def _count_for_width(self, item: CastOn) -> int | None:
        width = self.piece.width or self.pattern.width
        gauge = width_gauge(self.pattern, self.piece)
        if width is None:
            self._find("gauge-missing", item.span, "width")
            return None
        if width.unit is None:
            return None  # said by unit-missing
        if gauge is None or gauge.over.unit is None:
            self._find("gauge-missing", item.span, "gauge")
            return None
        wanted = width.mm(self.size) * gauge.stitches / gauge.over.mm()
        from loopwright.count.solve import counts_for

        counts = counts_for(self.pattern, self.piece, self.size, self.tapes)
        found = counts.nearest(wanted)
        if found is None or not 1 <= found <= MAX_NUMBER:
            self._find("cast-on-misfit", item.span, "none", numbers=(round(wanted),))
            return None
        return found

    # --- rows -------------------------------------------------------------

    def _tape(self, row: Row) -> Tape:
        return self.tapes.of(row.body, self.size)

    def _following_tape(self, item: Item | None) -> Tape | None:
        """The row behind an item; None also where it takes stitches whose number is not known."""
        tape: Tape | None = None
        if isinstance(item, PieceRow):
            tape = self._tape(item.row)
        elif isinstance(item, Work) and item.motif is not None and item.motif.rows:
            tape = self._tape(item.motif.rows[0])
        return None if tape is None or tape.asks else tape

    def _piece_row(self, index: int, item: PieceRow, following: Item | None) -> bool:
        if item.first is not None and item.last is not None:
            first, last = item.first.at(self.size), item.last.at(self.size)
            if first > self.row:
                self._find("row-missing", item.span, "piece", numbers=(self.row, first))
            elif first < self.row:
                self._find("row-twice", item.span, "piece", numbers=(self.row, first))
            times = max(last - first + 1, 1)
        else:
            times = item.times.at(self.size) if item.times is not None else 1
        if times < 1:
            return True
        rows = (item.row,)
        return self._repeat(index, item, None, rows, times, 0, following)

    def _work(self, index: int, item: Work, following: Item | None) -> bool:
        motif = item.motif
        assert self.state is not None
        if motif is None or not motif.rows:
            return False  # said by unknown-name or row-missing; nothing after it can be counted
        count = total(self.state).fixed
        self.sites.append(Site(motif, item, count, self.size, self.state, self.rs, self.round))
        fits = self._on_form(item, motif, count)
        self._sides(item, motif)
        if isinstance(item.amount, UntilStitches):
            return self._until_stitches(index, item, motif, fits, following)
        amount = self._amount(item, motif)
        if amount is None:
            return False
        reps, part = amount
        self._odd_rows(item, motif, reps + (part > 0))
        if not fits:
            return self._skip(index, item, motif, reps, part)
        return self._repeat(index, item, motif, motif.rows, reps, part, following)

    def _spread(self, index: int, item: Spread, following: Item | None) -> bool:
        """Changes evenly over rows: the longer distances, the shorter ones, what is left over."""
        change, plain = item.motif, item.plain
        if change is None or plain is None or not plain.rows or not change.rows:
            return False  # said by unknown-name or row-missing
        assert self.state is not None
        if len(change.rows) > 1:
            self._find("spread-tight", item.name.span, "motif", motif=change)
            return False
        rows = self._spread_rows(item, plain)
        if rows is None:
            return False
        changes = self._spread_times(item, change)
        if changes is None:
            return False
        length = len(plain.rows)
        step = length if self.round else lcm(length, 2)
        # The last right-side row of each distance: its last row where the next row is a wrong one.
        place = 1 if self.rs and not self.round else 0
        spread = spread_over_rows(changes, rows, step, place)
        if spread is None:
            self._find(
                "spread-tight", item.over.span, "rows", motif=change, numbers=(changes, rows, step)
            )
            return False
        if spread.blocks and spread.blocks[0][0] > MAX_SPREAD_ROWS:
            self._find("spread-tight", item.over.span, "far", motif=change)
            return False
        if plain.in_round and not self.round:
            self._find("side-flip", item.span, "rounds", motif=plain)
        # Begun on the other side, the fabric goes on with its row of that side.
        turned = not self.round and not plain.is_one_body and plain.is_rs(1) != self.rs
        between = plain.rows[turned:] + plain.rows[:turned]
        for every, times in spread.blocks:
            entries = [between[at % length] for at in range(every)]
            entries[every - 1 - place] = change.rows[0]
            if not self._repeat(index, item, plain, tuple(entries), times, 0, following):
                return False
        if spread.tail:
            return self._repeat(index, item, plain, between, 0, spread.tail, following)
        return True

    def _spread_rows(self, item: Spread, plain: Motif) -> int | None:
        """Over how many rows; to a length it is the nearest number that ends on the same side."""
        if isinstance(item.over, ForRows):
            return item.over.rows.at(self.size)
        one = 1 if self.round else 2
        part = replace(plain, rows=(plain.rows * one)[:one])
        times = self._reps_to_length(item, part, item.over)
        return None if times is None else times * one

    def _spread_times(self, item: Spread, change: Motif) -> int | None:
        if isinstance(item.times, Times):
            return item.times.count.at(self.size)
        assert self.state is not None
        target = item.times.count.at(self.size)
        pairs = [(change.rows[0], self._tape(change.rows[0]))]
        reps, nearest = self.repeater.until(pairs, self.state, target, True)
        if reps is None:
            count = total(self.state).fixed
            self._find(
                "count-unreached",
                item.times.span,
                motif=change,
                numbers=(count, target, *nearest),
            )
        return reps

    def _on_form(self, item: Work, motif: Motif, count: int) -> bool:
        form = motif.form
        if form is None or self.unsure:
            return True
        takes = (
            count == form.fixed
            if form.unit == 0
            else count >= form.unit + form.fixed and (count - form.fixed) % form.unit == 0
        )
        if takes:
            return True
        if not self.moved and self.cast_span is not None:
            fewer, more = self._nearest_cast_ons(count, motif)
            self._find(
                "cast-on-misfit",
                self.cast_span,
                "cast-on",
                motif=motif,
                numbers=(count, fewer, more, item.line),
            )
            # Go on as if the likelier of the two had been cast on.
            instead = [n for n in (fewer, more) if n > 0]
            if instead:
                self.state = Live.of(min(instead, key=lambda n: (abs(n - count), -n)))
        else:
            counts = form_set(motif)
            self._find(
                "cast-on-misfit",
                item.span,
                "work",
                motif=motif,
                numbers=(count, counts.below(count) or 0, counts.above(count) or 0, item.line),
            )
        return False

    def _nearest_cast_ons(self, count: int, motif: Motif) -> tuple[int, int]:
        """The nearest cast-ons below and above that the whole piece can be walked with; 0: none."""
        if self.instead is not None:
            return 0, 0  # a walk that only tries a count proposes no other
        from loopwright.count.solve import counts_for

        counts = counts_for(self.pattern, self.piece, self.size, self.tapes)
        if counts.is_empty:
            counts = form_set(motif)
        found = [0, 0]
        for way, step in enumerate((-1, 1)):
            at = counts.below(count) if step < 0 else counts.above(count)
            for _ in range(_TRIED):
                if at is None or not 1 <= at <= MAX_NUMBER:
                    break
                if self._walks_with(at):
                    found[way] = at
                    break
                at = counts.below(at - 1) if step < 0 else counts.above(at + 1)
        return found[0], found[1]

    def _walks_with(self, count: int) -> bool:
        walk = walk_piece(
            self.pattern,
            self.piece,
            self.size,
            self.tapes,
            self.repeater,
            None,
            count,
            self.before.copy(),
        )
        return all(finding.rule in _NO_MATTER for finding in walk.findings)

    def _sides(self, item: Work, motif: Motif) -> None:
        if self.round:
            return
        if motif.in_round:
            self._find("side-flip", item.span, "rounds", motif=motif)
        elif not motif.is_one_body and motif.is_rs(1) != self.rs:
            self._find(
                "side-flip", item.span, "start", motif=motif, numbers=(self.row, int(self.rs))
            )

    def _odd_rows(self, item: Work, motif: Motif, reps: int) -> None:
        rows = len(motif.rows)
        if rows and motif.rows[-1].number != rows:
            return  # a row is missing: said by row-missing
        if not self.round and not motif.in_round and rows % 2 and reps > 1:
            if not motif.is_one_body:
                self._find("side-flip", item.span, "odd", motif=motif, numbers=(rows,))

    def _amount(self, item: Work, motif: Motif) -> tuple[int, int] | None:
        """Whole repeats and rows of one more; None where the piece cannot go on."""
        rows = len(motif.rows)
        amount = item.amount
        if isinstance(amount, Times):
            reps, part = amount.count.at(self.size), 0
        elif isinstance(amount, ForRows):
            reps, part = divmod(amount.rows.at(self.size), rows)
        elif isinstance(amount, ToLength):
            found = self._reps_to_length(item, motif, amount)
            if found is None:
                return None
            reps, part = found, 0
        elif isinstance(amount, UntilSpent):
            found = self._reps_until_spent(item, motif, amount)
            if found is None:
                return None
            reps, part = found, 0
        else:
            return None
        if self.row + reps * rows + part > MAX_NUMBER:
            self._find("number-too-big", amount.span, "rows", numbers=(reps * rows + part,))
            return None
        return reps, part

    def _reps_to_length(self, item: Work | Spread, motif: Motif, amount: ToLength) -> int | None:
        measure = amount.measure or self.piece.length or self.pattern.length
        if measure is None:
            self._find("gauge-missing", amount.span, "length")
            return None
        if measure.unit is None:
            return None  # said by unit-missing
        height = height_of_row(self.pattern, motif)
        if height is None or self.height is None:
            self._find("gauge-missing", amount.span, "gauge")
            return None
        target = measure.mm(self.size)
        if amount.rows_off is not None:
            plain = height_of_row(self.pattern, None) or height
            target += amount.sign * amount.rows_off.at(self.size) * plain
        elif amount.measure_off is not None and amount.measure_off.unit is not None:
            target += amount.sign * amount.measure_off.mm(self.size)
        wanted = (target - self.height) / (height * len(motif.rows))
        reps = int(wanted + 0.5 + 1e-9)
        if wanted <= 0 or reps < 1:
            self._find(
                "length-unreached",
                amount.span,
                motif=motif,
                numbers=(round(target), round(self.height), round(height * len(motif.rows))),
            )
            return None
        return reps

    def _reps_until_spent(self, item: Work, motif: Motif, amount: UntilSpent) -> int | None:
        key = amount.strand.key
        if self.pattern.strand(key) is None:
            return None  # said by unknown-name
        if self.forced is not None:
            return self.forced.get(item, 1)
        assert self.state is not None
        chunks, _ = self.repeater.run(
            [(row, self._tape(row)) for row in motif.rows], self.state, 2, 0, self.round, None
        )
        rows = chunks[0].entries
        if not any((e.row.strand.key if e.row.strand else self.strand) == key for e in rows):
            self._find("length-unreached", amount.span, "strand", motif=motif)
            return None

        def trial(reps: int) -> Walk:
            return walk_piece(
                self.pattern,
                self.piece,
                self.size,
                self.tapes,
                self.repeater,
                None,
                self.first_cast,  # as found: it need not be looked for again
                self.before.copy(),
                {**self.spent, item: reps},
            )

        reps = (
            self.estimate.repeats(self.piece, self.size, item, trial)
            if self.estimate is not None
            else None
        )
        if reps is None:
            self._find("gauge-missing", amount.span, "yarn", numbers=())
            return None
        if reps < 1:
            self._find("length-unreached", amount.span, "spent", motif=motif)
            return None
        self.spent[item] = reps
        return reps

    def _until_stitches(
        self, index: int, item: Work, motif: Motif, fits: bool, following: Item | None
    ) -> bool:
        assert isinstance(item.amount, UntilStitches) and self.state is not None
        target = item.amount.count.at(self.size)
        if not fits:
            self.state = Live.of(target)
            self.unsure = True
            return True
        count = total(self.state).fixed
        rows = [(row, self._tape(row)) for row in motif.rows]
        reps, nearest = self.repeater.until(rows, self.state, target, self.round)
        if reps is None:
            # A claim in the motif says nearer which row is not as it was meant.
            once, _ = self.repeater.run(rows, self.state, 1, 0, self.round, None)
            self._claims(once, item, motif)
            self._find(
                "count-unreached",
                item.amount.span,
                motif=motif,
                numbers=(count, target, *nearest),
            )
            self.state = Live.of(target)
            self.unsure = True
            return True
        self._odd_rows(item, motif, reps)
        return self._repeat(index, item, motif, motif.rows, reps, 0, following)

    def _skip(self, index: int, item: Work, motif: Motif, reps: int, part: int) -> bool:
        """Pass over a motif that does not fit the count: only its net change is kept."""
        self._advance(motif, reps * len(motif.rows) + part)
        self.moved = True
        return True

    def _advance(self, motif: Motif | None, rows: int) -> None:
        self.row += rows
        if rows % 2 and not self.round:
            self.rs = not self.rs
        height = height_of_row(self.pattern, motif)
        self.height = None if height is None or self.height is None else self.height + rows * height
        if self.height is not None:
            self.reached.append((self.row - 1, self.height))

    def _repeat(
        self,
        index: int,
        item: PieceRow | Work | Spread,
        motif: Motif | None,
        rows: tuple[Row, ...],
        reps: int,
        part: int,
        following: Item | None,
    ) -> bool:
        assert self.state is not None
        tape = self._following_tape(following)
        pairs = [(row, self._tape(row)) for row in rows]
        if any(pair[1].holds or pair[1].asks for pair in pairs):
            if not self._holders_of(pairs, reps, part):
                return False
            resolved = [(row, self._resolved(row, tape)) for row, tape in pairs]
            pairs = [(row, tape) for row, tape in resolved if tape is not None]
            if len(pairs) < len(resolved):
                return False
        back = self._runs_back(pairs, reps * len(pairs) + part)
        if back is not None and not self.unsure:
            self._find("stitches-unreached", back.place, "back", row=back)
            return False
        chunks, snags = self.repeater.run(pairs, self.state, reps, part, self.round, tape)
        # Short rows live on one another: behind the first that fails the rest say nothing new.
        for snag in snags[:1] if any(tape.turns for _, tape in pairs) else snags:
            self._snag(snag, item, motif, rows)
        for chunk in chunks:
            self.events.append(Worked(item, index, motif, self.row, self.rs, self.round, chunk))
            self._eat_rows(chunk)
            turned = sum(
                chunk.reps + (1 if i < chunk.part else 0)
                for i, entry in enumerate(chunk.entries)
                if entry.turns and self.round
            )
            self._advance(motif, chunk.rows)
            if turned % 2:
                self.rs = not self.rs
            if self.row > MAX_NUMBER:
                self._find("number-too-big", item.span, "rows", numbers=(self.row,))
                return False
        before = self.state
        self.state = chunks[-1].after if chunks else self.state
        # Claims are checked where the count is sure.
        if not any(snag.kind in ("no-marker", "marker-missed", "trouble") for snag in snags):
            self._claims(chunks, item, motif)
        count = total(self.state).fixed
        if count != total(before).fixed or snags:
            self.moved = True
        self.widest = max(self.widest, count)
        if count > MAX_NUMBER and not any(snag.kind == "grown" for snag in snags):
            self._find("number-too-big", item.span, "stitches", numbers=(count,))
            return False
        return True

    def _runs_back(self, pairs: list[tuple[Row, Tape]], rows: int) -> Row | None:
        """The first row that goes on from the wrong side in the round without turning.

        The sides come again after two repeats at the latest.
        """
        rs = self.rs
        for at in range(min(rows, 2 * len(pairs)) if self.round else 0):
            row, tape = pairs[at % len(pairs)]
            if not rs and not tape.turns:
                return row
            rs = rs != tape.turns
        return None

    def _snag(
        self, snag: Snag, item: PieceRow | Work | Spread, motif: Motif | None, rows: tuple[Row, ...]
    ) -> None:
        if self.unsure:
            return
        row = snag.row
        number = self.row + snag.repeat * len(rows) + snag.index
        span = row.in_body(snag.misfit.span) if snag.misfit.span else row.at(row.body.span)
        if row.as_row is not None:
            span = row.at(row.span)
        rule = {
            "short": "count-short",
            "over": "count-over",
            "uneven": "fill-uneven",
            "no-marker": "marker-missing",
            "marker-missed": "marker-missed",
            "past": "count-over",
            "no-gap": "fill-unclear",
            "trouble": "fill-unclear",
            "grown": "number-too-big",
        }[snag.kind]
        if snag.kind in ("no-marker", "marker-missed"):
            self.unsure = True
        self._find(
            rule,
            span,
            snag.kind if snag.kind != "trouble" else snag.misfit.detail,
            row=row,
            motif=motif,
            snag=snag,
            row_number=number,
            repeat=snag.repeat,
        )

    def _claims(
        self, chunks: list[Chunk], item: PieceRow | Work | Spread, motif: Motif | None
    ) -> None:
        done = sum(chunk.rows for chunk in chunks)
        first_row = self.row - done
        repeat = 0
        for chunk in chunks:
            for index, entry in enumerate(chunk.entries):
                claim = entry.row.claim
                if claim is None or entry.misfit or entry.row.body.broken:
                    continue
                times = chunk.reps + (1 if index < chunk.part else 0)
                if times < 1:
                    continue
                wrong = _first_wrong(entry, claim.sign, claim.count.at(self.size), times)
                if wrong is not None:
                    self._find(
                        "claim-wrong",
                        entry.row.at(claim.span),
                        claim.sign or "=",
                        row=entry.row,
                        motif=motif,
                        row_number=first_row + (repeat + wrong) * len(chunk.entries) + index,
                        repeat=repeat + wrong,
                        numbers=(
                            entry.start.at(wrong),
                            entry.end.at(wrong),
                            claim.count.at(self.size),
                        ),
                    )
            repeat += chunk.reps

    # --- yarn, only as far as "until A is spent" needs it -------------------------------------

    def _eat(self, loops: float) -> None:
        if self.strand is not None:
            self.loops[self.strand] = self.loops.get(self.strand, 0.0) + loops

    def _eat_rows(self, chunk: Chunk) -> None:
        for index, entry in enumerate(chunk.entries):
            if entry.row.strand:
                self.strand = entry.row.strand.key
            times = chunk.reps + (1 if index < chunk.part else 0)
            fixed, unit = entry.yarn
            self._eat(fixed * times + unit * times * (times - 1) / 2)


def _with_more(live: Live, count: int, in_round: bool, behind: bool) -> Live:
    """`count` more stitches: behind all others, or at the end of the row just worked."""
    more = (Affine(count),)
    if behind and live.behind:
        return Live(live.ahead, end_to_end(live.behind, more), live.gap)
    if in_round or behind:
        return Live(end_to_end(live.ahead, more), live.behind, live.gap)
    gap = live.gap.plus(count) if live.gap is not None else None
    return Live(end_to_end(more, live.ahead), live.behind, gap)


def _first_wrong(entry: Entry, sign: str, said: int, times: int) -> int | None:
    """The first repeat (from 0) at which a claim does not hold."""
    if sign:
        value = Affine(entry.end.fixed - entry.start.fixed, entry.end.unit - entry.start.unit)
        said = -said if sign == "-" else said
    else:
        value = entry.end
    if value.fixed != said:
        return 0
    return 1 if value.unit and times > 1 else None


def form_set(motif: Motif) -> CountSet:
    """The counts of a motif's form for n = 1, 2, 3 …"""
    form = motif.form
    if form is None:
        return CountSet.every(1)
    if form.unit == 0:
        return CountSet(form.fixed, 0, form.fixed)
    return CountSet(form.fixed, form.unit, max(form.unit + form.fixed, 0))
