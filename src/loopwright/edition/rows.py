"""The instructions of a piece: its rows in order, repeats by their row numbers."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from loopwright.count.live import total
from loopwright.count.repeat import Entry
from loopwright.count.walk import Bound, Cast, Event, Moved, Walk, Worked
from loopwright.edition.document import Line, Section
from loopwright.edition.follow import Follower, Place
from loopwright.edition.phrases import FillTimes, Phraser
from loopwright.edition.spreading import spread_lines, spread_places
from loopwright.edition.voice import Voice
from loopwright.fit.units import cm, inches
from loopwright.model.body import same_body
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
from loopwright.notation.tree import ToLength
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class Printed:
    """A motif written out in this piece: its first row's number as printed, and how many rows."""

    first: int
    in_round: bool
    rows: int


class PieceWriter:
    """Writes one piece for some sizes (given as places in `sizes`).

    `notes` are sentences to print behind an item of the piece, by its place.
    """

    def __init__(
        self,
        pattern: Pattern,
        piece: Piece,
        walks: tuple[Walk, ...],
        voice: Voice,
        counts: str,
        inches_first: bool,
        notes: Mapping[int, tuple[str, ...]] | None = None,
    ) -> None:
        self.notes = notes or {}
        self.pattern = pattern
        self.piece = piece
        self.walks = walks
        self.sizes = tuple(walk.size for walk in walks)
        self.voice = voice
        self.all_counts = voice.all_counts or counts == "all"
        self.inches_first = inches_first
        self.phraser = Phraser(self.sizes, voice)
        self.printed: dict[int, Printed] = {}
        self.charted: dict[str, int] = {}  # motifs, by the section in which they begin
        self.sections: list[Section] = []
        self.lines: list[Line] = []
        self.heading = (self.title(), 2)
        self.strand: str | None = None
        self.many = len(pattern.strands) > 1
        self.follower = Follower() if len(walks) == 1 else None

    @property
    def place(self) -> Place:
        """Where the next line will stand."""
        return len(self.sections), len(self.lines)

    def title(self) -> str:
        text = self.piece.name.text.replace("-", " ").replace("_", " ")
        return text[:1].upper() + text[1:]

    def write(self) -> tuple[Section, ...]:
        """The sections of the piece, in order."""
        events = [_by_item(walk) for walk in self.walks]
        items = self.piece.items
        index = 0
        noted = 0
        while index < len(items):
            for place in range(noted, index):
                self.lines += [Line("note", "", text, "") for text in self.notes.get(place, ())]
            noted = index
            item = items[index]
            here = [e.get(index, []) for e in events]
            if isinstance(item, PieceRow):
                index = self._piece_rows(index, events)
                continue
            if isinstance(item, Work | Spread) and item.motif is not None:
                self.charted.setdefault(item.motif.name.key, len(self.sections))
                if isinstance(item, Spread) and item.plain is not None:
                    self.charted.setdefault(item.plain.name.key, len(self.sections))
            if isinstance(item, Work) and item.motif is not None:
                self._work(item, item.motif, here)
            elif isinstance(item, Spread):
                self._spread(item, here)
            elif isinstance(item, Remark):
                self._remark(item)
            else:
                self._between(item, [event for events in here for event in events])
            index += 1
        for place in range(noted, index):
            self.lines += [Line("note", "", text, "") for text in self.notes.get(place, ())]
        self._close()
        return tuple(self.sections)

    # --- lines -------------------------------------------------------------

    def _close(self) -> None:
        if self.lines or not self.sections:
            heading, level = self.heading
            self.sections.append(Section(heading, level, tuple(self.lines)))
        self.lines = []

    def _remark(self, item: Remark) -> None:
        if item.kind == "note":
            self.lines.append(Line("note", "", item.text.text, ""))
            return
        self._close()
        self.heading = (item.text.text, 3)

    def _spread(self, item: Spread, here: list[list[Event]]) -> None:
        lines = spread_lines(self, item, here)
        if self.follower is not None and lines:
            section, first = self.place
            for row, at in spread_places(item, lines, here[0]):
                mine = item.plain
                if item.motif is not None and row is item.motif.rows[0]:
                    mine = item.motif
                self.follower.printed(row, (section, first + at), mine, row.number - 1)
            last = (section, first + len(lines) - 1)
            self.follower.spread((e for e in here[0] if isinstance(e, Worked)), last)
        self.lines += lines

    def _do(self, text: str, count: str = "", strand: str | None = None) -> None:
        if self.follower is not None:
            self.follower.between(self.place)
        self.lines.append(self.line("do", "", text, count, strand))

    def line(self, kind: str, label: str, text: str, count: str, strand: str | None) -> Line:
        shown, fresh = "", False
        colours: tuple[str, ...] = ()
        if strand is not None and self.many:
            key = strand.casefold()
            fresh = self.strand is not None and self.strand != key
            shown, self.strand = strand, key
            found = self.pattern.strand(key)
            shade = self.pattern.shade(found.feeds[0].shade.key) if found and found.feeds else None
            colours = shade.colours[:1] if shade is not None else ()
        return Line(kind, label, text, count, shown, fresh, colours)

    def spelled(self, row: Row) -> str | None:
        """The strand of a row as its own line declares it."""
        if row.strand is None:
            return None
        found = self.pattern.strand(row.strand.key)
        return found.name.text if found is not None else row.strand.text

    # --- between rows -------------------------------------------------------------

    def _strand_text(self, item: CastOn | BindOff | PickUp) -> str | None:
        if item.strand is None:
            return None
        found = self.pattern.strand(item.strand.key)
        return found.name.text if found is not None else item.strand.text

    def _said(self, strand: str | None) -> str | None:
        """The strand, where it has to be said: where the pattern has more than one."""
        return strand if self.many else None

    def _between(self, item: Item, events: list[Event]) -> None:
        """A line that works no row: stitches that come and go, and how the piece goes on."""
        voice = self.voice
        if isinstance(item, JoinRound):
            self._do(voice.join_round())
        elif isinstance(item, LeaveRound):
            self._do(voice.leave_round())
        elif isinstance(item, BeginRound):
            self._do(voice.begin_round([item.count.at(size) for size in self.sizes]))
        elif isinstance(item, CastOn) and not item.more:
            self._cast_on(item, [e.count for e in events if isinstance(e, Cast)])
        elif isinstance(item, BindOff | LeaveLive):
            self._finish(item, [e.count for e in events if isinstance(e, Bound)])
        elif isinstance(item, Hold | Take | PickUp | CastOn):
            self._move(item, [e for e in events if isinstance(e, Moved)])

    def _cast_on(self, item: CastOn, counts: list[int]) -> None:
        strand = self._strand_text(item)
        method = item.method.text if item.method else None
        text = self.voice.cast_on(counts, self._said(strand), method)
        if self.piece.in_round:
            text += f"{self.voice.then}{self.voice.join_round()}"
        self._do(text, "", strand)

    def _finish(self, item: BindOff | LeaveLive, counts: list[int]) -> None:
        if isinstance(item, LeaveLive):
            self._do(self.voice.leave_live(counts, item.text.text if item.text else None))
            return
        strand = self._strand_text(item)
        method = item.method.text if item.method else None
        self._do(self.voice.bind_off(counts, self._said(strand), method), "", strand)

    def _move(self, item: Hold | Take | PickUp | CastOn, moved: list[Moved]) -> None:
        if not moved:
            return
        first = [abs(e.counts[0]) for e in moved]
        strand = None if isinstance(item, Hold | Take) else self._strand_text(item)
        if isinstance(item, Hold):
            text = self.voice.put_aside(first, item.name.text, item.count is None)
        elif isinstance(item, Take):
            counts = [[e.counts[at] for e in moved] for at in range(len(item.names))]
            text = self.voice.bring([name.text for name in item.names], counts, item.joined)
        elif isinstance(item, PickUp):
            edge = item.edge.text if item.edge is not None else ""
            text = self.voice.pick_up(first, self._said(strand), edge)
        else:
            method = item.method.text if item.method else None
            text = self.voice.cast_on_more(first, self._said(strand), method)
        several = isinstance(item, Take) and len(item.names) > 1
        changed = several or any(e.total not in (0, e.count) for e in moved)
        self._do(text, self.count([e.total for e in moved], changed), strand)

    # --- rows of the piece -------------------------------------------------------------

    def _piece_rows(self, index: int, events: list[dict[int, list[Event]]]) -> int:
        """One or more row lines that say the same, joined; gives the index behind them."""
        items = self.piece.items
        first = items[index]
        assert isinstance(first, PieceRow)
        groups = [[e for e in by.get(index, []) if isinstance(e, Worked)] for by in events]
        end = index + 1
        while end < len(items):
            item = items[end]
            if not isinstance(item, PieceRow) or not _alike(first.row, item.row):
                break
            more = [[e for e in by.get(end, []) if isinstance(e, Worked)] for by in events]
            if not _steady(groups) or not _steady(more):
                break
            groups = [a + b for a, b in zip(groups, more, strict=True)]
            end += 1
        rows = [sum(e.rows for e in group) for group in groups]
        if any(rows):
            self._one_body(first.row, groups, rows)
        return end

    def _one_body(
        self, row: Row, groups: list[list[Worked]], rows: list[int], motif: Motif | None = None
    ) -> None:
        """A body worked in one run of rows."""
        if self.follower is not None:
            self.follower.printed(row, self.place, motif)
            self.follower.round = next(g[0].round for g in groups if g)
            self.follower.row(row, rows[0])
        present = [g for g in groups if g]
        starts = {g[0].first_row for g in present}
        fills = FillTimes(
            tuple(g[0].chunk.entries[0].fills if g else () for g in groups), tuple(rows)
        )
        text = self.sentence(row, fills)
        count = self._count_after(groups)
        if len(starts) == 1 and len(set(rows)) == 1:
            label = self._label(starts.pop(), rows[0], present[0][0])
        else:
            event = present[0][0]
            label = self.voice.next_label(rows, event.is_round(0), event.is_rs(0))
        self.lines.append(self.line("row", label, text, count, self.spelled(row)))

    def sentence(self, row: Row, fills: FillTimes) -> str:
        body = self.phraser.body(row.body, fills)
        return self.voice.row(body, self._said(self.spelled(row)))

    def _label(self, first: int, rows: int, event: Worked, at: int = 0) -> str:
        return self.voice.label(first, first + rows - 1, event.is_round(at), event.is_rs(at))

    def _count_after(self, groups: list[list[Worked]]) -> str:
        ends: list[int | None] = []
        changed = False
        for group in groups:
            if not group:
                ends.append(None)  # a size that does not work the row
                continue
            start = group[0].chunk.entries[0].start.fixed
            ends.append(_end_count(group))
            changed = changed or ends[-1] != start
        return self.count(ends, changed)

    def count(self, ends: Sequence[int | None], changed: bool) -> str:
        if not ends or not (changed or self.all_counts):
            return ""
        return self.voice.count(ends)

    # --- motifs -------------------------------------------------------------

    def _work(self, item: Work, motif: Motif, here: list[list[Event]]) -> None:
        groups = [[e for e in events if isinstance(e, Worked)] for events in here]
        if not any(groups):
            return
        if self.follower is not None:
            self.follower.round = next(group[0].round for group in groups if group)
        length = len(motif.rows)
        totals = [sum(e.rows for e in group) for group in groups]
        if length == 1:
            rows = totals
            self._one_body(motif.rows[0], groups, rows, motif)
            return
        reps = [total // length for total in totals]
        parts = [total % length for total in totals]
        shown = length if max(reps) >= 1 else max(parts)
        known = None if self.voice.written_out else self.printed.get(id(motif))
        if known is not None and known.rows >= shown:
            self._again(known, motif, reps, parts, groups, item)
            return
        starts = {group[0].first_row for group in groups if group}
        running = len(starts) == 1
        first = starts.pop() if running else 1
        event = next(group[0] for group in groups if group)
        whole = event.is_round(0)
        if not running:
            self.lines.append(Line("do", "", self.voice.numbered_anew(motif.name.text, whole), ""))
        else:
            self.printed[id(motif)] = Printed(first, whole, shown)
        before = len(self.lines)
        self._motif_rows(motif, first, shown, groups, event)
        written = len(self.lines) - before
        if self.follower is not None:
            self.follower.first(motif.rows[:shown])
        if not running:
            self.printed[id(motif)] = Printed(1, whole, shown)
        if max(reps) >= 1:
            more = [max(r - 1, 0) for r in reps]
            self._more(Printed(first, whole, shown), motif, more, parts, groups, item, written)

    def _motif_rows(
        self, motif: Motif, first: int, shown: int, groups: list[list[Worked]], event: Worked
    ) -> None:
        """The first `shown` rows of a motif, written once; equal rows in a run joined."""
        present = [group for group in groups if group]
        entries = [group[0].chunk.entries for group in present]
        every_said: set[str] = set()
        at = 0
        while at < shown:
            row = motif.rows[at]
            cells = [e[at] for e in entries if at < len(e)]
            run = 1
            while (
                at + run < shown
                and _alike(row, motif.rows[at + run])
                and row.every is None
                and all(_still(e[at + i]) for e in entries for i in range(run + 1))
            ):
                run += 1
            rs = event.is_rs(at)
            key = f"{row.every}-{id(row.body)}"
            if key in every_said:
                at += 1
                continue
            joined = row.every is not None and not self.voice.written_out
            if joined and all(_still(c) for c in cells):
                following = [
                    r.number
                    for r in motif.rows[at + 1 : shown]
                    if r.every == row.every and r.body is row.body
                ]
                if following:
                    every_said.add(key)
                    self._printed(motif, [at, *(n - 1 for n in following)])
                    self._every(row, first, first + following[-1] - 1, at, cells, event, rs, groups)
                    at += 1
                    continue
            fills = self.fills_of(cells, groups)
            text = self.sentence(row, fills)
            ends = [c.end.fixed for c in cells]
            changed = any(c.end.fixed != c.start.fixed for c in cells)
            label = self._label(first + at, run, event, at)
            self._printed(motif, range(at, at + run))
            self.lines.append(
                self.line("row", label, text, self.count(ends, changed), self.spelled(row))
            )
            at += run

    def _printed(self, motif: Motif, indexes: Iterable[int]) -> None:
        """Rows of a motif that the next line says."""
        if self.follower is not None:
            for index in indexes:
                self.follower.printed(motif.rows[index], self.place, motif, index)

    def _every(
        self,
        row: Row,
        first: int,
        last: int,
        at: int,
        cells: list[Entry],
        event: Worked,
        rs: bool,
        groups: list[list[Worked]],
    ) -> None:
        label = self.voice.every_label(first + at, last, event.is_round(at), rs, row.every == "all")
        text = self.sentence(row, self.fills_of(cells, groups))
        ends = [c.end.fixed for c in cells]
        shown = self.count(ends, False)
        self.lines.append(self.line("row", label, text, shown, self.spelled(row)))

    def fills_of(self, cells: list[Entry], groups: list[list[Worked]]) -> FillTimes:
        repeats = tuple(
            sum(e.chunk.reps for e in group) if group else 0 for group in groups if group
        )
        # A motif that multiplies its stitches is walked in several chunks, each with its counts.
        if any(len(group) > 1 for group in groups):
            cells_fills = tuple(
                tuple(type(f)(f.fixed, f.unit or 1) for f in c.fills) for c in cells
            )
        else:
            cells_fills = tuple(c.fills for c in cells)
        return FillTimes(cells_fills, repeats)

    def _more(
        self,
        known: Printed,
        motif: Motif,
        more: list[int],
        parts: list[int],
        groups: list[list[Worked]],
        item: Work,
        written: int,
    ) -> None:
        if any(more):
            tail = self._measured(groups, item)
            last = known.first + len(motif.rows) - 1
            text = self.voice.repeat(known.in_round, known.first, last, more, tail)
            self._repeat_line(text, motif, more, groups, 1, written)
        self._part(known, motif, parts, True, groups, more[0] + 1)

    def _part(
        self,
        known: Printed,
        motif: Motif,
        parts: list[int],
        more: bool,
        groups: list[list[Worked]],
        before: int,
    ) -> None:
        if not any(parts):
            return
        text = self.voice.some_rows(known.in_round, known.first, parts, more)
        ends = [_end_count(group) for group in groups if group]
        starts = [group[0].chunk.entries[0].start.fixed for group in groups if group]
        if self.follower is not None:
            self.follower.again(motif.rows[: parts[0]], 1, self.place, before)
        self.lines.append(Line("repeat", "", text, self.count(ends, ends != starts)))

    def _again(
        self,
        known: Printed,
        motif: Motif,
        reps: list[int],
        parts: list[int],
        groups: list[list[Worked]],
        item: Work,
    ) -> None:
        """A motif that this piece has written out before."""
        if any(reps):
            tail = self._measured(groups, item)
            last = known.first + len(motif.rows) - 1
            text = self.voice.again(known.in_round, known.first, last, reps, tail)
            self._repeat_line(text, motif, reps, groups, 0)
        self._part(known, motif, parts, any(reps), groups, reps[0])

    def _measured(self, groups: list[list[Worked]], item: Work) -> str:
        if not isinstance(item.amount, ToLength):
            return ""
        return self.voice.measured(self._height(groups))

    def _repeat_line(
        self,
        text: str,
        motif: Motif,
        tally: list[int],
        groups: list[list[Worked]],
        before: int,
        written: int = 0,
    ) -> None:
        if self.follower is not None:
            self.follower.again(motif.rows, tally[0], self.place, before)
        ends, starts = [], []
        for group in groups:
            if group:
                starts.append(group[0].chunk.entries[0].start.fixed)
                ends.append(_end_count(group))
        count = self.count(ends, ends != starts)
        boxes = tuple(tally) if len(set(tally)) > 1 else (tally[0],)
        self.lines.append(Line("repeat", "", text, count, tally=boxes, repeats=written))

    def _height(self, groups: list[list[Worked]]) -> str:
        heights = []
        for walk, group in zip(self.walks, groups, strict=True):
            if group and walk.height is not None and walk.rows:
                done = group[-1].first_row + group[-1].rows - 1
                heights.append(walk.height_after(done))
        cms = [cm(h).removesuffix(" cm") for h in heights]
        ins = [inches(h).removesuffix(" in") for h in heights]
        words = self.voice.catalogue
        apart = words.between_sizes
        a, b = f"{_sized_texts(cms, apart)} cm", f"{_sized_texts(ins, apart)} in"
        return words.figures(f"{b} / {a}" if self.inches_first else f"{a} / {b}")


def _sized_texts(values: list[str], apart: str) -> str:
    if len(set(values)) == 1:
        return values[0]
    return f"{values[0]} ({apart.join(values[1:])})"


def _by_item(walk: Walk) -> dict[int, list[Event]]:
    found: dict[int, list[Event]] = {}
    for event in walk.events:
        found.setdefault(event.index, []).append(event)
    return found


def _still(entry: Entry) -> bool:
    """The row leaves as many stitches as it found, in every repeat."""
    return entry.start == entry.end


def _steady(groups: list[list[Worked]]) -> bool:
    return all(_still(e.chunk.entries[0]) for group in groups for e in group)


def _alike(one: Row, other: Row) -> bool:
    mine = one.strand.key if one.strand else None
    theirs = other.strand.key if other.strand else None
    return mine == theirs and same_body(one.body, other.body)


def _end_count(group: list[Worked]) -> int:
    return total(group[-1].chunk.after).fixed
