"""What a maker must know for a technique, in plain words: several techniques come to one skill."""

from __future__ import annotations

import re
from collections.abc import Sequence

from loopwright.model.stitch import Stitch

SKILLS = {
    "cast": "casting on",
    "cast more": "casting on at the edge of a row",
    "plain": "knit and purl stitches",
    "back loop": "working through the back loop",
    "slip": "slipping stitches",
    "slip front": "slipping stitches with the yarn in front",
    "yarn over": "yarn overs",
    "brioche": "brioche stitches",
    "increase": "increases",
    "increase left": "increases that lean to the left",
    "increase right": "increases that lean to the right",
    "decrease left": "decreases that lean to the left",
    "decrease right": "decreases that lean to the right",
    "decrease double": "double decreases",
    "drop": "letting stitches fall on purpose",
    "cable": "cables with a cable needle",
    "twist": "twists of two stitches",
    "into": "working several times into the same stitch",
    "marker": "stitch markers",
    "strand": "changing from one strand to another",
    "short": "short rows",
    "pick": "picking up stitches along an edge",
    "hold": "putting stitches on a holder and taking them back",
    "join": "joining in the round",
    "leave": "going on in rows from the round",
    "live": "leaving stitches live",
    "gather": "gathering the last stitches on the yarn",
    "bind": "binding off",
}
"""The words of each skill, by its key; no stitch of a file's own is among them."""

_BY_WORD = {
    "yo": "yarn over",
    "m1l": "increase left",
    "lli": "increase left",
    "m1r": "increase right",
    "rli": "increase right",
    "ssk": "decrease left",
    "ssp": "decrease left",
    "skp": "decrease left",
    "sssk": "decrease left",
    "sk2p": "decrease double",
    "s2kp": "decrease double",
    "s2kp2": "decrease double",
    "cdd": "decrease double",
    "rt": "twist",
    "lt": "twist",
    "k1b": "brioche",
    "brk": "brioche",
    "brp": "brioche",
    "sl1yo": "brioche",
    "turn": "short",
    "w&t": "short",
}
_TOGETHER = re.compile(r"[kp]\d+tog")
_BY_KIND = {
    "knit": "plain",
    "purl": "plain",
    "slip": "slip",
    "increase": "increase",
    "cable": "cable",
    "marker": "marker",
    "drop": "drop",
    "bind": "bind",
    "cast": "cast more",
}


def skill_of(stitch: Stitch, modifiers: Sequence[str]) -> str:
    """The key of `SKILLS` that a stitch comes to; empty for a stitch of the file's own.

    How a stitch leans is common knowledge of the trade: k2tog to the right, ssk to the left.
    """
    if stitch.kind == "own":
        return ""
    if stitch.word in _BY_WORD:
        return _BY_WORD[stitch.word]
    if _TOGETHER.fullmatch(stitch.word):
        return "decrease right"
    if stitch.kind == "slip" and "wyif" in modifiers:
        return "slip front"
    if "tbl" in modifiers:
        return "back loop"
    return _BY_KIND.get(stitch.kind, "")
