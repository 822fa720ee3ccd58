"""What is read beside a chart, in the words of the pages: its key, its notes, its parts.

The picture room says these in English; each is put into the language of the pages here.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache

from loopwright.edition.abbreviations import MODIFIERS, bare
from loopwright.edition.catalogue import Catalogue
from loopwright.edition.position import between_stitches
from loopwright.edition.voice import Voice
from loopwright.model.stitch import Dictionary, Stitch, trade_stitches
from loopwright.picture.chart import Left
from loopwright.picture.faces import PASS_ON, WAITS, KeyEntry
from loopwright.picture.steps import Op
from loopwright.picture.turning import ALL_TIMES, FIRST_TIME, MORE_WAIT
from loopwright.picture.words import title_of
from loopwright.record import dataclass

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


@dataclass(frozen=True, slots=True)
class PageWords:
    """The words of the pages as the picture room asks for them: a `picture.wording.Wording`."""

    catalogue: Catalogue

    def text(self, message: str) -> str:
        return self.catalogue.text(message)

    def say(self, message: str, **parts: object) -> str:
        return self.catalogue.say(message, **parts)

    def many(self, one: str, many: str, number: float, **parts: object) -> str:
        return self.catalogue.many(one, many, number, **parts)

    def figures(self, text: str) -> str:
        return self.catalogue.figures(text)

    def inside(self, text: str) -> str:
        return self.catalogue.inside(text)

    def meaning(self, entry: KeyEntry, rs: bool) -> str:
        """What a symbol means on the right (or wrong) side; empty where it is not made there."""
        if entry.group is not None:
            return group_words(entry.group, self.catalogue)
        return meaning(entry.rs if rs else entry.ws, self.catalogue)


@cache
def _by_meaning() -> dict[str, Stitch]:
    return {stitch.meaning: stitch for stitch in trade_stitches().values()}


def meaning(text: str, words: Catalogue) -> str:
    """What a key says of a symbol on one side: a stitch, or one of `CHART_WORDS`.

    A pattern's own stitch stays as it is.
    """
    if text in CHART_WORDS:
        return words.text(text)
    if text in _by_meaning():
        short, long = words.stitch(_by_meaning()[text])
        return long or bare(short)  # where the short form says it, there is no longer one
    word, *modifiers = text.casefold().split()[:4] or [""]
    found = Dictionary({}).find(word)
    if found is None or found.count != (1,) or not set(modifiers) <= set(MODIFIERS):
        return text
    short = bare(words.stitch(found.stitch)[0])
    return " ".join((short, *(words.modifier(modifier, "")[0] for modifier in modifiers)))


def group_words(group: Op, words: Catalogue) -> str:
    """``(k1, yo, k1) in the next stitch``."""
    one, many = "{steps} in the next stitch", "{steps} in the next {n} stitches"
    steps = f"({_steps(group.inner, Voice(words))})"
    return words.many(one, many, group.takes, steps=steps)


def _steps(group: Sequence[Op], voice: Voice) -> str:
    told = []
    placed = between_stitches([(op.stitch, op.modifiers) for op in group])
    for op, between in zip(group, placed, strict=True):
        if op.stitch is None:
            told.append(f"({_steps(op.inner, voice)})")
        else:
            told.append(voice.stitches(op.stitch, (1,), op.modifiers, between))
    return voice.steps(told)


def left_words(left: Left, words: Catalogue) -> str:
    """That a motif has no chart, and why."""
    name = title_of(left, PageWords(words))
    why = words.say(left.message, n=left.n)
    message = "No chart is drawn of {name}: {why}. The words that follow are complete without it."
    return words.say(message, name=name, why=why)
