"""A border in another fabric, measured with its own gauge: is it as wide as what it borders?"""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, in_size
from loopwright.count.measure import width_gauge
from loopwright.count.walk import Walk
from loopwright.count.widths import Stretch, stretches
from loopwright.model.pattern import Piece
from loopwright.problem import ADVICE, Problem

TOLERANCE = 0.03
"""The part by which two fabrics of a piece may differ in width before they pull at each other."""


def border_advice(context: Context, piece: Piece) -> Iterator[Problem]:
    """Advice for each fabric with a gauge of its own that meets the piece's main one unevenly."""
    seen: dict[int, tuple[Stretch, str, list[int]]] = {}
    for walk in context.walks_of(piece):
        if not walk.sound:
            continue
        for border, text in _uneven(context, walk):
            key = border.span.start
            seen.setdefault(key, (border, text, []))[2].append(walk.size)
    for border, text, sizes in seen.values():
        yield Problem(
            "size-off",
            ADVICE,
            "the border and the fabric beside it differ in width",
            text,
            border.span,
            help="work the border on fewer or more stitches (a row with “spread k2tog x8” or "
            "“spread m1 x8” before it), or on another needle.",
            sizes=context.size_names(sizes),
        )


def _uneven(context: Context, walk: Walk) -> Iterator[tuple[Stretch, str]]:
    pattern = context.pattern
    main = width_gauge(pattern, walk.piece)
    found = stretches(pattern, walk)
    for at, border in enumerate(found):
        if border.gauge is main or border.motif is None:
            continue
        beside = _beside(found, at, main)
        if beside is None:
            continue
        body, stitches, here = beside
        wide, own = body.width(stitches), border.width(here)
        if abs(own - wide) <= wide * TOLERANCE:
            continue
        word = "wider" if own > wide else "narrower"
        by = abs(own - wide) / wide * 100
        yield (
            border,
            f"At its own gauge {border.motif.name.text} is {own / 10:.4g} cm wide on "
            f"{here:,} stitches{in_size(context, walk.size)}, and the fabric beside it is "
            f"{wide / 10:.4g} cm on {stitches:,}: {by:.0f} % {word}.",
        )


def _beside(found: tuple[Stretch, ...], at: int, main: object) -> tuple[Stretch, int, int] | None:
    """The main fabric that a border meets, with the stitches of both where they meet."""
    border = found[at]
    for body in found[at + 1 :]:
        if body.gauge is main and body.rows:
            return body, body.first, border.last
    for body in reversed(found[:at]):
        if body.gauge is main and body.rows:
            return body, body.last, border.first
    return None
