"""What the HTML and text editions share: the template room, the headings, clean strings.

The PDF is the HTML page set on paper, so it has all of this too. Nothing here computes a number
or chooses a word of the pattern; the headings below are the only words the layout adds.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from functools import cache
from importlib import import_module
from pathlib import Path
from typing import TYPE_CHECKING, Any, TypeVar

from loopwright.edition.catalogue import Catalogue
from loopwright.edition.direction import cut, direction, joined
from loopwright.edition.ticks import ticks
from loopwright.record import names_of, replace

if TYPE_CHECKING:
    from jinja2 import BaseLoader, Environment
    from markupsafe import Markup

    from loopwright.edition.document import ChartPicture, Document, Line, Section, Shade

HEADINGS = {
    "by": "by",
    "level": "Level",
    "sizes": "Sizes",
    "finished": "Finished measurements",
    "gauge": "Gauge",
    "needles": "Needles",
    "yarn": "Yarn",
    "notions": "Notions",
    "notes": "Notes",
    "cautions": "For safety",
    "care": "Care",
    "abbreviations": "Abbreviations",
    "name": "Shade",
    "strand": "Strand",
    "amount": "To buy",
    "needed": "Needed, about",
    "weighs": "By weight",
    "substitution": "Another yarn",
    "skills": "Skills",
    "contents": "Contents",
    "charts": "Charts",
    "chart": "Chart",
    "chart_place": "The others stand where their rows are written out.",
    "chart_note": "Read each chart from the bottom up, as the right side shows. "
    "Right-side rows are numbered at the right and read from right to left, "
    "wrong-side rows at the left and read from left to right.",
    "chart_note_round": "Read each chart from the bottom up and every round from right to left.",
    "chart_frame": "Work the stitches in the frame again and again.",
    "symbol": "Symbol",
    "rs": "Right side",
    "ws": "Wrong side",
    "meaning": "Meaning",
    "schematic": "Schematic",
    "personal": "Your copy",
    "boxes": "Boxes to tick, one for each time",
    "asked": "You asked for",
    "made_for": "It was made for",
    "changed": "What changed",
    "colon": ":",
}

# Controls (a terminal escape, a NUL), line and paragraph separators, what turns the direction of
# words, lone surrogates and non-characters: none is text for a reader, and the XML metadata of a
# PDF may not hold them. (The isolates U+2068 and U+2069 are those of `edition.direction`.)
_NOT_TEXT = re.compile("[\x00-\x1f\x7f-\x9f\u2028-\u202e\u2066\u2067\ud800-\udfff\ufffe\uffff]")
_COLOUR = re.compile(r"#[0-9a-fA-F]{6}")
_FIGURE = r"(?:[0-9][0-9.,]*[½¼¾⅓⅔⅛⅜⅝⅞]?|[½¼¾⅓⅔⅛⅜⅝⅞])"
_FIGURES = rf"{_FIGURE}(?: \({_FIGURE}(?:(?:,|\u00a0?;) {_FIGURE})*\))?"
_METRIC, _INCHES = "mm|cm|m|g", "in|Zoll|po|yd|oz"
_MEASURE = re.compile(rf"[0-9][0-9.,]*[½¼¾⅓⅔⅛⅜⅝⅞]? (?:{_METRIC}|{_INCHES}|sts|rows|rnds)\b")
_BOTH = re.compile(
    rf"(?<![0-9.,/])(?P<first>{_FIGURES} (?:(?P<metric>{_METRIC})|{_INCHES})\b) / "
    rf"(?P<second>{_FIGURES} (?(metric)(?:{_INCHES})|(?:{_METRIC}))\b)"
)
# Beyond this a box stands for ten repeats; and far beyond, a row counter serves better than paper.
_MOST_BOXES, _MOST_TENS = 100, 600
# Letters: a longer word in a table may be broken, after each piece.
_LONG_WORD = 30
_PIECE = 12
_VIEW = 6  # rows that are kept on a page with the line that repeats them

_Item = TypeVar("_Item")


def headings(catalogue: Catalogue) -> dict[str, str]:
    """`HEADINGS` in the words of a catalogue."""
    return {key: catalogue.text(text) for key, text in HEADINGS.items()}


def clean(doc: Document) -> Document:
    """The same document with each control character in its strings made a space."""
    cleaned = _mapped(doc, clean_text)
    assert type(cleaned) is type(doc)
    return cleaned


def clean_text(text: str) -> str:
    """A text with each control character in it made a space."""
    return _NOT_TEXT.sub(" ", text)


def set_apart(doc: Document, apart: Callable[[str], str] | None) -> Document:
    """The same document with its right-to-left texts set apart (see `edition.direction`).

    A picture's texts stand alone each, so none is changed.
    """
    if apart is None:
        return doc
    made = _mapped(doc, lambda text: text if text.startswith("<svg") else apart(text))
    assert type(made) is type(doc)
    return made


def _mapped(value: Any, change: Callable[[str], str]) -> Any:
    """A record with each string in it changed; its words of a language stay."""
    if isinstance(value, str):
        return change(value)
    if isinstance(value, tuple):
        return tuple(_mapped(item, change) for item in value)
    names = names_of(value)
    if names is None or isinstance(value, Catalogue):
        return value
    return replace(value, **{name: _mapped(getattr(value, name), change) for name in names})


def dir_of(text: str) -> Markup:
    """`` dir="rtl"`` for an element whose text runs from right to left, else nothing."""
    from markupsafe import Markup

    return Markup(' dir="rtl"' if direction(text) else "")


def colours(values: tuple[str, ...]) -> tuple[str, ...]:
    """Those of `values` that are #rrggbb; nothing else may reach a style attribute."""
    return tuple(value for value in values if _COLOUR.fullmatch(value))


def soft(text: str) -> Markup:
    """`text` escaped, with places to break in words that are too long for a table cell.

    `overflow-wrap: anywhere` would do it too, but WeasyPrint then measures a cell's least width
    letter by letter: a word of 600 letters took it seconds.
    """
    from markupsafe import Markup, escape

    parts: list[Markup] = []
    for word in re.split(r"( +)", text):
        pieces = (
            [word[i : i + _PIECE] for i in range(0, len(word), _PIECE)]
            if len(word) > _LONG_WORD
            else [word]
        )
        parts.append(Markup("<wbr>").join(map(escape, pieces)))
    return Markup("").join(parts)


def measures(text: str, apart: bool = False) -> Markup:
    """`text` escaped, each number kept on one line with its unit. The characters stay the same.

    `apart` marks the two halves of a measure in both units too (``110 cm / 43¼ in``), so that a
    page can show either alone.
    """
    from markupsafe import Markup, escape

    escaped = str(escape(text))
    if apart:
        escaped = _BOTH.sub(_halves_apart, escaped)
    return Markup(_MEASURE.sub(r'<span class="measure">\g<0></span>', escaped))


def _halves_apart(match: re.Match[str]) -> str:
    kinds = ("metric", "inches") if match["metric"] else ("inches", "metric")
    first, second = (
        f'<span class="{kind}">{half}</span>'
        for kind, half in zip(kinds, (match["first"], match["second"]), strict=True)
    )
    return f'{first}<span class="or"> / </span>{second}'


def pairs(text: str) -> Markup:
    """`text` escaped, each side of a measure in both units kept on one line, where it is short."""
    from markupsafe import Markup

    sides = text.split(" / ")
    if len(sides) != 2 or max(map(len, sides)) > _LONG_WORD:
        return soft(text)
    first, second = map(soft, sides)
    return Markup('<span class="measure">{} /</span> <span class="measure">{}</span>').format(
        first, second
    )


def hang(section: Section) -> str:
    """How wide the column of row labels is: a class name, by the section's longest label.

    A rare label longer than the widest column ("Rows 2, 4, 6 and 8 (WS):") just pushes its
    text on, so it need not widen the column for all rows.
    """
    longest = max((len(line.label) for line in section.lines), default=0)
    return "hang-s" if longest <= 8 else "hang-m" if longest <= 12 else "hang-l"


def strand_column(section: Section) -> str:
    """How wide the column of strand tags is, as class names; empty where no strand is named."""
    longest = max((len(line.strand) for line in section.lines), default=0)
    return "" if not longest else "strands" if longest <= 3 else "strands strands-l"


def tagged(section: Section) -> tuple[tuple[Line, bool], ...]:
    """Each line with whether it shows its strand's tag: at a change, and where a section starts."""
    shown = False
    result = []
    for line in section.lines:
        tag = bool(line.strand) and (line.new_strand or not shown)
        shown = shown or tag
        result.append((line, tag))
    return tuple(result)


def kept_together(section: Section) -> frozenset[int]:
    """The places of rows that stay on a page with the line behind them.

    These are the last rows before a repeat of them: who works it wants them in one view. A longer
    repeat is kept together in part only, so that no page is left half empty for it.
    """
    found: set[int] = set()
    for place, line in enumerate(section.lines):
        if line.kind == "repeat":
            found.update(range(max(place - min(line.repeats, _VIEW), 0), place))
    return frozenset(found)


def shade_columns(shades: tuple[Shade, ...]) -> tuple[str, ...]:
    """The columns of the table of shades that say something, as names of `Shade`'s fields."""
    optional = ("yarn", "strand", "amount", "needed", "weighs")
    told = [name for name in optional if any(getattr(s, name) for s in shades)]
    if "yarn" in told and len({s.yarn for s in shades}) == 1 and "needed" in told:
        told.remove("yarn")  # the one yarn is told above the table
    return ("name", *told)


def halves(items: tuple[_Item, ...]) -> tuple[tuple[_Item, ...], ...]:
    """Two columns to read down one after the other; CSS columns cost WeasyPrint many tries."""
    middle = (len(items) + 1) // 2
    return tuple(half for half in (items[:middle], items[middle:]) if half)


def boxes(line: Line) -> tuple[int, ...]:
    """How many boxes to draw beside a repeat, for each size; none where there would be too many."""
    if any(number < 1 or number > _MOST_BOXES for number in line.tally):
        return ()
    return line.tally


def tens(line: Line) -> tuple[tuple[int, ...], ...]:
    """What to write into boxes that stand for ten repeats each, where one for each is too many.

    The last holds the number of all: 10, 20, 30, 34. Empty where `boxes` serves, or nothing does.
    """
    if not line.tally or boxes(line) or min(line.tally) < 1 or max(line.tally) > _MOST_TENS:
        return ()
    return tuple((*range(10, number, 10), number) for number in line.tally)


def has_place(doc: Document, chart: ChartPicture) -> bool:
    """Whether a section writes out the chart's motif, so that the chart stands there."""
    return bool(chart.motif) and any(chart.motif in section.motifs for section in doc.sections)


def charts_apart(doc: Document) -> tuple[ChartPicture, ...]:
    """The charts whose rows no section writes out: they have a section of their own."""
    return tuple(chart for chart in doc.charts if not has_place(doc, chart))


def reads_first(doc: Document, chart: ChartPicture) -> bool:
    """Whether a chart that stands with its rows is the first to be read, and so says how."""
    if charts_apart(doc):
        return False
    placed = {each.motif for each in doc.charts}
    order = (motif for section in doc.sections for motif in section.motifs if motif in placed)
    return chart.motif == next(order, None)


def drawing(svg: str) -> Markup:
    """An ``<svg>`` of the picture room, which escapes every text in it, as it stands."""
    from markupsafe import Markup

    return Markup(svg)


def template_folder() -> Path:
    """The installed folder of the package's templates, style sheet and fonts."""
    # Path(__file__) is cheaper at start-up than importlib.resources.
    return Path(str(import_module("loopwright.templates").__file__)).parent


def _loader() -> BaseLoader:
    """Gives a template as it was compiled beforehand, or else has Jinja compile its text."""
    import jinja2
    from jinja2 import FileSystemLoader

    from loopwright.edition.ready import mark_of, module_of

    class Ready(FileSystemLoader):
        def load(self, environment: Any, name: str, globals: Any = None) -> Any:
            try:
                made = import_module(module_of(name))
            except ModuleNotFoundError:
                return super().load(environment, name, globals)
            text, *_ = self.get_source(environment, name)
            if mark_of(text, jinja2.__version__) != made.MARK:
                return super().load(environment, name, globals)
            return environment.template_class.from_module_dict(
                environment, vars(made), dict(globals or {})
            )

    return Ready(template_folder())


@cache
def environment() -> Environment:
    """The one Jinja2 environment; imported here so that checking a pattern never loads it."""
    from jinja2 import Environment, StrictUndefined

    env = Environment(
        loader=_loader(),
        autoescape=lambda name: name is not None and name.endswith(".html"),
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        keep_trailing_newline=True,
    )
    env.filters.update(
        boxes=boxes,
        charts_apart=charts_apart,
        colours=colours,
        cut=cut,
        dir_of=dir_of,
        drawing=drawing,
        halves=halves,
        hang=hang,
        joined=joined,
        kept_together=kept_together,
        measures=measures,
        pairs=pairs,
        reads_first=reads_first,
        shade_columns=shade_columns,
        soft=soft,
        strand_column=strand_column,
        tagged=tagged,
        tens=tens,
        ticks=ticks,
    )
    return env
