"""The spoken edition: every abbreviation in full words, one size, one step a line.

For screen readers, and for reading aloud on camera. It is the same document as the printed one,
made in another voice. Its messages stand in the context ``spoken`` of each language.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from functools import cache
from typing import TYPE_CHECKING

from loopwright.edition.abbreviations import MODIFIERS
from loopwright.edition.aloud import aloud, in_full
from loopwright.edition.catalogue import ENGLISH, Catalogue
from loopwright.edition.render import clean, clean_text, headings
from loopwright.edition.step_words import Unit
from loopwright.edition.voice import Voice
from loopwright.facts.tables import table
from loopwright.model.stitch import Stitch
from loopwright.record import replace

if TYPE_CHECKING:
    from loopwright.edition.document import Document, Line, Shade

STEP = "\x1f"
"""Parts the steps of a row: no source can hold it, and each step has a line of its own."""

CLOSE = "\x1e"
"""Ends steps that are repeated, or worked into one stitch, until they are part of a longer line."""

WHOLE = (
    ("knit 1 through the back loop", "knit {n} through the back loop"),
    ("purl 1 through the back loop", "purl {n} through the back loop"),
    ("slip 1 with yarn in front", "slip {n} with yarn in front"),
    ("slip 1 with yarn in back", "slip {n} with yarn in back"),
    ("slip 1 knitwise", "slip {n} knitwise"),
    ("slip 1 purlwise", "slip {n} purlwise"),
)
"""Stitches with their modifier that a language may say in one; others follow one another."""

CROSSINGS = {
    "cf": "cable {n} front",
    "cb": "cable {n} back",
    "tf": "twist {n} front",
    "tb": "twist {n} back",
}
"""A crossing by its kind, and whether its cable needle is held in front or in back."""

_FAMILY = re.compile(r"([kp])(\d+)tog$|([ct])(\d+)([fb])$")


@cache
def _words() -> Mapping[str, tuple[str, str]]:
    return {row["word"]: (row["one"], row["many"]) for row in table("spoken")}


class Spoken(Voice):
    """Full words for one size, with the count after every row."""

    all_counts = True
    then = STEP

    def __init__(self, catalogue: Catalogue = ENGLISH) -> None:
        super().__init__(aloud(catalogue))

    def n(self, one: str, many: str, number: int, **parts: object) -> str:
        """One of two messages by a number, which is their part ``n``."""
        return self.catalogue.many(one, many, number, **parts)

    # --- stitches -------------------------------------------------------------

    def whole(self, word: str) -> str:
        return self.t("Knit every stitch") if word == "k" else self.t("Purl every stitch")

    def stitches(
        self, stitch: Stitch, values: Sequence[int], modifiers: Sequence[str], between: str = ""
    ) -> str:
        number = values[0]
        tail = "".join(f" {MODIFIERS[modifier]}" for modifier in modifiers)
        found = _words().get(stitch.word)
        if found is None:
            once = self._of_a_family(stitch, modifiers)
            return once if number == 1 else self._times(once, number)
        # In some usage a yarn over is called by what lies on both sides of it.
        placed = self.catalogue.long.get(f"{stitch.word} {between}", "").split(":")[0]
        if placed:
            return placed if number == 1 else self._times(placed, number)
        one, many = found
        if (one + tail, many + tail) in WHOLE:
            return self.n(one + tail, many + tail, number)
        return self._with(self.n(one, many, number), modifiers)

    def _times(self, once: str, number: int) -> str:
        return self.t("{stitch}, {n} times", stitch=once, n=number)

    def _with(self, said: str, modifiers: Sequence[str]) -> str:
        for modifier in modifiers:
            said = self.t("{stitch} {how}", stitch=said, how=self.t(MODIFIERS[modifier]))
        return said

    def _of_a_family(self, stitch: Stitch, modifiers: Sequence[str]) -> str:
        """A stitch that has its number in its name; a file's own stitch by its name."""
        match = _FAMILY.match(stitch.word)
        if match is None:
            name = stitch.meaning.split(":")[0].strip() or stitch.word
            return self._with(name, modifiers)
        if match[1] is None:
            return self._with(self.t(CROSSINGS[match[3] + match[5]], n=match[4]), modifiers)
        if tuple(modifiers) == ("tbl",):
            message = "purl {a} together through the back loop"
            if match[1] == "k":
                message = "knit {a} together through the back loop"
            return self.t(message, a=match[2])
        message = "knit {a} together" if match[1] == "k" else "purl {a} together"
        return self._with(self.t(message, a=match[2]), modifiers)

    def steps(self, parts: Sequence[str]) -> str:
        return STEP.join(parts)

    def group(self, inner: Sequence[str], values: Sequence[int], nested: bool) -> str:
        if values[0] == 1:
            return STEP.join(inner)
        return self.t("{n} times: {steps}", n=values[0], steps=self._run(inner)) + CLOSE

    def into(self, inner: Sequence[str], values: Sequence[int], nested: bool) -> str:
        one = "into the next stitch, work {steps}"
        many = "into the next {n} stitches, work {steps}"
        return self.n(one, many, values[0], steps=self._run(inner)) + CLOSE

    def fill(self, unit: Unit) -> str:
        run = self._run(unit.units)
        if unit.often is not None:
            if unit.only is not None:
                return self.stitches(unit.only, (unit.often,), ())
            one = "repeat the next stitch {times} times: {steps}"
            many = "repeat the next {n} stitches {times} times: {steps}"
            return self.n(one, many, unit.takes, times=unit.often, steps=run) + CLOSE
        if unit.only is not None:
            knit = unit.only.word == "k"
            return self._until(unit, self.t("knit") if knit else self.t("purl"))
        until = self._until(unit, self.t("repeat"))
        return self.t("{what}: {steps}", what=until, steps=run) + CLOSE

    def _until(self, unit: Unit, what: str) -> str:
        """Where a fill stops whose number of times differs: the end, a marker, the gap."""
        left, place = unit.left[0], unit.place
        if not place:
            if left:
                one, many = "{what} until {n} is left", "{what} until {n} are left"
                return self.n(one, many, left, what=what)
            return self.t("{what} to the end", what=what)
        if place == "marker":
            if left:
                one = "{what} until {n} stitch before the marker"
                many = "{what} until {n} stitches before the marker"
                return self.n(one, many, left, what=what)
            return self.t("{what} to the marker", what=what)
        if left:
            one = "{what} until {n} stitch before the gap"
            many = "{what} until {n} stitches before the gap"
            return self.n(one, many, left, what=what)
        return self.t("{what} to the gap", what=what)

    def _run(self, parts: Sequence[str]) -> str:
        """The steps of a unit, said in one breath; “then” tells what follows a repeat in it."""
        said = ""
        for part in STEP.join(parts).split(STEP):
            ended = len(said) - len(said.rstrip(CLOSE))
            if ended > 1:
                said = said.rstrip(CLOSE) + self.t(", when all these are done, ")
            elif ended:
                said = said.rstrip(CLOSE) + self.t(", then ")
            elif said:
                said += ", "
            said += part
        return said

    def hold(self, values: Sequence[int], name: str) -> str:
        one = "place the next {n} stitch on a holder for {name}"
        many = "place the next {n} stitches on a holder for {name}"
        return self.n(one, many, values[0], name=name)

    # --- rows -------------------------------------------------------------

    def _sentence(self, text: str, strand: str | None = None) -> str:
        steps = [step for step in text.replace(CLOSE, "").split(STEP) if step]
        if strand:
            steps.insert(0, self.t("with strand {strand}", strand=strand))
        return STEP.join(f"{step[:1].upper()}{step[1:]}." for step in steps)

    def label(self, first: int, last: int, in_round: bool, rs: bool) -> str:
        row = self.word(in_round, last > first)
        if last > first:
            message = "{rows} {first} to {last}, each the same."
            return self.t(message, rows=row, first=first, last=last)
        if in_round:
            return self.t("{row} {n}.", row=row, n=first)
        return self.t("{row} {n}, {side}.", row=row, n=first, side=self.side(rs))

    def next_label(self, rows: Sequence[int], in_round: bool, rs: bool) -> str:
        if rows[0] == 1:
            if in_round:
                return self.t("Next round.")
            return self.t("Next row, {side}.", side=self.side(rs))
        if in_round:
            return self.t("Next {n} rounds, each the same.", n=rows[0])
        return self.t("Next {n} rows, each the same.", n=rows[0])

    def every_label(self, first: int, last: int, in_round: bool, rs: bool, rest: bool) -> str:
        if not in_round:
            message = "Row {first}, and every following {side} row up to row {last}."
            return self.t(message, first=first, last=last, side=self.side(rs))
        if rest:
            message = "Round {first}, and every round that is not given, up to round {last}."
        else:
            message = "Round {first}, and every second round after it up to round {last}."
        return self.t(message, first=first, last=last)

    def count(self, values: Sequence[int | None]) -> str:
        return self.n("{n} stitch.", "{n} stitches.", values[0] or 0)

    def shaping_label(self, in_round: bool) -> str:
        if in_round:
            return self.t("Shaping round.")
        return self.t("Shaping row, {side}.", side=self.side(True))

    def named_label(self, name: str, number: int, in_round: bool, rs: bool) -> str:
        parts = {"name": f"{name[:1].upper()}{name[1:]}", "row": self.unit(in_round, False)}
        if in_round:
            return self.t("{name} {row} {n}.", n=number, **parts)
        return self.t("{name} {row} {n}, {side}.", n=number, side=self.side(rs), **parts)

    def changed_by(self, change: int) -> str:
        if change > 0:
            return self.n("{n} stitch more.", "{n} stitches more.", change)
        return self.n("{n} stitch fewer.", "{n} stitches fewer.", -change)

    # --- repeats of rows -------------------------------------------------------------

    def repeat(self, in_round: bool, first: int, last: int, more: Sequence[int], tail: str) -> str:
        one = "Repeat {rows} {first} to {last} once more{tail}."
        many = "Repeat {rows} {first} to {last}, {n} more times{tail}."
        rows = self.unit(in_round, True)
        return self.n(one, many, more[0], rows=rows, first=first, last=last, tail=tail)

    def again(self, in_round: bool, first: int, last: int, often: Sequence[int], tail: str) -> str:
        one = "Work {rows} {first} to {last} once{tail}."
        many = "Work {rows} {first} to {last}, {n} times{tail}."
        rows = self.unit(in_round, True)
        return self.n(one, many, often[0], rows=rows, first=first, last=last, tail=tail)

    def some_rows(self, in_round: bool, first: int, rows: Sequence[int], more: bool) -> str:
        last = first + rows[0] - 1
        if last == first:
            message = "Work {row} {n} once more." if more else "Work {row} {n} once."
            return self.t(message, row=self.unit(in_round, False), n=first)
        if more:
            message = "Work {rows} {first} to {last} once more."
        else:
            message = "Work {rows} {first} to {last} once."
        return self.t(message, rows=self.unit(in_round, True), first=first, last=last)

    def measured(self, length: str) -> str:
        return f".{STEP}{self.t('The piece now measures about {length}', length=length)}"

    # --- between rows -------------------------------------------------------------

    def begin_round(self, counts: Sequence[int]) -> str:
        knit = self.n("knit 1", "knit {n}", counts[0])
        then = self.t("The round begins here from now on")
        return self._sentence(f"{knit}{STEP}{then}")


def spoken_lines(line: Line) -> tuple[str, ...]:
    """One instruction as the lines that are read: its label, its steps, its count."""
    if line.kind == "note":
        return (line.text,)
    parts = [line.label, *line.text.split(STEP), line.count]
    return tuple(part for part in parts if part)


def render_spoken(documents: Sequence[Document]) -> str:
    """The spoken edition: one document a size, read one after the other.

    They are documents of the voice `Spoken`.
    """
    blocks = [block for doc in documents for block in _blocks(doc)]
    texts = ("\n".join(line for line in map(_text, block) if line) for block in blocks)
    return "\n\n".join(text for text in texts if text) + "\n"


def _blocks(doc: Document) -> list[list[str]]:
    """The blocks of lines of one size, in the order in which they are read."""
    words = doc.catalogue
    sections = [[spoken_lines(line) for line in s.lines] for s in doc.sections]
    doc = clean(replace(doc, sections=tuple(replace(s, lines=()) for s in doc.sections)))
    heading = headings(words)
    blocks = [_head(doc, words)]
    if doc.finished is not None:
        blocks.append([f"{heading['finished']}.", *_measures(doc, words)])

    def part(name: str, items: Sequence[str]) -> None:
        if items:
            blocks.append([f"{heading[name]}.", *(_ended(in_full(item, words)) for item in items)])

    part("gauge", doc.gauge)
    part("needles", doc.needles)
    shades = [_shade(shade, words) for shade in doc.shades]
    if doc.yarns or shades:
        part("yarn", (*doc.yarns, *shades))
    part("substitution", doc.substitution)
    part("notions", doc.notions)
    part("cautions", doc.cautions)
    part("notes", doc.notes)
    part("care", doc.care)
    part("skills", doc.skills)
    for section, lines in zip(doc.sections, sections, strict=True):
        if section.heading:
            blocks.append([f"{section.heading}."])
        blocks += [list(line) for line in lines]
    return blocks


def _head(doc: Document, words: Catalogue) -> list[str]:
    say = words.say
    return [
        f"{doc.title}.",
        say("By {name}.", name=doc.designer) if doc.designer else "",
        doc.summary,
        say("Size {name}.", name=", ".join(doc.sizes)) if doc.sizes else "",
        say("Level: {level}.", level=doc.level) if doc.level else "",
        *doc.notices,
    ]


def _measures(doc: Document, words: Catalogue) -> list[str]:
    assert doc.finished is not None
    return [
        words.say(
            "{size}, {what}: {measure}.",
            size=row[0],
            what=words.inside(what),
            measure=in_full(cell, words),
        )
        for row in doc.finished.rows
        for what, cell in zip(doc.finished.head[1:], row[1:], strict=True)
    ]


def _shade(shade: Shade, words: Catalogue) -> str:
    """``Foam, in strand B: 4 balls; about 583 metres is knit, which weighs 291 grams``."""
    say = words.say
    said = shade.name
    if shade.strand:
        said += say(", in strand {strand}", strand=shade.strand)
    if shade.amount:
        said += say(": {amount}", amount=in_full(shade.amount, words))
    if shade.needed:
        said += say("; about {length} is knit", length=shade.needed)
    if shade.weighs:
        said += say(", which weighs {weight}", weight=shade.weighs)
    return said


def _ended(text: str) -> str:
    return text if text[-1:] in ".!?" else f"{text}."


def _text(text: str) -> str:
    return " ".join(clean_text(text).split())
