"""What changed between two versions of a pattern, in the words of the pattern."""

from __future__ import annotations

from difflib import SequenceMatcher

from loopwright.count.walk import Walk
from loopwright.edition.catalogue import ENGLISH, Catalogue
from loopwright.edition.document import Document, Line, Section
from loopwright.edition.voice import Voice
from loopwright.edition.words import make_document
from loopwright.model.pattern import Pattern
from loopwright.record import dataclass

HEADING = "Changes since the last print"
UNCHANGED = "Nothing that is printed has changed."


@dataclass(frozen=True, slots=True)
class Version:
    """A checked pattern: what `make_document` takes."""

    pattern: Pattern
    walks: tuple[Walk, ...]


@dataclass(frozen=True, slots=True)
class Change:
    """One entry: `where` in the pattern, what `was` there and what `now` is (empty: nothing).

    `sizes` are those whose own lines differ, in the new order; empty where all of them do.
    """

    where: str
    was: str
    now: str
    sizes: tuple[str, ...] = ()

    def __str__(self) -> str:
        return self.said()

    def said(self, words: Catalogue = ENGLISH) -> str:
        """The entry in the words of a catalogue."""
        where, sizes = self.where, ", ".join(self.sizes)
        if len(self.sizes) == 1:
            where = words.say("{where} (size {sizes})", where=where, sizes=sizes)
        elif self.sizes:
            where = words.say("{where} (sizes {sizes})", where=where, sizes=sizes)
        if not self.was:
            return words.say("{where}: new: {now}", where=where, now=self.now)
        if not self.now:
            return words.say("{where}: left out, was: {was}", where=where, was=self.was)
        return words.say("{where}: was: {was} Is: {now}", where=where, was=self.was, now=self.now)


@dataclass(frozen=True, slots=True)
class _Entry:
    place: str  # the heading it stands under
    label: str
    text: str


def errata(
    old: Version, new: Version, units: str | None = None, words: Catalogue = ENGLISH
) -> tuple[Change, ...]:
    """The changes from `old` to `new`, in the order of the new pattern.

    Both must be versions without errors. Compares what is printed: facts, materials and every
    instruction; a change of the source that prints the same is none.
    """
    changes = _differences(_document(old, None, units, words), _document(new, None, units, words))
    names = [name for name in new.pattern.sizes if name in old.pattern.sizes]
    if len(names) < 2:
        return tuple(changes)
    touched: dict[tuple[str, str], list[str]] = {}
    for name in names:
        one = (_document(version, name, units, words) for version in (old, new))
        for change in _differences(*one):
            touched.setdefault(_key(change.where), []).append(name)
    out = []
    for change in changes:
        sizes = touched.get(_key(change.where), [])
        narrowed = tuple(sizes) if 0 < len(sizes) < len(names) else ()
        out.append(Change(change.where, change.was, change.now, narrowed))
    return tuple(out)


def with_errata(doc: Document, changes: tuple[Change, ...]) -> Document:
    """The document with a last section that lists the changes."""
    from loopwright.record import replace

    words = doc.catalogue
    if not changes:
        lines: tuple[Line, ...] = (Line("note", "", words.text(UNCHANGED), ""),)
    else:
        lines = tuple(Line("note", "", change.said(words), "") for change in changes)
    return replace(doc, sections=(*doc.sections, Section(words.text(HEADING), 2, lines)))


def _key(where: str) -> tuple[str, str]:
    """A place without the words that sizes change: its heading and the start of its label."""
    heading, _, label = where.partition(", ")
    return heading, label.split(" (")[0]


def _document(version: Version, size: str | None, units: str | None, words: Catalogue) -> Document:
    return make_document(version.pattern, version.walks, size, units, voice=Voice(words))


def _differences(old: Document, new: Document) -> list[Change]:
    before, after = _entries(old), _entries(new)
    matcher = SequenceMatcher(None, before, after, autojunk=False)
    out: list[Change] = []
    for tag, i1, i2, j1, j2 in matcher.get_opcodes():
        if tag != "equal":
            out += _paired(before[i1:i2], after[j1:j2])
    return out


def _paired(before: list[_Entry], after: list[_Entry]) -> list[Change]:
    """Lines that stand in one another's place: first those of one label, then in order."""
    left = list(before)
    out: list[Change] = []
    for now in after:
        same = next((e for e in left if (e.place, e.text) == (now.place, now.text)), None)
        if same is not None and same.label != now.label:
            # The same words at other row numbers.
            left.remove(same)
            out.append(Change(_where(same), f"{_bare(same.label)}.", f"{_bare(now.label)}."))
            continue
        was = next((e for e in left if (e.place, e.label) == (now.place, now.label)), None)
        if was is None:
            out.append(Change(_where(now), "", now.text))
            continue
        left.remove(was)
        out.append(Change(_where(now), was.text, now.text))
    gone = [Change(_where(e), e.text, "") for e in left]
    # A line whose label changed as well: one entry that shows both.
    for lost in list(gone):
        fresh = next((c for c in out if not c.was and _head(c) == _head(lost)), None)
        if fresh is not None:
            out[out.index(fresh)] = Change(fresh.where, lost.was, fresh.now)
            gone.remove(lost)
    return out + gone


def _head(change: Change) -> str:
    return change.where.split(", ")[0]


def _bare(label: str) -> str:
    """A label without its colon, and the space that French puts before one."""
    return label.rstrip(": \u00a0")


def _where(entry: _Entry) -> str:
    return ", ".join(part for part in (entry.place, _bare(entry.label)) if part)


def _entries(doc: Document) -> list[_Entry]:
    """Everything printed, a line each, under its heading."""
    text = doc.catalogue.text
    out = [
        _Entry(text("Title"), "", doc.title),
        _Entry(text("Designer"), "", doc.designer),
        _Entry(text("Summary"), "", doc.summary),
        _Entry(text("Level"), "", doc.level),
        _Entry(text("Sizes"), "", ", ".join(doc.sizes)),
    ]
    if doc.finished is not None:
        out += [
            _Entry(text("Finished measurements"), f"{row[0]} {doc.catalogue.inside(head)}", cell)
            for row in doc.finished.rows
            for head, cell in zip(doc.finished.head[1:], row[1:], strict=True)
        ]
    for heading, lines in (
        (text("Gauge"), doc.gauge),
        (text("Needles"), doc.needles),
        (text("Yarn"), doc.yarns),
        (text("Notions"), doc.notions),
        (text("Notes"), doc.notes),
        (text("For safety"), doc.cautions),
    ):
        out += [_Entry(heading, "", line) for line in lines]
    for shade in doc.shades:
        amount = shade.amount
        if shade.strand:
            amount = doc.catalogue.say("{name}, strand {strand}", name=amount, strand=shade.strand)
        out.append(_Entry(text("Shades"), shade.name, amount or shade.name))
    for section in doc.sections:
        for line in section.lines:
            said = " ".join(part for part in (line.text, line.count) if part)
            out.append(_Entry(section.heading, line.label, said))
    return [entry for entry in out if entry.text]
