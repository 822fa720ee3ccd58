"""The teaching sheet: what a pattern asks a maker to know, in the order in which it comes up.

From the walks of the checked model, by arithmetic: a repeat is a count, never written out. So that
a designer can plan a lesson or a film: what to have ready, where each technique can first be
shown and how often it is worked, and where a maker usually errs.
"""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.count.affine import Affine
from loopwright.count.repeat import Entry
from loopwright.count.walk import Bound, Cast, Moved, Said, Walk, Worked
from loopwright.edition.document import Document
from loopwright.edition.pitfalls import Point, changes_of, points_of
from loopwright.edition.voice import MODIFIERS, Voice, bare
from loopwright.model.body import Fill, Group, Step, Stitches
from loopwright.model.pattern import (
    CastOn,
    Hold,
    JoinRound,
    LeaveLive,
    LeaveRound,
    Pattern,
    PickUp,
    Take,
)
from loopwright.model.stitch import trade_stitches
from loopwright.notation.tree import Special
from loopwright.record import dataclass, field

_CABLE_NEEDLE = "cable needle"


@dataclass(slots=True)
class Technique:
    """What it is called, where it first comes up, and how often it is worked in all.

    `place` orders the techniques: the piece, the row, and 1 for what comes behind that row.
    """

    name: str
    where: str
    times: int
    place: tuple[int, int, int]


@dataclass(frozen=True, slots=True)
class Lesson:
    """A teaching sheet for one size."""

    title: str
    size: str
    ready: tuple[str, ...]
    techniques: tuple[Technique, ...]
    points: tuple[Point, ...]


@dataclass(slots=True)
class _Met:
    """Techniques by key, in the order in which they were met."""

    voice: Voice
    several: bool  # several pieces, so that a row needs its piece's name
    found: dict[str, Technique] = field(default_factory=dict)
    kinds: set[str] = field(default_factory=set)
    at: tuple[int, int, int] = (0, 0, 0)
    """Where the next ones that are added come up."""

    def add(self, key: str, name: str, where: str, times: int) -> None:
        if times < 1:
            return
        known = self.found.setdefault(key, Technique(name, where, 0, self.at))
        known.times += times
        if self.at < known.place:
            known.where, known.place = where, self.at

    def place(self, walk: Walk, text: str) -> str:
        return f"{walk.piece.name.text}, {text}" if self.several else text

    def row(self, walk: Walk, event: Worked, index: int) -> str:
        """The label of a row, where what is added next comes up."""
        number = event.first_row + index
        self.at = (self.at[0], number, 0)
        label = self.voice.label(number, number, event.is_round(index), event.is_rs(index))
        return self.place(walk, label.rstrip(":"))


def make_lesson(
    pattern: Pattern, walks: tuple[Walk, ...], size: int, document: Document, voice: Voice
) -> Lesson:
    """The sheet of one size (its place in `sizes`); `document` is the pattern in that size."""
    mine = tuple(walk for walk in walks if walk.size == size)
    met = _Met(voice, len(pattern.pieces) > 1)
    for number, walk in enumerate(mine):
        met.at = (number, 0, 0)
        _walk(walk, met)
    points = tuple(
        Point(met.place(walk, point.where), point.text)
        for walk in mine
        for point in points_of(walk, voice)
    )
    return Lesson(
        document.title,
        pattern.sizes[size] if len(pattern.sizes) > 1 else "",
        _ready(document, met),
        tuple(sorted(met.found.values(), key=lambda technique: technique.place)),
        points,
    )


def _walk(walk: Walk, met: _Met) -> None:
    changes = {(id(c.event), c.index): (c.first, c.times) for c in changes_of(walk)}
    last = ""  # the row before what stands between rows
    for event in walk.events:
        if isinstance(event, Worked):
            for index, entry in enumerate(event.chunk.entries):
                times = event.chunk.reps + (1 if index < event.chunk.part else 0)
                if times < 1:
                    continue
                if (id(event), index) in changes:
                    row, often = changes[id(event), index]
                    where = met.row(walk, event, row)
                    met.add("strand", "changing from one strand to another", where, often)
                _row(walk, met, event, index, entry, times)
            last = met.row(walk, event, event.rows - 1)
            met.at = (met.at[0], met.at[1], 1)
        else:
            _between(walk, met, event, last or met.place(walk, "at the start"))


def _row(walk: Walk, met: _Met, event: Worked, index: int, entry: Entry, times: int) -> None:
    body = entry.row.body
    words = met.voice.catalogue
    if body.whole is not None:
        stitch = trade_stitches()[body.whole]
        name = f"{stitch.abbr}: {words.stitch(stitch)[1]}"
        met.add(stitch.word, name, met.row(walk, event, index), entry.start.total(times))
        return
    for key, name, kind, number in _worked(body.steps, walk.size, iter(entry.fills), met.voice):
        at = index
        if number.at(0) == 0:
            at += len(event.chunk.entries)  # a fill that is empty the first time
        met.kinds.add(kind)
        met.add(key, name, met.row(walk, event, at), number.total(times))
    if entry.turns:
        name = "short rows: turning before the end of the row"
        met.add("short", name, met.row(walk, event, index), times)


def _worked(
    steps: tuple[Step, ...], size: int, fills: Iterator[Affine], voice: Voice
) -> Iterator[tuple[str, str, str, Affine]]:
    """Key, name, kind and number (as a function of the repeat) of what a body works."""
    for step in steps:
        if isinstance(step, Stitches):
            yield (*_named(step, voice), Affine(step.number(size)))
        elif isinstance(step, Fill):
            often = next(fills, Affine(0))
            for key, name, kind, number in _worked(step.steps, size, iter(()), voice):
                fixed = number.fixed
                yield key, name, kind, Affine(often.fixed * fixed, often.unit * fixed)
        elif isinstance(step, Group):
            yield from _grouped(step, size, fills, voice)
        elif isinstance(step, Special) and step.kind == "pick":
            count = step.count.at(size) if step.count is not None else 0
            yield "pick", "picking up stitches along an edge", "", Affine(count)
        elif isinstance(step, Special) and step.kind in ("hold", "take"):
            yield "hold", "putting stitches on a holder and taking them back", "hold", Affine(1)


def _grouped(
    step: Group, size: int, fills: Iterator[Affine], voice: Voice
) -> Iterator[tuple[str, str, str, Affine]]:
    times = step.number(size)
    if step.into is not None:
        yield "into", "working several times into the same stitch", "", Affine(1)
    if any(isinstance(inner, Fill) for inner in step.steps):
        # Markers part its fills, so that there are few.
        for _ in range(times):
            yield from _worked(step.steps, size, fills, voice)
        return
    for key, name, kind, number in _worked(step.steps, size, iter(()), voice):
        yield key, name, kind, Affine(number.fixed * times)


def _named(step: Stitches, voice: Voice) -> tuple[str, str, str]:
    words = voice.catalogue
    short, meaning = words.stitch(step.stitch)
    names = [words.modifier(word, MODIFIERS[word]) for word in step.modifiers]
    key = " ".join((step.stitch.word, *step.modifiers))
    called = " ".join((bare(short), *(name for name, _ in names)))
    full = ", ".join((meaning or short, *(told for _, told in names)))
    kind = _CABLE_NEEDLE if _CABLE_NEEDLE in step.stitch.meaning else step.stitch.kind
    return key, f"{called}: {full}", kind


def _between(walk: Walk, met: _Met, event: object, where: str) -> None:
    """What is done between rows; an event of another kind teaches nothing here."""
    item = getattr(event, "item", None)
    after = where if where.endswith("at the start") else f"after {where}"
    if isinstance(event, Cast):
        method = event.item.method.text if event.item.method else ""
        met.add("cast", _by("casting on", method), after, event.count)
        if walk.piece.in_round:
            met.add("join", "joining in the round", after, 1)
    elif isinstance(event, Bound):
        if isinstance(event.item, LeaveLive):
            met.kinds.add("hold")
            met.add("live", "leaving stitches live", after, 1)
            return
        method = event.item.method.text if event.item.method else ""
        off = "casting off" if met.voice.catalogue.language == "en-GB" else "binding off"
        if method.casefold() == "gathering":
            met.add("gather", "gathering the last stitches on the yarn", after, 1)
        else:
            met.add("bind", _by(off, method), after, event.count)
    elif isinstance(event, Moved):
        if isinstance(item, PickUp):
            met.add("pick", "picking up stitches along an edge", after, abs(event.count))
        elif isinstance(item, Hold | Take):
            met.kinds.add("hold")
            met.add("hold", "putting stitches on a holder and taking them back", after, 1)
        elif isinstance(item, CastOn):
            met.add("cast more", "casting on at the edge of a row", after, abs(event.count))
    elif isinstance(event, Said):
        if isinstance(item, JoinRound):
            met.add("join", "joining in the round", after, 1)
        elif isinstance(item, LeaveRound):
            met.add("leave", "going on in rows from the round", after, 1)


def _by(what: str, method: str) -> str:
    return f"{what}, {method}" if method else what


def _ready(document: Document, met: _Met) -> tuple[str, ...]:
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
    if _CABLE_NEEDLE in met.kinds and _CABLE_NEEDLE not in told:
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
    lines = [" ".join("".join(c if c.isprintable() else " " for c in line).split()) for line in out]
    return "\n".join(lines).strip() + "\n"
