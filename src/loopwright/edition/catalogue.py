"""The words of one language: messages, stitches and terms, each with its English as the key."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from loopwright.facts.words import terms
from loopwright.model.stitch import Stitch


@dataclass(frozen=True, slots=True)
class Catalogue:
    """`messages` by their English; `short` and `long` are abbreviations and their meanings by
    the word of the language of sources (a stitch, a modifier) or the English term. What a
    catalogue lacks stays English. `in_words` where small numbers are written out.

    A stitch's abbreviation may hold ``{n}``, where its number stands in it; a term without a
    meaning is no abbreviation and is not listed.
    """

    language: str
    messages: Mapping[str, str] = field(default_factory=dict)
    short: Mapping[str, str] = field(default_factory=dict)
    long: Mapping[str, str] = field(default_factory=dict)
    in_words: bool = False
    note: str = ""

    def text(self, message: str) -> str:
        return self.messages.get(message, message)

    def term(self, name: str) -> tuple[str, str]:
        """A general abbreviation (st, rep, RS) and what it means."""
        return self.short.get(name, name), self.long.get(name, terms()[name])

    def stitch(self, stitch: Stitch) -> tuple[str, str]:
        """A stitch's abbreviation and what it means; a file's own stitches stay as written."""
        if stitch.kind == "own":
            return stitch.abbr, stitch.meaning
        short = self.short.get(stitch.word, stitch.abbr)
        return short, self.long.get(stitch.word, stitch.meaning)

    def modifier(self, word: str, meaning: str) -> tuple[str, str]:
        return self.short.get(word, word), self.long.get(word, meaning)


ENGLISH = Catalogue("en", in_words=True)
