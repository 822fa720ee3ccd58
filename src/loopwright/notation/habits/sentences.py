"""What is said to each habit of a printed row: how it is here, and what to write in general.

The order is the order of weight: where a row has more habits than a message can bear, the first
ones of this table are said.
"""

from __future__ import annotations

from collections.abc import Iterable

_STAR = "write “* k1 p1 *” and behind the second star the stitches after the repeat."

SENTENCES: dict[str, tuple[str, str]] = {
    # --- what keeps a row from being written anew ---
    "increase": (
        "There is more than one way to increase, and the row does not say which.",
        "say which increase: kfb, m1l, m1r or yo.",
    ),
    "decrease": (
        "There is more than one way to decrease, and the row does not say which.",
        "say which decrease: k2tog, ssk or p2tog.",
    ),
    "nested": (
        "A fill stands inside a fill here, and the inner one could fit in any number of times.",
        "write how often the inner one is worked: “* k2 (yo k2tog) x3 *”.",
    ),
    "open": (
        "A parenthesis or bracket is opened here and never closed.",
        "close it where the group ends, with how often it is worked behind it: “(k1 p1) x4”.",
    ),
    "closed": (
        "A parenthesis or bracket is closed here that was never opened.",
        "open it where the group begins, or take it away.",
    ),
    "to-marker": (
        "What is worked as far as a marker stands between two stars, and then the row says what "
        "becomes of the marker.",
        "write “* k1 * sm” and go on with what follows the marker.",
    ),
    "to-end-inside": (
        "“To the end” ends a row; here more follows it.",
        "write “* k1 * k2” for “knit to the last 2 stitches, k2”.",
    ),
    # --- what print leaves open ---
    "more-or-all": (
        "In print “rep from * 3 times” may count the first time or not.",
        "choose the line that is meant.",
    ),
    "star-open": (
        "A star opens a fill, and a second star closes it; this one is never closed.",
        "put the second star where the repeat ends. If the repeat runs to the end of the row:",
    ),
    # --- repeats ---
    "rep-from": (
        "A repeat stands between two stars and says nothing more: it is worked as often as it "
        "fits between what stands before and after it.",
        _STAR,
    ),
    "to-end": (
        "What is worked “to the end” or “to the last stitches” stands between two stars; the "
        "stitches after it follow the second star.",
        "write “* k1 * k2” for “knit to the last 2 stitches, k2”.",
    ),
    "whole": (
        "“knit” or “purl” alone is the whole row.",
        "write “row: knit”.",
    ),
    "star-times": (
        "Stars mean as often as it fits; a number of times is written behind a group.",
        "write “(k1 p1) x4”.",
    ),
    "times": (
        "How often a group is worked stands behind it as x and the number.",
        "write “(k1 p1) x4”.",
    ),
    "into": (
        "A group that is all worked into the same stitch ends with “in 1”.",
        "write “(k1 yo k1) in 1”.",
    ),
    "brackets": (
        "Groups stand in round parentheses, also inside one another.",
        "write “(k1 p1) x4”.",
    ),
    # --- heads ---
    "side": (
        "The side of a row is not written: row 1 of a motif is a right-side row unless its "
        "opening line says “starts ws”.",
        "write “row 1:” and leave the side out.",
    ),
    "side-first": (
        "The side of a row is not written: row 1 is a right-side row, unless the opening line of "
        "the motif or piece says “starts ws”; and this row says the other side.",
        "write “starts ws” in the opening line, and leave the side out of the row.",
    ),
    "rows-of-side": (
        "Rows that are all alike on one side are given once, with “every”.",
        "write “every ws row: purl”.",
    ),
    "round-short": ("The word “round” is written out.", "write “round 1:”."),
    "row-short": ("The word “row” is written out.", "write “row 1:”."),
    "ordinal": ("The number of a row stands behind the word.", "write “row 1:”."),
    "bare-number": (
        "A row starts with the word “row”, its number and a colon.",
        "write “row 1:”.",
    ),
    "figure": (
        "The number of a row is a figure behind the word, with a blank between them.",
        "write “row 1:”.",
    ),
    "row-list": (
        "Several rows are given as “rows 1, 3” or “rows 1-4”.",
        "write “rows 1, 3:” or “rows 1-4:”.",
    ),
    "next": (
        "In a piece the next row is simply “row:”; in a motif each row has its number.",
        "write “row:”, or “rows 4:” for the next four.",
    ),
    "rows-of": (
        "Rows worked alike start with their number: “rows 4: knit”.",
        "write “rows 4: knit”.",
    ),
    "no-head": (
        "A line of stitches starts with the word “row” (in a motif with its number) or “round”.",
        "write “row: k2 p2”, and “row 1: k2 p2” in a motif.",
    ),
    "strand": (
        "The strand of a row stands behind its number: “row 1 in A:”.",
        "write “row 1 in A:”.",
    ),
    "no-colon": (
        "A colon stands between a row's number and its stitches.",
        "write “row 1: k2 p2”.",
    ),
    "separator": (
        "A colon, and nothing else, stands between a row's number and its stitches.",
        "write “row 1: k2 p2”.",
    ),
    # --- words ---
    "psso": (
        "A slipped stitch passed over is one word: skp takes 2 stitches, sk2p takes 3.",
        "write “skp” or “sk2p”.",
    ),
    "together": (
        "Stitches worked together are one word.",
        "write “k2tog” or “p2tog”.",
    ),
    "tbl": (
        "Through the back loop is “tbl”, behind its stitch.",
        "write “k1 tbl”.",
    ),
    "modifier": (
        "How a stitch is slipped stands behind it: wyif, wyib, kwise or pwise.",
        "write “sl1 wyif”.",
    ),
    "yarn-over": ("A yarn over of any kind is “yo”.", "write “yo”."),
    "yarn-forward": (
        "Bringing the yarn forward to make a stitch is “yo”; the yarn held in front of a slipped "
        "stitch is “sl1 wyif”.",
        "write “yo”.",
    ),
    "make-one": ("Making a stitch is one word: m1, m1l, m1r or m1p.", "write “m1l”."),
    "front-and-back": (
        "Knitting into the front and back of a stitch is “kfb”, purling “pfb”.",
        "write “kfb”.",
    ),
    "twist": ("A twist of 2 stitches is rt to the right, lt to the left.", "write “rt”."),
    "marker": (
        "Markers are placed with pm, slipped with sm and removed with rm.",
        "write “pm”, “sm” or “rm”.",
    ),
    "bind-cast": (
        "Stitches bound off or cast on within a row are “bo3” and “co3”.",
        "write “bo3”.",
    ),
    "spaced": ("A stitch and its count are written together.", "write “k2”."),
    "x-bare": (
        "x and a number belong behind a group in parentheses.",
        "write “k4” for one stitch, “(k1 p1) x4” for several.",
    ),
    "turned-round": ("The count stands behind the stitch.", "write “k4”."),
    "alternate": (
        "Every other row may be the even ones or the odd ones; rows of one side are named by it.",
        "write “every ws row: purl” or “every rs row: purl”.",
    ),
    "words": (
        "Beside other stitches knit and purl are k and p, with their count: k1, p3.",
        "write “k1” or “p3”.",
    ),
    "sts": ("The word “stitches” is not needed here.", "write “k4”."),
    "glued": (
        "Between one stitch word and the next stands a blank or a comma.",
        "write “k2 p2”.",
    ),
    "sizes": (
        "A number for each size is written with slashes.",
        "write “180/240/300”.",
    ),
    "ending": ("What ends a row simply follows the second star.", _STAR),
    "as-row": ("A row like another is “as row 2”.", "write “as row 2”."),
    "rib": (
        "A rib is written as its stitches between two stars.",
        "write “* k1 p1 *”.",
    ),
    # --- ends ---
    "claim": (
        "The count after a row is a claim, which is checked.",
        "write “=> 24” at the end of the row.",
    ),
    "joining": ("Steps follow one another without “and” or “then”.", "leave the word out."),
    "semicolon": ("Steps are parted by blanks or commas.", "write “k2, p2”."),
    "full-stop": ("A line has no full stop at its end.", "leave the full stop out."),
}

_MOST = 2  # sentences a message can bear
_ORDER = {key: place for place, key in enumerate(SENTENCES)}


def said(keys: Iterable[str]) -> str:
    """The message for the habits of one row, the weightiest first."""
    chosen = sorted(set(keys), key=lambda key: _ORDER[key])[:_MOST]
    return " ".join(SENTENCES[key][0] for key in chosen)


def general_help(keys: Iterable[str]) -> str:
    """What to write in general, for the weightiest of the habits."""
    return SENTENCES[min(set(keys), key=lambda key: _ORDER[key])][1]
