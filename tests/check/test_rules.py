"""Each rule by its own examples: the right one is clean, the wrong one breaks this rule alone."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from loopwright.check.explain import explain_text, list_text, rules_page
from loopwright.check.registry import all_rules, rule_named
from loopwright.check.rule import Rule
from loopwright.compile import Checked
from loopwright.notation.hidden import visible
from loopwright.problem import ADVICE, ERROR, WARNING

WRONG = Path(__file__).parents[2] / "examples" / "wrong"

# The line of the wrong example on which a reader should look first.
LINE = {
    "care-harsh": 2,
    "carry-long": 8,
    "cast-on-misfit": 6,
    "claim-wrong": 4,
    "colour-pool": 4,
    "count-over": 4,
    "count-short": 4,
    "count-unreached": 7,
    "edge-broken": 5,
    "edge-odd-one-out": 6,
    "fill-unclear": 4,
    "fill-uneven": 4,
    "float-long": 3,
    "form-broken": 2,
    "gauge-missing": 4,
    "hidden-character": 4,
    "holder-empty": 7,
    "holder-full": 4,
    "gauge-odd": 2,
    "length-unreached": 9,
    "line-unclear": 4,
    "marker-missed": 5,
    "marker-missing": 4,
    "name-twice": 6,
    "needle-short": 3,
    "never-bound-off": 2,
    "never-used": 2,
    "no-cast-on": 3,
    "number-too-big": 3,
    "one-pattern": 1,
    "out-of-place": 2,
    "row-missing": 2,
    "row-twice": 5,
    "same-shade-twice": 7,
    "shades-close": 5,
    "side-flip": 8,
    "size-count": 4,
    "size-off": 2,
    "stitches-unreached": 5,
    "sizes-disorder": 4,
    "slip-long": 5,
    "slip-stacked": 7,
    "strand-far-side": 8,
    "strand-unjoined": 6,
    "spread-tight": 9,
    "swatch-differs": 3,
    "unit-missing": 2,
    "unknown-name": 7,
    "unknown-word": 4,
    "width-odd-repeat": 2,
    "yarn-short": 5,
}

rules = pytest.mark.parametrize("rule", all_rules(), ids=lambda rule: rule.name)
CheckText = Callable[[str], Checked]


@rules
def test_right_is_clean(rule: Rule, check: CheckText) -> None:
    assert check(rule.right).problems == ()


@rules
def test_wrong_breaks_this_rule_alone(rule: Rule, check: CheckText) -> None:
    problems = check(rule.wrong).problems
    assert problems
    assert {problem.rule for problem in problems} == {rule.name}


@rules
def test_wrong_points_at_its_line(rule: Rule, check: CheckText) -> None:
    checked = check(rule.wrong)
    lines = [checked.source.line_column(p.span.start)[0] for p in checked.problems]
    assert lines == [LINE[rule.name]]


@rules
def test_wrong_has_the_severity_of_the_rule(rule: Rule, check: CheckText) -> None:
    severities = {problem.severity for problem in check(rule.wrong).problems}
    assert rule.severity in (ERROR, WARNING, ADVICE)
    # A rule may warn in a milder case; its own example shows its name's severity.
    assert severities == {rule.severity}


@rules
def test_wrong_stands_among_the_examples(rule: Rule) -> None:
    path = WRONG / f"{rule.name}.loop"
    assert path.read_text("utf-8") == rule.wrong


def test_no_wrong_example_is_left_over() -> None:
    assert {path.stem for path in WRONG.glob("*.loop")} == {rule.name for rule in all_rules()}


def test_the_table_names_every_rule() -> None:
    assert set(LINE) == {rule.name for rule in all_rules()}


@rules
def test_words_are_there(rule: Rule) -> None:
    assert rule.title and not rule.title.endswith(".")
    assert rule.what.endswith((".", ")"))
    assert not any(letter.isdigit() for letter in rule.name)
    assert rule_named(rule.name) is rule
    text = explain_text(rule)
    assert rule.name in text and rule.title in text
    for line in (*rule.wrong.splitlines(), *rule.right.splitlines()):
        assert f"    {visible(line)}" in text


def test_list_and_page_name_every_rule() -> None:
    listed, page = list_text(), rules_page()
    for rule in all_rules():
        assert f"\n{rule.name} " in f"\n{listed}"
        assert f"## {rule.name}\n" in page
    assert rule_named("no-such-rule") is None
