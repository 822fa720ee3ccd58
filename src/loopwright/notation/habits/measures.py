"""Lengths, needles and gauges as print writes them."""

from __future__ import annotations

import re

from loopwright.facts.needles import needles
from loopwright.notation.habits.answer import Answer, Reader
from loopwright.notation.habits.letters import fraction

_MEASURED = re.compile(r"(?:width|length|needles?|gauge|tension|swatch|yarn|work|stitch)\b", re.I)
_INCH_MARK = re.compile(r"(?<=[\d½¼¾⅓⅔⅛⅜⅝⅞])\s*\"")
_BROKEN = re.compile(
    r"(?<![\d/.])(?:(\d{1,4})\s+|(\d{1,4})-)?(\d{1,2}\s?/\s?\d{1,2})(?=\s*(?:in|cm|mm|m|yd|\"))"
)
_COMMA = re.compile(r"(?<![\d,.])(\d{1,4}),(\d{1,2})(?=\s*(?:cm|mm|in|m|g|oz|yd|\")(?!\w))", re.I)
_THOUSANDS = re.compile(r"(?<![\d,.])([1-9]),(\d{3})(?![\d,])")
_LISTED = re.compile(r"(?<![\d,.])\d{2,4}(?:,\s*\d{2,4})+(?![\d,.])")
_UNIT_DOT = re.compile(r"(?<=[\d\s])(in|ins|cm|cms|mm|g|gr|gms|yds?|oz|m)\.(?=\s|$|,)", re.I)
_UNIT_WORDS = (
    (re.compile(r"(?<=[\d\s])ins(?!\w)", re.I), "in"),
    (re.compile(r"(?<=[\d\s])cms(?!\w)", re.I), "cm"),
    (re.compile(r"(?<=[\d\s])(?:gr|gms|grs|gm)(?!\w)", re.I), "g"),
    (re.compile(r"(?<=[\d\s])yds(?!\w)", re.I), "yd"),
    (re.compile(r"(?<=[\d\s])mtrs?(?!\w)", re.I), "m"),
)
_SIZES = re.compile(
    r"(?<![\d,.])(\d+(?:\.\d+)?)\s*[(\[]\s*(\d+(?:\.\d+)?(?:\s*[,:;]\s*\d+(?:\.\d+)?)*)\s*[)\]]"
)
_COLON = re.compile(r"^(width|length|gauge|swatch|needle)\s*[:=]\s*", re.I)

_GAUGE = re.compile(
    r"(?:(?:gauge|tension)\s*[:=]?\s*)?(?P<stitches>\d+(?:\.\d+)?[½¼¾]?)\s*(?:stitches|sts|st)\b\.?"
    r"\s*(?:and|x|by|,|/|&)?\s*(?P<rows>\d+(?:\.\d+)?[½¼¾]?)\s*(?:rows|rounds|rnds|r)\b\.?\s*"
    r"(?:=|to|over|per|in|for|make|measure|:)\s*(?:a\s+)?(?P<value>\d+(?:\.\d+)?)\s*"
    r"(?P<unit>inches|inch|in|cm|\")?\.?(?:\s*(?:x|by)\s*(?P<other>\d+(?:\.\d+)?)\s*"
    r"(?P<unit2>inches|inch|in|cm|\")\.?)?\s*(?:sq(?:uare)?\.?)?(?P<rest>(?:\s+(?:in|on|flat|round|before|"
    r"after)\s.*)?)[\s.]*$",
    re.I,
)
_GAUGE_PART = re.compile(
    r"(?:(?:gauge|tension)\b.*|\d+(?:\.\d+)?\s*(?:stitches|sts)\b.*(?:=|\bto\b|\bover\b|\bper\b).*)",
    re.I,
)
_TWO_NUMBERS = re.compile(
    r"(?:gauge|tension)\s*[:=]?\s*(\d+(?:\.\d+)?)\s*(?:x|×|by|/)\s*(\d+(?:\.\d+)?)(?=\s*(?:=|to|over|in|per)\b|\s*=)",
    re.I,
)
_NEEDLE = re.compile(
    r"(?:(?:needles?|hook|size)\s*[:=]?\s*)*(?P<kind>circular|straight|double-pointed|dpns?)?\s*"
    r"(?:(?P<mm>\d+(?:[.,]\d+)?)\s*mm|(?P<system>us|uk)\s*(?:size\s*|no\.?\s*|#\s*)?(?P<number>\d+(?:\.5|½)?|0{1,3}))"
    r"\s*(?:\(\s*(?:us|uk)?\s*(?:size\s*)?#?\s*[\d.]+\s*(?:mm)?\s*\))?\s*(?P<kind2>circular|straight|"
    r"double-pointed|dpns?)?\s*(?:needles?)?\s*,?\s*(?:(?P<long>\d+)\s*(?P<unit>cm|inches|inch|in|\")"
    r"(?:\s+long)?)?\s*(?:needles?)?[\s.]*$",
    re.I,
)
_US_FIRST = re.compile(
    r"(?:needles?\s*[:=]?\s*)?(?:size\s+)(?P<number>\d+)(?:\s+needles?)?[\s.]*$", re.I
)
_FINISHED = re.compile(
    r"(?:finished\s+)?(?:measurements?|dimensions?|size)\s*[:=]?\s*(?P<wide>[\d.]+)\s*"
    r"(?P<unit>inches|inch|in|cm|\")?\s*(?:wide\s*)?(?:x|by)\s*(?P<high>[\d.]+)\s*"
    r"(?P<unit2>inches|inch|in|cm|\")(?:\s*long)?[\s.]*$",
    re.I,
)


def _unit(text: str) -> str:
    return "cm" if text.lower() == "cm" else "in"


def measured(line: str, reader: Reader) -> Answer | None:
    """The answer to a length, needle or gauge in the words of print, or None."""
    line = line.strip()
    return (
        _mended(line, reader)
        or _finished(line)
        or _needle(line, reader)
        or _gauge(line, reader)
    )  # fmt: skip


def _mended(line: str, reader: Reader) -> Answer | None:
    """A line of ours whose numbers or units alone are print's."""
    text = line
    said: list[str] = []

    def swap(shape: re.Pattern[str], new: str, sentence: str) -> None:
        nonlocal text
        changed = shape.sub(new, text)
        if changed != text:
            text = changed
            said.append(sentence)

    if _MEASURED.match(line):

        def broken(match: re.Match[str]) -> str:
            found = fraction(match[1] or match[2] or "", match[3])
            return found if found is not None else match.group()

        # Half alone (1/2 in) is read as a size list, so only a line that cannot be read comes here.
        changed = _BROKEN.sub(broken, text)
        if changed != text:
            text = changed
            said.append(
                "A slash is always a size list; a broken number is written with the fraction sign "
                "or a point."
            )
        swap(_INCH_MARK, " in", "Inches are written with their word, since double quotes hold "
             "text.")  # fmt: skip
        swap(_COMMA, r"\1.\2", "A broken number has a point.")
        swap(_UNIT_DOT, r"\1", "A unit has no full stop.")
        for shape, word in _UNIT_WORDS:
            swap(shape, word, f"The unit is written “{word}”.")
        swap(_COLON, r"\1 ", "Neither a colon nor “=” stands behind the first word of this line.")
    swap(_THOUSANDS, r"\1\2", "A number is written without a comma in it.")
    if re.match(r"(?:cast|width|length|work)\b", line, re.I):
        changed = text
        for shape in (_SIZES, _LISTED):
            changed = shape.sub(lambda m: "/".join(re.findall(r"[\d.]+", m.group())), changed)
        if changed != text:
            text = changed
            said.append("A number for each size is written with slashes.")
    text = re.sub(r"\s{2,}", " ", text).strip()
    if said and reader.reads(text):
        return Answer(" ".join(said[:2]), lines=(text,), certain=True)
    return None


def _finished(line: str) -> Answer | None:
    match = _FINISHED.match(line)
    if match is None:
        return None
    wide = _unit(match["unit"] or match["unit2"])
    return Answer(
        "The finished size is given by two lines, width and length.",
        "write both lines:",
        lines=(f"width {match['wide']} {wide}", f"length {match['high']} {_unit(match['unit2'])}"),
    )


def _needle(line: str, reader: Reader) -> Answer | None:
    alone = re.fullmatch(r"needle\s+((?:[^\W\d_][\w-]*\s+)?)(\d+(?:\.\d+)?)", line, re.I)
    if alone is not None and not re.match(r"us|uk|size", alone[1], re.I):
        kind, size = " ".join(alone[1].split()) + " " * bool(alone[1]), alone[2]
        us = [needle.mm for needle in needles() if needle.us == size]
        return Answer(
            "A needle is given by its millimetres, with the unit.",
            f"write “needle {kind}{size} mm”"
            + (f", or “needle {kind}{us[0]:g} mm” if US size {size} is meant." if us else "."),
        )
    bare = _US_FIRST.match(line)
    if bare is not None:
        us = [needle.mm for needle in needles() if needle.us == bare["number"]]
        uk = [needle.mm for needle in needles() if needle.uk == bare["number"]]
        if len(us) == 1 and us == uk:
            return Answer(
                f"A needle is given by its millimetres. Number {bare['number']} is {us[0]:g} mm, "
                "US and UK alike.",
                lines=(f"needle {us[0]:g} mm",),
                certain=True,
            )
        may = [f"{us[0]:g} mm (US)"] * bool(us) + [f"{uk[0]:g} mm (UK)"] * bool(uk)
        return Answer(
            "A needle is given by its millimetres; a number without its country has more than "
            "one meaning." + (f" Number {bare['number']} is {' or '.join(may)}." if may else ""),
            "write “needle 4.5 mm” with the size that is meant.",
        )
    match = _NEEDLE.fullmatch(line)
    if match is None or not re.search(
        r"needle|hook|\bus\b|\buk\b|circular|straight|dpn", line, re.I
    ):
        return None
    message = "A needle is given by its millimetres, its kind before them and its length behind."
    if match["mm"]:
        mm = f"{float(match['mm'].replace(',', '.')):g}"
    else:
        label = match["number"].replace("½", ".5")
        system = match["system"].lower()
        found = [n.mm for n in needles() if (n.us if system == "us" else n.uk) == label]
        if len(found) != 1:
            return Answer(message, "write “needle 4.5 mm” with the size that is meant.")
        mm = f"{found[0]:g}"
        message += f" {system.upper()} {label} is {mm} mm."
    kind = (match["kind"] or match["kind2"] or "").lower()
    kind = "double-pointed" if kind.startswith("dpn") else kind
    line = "needle" + (f" {kind}" if kind else "") + f" {mm} mm"
    if match["long"]:
        line += f" {match['long']} {_unit(match['unit'])}"
    return Answer(message, lines=(line,), certain=True) if reader.reads(line) else None


def _gauge(line: str, reader: Reader) -> Answer | None:
    line = re.sub(
        r"(?<![\d,.])(\d{1,2}),(\d{1,2})(?=\s*(?:stitches|sts|st|rows|rounds)\b)", r"\1.\2", line
    )
    line = _TWO_NUMBERS.sub(r"gauge \1 stitches \2 rows", line)
    match = _GAUGE.match(line)
    if match is not None and (match["unit"] or match["unit2"]):
        square = match["other"] in (None, match["value"])
        unit = _unit(match["unit"] or match["unit2"])
        text = (
            f"gauge {match['stitches']} stitches {match['rows']} rows = {match['value']} {unit}"
            f"{match['rest'].rstrip(' .')}"
        )
        if square and reader.reads(text):
            return Answer(
                "A gauge is stitches and rows, “=” and one length with its unit.",
                lines=(text,),
                certain=True,
            )
    if _GAUGE_PART.fullmatch(line) is None:
        return None
    stitches = re.search(r"(\d+(?:\.\d+)?)\s*(?:stitches|sts|st)\b", line, re.I)
    rows = re.search(r"(\d+(?:\.\d+)?)\s*(?:rows|rounds)\b", line, re.I)
    length = re.search(r"(\d+(?:\.\d+)?)\s*(cm|inches|inch|in|\")", line, re.I)
    missing = [
        what
        for what, found in (("stitches", stitches), ("rows", rows), ("length", length))
        if found is None
    ]
    shown = (
        f"gauge {stitches[1] if stitches else '20'} stitches {rows[1] if rows else '28'} rows = "
        + (f"{length[1]} {_unit(length[2])}" if length else "10 cm")
    )
    lacks = " and ".join(missing)
    return Answer(
        "A gauge is stitches and rows, “=” and one length with its unit."
        + (
            f" Here the {lacks} {'is' if missing == ['length'] else 'are'} missing."
            if missing
            else ""
        ),
        f"write it like this, with your own {lacks or 'numbers'}: “{shown}”.",
    )
