"""Checking takes time by the length of the source, whatever the stitches: ratios of one run."""

from __future__ import annotations

import gc
import statistics
import sys
import time
from collections.abc import Callable
from pathlib import Path

import pytest

from loopwright.compile import check_source
from loopwright.notation.source import Source

sys.path.insert(0, str(Path(__file__).parent))
import texts


def seconds(text: str) -> float:
    """The processor time of a check; the collector set as the console script sets it."""
    usual = gc.get_threshold()
    gc.collect()
    gc.set_threshold(70_000, 10, 10)
    start = time.process_time()
    checked = check_source(Source.of("bench.loop", text))
    took = time.process_time() - start
    gc.set_threshold(*usual)
    assert not checked.has_errors, checked.problems
    return took


def grows(large: str, small: str, less_than: float, took: Callable[[str], float] = seconds) -> bool:
    """Whether the large one takes less than so many times as long, by runs by turns: by the best
    so far where it is clear, for what is quadratic is not a fifth below; else by medians of
    three."""
    pairs: list[tuple[float, float]] = []
    for _ in range(3):
        pairs.append((took(large), took(small)))
        if min(a for a, _ in pairs) / min(b for _, b in pairs) < 0.8 * less_than:
            return True
    ratio = statistics.median(a for a, _ in pairs) / statistics.median(b for _, b in pairs)
    return ratio < less_than


@pytest.fixture(autouse=True, scope="module")
def loaded() -> None:
    seconds(texts.few_lines(10))


def test_twice_the_rows_take_about_twice_as_long() -> None:
    # Linear is 2; quadratic would be 4.
    assert grows(texts.few_lines(16_000), texts.few_lines(8_000), less_than=3)
    assert grows(texts.distinct_lines(4_000), texts.distinct_lines(2_000), less_than=3)


def calls(text: str) -> int:
    """How many functions a check calls, which no clock disturbs."""
    count = 0

    def called(frame: object, event: str, arg: object) -> None:
        nonlocal count
        count += event in ("call", "c_call")

    source = Source.of("bench.loop", text)
    sys.setprofile(called)
    try:
        checked = check_source(source)
    finally:
        sys.setprofile(None)
    assert not checked.has_errors, checked.problems
    return count


def test_four_times_the_rows_call_about_four_times_as_much() -> None:
    """A search through all rows for each join hides behind the rest from a clock; not here."""
    few, many = calls(texts.few_lines(2_000)), calls(texts.few_lines(8_000))
    assert many < 4.6 * few


def test_stitches_cost_nothing() -> None:
    assert grows(texts.wide(4 * 249_999_999 + 2), texts.wide(102), less_than=3)


def test_sizes_cost_what_they_are() -> None:
    assert grows(texts.sizes(60), texts.sizes(20), less_than=6)


def test_what_grows_as_the_square_is_seen() -> None:
    """The comparison can fail: with a check whose time is the square of the source's length."""
    large, small = "a" * 2_000, "a" * 1_000
    assert not grows(large, small, less_than=3, took=lambda text: len(text) ** 2.0)
    assert grows(large, small, less_than=3, took=lambda text: float(len(text)))
