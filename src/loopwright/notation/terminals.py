"""What each terminal of the grammar is called when a message speaks to a knitter."""

from __future__ import annotations

import re

# Terminals that stand for themselves are shown as written, in quotes.
HUMAN: dict[str, str] = {
    "PATTERN": "“pattern”",
    "DESIGNER": "“designer”",
    "SUMMARY": "“summary”",
    "NOTION": "“notion”",
    "NOTE": "“note”",
    "SECTION": "“section”",
    "LEVEL": "“level”",
    "CARE": "“care”",
    "SIZES": "“sizes”",
    "WIDTH": "“width”",
    "LENGTH": "“length”",
    "GAUGE": "“gauge”",
    "ON": "“on”",
    "FLAT": "“flat”",
    "BEFORE": "“before”",
    "AFTER": "“after”",
    "BLOCKING": "“blocking”",
    "SWATCH": "“swatch”",
    "WEIGHS": "“weighs”",
    "MEASURES": "“measures”",
    "NEEDLE": "“needle”",
    "BOUND": "“bound”",
    "YARN": "“yarn”",
    "WEIGHT": "“weight”",
    "FIBRE": "“fibre”",
    "SHADE": "“shade”",
    "OF": "“of”",
    "STRIPES": "“stripes”",
    "STRAND": "“strand”",
    "FEEDS": "“feeds”",
    "HALF": "“half”",
    "STITCH": "“stitch”",
    "TAKES": "“takes”",
    "MAKES": "“makes”",
    "MOTIF": "“motif”",
    "OVER": "“over”",
    "STARTS": "“starts”",
    "EDGE": "“edge”",
    "EVERY": "“every”",
    "EVEN": "“even”",
    "ODD": "“odd”",
    "KNIT": "“knit”",
    "PURL": "“purl”",
    "AS": "“as”",
    "PIECE": "“piece”",
    "CAST": "“cast on”",
    "FOR": "“for”",
    "BIND": "“bind off”",
    "_OFF": "“off”",
    "BY": "“by”",
    "WORK": "“work”",
    "TO": "“to”",
    "UNTIL": "“until”",
    "IS": "“is”",
    "SPENT": "“spent”",
    "KEEP": "“keep”",
    "JOIN": "“join”",
    "TAIL": "“tail”",
    "HOLD": "“hold”",
    "ALL": "“all”",
    "TAKE": "“take”",
    "PICK": "“pick up”",
    "UP": "“up”",
    "ALONG": "“along”",
    "LAST": "“last”",
    "GAP": "“gap”",
    "MORE": "“more”",
    "LEAVE": "“leave”",
    "LIVE": "“live”",
    "BEGIN": "“begin round after”",
    "_IN": "“in”",
    "SPREAD": "“spread”",
    "ROW": "“row”",
    "ROUND": "“round”",
    "_ROWS": "“rows”",
    "_STITCHES": "“stitches”",
    "SIDE": "“rs” or “ws”",
    "MODIFIER": "a modifier such as wyif",
    "_COLOUR": "“colour”",
    "TIMES": "“x” and a number",
    "UNIT": "a unit (cm, mm, in, m, yd, g, oz)",
    "NUMBER": "a number",
    "COEFFICIENT": "a form such as 2n + 4",
    "COLOUR_CODE": "a colour such as #2f5d62",
    "ARROW": "“=>”",
    "SIGN": "“+” or “-”",
    "DASH": "a dash",
    "STAR": "a star",
    "LPAR": "an opening parenthesis",
    "RPAR": "a closing parenthesis",
    "_COMMA": "a comma",
    "_COLON": "a colon",
    "_EQUALS": "“=”",
    "STRING": "text in double quotes",
    "NAME": "a name",
    "SIZE_NAME": "a size name",
    "WORD": "a stitch word",
    "_NL": "the end of the line",
    "$END": "the end of the line",
}

# The words a line can start with, for "did you mean".
LINE_WORDS: tuple[str, ...] = (
    "pattern",
    "designer",
    "summary",
    "level",
    "care",
    "sizes",
    "width",
    "length",
    "gauge",
    "swatch",
    "needle",
    "bound",
    "notion",
    "note",
    "section",
    "yarn",
    "shade",
    "strand",
    "stitch",
    "motif",
    "edge",
    "row",
    "rows",
    "round",
    "rounds",
    "every",
    "piece",
    "cast",
    "bind",
    "work",
    "join",
    "hold",
    "take",
    "pick",
    "leave",
    "begin",
    "spread",
)


_CARE = "a phrase of care such as “hand wash”"
_IN_LINE: dict[str, dict[str, str]] = {
    "care": {"NAME": _CARE, "NUMBER": _CARE},
    "level": {"NAME": "“basic”, “easy”, “intermediate” or “complex”"},
    "bound": {"NAME": "“slip”, “carry” or “float”"},
}
"""Terminals that are less than any name or number in a line with that first word."""

_LINE_HELP = {
    "care": "say how it is washed, bleached, dried, ironed and cleaned, as far as you know, with "
    "commas between: “care hand wash, no bleach, dry flat, iron low, no dry cleaning”.",
}


def expected_text(names: set[str], line: str = "") -> str:
    """The terminals a parser state takes, as a knitter would say them: ``a colon or a number``.

    `line` is the first word of the line.
    """
    own = _IN_LINE.get(line, {})
    words = sorted({own.get(name) or HUMAN.get(name, name) for name in names})
    # The end of the line is always possible where it is; it reads best at the end.
    end = HUMAN["$END"]
    if end in words:
        words.remove(end)
        words.append(end)
    if len(words) == 1:
        return words[0]
    return ", ".join(words[:-1]) + " or " + words[-1]


def line_help(line: str) -> str:
    """What a line with that first word takes, where a list of terminals says too little."""
    return _LINE_HELP.get(line, "")


# Terminals that take several spellings; the one to propose for a slip.
_SPELLED = {"_ROWS": "rows", "_STITCHES": "stitches", "ROW": "row", "ROUND": "round",
            "_COLOUR": "colour", "CAST": "cast", "BIND": "bind"}  # fmt: skip


def keyword(name: str) -> str | None:
    """The word that a terminal stands for; None where it is no fixed word of three letters."""
    word = _SPELLED.get(name)
    if word is None:
        shown = HUMAN.get(name, "")
        word = shown.strip("“”") if re.fullmatch("“[a-z]{3,}”", shown) else None
    return word
