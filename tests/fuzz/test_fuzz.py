"""Whatever the source, the project answers: no traceback, in time, and one layout that holds.

`LOOPWRIGHT_FUZZ` multiplies the number of tries, for the long run before a release
(``make fuzz``).
"""

from __future__ import annotations

import os
import re
import sys
import time
from pathlib import Path

import pytest
from hypothesis import HealthCheck, assume, given, settings

from loopwright.build import BuildOptions, build_editions
from loopwright.check.checked import Checked
from loopwright.check.printing import problem_json, problems_text
from loopwright.compile import check_source
from loopwright.edition.listing import rows_json
from loopwright.fit.resize import CannotResize, Wish, resize
from loopwright.notation.format import format_source
from loopwright.notation.parse import parse
from loopwright.notation.source import Source

sys.path.insert(0, str(Path(__file__).parent))
from fuzz_sources import broken_bytes, near_sources, valid_sources

TRIES = int(os.environ.get("LOOPWRIGHT_FUZZ", "1"))
CORPUS = sorted((Path(__file__).parent / "corpus").glob("*.loop"))
SECONDS_A_KILOBYTE = 2.0  # generous: a busy machine; what is frozen takes far longer
SLOW = [HealthCheck.too_slow, HealthCheck.filter_too_much]


def often(number: int) -> settings:
    return settings(max_examples=number * TRIES, deadline=None, suppress_health_check=SLOW)


def checked(text: str) -> Checked:
    return check_source(Source.of("fuzz.loop", text))


def answers(text: str) -> Checked:
    """Check, print and list a source; none of it may raise or take too long."""
    started = time.process_time()
    found = checked(text)
    took = time.process_time() - started
    assert took < SECONDS_A_KILOBYTE * (1 + len(text) / 1000), (took, text)
    problems_text(found.problems, found.source)
    for problem in found.problems:
        told = problem_json(problem, found.source)
        assert told["line"] >= 1 and told["column"] >= 1
        assert problem.title and problem.message
    if all(walk.rows < 1000 for walk in found.walks):
        "".join(rows_json(found))
    return found


def same_layout(text: str) -> None:
    parsed = parse(Source.of("fuzz.loop", text))
    if parsed.recovered:
        return
    once = format_source(parsed)
    again = parse(Source.of("fuzz.loop", once))
    assert not again.recovered, once
    assert format_source(again) == once
    before, after = checked(text), checked(once)
    assert told(before) == told(after), (text, once)


def told(found: Checked) -> list[tuple[str, str, tuple[str, ...]]]:
    """The problems without their places, in order of rule and words."""
    return sorted((p.rule, re.sub(r"\s+", " ", p.message), p.sizes) for p in found.problems)


@often(20)
@given(valid_sources())
def test_right_sources_are_right(text: str) -> None:
    found = answers(text)
    assert not found.has_errors, (text, [p.message for p in found.problems])
    made, failed = build_editions(found, BuildOptions(("text", "html", "spoken")), "fuzz")
    assert len(made) == 3 and not failed
    same_layout(text)


@often(20)
@given(valid_sources())
def test_a_resized_source_checks(text: str) -> None:
    found = checked(text)
    wish = Wish.of(found.pattern, "60cm", None, None)
    try:
        result = resize(found, wish, check_source)
    except CannotResize:
        return
    again = check_source(result.source)
    assert not again.has_errors, (text, result.source.text)


@often(100)
@given(near_sources())
def test_nearly_right_sources_are_answered(text: str) -> None:
    answers(text)
    same_layout(text)


@often(20)
@given(near_sources())
def test_what_checks_is_rendered(text: str) -> None:
    found = checked(text)
    assume(not found.has_errors)
    assume(all(walk.rows < 5000 for walk in found.walks))
    build_editions(found, BuildOptions(("text", "html", "spoken")), "fuzz")


@often(80)
@given(broken_bytes())
def test_bytes_are_answered(data: bytes) -> None:
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError:
        return
    answers(text)


@pytest.mark.parametrize("path", CORPUS, ids=lambda p: p.stem)
def test_what_once_failed(path: Path) -> None:
    """Each crash that was found, by its name."""
    text = path.read_bytes().decode("utf-8-sig", "replace")
    found = answers(text)
    same_layout(text)
    if not found.has_errors and all(walk.rows < 5000 for walk in found.walks):
        build_editions(found, BuildOptions(("text", "html", "spoken")), "fuzz")
