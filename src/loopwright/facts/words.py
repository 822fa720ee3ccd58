"""Words of the trade that are no stitches, their UK counterparts, and cautions in plain words."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from types import MappingProxyType

from loopwright.facts.tables import table


@cache
def terms() -> Mapping[str, str]:
    """What each general abbreviation means: ``rep`` is ``repeat``. Stitches are a table apart."""
    return MappingProxyType({row["abbr"]: row["meaning"] for row in table("terms")})


@cache
def uk_terms() -> Mapping[str, str]:
    """The UK word for each US word that differs: ``bind off`` is ``cast off``."""
    return MappingProxyType({row["us"]: row["uk"] for row in table("terms_us_uk")})


@cache
def safety_caution(name: str) -> str:
    """The sentence to print for a kind of work. Raises KeyError where the table has none."""
    for row in table("safety_cautions"):
        if row["name"] == name:
            return row["caution"]
    raise KeyError(name)
