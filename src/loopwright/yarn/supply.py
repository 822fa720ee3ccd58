"""What the walk asks of the yarn: how many repeats a strand's balls are enough for."""

from __future__ import annotations

from collections.abc import Callable

from loopwright.count.walk import Walk
from loopwright.model.pattern import Pattern, Piece, Work
from loopwright.notation.bounds import MAX_NUMBER
from loopwright.notation.tree import UntilSpent
from loopwright.yarn.book import ledger_of
from loopwright.yarn.feed import ends_of, runs_of
from loopwright.yarn.joins import eat
from loopwright.yarn.ledger import Ledger, Lump, Rows
from loopwright.yarn.loop import Loops

Trial = Callable[[int], Walk]


class Supply:
    """How far the balls of a strand reach; remembers the pieces walked before."""

    def __init__(self, pattern: Pattern) -> None:
        self._pattern = pattern
        self._loops = Loops(pattern)
        self._walks: list[Walk] = []

    def note(self, walk: Walk) -> None:
        """A piece that is walked to its end: what it eats is gone."""
        self._walks.append(walk)

    def repeats(self, piece: Piece, size: int, item: Work, trial: Trial) -> int | None:
        """The most repeats for which the strand's balls last to the end of the piece.

        `trial` walks the piece with that many. The rest of the piece, its bind-off, the tails
        at joins and the ends are reckoned with; rows kept by ``keep N rows`` count where the
        rest of the piece has fewer rows of the strand. None where it cannot be said.
        """
        amount = item.amount
        assert isinstance(amount, UntilSpent)
        key = amount.strand.key
        strand = self._pattern.strand(key)
        runs = runs_of(self._pattern, strand, size) if strand is not None else ()
        if not runs or any(run.metres is None for run in runs):
            return None
        ends = ends_of(self._pattern, size)
        before = [w for w in self._walks if w.size == size and w.piece is not piece]
        fed = sum((run.metres or 0.0) * run.count for run in runs)
        keep = amount.keep.at(size) if amount.keep is not None else 0
        place = piece.items.index(item)

        def enough(reps: int) -> bool | None:
            ledger = ledger_of(self._pattern, [*before, trial(reps)], self._loops, size)
            if ledger is None:
                return None
            eaten = eat(ledger, key, runs, ends, listed=False)
            return eaten.short is None and eaten.need + reserve(ledger, key, place, keep) <= fed

        first = enough(1)
        if first is None:
            return None
        if not first:
            return 0
        low, high = 1, 2
        while high < MAX_NUMBER and enough(high):
            low, high = high, high * 2
        while high - low > 1:
            middle = (low + high) // 2
            low, high = (middle, high) if enough(middle) else (low, middle)
        return low


def reserve(ledger: Ledger, strand: str, item: int, keep: int) -> float:
    """What ``keep N rows`` asks for beyond the rows that the piece still has, in metres."""
    last = len(ledger.pieces) and max(part.piece for part in ledger.parts)
    row = 0.0
    later = 0.0
    for part in ledger.parts:
        if part.piece != last or isinstance(part, Lump):
            continue
        if part.item == item:
            mine = [r.metres(max(part.reps - 1, 0)) for r in part.rows if r.strand == strand]
            row = max(mine, default=row)
        elif part.item > item:
            later += part.metres_of(strand)
    return max(keep * row - later, 0.0)


def closing(ledger: Ledger, strand: str, piece: int, item: int) -> tuple[float, float]:
    """What a strand eats after an item of a piece, and in the last repeat of it, in metres."""
    after = one = 0.0
    for part in ledger.parts:
        if part.piece != piece:
            continue
        if isinstance(part, Rows) and part.item == item:
            fixed, unit = part.series(strand)
            one = fixed + unit * max(part.reps - 1, 0)
            after = 0.0
        elif one:
            after += part.metres_of(strand)
    return after, one
