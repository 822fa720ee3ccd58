"""Opening lines and lines of materials in words of one's own: pieces, motifs, yarns, strands."""

from __future__ import annotations

import re

from loopwright.facts.yarns import yarn_weights
from loopwright.notation.habits.answer import Answer, Reader
from loopwright.notation.habits.counts import number

_NAME = r"[^\W\d_][\w-]*"
_ROUND = (
    r"(?:(?:worked|work|knit|knitted|made)\s+)?(?:in\s+(?:the\s+)?rounds?|rounds|circular(?:ly)?|tubular)"
    r"|(?:worked|work|knit|knitted|made)\s+round"
)
_FLAT = (
    r"(?:(?:worked|work|knit|knitted|made)\s+)?(?:in\s+rows|back\s+and\s+forth|straight|rows)"
    r"|(?:worked|work|knit|knitted|made)(?:\s+flat)?"
)
_PIECE = re.compile(
    r"(?:(?P<before>flat|round)\s+)?(?:pieces?|part|panel)\s*:?\s+(?:(?P<first>flat|round)\s+)?"
    r"(?P<name>\"[^\"]{1,60}\"|[\w' -]{1,60}?)"
    rf"\s*[:,]?(?:\s+\(?(?:(?P<round>{_ROUND}|round)|(?P<flat>{_FLAT}|flat))\)?)?"
    r"(?P<starts>\s+starts\s+ws)?[\s.:]*$",
    re.I,
)
_PIECE_ALONE = re.compile(
    rf"(?P<name>{_NAME})\s+(?:(?:worked|knit|knitted)\s+)?"
    r"(?:(?P<round>round|in\s+(?:the\s+)?rounds?)|(?P<flat>flat|back\s+and\s+forth))[\s.:]*$",
    re.I,
)
_MOTIF = re.compile(
    r"(?:motif|(?:stitch\s+)?pattern\s+stitch|stitch\s+pattern)\s*:?\s+"
    r"(?P<name>\"[^\"]{1,60}\"|[\w' -]{1,60}?)\s*[:,]?"
    r"(?:\s+over\s+(?P<unit>\d+)\s*(?P<n>n)?\s*(?:(?P<sign>[+-]|plus\b|minus\b)\s*(?P<fixed>\d+))?"
    r"\s*(?:stitches|sts)?)?(?P<round>\s+round)?(?P<starts>\s+starts\s+ws)?[\s.:]*$",
    re.I,
)
_STITCHES = r"(?:stitches|stitch|sts|st)\b\.?"
_MULTIPLE = re.compile(
    r"(?:motif\s+(?P<name>[^\W\d_][\w-]*)\s*[:,]?\s*)?[(\[]?\s*(?:over\s+)?(?:a\s+)?"
    rf"mult(?:iple)?s?\.?\s+(?:of\s+)?(?P<unit>\d+)\s*(?:{_STITCHES})?\s*"
    rf"(?:,?\s*(?P<sign>\+|plus|-|minus)\s*(?P<fixed>\d+)\s*(?:{_STITCHES})?)?\s*[)\]]?[\s.]*$",
    re.I,
)
_FORM = re.compile(
    r"motif\s+(?P<name>[^\W\d_][\w-]*)\s*[:,]?\s*(?P<unit>\d+)\s*n\s*"
    r"(?:(?P<sign>\+|plus|-|minus)\s*(?P<fixed>\d+))?$",
    re.I,
)
_FEEDS = re.compile(
    rf"strand\s+(?P<strand>{_NAME})\s+(?:feeds?|uses|is|=|:)\s*(?P<n>\d+|one|two|three|four|five|six)\s+"
    rf"(?:balls?|skeins?|hanks?|x)?\s*(?:of\s+)?(?P<shade>{_NAME})[\s.]*$",
    re.I,
)
_BEHIND = re.compile(
    rf"strand\s+(?P<strand>{_NAME})\s+feeds\s+(?P<shade>{_NAME})\s*[x×]?\s*(?P<n>\d+)\s*"
    r"(?:balls?|skeins?|hanks?)?[\s.]*$",
    re.I,
)
_ROWS_FIRST = re.compile(
    r"(?P<n>\d{1,6})\s+(?P<word>row|round)s?\s*[:,]?\s*(?:of\s+)?(?P<rest>[^\s:].*)", re.I
)
_OTHER_MARK = re.compile(r"(?P<word>row|round)\s*(?:[;,.=]|-+)\s*(?P<rest>[^\s:].*)", re.I)
_NAMED = re.compile(
    r"(?:(?:work|knit|do|make|follow|use|repeat)\s+)?(?:the\s+)?(?:motif\s+)?\"?(?P<name>[^\W\d_][\w-]*)\"?"
    r"(?P<rest>\s.+)",
    re.I,
)
_YARN = re.compile(r"(?P<head>yarn\s+[^:]+:\s*)(?P<rest>.+)$", re.I)
_TITLE = re.compile(r"\"(?P<text>[^\"]+)\"$")
_NO_NAME = frozenset(
    ("a", "an", "the", "in", "of", "and", "for", "over", "with", "using", "worked", "work", "knit",
     "join", "leave", "rows", "rounds", "circular", "multiple", "mult", "repeat", "sts", "stitches",
     "stitch", "n", "x", "flat", "round")
)  # fmt: skip


def opened(line: str, reader: Reader) -> Answer | None:
    """The answer to a piece, a motif, a yarn or a strand in words of one's own, or None."""
    named = _only_named(line, reader)
    if named is not None:
        return named
    for of in (_reordered, _piece, _multiple, _motif, _feeds, _yarn, _title):
        answer = of(line)
        if answer is not None and all(reader.reads(text) for text in answer.lines):
            return answer
    return None


def one_word(text: str) -> str | None:
    """A name as the notation takes it: ``left sleeve`` is left-sleeve, ``2x2 rib`` rib-2x2."""
    words = re.findall(r"\w+", text.lower())
    letters = [word for word in words if not word[0].isdigit()]
    figures = [word for word in words if word[0].isdigit()]
    if not letters or len(words) > 4 or _NO_NAME.intersection(words):
        return None
    return "-".join([*letters, *figures])


def _only_named(line: str, reader: Reader) -> Answer | None:
    """A motif of the file worked by another word, or by none."""
    match = _NAMED.fullmatch(line)
    if match is None or match["name"].lower() not in reader.motifs:
        return None
    text = f"work {match['name']}{match['rest']}"
    if text == line or not reader.reads(text):
        return None
    return Answer("A motif is worked by “work” and its name.", lines=(text,), certain=True)


def _reordered(line: str) -> Answer | None:
    """Words of ours in another order or with another mark: ``4 rows knit``, ``row - k42``."""
    rows = _ROWS_FIRST.match(line)
    if rows is not None:
        return Answer(
            "How many rows are worked alike stands behind “rows”, with a colon after it.",
            lines=(f"{rows['word']}s {rows['n']}: {rows['rest']}",),
        )
    mark = _OTHER_MARK.match(line)
    if mark is not None:
        return Answer("A colon stands before the stitches of a row.",
                      lines=(f"{mark['word']}: {mark['rest']}",))  # fmt: skip
    if line.lower().startswith("finished "):
        return Answer("The finished size is said by “width” and “length” alone.",
                      lines=(line[len("finished "):],), certain=True)  # fmt: skip
    return None


def _piece(line: str) -> Answer | None:
    match = _PIECE.match(line)
    if match is None:
        match = _PIECE_ALONE.match(line)
        if match is None or match["name"].lower() in _NO_NAME:
            return None
    groups = match.groupdict()
    way = (groups.get("before") or groups.get("first") or "").lower()
    way = "round" if match["round"] else "flat" if match["flat"] else way
    written = match["name"].strip().strip('"').strip()
    name = written if re.fullmatch(_NAME, written) else one_word(written)
    if name is None:
        return None
    return Answer(
        "A piece has a name of one word, and behind it “flat” (to and fro) or “round”.",
        lines=(
            " ".join(filter(None, ["piece", name, way, "starts ws" * bool(groups.get("starts"))])),
        ),
        certain=name == written and bool(way) and "piece" in line.lower(),
    )


def _multiple(line: str) -> Answer | None:
    match = _MULTIPLE.match(line) or _FORM.match(line)
    if match is None:
        return None
    unit = match["unit"]
    sign = "-" if (match["sign"] or "+").lower() in ("-", "minus") else "+"
    fixed = match["fixed"]
    form = f"{unit}n" + (f" {sign} {fixed}" if fixed and fixed != "0" else "")
    name = match["name"]
    if name is None:
        return Answer(
            "The counts that a motif is valid on stand in its opening line, as a form.",
            f"write “over {form}” behind the motif's name: “motif NAME over {form}”.",
        )
    return Answer(
        "The counts that a motif is valid on are given as a form, with “over” before it.",
        lines=(f"motif {name} over {form}",),
        certain=True,
    )


def _motif(line: str) -> Answer | None:
    match = _MOTIF.match(line)
    if match is None or re.search(r"\b(?:\d+n|over|ovr)\b", match["name"], re.I):
        return None
    written = match["name"].strip().strip('"').strip()
    name = written if re.fullmatch(_NAME, written) else one_word(written)
    if name is None:
        return None
    text = f"motif {name}"
    message = "A motif has a name of one word"
    if match["unit"]:
        sign = "-" if (match["sign"] or "+").lower() in ("-", "minus") else "+"
        text += f" over {match['unit']}n" + (f" {sign} {match['fixed']}" if match["fixed"] else "")
        message += ", and behind “over” the counts it fits, with n for the number of repeats"
    text += (" round" if match["round"] else "") + (" starts ws" if match["starts"] else "")
    # “over 4” may be one count, and “over 4 + 2” a sum: the n is what print leaves out.
    return Answer(f"{message}.", lines=(text,), certain=name == written and bool(match["n"]))


def _feeds(line: str) -> Answer | None:
    match = _FEEDS.match(line) or _BEHIND.match(line)
    if match is None:
        return None
    return Answer(
        "How many balls a strand eats stands behind the shade, as x and the number.",
        lines=(f"strand {match['strand']} feeds {match['shade']} x{number(match['n'])}",),
        certain=True,
    )


def _yarn(line: str) -> Answer | None:
    """The yarn's weight as the shops name it, and what a ball has with “per” or a slash."""
    match = _YARN.match(line)
    if match is None:
        return None
    rest = re.sub(
        r"(?<=[a-z])\s*(?:/|=|per|to)\s*(?=\d)", " ", match["rest"].strip(" ."), flags=re.I
    )
    said = ["What a ball weighs and how long it is follow one another."] * (rest != match["rest"])
    *before, last = [part.strip() for part in rest.split(",")]
    found = [
        weight.category
        for weight in yarn_weights()
        if last.lower().removesuffix(" weight")
        in (name.lower() for name in (weight.name, *weight.yarns))
    ]
    if len(set(found)) == 1 and before:
        rest = ", ".join([*before, f"weight {found[0]}"])
        said.append(
            f"The weight of a yarn is its number, 0 (lace) to 7 (jumbo): {last} is {found[0]}."
        )
    if not said:
        return None
    return Answer(" ".join(said), lines=(f"{match['head']}{rest}",), certain=True)


def _title(line: str) -> Answer | None:
    match = _TITLE.match(line)
    if match is None:
        return None
    return Answer(
        "Before a text stands the word that says what it is.",
        "choose the line that is meant:",
        tuple(f'{word} "{match["text"]}"' for word in ("pattern", "designer", "note")),
    )
