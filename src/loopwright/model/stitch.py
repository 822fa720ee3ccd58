"""Stitches and the dictionary in which a word of a body is looked up."""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import lru_cache

from loopwright.facts.tables import table
from loopwright.notation.source import Span
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class Stitch:
    """One stitch word of the dictionary.

    `takes` and `makes` are stitches for one of it; `kind` is knit, purl, slip, increase,
    decrease, cable, bind, cast, drop, marker or own; `abbr` is how it is printed, `meaning` what
    it stands for; `yarn` is what it eats in plain loops, with where the figure is from in
    `source`; `span` is its line in the file, for a file's own stitches.
    """

    word: str
    takes: int
    makes: int
    kind: str
    abbr: str
    meaning: str
    yarn: float
    source: str
    span: Span | None = None


@dataclass(frozen=True, slots=True)
class Found:
    """A word looked up: which stitch, and how many of it (a size list, or one number)."""

    stitch: Stitch
    count: tuple[int, ...]


def is_purled(stitch: Stitch) -> bool:
    """Whether a stitch is a kind of purl: p2tog, ssp, pfb, m1p."""
    return stitch.kind != "marker" and (stitch.word[:1] == "p" or stitch.word in ("ssp", "m1p"))


_COUNTED = re.compile(r"(.*?)(\d+(?:/\d+)*)$")
_TOGETHER = re.compile(r"([kp])(\d+)tog$")
_CABLE = re.compile(r"([ct])(\d+)([fb])$")
_LONGEST = 1_200  # a hundred sizes of eleven digits fit


@lru_cache(maxsize=1)
def trade_stitches() -> Mapping[str, Stitch]:
    """The stitches every file knows, by word."""
    return {
        row["word"]: Stitch(
            row["word"],
            int(row["takes"]),
            int(row["makes"]),
            row["kind"],
            row["abbr"],
            row["meaning"],
            float(row["yarn"]),
            row["source"],
        )
        for row in table("stitches")
    }


@lru_cache(maxsize=256)
def _of_a_family(word: str) -> Stitch | None:
    """``k4tog``, ``p3tog``, ``c6f``, ``t3b``: words that carry their width inside."""
    match = _TOGETHER.match(word)
    if match:
        number = int(match[2])
        if number < 2:
            return None
        verb = "knit" if match[1] == "k" else "purl"
        return Stitch(
            word,
            number,
            1,
            "decrease",
            word,
            f"{verb} {number} together",
            1.0,
            "trade abbreviation lists; yarn derived: one new loop through all of them",
        )
    match = _CABLE.match(word)
    if match:
        number = int(match[2])
        if number < 2:
            return None
        back = number // 2
        where = "front" if match[3] == "f" else "back"
        if match[1] == "c":
            # The longer half of an odd crossing is the one that is worked last.
            first = number - back
            meaning = (
                f"slip {back} to a cable needle and hold in {where}, knit {first}, "
                f"knit {back} from the cable needle"
            )
        else:
            knit = number - 1 if number < 4 else number - back
            purl = number - knit
            if match[3] == "f":
                meaning = (
                    f"slip {knit} to a cable needle and hold in front, purl {purl}, "
                    f"knit {knit} from the cable needle"
                )
            else:
                meaning = (
                    f"slip {purl} to a cable needle and hold in back, knit {knit}, "
                    f"purl {purl} from the cable needle"
                )
        # A crossing spreads its loops sideways: about a tenth more yarn each.
        return Stitch(
            word,
            number,
            number,
            "cable",
            word.upper(),
            meaning,
            round(number * 1.1, 3),
            "trade abbreviation lists; yarn from memory",
        )
    return None


class Dictionary:
    """The trade's stitches and a file's own. A word is looked up whole before it is split."""

    def __init__(self, own: Mapping[str, Stitch]) -> None:
        self._own = own
        self._trade = trade_stitches()
        self._memo: dict[str, Found | None] = {}

    def find(self, word: str) -> Found | None:
        """Look up a lowered word: whole, then as a family, then as letters and a count."""
        if word in self._memo:
            return self._memo[word]
        found = self._find(word)
        self._memo[word] = found
        return found

    def _whole(self, word: str) -> Stitch | None:
        return self._own.get(word) or self._trade.get(word) or _of_a_family(word)

    def _find(self, word: str) -> Found | None:
        if len(word) > _LONGEST:
            return None
        stitch = self._whole(word)
        if stitch is not None:
            return Found(stitch, (1,))
        match = _COUNTED.match(word)
        if match and match[1]:
            stitch = self._whole(match[1])
            if stitch is not None:
                return Found(stitch, tuple(int(part) for part in match[2].split("/")))
        return None

    def words(self) -> tuple[str, ...]:
        """Every word that is known whole, for "did you mean"."""
        return (*self._own, *self._trade, "k2tog", "p2tog", "k3tog", "p3tog", "c4f", "c4b", "c6f")
