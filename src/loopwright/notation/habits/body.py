"""Reads the stitches of a row as printed patterns give them, and writes them as a body.

The reader either understands every word or gives up: a row is never written anew with a part of
it guessed or left out. What print leaves open ends in two readings, or in none.
"""

from __future__ import annotations

import re
from collections.abc import Mapping

from loopwright.notation.habits.counts import (
    number,
    takes,
    times,
    total,
    values,
)
from loopwright.notation.habits.phrases import (
    ALL,
    AS_ROW,
    BARE_CLAIM,
    CHANGE,
    CLAIM,
    CLAIM_OURS,
    END,
    ENDING,
    IN_ALL,
    INTO,
    INTO_OURS,
    LAST,
    MARKER,
    MORE,
    REPEAT,
    REPEAT_STAR,
    RIB,
    SEPARATOR,
    TIMES,
    WHOLE,
    WORD,
)
from loopwright.notation.habits.printed import Body, Step, Unread, hold_together, joined, taken_by
from loopwright.notation.habits.steps import MODIFIERS, PHRASES, PLAIN_MODIFIERS, unglued
from loopwright.record import dataclass, field

Match = re.Match[str]


_CLOSER = {"(": ")", "[": "]", "{": "}"}


@dataclass(slots=True)
class _Reading:
    """Where the reader stands in the text, and what it has noticed so far."""

    text: str
    own: Mapping[str, int]
    at: int = 0
    habits: dict[str, None] = field(default_factory=dict)
    certain: bool = True
    claim: str = ""

    def take(self, shape: re.Pattern[str]) -> Match | None:
        match = shape.match(self.text, self.at)
        if match is not None:
            self.at = match.end()
        return match

    def note(self, *habits: str) -> None:
        self.habits.update(dict.fromkeys(habits))

    def peek(self) -> str:
        return self.text[self.at : self.at + 1]

    # --- sequences ---------------------------------------------------------------

    def separators(self) -> None:
        while (match := self.take(SEPARATOR)) is not None:
            found = match.group().lower()
            if found == ";":
                self.note("semicolon")
            elif found == ".":
                self.note("full-stop")
            elif found[0] in "at":
                self.note("joining")

    def sequence(self, closer: str, depth: int, in_fill: bool) -> list[Step]:
        """Steps up to `closer` (not taken), or to the end of the text for an empty one."""
        steps: list[Step] = []
        while True:
            if not closer and self._ends(steps):
                return steps
            if closer == "*" and steps and self._repeat_ends():
                return steps
            self.separators()
            here = self.peek()
            if here == "" or (closer and here == closer):
                return steps
            if here and here in ")]}":
                raise Unread("closed" if not closer or closer == "*" else "open")
            if not in_fill and steps and self._as_unit(steps):
                continue
            if depth > 8:
                raise Unread
            steps.append(self.step(depth, in_fill, not steps))

    def _repeat_ends(self) -> bool:
        """Whether the unit of a star ends here without a second star: ``* k1, p1 to end``."""
        shapes = (REPEAT_STAR, END, LAST, CLAIM_OURS)
        return any(shape.match(self.text, self.at) for shape in shapes)

    def _ends(self, steps: list[Step]) -> bool:
        """Whether only a claim is left behind some steps; it is read."""
        return self.claim_follows() if steps else False

    def claim_follows(self) -> bool:
        """Whether only a claim is left; it is read."""
        ours = self.take(CLAIM_OURS)
        if ours is not None:
            if ours["arrow"] != "=>":
                self.note("claim")
            if re.search("st", ours.group(), re.I):
                self.note("sts")
            self.claim = f" => {'-' if ours['sign'] == '−' else ours['sign']}{number(ours['n'])}"
            return True
        change = self.take(CHANGE)
        if change is not None:
            sign = "+" if change["way"].lower() == "inc" else "-"
            self.claim = f" => {sign}{number(change['n'])}"
            self.note("claim")
            return True
        match = self.take(CLAIM)
        if match is None and (match := self.take(BARE_CLAIM)) is not None:
            self.certain = False
        if match is not None:
            self.claim = f" => {number(match['n'])}"
            self.note("claim")
        return match is not None

    def _as_unit(self, steps: list[Step]) -> bool:
        """``k1, p1 to end`` without a star: all that was read so far is what is repeated."""
        start = self.at
        repeat = self.take(REPEAT)
        plain = all(re.fullmatch(r"[kp][\d/]+", step.text) for step in steps)
        extent = self._fill_extent() if plain and (repeat or len(steps) > 1) else None
        if extent is None:
            self.at = start
            if repeat is not None:
                raise Unread("rep-from")
            return False
        self.certain = False
        self.note("to-end")
        steps[:] = [self._fill([*steps], extent)]
        return True

    # --- one step ----------------------------------------------------------------

    def step(self, depth: int, in_fill: bool, first: bool) -> Step:
        here = self.peek()
        if here == "*":
            if in_fill:
                raise Unread("nested")
            return self.star(depth)
        if here and here in _CLOSER:
            return self.group(depth, in_fill)
        every = self.take(ALL)
        if every is not None:
            if in_fill:
                raise Unread("nested")
            extent = self._fill_extent()
            if extent is None:
                raise Unread("to-end")
            self.note("to-end")
            stitch = Step(f"{every['stitch'][0].lower()}1", (1,))
            return self._fill([stitch], extent)
        for phrase in PHRASES:
            match = self.take(phrase.shape)
            if match is not None:
                text, habits, certain = phrase.read(match)
                self.note(*habits)
                self.certain = self.certain and certain
                return self.modified(text)
        return self.word(first)

    def word(self, first: bool) -> Step:
        match = self.take(WORD)
        if match is None:
            if re.match(r"\d+\s*[(\[*]", self.text[self.at :]):
                raise Unread("times")
            raise Unread
        word = match.group().lower()
        if "(" in word:
            letters = re.match(r"[^\W\d_]+", word)
            assert letters is not None
            word = letters.group() + number(word[letters.end() :])
            self.note("sizes")
        if word in ("inc", "inc1", "increase"):
            raise Unread("increase")
        if word in ("dec", "dec1", "decrease"):
            raise Unread("decrease")
        taken = takes(word, self.own)
        if taken is not None:
            return self.modified(word)
        parts = unglued(word)
        if parts is None:
            raise Unread
        self.note("glued")
        each = [takes(part, self.own) or (0,) for part in parts]
        return Step(" ".join(parts), total(each))

    def modified(self, text: str) -> Step:
        """A step with the modifiers that follow it."""
        found = []
        again = True
        while again:
            again = False
            for shape, word in MODIFIERS:
                match = self.take(shape)
                if match is not None:
                    if match.group().strip().lower() not in PLAIN_MODIFIERS:
                        self.note("tbl" if word == "tbl" else "modifier")
                    found.append(word)
                    again = True
        word = text.split(maxsplit=1)[0]
        taken = takes(word, self.own)
        kind = "marker" if word in ("sm", "rm", "pm") else "step"
        return Step(" ".join([text, *found]), taken, kind)

    # --- groups and fills ---------------------------------------------------------

    def group(self, depth: int, in_fill: bool) -> Step:
        opener = self.peek()
        self.at += 1
        if opener != "(":
            self.note("brackets")
        inner = self.sequence(_CLOSER[opener], depth + 1, True)
        if self.peek() != _CLOSER[opener]:
            raise Unread("open")
        if not inner:
            raise Unread
        self.at += 1
        text = f"({joined(inner)})"
        each = taken_by(inner)
        if self.take(INTO) is not None:
            self.note("into")
            return Step(f"{text} in 1", (1,))
        ours = self.take(INTO_OURS)
        if ours is not None:
            return Step(f"{text} in {number(ours['n'])}", values(number(ours["n"])))
        start = self.at
        repeat = self.take(REPEAT)
        step = self._so_often(inner, repeat is not None, "times")
        if step is not None:
            return step
        extent = self._fill_extent()
        if extent is not None:
            if in_fill:
                raise Unread("nested")
            self.note("to-end")
            return self._fill(inner, extent)
        if repeat is not None:
            self.at = start
            raise Unread("rep-from")
        return Step(text, each)

    def _so_often(self, inner: list[Step], repeated: bool, habit: str) -> Step | None:
        """A group worked a number of times, in whichever of print's ways that is said."""
        text = f"({joined(inner)})"
        more = self.take(MORE)
        if more is not None:
            self.note(habit)
            count = [value + 1 for value in values(number(more["n"] or more["m"]))]
            return self._times(text, inner, "/".join(map(str, count)))
        in_all = self.take(IN_ALL)
        if in_all is not None:
            self.note(habit)
            return self._times(text, inner, number(next(filter(None, in_all.groups()))))
        match = self.take(TIMES)
        if match is None:
            return None
        written = next(filter(None, match.groups()))
        count_text = number(written)
        if habit != "times" or not re.fullmatch(r"\s*x\s*[\d/]+", match.group(), re.I):
            self.note(habit)
        if not repeated:
            return self._times(text, inner, count_text)
        self.note("more-or-all")
        self.certain = False
        again = "/".join(str(value + 1) for value in values(count_text))
        return Step(
            f"{text} x{again}",
            None,
            other=f"{text} x{count_text}",
            readings=(
                f"{again} in all: once, then {count_text} more",
                f"{count_text} in all",
            ),
        )

    def _times(self, text: str, inner: list[Step], count: str) -> Step:
        each = taken_by(inner)
        return Step(f"{text} x{count}", None if each is None else times(each, values(count)))

    def _fill_extent(self) -> tuple[str, tuple[int, ...] | None] | None:
        """How far a fill goes: to the end, to the last so many stitches, to a marker."""
        if self.take(END) is not None:
            return "end", (0,)
        match = self.take(LAST)
        if match is not None:
            return "last", values(number(match["n"] or match["rem"] or "1"))
        match = self.take(MARKER)
        if match is not None:
            return "marker", values(number(match["n"])) if match["n"] else (0,)
        return None

    def _fill(self, inner: list[Step], extent: tuple[str, tuple[int, ...] | None]) -> Step:
        kind, last = extent
        return Step(f"* {joined(inner)} *", None, "fill", last, kind == "marker")

    def star(self, depth: int) -> Step:
        self.at += 1
        inner = self.sequence("*", depth + 1, True)
        if not inner:
            raise Unread
        closed = self.peek() == "*"
        if closed:
            self.at += 1
        start = self.at
        repeat = self.take(REPEAT)
        if not closed and repeat is None:
            extent = self._fill_extent()
            if extent is not None:
                self.note("to-end")
                return self._fill(inner, extent)
            self.note("star-open")
            self.certain = False
            return Step(f"* {joined(inner)} *", None, "fill")
        if repeat is not None:
            self.note("rep-from")
        step = self._so_often(inner, repeat is not None, "star-times")
        if step is not None:
            self.habits.pop("rep-from", None)
            return step
        extent = self._fill_extent()
        if extent is None:
            if repeat is None:
                self.at = start
            if self.take(ENDING) is not None:
                self.note("ending")
            return Step(f"* {joined(inner)} *", None, "fill")
        self.note("rep-from" if repeat is not None else "to-end")
        if self.take(ENDING) is not None:
            self.note("ending")
        return self._fill(inner, extent)


def read_body(text: str, own: Mapping[str, int]) -> Body:
    """The body that a printed row's stitches stand for.

    Raises Unread where a part of it is not understood or has no certain meaning.
    """
    text = text.strip()
    whole = WHOLE.match(text)
    if whole is not None:
        reading = _Reading(text, own, whole.end())
        word = "knit" if whole["stitch"][0] in "kK" else "purl"
        if whole.end() == len(text) or reading.claim_follows():
            head = whole.group().strip().lower()
            if head.rstrip(".") != word:
                reading.note("whole")
            elif head != word:
                reading.note("full-stop")
            return Body((word + reading.claim,), ("",), tuple(reading.habits), reading.certain)
    same = AS_ROW.match(text)
    if same is not None:
        word = "row" if same["what"].lower() == "row" else "round"
        step = f"as {word} {same['n']}"
        return Body((step,), ("",), () if text.lower() == step else ("as-row",), True)
    rib = RIB.match(text)
    if rib is not None:
        parts = [re.sub(r"\s", "", rib[name]).lower() for name in ("a", "b")]
        return Body((f"* {' '.join(parts)} *",), ("",), ("rib",), False)
    reading = _Reading(text, own)
    steps = reading.sequence("", 0, False)
    if not steps:
        raise Unread
    hold_together(steps)
    if len(steps) == 1 and steps[0].text in ("* k1 *", "* p1 *") and "to-end" in reading.habits:
        steps = [Step("knit" if "k" in steps[0].text else "purl", None)]
        reading.habits.pop("to-end")
        reading.note("whole")
    texts = [joined(steps) + reading.claim]
    readings = [" and ".join(step.readings[0] for step in steps if step.readings[0])]
    if any(step.other for step in steps):
        texts.append(joined(steps, second=True) + reading.claim)
        readings.append(" and ".join(step.readings[1] for step in steps if step.readings[1]))
    return Body(tuple(texts), tuple(readings), tuple(reading.habits), reading.certain)
