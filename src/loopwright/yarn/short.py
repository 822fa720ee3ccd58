"""Balls that do not last: how much is missing, where, and three ways out, each reckoned."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import ceil

from loopwright.check.yarn_news import ShortNews
from loopwright.count.repeat import Repeater
from loopwright.count.tape import Tapes
from loopwright.count.walk import Walk
from loopwright.count.walker import walk_piece
from loopwright.model.pattern import Pattern
from loopwright.record import replace
from loopwright.yarn.book import ledger_of
from loopwright.yarn.joins import Eaten, eat
from loopwright.yarn.ledger import Ledger, Rows
from loopwright.yarn.loop import Loops
from loopwright.yarn.report import SizeYarn, StrandYarn, YarnReport, ended_by_yarn

_PROBES = 48
_MOST_LESS = 3
"""A way out leaves no more than one part in so many of the rows or stitches out: what would be
left of a smaller piece is another pattern."""


def shorts(
    pattern: Pattern,
    report: YarnReport,
    walks: Sequence[Walk],
    tapes: Tapes,
    repeater: Repeater,
) -> Iterator[ShortNews]:
    """Every strand whose balls do not last, in every size that could be reckoned."""
    by_yarn = bool(ended_by_yarn(pattern))
    for size in report.sizes:
        for strand in size.strands:
            if strand.fed is None or strand.key is None:
                continue
            found = strand.eaten.short
            # Work that ends by yarn gets shorter where a loop takes more.
            above = strand.upper_missing > 0 and not by_yarn
            if found is None and not above:
                continue
            mine = [walk for walk in walks if walk.size == size.size]
            yield _Finder(pattern, report, size, strand, mine, tapes, repeater).news()


class _Finder:
    def __init__(
        self,
        pattern: Pattern,
        report: YarnReport,
        size: SizeYarn,
        strand: StrandYarn,
        walks: list[Walk],
        tapes: Tapes,
        repeater: Repeater,
    ) -> None:
        self.pattern = pattern
        self.ends = report.ends
        self.size = size
        self.strand = strand
        self.walks = walks
        self.tapes = tapes
        self.repeater = repeater
        self.loops = Loops(pattern)
        self.certain = strand.eaten.short is not None
        # What must fit: the middle figure, or else the upper end of the range.
        self.factor = 1.0 if self.certain else 1.0 + strand.spread

    def news(self) -> ShortNews:
        strand = self.strand
        short = strand.eaten.short
        missing = short.metres if short is not None else strand.upper_missing
        spot = short.spot if short is not None else None
        if spot is None and strand.fed is not None:
            # Where a maker at the upper end would stand when the last ball is empty.
            tails = strand.eaten.need - self.size.ledger.total(strand.key)
            spot = self.size.ledger.spot(strand.key, strand.fed / self.factor - tails)
        run = strand.runs[-1]
        feed = run.feed
        assert feed is not None
        shade = self.pattern.shade(run.shade)
        ball = run.ball_metres
        each = ball - 2 * self.ends.tail if ball else 0.0
        # The ball that was the last one now leaves a tail, too.
        more = ceil((missing + self.ends.tail) / each) if ball and each > 0 else None
        rows, motif = self._rows_fewer()
        fewer, to = self._narrower()
        piece = spot.piece if spot is not None else 0
        declared = self.pattern.strand(strand.key or "")
        return ShortNews(
            self.size.size,
            declared.name.text if declared is not None else "",
            shade.name.text if shade is not None else run.shade,
            feed.span,
            self.certain,
            strand.spread,
            strand.loop.ground,
            missing,
            self.pattern.pieces[piece].name.text,
            spot.row if spot is not None else None,
            spot.where if spot is not None else "",
            spot.stitch if spot is not None else 0,
            spot.stitches if spot is not None else 0,
            more,
            rows,
            motif,
            fewer,
            to,
        )

    def _eaten(self, ledger: Ledger) -> Eaten:
        return eat(ledger, self.strand.key, self.strand.runs, self.ends, listed=False)

    def _lasts(self, ledger: Ledger) -> bool:
        eaten = self._eaten(ledger)
        fed = self.strand.fed or 0.0
        return eaten.short is None and eaten.need * self.factor <= fed + 1e-9

    def _rows_fewer(self) -> tuple[int, str]:
        """The fewest rows less, in whole repeats of the part that eats most, and its name."""
        key = self.strand.key
        parts = [part for part in self.size.ledger.parts if isinstance(part, Rows)]
        longest = max(parts, key=lambda part: part.metres_of(key), default=None)
        if longest is None or longest.metres_of(key) <= 0:
            return 0, ""
        at = self.size.ledger.parts.index(longest)

        def lasts(less: int) -> bool:
            parts = list(self.size.ledger.parts)
            parts[at] = replace(longest, reps=longest.reps - less)
            ledger = Ledger(self.size.size, self.pattern.pieces, parts, self.size.ledger.spread)
            return self._lasts(ledger)

        most = longest.reps // _MOST_LESS
        if most < 1 or not lasts(most):
            return 0, ""
        low, high = 0, most
        while high - low > 1:
            middle = (low + high) // 2
            low, high = (low, middle) if lasts(middle) else (middle, high)
        name = longest.motif.name.text if longest.motif is not None else ""
        return high * len(longest.rows), name

    def _narrower(self) -> tuple[int, int]:
        """The fewest stitches less to cast on, and the cast-on then; 0 where none is found."""
        if len(self.pattern.pieces) != 1 or self.walks[0].cast_on is None:
            return 0, 0
        if ended_by_yarn(self.pattern):
            return 0, 0  # a narrower piece would only be worked longer
        walk = self.walks[0]
        now = walk.cast_on or 0
        from loopwright.count.solve import counts_for

        counts = counts_for(walk.piece, walk.size, self.tapes)
        size = walk.size

        def lasts(count: int) -> bool | None:
            tried = walk_piece(
                self.pattern, walk.piece, size, self.tapes, self.repeater, None, count
            )
            if not tried.sound:
                return None
            ledger = ledger_of(self.pattern, [tried], self.loops, size)
            return None if ledger is None else self._lasts(ledger)

        # The count shrinks in the share in which the yarn is short, then to the nearest that fits.
        fed = self.strand.fed or 0.0
        share = fed / (self.strand.metres * self.factor) if self.strand.metres else 1.0
        at = counts.below(min(int(now * share) + max(counts.modulus, 1) * 2, now - 1))
        for _ in range(_PROBES):
            if at is None or (now - at) * _MOST_LESS > now:
                return 0, 0
            if lasts(at):
                return now - at, at
            at = counts.below(at - 1)
        return 0, 0
