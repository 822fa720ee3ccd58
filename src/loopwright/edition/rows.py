"""The instructions of a piece: its rows in order, repeats by their row numbers."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from loopwright.count.repeat import Entry
from loopwright.count.walk import Bound, Cast, Event, Walk, Worked
from loopwright.edition.document import Line, Section
from loopwright.edition.numbers import count_text, many_times, more_times, sized
from loopwright.edition.phrases import FillTimes, Phraser, Used
from loopwright.fit.units import cm, inches
from loopwright.model.body import same_body
from loopwright.model.pattern import (
    BindOff,
    CastOn,
    JoinRound,
    Motif,
    Pattern,
    Piece,
    PieceRow,
    Remark,
    Row,
    Work,
)
from loopwright.notation.tree import ToLength


@dataclass(frozen=True, slots=True)
class Printed:
    """A motif already written out in this piece: the number of its first row, as printed."""

    first: int
    word: str


class PieceWriter:
    """Writes one piece for some sizes (given as places in `sizes`).

    `notes` are sentences to print behind an item of the piece, by its place.
    """

    def __init__(
        self,
        pattern: Pattern,
        piece: Piece,
        walks: tuple[Walk, ...],
        used: Used,
        counts: str,
        inches_first: bool,
        notes: Mapping[int, tuple[str, ...]] | None = None,
    ) -> None:
        self.notes = notes or {}
        self.pattern = pattern
        self.piece = piece
        self.walks = walks
        self.sizes = tuple(walk.size for walk in walks)
        self.used = used
        self.all_counts = counts == "all"
        self.inches_first = inches_first
        self.phraser = Phraser(self.sizes, used)
        self.printed: dict[int, Printed] = {}
        self.sections: list[Section] = []
        self.lines: list[Line] = []
        self.heading = (self.title(), 2)
        self.strand: str | None = None
        self.many = len(pattern.strands) > 1

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
            if isinstance(item, CastOn):
                self._cast_on(item, here)
            elif isinstance(item, BindOff):
                self._bind_off(item, here)
            elif isinstance(item, Work) and item.motif is not None:
                self._work(item, item.motif, here)
            elif isinstance(item, JoinRound):
                self._do("Join to work in the round, taking care not to twist the stitches.")
            elif isinstance(item, Remark):
                self._remark(item)
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

    def _do(self, text: str, count: str = "", strand: str | None = None) -> None:
        self.lines.append(self._line("do", "", text, count, strand))

    def _line(self, kind: str, label: str, text: str, count: str, strand: str | None) -> Line:
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

    def _spelled(self, row: Row) -> str | None:
        """The strand of a row as its own line declares it."""
        if row.strand is None:
            return None
        found = self.pattern.strand(row.strand.key)
        return found.name.text if found is not None else row.strand.text

    # --- casting on and binding off -----------------------------------------------------------

    def _with(self, name: str | None) -> str:
        return f"With {name}, " if name and self.many else ""

    def _strand_text(self, item: CastOn | BindOff) -> str | None:
        if item.strand is None:
            return None
        found = self.pattern.strand(item.strand.key)
        return found.name.text if found is not None else item.strand.text

    def _cast_on(self, item: CastOn, here: list[list[Event]]) -> None:
        counts = [e.count for events in here for e in events if isinstance(e, Cast)]
        strand = self._strand_text(item)
        method = _method(item.method.text if item.method else None, "cast-on")
        self.used.term("sts")
        text = f"{self._with(strand)}cast on {sized(counts)} sts{method}."
        text = text[0].upper() + text[1:]
        if self.piece.in_round:
            text += " Join to work in the round, taking care not to twist the stitches."
        self._do(text, "", strand)

    def _bind_off(self, item: BindOff, here: list[list[Event]]) -> None:
        counts = [e.count for events in here for e in events if isinstance(e, Bound)]
        strand = self._strand_text(item)
        name = item.method.text if item.method else None
        self.used.term("sts")
        if name is not None and name.casefold() == "gathering":
            text = (
                f"{self._with(strand)}cut the yarn, thread it through the remaining "
                f"{sized(counts)} sts, draw them together and fasten off."
            )
        else:
            text = f"{self._with(strand)}bind off all sts{_method(name, 'bind-off')}."
        self._do(text[0].upper() + text[1:], "", strand)

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

    def _one_body(self, row: Row, groups: list[list[Worked]], rows: list[int]) -> None:
        """A body worked in one run of rows."""
        present = [g for g in groups if g]
        starts = {g[0].first_row for g in present}
        fills = FillTimes(
            tuple(g[0].chunk.entries[0].fills if g else () for g in groups), tuple(rows)
        )
        text = self._sentence(row, fills)
        count = self._count_after(groups, row)
        if len(starts) == 1 and len(set(rows)) == 1:
            label = self._label(starts.pop(), rows[0], present[0][0])
        else:
            label = self._next_label(rows, present[0][0])
        self.lines.append(self._line("row", label, text, count, self._spelled(row)))

    def _sentence(self, row: Row, fills: FillTimes) -> str:
        body = self.phraser.body(row.body, fills)
        strand = self._spelled(row)
        text = f"{self._with(strand)}{body}."
        return text[0].upper() + text[1:]

    def _word(self, event: Worked, plural: bool) -> str:
        if event.round:
            self.used.term("rnds" if plural else "rnd")
            return "Rnds" if plural else "Rnd"
        return "Rows" if plural else "Row"

    def _label(self, first: int, rows: int, event: Worked, rs: bool | None = None) -> str:
        if rows > 1:
            return f"{self._word(event, True)} {first}–{first + rows - 1}:"
        if event.round:
            return f"{self._word(event, False)} {first}:"
        side = "RS" if (event.rs if rs is None else rs) else "WS"
        self.used.term(side)
        return f"Row {first} ({side}):"

    def _next_label(self, rows: list[int], event: Worked) -> str:
        if len(set(rows)) == 1 and rows[0] == 1:
            if event.round:
                self.used.term("rnd")
                return "Next rnd:"
            sides = {g.rs for g in [event]}
            side = "RS" if sides == {True} else "WS"
            self.used.term(side)
            return f"Next row ({side}):"
        word = "rows"
        if event.round:
            self.used.term("rnds")
            word = "rnds"
        return f"Next {sized(rows)} {word}:"

    def _count_after(self, groups: list[list[Worked]], row: Row) -> str:
        ends, changed = [], False
        for group in groups:
            if not group:
                continue
            start = group[0].chunk.entries[0].start.fixed
            ends.append(_end_count(group))
            changed = changed or ends[-1] != start
        return self._count(ends, changed)

    def _count(self, ends: list[int], changed: bool) -> str:
        if not ends or not (changed or self.all_counts):
            return ""
        self.used.term("st" if set(ends) == {1} else "sts")
        return count_text(ends)

    # --- motifs -------------------------------------------------------------

    def _work(self, item: Work, motif: Motif, here: list[list[Event]]) -> None:
        groups = [[e for e in events if isinstance(e, Worked)] for events in here]
        if not any(groups):
            return
        length = len(motif.rows)
        totals = [sum(e.rows for e in group) for group in groups]
        if length == 1:
            rows = totals
            self._one_body(motif.rows[0], groups, rows)
            return
        reps = [total // length for total in totals]
        parts = [total % length for total in totals]
        known = self.printed.get(id(motif))
        if known is not None:
            self._again(known, length, reps, parts, groups, item)
            return
        starts = {group[0].first_row for group in groups if group}
        running = len(starts) == 1
        first = starts.pop() if running else 1
        event = next(group[0] for group in groups if group)
        word = self._word(event, True)
        shown = length if max(reps) >= 1 else max(parts)
        if not running:
            rounds = "rounds" if event.round else "rows"
            self.lines.append(
                Line(
                    "do",
                    "",
                    f"Now work the {motif.name.text} repeat; its {rounds} are numbered from 1.",
                    "",
                )
            )
        else:
            self.printed[id(motif)] = Printed(first, word)
        self._motif_rows(motif, first, shown, groups, event)
        if not running:
            self.printed[id(motif)] = Printed(1, word)
        if max(reps) >= 1:
            self._more(first, length, [max(r - 1, 0) for r in reps], parts, groups, item, word)

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
            rs = event.round or (event.rs == (at % 2 == 0))
            key = f"{row.every}-{id(row.body)}"
            if row.every is not None and key in every_said:
                at += 1
                continue
            if row.every is not None and all(_still(c) for c in cells):
                following = [
                    r.number
                    for r in motif.rows[at + 1 : shown]
                    if r.every == row.every and r.body is row.body
                ]
                if following:
                    every_said.add(key)
                    self._every(row, first, first + following[-1] - 1, at, cells, event, rs, groups)
                    at += 1
                    continue
            fills = self._fills(cells, groups)
            text = self._sentence(row, fills)
            ends = [c.end.fixed for c in cells]
            changed = any(c.end.fixed != c.start.fixed for c in cells)
            label = self._label(first + at, run, event, rs)
            self.lines.append(
                self._line("row", label, text, self._count(ends, changed), self._spelled(row))
            )
            at += run

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
        self.used.term("foll")
        number = first + at
        if event.round:
            self.used.term("rnd")
            label = f"Rnd {number} and every foll alternate rnd to Rnd {last}:"
            if row.every == "all":
                label = f"Rnd {number} and every rnd not given, to Rnd {last}:"
        else:
            side = "RS" if rs else "WS"
            self.used.term(side)
            label = f"Row {number} and every foll {side} row to Row {last}:"
        text = self._sentence(row, self._fills(cells, groups))
        ends = [c.end.fixed for c in cells]
        shown = count_text(ends) if self.all_counts else ""
        self.lines.append(self._line("row", label, text, shown, self._spelled(row)))

    def _fills(self, cells: list[Entry], groups: list[list[Worked]]) -> FillTimes:
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
        first: int,
        length: int,
        more: list[int],
        parts: list[int],
        groups: list[list[Worked]],
        item: Work,
        word: str,
    ) -> None:
        span = f"{word} {first}–{first + length - 1}"
        if any(more):
            self.used.term("rep")
            text = f"Rep {span}{more_times(more)}"
            self._repeat_line(text, more, groups, item)
        self._part(first, parts, "once more", word, groups)

    def _part(
        self, first: int, parts: list[int], how: str, word: str, groups: list[list[Worked]]
    ) -> None:
        if not any(parts):
            return
        if len(set(parts)) == 1:
            rows = parts[0]
            one = word.removesuffix("s")
            span = f"{word} {first}–{first + rows - 1}" if rows > 1 else f"{one} {first}"
            text = f"Work {span} {how}."
        else:
            text = (
                f"Work the first {sized(parts)} {word.lower()} of the repeat {how}, beginning "
                f"with {word.removesuffix('s')} {first}."
            )
        ends = [_end_count(group) for group in groups if group]
        starts = [group[0].chunk.entries[0].start.fixed for group in groups if group]
        self.lines.append(Line("repeat", "", text, self._count(ends, ends != starts)))

    def _again(
        self,
        known: Printed,
        length: int,
        reps: list[int],
        parts: list[int],
        groups: list[list[Worked]],
        item: Work,
    ) -> None:
        """A motif that this piece has written out before."""
        if any(reps):
            span = f"{known.word} {known.first}–{known.first + length - 1}"
            self._repeat_line(f"Work {span}{many_times(reps)}", reps, groups, item)
        self._part(known.first, parts, "once more" if any(reps) else "once", known.word, groups)

    def _repeat_line(
        self, text: str, tally: list[int], groups: list[list[Worked]], item: Work
    ) -> None:
        if isinstance(item.amount, ToLength):
            text += f"; the piece now measures about {self._height(groups)}"
        ends, starts = [], []
        for group in groups:
            if group:
                starts.append(group[0].chunk.entries[0].start.fixed)
                ends.append(_end_count(group))
        count = self._count(ends, ends != starts)
        boxes = tuple(tally) if len(set(tally)) > 1 else (tally[0],)
        self.lines.append(Line("repeat", "", f"{text}.", count, tally=boxes))

    def _height(self, groups: list[list[Worked]]) -> str:
        heights = []
        for walk, group in zip(self.walks, groups, strict=True):
            if group and walk.height is not None and walk.rows:
                done = group[-1].first_row + group[-1].rows - 1
                heights.append(walk.height_after(done))
        cms = [cm(h).removesuffix(" cm") for h in heights]
        ins = [inches(h).removesuffix(" in") for h in heights]
        a, b = f"{_sized_texts(cms)} cm", f"{_sized_texts(ins)} in"
        return f"{b} / {a}" if self.inches_first else f"{a} / {b}"


def _sized_texts(values: list[str]) -> str:
    if len(set(values)) == 1:
        return values[0]
    return f"{values[0]} ({', '.join(values[1:])})"


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
    return sum(segment.fixed for segment in group[-1].chunk.after)


def _method(name: str | None, kind: str) -> str:
    """`` by the long-tail method``; a name that already says what it is stays as it is."""
    if not name:
        return ""
    if name.casefold().split()[-1] in ("method", kind):
        return f" by the {name}"
    return f" by the {name} method"
