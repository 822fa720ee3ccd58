"""Every terminal of the grammar has a human name, and no name is without a terminal."""

from __future__ import annotations

import re

import pytest
from lark import Lark

from loopwright.model.build import build
from loopwright.notation.grammar import grammar_text
from loopwright.notation.parse import parse
from loopwright.notation.source import Source
from loopwright.notation.tables import lark_parser
from loopwright.notation.terminals import HUMAN, LINE_WORDS, expected_text


def grammar_terminals() -> set[str]:
    text = grammar_text()
    return set(re.findall(r"^([A-Z_][A-Z0-9_]*)(?:\.\d+)?:", text, re.MULTILINE))


def test_each_terminal_has_a_name_and_each_name_a_terminal() -> None:
    assert set(HUMAN) - {"$END"} == grammar_terminals()
    assert "$END" in HUMAN


def test_the_parser_knows_no_other_terminal() -> None:
    parser = lark_parser(grammar_text())
    used = {terminal.name for terminal in parser.terminals if not terminal.name.startswith("__")}
    assert used <= set(HUMAN)


def test_names_speak_to_a_knitter() -> None:
    for name, human in HUMAN.items():
        assert human, name
        # Words that stand for themselves are quoted; the rest are described in plain lower case.
        assert human == human.strip() and not re.search(r"[A-Z_]{2,}", human), name


def test_the_grammar_reads_whole_texts_too() -> None:
    whole = Lark(grammar_text(), parser="lalr", start=["source"], maybe_placeholders=False)
    tree = whole.parse('pattern "x"\n\nmotif rib over 2n\nrow 1: * k1 p1 *\n')
    assert tree.data == "source" and len(tree.children) == 3


def test_line_words_are_just_those_a_line_can_start_with() -> None:
    parser = lark_parser(grammar_text())
    accepted = parser.parse_interactive("").accepts()
    starts = {t.name: t.pattern for t in parser.terminals if t.name in accepted}
    for word in LINE_WORDS:
        assert any(re.fullmatch(p.to_regexp(), word) for p in starts.values()), word
    for name, pattern in starts.items():
        assert any(re.fullmatch(pattern.to_regexp(), word) for word in LINE_WORDS), name


def test_expected_text() -> None:
    assert expected_text({"NUMBER"}) == "a number"
    assert expected_text({"NUMBER", "_COLON"}) == "a colon or a number"
    assert expected_text({"$END", "NUMBER", "_COMMA"}) == (
        "a comma, a number or the end of the line"
    )


@pytest.mark.parametrize("word", LINE_WORDS)
def test_a_line_word_alone_is_answered(word: str) -> None:
    parsed = parse(Source.of("cloth.loop", f"{word}\n"))
    assert parsed.recovered and len(parsed.problems) == 1
    assert parsed.problems[0].rule == "line-unclear"


@pytest.mark.parametrize(
    ("line", "said"),
    [
        ("care", "“care”, where a phrase of care such as “hand wash” should follow"),
        ("care hand wash,", "“wash,”, where a phrase of care such as “hand wash” should follow"),
        ("care hand wash; dry flat", "what can is a comma or a phrase of care such as “hand wash”"),
        ("level", "“level”, where “basic”, “easy”, “intermediate” or “complex” should follow"),
        ("bound", "“bound”, where “slip”, “carry” or “float” should follow"),
        ("needle", "“needle”, where a name or a number should follow"),
    ],
)
def test_a_line_says_what_it_takes_itself(line: str, said: str) -> None:
    (problem,) = parse(Source.of("a.loop", f'pattern "A"\n  {line}\n')).problems
    assert said in problem.message
    assert ("no dry cleaning" in problem.help) == line.startswith("care")


def test_what_the_help_of_a_care_line_shows_can_be_read() -> None:
    (problem,) = parse(Source.of("a.loop", 'pattern "A"\n  care\n')).problems
    shown = problem.help.split("“")[1].split("”")[0]
    parsed = parse(Source.of("a.loop", f'pattern "A"\n  {shown}\n'))
    assert not parsed.problems and not build(parsed).problems
