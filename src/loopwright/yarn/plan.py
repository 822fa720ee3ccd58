"""Which ball on which strand, when: the question of `plan`, and how a proposal is judged."""

from __future__ import annotations

from itertools import combinations

from loopwright.record import dataclass, field
from loopwright.yarn.colour import Sight, sights
from loopwright.yarn.feed import Ends
from loopwright.yarn.ledger import Ledger, Rows

PAIR_POINTS = 10.0
GAP_POINTS = 0.1
GAP_MOST = 50
CLOSE_POINTS = 5.0
PIECE_POINTS = 0.5
SCORE = (
    "10 for each two shades that are held at once somewhere, a tenth for each row that joins of "
    "different strands lie apart at least (up to 50 rows), less 5 for each two shades held at once "
    "that look alike, less a half for each line of feeds"
)


@dataclass(frozen=True, slots=True)
class Stock:
    """A shade to plan with: its balls, the metres of one, and its colour (#rrggbb or None)."""

    shade: str
    balls: int
    ball_metres: float
    colour: str | None


@dataclass(frozen=True, slots=True)
class Wish:
    """What is asked of a plan for one size.

    Joins of different strands lie at least `apart` rows apart; `first` and `last` fix shades by
    strand. With `halves` a strand may begin with half a ball, whose rest comes later. `factor`
    is what each strand's yarn is multiplied with, so that the balls last. Strands are keys;
    `names` has their spelling. Shades are as the pattern spells them.
    """

    ledger: Ledger
    strands: tuple[str, ...]
    stocks: tuple[Stock, ...]
    ends: Ends
    apart: int = 1
    halves: bool = True
    first: dict[str, str] = field(default_factory=dict)
    last: dict[str, str] = field(default_factory=dict)
    factor: float = 1.0
    names: dict[str, str] = field(default_factory=dict)

    def name(self, strand: str) -> str:
        """A strand as the pattern spells it."""
        return self.names.get(strand, strand)


@dataclass(frozen=True, slots=True)
class Turn:
    """One amount on a strand: whole or half a ball of a shade, from row to row.

    Rows count through all pieces. `ends` is false where the strand's work ends before the ball.
    """

    shade: str
    half: bool
    start: int
    end: int
    ends: bool


@dataclass(frozen=True, slots=True)
class Plan:
    """A proposal: the turns of each strand in order, and how it is judged."""

    turns: tuple[tuple[str, tuple[Turn, ...]], ...]
    met: frozenset[frozenset[str]]
    gap: int | None
    close: int
    score: float

    def feeds(self, strand: str) -> str:
        """The turns of a strand as its line of the notation has them: ``half kelp, dune x2``."""
        return feeds_text(dict(self.turns)[strand])


def feeds_text(turns: tuple[Turn, ...]) -> str:
    """Turns as feeds; equal whole balls in a row are one."""
    parts: list[tuple[str, bool, int]] = []
    for turn in turns:
        if parts and not turn.half and parts[-1][:2] == (turn.shade, False):
            parts[-1] = (turn.shade, False, parts[-1][2] + 1)
        else:
            parts.append((turn.shade, turn.half, 1))
    return ", ".join(
        f"half {shade}" if half else shade + (f" x{count}" if count > 1 else "")
        for shade, half, count in parts
    )


def lines_of(turns: tuple[Turn, ...]) -> int:
    """How many entries the feeds of some turns have."""
    return feeds_text(turns).count(",") + 1 if turns else 0


def judged(
    wish: Wish,
    turns: tuple[tuple[str, tuple[Turn, ...]], ...],
    alike: frozenset[frozenset[str]],
) -> Plan | None:
    """A whole proposal with its score; None where it breaks what is asked."""
    met: set[frozenset[str]] = set()
    gap: int | None = None
    for (_, mine), (_, theirs) in combinations(turns, 2):
        for one in mine:
            for other in theirs:
                if overlap(one, other):
                    if one.shade == other.shade:
                        return None
                    met.add(frozenset((one.shade, other.shade)))
                if one.ends and other.ends:
                    distance = abs(one.end - other.end)
                    gap = distance if gap is None else min(gap, distance)
    if gap is not None and gap < wish.apart:
        return None
    for strand, mine in turns:
        if wish.first.get(strand, mine[0].shade) != mine[0].shade:
            return None
        if wish.last.get(strand, mine[-1].shade) != mine[-1].shade:
            return None
    lines = sum(lines_of(mine) for _, mine in turns)
    close = len(met & alike)
    return Plan(turns, frozenset(met), gap, close, score(len(met), gap, close, lines))


def score(met: int, gap: int | None, close: int, lines: int) -> float:
    """The score of a plan, as `SCORE` says it in words."""
    apart = GAP_MOST if gap is None else min(gap, GAP_MOST)
    return PAIR_POINTS * met + GAP_POINTS * apart - CLOSE_POINTS * close - PIECE_POINTS * lines


def overlap(one: Turn, other: Turn) -> bool:
    """Whether two turns are held at once: in more than the row in which one follows the other."""
    return max(one.start, other.start) < min(one.end, other.end)


def alike_pairs(stocks: tuple[Stock, ...]) -> frozenset[frozenset[str]]:
    """The pairs of shades that look alike in some kind of vision."""
    return frozenset(
        frozenset((one.shade, other.shade))
        for one, other, seen in contrasts(stocks)
        if any(sight.close for sight in seen)
    )


def contrasts(stocks: tuple[Stock, ...]) -> tuple[tuple[Stock, Stock, tuple[Sight, ...]], ...]:
    """Every pair of shades whose colours are known, with how each kind of vision sees it."""
    return tuple(
        (one, other, sights(one.colour, other.colour))
        for one, other in combinations(stocks, 2)
        if one.colour is not None and other.colour is not None
    )


class Clock:
    """At which row a strand has eaten how much; rows count through all pieces."""

    def __init__(self, wish: Wish) -> None:
        self._ledger = wish.ledger
        self._offsets: list[int] = []
        self._memo: dict[tuple[str, float], int] = {}
        rows = 0
        for place in range(len(wish.ledger.pieces)):
            self._offsets.append(rows)
            rows += max(
                (p.last for p in wish.ledger.parts if isinstance(p, Rows) and p.piece == place),
                default=0,
            )
        self.rows = rows

    def at(self, strand: str, metres: float) -> int:
        """The row in which a strand has eaten `metres`; the last row where it eats less."""
        key = (strand, round(metres, 6))
        found = self._memo.get(key)
        if found is None:
            spot = self._ledger.spot(strand, metres)
            found = self.rows if spot is None else self._offsets[spot.piece] + spot.row
            self._memo[key] = found
        return found

    def last(self, strand: str) -> int:
        """The last row that a strand works."""
        return self.at(strand, max(self._ledger.total(strand) - 1e-6, 0.0))
