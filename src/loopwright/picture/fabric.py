"""The cloth picture from end to end: which piece, which colours, the PNG, and its words."""

from __future__ import annotations

from collections.abc import Sequence

from loopwright.count.measure import width_gauge
from loopwright.count.walk import Walk, Worked
from loopwright.model.pattern import Pattern
from loopwright.notation.names import as_words
from loopwright.picture.cloth import Cloth, cloth_of
from loopwright.picture.palettes import Choice
from loopwright.picture.raster import draw, png, side_by_side, view_of
from loopwright.picture.wording import PLAIN, Wording
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
    told: Wording = PLAIN,
) -> Fabric:
    """Draw a piece in one size, once for each of `choices` (none: in its own colours).

    `zoom` gives a corner in so many pixels a stitch; else the whole piece about `wide` pixels wide;
    `palette` keeps the PNG to so many colours, `told` says what it shows. Raises TooLarge for a
    piece of too many stitches.
    """
    shown = list(choices) or [Choice("", {})]
    each = wide if len(shown) == 1 else max(wide * 2 // (len(shown) + 1), 240)
    pictures = []
    words = ""
    for choice in shown:
        cloth = cloth_of(pattern, walk, choice.colours, seed)
        view = view_of(cloth, proportion_of(pattern, walk), zoom, each)
        pictures.append((choice.name, draw(cloth, view)))
        words = words or cloth_words(pattern, walk, cloth, zoom is not None, told)
    if len(shown) > 1:
        names = [c.name or f"palette {at}" for at, c in enumerate(shown, 1)]
        words += f" Side by side in other colours: {', '.join(names)}."
    sheet = side_by_side(pictures) if len(pictures) > 1 or shown[0].name else pictures[0][1]
    return Fabric(png(sheet, words, palette), sheet.shape[1], sheet.shape[0], words)


def cloth_words(
    pattern: Pattern, walk: Walk, cloth: Cloth, corner: bool, words: Wording = PLAIN
) -> str:
    """What the picture shows, for those who do not see it."""
    if corner:
        message = (
            "A corner of the {piece}{title}{size} as it looks from the right side{opened}: "
            "{stitches} at its widest, {rows} high."
        )
    else:
        message = (
            "The {piece}{title}{size} as it looks from the right side{opened}: {stitches} at its "
            "widest, {rows} high."
        )
    if all(e.round for e in walk.events if isinstance(e, Worked)):
        rows = words.many("{n} round", "{n} rounds", cloth.rows)
    else:
        rows = words.many("{n} row", "{n} rows", cloth.rows)
    title, size = pattern.title, pattern.sizes[walk.size]
    head = words.say(
        message,
        piece=as_words(walk.piece.name.text),
        title=words.say(" of {title}", title=title.text) if title else "",
        size=words.say(" in size {size}", size=size) if len(pattern.sizes) > 1 else "",
        opened=words.text(", opened flat") if walk.piece.in_round else "",
        stitches=words.many("{n} stitch", "{n} stitches", cloth.stitches),
        rows=rows,
    )
    head = f"{head[:1].upper()}{head[1:]}"
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
    told = ", ".join(_from(name, row, walk, words) for name, row in texts.items())
    return f"{head} {words.say('From below upwards: {shades}.', shades=told)}"


def _from(shade: str, row: int, walk: Walk, words: Wording) -> str:
    """Where a shade is first seen; row 0 is the cast-on edge."""
    if row == 0:
        return words.say("{shade} from the cast-on edge", shade=shade)
    message = "{shade} from row {n}"
    if walk.is_round(row):
        message = "{shade} from round {n}"
    return words.say(message, shade=shade, n=row)


def _first_row(cloth: Cloth, colour: int) -> int | None:
    """The first row that shows a colour; 0 is the cast-on edge."""
    import numpy as np

    rows = ((cloth.main == colour) & (cloth.kind > 0)).any(axis=1)
    return int(np.argmax(rows)) if rows.any() else None
