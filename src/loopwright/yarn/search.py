"""The search for feeds: every order of the balls is tried, as long as it can still be the best.

A branch-and-bound over whole turns, exact where it comes to its end; no solver is needed, since a
cloth has a dozen balls and two or three strands. Beyond a number of steps it stops and says so.
"""

from __future__ import annotations

from itertools import combinations

from loopwright.record import dataclass
from loopwright.yarn.plan import (
    CLOSE_POINTS,
    GAP_MOST,
    GAP_POINTS,
    PAIR_POINTS,
    PIECE_POINTS,
    Clock,
    Plan,
    Turn,
    Wish,
    alike_pairs,
    judged,
    overlap,
)

MAX_STEPS = 150_000


@dataclass(frozen=True, slots=True)
class Found:
    """The best plans, best first; `exact` where no better one can be; the `steps` it took."""

    plans: tuple[Plan, ...]
    exact: bool
    steps: int


@dataclass(slots=True)
class _Line:
    """A strand while its feeds are built: yarn eaten, turns, and whether it lasts to the end."""

    strand: str
    total: float
    eaten: float
    turns: list[Turn]
    done: bool


class Search:
    """Looks for the best `best` plans; `seed` changes the order in which equals are found."""

    def __init__(self, wish: Wish, best: int = 3, seed: int = 0, steps: int = MAX_STEPS) -> None:
        self.wish = wish
        self.clock = Clock(wish)
        self.best = best
        self.most = steps
        self.steps = 0
        self.alike = alike_pairs(wish.stocks)
        self.order = shuffled([stock.shade for stock in wish.stocks], seed)
        self.stock = {stock.shade: stock for stock in wish.stocks}
        self.halves_left = {stock.shade: stock.balls * 2 for stock in wish.stocks}
        self.open = {stock.shade: 0 for stock in wish.stocks}
        self.met: dict[frozenset[str], int] = {}
        self.plans: list[Plan] = []
        self.pairs = len(list(combinations(wish.stocks, 2)))
        self.lines = [
            _Line(s, wish.ledger.total(s) * wish.factor, 0.0, [], False) for s in wish.strands
        ]

    def run(self) -> Found:
        """Search to the end, or to the bound on steps."""
        self._next(None)
        return Found(tuple(self.plans), self.steps < self.most, self.steps)

    def _next(self, gap: int | None) -> None:
        self.steps += 1
        if self.steps >= self.most:
            return
        waiting = [line for line in self.lines if not line.done]
        if not waiting:
            self._keep()
            return
        if self._bound(gap) <= self._floor():
            return
        # The strand that needs a ball first gets one first.
        line = min(waiting, key=lambda line: line.turns[-1].end if line.turns else -1)
        for half in (False, True):
            for shade in self.order:
                if self.steps >= self.most:
                    return
                if self._may(line, shade, half):
                    self._try(line, shade, half, gap)

    def _may(self, line: _Line, shade: str, half: bool) -> bool:
        """Whether a ball is there: a half is opened at a strand's start, its rest used later."""
        if self.halves_left[shade] - self.open[shade] < 2:
            if not (half and self.open[shade]):
                return False
        if half and not self.open[shade]:
            if not self.wish.halves or line.turns:
                return False
        return bool(line.turns) or self.wish.first.get(line.strand, shade) == shade

    def _try(self, line: _Line, shade: str, half: bool, gap: int | None) -> None:
        tail = self.wish.ends.tail
        amount = self.stock[shade].ball_metres * (0.5 if half else 1.0)
        here = max(amount - (tail if line.turns else 0.0), 0.0)
        ends = here < line.total - line.eaten - 1e-9
        eaten = line.eaten + (max(here - tail, 0.0) if ends else line.total - line.eaten)
        if ends and eaten <= line.eaten:
            return
        factor = self.wish.factor
        turn = Turn(
            shade,
            half,
            self.clock.at(line.strand, line.eaten / factor),
            self.clock.at(line.strand, eaten / factor) if ends else self.clock.last(line.strand),
            ends,
        )
        if not ends and self.wish.last.get(line.strand, shade) != shade:
            return
        new: list[frozenset[str]] = []
        for other in self.lines:
            if other is line:
                continue
            for theirs in other.turns:
                if overlap(turn, theirs):
                    if theirs.shade == shade:
                        return
                    new.append(frozenset((shade, theirs.shade)))
                if turn.ends and theirs.ends:
                    distance = abs(turn.end - theirs.end)
                    if distance < self.wish.apart:
                        return
                    gap = distance if gap is None else min(gap, distance)
        opened = half and not self.open[shade]
        self.halves_left[shade] -= 1 if half else 2
        if half:
            self.open[shade] += 1 if opened else -1
        for pair in new:
            self.met[pair] = self.met.get(pair, 0) + 1
        before, line.eaten, line.done = line.eaten, eaten, not ends
        line.turns.append(turn)
        self._next(gap)
        line.turns.pop()
        line.eaten, line.done = before, False
        for pair in new:
            self.met[pair] -= 1
            if not self.met[pair]:
                del self.met[pair]
        if half:
            self.open[shade] -= 1 if opened else -1
        self.halves_left[shade] += 1 if half else 2

    def _bound(self, gap: int | None) -> float:
        """More than this no plan that goes on from here can score."""
        close = sum(1 for pair in self.met if pair in self.alike)
        apart = GAP_MOST if gap is None else min(gap, GAP_MOST)
        lines = max(len(self.lines), sum(1 for line in self.lines if line.turns))
        pairs = min(self.pairs, len(self.met) + self._may_meet())
        return (
            PAIR_POINTS * pairs + GAP_POINTS * apart - CLOSE_POINTS * close - PIECE_POINTS * lines
        )

    def _may_meet(self) -> int:
        """How many pairs may still meet: each later turn starts, and so do others beside it."""
        if len(self.lines) < 2:
            return 0
        least = min(stock.ball_metres for stock in self.wish.stocks) / 2 - 2 * self.wish.ends.tail
        if least <= 0:
            return self.pairs
        turns = 0
        for line in self.lines:
            if not line.done:
                turns += int((line.total - line.eaten) / least) + 2
        # A turn that begins meets what the others hold; what they take later counts as theirs.
        return turns * (len(self.lines) - 1)

    def _floor(self) -> float:
        return self.plans[-1].score if len(self.plans) >= self.best else float("-inf")

    def _keep(self) -> None:
        turns = tuple((line.strand, tuple(line.turns)) for line in self.lines)
        plan = judged(self.wish, turns, self.alike)
        if plan is None or plan.score <= self._floor():
            return
        shown = [plan.feeds(strand) for strand, _ in turns]
        if any([p.feeds(s) for s, _ in p.turns] == shown for p in self.plans):
            return
        self.plans.append(plan)
        self.plans.sort(key=lambda p: -p.score)
        del self.plans[self.best :]


def shuffled(items: list[str], seed: int) -> list[str]:
    """The items in an order that depends on the seed alone; seed 0 leaves them as they are.

    The generator is splitmix64 (Steele, Lea and Flood 2014), so that it is the same everywhere.
    """
    out = list(items)
    if seed == 0:
        return out
    state = seed & (2**64 - 1)
    for high in range(len(out) - 1, 0, -1):
        state = (state + 0x9E3779B97F4A7C15) & (2**64 - 1)
        mixed = state
        mixed = ((mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9) & (2**64 - 1)
        mixed = ((mixed ^ (mixed >> 27)) * 0x94D049BB133111EB) & (2**64 - 1)
        at = (mixed ^ (mixed >> 31)) % (high + 1)
        out[high], out[at] = out[at], out[high]
    return out
