"""Capitals and figures as plain strokes, for the words that stand inside a chart's squares.

Drawn rather than set, so that a chart needs no font and a word is a path like every symbol.
"""

from __future__ import annotations

# Each letter on a field 4 wide and 6 high, y downwards: its lines as points of two digits.
_LETTERS = {
    "A": ["06 20 46", "13 33"],
    "B": ["00 06 36 45 44 33 03", "33 42 41 30 00"],
    "C": ["41 30 10 01 05 16 36 45"],
    "D": ["00 06 26 44 42 20 00"],
    "E": ["40 00 06 46", "03 33"],
    "F": ["40 00 06", "03 33"],
    "G": ["41 30 10 01 05 16 36 45 43 23"],
    "H": ["00 06", "40 46", "03 43"],
    "I": ["20 26"],
    "J": ["40 45 36 16 05"],
    "K": ["00 06", "40 03 46"],
    "L": ["00 06 46"],
    "M": ["06 00 23 40 46"],
    "N": ["06 00 46 40"],
    "O": ["10 01 05 16 36 45 41 30 10"],
    "P": ["06 00 30 41 42 33 03"],
    "Q": ["10 01 05 16 36 45 41 30 10", "24 46"],
    "R": ["06 00 30 41 42 33 03", "23 46"],
    "S": ["41 30 10 01 02 13 33 44 45 36 16 05"],
    "T": ["00 40", "20 26"],
    "U": ["00 05 16 36 45 40"],
    "V": ["00 26 40"],
    "W": ["00 16 23 36 40"],
    "X": ["00 46", "40 06"],
    "Y": ["00 23 40", "23 26"],
    "Z": ["00 40 06 46"],
    "0": ["10 01 05 16 36 45 41 30 10"],
    "1": ["11 20 26", "16 36"],
    "2": ["01 10 30 41 42 06 46"],
    "3": ["01 10 30 41 42 33 44 45 36 16 05", "13 33"],
    "4": ["36 30 04 44"],
    "5": ["40 00 03 33 44 45 36 06"],
    "6": ["41 30 10 01 05 16 36 45 44 33 03"],
    "7": ["00 40 16"],
    "8": ["13 02 01 10 30 41 42 33 13 04 05 16 36 45 44 33"],
    "9": ["05 16 36 45 41 30 10 01 02 13 43"],
    "-": ["13 33"],
}

_ADVANCE = 5.6


def letters(
    text: str, left: float, top: float, width: float, height: float
) -> list[tuple[float, float, str]]:
    """The strokes of a word set in the middle of a field, each a start and relative commands."""
    strokes = []
    for points in outlines(text, left, top, width, height):
        x, y = points[0]
        commands = []
        for px, py in points[1:]:
            commands.append(f"l{px - x:.2f} {py - y:.2f}")
            x, y = px, py
        strokes.append((*points[0], "".join(commands)))
    return strokes


def outlines(
    text: str, left: float, top: float, width: float, height: float
) -> list[list[tuple[float, float]]]:
    """The same strokes as points.

    A word too long for the field is made narrower; a sign that has no strokes leaves a gap.
    """
    shown = [sign for sign in text.upper() if sign.isalnum() or sign in "- "]
    if not shown:
        return []
    wide = _ADVANCE * len(shown) - (_ADVANCE - 4)
    down = height / 6
    across = min(down, width / wide)
    start = left + (width - wide * across) / 2
    lines = []
    for index, sign in enumerate(shown):
        x = start + index * _ADVANCE * across
        for line in _LETTERS.get(sign, ()):
            lines.append([(x + int(p[0]) * across, top + int(p[1]) * down) for p in line.split()])
    return lines
