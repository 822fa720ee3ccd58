"""unknown-word: a word that no dictionary holds."""

from __future__ import annotations

import re
from collections.abc import Iterator

from loopwright.check.context import Context
from loopwright.check.rule import Rule
from loopwright.model.pattern import UnknownWord
from loopwright.model.stitch import Dictionary
from loopwright.notation.line import split_comment
from loopwright.notation.near import nearest, slips_of
from loopwright.problem import ERROR, Edit, Fix, Problem

_GUESSED = 200  # unknown words for which a near one is looked for
_MODIFIERS = ("wyif", "wyib", "kwise", "pwise", "tbl")
_HABITS: dict[str, str] = {
    "rep": "a repeat stands between two stars: “* k1 p1 *”.",
    "repeat": "a repeat stands between two stars: “* k1 p1 *”.",
    "from": "a repeat stands between two stars: “* k1 p1 *”.",
    "to": "what is worked to the end stands between two stars: “* k1 *”.",
    "end": "what is worked to the end stands between two stars: “* k1 *”.",
    "across": "“knit” alone is the whole row.",
    "knit": "“knit” is a whole row; beside other stitches write k and a count, or “* k1 *”.",
    "purl": "“purl” is a whole row; beside other stitches write p and a count, or “* p1 *”.",
    "psso": "write skp or sk2p: the slipped stitch passed over is part of the word.",
    "sts": "the word “stitches” is not needed here.",
    "st": "the word “stitch” is not needed here.",
    "turn": "every row turns at its end by itself.",
    "inc": "say which increase: kfb, m1l, m1r or yo.",
    "dec": "say which decrease: k2tog, ssk or p2tog.",
    "yf": "write yo for a yarn over, wyif for the yarn in front.",
    "yfwd": "write yo.",
    "yrn": "write yo.",
    "yon": "write yo.",
    "tog": "write the word together, as in k2tog.",
    "into": "a group that is all worked into one stitch ends with “in 1”: “(k1 yo k1) in 1”.",
    "next": "a group that is all worked into one stitch ends with “in 1”: “(k1 yo k1) in 1”.",
    "in": "a group that is all worked into one stitch ends with “in 1”: “(k1 yo k1) in 1”.",
    "and": "steps follow one another without “and”.",
    "then": "steps follow one another without “then”.",
    "twice": "write “(k1 p1) x2”.",
    "times": "write “(k1 p1) x4”.",
    **dict.fromkeys(
        ("stockinette", "stocking", "stst", "st-st"),
        "right-side rows are “knit” and wrong-side rows “purl”: a motif with “row 1: knit” and "
        "“row 2: purl”.",
    ),
    "etc": "what is repeated stands between two stars: “* k1 p1 *”.",
    "garter": "every row is “knit”: “rows 4: knit”.",
    "rib": "write the stitches of the rib: “* k2 p2 *”, and a row for each side.",
    "ribbing": "write the stitches of the rib: “* k2 p2 *”, and a row for each side.",
    "seed": "write the stitches out: “* k1 p1 *” in one row and “* p1 k1 *” in the next.",
    "moss": "write the stitches out: “* k1 p1 *” in one row and “* p1 k1 *” in the next.",
    "mc": "name the strand at the head of the row: “row 1 in A: …”.",
    "cc": "name the strand at the head of the row: “row 1 in B: …”.",
}


def check(context: Context) -> Iterator[Problem]:
    if not context.pattern.unknown_words:
        return
    # Asked only now: a source without an unknown word never loads it.
    from loopwright.notation.habits import LOOKED_AT, plain, printed_row
    from loopwright.notation.unread import habit_reader, whole_line_fix

    own = {s.word: s for s in context.pattern.stitches}
    dictionary = Dictionary(own)
    known = dictionary.words()

    def can_stand(text: str) -> bool:
        # The words between which a fix must be able to choose: stitches, families, modifiers.
        return text in _MODIFIERS or text in _HABITS or dictionary.find(text) is not None

    source = context.pattern.source
    lines: dict[int, list[UnknownWord]] = {}
    for word in context.pattern.unknown_words:
        lines.setdefault(source.line_column(word.span.start)[0], []).append(word)
    said: list[UnknownWord] = []
    reader = habit_reader(source) if lines else None
    for looked, (line, words) in enumerate(lines.items()):
        code, _ = split_comment(source.line_text(line))
        if reader is not None and looked < _GUESSED and len(code) <= LOOKED_AT:
            answer = printed_row(plain(code), reader)
            if answer is not None:
                # The row is in the words of print: it is answered as a whole.
                yield Problem(
                    "unknown-word",
                    ERROR,
                    f"there is no stitch “{words[0].text}”",
                    answer.message,
                    words[0].span,
                    help=answer.advice,
                    fix=whole_line_fix(answer, code, source.line_starts[line - 1]),
                )
                continue
        # A phrase of printed patterns is one slip, however many words it has.
        phrase = [word for word in words if word.text in _HABITS]
        said += phrase[:1] or words
    for number, word in enumerate(said):
        fix = None
        habit = _HABITS.get(word.text)
        repeat = re.fullmatch(r"x(\d+(?:/\d+)*)", word.text)
        if habit is not None:
            help = habit
        elif repeat:
            help = f"x{repeat[1]} belongs behind a group: “(k1 p1) x{repeat[1]}”."
        else:
            letters = word.text.rstrip("0123456789/")
            tail = word.text[len(letters) :]
            near = slips_of(word.text, can_stand) if number <= _GUESSED else []
            close: str | None = None
            whole = near in (["knit"], ["purl"]) and _is_whole_body(context, word)
            if whole or (len(near) == 1 and near[0] not in _HABITS):
                close = near[0]
                fix = Fix(f"write “{close}” for “{word.text}”", (Edit(word.span, close),))
            elif number <= _GUESSED:
                guess = nearest(letters, known) if letters else None
                close = nearest(word.text, known) or (guess + tail if guess else None)
            if close is not None:
                help = f"did you mean “{close}”?"
            else:
                help = (
                    "a stitch of your own is declared like this: "
                    f'stitch {letters or "mb"} "its name": takes 1, makes 1.'
                )
        yield Problem(
            "unknown-word",
            ERROR,
            f"there is no stitch “{word.text}”",
            f"“{word.text}” is neither a stitch of the trade that Loopwright knows nor one that "
            "this file declares, so the row cannot be counted.",
            word.span,
            help=help,
            fix=fix,
        )


def _is_whole_body(context: Context, word: UnknownWord) -> bool:
    """Whether the word is all that its row works, as “knit” is."""
    source = context.pattern.source
    line = source.line_text(source.line_column(word.span.start)[0])
    body = split_comment(line)[0].rpartition(":")[2].partition("=>")[0]
    return body.strip().casefold() == word.text


RULE = Rule(
    name="unknown-word",
    severity=ERROR,
    title="an unknown word",
    what="A line starts with a word that says what it is, and a body is made of stitch words. "
    "This word is neither known to the trade's dictionary nor declared by a “stitch” line.",
    wrong="""pattern "Slip of the keys"
piece swatch flat
  cast on 20
  row: k9 k2tgo k9
  bind off
""",
    right="""pattern "Typed right"
piece swatch flat
  cast on 20
  row: k9 k2tog k9
  bind off
""",
    check=check,
)
