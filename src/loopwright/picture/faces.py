"""How a stitch looks from the right side: the name of its symbol, and what the key says of it.

A symbol is named by the word that makes it in a right-side row (``k``, ``ssk``, ``sl front``). A
word whose far side has no word of its own (``sk2p`` worked on the wrong side) has the name with a
``~`` behind it. ``own:…`` is a word in a box, ``into:…`` a group worked into the same stitches.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import cache

from loopwright.facts.tables import table
from loopwright.picture.steps import Op
from loopwright.record import dataclass

NO_STITCH = "no stitch"
WAITING = "waiting"
TURNS = ("turn", "w&t")
OWN = "own:"
INTO = "into:"

_TOGETHER = re.compile(r"([kp])(\d+)tog$")
_CABLE = re.compile(r"[ct]\d+[fb]$")
PASS_ON = "no stitch: pass on to the next square"
WAITS = "not worked in this row: the stitch waits on the needle"
_MOST_STROKES = 6
_KNIT_LIKE = {"k", "p"}


@dataclass(frozen=True, slots=True)
class KeyEntry:
    """A line of a chart's key: the symbol, its width in cells, and what it means on each side.

    A side on which the symbol cannot be made has an empty meaning. `long` says how it is worked,
    where that is not plain from the word. `group` is what is worked into the same stitches, of an
    entry that is no stitch.
    """

    symbol: str
    cells: int
    rs: str
    ws: str
    long: str
    group: Op | None = None


@cache
def _table() -> Mapping[str, Mapping[str, str]]:
    return {row["symbol"]: row for row in table("chart_symbols")}


def symbol_of(op: Op, rs: bool) -> str:
    """The name of the symbol of a stitch worked in a right-side (or wrong-side) row."""
    if op.stitch is None:
        return f"{INTO}{op.takes}:{op.makes}:{_inner_text(op)}"
    word, modifiers = op.stitch.word, tuple(m for m in op.modifiers if m != "pwise")
    if op.stitch.kind == "own":
        return OWN + op.stitch.abbr
    if word == "s2kp2":
        word = "s2kp"
    if word == "sl":
        return _slip(set(modifiers), rs)
    if word in _KNIT_LIKE and modifiers == ("tbl",):
        word += " tbl"
    elif modifiers:
        return OWN + " ".join((op.stitch.abbr, *op.modifiers))
    row = _table().get(word)
    if row is not None:
        return word if rs else row["ws_symbol"]
    match = _TOGETHER.match(word)
    if match:
        if int(match[2]) > _MOST_STROKES:
            return OWN + op.stitch.abbr
        letter = match[1] if rs else {"k": "p", "p": "k"}[match[1]]
        return f"{letter}{match[2]}tog"
    if _CABLE.match(word):
        return word if rs else word + "~"
    return OWN + op.stitch.abbr


def _slip(modifiers: set[str], rs: bool) -> str:
    """A slipped stitch: whether its strand passes on the right side of the cloth."""
    front = ("wyif" in modifiers) == rs
    if not modifiers <= {"wyif", "wyib", "kwise", "tbl"}:
        return OWN + " ".join(("sl", *sorted(modifiers)))
    knitwise = " kwise" if modifiers & {"kwise", "tbl"} else ""
    return f"sl{knitwise}{' front' if front else ''}"


def key_entry(symbol: str, op: Op | None, cells: int) -> KeyEntry:
    """What the key says of a symbol; `op` is a stitch that is drawn by it."""
    if symbol == NO_STITCH:
        return KeyEntry(symbol, 1, PASS_ON, PASS_ON, "")
    if symbol == WAITING:
        return KeyEntry(symbol, 1, WAITS, WAITS, "")
    if symbol.startswith(INTO):
        assert op is not None
        into = "the next stitch" if op.takes == 1 else f"the next {op.takes} stitches"
        text = f"({_inner_text(op)}) in {into}"
        return KeyEntry(symbol, cells, text, text, "", op)
    if symbol.startswith(OWN):
        assert op is not None and op.stitch is not None
        text = symbol.removeprefix(OWN)
        return KeyEntry(symbol, cells, text, text, op.stitch.meaning)
    word = symbol.removesuffix("~")
    row = _table().get(word)
    if row is not None:
        rs, ws = row["rs"], row["ws"]
    elif _TOGETHER.match(word):
        other = {"k": "p", "p": "k"}[word[0]]
        rs, ws = word, other + word[1:]
    else:
        rs, ws = word.upper(), ""
    if symbol.endswith("~"):
        rs, ws = "", rs
    return KeyEntry(symbol, cells, rs, ws, _long(word, op))


def _long(word: str, op: Op | None) -> str:
    """How it is worked, where the word is the one that the row has."""
    if op is None or op.stitch is None or op.stitch.word != word:
        return ""
    meaning = op.stitch.meaning
    return "" if op.stitch.kind in ("knit", "purl", "slip", "marker", "bind", "cast") else meaning


def _inner_text(op: Op) -> str:
    """``k1, yo, k1``: what a group works into the same stitches."""
    parts: list[str] = []
    for inner in op.inner:
        if inner.stitch is None:
            parts.append(f"({_inner_text(inner)})")
            continue
        single = inner.stitch.word in ("k", "p", "sl")
        parts.append(" ".join((inner.stitch.abbr + ("1" if single else ""), *inner.modifiers)))
    return ", ".join(parts)
