"""What is read beside a chart, in the words of the pages: its key, its notes, its parts.

The picture room says these in English; each is put into the language of the pages here.
"""

from __future__ import annotations

from functools import cache

from loopwright.edition.abbreviations import bare
from loopwright.edition.catalogue import Catalogue
from loopwright.model.stitch import Dictionary, Stitch, trade_stitches
from loopwright.picture.chart import Chart
from loopwright.picture.faces import PASS_ON, WAITS
from loopwright.picture.svg import Strip, extent
from loopwright.picture.turning import ALL_TIMES, FIRST_TIME, MORE_WAIT

CHART_WORDS = (
    "sl with yarn in back",
    "sl with yarn in front",
    "sl knitwise with yarn in back",
    "sl knitwise with yarn in front",
    "drop the stitch",
    PASS_ON,
    WAITS,
    ALL_TIMES,
    FIRST_TIME,
    MORE_WAIT,
)
"""The messages of the picture room that are no name of a stitch."""


@cache
def _by_meaning() -> dict[str, Stitch]:
    return {stitch.meaning: stitch for stitch in trade_stitches().values()}


def meaning(text: str, words: Catalogue) -> str:
    """What a key says of a symbol on one side: a stitch, or one of `CHART_WORDS`.

    A pattern's own stitch, and what a group works into a stitch, stay as they are.
    """
    if text in CHART_WORDS:
        return words.text(text)
    if text in _by_meaning():
        short, long = words.stitch(_by_meaning()[text])
        return long or bare(short)  # where the short form says it, there is no longer one
    word, _, modifier = text.casefold().partition(" ")
    found = Dictionary({}).find(word)
    if found is None or found.count != (1,) or modifier not in ("", "tbl"):
        return text
    short = bare(words.stitch(found.stitch)[0])
    return f"{short} {words.modifier(modifier, '')[0]}" if modifier else short


def notes_of(chart: Chart, words: Catalogue) -> str:
    """What has to be known of rows that turn, in sentences; empty where there is nothing."""
    return " ".join(words.say(message, times=times) for message, times in chart.notes)


def part_of(chart: Chart, strip: Strip, words: Catalogue) -> str:
    """Which part of a chart a strip is; empty where it is the whole of it."""
    rows, squares = extent(chart, strip)
    told = []
    if rows is not None:
        name = words.text("Rnds" if chart.word == "Rnd" else "Rows")
        told.append(words.say("{rows} {first}–{last}", rows=name, first=rows[0], last=rows[1]))
    if squares is not None:
        first, last = squares
        across = words.say("Squares {first}–{last} from the right", first=first, last=last)
        told.append(words.inside(across) if told else across)
    return ", ".join(told)
