"""The abbreviations that a page has used: what each means, and what its stitch takes and makes."""

from __future__ import annotations

from loopwright.edition.catalogue import ENGLISH, Catalogue
from loopwright.model.stitch import Stitch
from loopwright.record import dataclass, field

# Of these nobody asks how many stitches they take and make.
_PLAIN_KINDS = {"marker", "turn", "slip", "bind", "cast", "drop"}
MODIFIERS = {
    "wyif": "with yarn in front",
    "wyib": "with yarn in back",
    "kwise": "knitwise",
    "pwise": "purlwise",
    "tbl": "through the back loop",
}


@dataclass(slots=True)
class Used:
    """The abbreviations that were printed: what they mean, and what the stitch takes and makes.

    They are those of a `catalogue`: the words of one language.
    """

    catalogue: Catalogue = ENGLISH
    found: dict[str, tuple[str, str]] = field(default_factory=dict)

    def term(self, *names: str) -> None:
        """General words of the trade: st, sts, rep, RS …"""
        for name in names:
            short, meaning = self.catalogue.term(name)
            if meaning:
                self.found.setdefault(short, (meaning, ""))

    def stitch(self, stitch: Stitch, between: str = "") -> None:
        plain = stitch.word in ("k", "p") or stitch.kind in _PLAIN_KINDS
        note = ""
        if not plain:
            say = self.catalogue.say
            note = say("takes {takes}, makes {makes}", takes=stitch.takes, makes=stitch.makes)
        short, meaning = self.catalogue.stitch(stitch, between)
        self.found.setdefault(bare(short), (meaning, note))

    def modifier(self, word: str) -> None:
        short, meaning = self.catalogue.modifier(word, MODIFIERS[word])
        self.found.setdefault(short, (meaning, ""))


def bare(short: str) -> str:
    """An abbreviation without the place of its number: ``M re`` of ``{n} M re``."""
    return " ".join(short.replace("{n}", " ").split())
