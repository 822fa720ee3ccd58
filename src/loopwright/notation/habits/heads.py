"""Reads what stands before the stitches of a printed row: its number, its side, its yarn."""

from __future__ import annotations

import re

from loopwright.record import dataclass

_ORDINALS = ("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth",
             "tenth", "eleventh", "twelfth")  # fmt: skip
_CARDINALS = ("one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
              "eleven", "twelve")  # fmt: skip
_CARDINAL = "(?:" + "|".join(_CARDINALS) + ")"
_ROW = r"(?P<word>rows?|rounds?|rnds?|rds?)\b\.?"
_NTH = r"(?:\d{1,6}(?:st|nd|rd|th)|" + "|".join(_ORDINALS) + ")"
_LIST = r"\d{1,6}(?:\s*(?:,\s*(?:and\b|&)?|and\b|&|to\b|through\b|thru\b|[-–+])\s*\d{1,6})*"
_WHICH = (
    r"(?P<which>rs|ws|right[\s-]+side|wrong[\s-]+side|even|odd)(?:[\s-]*numbered)?\s+"
    r"(?P<word>rows?|rounds?|rnds?|rds?)\b"
)
_SIDE = re.compile(
    r"\s*,?\s*(?:[(\[{]\s*(?:on\s+)?(?P<one>rs|ws|right\s+side|wrong\s+side)(?:\s+facing)?\s*[)\]}]"
    r"|(?P<two>rs|ws)\b)",
    re.I,
)
_STRAND = re.compile(
    r"\s*,?\s*(?:(?:in|with|using)\s+(?:(?:strand|yarn|colou?r)\s+)?(?P<one>[^\W\d_][\w-]*)|"
    r"\(\s*(?P<two>[a-e]|mc|cc)\s*\))(?=\s*[:.,;)\-]|\s+\S|\s*$)",
    re.I,
)
_BEFORE = re.compile(
    r"(?:with|using|in)\s+(?:(?:strand|yarn|colou?r)\s+)?(?P<name>[^\W\d_][\w-]*)\s*[,:]\s*", re.I
)
_FORMS = tuple(
    (kind, re.compile(text, re.I))
    for kind, text in (
        ("every", rf"(?:(?:row|rnd|round)\s+\d+\s*,?\s*(?:and|&)\s+)?(?:all|every|each)\s+"
                  rf"(?:(?:foll(?:owing)?|rem(?:aining)?)\.?\s+)?{_WHICH}"),
        ("every", rf"{_WHICH}"),
        ("all", r"(?:all|every|each)\s+(?P<word>rows?|rounds?|rnds?|rds?)\b"),
        ("next", rf"(?:next|foundation|set\s*-?\s*up|following)\s+(?:(?P<n>\d{{1,6}})\s+)?{_ROW}"),
        ("ordinal", rf"(?P<n>{_NTH}(?:\s*(?:,|and|&)\s*{_NTH})*)\s+{_ROW}"),
        ("numbers", rf"(?P<word>rows?|rounds?|rnds?|rds?|r)\.?\s*#?\s*(?P<n>{_LIST})"),
        ("figure", r"(?P<word>(?=\d))(?P<n>\d{1,4})(?=\s*[.:]\s*(?:[kp*(]|sl|yo|ssk))"),
        ("named", rf"(?P<word>rows?|rounds?|rnds?|rds?)\s+(?P<n>{_CARDINAL})\b"),
        ("plain", r"(?P<word>rows?|rounds?|rnds?|rds?)(?=\s*:|\s+in\b)"),
    )
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Head:
    """The head as the notation writes it, up to the colon; `rest` are the stitches.

    `given` is false where the line has no head at all. `count` marks ``rows 4:``, where a piece
    is meant. `certain` as in `Answer`.
    """

    text: str
    rest: str
    habits: tuple[str, ...]
    certain: bool
    given: bool = True


def _numbers(text: str) -> str:
    text = re.sub(r"\s*(?:to\b|through\b|thru\b|[-–])\s*", "-", text.lower())
    text = re.sub(r"\s*(?:,\s*(?:and\b|&)?|and\b|&|\+)\s*", ", ", text)
    return text


def _ordinals(text: str) -> str:
    found = re.findall(_NTH, text.lower())
    return ", ".join(
        str(_ORDINALS.index(one) + 1) if one in _ORDINALS else re.sub(r"\D", "", one)
        for one in found
    )


def read_head(line: str) -> Head:
    """The head of a printed row. A line that has none gets ``row``."""
    text = line.strip()
    habits: list[str] = []
    strand = ""
    before = _BEFORE.match(text)
    if before is not None:
        strand, text = before["name"], text[before.end() :]
        habits.append("strand")
    certain = True
    found_form = next(
        ((kind, match) for kind, shape in _FORMS if (match := shape.match(text)) is not None), None
    )
    if found_form is None:
        word, which, found = "row", "", ""
        head = f"{word} in {strand}" if strand else word
        return Head(head, text, (*habits, "no-head"), False, given=False)
    kind, match = found_form
    spelled = match["word"].lower()
    round_ = spelled.startswith(("rou", "rn", "rd"))
    word = "round" if round_ else "row"
    if spelled and not spelled.startswith(("row", "rou")):
        habits.append("round-short" if round_ else "row-short")
    which = found = ""
    if kind == "every":
        which = match["which"].lower().replace("right", "r").replace("wrong", "w")
        which = re.sub(r"^([rw])[\s-]+side", r"\1s", which)
        habits.append("rows-of-side")
        lowered = match.group().lower()
        # “every other row” may be the even or the odd ones; “row 2 and” must be of the side.
        first = re.match(r"\w+\s+(\d+)", lowered)
        if first is not None:
            certain = (int(first[1]) % 2 == 0) == (which in ("ws", "even")) and not round_
        elif not re.match(r"all|every|each", lowered) and not spelled.endswith("s"):
            # “ws row: purl” may be the next row of a piece.
            certain = False
        if round_ and which in ("rs", "ws"):
            certain = False
    elif kind == "all":
        habits += [] if match.group().lower().startswith("every") else ["rows-of-side"]
    elif kind == "next":
        found = match["n"] or ""
        habits.append("next")
        certain = match.group().lower().startswith("next")
    elif kind == "ordinal":
        found = _ordinals(match["n"])
        habits.append("ordinal")
    elif kind == "figure":
        found = match["n"]
        habits.append("bare-number")
    elif kind == "named":
        found = str(_CARDINALS.index(match["n"].lower()) + 1)
        habits.append("figure")
    elif kind == "numbers":
        if re.match(r"(?:row|round)s?\d", match.group(), re.I):
            habits.append("figure")
        found = _numbers(match["n"])
        if not re.fullmatch(r"\d+(?:\s*-\s*\d+)?(?:,\s*\d+(?:\s*-\s*\d+)?)*", match["n"]):
            habits.append("row-list")
    rest = text[match.end() :]
    side = _SIDE.match(rest)
    if side is not None:
        rest = rest[side.end() :]
        right = (side["one"] or side["two"]).lower().startswith("r")
        several = [int(number) for number in re.findall(r"\d+", found)]
        if kind in ("numbers", "ordinal") and several and "-" not in found:
            agrees = all((number % 2 == 1) == right for number in several) and not round_
        else:
            agrees = False
        contrary = kind in ("numbers", "ordinal") and len(several) == 1 and not agrees
        habits.append("side-first" if contrary and not round_ else "side")
        certain = certain and agrees
    named = _STRAND.match(rest)
    if named is not None and not strand:
        strand, rest = named["one"] or named["two"], rest[named.end() :]
        if not re.match(r"\s*in\s+\w", named.group(), re.I) or " strand" in named.group().lower():
            habits.append("strand")
        side = _SIDE.match(rest)
        if side is not None:
            rest = rest[side.end() :]
            habits.append("side")
            certain = False
    separator = re.match(r"\s*(?:[.,;:=]|-+>?)+\s*", rest)
    if separator is None:
        habits.append("no-colon")
        if re.match(r"[^\W\d_]", rest):
            certain = False
    else:
        if separator.group().strip() != ":":
            habits.append("separator")
            if re.match(r"[,-].*:", separator.group().strip()):
                certain = False  # “rows 2-:” may lack its second number
        rest = rest[separator.end() :]
    plural = kind not in ("every", "all") and (
        bool(re.search(r"[,-]", found)) or (kind == "next" and bool(found))
    )
    head = word + ("s" if plural else "")
    if kind == "every":
        head = f"every {which} {word}"
    elif kind == "all":
        head = f"every {word}"
    if found:
        head += f" {found}"
    if strand:
        head += f" in {strand}"
    return Head(head, rest.strip(), tuple(habits), certain)
