"""Quantities read from a command line, and figures printed."""

from __future__ import annotations

import subprocess
import sys
from math import inf, nan

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from loopwright.fit.units import (
    both,
    cm,
    fraction,
    grams_and_ounces,
    inches,
    metres_and_yards,
    parse_quantity,
)
from loopwright.notation.quantity import UNIT_WORDS
from loopwright.notation.source import Span


@pytest.mark.parametrize(
    ("text", "values", "unit"),
    [
        ("150cm", (150.0,), "cm"),
        ("150 cm", (150.0,), "cm"),
        ("  150 CM ", (150.0,), "cm"),
        ("60 inches", (60.0,), "in"),
        ('60"', (60.0,), "in"),
        ("60″", (60.0,), "in"),
        ("60''", (60.0,), "in"),
        ("60 in.", (60.0,), "in"),
        ("7½ in", (7.5,), "in"),
        ("½yd", (0.5,), "yd"),
        (".5 in", (0.5,), "in"),
        ("90/120/150 cm", (90.0, 120.0, 150.0), "cm"),
        ("7½/8.25 in", (7.5, 8.25), "in"),
        ("3½ oz", (3.5,), "oz"),
        ("100 grams", (100.0,), "g"),
        ("5 ft", (152.4,), "cm"),
        ("5'", (152.4,), "cm"),
        ("5 Feet", (152.4,), "cm"),
        ("4/5 feet", (121.92, 152.4), "cm"),
        ("1 km", (100_000.0,), "cm"),
        ("1 lb", (453.59237,), "g"),
        ("2 kg", (2000.0,), "g"),
    ],
)
def test_a_quantity_is_read(text: str, values: tuple[float, ...], unit: str) -> None:
    quantity = parse_quantity(text)
    assert quantity.values == values
    assert quantity.unit == unit
    assert quantity.span == Span(0, len(text.strip()))


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("150", "150 has no unit: write 150 cm or 150 in"),
        ("90/120", "90/120 has no unit: write 90/120 cm or 90/120 in"),
        ("", "a quantity is missing"),
        ("wide", "“wide” is no quantity: write a number and a unit, as in 150 cm"),
        ("7,5 cm", "“7,5 cm”: a broken number has a point, as in 7.5 cm"),
        ("7 1/2 in", "write a half as 7½ or 7.5"),
        ("90cm/120cm", "a slash parts the sizes, as in 90/120 cm"),
        ("-5 cm", "-5 cm is less than nothing: a measure must be more than 0"),
        ("0 cm", "0 cm is nothing"),
        ("90/0 cm", "90/0 cm is nothing"),
        ("1e9 cm", "“1e9 cm” is no quantity"),
        ("1000000001 cm", "1000000001 cm is too much: a number may be 1,000,000,000 at most"),
        ("9" * 200_000 + " cm", "is no quantity"),
        ("3 days", "“days” is no unit of length or weight: write 3 cm or 3 in"),
        ("5 parsnips", "“parsnips” is no unit of length or weight"),
        ("5 cm**9", "“5 cm**9” is no quantity"),
        ("5 cm cm", "“5 cm cm” is no quantity"),
        ("٣ cm", "“٣ cm” is no quantity"),
    ],
)
def test_what_is_no_quantity_is_told_in_words(text: str, says: str) -> None:
    with pytest.raises(ValueError) as caught:
        parse_quantity(text)
    assert says in str(caught.value)
    assert len(str(caught.value)) < 200


def test_a_message_holds_nothing_that_a_terminal_acts_on() -> None:
    with pytest.raises(ValueError) as caught:
        parse_quantity("5 \x1b[31mcm\n")
    assert str(caught.value).isprintable()


@given(st.text(max_size=30) | st.from_regex(r"\A[0-9/.½]{1,6} ?\w{1,6}\Z"))
@example("5 µ")
@example("¼¼")
def test_any_text_is_read_or_refused_with_a_sentence(text: str) -> None:
    try:
        quantity = parse_quantity(text)
    except ValueError as error:
        assert str(error).isprintable()
        assert len(str(error)) > 20
    else:
        assert quantity.is_length or quantity.is_weight
        assert all(0 < value <= 1_000_000_000 for value in quantity.values)


@pytest.mark.parametrize(
    ("text", "value"), [("7½", 7.5), ("½", 0.5), ("7.5", 7.5), ("7", 7.0), ("⅓", 1 / 3), ("0", 0.0)]
)
def test_a_fraction_is_read(text: str, value: float) -> None:
    assert fraction(text) == value


@pytest.mark.parametrize("text", ["", "nan", "inf", "-1", "1e5", "7 ½", "½½", "1/2", "7.", "seven"])
def test_what_is_no_fraction_is_refused(text: str) -> None:
    with pytest.raises(ValueError, match=r"is no number: write 7, 7\.5 or 7½"):
        fraction(text)


@pytest.mark.parametrize(
    ("mm", "text"),
    [
        (1100, "110 cm / 43¼ in"),
        (215, "21.5 cm / 8½ in"),
        (217.5, "22 cm / 8½ in"),
        (254, "25.5 cm / 10 in"),
        (6.35, "0.5 cm / ¼ in"),
        (0, "0 cm / 0 in"),
        (-0.0, "0 cm / 0 in"),
        (-1, "0 cm / 0 in"),
        (-30, "-3 cm / -1¼ in"),
        (-6.35, "-0.5 cm / -¼ in"),
        (12_345_675, "1234567.5 cm / 486050¼ in"),
    ],
)
def test_lengths_are_printed(mm: float, text: str) -> None:
    assert both(mm) == text
    assert f"{cm(mm)} / {inches(mm)}" == text


@pytest.mark.parametrize(
    ("m", "text"),
    [
        (812.4, "812 m / 888 yd"),
        (200, "200 m / 219 yd"),
        (3.66, "3.7 m / 4 yd"),
        (9.97, "10 m / 11 yd"),
        (0, "0 m / 0 yd"),
        (-0.01, "0 m / 0 yd"),
    ],
)
def test_yarn_is_printed(m: float, text: str) -> None:
    assert metres_and_yards(m) == text


@pytest.mark.parametrize(
    ("g", "text"),
    [
        (100, "100 g / 3½ oz"),
        (50, "50 g / 1¾ oz"),
        (11.6, "12 g / ½ oz"),
        (4.25, "4.3 g / ¼ oz"),
        (3.6, "3.6 g / ¼ oz"),
        (2.8, "2.8 g / 0.1 oz"),  # not “0 oz”: it is some
        (-0.04, "0 g / 0 oz"),
    ],
)
def test_weights_are_printed(g: float, text: str) -> None:
    assert grams_and_ounces(g) == text


@pytest.mark.parametrize("value", [nan, inf, -inf])
def test_what_is_no_figure_is_not_printed(value: float) -> None:
    for prints in (cm, inches, both, metres_and_yards, grams_and_ounces):
        with pytest.raises(ValueError, match="is no figure to print"):
            prints(value)


LENGTHS = st.floats(min_value=10, max_value=100_000)


@given(LENGTHS)
def test_a_printed_centimetre_is_within_half_a_step(mm: float) -> None:
    assert abs(parse_quantity(cm(mm)).mm() - mm) <= 2.5 + 1e-6


@given(LENGTHS)
def test_a_printed_inch_is_within_half_a_step(mm: float) -> None:
    assert abs(parse_quantity(inches(mm)).mm() - mm) <= 25.4 / 8 + 1e-6


@given(st.floats(min_value=1, max_value=100_000))
def test_printed_yarn_is_within_half_a_step(m: float) -> None:
    for part in metres_and_yards(m).split(" / "):
        unit = 0.9144 if part.endswith("yd") else 1.0
        step = unit if m / unit >= 10 else unit / 10
        assert abs(parse_quantity(part).metres() - m) <= step / 2 + 1e-6


@given(st.floats(min_value=10, max_value=100_000))
def test_printed_weight_is_within_half_a_step(g: float) -> None:
    grams, ounces = grams_and_ounces(g).split(" / ")
    assert abs(parse_quantity(grams).grams() - g) <= 0.5 + 1e-6
    assert abs(parse_quantity(ounces).grams() - g) <= 28.349523125 / 8 + 1e-6


@given(st.floats(min_value=-10_000, max_value=10_000))
def test_no_figure_is_a_negative_nothing(value: float) -> None:
    for prints in (cm, inches, both, metres_and_yards, grams_and_ounces):
        assert "-0 " not in prints(value)
        assert prints(value).replace("-", "") == prints(-value).replace("-", "")


def test_pint_is_loaded_only_for_a_word_the_notation_has_not() -> None:
    words = ", ".join(f"{'1 ' + word!r}" for word in UNIT_WORDS)
    program = f"""
import sys
from loopwright.fit.units import both, parse_quantity
for text in [{words}]:
    parse_quantity(text)
both(1100)
assert "pint" not in sys.modules
parse_quantity("5 ft")
assert "pint" in sys.modules
"""
    done = subprocess.run(
        [sys.executable, "-c", program], capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stderr
