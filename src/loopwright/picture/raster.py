"""The cloth as a picture: tiles laid by one gather over arrays, then a PNG."""

from __future__ import annotations

from collections.abc import Sequence
from io import BytesIO
from math import ceil
from typing import TYPE_CHECKING

from loopwright.picture.cloth import Cloth
from loopwright.picture.lettering import outlines
from loopwright.picture.tiles import tiles
from loopwright.record import dataclass

if TYPE_CHECKING:
    from numpy import ndarray
    from PIL.Image import Image

GROUND = (255, 255, 255)
_INK = (27, 29, 31)
_MOST_SIDE = 12_000
_SWATCH = 30
_FINE, _MOST_FINER = 4.0, 3
_LABEL = 26
_BETWEEN = 24
_BETTERED = 3  # rounds in which the chosen colours are moved to where they are wanted


@dataclass(frozen=True, slots=True)
class View:
    """How a cloth is shown: pixels a stitch across and a row up; `swatch` cuts a corner out."""

    across: float
    up: float
    swatch: bool = False


def view_of(cloth: Cloth, proportion: float, zoom: int | None, wide: int = 960) -> View:
    """A view of the whole piece, about `wide` pixels, or of a corner at `zoom` pixels a stitch.

    `proportion` is the height of a row as a part of the width of a stitch, by the gauge.
    """
    if zoom is not None:
        return View(float(zoom), zoom * proportion, True)
    rows, stitches = cloth.kind.shape
    across = min(wide / stitches, 1.5 * wide / (rows * proportion), 14.0)
    return View(across, across * proportion)


def draw(cloth: Cloth, view: View) -> ndarray:
    """The picture as an array (height, width, 3) of bytes."""
    kind, main, other = cloth.kind, cloth.main, cloth.other
    if view.swatch:
        tall = max(round(_SWATCH * view.across / view.up), 1)
        kind, main, other = (part[:tall, :_SWATCH] for part in (kind, main, other))
    rows, stitches = kind.shape
    high = min(max(round(rows * view.up), 1), _MOST_SIDE)
    wide = min(max(round(stitches * view.across), 1), _MOST_SIDE)
    # Rows of a pixel and a half would beat against the pixels: drawn larger, then made smaller.
    finer = min(max(ceil(_FINE / min(view.up, view.across)), 1), _MOST_FINER)
    big = _gathered(Cloth(kind, main, other, cloth.colours, (), 0, 0), high * finer, wide * finer)
    return _three(big) if finer == 1 else _smaller(big, finer)


def _three(picture: ndarray) -> ndarray:
    """A picture of four bytes a point without the fourth."""
    import numpy as np

    return np.ascontiguousarray(picture[..., :3])


def _smaller(picture: ndarray, finer: int) -> ndarray:
    import numpy as np
    from PIL import Image

    size = (picture.shape[1], picture.shape[0])
    large = Image.frombytes("RGB", size, picture.tobytes(), "raw", "RGBX")
    return np.asarray(large.reduce(finer))


def _gathered(cloth: Cloth, high: int, wide: int) -> ndarray:
    """The cloth on so many pixels: for each the point of the tile that lies there.

    Four bytes a pixel: red, green, blue, and one that says nothing.
    """
    import numpy as np

    kind, main, other = cloth.kind, cloth.main, cloth.other
    rows, stitches = kind.shape
    tile_y, tile_x = max(ceil(high / rows), 1), max(ceil(wide / stitches), 1)
    # Stitches that look alike share a tile; there are few of them, however large the cloth.
    colours = len(cloth.colours)
    code = (kind.astype(np.int64) * colours + main) * colours + other
    known, place = np.unique(code, return_inverse=True)
    place = place.reshape(code.shape)[::-1]  # rows go upwards, pixels downwards
    points = _packed(_painted(known, cloth.colours, tile_y, tile_x))
    y = (np.arange(high) + 0.5) * rows / high
    x = (np.arange(wide) + 0.5) * stitches / wide
    row, column = y.astype(np.int64), x.astype(np.int64)
    inside_y = np.minimum(((y - row) * tile_y).astype(np.int64), tile_y - 1)
    inside_x = np.minimum(((x - column) * tile_x).astype(np.int64), tile_x - 1)
    # One number for each point: where it lies among the points of all tiles.
    at = (place.astype(np.int32) * (tile_y * tile_x))[row][:, column]
    at += (inside_y * tile_x).astype(np.int32)[:, None]
    at += inside_x.astype(np.int32)[None, :]
    picture: ndarray = points.take(at).view(np.uint8).reshape(high, wide, 4)
    return picture


def _packed(tiles: ndarray) -> ndarray:
    """The points of tiles one after the other, each as one number of four bytes: a gather of
    numbers takes a tenth of the time that one of three bytes each does."""
    import numpy as np

    four = np.full((*tiles.shape[:-1], 4), 255, dtype=np.uint8)
    four[..., :3] = tiles
    return four.reshape(-1, 4).view(np.uint32).reshape(-1)


def _painted(known: ndarray, colours: Sequence[str], height: int, width: int) -> ndarray:
    """The tiles of the stitches that occur, in their colours: (stitches, height, width, 3)."""
    import numpy as np

    shapes = tiles(height, width)
    rgb = np.asarray([_rgb(colour) for colour in colours], dtype=np.float32)
    count = len(colours)
    kind, main, other = known // (count * count), known // count % count, known % count
    parts = shapes[kind]
    first, second, light = parts[..., 0:1], parts[..., 1:2], parts[..., 2:3]
    yarn = rgb[main][:, None, None, :] * first + rgb[other][:, None, None, :] * second
    ground = np.asarray(GROUND, dtype=np.float32) * (1 - first - second)
    painted: ndarray = np.clip(yarn * light + ground + 0.5, 0, 255).astype(np.uint8)
    return painted


def _rgb(colour: str) -> tuple[int, int, int]:
    return int(colour[1:3], 16), int(colour[3:5], 16), int(colour[5:7], 16)


def side_by_side(pictures: Sequence[tuple[str, ndarray]]) -> ndarray:
    """Several pictures in a row on one ground, each with its name above it where it has one."""
    import numpy as np

    named = any(name for name, _ in pictures)
    top = _LABEL if named else 0
    high = max(picture.shape[0] for _, picture in pictures) + top
    wide = sum(picture.shape[1] for _, picture in pictures) + _BETWEEN * (len(pictures) - 1)
    sheet = np.full((high, wide, 3), GROUND, dtype=np.uint8)
    x = 0
    for name, picture in pictures:
        tall, across = picture.shape[:2]
        sheet[high - tall : high, x : x + across] = picture
        if name:
            _name(sheet[:top, x : x + across], name)
        x += across + _BETWEEN
    return sheet


def _name(field: ndarray, name: str) -> None:
    """Write a name into a field of the sheet, in the strokes that the charts use."""
    from PIL import Image, ImageDraw

    image = Image.fromarray(field.copy())
    pen = ImageDraw.Draw(image)
    for line in outlines(name, 2, 4, min(field.shape[1] - 4, 11 * len(name)), 13):
        pen.line(line, fill=_INK, width=2, joint="curve")
    field[:] = image


def png(picture: ndarray, words: str, colours: int | None = None) -> bytes:
    """A picture as the bytes of a PNG, its words in it; the same for the same picture.

    `colours` keeps to so many of them, for a page that carries the picture in itself: a cloth has
    few yarns and many lights on them, which no eye tells apart.
    """
    from PIL import Image
    from PIL.PngImagePlugin import PngInfo

    out = BytesIO()
    told = PngInfo()
    told.add_itxt("Description", words, "en")
    image = Image.fromarray(picture)
    if colours is not None:
        image = _of_colours(image, colours)
    small = colours is not None
    image.save(out, "PNG", compress_level=9 if small else 6, optimize=small, pnginfo=told)
    return out.getvalue()


def _of_colours(image: Image, colours: int) -> Image:
    """The image in so many colours, without dithering, which would cost more bytes than it saves.

    Where there are more, they are chosen on every third column, so that no row is passed over.
    """
    from PIL import Image

    cut = Image.Quantize.MEDIANCUT
    none = Image.Dither.NONE
    if image.getcolors(colours) is not None:
        return image.quantize(colours, cut, dither=none)
    third = image.resize((ceil(image.width / 3), image.height), Image.Resampling.NEAREST)
    chosen = third.quantize(colours, cut, kmeans=_BETTERED, dither=none)
    return image.quantize(palette=chosen, dither=none)
