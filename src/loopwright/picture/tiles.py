"""How single loops look: for each kind of stitch the parts of its two yarns and the light on them.

A tile is an array (height, width, 3): the part of the main yarn, of the other yarn, and the light.
Coordinates run from 0 to 1, x from the left, y upwards; each pixel is the mean of a few points.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from loopwright.picture import cloth

if TYPE_CHECKING:
    from numpy import ndarray

_POINTS = 5
_GAP = 0.52
"""The light in the gaps between yarns, as a part of the full light."""


_LEAN = 0.35
"""Under a leaning loop lies the one it covers: the gap beside it is not so deep."""


def tiles(height: int, width: int) -> ndarray:
    """The tiles of all kinds, in the order of `cloth`'s numbers: (kinds, height, width, 3)."""
    import numpy as np

    fine_y, fine_x = height * _POINTS, width * _POINTS
    y = (1 - (np.arange(fine_y) + 0.5) / fine_y)[:, None] * np.ones((1, fine_x))
    x = ((np.arange(fine_x) + 0.5) / fine_x)[None, :] * np.ones((fine_y, 1))
    made = []
    for kind in range(cloth.EDGE + 1):
        tile = np.stack(_tile(kind, x, y), axis=-1)
        made.append(tile.reshape(height, _POINTS, width, _POINTS, 3).mean(axis=(1, 3)))
    return np.asarray(made, dtype=np.float32)


def _tile(kind: int, x: Any, y: Any) -> tuple[Any, Any, Any]:
    import numpy as np

    none = np.zeros_like(x)
    full = np.ones_like(x)
    if kind == cloth.NOTHING:
        return none, none, full
    if kind == cloth.PURL:
        return _purl(x, y)
    if kind == cloth.HOLE:
        return _hole(x, y)
    if kind == cloth.FLOAT:
        return _float(x, y)
    if kind == cloth.EDGE:
        light = np.maximum(_bead(x, y, 0.27, 0.5, 0.3, 0.42), _bead(x, y, 0.77, 0.5, 0.3, 0.42))
        return full, none, _lit(light)
    if kind == cloth.BOBBLE:
        return full, none, _lit(_bead(x, y, 0.5, 0.55, 0.6, 0.6))
    return full, none, _lit(_legs(kind, x, y))


def _lit(shape: Any) -> Any:
    """Light of a round yarn: full on its middle, little in the gap beside it."""
    return _GAP + (1.06 - _GAP) * shape


def _leg(x: Any, y: Any, foot: float, head: float, thick: float) -> Any:
    """How near a point lies to the middle of a leg that runs up from `foot` to `head`."""
    import numpy as np

    middle = foot + (head - foot) * y
    away = np.abs(x - middle) / thick
    return np.sqrt(np.clip(1 - away**2, 0, 1))


def _legs(kind: int, x: Any, y: Any) -> Any:
    import numpy as np

    if kind == cloth.RIGHT:
        return np.maximum(
            np.maximum(_leg(x, y, 0.25, 0.9, 0.27), _leg(x, y, 0.7, 1.2, 0.25)), _LEAN
        )
    if kind == cloth.LEFT:
        return np.maximum(
            np.maximum(_leg(x, y, 0.75, 0.1, 0.27), _leg(x, y, 0.3, -0.2, 0.25)), _LEAN
        )
    if kind == cloth.SLIPPED:
        return np.maximum(_leg(x, y, 0.34, 0.2, 0.2), _leg(x, y, 0.66, 0.8, 0.2))
    if kind == cloth.TWISTED:
        return np.maximum(_leg(x, y, 0.3, 0.78, 0.22), _leg(x, y, 0.7, 0.22, 0.22) * 0.85)
    return np.maximum(_leg(x, y, 0.42, 0.13, 0.24), _leg(x, y, 0.58, 0.87, 0.24))


def _bead(x: Any, y: Any, cx: float, cy: float, rx: float, ry: float) -> Any:
    import numpy as np

    away = ((x - cx) / rx) ** 2 + ((y - cy) / ry) ** 2
    return np.sqrt(np.clip(1 - away, 0, 1))


def _purl(x: Any, y: Any) -> tuple[Any, Any, Any]:
    """The head of the loop below (other yarn) arches over the feet of this one (main yarn)."""
    import numpy as np

    head = _bead(x, y, 0.5, 0.68, 0.5, 0.3)
    feet = np.maximum(_bead(x, y, 0.0, 0.34, 0.5, 0.34), _bead(x, y, 1.0, 0.34, 0.5, 0.34))
    over = (head > feet).astype(float)
    return 1 - over, over, _lit(np.maximum(head, feet))


def _float(x: Any, y: Any) -> tuple[Any, Any, Any]:
    """A long loop (main yarn) with the strand of the row lying across it (other yarn)."""
    import numpy as np

    legs = _legs(cloth.SLIPPED, x, y)
    bar = np.sqrt(np.clip(1 - ((y - 0.5) / 0.3) ** 2, 0, 1))
    over = (bar > 0).astype(float)
    return 1 - over, over, _lit(np.where(over > 0, bar, legs * 0.9))


def _hole(x: Any, y: Any) -> tuple[Any, Any, Any]:
    """A yarn over: the ground shows through, with yarn round it."""
    import numpy as np

    away = np.sqrt(((x - 0.5) / 0.5) ** 2 + ((y - 0.5) / 0.56) ** 2)
    yarn = (away > 0.62).astype(float)
    return yarn, np.zeros_like(x), np.where(yarn > 0, 0.9, 1.0)
