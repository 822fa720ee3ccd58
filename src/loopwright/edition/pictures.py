"""The pictures of a document: charts with their keys, schematics, and the cloth."""

from __future__ import annotations

from base64 import b64encode
from collections.abc import Callable, Sequence

from loopwright.count.walk import Walk
from loopwright.edition.catalogue import ENGLISH, Catalogue
from loopwright.edition.chart_words import PageWords, left_words
from loopwright.edition.document import (
    ChartPicture,
    ClothPicture,
    Document,
    KeyLine,
    SchematicPicture,
    Table,
    Uncharted,
)
from loopwright.edition.words import stands_first
from loopwright.model.pattern import Pattern
from loopwright.picture.cells import charts_of
from loopwright.picture.chart import Chart, Left
from loopwright.picture.cloth import NotOneCloth, TooLarge
from loopwright.picture.fabric import fabric_of
from loopwright.picture.schematic import (
    SHAPES,
    Schematic,
    measure_text,
    schematic_svg,
    schematics_of,
)
from loopwright.picture.strips import Strip, cell_mm, strips_of
from loopwright.picture.svg import chart_svg, key_svg, marks_of
from loopwright.picture.turnwords import notes_of
from loopwright.picture.words import chart_words, strip_words, title_of
from loopwright.record import replace

SCHEMATIC_WORDS = (
    "across",
    "around",
    "width",
    "length",
    "around, at the cast-on edge",
    "around, at the widest round",
    "around, at the last round",
    "width, at the cast-on edge",
    "width, at the widest row",
    "width, at the last row",
    "Drawn opened flat from its middle.",
    "Drawn as a tube laid flat: half of the way round is seen.",
    "Drawn row above row, as wide as the stitches of each row are at the gauge; a piece shaped "
    "inside its rows takes its own form when it is blocked.",
    *SHAPES,
)
"""The messages that come from the picture room: what a letter measures, and how it is drawn."""

_BESIDE_MM = 116.0
"""The widest chart that leaves room for its key beside it on a page."""
_CLOTH_PIXELS, _CLOTH_COLOURS = 560, 128
"""The cloth in a page: 250 dots to the inch where it is 56 mm wide, and light enough to be sent."""


def with_pictures(
    document: Document,
    pattern: Pattern,
    walks: tuple[Walk, ...],
    size: str | None = None,
    units: str | None = None,
    cloth: Callable[[], ClothPicture | None] | None = None,
) -> Document:
    """The document with its pictures, for the sizes that its words are for.

    `cloth` gives a picture of the cloth that is drawn elsewhere (None: it is drawn here).
    """
    sizes = tuple(range(len(pattern.sizes))) if size is None else (pattern.sizes.index(size),)
    charts, left = charts_of(pattern, walks, sizes)
    inches_first = stands_first(pattern, units) == "in"
    words = PageWords(document.catalogue)
    return replace(
        document,
        charts=tuple(_chart(chart, number, words) for number, chart in enumerate(charts, 1)),
        uncharted=_uncharted(document, left),
        schematics=tuple(
            _schematic(found, inches_first, words) for found in schematics_of(pattern, walks, sizes)
        ),
        cloth=cloth() if cloth else cloth_picture(pattern, walks, sizes[0], document.catalogue),
    )


def _uncharted(document: Document, left: Sequence[Left]) -> tuple[Uncharted, ...]:
    """What is said where a chart would stand; nothing of a motif that no section works."""
    worked = {motif for section in document.sections for motif in section.motifs}
    return tuple(
        Uncharted(one.name.casefold(), left_words(one, document.catalogue))
        for one in left
        if one.name.casefold() in worked
    )


def _chart(chart: Chart, number: int, words: PageWords) -> ChartPicture:
    told = chart_words(chart, words)
    strips = strips_of(chart)
    marks = marks_of(chart)
    key = tuple(
        KeyLine(
            key_svg(entry, marks.get(entry.symbol, 0), words=words),
            words.meaning(entry, True),
            words.meaning(entry, False),
        )
        for entry in chart.key
    )
    widest = max(strip.left - strip.right for strip in strips)
    return ChartPicture(
        title_of(chart, words),
        tuple(_strip(chart, strip, f"chart-{number}", told, words) for strip in strips),
        key,
        bool(chart.frames),
        chart.sided,
        (widest + 5) * cell_mm(chart) > _BESIDE_MM,
        told,
        chart.name.casefold(),
    )


def _strip(chart: Chart, strip: Strip, name: str, told: str, words: PageWords) -> tuple[str, str]:
    part = strip_words(chart, strip, words)
    drawn = chart_svg(chart, strip, name, f"{told} {part}." if part else told)
    first = strip.right == strip.bottom == 0
    return (f"{notes_of(chart, words)} {part}".strip() if first else part), drawn


def _schematic(found: Schematic, inches_first: bool, words: PageWords) -> SchematicPicture:
    """The picture of a piece; its table and its note are in the words of the pages."""
    head = [
        words.say("{name}: {facts}", name=m.letter, facts=words.text(m.words))
        for m in found.measures
    ]
    rows = tuple(
        (size, *(words.figures(measure_text(m.mm[place], inches_first)) for m in found.measures))
        for place, size in enumerate(found.sizes or (words.text("One size"),))
    )
    table = Table("", (words.text("Size"), *head), rows)
    note = words.text(found.note) if found.note else ""
    drawn = schematic_svg(found, words, inches_first)
    return SchematicPicture(found.title, drawn, table, note)


def cloth_picture(
    pattern: Pattern, walks: Sequence[Walk], size: int, words: Catalogue = ENGLISH
) -> ClothPicture | None:
    """The cloth of the largest piece; None where it is too large to be drawn, or there is none."""
    mine = [walk for walk in walks if walk.size == size and walk.rows]
    if not mine:
        return None
    walk = max(mine, key=lambda w: w.widest * w.rows)
    try:
        told = PageWords(words)
        fabric = fabric_of(pattern, walk, wide=_CLOTH_PIXELS, palette=_CLOTH_COLOURS, told=told)
    except (TooLarge, NotOneCloth):
        return None
    data = b64encode(fabric.png).decode("ascii")
    return ClothPicture(f"data:image/png;base64,{data}", fabric.width, fabric.height, fabric.words)
