"""Characters that cannot be seen: where they are errors, where warnings, and where proper text."""

from __future__ import annotations

import json
import sys
import unicodedata
from collections.abc import Callable

import pytest

from loopwright.check.fixing import fix_text
from loopwright.compile import Checked, check_source
from loopwright.notation.hidden import has_right_to_left, in_json, name_of, named, visible
from loopwright.notation.parse import parse
from loopwright.notation.source import Source

Check = Callable[..., Checked]

# Unicode's own list of the bidirectional controls (PropList.txt, Bidi_Control).
BIDI = [*range(0x202A, 0x202F), *range(0x2066, 0x206A), 0x061C, 0x200E, 0x200F]
TURNING = [chr(code) for code in BIDI if code not in (0x061C, 0x200E, 0x200F)]
CONTROLS = [
    letter for letter in map(chr, range(0xA0)) if unicodedata.category(letter) == "Cc"
    and letter not in "\t\n\r"
]  # fmt: skip
NO_CHARACTER = ["\ufffe", "\uffff", "\ufdd0", "\ud800", "\udfff"]
ERRORS = [*TURNING, *CONTROLS, "\u2028", "\u2029", *NO_CHARACTER]
MARKS = ["\u200e", "\u200f", "\u061c"]
LEFT_BEHIND = ["\u200b", "\u2060", "\ufeff", "\u00ad", "\u180e", "\u2062", "\ufff9", "\U000e0041"]
WARNINGS = [*MARKS, *LEFT_BEHIND, "\u3164", "\u115f"]
PROPER = [
    "שלום עולם", "مرحبا بالعالم", "می‌خواهم", "क्‍ष", "👩‍🌾 ♥️", "Ångström e\u0301", "ไทย\u200bไทย",
    "🏴\U000e0067\U000e0062\U000e0065\U000e006e\U000e0067\U000e007f", "a\u00a0b", "שלום\u200f!",
]  # fmt: skip


def note(text: str) -> str:
    return f'pattern "P"\npiece p flat\n  cast on 4\n  note "{text}"\n  rows 2: knit\n  bind off\n'


def places(found: Checked) -> list[tuple[str, str, int, int]]:
    told = [(p, *found.source.line_column(p.span.start)) for p in found.problems]
    return [(p.rule, p.severity, line, column) for p, line, column in told]


@pytest.mark.parametrize("letter", ERRORS, ids=lambda letter: f"{ord(letter):04X}")
def test_an_error_wherever_it_stands(check: Check, letter: str) -> None:
    for text, line, column in (
        (note(f"a{letter}b"), 4, 10),
        (note("a").replace("cast on 4", f"cast on 4 -- {letter}"), 3, 16),
        (note("a").replace("\n  note", f"\n-- {letter}\n  note"), 4, 4),
        (note("a").replace("rows 2: knit", f"rows 2: k4{letter}"), 5, 13),
        (note("a").replace('"P"', f'"P"{letter}'), 1, 12),
    ):
        found = check(text)
        assert places(found) == [("hidden-character", "error", line, column)]
        assert f"U+{ord(letter):04X}" in found.problems[0].message
        assert found.recovered, "a line with such a character is not read"


@pytest.mark.parametrize("letter", WARNINGS, ids=lambda letter: f"{ord(letter):04X}")
def test_a_warning_in_words_and_an_error_in_the_notation(check: Check, letter: str) -> None:
    assert places(check(note(f"a{letter}b"))) == [("hidden-character", "warning", 4, 10)]
    comment = note("a").replace("cast on 4", f"cast on 4 -- {letter}")
    assert places(check(comment)) == [("hidden-character", "warning", 3, 16)]
    for text in (
        note("a").replace("rows 2: knit", f"rows 2: k{letter}4"),
        note("a").replace("piece p flat", f"piece p{letter} flat"),
    ):
        errors = [p for p in check(text).problems if p.is_error]
        assert any(f"U+{ord(letter):04X}" in p.message for p in errors), errors


@pytest.mark.parametrize("text", PROPER)
def test_proper_text_is_no_problem(check: Check, text: str) -> None:
    assert check(note(text)).problems == ()
    assert check(f"-- {text}\n{note('a')}").problems == ()


def test_every_bidirectional_control_of_unicode_is_known() -> None:
    assert all(visible(chr(code)) == f"\\u{code:04x}" for code in BIDI)
    # Unicode gives the class of each; no other character has one of these.
    turning = {"LRE", "RLE", "LRO", "RLO", "PDF", "LRI", "RLI", "FSI", "PDI"}
    every = map(chr, range(sys.maxunicode + 1))
    assert [c for c in every if unicodedata.bidirectional(c) in turning] == sorted(TURNING)


def test_right_to_left_letters_are_those_of_unicode() -> None:
    wrong = [
        letter
        for letter in map(chr, range(sys.maxunicode + 1))
        if unicodedata.category(letter)[0] == "L"
        and (unicodedata.bidirectional(letter) in ("R", "AL")) != has_right_to_left(letter)
    ]
    assert wrong == []


def test_many_in_one_line_are_one_problem(check: Check) -> None:
    (problem,) = check(note("a\u200bb\u200bc\u2060")).problems
    assert "zero width space (U+200B)" in problem.message
    assert "2 more such characters" in problem.message


def test_warnings_do_not_hide_an_error_behind_them(check: Check) -> None:
    lines = '  note "\u200b"\n' * 3000
    text = note("a").replace("  rows 2", f'{lines}  note "\u202e"\n  rows 2')
    assert check(text).has_errors


def test_what_is_left_behind_is_deleted_by_fix() -> None:
    text = note("a\u200bb\ufeffc\u2060").replace("cast on 4", "cast on 4 -- \u00ad!")
    fixed = fix_text("p.loop", text, check_source)
    assert fixed.text == note("abc").replace("cast on 4", "cast on 4 -- !")
    assert fixed.checked.problems == ()


@pytest.mark.parametrize("letter", ["\u202e", "\x1b", "\u200f", "\u2028"])
def test_what_may_mean_something_is_not_deleted_by_itself(letter: str) -> None:
    text = note(f"a{letter}b")
    assert fix_text("p.loop", text, check_source).text == text


def test_the_reader_gives_up_on_a_source_of_nothing_else() -> None:
    text = "\x00\n" * 100_000
    parsed = parse(Source.of("p.loop", text))
    assert len(parsed.problems) < 200
    assert parsed.problems[-1].title == "too many lines cannot be read"


def test_characters_are_made_visible() -> None:
    assert visible("a\x1b[31mb\u202ec\td\n") == "a\\x1b[31mb\\u202ec\td\n"
    assert named("a\nb\t\ud800\u200f") == "a\\nb\\t\\ud800\\u200f"
    assert visible("שלום") == "שלום"
    assert name_of("\x00") == "null (U+0000)"
    assert name_of("\x01") == "control character (U+0001)"
    assert name_of("\u202e") == "right-to-left override (U+202E)"


def test_json_means_the_same_with_escapes() -> None:
    text = "".join([*ERRORS, *WARNINGS, '"', "\\", "\n", "שלום"]).replace("\ud800\udfff", "")
    told = in_json(json.dumps({"a": text}, ensure_ascii=False, indent=1))
    assert json.loads(told) == {"a": text}
    assert not set(ERRORS) & set(told)
