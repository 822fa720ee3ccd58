"""The boxes that are ticked off on paper beside a repeat, as one drawing.

A box that is an element of the page costs a layout as much as a word, and a long repeat has a
hundred of them.
"""

from __future__ import annotations

_BOX, _STEP, _FIVE, _LINE = 29, 36, 195, 44
"""Tenths of a millimetre: a box, from a box to the next, from five to the next five, a line."""
_FIVES = 8
"""In a line, so that a line holds forty; it fits A4 and Letter behind the name of a size."""
_STROKE = 2.5


def ticks(number: int) -> tuple[float, float, str, str]:
    """The boxes for a repeat worked `number` times, in groups of five.

    Gives the width and height in millimetres, the ``viewBox`` and the data of the one path.
    """
    fives, rest = divmod(number, 5)
    lines = -(-number // (5 * _FIVES))
    wide = _FIVES * _FIVE if lines > 1 else fives * _FIVE + rest * _STEP
    corners = (
        (place // 5 % _FIVES * _FIVE + place % 5 * _STEP, place // (5 * _FIVES) * _LINE)
        for place in range(number)
    )
    half = _STROKE / 2
    path = "".join(f"M{x} {y}h{_BOX}v{_BOX}h-{_BOX}z" for x, y in corners)
    return wide / 10, lines * _LINE / 10, f"-{half} -{half} {wide} {lines * _LINE}", path
