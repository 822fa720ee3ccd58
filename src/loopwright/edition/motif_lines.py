"""The rows of a motif in a piece: written out once, then repeated by their numbers."""

from __future__ import annotations

from collections.abc import Iterable

from loopwright.count.repeat import Entry
from loopwright.count.walk import Event, Worked
from loopwright.edition.document import Line
from loopwright.edition.line_writer import LineWriter, Printed, alike, end_count, still
from loopwright.edition.phrases import FillTimes
from loopwright.fit.units import cm, inches
from loopwright.model.pattern import Motif, Row, Work
from loopwright.notation.tree import ToLength


class MotifWriter(LineWriter):
    """Writes the lines that work motifs."""

    def work_motif(self, item: Work, motif: Motif, here: list[list[Event]]) -> None:
        groups = [[e for e in events if isinstance(e, Worked)] for events in here]
        if not any(groups):
            return
        if self.follower is not None:
            self.follower.round = next(group[0].round for group in groups if group)
        length = len(motif.rows)
        totals = [sum(e.rows for e in group) for group in groups]
        if length == 1:
            rows = totals
            self.one_body(motif.rows[0], groups, rows, motif)
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
                and alike(row, motif.rows[at + run])
                and row.every is None
                and all(still(e[at + i]) for e in entries for i in range(run + 1))
            ):
                run += 1
            rs = event.is_rs(at)
            key = f"{row.every}-{id(row.body)}"
            if key in every_said:
                at += 1
                continue
            joined = row.every is not None and not self.voice.written_out
            if joined and all(still(c) for c in cells):
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
            label = self.label(first + at, run, event, at)
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
        ends = [end_count(group) for group in groups if group]
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
                ends.append(end_count(group))
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
