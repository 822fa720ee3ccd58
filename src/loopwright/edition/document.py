"""What a rendered pattern says, before any layout: plain words in frozen dataclasses.

`edition.words` makes a `Document` from the checked model; the templates only lay it out.
Every string here is final text for the reader (already sized, already in both units); no
template computes a number or chooses a word.
"""

from __future__ import annotations

from loopwright.edition.catalogue import ENGLISH, Catalogue
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class Table:
    """A small table; `head` and each of `rows` have the same length. `caption` may be empty."""

    caption: str
    head: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]


@dataclass(frozen=True, slots=True)
class Shade:
    """A shade in the materials list; `colours` are #rrggbb (several for self-striping yarn).

    `needed` is the length that is knit of it, `weighs` its weight, for each size and in both units,
    without any margin.
    """

    name: str
    yarn: str
    strand: str
    amount: str
    colours: tuple[str, ...]
    needed: str = ""
    weighs: str = ""


@dataclass(frozen=True, slots=True)
class Abbreviation:
    """`stitches` says what it takes and makes where that helps, else it is empty."""

    short: str
    meaning: str
    stitches: str


@dataclass(frozen=True, slots=True)
class Line:
    """One instruction.

    `kind` is one of ``row`` (a labelled row or round), ``do`` (cast on, bind off, join),
    ``repeat`` (``Rep Rows 3–6 seven more times.``) and ``note`` (the designer's words).
    `label` is ``Row 3 (RS):`` or empty; `count` is ``(240 sts)`` or empty. Joined with single
    spaces the three are the line of the text edition. `strand` is the strand's name where the
    row names one and the pattern has more than one, `new_strand` tells that the row before it
    used another, `colours` are the #rrggbb of the shade the strand begins with (or empty).
    `tally` asks for boxes to tick off on paper beside a ``repeat`` line: how often it is worked,
    one number, or one for each size in order; empty draws none. `repeats` is how many of the lines
    right before a ``repeat`` line it repeats; 0 where they stand elsewhere.
    """

    kind: str
    label: str
    text: str
    count: str
    strand: str = ""
    new_strand: bool = False
    colours: tuple[str, ...] = ()
    tally: tuple[int, ...] = ()
    repeats: int = 0


@dataclass(frozen=True, slots=True)
class Section:
    """A heading and the lines under it. `level` 2 is a piece, 3 a section inside a piece.

    `motifs` are the keys of the motifs that are written out here for the first time.
    """

    heading: str
    level: int
    lines: tuple[Line, ...]
    motifs: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class FollowRow:
    """A row to work, where it is printed: the places of its section and of its line there.

    `motif` and `row` (from 0) find it in the motif's chart; `motif` is empty where it has none.
    """

    section: int
    line: int
    motif: str = ""
    row: int = 0


@dataclass(frozen=True, slots=True)
class FollowStep:
    """Rows to work one after the other, `times` times: what a maker ticks off.

    `tick` is the line that is ticked, by the places of section and line (None: each row's own).
    `counted` tells rows from steps between them (cast on, join); `piece` counts from 0; `before` is
    how often the motif was worked whole in this run before the step; `round` tells rounds from
    rows.
    """

    rows: tuple[FollowRow, ...]
    times: int = 1
    tick: tuple[int, int] | None = None
    counted: bool = True
    piece: int = 0
    before: int = 0
    round: bool = False


@dataclass(frozen=True, slots=True)
class KeyLine:
    """A line of a chart's key: its square as an ``<svg>``, and what it means on each side.

    A side on which the symbol is not made has an empty meaning.
    """

    svg: str
    rs: str
    ws: str


@dataclass(frozen=True, slots=True)
class ChartPicture:
    """A chart: its strips as ``<svg>`` elements, from the first columns and rows on.

    Each strip stands behind the words that say which part it is (empty for the whole). Each row of
    it has a band of the class ``row`` with ``data-row``, its number. `framed` tells that it
    frames a repeat, `sided` that the key needs a column for each side, `wide` that the key has no
    room beside it. `words` says what the chart shows; `motif` is the motif's key in the source.
    """

    title: str
    strips: tuple[tuple[str, str], ...]
    key: tuple[KeyLine, ...]
    framed: bool
    sided: bool
    wide: bool
    words: str
    motif: str = ""


@dataclass(frozen=True, slots=True)
class Uncharted:
    """A motif (by its key in the source) of which no chart can be drawn: what is said of that."""

    motif: str
    words: str


@dataclass(frozen=True, slots=True)
class SchematicPicture:
    """A piece's outline as an ``<svg>``, its measures for every size, and how it is drawn."""

    title: str
    svg: str
    measures: Table
    note: str


@dataclass(frozen=True, slots=True)
class ClothPicture:
    """The cloth as a PNG in a ``data:`` address, its size in pixels, and what it shows."""

    src: str
    width: int
    height: int
    words: str


@dataclass(frozen=True, slots=True)
class Personal:
    """The first page of a reader's edition: what was asked, what it was made for, what changed.

    `asked`, `made_for` and `notes` are sentences; `changes` has a row for each figure that is
    another now, its first cell empty of a value where it is a heading.
    """

    asked: tuple[str, ...]
    made_for: tuple[str, ...]
    changes: Table | None
    notes: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Document:
    """A whole pattern for a reader, in reading order.

    `language` is a BCP 47 tag; `sizes` are the size names in order (empty where there is one
    size only); `finished` is the table of finished measurements, a row per size. `notices` are
    lines such as that measures are estimates until a swatch says so; `cautions` are safety lines,
    `care` the care of the fibre, `substitution` what to look for in another yarn, `skills` what a
    maker must know. `catalogue` has the words of headings.
    `follow` is the order of work, row by row, of a document for one size; empty in others.
    The pictures are put in by `edition.pictures`, for the editions that can show them.
    """

    language: str
    title: str
    designer: str
    summary: str
    level: str
    sizes: tuple[str, ...]
    finished: Table | None
    gauge: tuple[str, ...]
    needles: tuple[str, ...]
    yarns: tuple[str, ...]
    shades: tuple[Shade, ...]
    notions: tuple[str, ...]
    notes: tuple[str, ...]
    abbreviations: tuple[Abbreviation, ...]
    sections: tuple[Section, ...]
    cautions: tuple[str, ...]
    notices: tuple[str, ...]
    charts: tuple[ChartPicture, ...] = ()
    uncharted: tuple[Uncharted, ...] = ()
    schematics: tuple[SchematicPicture, ...] = ()
    cloth: ClothPicture | None = None
    personal: Personal | None = None
    care: tuple[str, ...] = ()
    substitution: tuple[str, ...] = ()
    skills: tuple[str, ...] = ()
    follow: tuple[FollowStep, ...] = ()
    catalogue: Catalogue = ENGLISH
