"""From the walks of a size to its ledger: edges, rows and ends in the order of the work."""

from __future__ import annotations

from collections.abc import Sequence

from loopwright.count.measure import width_gauge, width_of
from loopwright.count.repeat import Chunk
from loopwright.count.walk import Bound, Cast, Moved, Walk, Worked
from loopwright.facts.amounts import EdgeYarn, edge_yarn
from loopwright.facts.loops import rule_of_thumb
from loopwright.model.pattern import CastOn, LeaveLive, Pattern, PickUp, Piece, Yarn
from loopwright.notation.tree import Name
from loopwright.record import replace
from loopwright.yarn.feed import yarn_of_shade
from loopwright.yarn.ledger import (
    BIND_OFF,
    CAST_ON,
    END,
    PICK_UP,
    Ledger,
    Lump,
    Part,
    Rows,
    RowYarn,
)
from loopwright.yarn.loop import Loop, Loops


def end_metres() -> float:
    """The end left to weave in, in metres: the longer one of common practice."""
    return rule_of_thumb("woven-in tail").high / 1000.0


def yarn_of_strand(pattern: Pattern, key: str | None) -> Yarn | None:
    """The yarn of a strand's first feed; of a pattern without strands, its first yarn."""
    if key is None:
        return pattern.yarns[0] if pattern.yarns else None
    strand = pattern.strand(key)
    if strand is None or not strand.feeds:
        return None
    return yarn_of_shade(pattern, strand.feeds[0].shade.key)


def ledger_of(pattern: Pattern, walks: Sequence[Walk], loops: Loops, size: int) -> Ledger | None:
    """The ledger of one size; None where no swatch and no gauge tells a loop's length.

    `walks` are those of this size, in the order of the pieces. Events of a kind that is not
    known here eat nothing.
    """
    book = _Book(pattern, loops, size)
    for walk in walks:
        if walk.size == size and not book.piece(walk):
            return None
    return Ledger(size, pattern.pieces, book.parts, book.spread)


class _Book:
    def __init__(self, pattern: Pattern, loops: Loops, size: int) -> None:
        self.pattern = pattern
        self.loops = loops
        self.size = size
        self.parts: list[Part] = []
        self.known: dict[tuple[str | None, int], Loop | None] = {}
        self.spread: dict[str | None, float] = {}
        self.strand: str | None = None
        self.mine: list[Part] = []

    def piece(self, walk: Walk) -> bool:
        """Add a piece; False where a loop's length is not known."""
        place = self.pattern.pieces.index(walk.piece)
        strands = self.pattern.strands
        # Where a piece begins without naming a strand, it is the first that it does name.
        self.strand = strands[0].name.key if len(strands) == 1 else _first_named(walk)
        self.mine = []
        row = 0
        for event in walk.events:
            if isinstance(event, Cast):
                if event.item.strand is not None:
                    self.strand = event.item.strand.key
                method = event.item.method.text if event.item.method else None
                done = self._edge(
                    place, row, walk.piece, event.count, edge_yarn(CAST_ON, method), CAST_ON
                )
            elif isinstance(event, Bound):
                if isinstance(event.item, LeaveLive):
                    continue
                if event.item.strand is not None:
                    self.strand = event.item.strand.key
                method = event.item.method.text if event.item.method else None
                done = self._edge(
                    place, row, walk.piece, event.count, edge_yarn(BIND_OFF, method), BIND_OFF
                )
            elif isinstance(event, Moved):
                done = self._moved(place, row, walk.piece, event)
            elif isinstance(event, Worked):
                done = self._rows(place, event)
                row = event.first_row + event.rows - 1
            else:
                done = True
            if not done:
                return False
        self._ends(place)
        return True

    def _loop(self, strand: str | None, event: Worked | None) -> Loop | None:
        motif = event.motif if event is not None else None
        key = (strand, id(motif))
        if key not in self.known:
            yarn = yarn_of_strand(self.pattern, strand)
            self.known[key] = self.loops.of(yarn, motif, self.size)
        found = self.known[key]
        if found is not None:
            self.spread[strand] = max(self.spread.get(strand, 0.0), found.spread)
        return found

    def _edge(
        self, place: int, row: int, piece: Piece, count: int, edge: EdgeYarn, kind: str
    ) -> bool:
        loop = self._loop(self.strand, None)
        if loop is None:
            return False
        metres = (edge.loops + edge.tail_loops) * count * loop.metres
        gauge = width_gauge(self.pattern, piece)
        if edge.tail_widths:
            if gauge is not None and gauge.over.unit is not None and gauge.stitches > 0:
                metres += edge.tail_widths * width_of(gauge, count) / 1000.0
            else:
                # A weighed swatch alone: the loop is about four stitch widths long.
                metres += edge.tail_widths * count * loop.metres / rule_of_thumb("row yarn").high
        self.mine.append(Lump(kind, place, row, self.strand, metres, count))
        return True

    def _moved(self, place: int, row: int, piece: Piece, event: Moved) -> bool:
        """Stitches picked up (a loop each) or cast on between two rows; held ones eat nothing."""
        item = event.item
        if not isinstance(item, PickUp | CastOn):
            return True
        if item.strand is not None:
            self.strand = item.strand.key
        if isinstance(item, CastOn):
            method = item.method.text if item.method else "backward-loop"
            return self._edge(place, row, piece, event.count, edge_yarn(CAST_ON, method), CAST_ON)
        loop = self._loop(self.strand, None)
        if loop is None:
            return False
        metres = event.count * loop.metres
        self.mine.append(Lump(PICK_UP, place, row, self.strand, metres, event.count))
        return True

    def _rows(self, place: int, event: Worked) -> bool:
        chunk = event.chunk
        named = [i for i, entry in enumerate(chunk.entries) if entry.row.strand is not None]
        if named and named[0] > 0 and chunk.reps > 1:
            # The first rows take over the strand before them only the first time.
            once = replace(chunk, reps=1)
            rest = replace(chunk, reps=chunk.reps - 1)
            first = event.first_row
            return self._chunk(place, event, once, first, 0) and self._chunk(
                place, event, rest, first + len(chunk.entries), 1
            )
        return self._chunk(place, event, chunk, event.first_row, 0)

    def _chunk(self, place: int, event: Worked, chunk: Chunk, first: int, shift: int) -> bool:
        rows: list[RowYarn] = []
        for entry in chunk.entries:
            if entry.row.strand is not None:
                self.strand = entry.row.strand.key
            found = self._loop(self.strand, event)
            if found is None:
                return False
            fixed, unit = entry.yarn
            metres = found.metres
            rows.append(
                RowYarn(
                    self.strand,
                    (fixed + unit * shift) * metres,
                    unit * metres,
                    entry,
                    shift,
                    metres,
                )
            )
        if rows:
            self.mine.append(
                Rows(
                    place,
                    event.index,
                    event.motif,
                    first,
                    tuple(rows),
                    chunk.reps,
                    event,
                )
            )
        return True

    def _ends(self, place: int) -> None:
        """An end to weave in where each strand begins in the piece and where it stops."""
        users: dict[str | None, tuple[int, int]] = {}
        for at, part in enumerate(self.mine):
            strands = [part.strand] if isinstance(part, Lump) else [row.strand for row in part.rows]
            for strand in strands:
                users[strand] = (users.get(strand, (at, at))[0], at)
        metres = end_metres()
        for at, part in enumerate(self.mine):
            row = part.row if isinstance(part, Lump) else part.first - 1
            for strand, (start, _) in users.items():
                if start == at:
                    self.parts.append(Lump(END, place, row, strand, metres))
            self.parts.append(part)
            row = part.row if isinstance(part, Lump) else part.last
            for strand, (_, stop) in users.items():
                if stop == at:
                    self.parts.append(Lump(END, place, row, strand, metres))


def _first_named(walk: Walk) -> str | None:
    for event in walk.events:
        strand = getattr(getattr(event, "item", None), "strand", None)
        if isinstance(strand, Name):
            return strand.key
        if isinstance(event, Worked):
            for entry in event.chunk.entries:
                if entry.row.strand is not None:
                    return entry.row.strand.key
    return None
