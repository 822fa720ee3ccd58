"""The table of needles against figures published elsewhere, and its numbers against their order."""

from __future__ import annotations

from itertools import pairwise

import pytest

from loopwright.facts.needles import needles

# Retail conversion charts (three that agree): US number, millimetres, old UK number.
PUBLISHED = """
0 2 14 | 1 2.25 13 | 2 2.75 12 | 3 3.25 10 | 5 3.75 9 | 6 4 8 | 7 4.5 7 | 8 5 6 | 9 5.5 5
10 6 4 | 10.5 6.5 3 | 11 8 0 | 13 9 00 | 15 10 000
"""
ROWS = [tuple(row.split()) for line in PUBLISHED.strip().splitlines() for row in line.split("|")]


@pytest.mark.parametrize(("us", "mm", "uk"), ROWS)
def test_every_published_size(us: str, mm: str, uk: str) -> None:
    (needle,) = [needle for needle in needles() if needle.us == us]
    assert (needle.mm, needle.uk) == (float(mm), uk)


def _us_order(number: str) -> float:
    if "/" in number:
        return -float(number.split("/", maxsplit=1)[0])
    return -float(len(number)) + 1 if set(number) == {"0"} else float(number)


def _uk_order(number: str) -> float:
    return -float(len(number)) + 1 if set(number) == {"0"} else float(number)


def test_us_numbers_rise_with_the_size() -> None:
    numbers = [_us_order(needle.us) for needle in needles() if needle.us]
    assert all(thin < thick for thin, thick in pairwise(numbers))


def test_uk_numbers_fall_with_the_size() -> None:
    numbers = [_uk_order(needle.uk) for needle in needles() if needle.uk]
    assert all(thin > thick for thin, thick in pairwise(numbers))


def test_one_size_only_has_the_same_number_in_both_countries() -> None:
    assert [needle.mm for needle in needles() if needle.us == needle.uk != ""] == [4.5]


def test_number_ten_is_two_needles() -> None:
    assert [needle.mm for needle in needles() if needle.us == "10"] == [6.0]
    assert [needle.mm for needle in needles() if needle.uk == "10"] == [3.25]
