"""Which shade a strand holds from which row to which, and which shades meet."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import combinations

from loopwright.notation.tree import Feed
from loopwright.record import dataclass
from loopwright.yarn.ledger import Lump
from loopwright.yarn.report import SizeYarn, StrandYarn

Place = tuple[int, int]


@dataclass(frozen=True, slots=True)
class Hold:
    """A strand holds a shade from row `first` to row `last` of a piece."""

    strand: str
    shade: str
    feed: Feed
    piece: int
    first: int
    last: int


@dataclass(frozen=True, slots=True)
class Meeting:
    """Two holds of different strands that overlap: rows `first` to `last` of a piece."""

    one: Hold
    other: Hold
    first: int
    last: int


def holds(size: SizeYarn) -> tuple[Hold, ...]:
    """Every hold of every declared strand that has feeds."""
    return tuple(hold for strand in size.strands for hold in _holds(size, strand))


def _holds(size: SizeYarn, strand: StrandYarn) -> Iterator[Hold]:
    if not strand.runs or strand.name is None:
        return
    used = _used(size, strand.key)
    bounds: list[tuple[str, Place]] = []
    for join in strand.eaten.joins:
        bounds.append((join.old, (join.spot.piece, join.spot.row)))
    last_shade = strand.eaten.joins[-1].new if strand.eaten.joins else strand.runs[0].shade
    bounds.append((last_shade, (len(size.ledger.pieces), 0)))
    start: Place = (0, 0)
    index = 0
    while index < len(bounds):
        shade, end = bounds[index]
        while index + 1 < len(bounds) and bounds[index + 1][0] == shade:
            index += 1
            end = bounds[index][1]
        feed = next(run.feed for run in strand.runs if run.shade == shade)
        for piece, (first, last) in used.items():
            low = first if start[0] < piece else start[1] if start[0] == piece else last + 1
            high = last if end[0] > piece else end[1] if end[0] == piece else first - 1
            low, high = max(low, first), min(high, last)
            if low <= high and feed is not None:
                yield Hold(strand.name, shade, feed, piece, low, high)
        start = end
        index += 1


def _used(size: SizeYarn, key: str | None) -> dict[int, tuple[int, int]]:
    """The first and last row of each piece in which a strand works; 0 for the cast-on."""
    found: dict[int, tuple[int, int]] = {}
    for at in size.ledger.sums(key)[0]:
        part = size.ledger.parts[at]
        if isinstance(part, Lump):
            if part.kind == "end":
                continue
            first = last = part.row
        else:
            lines = [i for i, row in enumerate(part.rows) if row.strand == key]
            first = part.first + lines[0]
            last = part.last - len(part.rows) + 1 + lines[-1]
        low, high = found.get(part.piece, (first, last))
        found[part.piece] = (min(low, first), max(high, last))
    return found


def meetings(size: SizeYarn) -> Iterator[Meeting]:
    """Every two holds of different strands that overlap in at least one row."""
    for one, other in combinations(holds(size), 2):
        if one.strand == other.strand or one.piece != other.piece:
            continue
        first, last = max(one.first, other.first), min(one.last, other.last)
        # Where one ends in the row in which the other begins, the hands hold them one by one.
        if first < last:
            yield Meeting(one, other, first, last)


def touching(size: SizeYarn) -> Iterator[tuple[Feed, Feed]]:
    """Feeds whose shades lie beside each other: held at once, or one after the other."""
    for meeting in meetings(size):
        yield meeting.one.feed, meeting.other.feed
    for strand in size.strands:
        feeds = {run.shade: run.feed for run in reversed(strand.runs)}
        for join in strand.eaten.joins:
            old, new = feeds.get(join.old), feeds.get(join.new)
            if join.changes_shade and old is not None and new is not None:
                yield old, new
