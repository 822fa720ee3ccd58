"""The balls that a strand eats, in order, as amounts of yarn."""

from __future__ import annotations

from loopwright.facts.amounts import join_way
from loopwright.model.pattern import Pattern, Strand, Yarn
from loopwright.notation.tree import Feed
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class Run:
    """`count` equal amounts of one shade, one after the other.

    `metres` is one amount (None where the ball's metres are not known); `balls` what one amount
    is of a ball (0.5 for a half). `ball_metres` and `ball_grams` are those of a whole ball.
    """

    shade: str
    count: int
    metres: float | None
    balls: float | None
    ball_metres: float | None
    ball_grams: float | None
    feed: Feed | None = None

    @property
    def grams_per_metre(self) -> float | None:
        if not self.ball_grams or not self.ball_metres:
            return None
        return self.ball_grams / self.ball_metres


@dataclass(frozen=True, slots=True)
class Ends:
    """How balls are joined in a pattern: the tail left of each end and what is worked back, in
    metres; `at_edge` where a join lies between two rows."""

    name: str
    tail: float
    worked_back: float
    at_edge: bool


def ends_of(pattern: Pattern, size: int = 0) -> Ends:
    """The join of the pattern's ``join by`` line, else the usual one; a stated tail goes first."""
    line = pattern.join
    way = join_way(line.method.text) if line is not None else None
    way = way or join_way(None)
    assert way is not None
    tail = way.tail_mm / 1000.0
    if line is not None and line.tail is not None and line.tail.unit is not None:
        tail = line.tail.metres(size)
    return Ends(way.name, tail, min(way.worked_back_mm / 1000.0, tail), way.at_edge)


def yarn_of_shade(pattern: Pattern, key: str) -> Yarn | None:
    """The yarn a shade is of."""
    shade = pattern.shade(key)
    return pattern.yarn(shade.yarn.key) if shade is not None else None


def runs_of(pattern: Pattern, strand: Strand, size: int) -> tuple[Run, ...]:
    """The feeds of a strand in one size."""
    return tuple(_run(pattern, feed, size) for feed in strand.feeds)


def _run(pattern: Pattern, feed: Feed, size: int) -> Run:
    yarn = yarn_of_shade(pattern, feed.shade.key)
    ball = yarn.metres if yarn is not None else None
    grams = yarn.grams if yarn is not None else None
    metres: float | None = None
    balls: float | None = None
    if feed.amount is None:
        balls = 0.5 if feed.half else 1.0
        metres = ball * balls if ball else None
    elif feed.amount.is_length:
        metres = feed.amount.metres(size)
        balls = metres / ball if ball else None
    elif feed.amount.is_weight and grams:
        balls = feed.amount.grams(size) / grams
        metres = ball * balls if ball else None
    count = feed.balls.at(size) if feed.balls is not None else 1
    return Run(feed.shade.key, count, metres, balls, ball, grams, feed)
