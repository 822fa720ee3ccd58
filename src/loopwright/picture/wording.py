"""In whose words a picture is told: the room's own English, or those of the pages it stands in."""

from __future__ import annotations

from typing import Protocol

from loopwright.picture.faces import KeyEntry


class Wording(Protocol):
    """What the pictures need of a language: messages by their English, and names of stitches."""

    def text(self, message: str) -> str:
        """An English message in the language."""

    def say(self, message: str, **parts: object) -> str:
        """The same with its parts put in."""

    def many(self, one: str, many: str, number: float, **parts: object) -> str:
        """One of two messages, by `number`, which is their part ``n``."""

    def figures(self, text: str) -> str:
        """Figures with their units as the language writes them."""

    def inside(self, text: str) -> str:
        """A heading inside a sentence."""

    def meaning(self, entry: KeyEntry, rs: bool) -> str:
        """What a symbol means on the right (or wrong) side; empty where it is not made there."""


class _English:
    """The messages as they stand in this room."""

    def text(self, message: str) -> str:
        return message

    def say(self, message: str, **parts: object) -> str:
        return message.format(**parts)

    def many(self, one: str, many: str, number: float, **parts: object) -> str:
        return (one if number == 1 else many).format(**{"n": number, **parts})

    def figures(self, text: str) -> str:
        return text

    def inside(self, text: str) -> str:
        return text.lower()

    def meaning(self, entry: KeyEntry, rs: bool) -> str:
        return entry.rs if rs else entry.ws


PLAIN: Wording = _English()


def named(entry: KeyEntry, words: Wording) -> str:
    """What a symbol is called where one name has to do: that of the right side, if it has one."""
    return words.meaning(entry, True) or words.meaning(entry, False)
