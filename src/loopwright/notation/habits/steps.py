"""The words of a printed row that stand for one step, and the word of the notation for each."""

from __future__ import annotations

import re
from collections.abc import Callable

from loopwright.notation.habits.counts import NUMBER, STITCHES, number
from loopwright.record import dataclass

Match = re.Match[str]
Found = tuple[str, tuple[str, ...], bool]  # the step, the habits it shows, whether it is certain


@dataclass(frozen=True, slots=True)
class Phrase:
    """`shape` at the place of a step; `read` gives the step of the notation."""

    shape: re.Pattern[str]
    read: Callable[[Match], Found]


def _shape(text: str) -> re.Pattern[str]:
    return re.compile(text.replace("NUMBER", NUMBER).replace("STITCHES", STITCHES), re.I)


def _fixed(step: str, *habits: str, certain: bool = True) -> Callable[[Match], Found]:
    return lambda match: (step, habits, certain)


def _letter(match: Match) -> str:
    return match["stitch"][0].lower()


def _together(match: Match) -> Found:
    step = f"{_letter(match)}{number(match['n'])}tog"
    same = re.fullmatch(r"[kp]\d+tog", match.group(), re.I)
    return step, () if same else ("together",), "/" not in step


def _back_loop(match: Match) -> Found:
    count = number(match["n"]) if match["n"] else "1"
    return f"{_letter(match)}{count} tbl", ("tbl",), True


def _plain(match: Match) -> Found:
    written = match.group()
    habits = []
    if match["sts"]:
        habits.append("sts")
    if len(match["stitch"]) > 1:
        habits.append("words")
    elif re.search(r"[a-z]\s+\d", written, re.I):
        habits.append("spaced")
    if "(" in written or "[" in written:
        habits.append("sizes")
    return f"{_letter(match)}{number(match['n'])}", tuple(habits), True


def _next(match: Match) -> Found:
    return f"{_letter(match)}1", ("sts", "words"), True


def _slip(match: Match) -> Found:
    count = number(match["n"]) if match["n"] else "1"
    habits = ("spaced",) if not re.match(r"sl\d", match.group(), re.I) else ()
    return f"sl{count}", (*habits, *(("sts",) if match["sts"] else ())), True


def _bind(match: Match) -> Found:
    word = "bo" if match["what"].lower().startswith("b") or "off" in match["what"].lower() else "co"
    same = re.fullmatch(r"[bc]o\d+", match.group(), re.I)
    return f"{word}{number(match['n'])}", () if same else ("bind-cast",), True


def _make(match: Match) -> Found:
    side = (match["side"] or "").lower()[:1]
    same = re.fullmatch(r"m1[lrp]?", match.group(), re.I)
    step = "m1" + {"l": "l", "r": "r", "p": "p"}.get(side, "")
    return step, () if same else ("make-one",), True


def _over(match: Match) -> Found:
    return "yo2", ("yarn-over",), True


_OVER_WORDS = r"(?:yarn\s+over|yon|yrn|yfrn|yarn\s+(?:a)?round\s+needle|wrn|wool\s+round\s+needle)"
_FORWARD = r"(?:yfwd|yf|yarn\s+(?:to\s+(?:the\s+)?)?forward|wfwd|wfd|w\.?\s?fwd|wool\s+forward)"
_PASS = r"(?:psso|p\s?sso|pass(?:\s+the)?\s+sl(?:ip(?:ped)?)?\s*(?:st|stitch)?\.?\s+over)"
_SEP = r"[\s,;-]*"
_WISE = r"(?:\s*(?:kwise|knitwise|k-wise))?"

PHRASES: tuple[Phrase, ...] = (
    # --- markers, before the slips ---
    Phrase(_shape(r"(?:slm|sl(?:ip)?\s*-?\s*(?:the\s+)?m(?:arker|kr)?)(?![\w])"),
           _fixed("sm", "marker")),
    Phrase(_shape(r"place\s+(?:a\s+|the\s+)?marker\b"), _fixed("pm", "marker")),
    Phrase(_shape(r"remove\s+(?:the\s+)?marker\b"), _fixed("rm", "marker")),
    # --- a slipped stitch passed over ---
    Phrase(_shape(rf"sl(?:ip)?\s*1(?:\s+st)?{_WISE}{_SEP}k\s*2\s*tog{_SEP}(?:and\s+)?{_PASS}"),
           _fixed("sk2p", "psso")),
    Phrase(_shape(rf"sl(?:ip)?\s*1(?:\s+st)?{_WISE}{_SEP}k(?:nit)?\s*1{_SEP}(?:and\s+)?{_PASS}"),
           _fixed("skp", "psso")),
    Phrase(_shape(rf"sl(?:ip)?\s*2(?:\s*tog)?{_WISE}{_SEP}k(?:nit)?\s*1{_SEP}p2sso"),
           _fixed("s2kp", "psso")),
    Phrase(_shape(r"skpo\b"), _fixed("skp", "psso")),
    # --- together ---
    Phrase(_shape(r"(?P<stitch>knit|purl|k|p)\s*(?:the\s+next\s+)?(?P<n>NUMBER)\s*"
                  r"(?:STITCHES\s+)?-?tog(?:ether)?(?![\w])"), _together),
    # --- into the back loop, into front and back ---
    Phrase(_shape(r"(?P<stitch>knit|purl|k|p)\s*(?P<n>NUMBER)?\s*-?\s*(?:STITCHES\s*)?"
                  r"(?:tbl(?![\w])|(?:through|thru|in(?:to)?)\s+(?:the\s+)?back"
                  r"(?:\s+of(?:\s+the)?)?\s+(?:loops?|STITCHES))"),
           lambda m: (
               (f"{_letter(m)}{number(m['n']) if m['n'] else '1'} tbl", (), True)
               if re.fullmatch(r"[kp]\d+ tbl", m.group(), re.I) else _back_loop(m))),
    Phrase(_shape(r"(?P<stitch>k|p)b1(?![\w])"),
           lambda m: (f"{_letter(m)}1 tbl", ("tbl",), False)),
    Phrase(_shape(r"(?P<stitch>knit|purl|k|p)\s*1?\s*(?:in(?:to)?\s+(?:the\s+)?)?"
                  r"(?:f\s*(?:&|/|and)?\s*b|fr(?:on)?t\s*(?:and|&)\s*(?:the\s+)?b(?:ac)?k"
                  r"(?:\s+of\s+(?:the\s+)?(?:next\s+|same\s+)?(?:st|stitch))?)(?![\w])"),
           lambda m: (f"{_letter(m)}fb",
                      () if re.fullmatch("[kp]fb", m.group(), re.I) else ("front-and-back",),
                      True)),
    # --- made stitches ---
    Phrase(_shape(r"(?:m\s*1|make\s+(?:1|one|a)(?:\s+STITCHES)?)\s*-?\s*\(?\s*"
                  r"(?P<side>left|right|purlwise|purl|l|r|p)?\)?(?![\w])"), _make),
    Phrase(_shape(rf"(?:yo|{_OVER_WORDS})\s*(?:twice|2\s*x|x\s*2|2\s+times)(?![\w])"), _over),
    Phrase(_shape(rf"{_OVER_WORDS}(?![\w])"), _fixed("yo", "yarn-over")),
    Phrase(_shape(rf"{_FORWARD}(?![\w])"), _fixed("yo", "yarn-forward", certain=False)),
    # --- twists ---
    Phrase(_shape(r"(?:tw2r|t2r|rt2|r\.t\.)(?![\w])"), _fixed("rt", "twist", certain=False)),
    Phrase(_shape(r"(?:tw2l|t2l|lt2|l\.t\.)(?![\w])"), _fixed("lt", "twist", certain=False)),
    # --- slipped stitches ---
    Phrase(_shape(r"(?:sl|s)\s*(?P<n>NUMBER)\s*(?P<how>[kp])(?![\w])"),
           lambda m: (f"sl{number(m['n'])} {m['how'].lower()}wise", ("modifier",), True)),
    Phrase(_shape(r"(?:slip|sl|s(?=\s*1))\s*-?\s*(?:the\s+)?(?:first\s+|next\s+|last\s+)?"
                  r"(?P<n>NUMBER)?\s*(?P<sts>STITCHES)?(?![\w&/])"), _slip),
    # --- bound off and cast on within the row ---
    Phrase(_shape(r"(?P<what>bo|bind\s*-?\s*off|cast\s*-?\s*off|co|cast\s*-?\s*on)\s*"
                  r"(?:the\s+)?(?:next\s+|first\s+)?(?P<n>NUMBER)\s*(?:STITCHES)?(?![\w/])"),
           _bind),
    # --- knit and purl ---
    Phrase(_shape(r"(?P<n>NUMBER)\s*(?P<stitch>k|p)(?![\w])"),
           lambda m: (f"{_letter(m)}{number(m['n'])}", ("turned-round",), True)),
    Phrase(_shape(r"(?P<stitch>knit|purl|k|p)\s*-?\s*(?:the\s+)?(?:next\s+|first\s+|last\s+)?"
                  r"(?P<n>NUMBER)\s*(?P<sts>STITCHES)?(?![\w/])(?!\s*rows?\b)"), _plain),
    Phrase(_shape(r"(?P<stitch>knit|purl|k|p)\s+(?:the\s+)?(?:next|first|last)\s+"
                  r"(?:stitch|st)\b\.?"), _next),
)  # fmt: skip

# Behind a step: how it is worked. Each gives the modifier of the notation.
MODIFIERS: tuple[tuple[re.Pattern[str], str], ...] = tuple(
    (re.compile(rf"[\s,]*(?:{text})(?![\w])", re.I), word)
    for text, word in (
        (r"\(?wyif\)?|\(?with\s+(?:the\s+)?yarn\s+(?:held\s+)?(?:in|to)\s+(?:the\s+)?front\)?|"
         r"\(?yarn\s+in\s+(?:the\s+)?front\)?|wyf", "wyif"),
        (r"\(?wyib\)?|\(?with\s+(?:the\s+)?yarn\s+(?:held\s+)?(?:in|to|at)\s+(?:the\s+)?back\)?|"
         r"\(?yarn\s+(?:in|at)\s+(?:the\s+)?back\)?|wyb", "wyib"),
        (r"\(?(?:pwise|purlwise|p-wise|purl-wise|as\s+if\s+to\s+purl)\)?", "pwise"),
        (r"\(?(?:kwise|knitwise|k-wise|knit-wise|as\s+if\s+to\s+knit)\)?", "kwise"),
        (r"-?tbl|(?:through|thru)\s+(?:the\s+)?back\s+loops?", "tbl"),
    )
)  # fmt: skip
PLAIN_MODIFIERS = frozenset(("wyif", "wyib", "pwise", "kwise", "tbl"))

# Words written without a blank between them, each of which is a stitch with its count.
PIECE = re.compile(r"yo|sk2p|skp|ssk|kfb|pfb|[kp]\d+tog|[kp]\d+|sl\d+|m1[lr]?", re.I)


def unglued(word: str) -> list[str] | None:
    """``k2p2`` in its parts; None where it is not made of stitch words alone."""
    parts: list[str] = []
    at = 0
    while at < len(word):
        match = PIECE.match(word, at)
        if match is None:
            return None
        parts.append(match.group().lower())
        at = match.end()
    return parts if len(parts) > 1 else None
