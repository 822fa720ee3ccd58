"""How far the balls of a strand reach."""

from __future__ import annotations

from loopwright.model.pattern import Pattern, Strand, Yarn
from loopwright.yarn.loop import loop_length


def strand_metres(pattern: Pattern, strand: Strand, size: int) -> float | None:
    """The metres of all the balls a strand feeds on; None where a ball's metres are not given."""
    metres = 0.0
    for feed in strand.feeds:
        yarn = _yarn_of(pattern, feed.shade.key)
        if yarn is None or yarn.metres is None:
            return None
        times = feed.balls.at(size) if feed.balls is not None else 1
        if feed.amount is None:
            metres += times * yarn.metres * (0.5 if feed.half else 1.0)
        elif feed.amount.is_length:
            metres += times * feed.amount.metres(size)
        elif feed.amount.is_weight and yarn.grams:
            metres += times * feed.amount.grams(size) / yarn.grams * yarn.metres
        else:
            return None
    return metres if strand.feeds else None


def _yarn_of(pattern: Pattern, shade_key: str) -> Yarn | None:
    shade = pattern.shade(shade_key)
    return pattern.yarn(shade.yarn.key) if shade is not None else None


class Supply:
    """What the walk asks of the yarn: how many plain loops a strand's balls make."""

    def __init__(self, pattern: Pattern) -> None:
        self._pattern = pattern

    def loops_of(self, strand: str, size: int) -> float | None:
        found = self._pattern.strand(strand)
        if found is None:
            return None
        metres = strand_metres(self._pattern, found, size)
        yarn = _yarn_of(self._pattern, found.feeds[0].shade.key) if found.feeds else None
        loop = loop_length(self._pattern, yarn)
        if metres is None or loop is None or loop.metres <= 0:
            return None
        return metres / loop.metres
