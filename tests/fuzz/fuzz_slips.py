"""A source changed token by token, as a writer's hand slips: pure, and the same for one dice.

The changes know the notation's words: a number becomes a near or an absurd one, a stitch another
stitch, a name another name of the same source, a line one of another source. So most of what comes
out is still read, and what is tried is the counting behind the reader.
"""

from __future__ import annotations

import random
import re
import sys
from collections.abc import Callable, Sequence
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
from fuzz_texts import strange

TOKEN = re.compile(r'"[^"\n]*"|\d[\d/.½¼¾]*|[^\W\d_]\w*(?:/\d+)*|=>|--|[ \t]+|\n|.')
_NUMBER = re.compile(r"\d[\d/.½¼¾]*$")
_COUNTED = re.compile(r"([a-z&]+?)(\d+)((?:/\d+)*)$", re.I)

STITCHES = [
    "k",
    "k1",
    "k2",
    "k3",
    "p",
    "p1",
    "p2",
    "k2/3/4",
    "yo",
    "yo2",
    "m1",
    "m1l",
    "m1r",
    "m1p",
    "lli",
    "rli",
    "k2tog",
    "p2tog",
    "ssk",
    "ssp",
    "skp",
    "k3tog",
    "p3tog",
    "sssk",
    "sk2p",
    "s2kp",
    "cdd",
    "k4tog",
    "kfb",
    "pfb",
    "sl1",
    "sl2",
    "drop1",
    "c4f",
    "c4b",
    "c6f",
    "t3f",
    "t3b",
    "rt",
    "lt",
    "k1b",
    "brk",
    "brp",
    "sl1yo",
    "bo1",
    "bo3",
    "co1",
    "co3",
    "pm",
    "sm",
    "rm",
    "turn",
    "w&t",
    "mb",
]
MODIFIERS = ["wyif", "wyib", "kwise", "pwise", "tbl"]
UNITS = [
    "cm",
    "mm",
    "in",
    "inches",
    "m",
    "yd",
    "metres",
    "g",
    "oz",
    "grams",
    "ounces",
    "stitches",
    "sts",
    "rows",
    "rounds",
]
KEYWORDS = [
    "pattern",
    "designer",
    "summary",
    "notion",
    "note",
    "section",
    "level",
    "sizes",
    "width",
    "length",
    "gauge",
    "on",
    "flat",
    "round",
    "before",
    "after",
    "blocking",
    "swatch",
    "weighs",
    "measures",
    "needle",
    "bound",
    "yarn",
    "weight",
    "fibre",
    "shade",
    "of",
    "colour",
    "stripes",
    "strand",
    "feeds",
    "half",
    "stitch",
    "takes",
    "makes",
    "motif",
    "over",
    "starts",
    "edge",
    "every",
    "even",
    "odd",
    "row",
    "rows",
    "knit",
    "purl",
    "as",
    "piece",
    "cast",
    "for",
    "bind",
    "off",
    "by",
    "work",
    "to",
    "until",
    "is",
    "spent",
    "keep",
    "join",
    "tail",
    "hold",
    "all",
    "take",
    "pick",
    "up",
    "along",
    "last",
    "gap",
    "more",
    "leave",
    "live",
    "begin",
    "in",
    "spread",
    "rs",
    "ws",
    "x",
]
_WORDS = [STITCHES, MODIFIERS, UNITS, KEYWORDS]
STEPS = [
    "* k1 *", "* k1 p1 *", "(k1 yo k1) in 1", "(k1 p1) x2", "(* k1 * k2tog sm) x3", "turn", "w&t",
    "to last 2", "to 2 before gap", "to gap", "hold 3 as q", "take q", "pick up 4 along left edge",
    "spread k2tog x3", "sl1 wyif", "k1 tbl", "c6b", "bo3", "co2", "pm", "sm", "rm", "drop1", "m1",
    "=> 20", "=> +2", "=> -1", "=> +0",
]  # fmt: skip
LINES = [
    "row: knit", "rows 3: * k1 p1 *", "row 1: k2 * yo k2tog * k1", "row 2: as row 1", "round: knit",
    "every ws row: purl", "every rs row: knit", "every even round: knit", "every row: k1 * p1 k1 *",
    "rows 2, 4, 6-10: purl", "row 3 in B: k1 * sl1 wyif k1 *", "edge 1 garter", "edge 2 slipped",
    "edge 1 seed", "edge 3 stockinette", "width 30 cm", "length 40/50 cm", "sizes s, m", "sizes a",
    "cast on 20", "cast on for width", "cast on 4 more by backward loop", "bind off", "leave live",
    "bind off by gathering", 'leave live "graft"', "join round", "leave round",
    "begin round after 2",
    "hold 5 as q", "hold all as q", "take q", "take q, r", "pick up 7 in A along left edge",
    "join front, back", "work m x3", "work m for 7 rows", "work m to 12 cm", "work m to length",
    "work m to length - 2 rows", "work m to length + 3 cm", "work m until 8 stitches",
    "work m until A is spent, keep 3 rows", "work m x1000000", "row: k3 turn", "row: hold 4 as q",
    "row: take q * k1 *", "row: (k3 pm) x2 * k1 *", "row: (* k1 * k2tog sm) x2 * k1 *",
    "spread m x4 in n over 20 rows", "spread m until 12 stitches in n to length - 2 rows",
    "spread m x3 in n to 10 cm", "motif m over 2n + 1", "motif m over n", "motif m over 6",
    "motif m", "motif m over 4n + 2 starts ws", "motif m round", "piece q flat", "piece q round",
    "piece q flat starts ws", 'section "S"', 'note "N"', "gauge 20 stitches 28 rows = 10 cm",
    "gauge 5 stitches 7 rows = 1 in in m on 5 mm round before blocking", "level easy",
    "swatch 40 stitches 40 rows weighs 12 g", "swatch 40 stitches 40 rows measures 20 x 19 cm",
    "needle circular 4 mm 60 cm", "bound slip 4 rows", "bound carry 10 rows",
    "bound float 5 stitches",
    'yarn y "Y": 50 g 120 m, weight 3', 'shade s "S" of y, colour #abc',
    "shade t of y, stripes #123456 2 m, #fff 3 m", "strand A feeds s",
    "strand B feeds half s, t x2",
    "strand C feeds 20 g s, 10 m t", 'stitch mb "bobble": takes 1, makes 1, yarn 5, "knit it"',
    "stitch zz: takes 3, makes 1", "join by worked-in, tail 18 in", "join by knot at edge",
    'pattern "P"',
]  # fmt: skip
ODD = ["½", "é", "ß", "İ", "\u202e", "\t", "\u00a0", "×", "−", "–", "“", "’", "0", "\r", "\x00",
       "#", "&", "/", "x", "n", "\ufeff", "１", "😀"]  # fmt: skip
NUMBERS = ["0", "1", "2", "3", "7", "10", "99", "100", "1000", "4096", "1000000", "999999999",
           "1000000000", "1000000001", "9" * 30, "0.5", "½", "2½", "1/2", "1/2/3", "3/2/1", "0/1",
           "1/1", "12/14/16/18", "00"]  # fmt: skip

Change = Callable[[list[str], random.Random, Sequence[str]], None]


def slip(text: str, dice: random.Random, pool: Sequence[str], most: int = 4) -> str:
    """The text after one to `most` changes; lines and blocks may come from `pool`."""
    for _ in range(dice.randint(1, most)):
        if dice.random() < 0.45:
            lines = text.split("\n")
            dice.choice(_BY_LINE)(lines, dice, pool)
            text = "\n".join(lines)
        else:
            tokens = TOKEN.findall(text)
            if tokens:
                dice.choice(_BY_TOKEN)(tokens, dice, pool)
            text = "".join(tokens)
    return text


# --- changes of tokens ----------------------------------------------------------------------------


def _somewhere(tokens: list[str], dice: random.Random) -> int:
    """The place of a token, seldom of white space or quoted text."""
    for _ in range(6):
        at = dice.randrange(len(tokens))
        if not tokens[at].isspace() and not tokens[at].startswith('"'):
            break
    return at


def _number(tokens: list[str], dice: random.Random, pool: Sequence[str]) -> None:
    places = [at for at, t in enumerate(tokens) if _NUMBER.match(t) or _COUNTED.match(t)]
    if not places:
        return
    at = dice.choice(places)
    counted = _COUNTED.match(tokens[at])
    head, digits = (counted[1], counted[2] + counted[3]) if counted else ("", tokens[at])
    tokens[at] = head + another_number(digits, dice)


def another_number(digits: str, dice: random.Random) -> str:
    """Another number or size list, mostly a near one."""
    if dice.random() < 0.2:
        return dice.choice(NUMBERS)
    parts = digits.split("/")
    at = dice.randrange(len(parts))
    kind = dice.randrange(8)
    if kind == 0:
        parts.insert(at, parts[at])
    elif kind == 1 and len(parts) > 1:
        del parts[at]
    elif kind == 2:
        dice.shuffle(parts)
    elif parts[at].isdigit() and len(parts[at]) < 12:
        value = int(parts[at])
        parts[at] = str(max(0, dice.choice([value + 1, value - 1, value + 2, value - 2,
                                            2 * value, value // 2])))  # fmt: skip
    return "/".join(parts)


def _same_class(tokens: list[str], dice: random.Random, pool: Sequence[str]) -> None:
    at = _somewhere(tokens, dice)
    word = tokens[at].lower()
    for words in _WORDS:
        if word in words:
            tokens[at] = dice.choice(words)
            return
    if tokens[at][:1].isalpha():  # a name, or a stitch with another count
        names = [t for t in tokens if t[:1].isalpha() and t.lower() not in KEYWORDS]
        tokens[at] = dice.choice(names or STITCHES)
    else:
        tokens[at] = dice.choice(["*", "(", ")", ",", ":", "=>", "=", "+", "-", "--", '"'])


def _drop(tokens: list[str], dice: random.Random, pool: Sequence[str]) -> None:
    del tokens[_somewhere(tokens, dice)]


def _double(tokens: list[str], dice: random.Random, pool: Sequence[str]) -> None:
    at = _somewhere(tokens, dice)
    tokens[at : at + 1] = [tokens[at], " ", tokens[at]]


def _swap(tokens: list[str], dice: random.Random, pool: Sequence[str]) -> None:
    one, other = _somewhere(tokens, dice), _somewhere(tokens, dice)
    tokens[one], tokens[other] = tokens[other], tokens[one]


def _step(tokens: list[str], dice: random.Random, pool: Sequence[str]) -> None:
    """A step more in some row."""
    colons = [at for at, t in enumerate(tokens) if t == ":"]
    if not colons:
        return
    at = dice.choice(colons) + 1
    while at < len(tokens) and tokens[at] != "\n" and dice.random() < 0.7:
        at += 1
    tokens.insert(at, f" {dice.choice(STITCHES if dice.random() < 0.5 else STEPS)} ")


def _wrap(tokens: list[str], dice: random.Random, pool: Sequence[str]) -> None:
    """Some steps of a row put into a group or a fill."""
    start = _somewhere(tokens, dice)
    end = start
    while end < len(tokens) and tokens[end] != "\n" and end < start + dice.randint(1, 9):
        end += 1
    before, after = dice.choice(
        [("(", ") x2"), ("(", ") x0"), ("(", ") in 1"), ("* ", " *"), ("(", ") x1000000"),
         ("(", ") x2/3"), ('"', '"'), ("(", ")")]
    )  # fmt: skip
    tokens.insert(end, after)
    tokens.insert(start, before)


def _odd(tokens: list[str], dice: random.Random, pool: Sequence[str]) -> None:
    tokens.insert(dice.randrange(len(tokens) + 1), dice.choice(ODD))


def _case(tokens: list[str], dice: random.Random, pool: Sequence[str]) -> None:
    at = _somewhere(tokens, dice)
    tokens[at] = dice.choice([str.upper, str.title, str.swapcase])(tokens[at])


# --- changes of lines -----------------------------------------------------------------------------


def _drop_line(lines: list[str], dice: random.Random, pool: Sequence[str]) -> None:
    del lines[dice.randrange(len(lines))]


def _double_line(lines: list[str], dice: random.Random, pool: Sequence[str]) -> None:
    at = dice.randrange(len(lines))
    lines.insert(dice.choice([at, dice.randrange(len(lines))]), lines[at])


def _move_line(lines: list[str], dice: random.Random, pool: Sequence[str]) -> None:
    line = lines.pop(dice.randrange(len(lines)))
    lines.insert(dice.randrange(len(lines) + 1), line)


def _new_line(lines: list[str], dice: random.Random, pool: Sequence[str]) -> None:
    """A line of any kind, about the names that this source has."""
    line = dice.choice(LINES)
    names = re.findall(r"(?m)^\s*(?:motif|piece|strand|shade)\s+([\w-]+)", "\n".join(lines), re.I)
    if names:
        line = re.sub(r"\b(?:m|n|q|front|back)\b", lambda _: dice.choice(names), line)
    lines.insert(dice.randrange(len(lines) + 1), f"  {line}")


def _line_of_another(lines: list[str], dice: random.Random, pool: Sequence[str]) -> None:
    if pool:
        line = dice.choice(dice.choice(pool).split("\n"))
        lines.insert(dice.randrange(len(lines) + 1), line)


def _block_of_another(lines: list[str], dice: random.Random, pool: Sequence[str]) -> None:
    if pool:
        blocks = re.split(r"(?m)^(?=(?:motif|piece|yarn|stitch)\b)", dice.choice(pool))
        lines[dice.randrange(len(lines) + 1) : 0] = dice.choice(blocks).split("\n")


def _other_body(lines: list[str], dice: random.Random, pool: Sequence[str]) -> None:
    rows = [at for at, line in enumerate(lines) if ":" in line and "row" in line + "row"]
    if len(rows) > 1:
        one, other = dice.choice(rows), dice.choice(rows)
        lines[one] = lines[one].partition(":")[0] + ":" + lines[other].partition(":")[2]


_BY_TOKEN: list[Change] = [_number, _number, _number, _same_class, _same_class, _drop, _double,
                           _swap, _step, _step, _wrap, _odd, _case, strange]  # fmt: skip
_BY_LINE: list[Change] = [_drop_line, _double_line, _move_line, _new_line, _new_line,
                          _line_of_another, _block_of_another, _other_body]  # fmt: skip
