"""Whatever the source, the project answers: no traceback, in time, and one layout that holds.

The properties are in `fuzz_properties`, the sources in `fuzz_sources`. `LOOPWRIGHT_FUZZ`
multiplies the number of tries, for the long run before a release (``make fuzz``).
"""

from __future__ import annotations

import os
import random
import sys
from collections import Counter
from pathlib import Path

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

sys.path.insert(0, str(Path(__file__).parent))
from fuzz_properties import checked, everything, layout_holds, memory_holds
from fuzz_sources import broken_bytes, near_sources, shaped_sources, valid_sources

TRIES = int(os.environ.get("LOOPWRIGHT_FUZZ", "1"))
SLOW = [HealthCheck.too_slow, HealthCheck.filter_too_much]


def often(number: int) -> settings:
    return settings(max_examples=number * TRIES, deadline=None, suppress_health_check=SLOW)


def right(text: str) -> None:
    """No error of any rule, and every property with the editions and new sizes."""
    found = everything(text)
    assert not found.recovered
    assert not found.has_errors, (text, [p.message for p in found.problems if p.is_error])


@often(20)
@given(valid_sources())
def test_right_motifs_are_right(text: str) -> None:
    right(text)


@often(20)
@given(shaped_sources())
def test_right_shapes_are_right(text: str) -> None:
    right(text)


@often(80)
@given(near_sources())
def test_nearly_right_sources_are_answered(text: str) -> None:
    everything(text)


@often(80)
@given(broken_bytes())
def test_bytes_are_answered(data: bytes) -> None:
    everything(data.decode("utf-8", "replace").removeprefix("\ufeff"), thorough=False)


@often(10)
@given(st.one_of(near_sources(), shaped_sources(), valid_sources()))
def test_a_check_keeps_to_its_memory(text: str) -> None:
    memory_holds(text)


@often(20)
@given(shaped_sources(), st.randoms(use_true_random=False))
def test_another_spacing_is_the_same_pattern(text: str, dice: random.Random) -> None:
    """Spaces, blank lines and case carelessly set: the layout gives the same source again."""
    careless = []
    for line in text.split("\n"):
        loud = "\t" + line.upper().replace(" X", " x").replace(" ", "  ")
        careless.append(line if '"' in line or dice.random() < 0.5 else loud)
        careless += [""] * dice.randrange(2)
    spelled = "\n".join(careless)
    layout_holds(spelled)
    assert [p.rule for p in checked(spelled).problems] == [p.rule for p in checked(text).problems]


def shares(strategy: st.SearchStrategy[str], number: int) -> Counter[str]:
    """How many of a strategy's sources check clean, have errors, or cannot be read."""
    found: Counter[str] = Counter()

    @settings(max_examples=number, derandomize=True, database=None, deadline=None,
              suppress_health_check=list(HealthCheck))  # fmt: skip
    @given(strategy)
    def look(text: str) -> None:
        seen = checked(text)
        found["unread" if seen.recovered else "wrong" if seen.has_errors else "clean"] += 1

    look()
    return found


def test_the_strategies_make_what_they_say() -> None:
    """Of the sources nearly right about half can be read, so that the counting behind the reader
    is tried and not the reader alone. (That right sources are all right, `right` holds.)"""
    near = shares(near_sources(), 150)
    share = {kind: near[kind] / near.total() for kind in ("unread", "wrong", "clean")}
    assert share["unread"] < 0.65 and share["wrong"] > 0.15 and share["clean"] > 0.08, share
