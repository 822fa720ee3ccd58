"""What a chart is called and what it shows, for those who do not see it."""

from __future__ import annotations

from loopwright.notation.names import as_heading
from loopwright.picture.chart import Chart, Left
from loopwright.picture.faces import NO_STITCH, WAITING
from loopwright.picture.strips import Strip, extent
from loopwright.picture.turnwords import turn_words
from loopwright.picture.wording import PLAIN, Wording, named


def strip_words(chart: Chart, strip: Strip, words: Wording = PLAIN) -> str:
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


def title_of(chart: Chart | Left, words: Wording = PLAIN) -> str:
    """``Woven``, with the size where the chart (or the want of one) is that of one size."""
    name = as_heading(chart.name)
    if not chart.size:
        return name
    return words.say("{name}, size {size}", name=name, size=chart.size)


def chart_words(chart: Chart, words: Wording = PLAIN) -> str:
    """What the chart shows, for those who do not see it."""
    height = len(chart.rows)
    if chart.word == "Rnd":
        rows = words.many("{n} round", "{n} rounds", height)
    else:
        rows = words.many("{n} row", "{n} rows", height)
    told = [
        words.say(
            "Chart of {title}: {rows}, {squares}, seen from the right side, {sides}.",
            title=title_of(chart, words),
            rows=rows,
            squares=words.many("{n} square wide", "{n} squares wide", chart.columns),
            sides=words.text("wrong-side rows at the left")
            if chart.sided
            else words.text("all worked on the right side"),
        )
    ]
    unsaid = (NO_STITCH, WAITING)
    names = dict.fromkeys(named(e, words) for e in chart.key if e.symbol not in unsaid)
    if names:
        apart = words.text("; ") if any("," in name for name in names) else ", "
        told.append(words.say("It shows {names}.", names=apart.join(names)))
    told.append(turn_words(chart, words))
    if chart.word == "Rnd":
        told.append(words.text("The rounds are written out in words too."))
    else:
        told.append(words.text("The rows are written out in words too."))
    return " ".join(filter(None, told))
