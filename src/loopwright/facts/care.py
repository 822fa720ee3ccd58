"""The words of care: what each tells a washer, in the order of the international marks."""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import cache
from types import MappingProxyType

from loopwright.facts.tables import table
from loopwright.record import dataclass

_FELTS = re.compile(
    r"\b(wool|merino|alpaca|mohair|cashmere|angora|yak|shetland|llama)\b", re.IGNORECASE
)
_WASHABLE = re.compile(r"\b(superwash|washable)\b", re.IGNORECASE)
_ACRYLIC = re.compile(r"\bacrylic\b", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Care:
    """A phrase of a ``care`` line: what it speaks of, and its sentence (with ``{n}`` degrees).

    `degrees` are those of Celsius that are borne (None where it names none), `gentle` is 0 for a
    normal treatment, 1 for a gentle one and 2 for a very gentle one. `place` orders the phrases
    as ISO 3758 does: washing, bleaching, drying, ironing, professional care.
    """

    words: str
    of: str
    line: str
    degrees: int | None
    gentle: int
    place: int


@cache
def care_words() -> Mapping[str, Care]:
    """Every phrase of a ``care`` line, by its words in small letters."""
    return MappingProxyType(
        {
            row["words"]: Care(
                row["words"],
                row["of"],
                row["line"],
                int(row["degrees"]) if row["degrees"] else None,
                int(row["gentle"] or 0),
                place,
            )
            for place, row in enumerate(table("care"))
        }
    )


def care_named(text: str) -> Care | None:
    """The phrase that a text is, as it may be written (``Dry-flat``), or None."""
    return care_words().get(" ".join(text.casefold().replace("-", " ").split()))


def felts(made_of: str) -> bool:
    """Whether a yarn of these words can felt: wool or other hair, not said to be washable."""
    return bool(_FELTS.search(made_of)) and not _WASHABLE.search(made_of)


def is_acrylic(made_of: str) -> bool:
    """Whether a yarn of these words has acrylic in it, which heat makes limp."""
    return bool(_ACRYLIC.search(made_of))
