"""Where a strand's balls run out and the next ones join, solved on the ledger."""

from __future__ import annotations

from math import ceil

from loopwright.record import dataclass
from loopwright.yarn.feed import Ends, Run
from loopwright.yarn.ledger import Ledger, Spot

MAX_JOINS = 400
"""Joins of one strand that are listed; more are only counted."""

_CRUMB = 1e-9


@dataclass(frozen=True, slots=True)
class Join:
    """The place where one ball of a strand ends and the next joins.

    `run` is the place of the old ball's run among the feeds, `spot` where its last stitch is;
    `old` and `new` are shades. `left_grams` is what is left of the old ball, its tail cut (None:
    not known), `row_grams` what it weighs when the row before is done. `earliest` and `latest`
    are the places at the ends of the range; `metres` is what the strand has eaten by then;
    `round_before` tells that the row before is a round.
    """

    strand: str | None
    run: int
    spot: Spot
    old: str
    new: str
    tail: float
    left_grams: float | None
    row_grams: float | None
    metres: float
    earliest: Spot | None = None
    latest: Spot | None = None
    round_before: bool = False

    @property
    def changes_shade(self) -> bool:
        return self.old != self.new

    @property
    def leaves_some(self) -> bool:
        """Whether the old ball is put by and not used up."""
        return self.left_grams is not None and self.left_grams >= 0.5


@dataclass(frozen=True, slots=True)
class Short:
    """The last ball of a strand ends before the work: where, and the metres that are missing."""

    shade: str
    spot: Spot | None
    metres: float


@dataclass(frozen=True, slots=True)
class Eaten:
    """A strand's way through its feeds.

    `used` is what it eats of each run in metres, tails at joins included; `joined` how many joins
    there are in all, of which `joins` lists the first; `need` is all the yarn with those tails.
    """

    strand: str | None
    joins: tuple[Join, ...]
    used: tuple[float, ...]
    need: float
    joined: int
    short: Short | None


def eat(
    ledger: Ledger, strand: str | None, runs: tuple[Run, ...], ends: Ends, listed: bool = True
) -> Eaten:
    """Follow a strand through its balls. Without `listed` no place is solved, only the sums."""
    return _Eater(ledger, strand, runs, ends, listed).run()


class _Eater:
    def __init__(
        self, ledger: Ledger, strand: str | None, runs: tuple[Run, ...], ends: Ends, listed: bool
    ) -> None:
        self.ledger = ledger
        self.strand = strand
        self.runs = runs
        self.ends = ends
        self.listed = listed
        self.total = ledger.total(strand)
        self.done = 0.0
        self.joins: list[Join] = []
        self.joined = 0
        self.used = [0.0] * len(runs)
        self.opened: dict[str, float] = {}

    def run(self) -> Eaten:
        short: Short | None = None
        started = False
        for place, run in enumerate(self.runs):
            if run.metres is None:
                # How far it reaches is not known: it is taken to last.
                self._finish(place, started)
                return self._result(None)
            number = 0
            while number < run.count:
                head = self.ends.tail if started else 0.0
                here = max(run.metres - head, 0.0)
                rest = self.total - self.done
                if rest <= here + _CRUMB:
                    self._finish(place, started)
                    return self._result(None)
                following = self._following(place, number)
                if following is None:
                    spot = self.ledger.spot(self.strand, self.done + here)
                    short = Short(run.shade, spot, rest - here)
                    self.used[place] += rest + head
                    return self._result(short)
                if not started or len(self.joins) < MAX_JOINS:
                    self._join(place, run, here, head, following)
                    number += 1
                else:
                    number += self._skip(place, run, run.count - number)
                started = True
        if not self.runs:
            return self._result(None)
        return self._result(short)

    def _following(self, place: int, number: int) -> str | None:
        if number + 1 < self.runs[place].count:
            return self.runs[place].shade
        later = (run.shade for run in self.runs[place + 1 :] if run.count > 0)
        return next(later, None)

    def _finish(self, place: int, started: bool) -> None:
        head = self.ends.tail if started else 0.0
        self.used[place] += self.total - self.done + head
        self.done = self.total

    def _join(self, place: int, run: Run, here: float, head: float, following: str) -> None:
        assert run.metres is not None
        reach = self.done + max(here - self.ends.tail, 0.0)
        spot = self.ledger.spot(self.strand, reach) if self.listed or self.ends.at_edge else None
        left_metres = 0.0
        if spot is not None and self.ends.at_edge and spot.where == "row" and spot.stitch > 0:
            if spot.before > self.done:
                left_metres = reach - spot.before
                reach = spot.before
                spot = self.ledger.spot(self.strand, reach)
        self.used[place] += head + (reach - self.done) + min(self.ends.tail, here)
        self.done = reach
        self.joined += 1
        if spot is None or not self.listed:
            return
        gpm = run.grams_per_metre
        opened = self.opened.get(run.shade, 0.0) + (run.balls or 0.0)
        self.opened[run.shade] = opened
        left: float | None = None
        before: float | None = None
        if gpm is not None and run.ball_grams is not None and run.balls is not None:
            part = ceil(opened - _CRUMB) - opened
            left = max(part, 0.0) * run.ball_grams + left_metres * gpm
            before = left + (self.ends.tail + spot.into) * gpm
        spread = self.ledger.spread.get(self.strand, 0.0)
        self.joins.append(
            Join(
                self.strand,
                place,
                spot,
                run.shade,
                following,
                self.ends.tail,
                left,
                before,
                reach,
                self.ledger.spot(self.strand, reach / (1 + spread)),
                self.ledger.spot(self.strand, reach / (1 - spread)),
                self.ledger.is_round(spot.piece, max(spot.row - 1, 1)),
            )
        )

    def _skip(self, place: int, run: Run, most: int) -> int:
        """Eat as many equal balls as go whole, without listing their joins."""
        assert run.metres is not None
        each = run.metres - 2 * self.ends.tail
        if each <= 0:
            each = 0.0
        rest = self.total - self.done - max(run.metres - self.ends.tail, 0.0)
        number = most if each <= 0 else min(most, max(int(rest / each), 1))
        if number == most and self._following(place, run.count - 1) is None:
            number = max(number - 1, 1)
        self.used[place] += number * run.metres
        self.done += number * each
        self.joined += number
        return number

    def _result(self, short: Short | None) -> Eaten:
        return Eaten(
            self.strand,
            tuple(self.joins),
            tuple(self.used),
            sum(self.used) if self.runs else self.total,
            self.joined,
            short,
        )


def allotted(runs: tuple[Run, ...], metres: float) -> tuple[float, ...]:
    """How `metres` lie over the runs in order; what is more than all of them is the last one's."""
    out: list[float] = []
    left = metres
    for run in runs:
        whole = left if run.metres is None else min(left, run.metres * run.count)
        out.append(whole)
        left -= whole
    if out and left > 0:
        out[-1] += left
    return tuple(out)
