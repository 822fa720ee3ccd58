"""The spoken edition: every abbreviation in full words, one size, one step a line.

For screen readers, and for reading aloud on camera. It is the same document as the printed one,
made in another voice.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from functools import cache
from typing import TYPE_CHECKING

from loopwright.edition.numbers import in_words
from loopwright.edition.render import clean, clean_text, environment, headings
from loopwright.edition.voice import MODIFIERS, Unit, Voice
from loopwright.facts.tables import table
from loopwright.model.stitch import Stitch
from loopwright.record import replace

if TYPE_CHECKING:
    from loopwright.edition.document import Document, Line

STEP = "\x1f"
"""Parts the steps of a row: no source can hold it, and each step has a line of its own."""

_FAMILY = re.compile(r"([kp])(\d+)tog$|([ct])(\d+)([fb])$")
_FRACTIONS = {
    "¼": "a quarter", "½": "a half", "¾": "three quarters", "⅓": "a third",
    "⅔": "two thirds", "⅛": "an eighth", "⅜": "three eighths", "⅝": "five eighths",
    "⅞": "seven eighths",
}  # fmt: skip
_UNITS = {
    "cm": ("centimetre", "centimetres"),
    "mm": ("millimetre", "millimetres"),
    "in": ("inch", "inches"),
    "m": ("metre", "metres"),
    "yd": ("yard", "yards"),
    "g": ("gram", "grams"),
    "oz": ("ounce", "ounces"),
}
_MEASURE = re.compile(r"(\d[\d.,]*)?([¼½¾⅓⅔⅛⅜⅝⅞])?( ?)(cm|mm|in|m|yd|g|oz)\b(?!\.\w)")
_ABBREVIATED = (
    (re.compile(r"\bsts\b"), "stitches"),
    (re.compile(r"\bst\b"), "stitch"),
    (re.compile(r"\brnds\b"), "rounds"),
    (re.compile(r"\brnd\b"), "round"),
    (re.compile(r"(?<=\d) ?× ?(?=\d)"), " by "),
)


@cache
def _words() -> Mapping[str, tuple[str, str]]:
    return {row["word"]: (row["one"], row["many"]) for row in table("spoken")}


class Spoken(Voice):
    """Full words for one size, with the count after every row."""

    all_counts = True
    then = STEP

    # --- stitches -------------------------------------------------------------

    def sts(self, values: Sequence[int]) -> str:
        return "stitch" if set(values) == {1} else "stitches"

    def whole(self, word: str) -> str:
        return f"{'Knit' if word == 'k' else 'Purl'} every stitch"

    def stitches(
        self, stitch: Stitch, values: Sequence[int], modifiers: Sequence[str], between: str = ""
    ) -> str:
        number = values[0]
        tail = "".join(f" {MODIFIERS[modifier]}" for modifier in modifiers)
        found = _words().get(stitch.word)
        if found is not None:
            one, many = map(self.catalogue.text, found)
            # In some usage a yarn over is called by what lies on both sides of it.
            placed = self.catalogue.long.get(f"{stitch.word} {between}", "").split(":")[0]
            if placed:
                one, many = placed, f"{placed}, {{n}} times"
            return (one if number == 1 else many.format(n=number)) + tail
        once = _of_a_family(stitch) or _own_name(stitch)
        return f"{once}{tail}" if number == 1 else f"{once}{tail}, {number} times"

    def steps(self, parts: Sequence[str]) -> str:
        return STEP.join(parts)

    def group(self, inner: Sequence[str], values: Sequence[int], nested: bool) -> str:
        if values[0] == 1:
            return STEP.join(inner)
        return f"{values[0]} times: {self._run(inner)}"

    def into(self, inner: Sequence[str], values: Sequence[int], nested: bool) -> str:
        number = values[0]
        where = "the next stitch" if number == 1 else f"the next {number} stitches"
        return f"into {where}, work {self._run(inner)}"

    def fill(self, unit: Unit) -> str:
        run = self._run(unit.units)
        if unit.often is not None and unit.only is not None:
            return f"{unit.only.meaning} {unit.often}"
        if unit.often is not None:
            what = "the next stitch" if unit.takes == 1 else f"the next {unit.takes} stitches"
            return f"repeat {what} {unit.often} times: {run}"
        left, place = unit.left[0], unit.place
        if left == 0:
            until = f"to the {place}" if place else "to the end"
        elif place:
            until = f"until {left} {self.sts(unit.left)} before the {place}"
        else:
            until = f"until {left} {'is' if left == 1 else 'are'} left"
        if unit.only is not None:
            return f"{unit.only.meaning} {until}"
        return f"repeat {until}: {run}"

    def _run(self, parts: Sequence[str]) -> str:
        """The steps of a unit, said in one breath."""
        return ", ".join(parts).replace(STEP, ", ")

    def hold(self, values: Sequence[int], name: str) -> str:
        return f"place the next {values[0]} {self.sts(values)} on a holder for {name}"

    def take(self, name: str) -> str:
        return f"slip the held {name} stitches back to the left needle"

    def pick(self, values: Sequence[int], edge: str) -> str:
        along = f" along the {edge} edge" if edge else ""
        return f"pick up and knit {values[0]} {self.sts(values)}{along}"

    # --- rows -------------------------------------------------------------

    def _sentence(self, text: str, strand: str | None = None) -> str:
        steps = [step for step in text.split(STEP) if step]
        if strand:
            steps.insert(0, f"with strand {strand}")
        return STEP.join(f"{step[:1].upper()}{step[1:]}." for step in steps)

    def side(self, rs: bool) -> str:
        return "right side" if rs else "wrong side"

    def word(self, in_round: bool, plural: bool) -> str:
        return ("Round" if in_round else "Row") + ("s" if plural else "")

    def label(self, first: int, last: int, in_round: bool, rs: bool) -> str:
        if last > first:
            return f"{self.word(in_round, True)} {first} to {last}, each the same."
        if in_round:
            return f"Round {first}."
        return f"Row {first}, {self.side(rs)}."

    def next_label(self, rows: Sequence[int], in_round: bool, rs: bool) -> str:
        if rows[0] == 1:
            return "Next round." if in_round else f"Next row, {self.side(rs)}."
        return f"Next {rows[0]} {'rounds' if in_round else 'rows'}, each the same."

    def every_label(self, first: int, last: int, in_round: bool, rs: bool, rest: bool) -> str:
        if not in_round:
            return f"Row {first}, and every following {self.side(rs)} row up to row {last}."
        if rest:
            return f"Round {first}, and every round that is not given, up to round {last}."
        return f"Round {first}, and every second round after it up to round {last}."

    def count(self, values: Sequence[int | None]) -> str:
        number = values[0] or 0
        return f"{number} {self.sts((number,))}."

    def shaping_label(self, in_round: bool) -> str:
        return "Shaping round." if in_round else "Shaping row, right side."

    def named_label(self, name: str, number: int, in_round: bool, rs: bool) -> str:
        label = f"{name[:1].upper()}{name[1:]} {self.unit(in_round, False)} {number}"
        return f"{label}." if in_round else f"{label}, {self.side(rs)}."

    def changed_by(self, change: int) -> str:
        return f"{abs(change)} {self.sts((abs(change),))} {'more' if change > 0 else 'fewer'}."

    # --- repeats of rows -------------------------------------------------------------

    def repeat(self, in_round: bool, first: int, last: int, more: Sequence[int], tail: str) -> str:
        rows = self.word(in_round, True).lower()
        return f"Repeat {rows} {first} to {last}{_more(more[0])}{tail}."

    def again(self, in_round: bool, first: int, last: int, often: Sequence[int], tail: str) -> str:
        rows = self.word(in_round, True).lower()
        return f"Work {rows} {first} to {last}{_often(often[0])}{tail}."

    def some_rows(self, in_round: bool, first: int, rows: Sequence[int], more: bool) -> str:
        plural = rows[0] > 1
        span = f"{first} to {first + rows[0] - 1}" if plural else str(first)
        word = self.word(in_round, plural).lower()
        return f"Work {word} {span} once{' more' if more else ''}."

    def measured(self, length: str) -> str:
        return f".{STEP}The piece now measures about {in_full(length)}"

    # --- between rows -------------------------------------------------------------

    def begin_round(self, counts: Sequence[int]) -> str:
        return f"Knit {counts[0]}.{STEP}The round begins here from now on."


def _more(number: int) -> str:
    return " once more" if number == 1 else f", {number} more times"


def _often(number: int) -> str:
    return " once" if number == 1 else f", {number} times"


def _of_a_family(stitch: Stitch) -> str | None:
    match = _FAMILY.match(stitch.word)
    if match is None:
        return None
    if match[1]:
        return f"{'knit' if match[1] == 'k' else 'purl'} {match[2]} together"
    verb = "cable" if match[3] == "c" else "twist"
    return f"{verb} {match[4]} {'front' if match[5] == 'f' else 'back'}"


def _own_name(stitch: Stitch) -> str:
    """A file's own stitch by its name, not by how it is worked."""
    return stitch.meaning.split(":")[0].strip() or stitch.word


def in_full(text: str) -> str:
    """Measures and abbreviations in full words: ``43¼ in`` is ``43 and a quarter inches``."""

    def said(match: re.Match[str]) -> str:
        whole, part, _, unit = match[1], match[2], match[3], match[4]
        if not whole and not part:
            return match[0]
        one, many = _UNITS[unit]
        number = " and ".join(x for x in (whole, _FRACTIONS.get(part or "")) if x)
        if part and not whole:
            return f"{number} of {'an' if one[0] in 'aeiou' else 'a'} {one}"
        return f"{number} {one if whole in ('1', '1.0') and not part else many}"

    text = _MEASURE.sub(said, text)
    for pattern, word in _ABBREVIATED:
        text = pattern.sub(word, text)
    return text.replace(" / ", ", or ").replace(" = ", " make ")


def spoken_lines(line: Line) -> tuple[str, ...]:
    """One instruction as the lines that are read: its label, its steps, its count."""
    if line.kind == "note":
        return (line.text,)
    parts = [line.label, *line.text.split(STEP), line.count]
    return tuple(part for part in parts if part)


def render_spoken(documents: Sequence[Document]) -> str:
    """The spoken edition: one document a size, read one after the other."""
    template = environment().get_template("spoken.txt")
    parts = []
    for doc in documents:
        lines = {id(line): spoken_lines(line) for s in doc.sections for line in s.lines}
        steps = [
            [(line.kind, tuple(map(_text, lines[id(line)]))) for line in section.lines]
            for section in doc.sections
        ]
        bare = replace(doc, sections=tuple(replace(s, lines=()) for s in doc.sections))
        parts.append(
            template.render(
                doc=clean(bare),
                heading=headings(doc.catalogue),
                steps=steps,
                in_full=in_full,
                words=in_words,
            )
        )
    text = re.sub(r"[ \t]+$", "", "\n\n".join(parts), flags=re.MULTILINE)
    return re.sub(r"\n{3,}", "\n\n", text).strip("\n") + "\n"


def _text(text: str) -> str:
    return " ".join(clean_text(text).split())
