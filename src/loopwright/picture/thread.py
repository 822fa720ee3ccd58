"""Which colour a strand shows at each metre: its balls in order, and stripes along a ball."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING

from loopwright.model.pattern import Pattern, Shade, Strand
from loopwright.notation.tree import Feed
from loopwright.record import dataclass
from loopwright.yarn.loop import Loops

if TYPE_CHECKING:
    from numpy import ndarray

# For shades that declare no colour, in the order of the source.
_NEUTRAL = ("#8c8479", "#c9c3b6", "#5f6b73", "#b59f82", "#7f8f86", "#a58a94")
_GOLDEN = 0.6180339887498949
_MOST_STRIPES = 100_000
_ENDLESS = float("inf")

Colours = Mapping[str, str]
"""Colours by shade (its key), in place of those of the source; ``#rrggbb``."""


@dataclass(frozen=True, slots=True)
class Thread:
    """A strand from its start: colour `colours[i]` up to metre `ends[i]`; `loop` in metres."""

    ends: tuple[float, ...]
    colours: tuple[int, ...]
    loop: float

    def at(self, loops: ndarray) -> ndarray:
        """The colours (places in the palette) where so many loops have been eaten."""
        import numpy as np

        places = np.searchsorted(np.asarray(self.ends[:-1]), loops * self.loop, side="right")
        return np.asarray(self.colours, dtype=np.int32)[places]


class Palette:
    """The colours of a picture, each once."""

    def __init__(self, pattern: Pattern, instead: Colours) -> None:
        self.pattern = pattern
        self.instead = instead
        self.colours: list[str] = []
        self.names: dict[int, list[str]] = {}

    def place(self, colour: str, shade: Shade | None = None) -> int:
        """The place of a colour, which a shade is known by from now on."""
        if colour not in self.colours:
            self.colours.append(colour)
        place = self.colours.index(colour)
        if shade is not None:
            name = shade.text.text if shade.text else shade.name.text
            known = self.names.setdefault(place, [])
            if name not in known:
                known.append(name)
        return place

    def of_shade(self, shade: Shade) -> tuple[str, ...]:
        """The colours of a shade, in order along the ball."""
        own = self.instead.get(shade.name.key)
        if own is not None:
            return (own,)
        if shade.colours:
            return shade.colours
        return (_NEUTRAL[self.pattern.shades.index(shade) % len(_NEUTRAL)],)


def thread_of(
    pattern: Pattern, strand: Strand | None, size: int, palette: Palette, seed: int
) -> Thread:
    """The thread of a strand (None: a pattern that declares none).

    Shades change where the balls end, by the metres eaten loop for loop; tails and joins are not
    reckoned. Where the source does not say how long a ball or a loop is, the first shade serves
    throughout. A striped ball begins at a place that `seed` chooses: 0 its beginning.
    """
    shades = [pattern.shade(feed.shade.key) for feed in strand.feeds] if strand else []
    first = next((shade for shade in shades if shade is not None), None)
    if first is None and pattern.shades and strand is None:
        first = pattern.shades[0]
    if strand is None or first is None:
        colour = palette.of_shade(first)[0] if first is not None else _NEUTRAL[0]
        return Thread((_ENDLESS,), (palette.place(colour, first),), 1.0)
    loop = Loops(pattern).of(pattern.yarn(first.yarn.key), None, size)
    metres = loop.metres if loop is not None else 0.0
    ends: list[float] = []
    colours: list[int] = []
    at = 0.0
    ball = 0
    for feed, shade in zip(strand.feeds, shades, strict=True):
        length = _length(pattern, feed, shade, size)
        if shade is None or length is None or not metres:
            if not ends:
                colour = palette.of_shade(first)[0]
                return Thread((_ENDLESS,), (palette.place(colour, first),), 1.0)
            break
        times, each = length
        if shade.stripes and shade.name.key not in palette.instead:
            for _ in range(times):
                if len(ends) > _MOST_STRIPES:
                    break
                _stripes(shade, at, each, seed, ball, palette, ends, colours)
                at += each
                ball += 1
        else:
            at += times * each
            ends.append(at)
            colours.append(palette.place(palette.of_shade(shade)[0], shade))
            ball += times
    return Thread(tuple(ends), tuple(colours), metres)


def _length(
    pattern: Pattern, feed: Feed, shade: Shade | None, size: int
) -> tuple[int, float] | None:
    """How many balls a feed is, and the metres of each; None where they are not given."""
    yarn = pattern.yarn(shade.yarn.key) if shade is not None else None
    times = feed.balls.at(size) if feed.balls is not None else 1
    if feed.amount is not None and feed.amount.is_length:
        return times, feed.amount.metres(size)
    if yarn is None or yarn.metres is None:
        return None
    if feed.amount is not None:
        if not (feed.amount.is_weight and yarn.grams):
            return None
        return times, feed.amount.grams(size) / yarn.grams * yarn.metres
    return times, yarn.metres * (0.5 if feed.half else 1.0)


def _stripes(
    shade: Shade,
    start: float,
    length: float,
    seed: int,
    ball: int,
    palette: Palette,
    ends: list[float],
    colours: list[int],
) -> None:
    """One striped ball, from the place at which it happens to begin."""
    stripes = [
        (stripe.length.metres(), palette.place(colour, shade))
        for stripe, colour in zip(shade.stripes, shade.colours, strict=True)
    ]
    whole = sum(metres for metres, _ in stripes)
    if whole <= 0:
        return
    # The golden ratio spreads the beginnings of the balls evenly over the repeat.
    skip = ((seed + ball) * _GOLDEN % 1.0) * whole if seed or ball else 0.0
    at = -skip
    while at < length and len(ends) <= _MOST_STRIPES:
        for metres, colour in stripes:
            at += metres
            if at > 0:
                ends.append(start + min(at, length))
                colours.append(colour)
            if at >= length:
                return
