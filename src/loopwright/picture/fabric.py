"""The cloth picture from end to end: which piece, which colours, the PNG, and its words."""

from __future__ import annotations

from collections.abc import Sequence

from loopwright.count.measure import width_gauge
from loopwright.count.walk import Walk
from loopwright.model.pattern import Pattern
from loopwright.picture.cloth import Cloth, cloth_of
from loopwright.picture.palettes import Choice
from loopwright.picture.raster import draw, png, side_by_side, view_of
from loopwright.record import dataclass

_USUAL_PROPORTION = 5 / 7
"""A row is about five sevenths as high as a stitch is wide: common practice, without a gauge."""


@dataclass(frozen=True, slots=True)
class Fabric:
    """A picture of a piece: PNG bytes, its size in pixels, and what it shows in words."""

    png: bytes
    width: int
    height: int
    words: str


def proportion_of(pattern: Pattern, walk: Walk) -> float:
    """The height of a row as a part of the width of a stitch, at the piece's gauge."""
    gauge = width_gauge(pattern, walk.piece)
    if gauge is None or gauge.rows <= 0 or gauge.stitches <= 0:
        return _USUAL_PROPORTION
    return float(gauge.stitches) / float(gauge.rows)


def fabric_of(
    pattern: Pattern,
    walk: Walk,
    choices: Sequence[Choice] = (),
    seed: int = 0,
    zoom: int | None = None,
    wide: int = 960,
    palette: int | None = None,
) -> Fabric:
    """Draw a piece in one size, once for each of `choices` (none: in its own colours).

    `zoom` gives a corner in so many pixels a stitch; else the whole piece about `wide` pixels wide;
    `palette` keeps the PNG to so many colours. Raises TooLarge for a piece of too many stitches.
    """
    shown = list(choices) or [Choice("", {})]
    each = wide if len(shown) == 1 else max(wide * 2 // (len(shown) + 1), 240)
    pictures = []
    words = ""
    for choice in shown:
        cloth = cloth_of(pattern, walk, choice.colours, seed)
        view = view_of(cloth, proportion_of(pattern, walk), zoom, each)
        pictures.append((choice.name, draw(cloth, view)))
        words = words or cloth_words(pattern, walk, cloth, zoom is not None)
    if len(shown) > 1:
        names = [c.name or f"palette {at}" for at, c in enumerate(shown, 1)]
        words += f" Side by side in other colours: {', '.join(names)}."
    sheet = side_by_side(pictures) if len(pictures) > 1 or shown[0].name else pictures[0][1]
    return Fabric(png(sheet, words, palette), sheet.shape[1], sheet.shape[0], words)


def cloth_words(pattern: Pattern, walk: Walk, cloth: Cloth, corner: bool) -> str:
    """What the picture shows, for those who do not see it."""
    piece = walk.piece.name.text.replace("-", " ").replace("_", " ")
    title = f" of {pattern.title.text}" if pattern.title else ""
    size = f" in size {pattern.sizes[walk.size]}" if len(pattern.sizes) > 1 else ""
    what = "A corner of the" if corner else "The"
    opened = ", opened flat" if walk.piece.in_round else ""
    head = (
        f"{what} {piece}{title}{size} as it looks from the right side{opened}: "
        f"{cloth.stitches} stitches at its widest, {cloth.rows} rows high."
    )
    found = []
    for place, name in enumerate(cloth.names):
        row = _first_row(cloth, place)
        if name and row is not None:
            found.append((row, name))
    if not found:
        return head
    texts: dict[str, int] = {}
    for row, name in sorted(found):
        texts.setdefault(name, row)
    told = [
        f"{name} from {'the cast-on edge' if row == 0 else f'row {row}'}"
        for name, row in texts.items()
    ]
    return f"{head} From below upwards: {', '.join(told)}."


def _first_row(cloth: Cloth, colour: int) -> int | None:
    """The first row that shows a colour; 0 is the cast-on edge."""
    import numpy as np

    rows = ((cloth.main == colour) & (cloth.kind > 0)).any(axis=1)
    return int(np.argmax(rows)) if rows.any() else None
