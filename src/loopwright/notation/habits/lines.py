"""Lines of print that are no rows: casting on, binding off, working motifs, texts, comments."""

from __future__ import annotations

import re
from collections.abc import Callable

from loopwright.notation.habits.answer import Answer, Reader
from loopwright.notation.habits.counts import NUMBER, NUMBER_OR_TWO, number
from loopwright.record import dataclass

Match = re.Match[str]


@dataclass(frozen=True, slots=True)
class LineHabit:
    """`shape` is the whole line; `answer` gives what is said to it, or None to pass it on."""

    shape: re.Pattern[str]
    answer: Callable[[Match], Answer | None]


def _shape(text: str) -> re.Pattern[str]:
    return re.compile(
        text.replace("NUMBER_2", NUMBER_OR_TWO)
        .replace("NUMBER", NUMBER)
        .replace("YARN", _YARN)
        .replace("UNIT", _UNIT),
        re.I,
    )


_YARN = r"(?:(?:with|using|in)\s+(?:(?:strand|yarn|colou?r)\s+)?(?P<{0}>[^\W\d_][\w-]*))"
_UNIT = r'(?:inches|inch|ins|in|cms|cm|mm|"|\')'
_BY = r"(?:(?:using|by|with)\s+(?:(?:the|a|an)\s+)?(?P<by>[a-z][a-z -]{1,40}?)(?:\s+method)?)"


def length_text(value: str, unit: str) -> str:
    """``10 in`` for ``10"``; `value` may be a size list of print."""
    unit = unit.lower().rstrip(".")
    unit = {'"': "in", "ins": "in", "inch": "in", "inches": "in", "cms": "cm"}.get(unit, unit)
    return f"{value} {unit}"


# --- casting on and binding off ---------------------------------------------------------------

_METHODS = ("long-tail", "long tail", "knitted", "cable", "provisional", "backward loop",
            "backwards loop", "crochet", "tubular", "german twisted", "thumb", "suspended",
            "stretchy", "elastic", "three-needle", "3-needle", "i-cord", "icord")  # fmt: skip


def _cast_on(match: Match) -> Answer | None:
    strand = match["before"] or match["a"] or match["b"] or ""
    by = (match["by"] or "").strip().lower()
    by = re.sub(r"\s+(?:cast\s*-?\s*on|co)$", "", by)
    if strand.lower() in ("the", "long", "circular", "needle", "needles"):
        return None
    named = by in _METHODS
    if by and not named:
        if strand:
            return None
        if not re.fullmatch(r"[a-z][\w-]*", by):
            return None
        strand, by = by, ""
    count = number(match["n"])
    line = f"cast on {count}"
    # Names keep the case in which they are written.
    if strand:
        line += f" in {strand}"
    if by:
        line += f" by {by.replace(' ', '-')}"
    return Answer(
        "Casting on is written as “cast on”, the number of stitches, “in” with the strand and "
        "“by” with the method.",
        lines=(line,),
        # 80 (90) may also be a number and the same in another measure.
        certain=not match["loosely"] and ("(" not in match["n"] or "," in match["n"]),
    )


def _bind_off(match: Match) -> Answer | None:
    strand = match["before"] or match["a"] or ""
    words = (match["how"] or "").lower()
    line = "bind off" + (f" in {strand}" if strand else "")
    if not words.strip(" ."):
        return Answer(
            "“bind off” takes all live stitches, without saying so; “in A” and “by METHOD” may "
            "follow it.",
            lines=(line,),
            certain=True,
        )
    what = re.sub(r"\s+", " ", words).strip(" .,()")
    return Answer(
        "How it is bound off stands in a note for the knitter, or behind “by” as the name of a "
        "method.",
        f'put “note "Bind off {what}."” in the line before, and then:',
        lines=(line,),
    )


# --- working motifs ----------------------------------------------------------------------------

_REPEAT_ROWS = (
    "Rows are not repeated by their numbers here: they stand in a motif, and the motif is worked."
)


def _repeat_rows(match: Match) -> Answer:
    first = match["first"] or "1"
    last = match["last"]
    rows = f"rows {first}-{last}" if last else "the rows"
    start = f"put {rows} into a motif (its rows count from 1), and in the piece write "
    if match["value"]:
        value = number_with_point(match["value"])
        return Answer(_REPEAT_ROWS, start + f"“work NAME to {length_text(value, match['unit'])}”.")
    if match["rows"]:
        return Answer(_REPEAT_ROWS, start + f"“work NAME for {match['rows']} rows”.")
    if match["more"]:
        more = number(match["more"])
        return Answer(
            _REPEAT_ROWS,
            start + f"“work NAME x{_one_more(more)}” (once, and then {more} more).",
        )
    if match["times"]:
        often = number(match["times"])
        return Answer(
            _REPEAT_ROWS,
            start + f"“work NAME x{often}”, or x{_one_more(often)} if the rows were already "
            "worked once before this line.",
        )
    return Answer(_REPEAT_ROWS, start + "“work NAME x8” or “work NAME to 20 cm”.")


def _one_more(text: str) -> str:
    return "/".join(str(int(part) + 1) for part in text.split("/"))


def number_with_point(text: str) -> str:
    """A broken number with its point: ``4,5`` is 4.5."""
    return re.sub(r"(?<=\d),(?=\d{1,2}(?!\d))", ".", text.strip())


_WORK = "How far a motif is worked follows its name: “x8”, “for 20 rows” or “to 110 cm”."


_NAME_IT = Answer(_WORK, "name the motif that is worked: “work NAME to 20 cm”.")


def _work_times(match: Match) -> Answer | None:
    name = match["name"]
    more = bool(match["more"])
    often = number(match["n"])
    if more:
        return Answer(
            _WORK,
            "“more” counts on from what was worked before this line:",
            lines=(f"work {name} x{often}",),
        )
    return Answer(_WORK, lines=(f"work {name} x{often}",), certain=True)


def _work_to(match: Match) -> Answer | None:
    name = match["name"]
    value = number_with_point(match["value"])
    unit = match["unit"]
    # “for 20 cm” may count from here, as “measured from the rib” does.
    certain = match["for"] is None and (not match["from"] or "cast" in match["from"].lower())
    line = f"work {name} to {length_text(value, unit)}"
    return Answer(_WORK + " The length is measured from the cast-on.", lines=(line,),
                  certain=certain)  # fmt: skip


def _work_rows(match: Match) -> Answer | None:
    name = match["name"] or match["other"]
    rows = number(match["n"] or match["m"])
    return Answer(_WORK, lines=(f"work {name} for {rows} rows",), certain=True)


_NO_MOTIF = frozenset(
    ("even", "pattern", "patt", "pat", "rows", "row", "as", "in", "until", "straight", "st",
     "garter", "stockinette", "stocking", "stst", "rib", "ribbing", "the", "established",
     "evenly", "across")
)  # fmt: skip
_FROM = r"(?:\s+(?P<from>(?:from|measured|above|after)\s+.*?))?"


# --- texts and what else stands in a line -------------------------------------------------------

_TEXTS = {"title": "pattern", "name": "pattern", "design": "designer", "by": "designer",
          "notions": "notion", "notes": "note", "description": "summary",
          "designed by": "designer", "author": "designer", "design by": "designer",
          "pattern by": "designer"}  # fmt: skip


def _text(match: Match) -> Answer:
    word = " ".join(match["word"].lower().split())
    word = _TEXTS.get(word, word)
    text = match["text"].strip()
    quoted = text.strip('"').replace('"', "'").strip()
    if len(quoted) > 2 and quoted[0] == quoted[-1] == "'":
        quoted = quoted[1:-1].strip()
    return Answer(
        f"Text stands in straight double quotes behind “{word}”.",
        lines=(f'{word} "{quoted}"',),
        # “Pattern: …” may speak of the stitch pattern.
        certain=match["word"].lower() == word and (word != "pattern" or ":" not in match.group()),
    )


_LEVELS = {"beginner": "basic", "basic": "basic", "easy": "easy", "intermediate": "intermediate",
           "advanced": "complex", "experienced": "complex", "complex": "complex"}  # fmt: skip


def _level(match: Match) -> Answer | None:
    level = match["level"].lower()
    if level not in _LEVELS:
        return None
    return Answer(
        "The level is one of four words: basic, easy, intermediate or complex.",
        lines=(f"level {_LEVELS[level]}",),
        certain=_LEVELS[level] == level,
    )


def _sizes(match: Match) -> Answer | None:
    names = [part.strip() for part in re.split(r"[,;/()\[\]]+", match["names"]) if part.strip(" .")]
    if not names or any('"' in name for name in names):
        return None
    if len(names) == 1 and " " in names[0]:
        # “sizes S M L” are three names; “sizes age 4” may be one.
        parted = names[0].split()
        if not all(re.fullmatch(r"\w[\w.+-]*", part) for part in parted):
            return None
        return Answer(
            "The names of the sizes follow one another with commas; a name of several words "
            "stands in quotes.",
            "choose the line that is meant:",
            (f"sizes {', '.join(parted)}", f'sizes "{" ".join(parted)}"'),
        )
    shown = [name if re.fullmatch(r"\w[\w.+-]*", name) else f'"{name}"' for name in names]
    return Answer(
        "The names of the sizes follow one another with commas; a name of several words stands "
        "in quotes.",
        lines=(f"sizes {', '.join(shown)}",),
        certain=True,
    )


def _comment(match: Match) -> Answer:
    return Answer(
        "A comment starts with two dashes.",
        lines=(f"-- {match['text'].strip()}",),
        certain=True,
    )


def _words(message: str, help: str) -> Callable[[Match], Answer]:
    return lambda match: Answer(message, help)


_STITCHES = r"(?:stitches|stitch|sts|st)\b\.?"

LINES: tuple[LineHabit, ...] = tuple(
    LineHabit(_shape(shape), answer)
    for shape, answer in (
        (rf"(?:{_YARN.format('before')}\s*,?\s*)?(?:cast\s*-?\s*on|cast|co)\s*:?\s*(?P<loosely>loosely\s+)?"
         rf"(?P<n>NUMBER_2)\s*(?:{_STITCHES})?\s*(?:total\s*)?,?\s*(?:{_YARN.format('a')}\b(?=\s*$|\s*\.|"
         rf"\s*,?\s*(?:using|by|with)))?\s*,?\s*(?:{_BY})?\s*,?\s*(?:{_YARN.format('b')})?[\s.]*$",
         _cast_on),
        (rf"(?:{_YARN.format('before')}\s*,?\s*)?(?:bind\s*-?\s*off|cast\s*-?\s*off|bo)\b\s*:?"
         rf"(?:\s*(?:all|the|rem(?:aining)?|rem)\b\.?)*(?:\s*{_STITCHES})?"
         rf"(?P<how>(?:\s*,?\s*\(?(?:very\s+)?(?:loosely|knitwise|purlwise|kwise|pwise|(?:in|as)\s+"
         r"(?:(?:the\s+)?(?:patt(?:ern)?|pat)\b\.?|rib(?:bing)?|k\d[\s,]+p\d\s+rib)"
         rf"(?:\s+(?:as\s+)?(?:set|established))?)\)?)+)?(?:\s*(?:{_STITCHES}))?"
         rf"(?:\s+{_YARN.format('a')})?[\s.]*$",
         _bind_off),
        (r"(?:work|rep(?:eat)?)\.?\s+(?:the\s+)?(?:these|those|(?:last|previous|first)\s+)?\s*"
         r"(?:NUMBER\s+)?(?:rows?|rounds?|rnds?)\s*(?:(?P<first>\d+)\s*(?:to|through|and|&|-)\s*"
         r"(?P<last>\d+))?(?:\s+of\s+[\w\s]{1,30}?)?[\s,:]*"
         r"(?:(?P<more>NUMBER|once|twice)(?:\s+times?)?\s+more(?:\s+times?)?|"
         r"(?P<times>NUMBER(?=\s*times?)|once|twice|thrice)(?:\s*times?)?(?:\s+in\s+(?:all|total))?|"
         r"(?:un)?til+\s+(?:\w+\s+){0,3}(?:measures?|is|reaches)\s+(?:about\s+|approx\.?\s+)?"
         r"(?P<value>\d+(?:[.,]\d+)?)\s*(?P<unit>UNIT).*|"
         r"(?:for\s+)?(?P<rows>\d+)\s+(?:more\s+)?rows|.{0,60})[\s.]*$",
         lambda m: _repeat_rows(m) if m["first"] or m.group().lower().startswith("rep") else None),
        (r"(?:work|repeat|rep)\s+(?:in\s+)?(?P<name>[^\W\d_][\w-]*)(?:\s+(?:motif|pattern|patt))?\s*,?\s*"
         r"(?:(?:x\s*)?(?:for\s+(?=NUMBER\s*(?:times|repeats?|reps)))?(?P<n>NUMBER|once|twice|thrice)"
         r"\s*(?:times?|repeats?|reps|[x×])?|x\s*NUMBER)\s*(?P<more>more)?"
         r"(?:\s+times?)?[\s.]*$",
         _work_times),
        (r"work\s+(?P<n>NUMBER)\s+(?:repeats?|reps?)\s+(?:of|in)\s+(?:the\s+)?"
         r"(?P<name>[^\W\d_][\w-]*)(?P<more>(?!))?(?:\s+(?:motif|pattern|patt))?[\s.]*$",
         _work_times),
        (r"(?:work|cont(?:inue)?)\.?\s+(?:in\s+)?(?P<name>[^\W\d_][\w-]*)(?:\s+(?:motif|pattern|patt|stitch|st))?"
         r"\s*,?\s*(?:(?:un)?til+\s+(?:(?:the\s+)?(?:piece|work|it|length|body|scarf|blanket)\s+)*"
         r"(?:measures?|is|reaches)?|to|(?P<for>for|))\s*(?:about\s+|approx\.?\s+)?"
         rf"(?P<value>\d+(?:[.,]\d+)?(?:/\d+(?:\.\d+)?)*)\s*(?P<unit>UNIT)(?:\s+long)?{_FROM}[\s.]*$",
         _work_to),
        (r"(?:work\s+(?P<n>NUMBER)\s+rows?\s+(?:in|of)\s+(?P<name>[^\W\d_][\w-]*)(?:\s+(?:motif|pattern|patt))?|"
         r"work\s+(?:in\s+)?(?P<other>[^\W\d_][\w-]*)(?:\s+(?:motif|pattern|patt))?\s*,?\s+(?:for\s+)?"
         r"(?P<m>NUMBER)\s+rows?)[\s.]*$",
         _work_rows),
        (r"(?P<word>pattern\s+by|pattern|title|name|designer|design(?:ed)?\s+by|by|author|summary|description|"
         r"notions?|notes?|section)\s*[:=-]?\s+"
         r"(?P<text>[^\"]+|\"[^\"]+\"?)$",
         _text),
        (r"(?:skill\s+|difficulty\s+)?level\s*[:=]?\s*(?P<level>\w+)[\s.]*$", _level),
        (r"difficulty\s*[:=]?\s*(?P<level>\w+)[\s.]*$", _level),
        (r"sizes?\s*[:=]?\s+(?P<names>[^\":=]+)$", _sizes),
        (r"(?:#|//|/\*|;|%)+\s*(?P<text>[^*].*?)\s*(?:\*/)?$", _comment),
        (r"(?:materials?|supplies|you\s+will\s+need|equipment)\b.*",
         _words("There is no list of materials: each thing is a line of its own, and the list is "
                "made of them.",
                "write “yarn wool: 100 g 200 m”, “needle circular 4.5 mm 90 cm” and "
                "“notion \"Tapestry needle\"”.")),
        (r"(?:abbreviations?|abbrev)\b.*",
         _words("The list of abbreviations is made by itself, of the stitches that are used.",
                "leave the line out.")),
        (r"(?:instructions?|directions?|method|pattern\s+notes?)\s*:?[\s.]*$",
         _words("Instructions stand in a piece, and a heading is a section.",
                "write “piece NAME flat” or “section \"Border\"”.")),
        (r"(?:place\s+(?:a\s+)?marker,?\s+(?:and\s+)?)?join\s+(?:in|for|to|into|and)\b.*round.*|"
         r"join(?:,|\s+being)\s.*|being\s+careful.*",
         lambda m: Answer("“join round” goes over to rounds; what to take care of is a note.",
                          lines=("join round",))),
        (r"turn[\s.]*$",
         _words("Rows turn at their ends by themselves.", "leave the line out.")),
        (r"(?:fasten|break|cut)\b.*(?:pull|draw|thread|run)\b.*(?:stitches|sts|loops).*",
         lambda m: Answer("Drawing the yarn through the last stitches is a way to bind off.",
                          lines=("bind off by gathering",))),
        (r"(?P<text>(?:fasten|break|cut|weave|block|sew|darn)\b[^\"]*)",
         lambda m: Answer("What is said to the reader in words is a note.",
                          lines=(f'note "{m["text"][:1].upper()}{m["text"][1:]}"',))),
        (r"(?P<head>yarn\s+[^\W\d_][\w-]*(?:\s*\"[^\"]*\")?)\s*[,-]?\s*(?P<rest>\d+\s*(?:g|oz)\b[^:]*)",
         lambda m: Answer("A colon stands between a yarn's name and its ball.",
                          lines=(f"{m['head'].strip()}: {m['rest'].strip()}",), certain=True)),
        (r"strand\s+(?P<name>[^\W\d_][\w-]*)\s*(?:[=:-]|is)\s*(?P<rest>[^\W\d_].*)",
         lambda m: Answer("What a strand is knitted from follows “feeds”.",
                          lines=(f"strand {m['name']} feeds {m['rest'].strip()}",), certain=True)),
        (r"(?:work|cont(?:inue)?|knit)\s+(?:even|straight|as\s+set|in\s+(?:patt(?:ern)?|pat|rib|garter|"
         r"stockinette|stocking|st\s*st)\b).*",
         _words("What is worked on is a motif with a name: its rows stand in a block of their own.",
                "write “motif NAME over 2n + 4” with its rows, and in the piece “work NAME to "
                "20 cm” or “work NAME for 20 rows”.")),
        (r"(?:mc|cc\d?|colou?rs?|yarn\s+[a-e]|[a-e])\s*[:=].*|colou?rs?\s+\w+.*",
         _words("Colours are named as shades and worked as strands.",
                "write “shade kelp \"Kelp\" of wool”, “strand A feeds kelp”, and “row 1 in A: "
                "…”.")),
        (r"yarn\b(?!\s+[^\W\d_][\w-]*\s*(?:\"[^\"]*\"\s*)?:\s*\S+\s*(?:g|oz|m|yd)).*|"
         r"\d+\s*(?:g|oz|balls?|skeins?)\b.*",
         _words("A yarn has a name of one word, a colon, and what a ball weighs and how long it "
                "is.",
                "write “yarn wool \"Worsted wool\": 100 g 200 m, weight 4”.")),
    )
)  # fmt: skip


def _without_name(match: Match, habit: LineHabit, reader: Reader) -> bool:
    """Whether what is worked on is no motif of the file, but a fabric or a turn of speech."""
    if habit.answer not in (_work_times, _work_to, _work_rows):
        return False
    name = (match["name"] or match.groupdict().get("other") or "").lower()
    return name in _NO_MOTIF and name not in reader.motifs


def printed_line(line: str, reader: Reader) -> Answer | None:
    """The answer to a line of print that is no row, or None."""
    for habit in LINES:
        match = habit.shape.fullmatch(line)
        answer = habit.answer(match) if match is not None else None
        if match is not None and _without_name(match, habit, reader):
            answer = _NAME_IT if habit.answer is _work_to else None
        if answer is None:
            continue
        if all(text.startswith("--") or reader.reads(text) for text in answer.lines):
            return answer
    if line.count(":") == 1 and reader.reads(without := " ".join(line.replace(":", " ").split())):
        word = line.split(maxsplit=1)[0].rstrip(":").lower()
        return Answer(f"No colon stands in a line that starts with “{word}”.", lines=(without,),
                      certain=True)  # fmt: skip
    return None
