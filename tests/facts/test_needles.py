"""Needle sizes and how they are printed."""

from __future__ import annotations

from itertools import pairwise

import pytest

from loopwright.facts.needles import nearest_needle, needle_label, needles


@pytest.mark.parametrize(
    ("mm", "label"),
    [
        (4.5, "4.5 mm (US 7, UK 7)"),
        (3.5, "3.5 mm (US 4)"),
        (7.0, "7 mm (UK 2)"),
        (6.0, "6 mm (US 10, UK 4)"),
        (3.25, "3.25 mm (US 3, UK 10)"),
        (2, "2 mm (US 0, UK 14)"),
        (8, "8 mm (US 11, UK 0)"),
        (12.75, "12.75 mm (US 17)"),
        (4.2, "4.2 mm"),
        (4.51, "4.51 mm"),
        (9 / 64 * 25.4, "3.57 mm"),
        (4.5 / 25.4 * 25.4, "4.5 mm (US 7, UK 7)"),
    ],
)
def test_labels(mm: float, label: str) -> None:
    assert needle_label(mm) == label


def test_sizes_stand_thinnest_first_and_apart() -> None:
    for thin, thick in pairwise(needles()):
        assert thick.mm - thin.mm >= 0.25


@pytest.mark.parametrize(
    ("mm", "nearest"),
    [(4.2, 4.0), (4.26, 4.5), (4.25, 4.0), (0.1, 1.0), (99, 25.0), (3.5, 3.5)],
)
def test_the_nearest_size(mm: float, nearest: float) -> None:
    assert nearest_needle(mm).mm == nearest


@pytest.mark.parametrize("mm", [0, -4, float("nan")])
def test_what_is_no_needle(mm: float) -> None:
    with pytest.raises(ValueError, match="is none"):
        nearest_needle(mm)
