"""Schematics: the outline of each piece to scale, letters on it, and a table of what they measure.

Only letters stand in the drawing; the figures for every size are in the table, so that no text can
overlap another, however narrow a piece is.
"""

from __future__ import annotations

from collections.abc import Sequence
from html import escape

from loopwright.count.walk import Walk
from loopwright.fit.units import cm, inches
from loopwright.model.pattern import Pattern
from loopwright.notation.hidden import isolated
from loopwright.notation.names import as_heading
from loopwright.picture.outline import Outline, outline_of
from loopwright.picture.svg import FACE, FRAME, INK, QUIET
from loopwright.picture.symbols import number
from loopwright.picture.wording import PLAIN, Wording
from loopwright.record import dataclass

_BOX = 50.0  # the longer side of a drawing, in its units; each is a millimetre on paper
_LEAST = 12.0
_ROOM = 13.0  # beside or below a piece, for a letter's line
_FIGURE = 2.4  # room for a letter of the table, which every usual font keeps within
_FILL = "#eff4f4"


@dataclass(frozen=True, slots=True)
class Measure:
    """What a letter measures: in words, and in millimetres for each size (None: not known)."""

    letter: str
    words: str
    mm: tuple[float | None, ...]


@dataclass(frozen=True, slots=True)
class Schematic:
    """A piece: the outline of its first size, what is measured, and a word on how it is drawn."""

    piece: str
    sizes: tuple[str, ...]
    outline: Outline
    measures: tuple[Measure, ...]
    note: str

    @property
    def title(self) -> str:
        return as_heading(self.piece)


def schematics_of(
    pattern: Pattern, walks: Sequence[Walk], sizes: Sequence[int]
) -> tuple[Schematic, ...]:
    """The schematics of all pieces whose measures the gauge gives, for some sizes."""
    found = []
    for piece in pattern.pieces:
        mine = {walk.size: walk for walk in walks if walk.piece is piece}
        outlines = [outline_of(pattern, mine[s]) if s in mine else None for s in sizes]
        shown = next((outline for outline in outlines if outline is not None), None)
        if shown is None:
            continue
        names = tuple(pattern.sizes[s] for s in sizes) if len(pattern.sizes) > 1 else ()
        found.append(
            Schematic(piece.name.text, names, shown, _measures(shown, outlines), _note(shown))
        )
    return tuple(found)


def _note(outline: Outline) -> str:
    if outline.disc:
        return "Drawn opened flat from its middle."
    if outline.around:
        return "Drawn as a tube laid flat: half of the way round is seen."
    if not outline.is_even:
        return (
            "Drawn row above row, as wide as the stitches of each row are at the gauge; a piece "
            "shaped inside its rows takes its own form when it is blocked."
        )
    return ""


def _measures(shown: Outline, outlines: Sequence[Outline | None]) -> tuple[Measure, ...]:
    def row(letter: str, words: str, name: str, factor: float = 1.0) -> Measure:
        return Measure(
            letter,
            words,
            tuple(None if o is None else factor * getattr(o, name) for o in outlines),
        )

    if shown.disc:
        return (row("A", "across", "height", 2.0),)
    way = "around, at the" if shown.around else "width, at the"
    if shown.is_even:
        first = "around" if shown.around else "width"
        return (row("A", first, "lower"), row("B", "length", "height"))
    each = "round" if shown.around else "row"
    edges = [row("A", f"{way} cast-on edge", "lower")]
    if shown.widest > max(shown.lower, shown.upper) * 1.005:
        edges.append(row("B", f"{way} widest {each}", "widest"))
    edges.append(row("BC"[len(edges) - 1], f"{way} last {each}", "upper"))
    edges.append(row("BCD"[len(edges) - 1], "length", "height"))
    return tuple(edges)


def schematic_words(
    schematic: Schematic, words: Wording = PLAIN, inches_first: bool = False
) -> str:
    """What the drawing shows, for those who do not see it."""
    figures = words.text("; ").join(
        words.say(
            "{name}: {facts}",
            name=f"{m.letter}, {words.text(m.words)}",
            facts=words.figures(measure_text(m.mm[0], inches_first)),
        )
        for m in schematic.measures
    )
    size = ""
    if len(schematic.sizes) > 1:
        size = words.say(" in size {size}", size=schematic.sizes[0])
    return words.say(
        "Schematic of {title}{size}: {shape}, to scale. {figures}.",
        title=schematic.title,
        size=size,
        shape=words.text(_shape(schematic.outline)),
        figures=figures,
    )


SHAPES = (
    "a disc worked from its middle",
    "a disc worked towards its middle",
    "a tube",
    "a rectangle",
    "a shape that grows wider from the cast-on edge",
    "a shape that grows narrower towards the last row",
    "a shape that grows narrower towards the last round",
    "a shape whose edges step in and out",
)
"""The messages of `_shape`."""


def _shape(outline: Outline) -> str:
    if outline.disc:
        return SHAPES[0] if outline.upper > outline.lower else SHAPES[1]
    if outline.is_even:
        return SHAPES[2] if outline.around else SHAPES[3]
    if outline.upper > outline.lower * 1.005:
        return SHAPES[4]
    if outline.upper < outline.lower * 0.995:
        return SHAPES[6] if outline.around else SHAPES[5]
    return SHAPES[7]


def measure_text(mm: float | None, inches_first: bool = False) -> str:
    """``110 cm / 43¼ in``, or a dash."""
    if mm is None:
        return "–"
    return f"{inches(mm)} / {cm(mm)}" if inches_first else f"{cm(mm)} / {inches(mm)}"


def schematic_svg(schematic: Schematic, words: Wording = PLAIN, inches_first: bool = False) -> str:
    """The drawing as an ``<svg>`` element, at most about 8 cm wide and high on paper."""
    told = schematic_words(schematic, words, inches_first)
    body, wide, high = _drawn(schematic)
    return (
        f'<svg class="schematic" xmlns="http://www.w3.org/2000/svg" role="img" '
        f'width="{number(wide)}mm" height="{number(high)}mm" '
        f'viewBox="0 0 {number(wide)} {number(high)}" font-family="{FACE}">'
        f"<title>{escape(told)}</title>{body}</svg>"
    )


def _drawn(schematic: Schematic) -> tuple[str, float, float]:
    outline = schematic.outline
    if outline.disc:
        return _disc(schematic)
    part = 0.5 if outline.around else 1.0
    true_wide, true_high = outline.widest * part, outline.height
    scale = _BOX / max(true_wide, true_high)
    wide, high = true_wide * scale, true_high * scale
    above = any(_edge(measure) == "last" for measure in schematic.measures)
    left, top = 2.0, _ROOM - 3 if above else 2.0
    middle = left + max(wide, _LEAST) / 2
    right_side = [
        (middle + w * part * scale / 2, top + high - h * scale) for h, w in outline.points
    ]
    left_side = [(2 * middle - x, y) for x, y in reversed(right_side)]
    d = "M" + "L".join(f"{number(x)} {number(y)}" for x, y in (*right_side, *left_side)) + "z"
    parts = [
        f'<path class="piece" d="{d}" fill="{_FILL}" stroke="{INK}" stroke-width="0.5" '
        'stroke-linejoin="round"/>'
    ]
    bottom = top + high
    for measure in schematic.measures:
        if measure.words == "length":
            x = middle + max(wide, _LEAST) / 2 + 6
            parts.append(_upright(x, top, bottom, measure.letter))
            continue
        edge = _edge(measure)
        if edge == "last":
            half, y = outline.upper * part * scale / 2, top - 5
        elif edge == "widest":
            half = wide / 2
            place = next(h for h, w in outline.points if w == outline.widest)
            y = bottom - place * scale
            y = min(max(y, top + 4), bottom - 4) if high > 16 else (top + bottom) / 2
        else:
            half, y = outline.lower * part * scale / 2, bottom + 5
        parts.append(_level(middle - half, middle + half, y, measure.letter))
    return "".join(parts), middle + max(wide, _LEAST) / 2 + 11, top + high + _ROOM - 3


def _edge(measure: Measure) -> str:
    """``last``, ``widest`` or another word of the row (or round, or edge) that is measured."""
    return measure.words.rsplit(" ", 2)[-2] if " " in measure.words else ""


def _disc(schematic: Schematic) -> tuple[str, float, float]:
    r = _BOX / 2 * 0.8
    middle = _ROOM / 2 + r
    circle = (
        f'<circle class="piece" cx="{number(middle)}" cy="{number(middle)}" r="{number(r)}" '
        f'fill="{_FILL}" stroke="{INK}" stroke-width="0.5"/>'
    )
    letter = schematic.measures[0].letter
    body = circle + _level(middle - r, middle + r, middle, letter)
    return body, 2 * middle, 2 * middle


def _level(left: float, right: float, y: float, letter: str) -> str:
    """A measure from left to right, its letter in the middle of it on a plain ground."""
    x = (left + right) / 2
    return (
        f'<path class="measure" d="M{number(left)} {number(y - 1.4)}v2.8M{number(left)} {number(y)}'
        f'H{number(right)}M{number(right)} {number(y - 1.4)}v2.8" fill="none" stroke="{FRAME}" '
        f'stroke-width="0.4"/>{_letter(x, y, letter)}'
    )


def _upright(x: float, top: float, bottom: float, letter: str) -> str:
    return (
        f'<path class="measure" d="M{number(x - 1.4)} {number(top)}h2.8M{number(x)} {number(top)}'
        f'V{number(bottom)}M{number(x - 1.4)} {number(bottom)}h2.8" fill="none" stroke="{FRAME}" '
        f'stroke-width="0.4"/>{_letter(x, (top + bottom) / 2, letter)}'
    )


def _letter(x: float, y: float, letter: str) -> str:
    return (
        f'<circle class="ground" cx="{number(x)}" cy="{number(y)}" r="3" fill="#ffffff" '
        f'stroke="{FRAME}" stroke-width="0.4"/>'
        f'<text class="label" x="{number(x)}" y="{number(y + 1.4)}" font-size="4" '
        f'font-weight="600" text-anchor="middle" fill="{INK}">{escape(letter)}</text>'
    )


def schematic_sheet(title: str, schematics: Sequence[Schematic], inches_first: bool = False) -> str:
    """All schematics under one another, each with its table of measures; a whole SVG file."""
    parts: list[str] = []
    y, width = 12.0, 120.0
    parts.append(_line(6, y, title, 6, INK, True))
    for schematic in schematics:
        y += 12
        parts.append(_line(6, y, schematic.title, 5, INK, True))
        body, wide, high = _drawn(schematic)
        y += 3
        parts.append(f'<g transform="translate(6 {number(y)})">{body}</g>')
        y += high + 5
        width = max(width, wide + 12)
        heads = schematic.sizes or ("",)
        first = 8 + (max(len(m.words) for m in schematic.measures) + 3) * _FIGURE
        each = 19 * _FIGURE
        if schematic.sizes:
            for index, head in enumerate(heads):
                parts.append(_line(first + each * index, y, head[:18], 3.4, QUIET))
            y += 5.5
        for measure in schematic.measures:
            parts.append(_line(6, y, f"{measure.letter}  {measure.words}", 3.6, INK))
            for index, mm in enumerate(measure.mm):
                text = measure_text(mm, inches_first)
                parts.append(_line(first + each * index, y, text, 3.6, INK))
            y += 5.5
        width = max(width, first + each * len(heads))
        for line in _short_lines(schematic.note, int((width - 12) / 1.9)):
            y += 1
            parts.append(_line(6, y, line, 3.2, QUIET))
            y += 3.6
    words = " ".join(schematic_words(s, PLAIN, inches_first) for s in schematics)
    high = y + 8
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" role="img" width="{number(width)}mm" '
        f'height="{number(high)}mm" viewBox="0 0 {number(width)} {number(high)}" '
        f'font-family="{FACE}"><title>{escape(f"Schematic: {title}")}</title>'
        f'<desc>{escape(words)}</desc><rect width="100%" height="100%" fill="#ffffff"/>'
        f"{''.join(parts)}</svg>\n"
    )


def _short_lines(text: str, width: int) -> list[str]:
    from loopwright.picture.sheet import wrapped

    return wrapped(text, max(width, 30)) if text else []


def _line(x: float, y: float, text: str, size: float, colour: str, bold: bool = False) -> str:
    weight = ' font-weight="600"' if bold else ""
    return (
        f'<text x="{number(x)}" y="{number(y)}" font-size="{number(size)}" fill="{colour}"{weight}>'
        f"{escape(isolated(text))}</text>"
    )
