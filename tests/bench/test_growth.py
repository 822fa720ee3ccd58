"""Checking takes time by the length of the source, whatever the stitches: ratios of one run."""

from __future__ import annotations

import statistics
import sys
import time
from pathlib import Path

from loopwright.compile import check_source
from loopwright.notation.source import Source

sys.path.insert(0, str(Path(__file__).parent))
import texts


def seconds(text: str) -> float:
    start = time.process_time()
    checked = check_source(Source.of("bench.loop", text))
    took = time.process_time() - start
    assert not checked.has_errors, checked.problems
    return took


def ratio(large: str, small: str) -> float:
    """How much longer the large one takes, medians of three runs by turns."""
    pairs = [(seconds(large), seconds(small)) for _ in range(3)]
    return statistics.median(a for a, _ in pairs) / statistics.median(b for _, b in pairs)


def test_twice_the_rows_take_about_twice_as_long() -> None:
    # Linear is 2; quadratic would be 4.
    assert ratio(texts.few_lines(16_000), texts.few_lines(8_000)) < 3
    assert ratio(texts.distinct_lines(4_000), texts.distinct_lines(2_000)) < 3


def test_stitches_cost_nothing() -> None:
    assert ratio(texts.wide(4 * 249_999_999 + 2), texts.wide(102)) < 3


def test_sizes_cost_what_they_are() -> None:
    assert ratio(texts.sizes(60), texts.sizes(20)) < 6
