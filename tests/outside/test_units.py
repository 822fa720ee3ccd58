"""The unit words of the notation against a unit library."""

from __future__ import annotations

import pint
import pytest

from loopwright.fit.units import parse_quantity
from loopwright.notation.quantity import LENGTH_MM, UNIT_WORDS, WEIGHT_G

REGISTRY = pint.UnitRegistry()


@pytest.mark.parametrize("word", sorted(UNIT_WORDS))
def test_every_unit_word_has_the_factor_of_the_library(word: str) -> None:
    ours, theirs = parse_quantity(f"1 {word}"), REGISTRY.Quantity(1.0, word)
    if ours.is_weight:
        assert ours.grams() == pytest.approx(theirs.m_as("g"), rel=1e-12, abs=0)
    else:
        assert ours.mm() == pytest.approx(theirs.m_as("mm"), rel=1e-12, abs=0)
        assert ours.metres() == pytest.approx(theirs.m_as("m"), rel=1e-12, abs=0)


def test_every_unit_is_a_length_or_a_weight_and_no_word_is_left_out() -> None:
    assert set(UNIT_WORDS.values()) == LENGTH_MM.keys() | WEIGHT_G.keys()
    assert not LENGTH_MM.keys() & WEIGHT_G.keys()


@pytest.mark.parametrize("word", ["ft", "foot", "feet", "km", "dm", "mile"])
def test_other_lengths_are_those_of_the_library(word: str) -> None:
    assert parse_quantity(f"3 {word}").mm() == pytest.approx(REGISTRY.Quantity(3, word).m_as("mm"))


@pytest.mark.parametrize("word", ["kg", "lb", "pound", "pounds", "mg"])
def test_other_weights_are_those_of_the_library(word: str) -> None:
    assert parse_quantity(f"3 {word}").grams() == pytest.approx(
        REGISTRY.Quantity(3, word).m_as("g")
    )
