"""The teaching sheet: what a pattern asks a maker to know, in the order in which it comes up.

So that a designer can plan a lesson or a film: what to have ready, where each technique can first
be shown and how often it is worked, and where a maker usually errs.
"""

from __future__ import annotations

import re

from loopwright.count.walk import Walk
from loopwright.edition.catalogue import Catalogue
from loopwright.edition.document import Document
from loopwright.edition.pitfalls import Point, points_of
from loopwright.edition.render import clean_text
from loopwright.edition.techniques import CABLE_NEEDLE, Met, Technique, met_in
from loopwright.edition.voice import Voice
from loopwright.model.pattern import Pattern
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class Lesson:
    """A teaching sheet for one size.

    `abbreviations` are those it uses without saying at once what they mean, each with its meaning.
    """

    title: str
    size: str
    ready: tuple[str, ...]
    techniques: tuple[Technique, ...]
    points: tuple[Point, ...]
    abbreviations: tuple[tuple[str, str], ...]
    notices: tuple[str, ...]
    catalogue: Catalogue


def make_lesson(
    pattern: Pattern, walks: tuple[Walk, ...], size: int, document: Document, voice: Voice
) -> Lesson:
    """The sheet of one size (its place in `sizes`); `document` is the pattern in that size."""
    mine = tuple(walk for walk in walks if walk.size == size)
    met = met_in(mine, voice, len(pattern.pieces) > 1)
    points = tuple(
        Point(met.place(walk, point.where), point.text)
        for walk in mine
        for point in points_of(walk, voice)
    )
    return Lesson(
        document.title,
        pattern.sizes[size] if len(pattern.sizes) > 1 else "",
        _ready(document, met, voice.catalogue),
        met.in_order,
        points,
        _abbreviations(met.in_order, points, voice),
        voice.catalogue.notices,
        voice.catalogue,
    )


def _abbreviations(
    techniques: tuple[Technique, ...], points: tuple[Point, ...], voice: Voice
) -> tuple[tuple[str, str], ...]:
    """Those of rows and counts; a stitch's own stands beside what it means.

    The voice has noted too what it said of rows that came to nothing, so each is looked for.
    """
    told = [text for technique in techniques for text in (technique.name, technique.where)]
    told += [text for point in points for text in (point.where, point.text)]
    text = "\n".join(told)

    def is_told(short: str) -> bool:
        begun = f"{short[:1].upper()}{short[1:]}"  # Rnd 3, in the list: rnd
        return bool(re.search(rf"(?<!\w)({re.escape(short)}|{re.escape(begun)})(?!\w)", text))

    return tuple(
        (short, meaning)
        for short, (meaning, _) in sorted(voice.used.found.items(), key=lambda it: it[0].lower())
        if is_told(short)
    )


def _ready(document: Document, met: Met, words: Catalogue) -> tuple[str, ...]:
    """What to lay out before the lesson; a tool only where it is used."""
    told = " ".join(document.notions).casefold()
    out = []
    for shade in document.shades:
        name = shade.name
        if shade.strand:
            name = words.say("{name}, strand {strand}", name=name, strand=shade.strand)
        if shade.amount:
            name = words.say("{name}: {facts}", name=name, facts=shade.amount)
        out.append(name)
    out += document.needles
    out += document.notions
    for tool, names, needed in (
        (words.say("Tape measure"), ("tape measure",), True),
        (words.say("Scissors"), ("scissors",), True),
        (words.say("Tapestry needle"), ("tapestry needle", "darning needle"), True),
        (words.say("Stitch markers"), ("marker",), "marker" in met.kinds),
        (words.say("Stitch holder or waste yarn"), ("holder",), "hold" in met.kinds),
        (words.say("Cable needle"), (CABLE_NEEDLE,), CABLE_NEEDLE in met.kinds),
    ):
        # A writer may list it in English or in the language of the pages.
        if needed and not any(name in told for name in (*names, tool.casefold())):
            out.append(tool)
    return tuple(out)


def render_lesson(lessons: tuple[Lesson, ...]) -> str:
    """The sheets as plain text, one size after the other."""
    out: list[str] = []
    for lesson in lessons:
        words, say = lesson.catalogue, lesson.catalogue.say
        head = say("{title}: teaching sheet", title=lesson.title)
        if lesson.size:
            message = "{title}: teaching sheet, size {size}"
            head = say(message, title=lesson.title, size=lesson.size)
        out += [head.upper(), "", *lesson.notices, *([""] if lesson.notices else [])]
        out += _underlined(say("Have ready"))
        out += [*(f"[ ] {item}" for item in lesson.ready), ""]
        if lesson.abbreviations:
            out += _underlined(say("Abbreviations"))
            for short, meaning in lesson.abbreviations:
                out.append(say("{name}: {facts}", name=short, facts=meaning))
            out.append("")
        out += _underlined(say("Techniques, in the order in which they come up"))
        for number, technique in enumerate(lesson.techniques, 1):
            told = words.many(
                "{technique}. Show it: {where}. Worked once.",
                "{technique}. Show it: {where}. Worked {n} times.",
                technique.times,
                n=words.grouped(technique.times),
                technique=technique.name,
                where=technique.where,
            )
            out.append(f"{number}. {told}")
        out += ["", *_underlined(say("Where a maker usually errs"))]
        out += [
            say("{where}: {text}", where=point.where, text=point.text) for point in lesson.points
        ] or [say("Nothing stands out.")]
        out += ["", ""]
    lines = [" ".join(clean_text(line).split()) for line in out]
    return "\n".join(lines).strip() + "\n"


def _underlined(heading: str) -> list[str]:
    return [heading, "-" * len(heading)]
