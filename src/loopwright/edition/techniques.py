"""The techniques that a pattern asks for, told from the walks of the checked model.

By arithmetic: a repeat is a count, never written out. The teaching sheet lists each with its first
place and how often it is worked; the pattern itself lists the skills they come to.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from loopwright.count.affine import Affine
from loopwright.count.repeat import Entry
from loopwright.count.walk import Bound, Cast, Moved, Said, Walk, Worked
from loopwright.edition.abbreviations import MODIFIERS, bare
from loopwright.edition.catalogue import Catalogue
from loopwright.edition.pitfalls import changes_of
from loopwright.edition.skills import SKILLS, skill_of
from loopwright.edition.voice import Voice
from loopwright.model.body import Fill, Group, Step, Stitches
from loopwright.model.pattern import (
    CastOn,
    Hold,
    JoinRound,
    LeaveLive,
    LeaveRound,
    PickUp,
    Take,
)
from loopwright.model.stitch import trade_stitches
from loopwright.notation.tree import Special
from loopwright.record import dataclass, field

CABLE_NEEDLE = "cable needle"


@dataclass(slots=True)
class Technique:
    """What it is called, where it first comes up, and how often it is worked in all.

    `place` orders the techniques: the piece, the row, and 1 for what comes behind that row.
    `skill` is the key of `SKILLS` that it comes to; `method` is how, where the source says it.
    """

    name: str
    where: str
    times: int
    place: tuple[int, int, int]
    skill: str
    method: str = ""


@dataclass(slots=True)
class Met:
    """Techniques by key, in the order in which they were met."""

    voice: Voice
    several: bool  # several pieces, so that a row needs its piece's name
    found: dict[str, Technique] = field(default_factory=dict)
    kinds: set[str] = field(default_factory=set)
    at: tuple[int, int, int] = (0, 0, 0)
    """Where the next ones that are added come up."""

    def add(
        self, key: str, name: str, where: str, times: int, skill: str = "", method: str = ""
    ) -> None:
        if times < 1:
            return
        new = Technique(name, where, 0, self.at, skill or key, method)
        known = self.found.setdefault(key, new)
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
        return self.place(walk, label.rstrip(": \u00a0"))

    @property
    def in_order(self) -> tuple[Technique, ...]:
        """The techniques in the order in which they come up."""
        return tuple(sorted(self.found.values(), key=lambda technique: technique.place))


def met_in(walks: Iterable[Walk], voice: Voice, several: bool) -> Met:
    """What the walks of one size ask for; `several` where the pattern has more than one piece."""
    met = Met(voice, several)
    for number, walk in enumerate(walks):
        met.at = (number, 0, 0)
        _walk(walk, met)
    return met


def _walk(walk: Walk, met: Met) -> None:
    changes = {(id(c.event), c.index): (c.first, c.times) for c in changes_of(walk)}
    last = ""  # the row before what stands between rows
    for event in walk.events:
        if isinstance(event, Worked):
            for index, entry in enumerate(event.chunk.entries):
                times = event.chunk.reps
                if (id(event), index) in changes:
                    row, often = changes[id(event), index]
                    where = met.row(walk, event, row)
                    met.add("strand", met.voice.t(SKILLS["strand"]), where, often)
                _row(walk, met, event, index, entry, times)
            last = met.row(walk, event, event.rows - 1)
            met.at = (met.at[0], met.at[1], 1)
        else:
            _between(walk, met, event, last)


def _row(walk: Walk, met: Met, event: Worked, index: int, entry: Entry, times: int) -> None:
    body = entry.row.body
    words = met.voice.catalogue
    if body.whole is not None:
        stitch = trade_stitches()[body.whole]
        short, meaning = words.stitch(stitch)
        name = met.voice.t("{name}: {facts}", name=bare(short), facts=meaning)
        skill = skill_of(stitch, ())
        met.add(stitch.word, name, met.row(walk, event, index), entry.start.total(times), skill)
        return
    for key, name, kind, skill, number in _worked(
        body.steps, walk.size, iter(entry.fills), met.voice
    ):
        at = index
        if number.at(0) == 0:
            at += len(event.chunk.entries)  # a fill that is empty the first time
        met.kinds.add(kind)
        met.add(key, name, met.row(walk, event, at), number.total(times), skill)
    if entry.turns:
        name = met.voice.t("short rows: turning before the end of the row")
        met.add("short", name, met.row(walk, event, index), times)


_Found = tuple[str, str, str, str, Affine]


def _worked(
    steps: tuple[Step, ...], size: int, fills: Iterator[Affine], voice: Voice
) -> Iterator[_Found]:
    """Key, name, kind, skill and number (by the repeat) of what a body works."""
    for step in steps:
        if isinstance(step, Stitches):
            yield (*_named(step, voice), Affine(step.number(size)))
        elif isinstance(step, Fill):
            often = next(fills, Affine(0))
            for key, name, kind, skill, number in _worked(step.steps, size, iter(()), voice):
                fixed = number.fixed
                yield key, name, kind, skill, Affine(often.fixed * fixed, often.unit * fixed)
        elif isinstance(step, Group):
            yield from _grouped(step, size, fills, voice)
        elif isinstance(step, Special) and step.kind == "pick":
            count = step.count.at(size) if step.count is not None else 0
            yield "pick", voice.t(SKILLS["pick"]), "", "pick", Affine(count)
        elif isinstance(step, Special) and step.kind in ("hold", "take"):
            yield "hold", voice.t(SKILLS["hold"]), "hold", "hold", Affine(1)


def _grouped(step: Group, size: int, fills: Iterator[Affine], voice: Voice) -> Iterator[_Found]:
    times = step.number(size)
    if step.into is not None:
        yield "into", voice.t(SKILLS["into"]), "", "into", Affine(1)
    if any(isinstance(inner, Fill) for inner in step.steps):
        # Markers part its fills, so that there are few.
        for _ in range(times):
            yield from _worked(step.steps, size, fills, voice)
        return
    for key, name, kind, skill, number in _worked(step.steps, size, iter(()), voice):
        yield key, name, kind, skill, Affine(number.fixed * times)


def _named(step: Stitches, voice: Voice) -> tuple[str, str, str, str]:
    words = voice.catalogue
    short, meaning = words.stitch(step.stitch)
    names = [words.modifier(word, MODIFIERS[word]) for word in step.modifiers]
    key = " ".join((step.stitch.word, *step.modifiers))
    called = " ".join((bare(short), *(name for name, _ in names)))
    full = ", ".join((meaning or short, *(told for _, told in names)))
    kind = CABLE_NEEDLE if CABLE_NEEDLE in step.stitch.meaning else step.stitch.kind
    name = voice.t("{name}: {facts}", name=called, facts=full)
    return key, name, kind, skill_of(step.stitch, step.modifiers)


def _between(walk: Walk, met: Met, event: object, last: str) -> None:
    """What is done behind the row `last` (empty: none); another event teaches nothing here."""
    say = met.voice.t
    item = getattr(event, "item", None)
    after = say("after {row}", row=last) if last else met.place(walk, say("at the start"))
    if isinstance(event, Cast):
        method = event.item.method.text if event.item.method else ""
        met.add("cast", _by(met, "cast", method), after, event.count, method=method)
        if walk.piece.in_round:
            met.add("join", say(SKILLS["join"]), after, 1)
    elif isinstance(event, Bound):
        if isinstance(event.item, LeaveLive):
            met.kinds.add("hold")
            met.add("live", say(SKILLS["live"]), after, 1)
            return
        method = event.item.method.text if event.item.method else ""
        if method.casefold() == "gathering":
            met.add("gather", say(SKILLS["gather"]), after, 1)
        else:
            met.add("bind", _by(met, "bind", method), after, event.count, method=method)
    elif isinstance(event, Moved):
        if isinstance(item, PickUp):
            met.add("pick", say(SKILLS["pick"]), after, abs(event.count))
        elif isinstance(item, Hold | Take):
            met.kinds.add("hold")
            met.add("hold", say(SKILLS["hold"]), after, 1)
        elif isinstance(item, CastOn):
            met.add("cast more", say(SKILLS["cast more"]), after, abs(event.count))
    elif isinstance(event, Said):
        if isinstance(item, JoinRound):
            met.add("join", say(SKILLS["join"]), after, 1)
        elif isinstance(item, LeaveRound):
            met.add("leave", say(SKILLS["leave"]), after, 1)


def _by(met: Met, skill: str, method: str) -> str:
    """``casting on, long-tail``."""
    what = met.voice.t(SKILLS[skill])
    how = met.voice.catalogue.name(method, method.replace(" ", "-"))
    return f"{what}, {how}" if method else what


def skills_of(met: Met, words: Catalogue) -> tuple[str, ...]:
    """The skills in plain words, each once, in the order in which they come up."""
    out: dict[str, None] = {}
    for technique in met.in_order:
        plain = SKILLS.get(technique.skill)
        if plain is None:
            continue  # a stitch of the file's own is told where it is explained
        text = words.text(plain)
        if technique.method:
            how = words.name(technique.method.casefold().replace(" ", "-"))
            text = words.say("{skill} ({method})", skill=text, method=how.replace("-", " "))
        out.setdefault(text[:1].upper() + text[1:])
    return tuple(out)
