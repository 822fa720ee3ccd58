"""The instructions of a piece: its rows in order, repeats by their row numbers."""

from __future__ import annotations

from loopwright.count.walk import Event, Walk, Worked
from loopwright.edition.between_lines import between
from loopwright.edition.document import Line, Section
from loopwright.edition.line_writer import alike, still
from loopwright.edition.motif_lines import MotifWriter
from loopwright.edition.spreading import spread_lines, spread_places
from loopwright.model.pattern import PieceRow, Remark, Spread, Work


class PieceWriter(MotifWriter):
    """Writes one piece for some sizes, item by item."""

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
                self.work_motif(item, item.motif, here)
            elif isinstance(item, Spread):
                self._spread(item, here)
            elif isinstance(item, Remark):
                self._remark(item)
            else:
                between(self, item, [event for events in here for event in events])
            index += 1
        for place in range(noted, index):
            self.lines += [Line("note", "", text, "") for text in self.notes.get(place, ())]
        self.close()
        return tuple(self.sections)

    def _remark(self, item: Remark) -> None:
        if item.kind == "note":
            self.lines.append(Line("note", "", item.text.text, ""))
            return
        self.close()
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

    def _piece_rows(self, index: int, events: list[dict[int, list[Event]]]) -> int:
        """One or more row lines that say the same, joined; gives the index behind them."""
        items = self.piece.items
        first = items[index]
        assert isinstance(first, PieceRow)
        groups = [[e for e in by.get(index, []) if isinstance(e, Worked)] for by in events]
        end = index + 1
        while end < len(items):
            item = items[end]
            if not isinstance(item, PieceRow) or not alike(first.row, item.row):
                break
            more = [[e for e in by.get(end, []) if isinstance(e, Worked)] for by in events]
            if not _steady(groups) or not _steady(more):
                break
            groups = [a + b for a, b in zip(groups, more, strict=True)]
            end += 1
        rows = [sum(e.rows for e in group) for group in groups]
        if any(rows):
            self.one_body(first.row, groups, rows)
        return end


def _by_item(walk: Walk) -> dict[int, list[Event]]:
    found: dict[int, list[Event]] = {}
    for event in walk.events:
        found.setdefault(event.index, []).append(event)
    return found


def _steady(groups: list[list[Worked]]) -> bool:
    return all(still(e.chunk.entries[0]) for group in groups for e in group)
