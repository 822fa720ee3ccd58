"""Lines of a piece as they are set down: their label, sentence, count and strand."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from loopwright.count.live import total
from loopwright.count.repeat import Entry
from loopwright.count.walk import Walk, Worked
from loopwright.edition.document import Line, Section
from loopwright.edition.follow import Follower, Place
from loopwright.edition.phrases import FillTimes, Phraser
from loopwright.edition.voice import Voice
from loopwright.model.body import same_body
from loopwright.model.pattern import BindOff, CastOn, Motif, Pattern, PickUp, Piece, Row
from loopwright.notation.names import as_heading
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class Printed:
    """A motif written out in this piece: its first row's number as printed, and how many rows."""

    first: int
    in_round: bool
    rows: int


class LineWriter:
    """What every line of a piece is written with, and the lines and sections so far.

    For some sizes (given as places in `sizes`). `notes` are sentences to print behind an item of
    the piece, by its place.
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
        return as_heading(self.piece.name.text)

    def close(self) -> None:
        if self.lines or not self.sections:
            heading, level = self.heading
            self.sections.append(Section(heading, level, tuple(self.lines)))
        self.lines = []

    def do(self, text: str, count: str = "", strand: str | None = None) -> None:
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

    def strand_text(self, item: CastOn | BindOff | PickUp) -> str | None:
        if item.strand is None:
            return None
        found = self.pattern.strand(item.strand.key)
        return found.name.text if found is not None else item.strand.text

    def said(self, strand: str | None) -> str | None:
        """The strand, where it has to be said: where the pattern has more than one."""
        return strand if self.many else None

    def one_body(
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
        count = self.count_after(groups)
        if len(starts) == 1 and len(set(rows)) == 1:
            label = self.label(starts.pop(), rows[0], present[0][0])
        else:
            event = present[0][0]
            label = self.voice.next_label(rows, event.is_round(0), event.is_rs(0))
        self.lines.append(self.line("row", label, text, count, self.spelled(row)))

    def sentence(self, row: Row, fills: FillTimes) -> str:
        body = self.phraser.body(row.body, fills)
        return self.voice.row(body, self.said(self.spelled(row)))

    def label(self, first: int, rows: int, event: Worked, at: int = 0) -> str:
        return self.voice.label(first, first + rows - 1, event.is_round(at), event.is_rs(at))

    def count_after(self, groups: list[list[Worked]]) -> str:
        ends: list[int | None] = []
        changed = False
        for group in groups:
            if not group:
                ends.append(None)  # a size that does not work the row
                continue
            start = group[0].chunk.entries[0].start.fixed
            ends.append(end_count(group))
            changed = changed or ends[-1] != start
        return self.count(ends, changed)

    def count(self, ends: Sequence[int | None], changed: bool) -> str:
        if not ends or not (changed or self.all_counts):
            return ""
        return self.voice.count(ends)


def still(entry: Entry) -> bool:
    """The row leaves as many stitches as it found, in every repeat."""
    return entry.start == entry.end


def alike(one: Row, other: Row) -> bool:
    mine = one.strand.key if one.strand else None
    theirs = other.strand.key if other.strand else None
    return mine == theirs and same_body(one.body, other.body)


def end_count(group: list[Worked]) -> int:
    return total(group[-1].chunk.after).fixed
