"""Printed rows read back by a small reader that knows print and nothing of the project.

For US and UK rows it reads every form of the trade that the words use; for German, French and
Spanish the simple rows. What it counts must be what the model counted.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shared.fitted import row_of

from loopwright.compile import Checked, check_source
from loopwright.edition.language import catalogue
from loopwright.edition.numbers import in_words
from loopwright.edition.text import render_text
from loopwright.edition.voice import Voice
from loopwright.edition.words import make_document
from loopwright.notation.source import Source

Counts = tuple[int, int]  # stitches taken off the left needle, stitches made


@dataclass(frozen=True)
class Print:
    """How a language prints: its steps, its fill, the places a fill can end, its times."""

    steps: tuple[tuple[str, Callable[..., Counts]], ...]
    fill: str  # unit, end
    plain: str  # one stitch, end
    ends: tuple[tuple[str, int], ...]  # a pattern, and the group that holds the number (0: none)
    group: str  # inside, number
    times_before: str  # number, step
    whole: tuple[str, ...]
    label: str  # first, last
    repeat: str  # first, last, words of how often
    once: tuple[str, ...]


def same(number: str) -> Counts:
    return int(number or 1), int(number or 1)


ENGLISH_STEPS: tuple[tuple[str, Callable[..., Counts]], ...] = (
    (r"[kp](\d+)(?: tbl)?", same),
    (r"sl(\d+)(?: wyif| wyib| kwise| pwise)*", same),
    (r"[kp](\d+)tog(?: tbl)?", lambda n: (int(n), 1)),
    (r"ssk|ssp|skp", lambda: (2, 1)),
    (r"sssk|sk2p|s2kp|CDD", lambda: (3, 1)),
    (r"yo|yfwd|yfrn|yon|yrn|M1[LRp]?", lambda: (0, 1)),
    (r"kfb|pfb", lambda: (1, 2)),
    (r"pm|sm|rm", lambda: (0, 0)),
    (r"C(\d+)[FB]", same),
    (r"RT|LT", lambda: (2, 2)),
    (r"(?:BO|cast off) (\d+) sts?", lambda n: (int(n), 0)),
    (r"CO (\d+) sts?", lambda n: (0, int(n))),
)
ENGLISH = Print(
    ENGLISH_STEPS,
    r"\*(.*?); rep from \* to (.*)",
    r"([kp]) to (.*)",
    ((r"end", 0), (r"last (\d+) sts", 1), (r"last (st)", 1)),
    r"[(\[](.*)[)\]] (twice|\d+ times)",
    r"(?!)",
    ("knit", "purl"),
    r"(?:Row|Rnd)s? (\d+)(?:–(\d+))?(?: \(..\))?:",
    r"(?:Rep|Work) Rows (\d+)–(\d+),? (.*?)\.",
    ("once", "once more"),
)
PRINTS = {
    "us": ENGLISH,
    "uk": ENGLISH,
    "de": Print(
        (
            (r"(\d+) (?:re|li)(?: verschr)?", same),
            (r"(\d+) abh(?: FvA| FhA| wie re| wie li)*", same),
            (r"(\d+) (?:re|li) zus(?: verschr)?", lambda n: (int(n), 1)),
            (r"(\d+) U", lambda n: (0, int(n))),
            (r"abh-re zus|abh-li zus|überz Abn", lambda: (2, 1)),
            (r"dopp überz Abn", lambda: (3, 1)),
            (r"2fach (?:re|li)", lambda: (1, 2)),
            (r"M1L|M1R|M1", lambda: (0, 1)),
        ),
        r"\*(.*?); ab \* wdh bis (.*)",
        r"(re|li) bis (.*)",
        ((r"zum Ende", 0), (r"zu den letzten (\d+) M", 1), (r"zur letzten (M)", 1)),
        r"[(\[](.*)[)\]] (\d+) Mal",
        r"(\d+) Mal (.*)",
        ("rechts stricken", "links stricken"),
        r"Reihen? (\d+)(?:–(\d+))?(?: \(\w+\))?:",
        r"Reihen (\d+)–(\d+)(.*?) (?:wdh|stricken)\.",
        ("einmal", "noch einmal"),
    ),
    "fr": Print(
        (
            (r"(\d+) m (?:end|env)(?: tors)?", same),
            (r"gl (\d+) m(?: fil dev| fil der| comme end| comme env)*", same),
            (r"(\d+) m ens (?:end|env)(?: tors)?", lambda n: (int(n), 1)),
            (r"(\d+) j", lambda n: (0, int(n))),
            (r"GGT(?: env)?|surj s", lambda: (2, 1)),
            (r"surj d", lambda: (3, 1)),
            (r"aug end|aug env", lambda: (1, 2)),
            (r"aug int(?: [GD])?", lambda: (0, 1)),
        ),
        r"\*(.*?) ; rép de \* jusqu’(.*)",
        r"(m end|m env) jusqu’(.*)",
        ((r"à la fin", 0), (r"aux (\d+) dernières m", 1), (r"à la dernière (m)", 1)),
        r"[(\[](.*)[)\]] (\d+) fois",
        r"(\d+) fois (.*)",
        ("tricoter à l’endroit", "tricoter à l’envers"),
        r"Rangs? (\d+)(?:–(\d+))?(?: \(\w+\))? :",
        r"(?:Rép|Tricoter) les rangs (\d+)–(\d+)(.*?)\.",
        ("une fois", "encore une fois"),
    ),
    "es": Print(
        (
            (r"(\d+) [dr](?: ret)?", same),
            (r"desl (\d+)(?: heb del| heb det| como d| como r)*", same),
            (r"(\d+) pj[dr](?: ret)?", lambda n: (int(n), 1)),
            (r"(\d+) heb", lambda n: (0, int(n))),
            (r"ssk|ssp|surj s", lambda: (2, 1)),
            (r"surj d", lambda: (3, 1)),
            (r"dd|rr", lambda: (1, 2)),
            (r"M1[ID]?", lambda: (0, 1)),
        ),
        r"\*(.*?); rep desde \* hasta (.*)",
        r"([dr]) hasta (.*)",
        ((r"el final", 0), (r"los últimos (\d+) p", 1), (r"el último (p)", 1)),
        r"[(\[](.*)[)\]] (\d+) veces",
        r"(\d+) veces (.*)",
        ("tejer del derecho", "tejer del revés"),
        r"Hileras? (\d+)(?:–(\d+))?(?: \(\w+\))?:",
        r"(?:Rep|Tejer) las hileras (\d+)–(\d+)(.*?)\.",
        ("una vez", "una vez más"),
    ),
}  # fmt: skip


def parted(text: str) -> list[str]:
    """The steps of a row: at commas outside brackets and outside the stars of a repeat."""
    out, depth, start, inside = [], 0, 0, False
    for at, letter in enumerate(text):
        depth += (letter in "([") - (letter in ")]")
        if letter == "*":
            inside = not inside
        if letter == "," and depth == 0 and not inside:
            out.append(text[start:at].strip())
            start = at + 1
    return [*out, text[start:].strip()]


def read_row(text: str, have: int, way: Print) -> Counts:
    """What a row takes and makes of `have` stitches."""
    text = text[:1].lower() + text[1:] if not re.match(r"[A-Z]{2}|[MC]\d|GGT", text) else text
    if text in way.whole:
        return have, have
    steps = parted(text)
    took = made = 0
    left_for: tuple[int, int, int] | None = None  # a unit, and how many stitches follow it
    for step in steps:
        match = re.fullmatch(way.fill, step) or re.fullmatch(way.plain, step)
        if match:
            assert left_for is None, "two repeats"
            unit = read_row(match[1], 0, way) if "*" in step else (1, 1)
            rest = end_of(match[2], way)
            cover = have - took - rest
            assert cover >= 0 and cover % unit[0] == 0, f"{text}: {cover} by {unit}"
            left_for = (cover, cover // unit[0] * unit[1], rest)
            took, made = took + left_for[0], made + left_for[1]
            continue
        a, b = one_step(step, way)
        took, made = took + a, made + b
        if left_for is not None:
            left_for = (left_for[0], left_for[1], left_for[2] - a)
    assert left_for is None or left_for[2] == 0, f"what follows is not what was said: {text}"
    return took, made


def end_of(text: str, way: Print) -> int:
    for pattern, group in way.ends:
        match = re.fullmatch(pattern, text)
        if match:
            return 0 if not group else int(match[1]) if match[1].isdigit() else 1
    raise AssertionError(f"no such end: {text}")


def one_step(text: str, way: Print) -> Counts:
    for pattern, said in way.steps:
        match = re.fullmatch(pattern, text)
        if match:
            return said(*match.groups())
    into = re.fullmatch(r"[(\[](.*)[)\]] in next st", text)
    if into:
        return 1, read_row(into[1], 0, way)[1]
    group = re.fullmatch(way.group, text)
    before = re.fullmatch(way.times_before, text)
    after = re.fullmatch(r"(.*) (twice|\d+ times)", text)
    if group:
        a, b = read_row(group[1], 0, way)
        number = times(group[2])
    elif before:
        (a, b), number = one_step(before[2], way), int(before[1])
    elif after:
        (a, b), number = one_step(after[1], way), times(after[2])
    else:
        raise AssertionError(f"not understood: {text}")
    return a * number, b * number


def times(text: str) -> int:
    return 2 if text == "twice" else int(re.sub(r"\D", "", text))


def printed(source: str, way: str) -> tuple[str, Checked]:
    checked = check_source(Source.of("test.loop", source))
    assert not checked.has_errors, checked.problems
    words = catalogue("en", way) if way in ("us", "uk") else catalogue(way)
    text = render_text(make_document(checked.pattern, checked.walks, voice=Voice(words)))
    return text.replace("\u00a0", " "), checked


STEPS = ["k3", "p2", "sl1 wyif", "k2tog", "ssk", "yo", "kfb", "m1l", "sk2p", "k1 tbl", "yo2",
         "k2tog2", "p2tog", "(k1 p1) x3", "(k1 yo) x2"]  # fmt: skip
ONLY_ENGLISH = ["c4f", "rt", "bo3", "co2", "(k1 yo k1) in 1", "((k1 p1) x2 k2tog) x2", "k3tog2",
                "pm", "cdd"]  # fmt: skip
UNITS = ["k1", "p2", "sl1 wyif", "k2tog", "yo k2tog", "k1 p1", "(p1 k1) x2"]


@pytest.mark.parametrize("way", PRINTS)
@settings(max_examples=120, deadline=None)
@given(data=st.data())
def test_a_printed_row_has_the_counts_of_the_model(way: str, data: st.DataObject) -> None:
    words = STEPS + (ONLY_ENGLISH if way in ("us", "uk") else [])
    before = data.draw(st.lists(st.sampled_from(words), max_size=4))
    unit = data.draw(st.lists(st.sampled_from(UNITS), min_size=1, max_size=3))
    after = data.draw(st.lists(st.sampled_from([w for w in words if w != "pm"]), max_size=3))
    often = data.draw(st.integers(2, 40))
    source = row_of(before, unit, after, often)
    text, checked = printed(source, way)
    (row,) = checked.walks[0].listed()
    line = next(line for line in text.splitlines() if re.match(PRINTS[way].label, line))
    said = re.sub(PRINTS[way].label, "", line, count=1).strip()
    said = re.sub(r"(?<=\.) \(\d+ \w+\)$", "", said).removesuffix(".")
    assert read_row(said, row.start, PRINTS[way]) == (row.start, row.end), line


NUMBER = {in_words(number): number for number in range(1, 100)}


def rows_told(text: str, way: Print) -> int:
    """The rows that a page tells a maker to work, by its labels and its repeats."""
    total = 0
    for line in text.splitlines():
        label = re.match(way.label, line)
        repeat = re.match(way.repeat, line.split(";")[0])
        if label:
            first, last = int(label[1]), int(label[2] or label[1])
            assert first == total + 1, line
            total = last
        elif repeat:
            length = int(repeat[2]) - int(repeat[1]) + 1
            words = repeat[3].strip()
            digits = re.search(r"\d+", words)
            bare = re.sub(r" ?(more )?times$", "", words)
            if digits:
                number = int(digits[0])
            elif words in way.once:
                number = 1
            else:
                number = {"twice more": 2, "twice": 2}.get(words) or NUMBER[bare]
            total += length * number
    return total


@pytest.mark.parametrize("way", PRINTS)
@settings(max_examples=40, deadline=None)
@given(rows=st.integers(1, 3), before=st.integers(0, 3), reps=st.integers(1, 130))
def test_repeats_of_rows_are_never_off_by_one(way: str, rows: int, before: int, reps: int) -> None:
    length = 2 * rows
    lines = "".join(f"  row {number + 1}: k{number + 2} * p1 *\n" for number in range(length))
    source = (
        f'pattern "Q"\nmotif m over n + 10\n{lines}piece p flat\n  cast on 20\n'
        + (f"  rows {2 * before}: knit\n" if before else "")
        + f"  work m x{reps}\n  rows 2: purl\n  bind off\n"
    )
    text, checked = printed(source, way)
    assert rows_told(text, PRINTS[way]) == checked.walks[0].rows == 2 * before + length * reps + 2


def test_the_reader_finds_what_is_wrong() -> None:
    way = PRINTS["us"]
    assert read_row("K2, *k1, p1; rep from * to last 3 sts, k3", 11, way) == (11, 11)
    for wrong, have in (
        ("K2, *k1, p1; rep from * to last 3 sts, k3", 12),
        ("K2, *k1, p1; rep from * to last 2 sts, k3", 11),
        ("K2, xyz", 3),
    ):
        with pytest.raises(AssertionError):
            read_row(wrong, have, way)
    assert (
        rows_told("Row 1 (RS): Knit.\nRow 2 (WS): Purl.\nRep Rows 1–2 seven more times.", way) == 16
    )
