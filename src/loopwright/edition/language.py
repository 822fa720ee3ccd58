"""The languages that pages can be in: each a gettext catalogue beside this module.

A ``.po`` file has these contexts: none for the messages of `Voice` and of the document,
``spoken`` for those that only reading aloud has, or says otherwise, ``short`` for abbreviations
and ``long`` for their meanings (both by the word of sources or the English term), and ``name``
for the trade's names of fabrics, methods and tools. Messages with a number have their plural.
"""

from __future__ import annotations

from functools import cache
from pathlib import Path

from loopwright.edition.catalogue import ENGLISH, Catalogue

LANGUAGES = ("en", "de", "fr", "es")
TERMS = ("us", "uk")
FOLDER = Path(__file__).parent / "languages"

UNCHECKED = "The wording in this language has not been checked by a native knitter yet."
OWN_WORDS = "Title, notes, headings and names are the designer’s own words, as they were written."

# Unit words, as the notation's and as Unicode's.
_NO_MEANING = "–"  # the word is written out, so that no list need explain it
_UNITS = {"in": "length-inch", "yd": "length-yard", "oz": "mass-ounce", "cm": "length-centimeter",
          "mm": "length-millimeter", "m": "length-meter", "g": "mass-gram"}  # fmt: skip
_IN_FULL = {("de", "in")}  # “4 in in glatt rechts” would read as a slip
_GROUP_FROM = {"es": 10_000}  # Unicode CLDR: its numbers are parted from five figures on


@cache
def catalogue(language: str = "en", terms: str = "us") -> Catalogue:
    """The words of a language of `LANGUAGES`; `terms` (of `TERMS`) are those of English.

    Raises ValueError for another language or other terms, and for UK terms of no English.
    """
    if language not in LANGUAGES:
        raise ValueError(f"there are no words in “{language}”; there are {', '.join(LANGUAGES)}")
    if terms not in TERMS:
        raise ValueError(f"there are no terms “{terms}”; there are {', '.join(TERMS)}")
    if language == "en":
        return _read("en_GB", "en-GB") if terms == "uk" else ENGLISH
    if terms != "us":
        raise ValueError("UK terms are English words: they do not go with another language")
    return _read(language, language)


def _read(name: str, tag: str) -> Catalogue:
    """A catalogue of its file; `tag` is the language as BCP 47 writes it."""
    from babel.messages.pofile import read_po
    from babel.numbers import get_decimal_symbol, get_group_symbol

    with (FOLDER / f"{name}.po").open("rb") as file:
        entries = read_po(file, locale=name, abort_invalid=True)
    parts: dict[str, dict[str, str]] = {
        context: {} for context in ("", "spoken", "short", "long", "name")
    }
    plurals: dict[str, tuple[str, str]] = {}
    for entry in entries:
        if isinstance(entry.id, tuple | list) and isinstance(entry.string, tuple | list):
            plurals[entry.id[0]] = (entry.string[0], entry.string[1])
        elif entry.id and entry.string and not entry.fuzzy:
            key = str(entry.id).casefold() if entry.context == "name" else str(entry.id)
            parts[entry.context or ""][key] = (
                "" if entry.string == _NO_MEANING else str(entry.string)
            )
    english = name.startswith("en")
    notices = tuple(f"{parts[''].get(text, text)} / {text}" for text in (UNCHECKED, OWN_WORDS))
    return Catalogue(
        tag,
        parts[""],
        parts["short"],
        parts["long"],
        parts["name"],
        in_words=english,
        notices=() if english else notices,
        decimal=get_decimal_symbol(name),
        units={} if english else _units(name),
        group=get_group_symbol(name),
        group_from=_GROUP_FROM.get(name, 1000),
        plurals=plurals,
        zero_is_one=_zero_is_one(entries.plural_expr),
        spoken=parts["spoken"],
    )


def _zero_is_one(rule: str) -> bool:
    """Whether the plural rule of a file, as gettext writes it, gives none the form of one."""
    from gettext import c2py

    return c2py(rule)(0) == c2py(rule)(1)


def _units(name: str) -> dict[str, str]:
    """The unit words of a language that differ from the notation's, by Unicode's tables."""
    from babel.units import format_unit

    found = {}
    for word, unit in _UNITS.items():
        full = (name, word) in _IN_FULL
        said = format_unit(2, unit, "long" if full else "short", locale=name)
        said = said.replace("2", "").strip()
        if said != word:
            found[word] = said
    return found
