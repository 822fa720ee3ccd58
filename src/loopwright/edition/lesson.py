"""The teaching sheet: what a pattern asks a maker to know, in the order in which it comes up.

So that a designer can plan a lesson or a film: what to have ready, where each technique can first
be shown and how often it is worked, and where a maker usually errs.
"""

from __future__ import annotations

from loopwright.count.walk import Walk
from loopwright.edition.document import Document
from loopwright.edition.pitfalls import Point, points_of
from loopwright.edition.render import clean_text
from loopwright.edition.techniques import CABLE_NEEDLE, Met, Technique, met_in
from loopwright.edition.voice import Voice
from loopwright.model.pattern import Pattern
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class Lesson:
    """A teaching sheet for one size."""

    title: str
    size: str
    ready: tuple[str, ...]
    techniques: tuple[Technique, ...]
    points: tuple[Point, ...]


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
        _ready(document, met),
        met.in_order,
        points,
    )


def _ready(document: Document, met: Met) -> tuple[str, ...]:
    """What to lay out before the lesson; a tool only where it is used."""
    told = " ".join(document.notions).casefold()
    out = []
    for shade in document.shades:
        strand = f", strand {shade.strand}" if shade.strand else ""
        out.append(f"{shade.name}{strand}{': ' + shade.amount if shade.amount else ''}")
    out += document.needles
    out += document.notions
    out += ["Tape measure"] if "tape measure" not in told else []
    out += ["Scissors"] if "scissors" not in told else []
    if not ("tapestry needle" in told or "darning needle" in told):
        out.append("Tapestry needle")
    if "marker" in met.kinds and "marker" not in told:
        out.append("Stitch markers")
    if "hold" in met.kinds and "holder" not in told:
        out.append("Stitch holder or waste yarn")
    if CABLE_NEEDLE in met.kinds and CABLE_NEEDLE not in told:
        out.append("Cable needle")
    return tuple(out)


def render_lesson(lessons: tuple[Lesson, ...]) -> str:
    """The sheets as plain text, one size after the other."""
    out: list[str] = []
    for lesson in lessons:
        head = f"{lesson.title}: teaching sheet"
        out += [head.upper() if not lesson.size else f"{head}, size {lesson.size}".upper(), ""]
        out += ["Have ready", "----------", *(f"[ ] {item}" for item in lesson.ready), ""]
        out += ["Techniques, in the order in which they come up", "-" * 46]
        for number, technique in enumerate(lesson.techniques, 1):
            once = technique.times == 1
            often = "once" if once else f"{technique.times:,} times"
            out.append(f"{number}. {technique.name}. Show it: {technique.where}. Worked {often}.")
        out += ["", "Where a maker usually errs", "-" * 26]
        out += [f"{point.where}: {point.text}" for point in lesson.points] or [
            "Nothing stands out."
        ]
        out += ["", ""]
    lines = [" ".join(clean_text(line).split()) for line in out]
    return "\n".join(lines).strip() + "\n"
