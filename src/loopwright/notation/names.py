"""A name of the source as words to read: ``left-sleeve`` is “left sleeve”, and “Left sleeve” above
its rows."""

from __future__ import annotations


def as_words(name: str) -> str:
    """A name with spaces where the writer could have none."""
    return name.replace("-", " ").replace("_", " ")


def as_heading(name: str) -> str:
    """The same with a capital letter."""
    text = as_words(name)
    return text[:1].upper() + text[1:]
