"""What a resize has to say beside its result: English sentences that a page can say in its own
language, because they keep the message they were made of."""

from __future__ import annotations

from typing import Protocol


class Words(Protocol):
    """The words of the pages: what a note needs of a catalogue."""

    def say(self, message: str, **parts: object) -> str:
        """An English message in the language of the pages, with its parts put in."""

    def figures(self, text: str) -> str:
        """Figures with their units as the language writes them."""

    def name(self, text: str, key: str = "") -> str:
        """A name of the trade, by `key` if given."""


class Figures(str):
    """Figures with their units, such as ``4.5 mm``."""


class YarnName(str):
    """What a weight of the standard system is usually called."""

    category: int

    @staticmethod
    def of(name: str, category: int) -> YarnName:
        made = YarnName(name)
        made.category = category
        return made


class Note(str):
    """A message with its parts put in. It is the English text, so that it can be used as one.

    A part may be a note too.
    """

    message: str
    parts: dict[str, object]

    def __new__(cls, message: str, **parts: object) -> Note:
        made = super().__new__(cls, message.format(**parts))
        made.message, made.parts = message, parts
        return made

    def said(self, words: Words) -> str:
        """The note in the words of the pages."""
        return words.say(self.message, **{k: _part(v, words) for k, v in self.parts.items()})


def _part(value: object, words: Words) -> object:
    if isinstance(value, Note):
        return value.said(words)
    if isinstance(value, Figures):
        return words.figures(value)
    if isinstance(value, YarnName):
        return words.name(value, f"weight {value.category}")
    return value
