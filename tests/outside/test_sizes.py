"""Sizes against things outside the project.

Congruences against sympy's Chinese remainder theorem and against counting; figures of graded
garments that are common practice; the usual blanket sizes (common practice: several size charts,
`facts/blanket_sizes.csv`) at the gauge of each standard yarn weight of the craft-yarn trade body
(`facts/yarn_weights.csv`); printed lengths against pint's own registry.
"""

from __future__ import annotations

import re
from fractions import Fraction
from functools import cache

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st
from shared.editions import checked_example
from sympy import ilcm
from sympy.ntheory.modular import crt

from loopwright.compile import Checked, check_source
from loopwright.count.affine import CountSet
from loopwright.count.widths import piece_width
from loopwright.facts.needles import needles
from loopwright.facts.sizes import BlanketSize, blanket_sizes
from loopwright.facts.yarns import YarnWeight, yarn_weights
from loopwright.fit.resize import Wish, resize
from loopwright.fit.units import cm, inches, parse_quantity
from loopwright.notation.source import Source

PAIRS = st.lists(st.tuples(st.integers(1, 40), st.integers(0, 39)), min_size=1, max_size=4)


def meeting(pairs: list[tuple[int, int]]) -> CountSet:
    counts = CountSet.every(0)
    for modulus, residue in pairs:
        counts = counts.meet(CountSet(residue % modulus, modulus, 0))
    return counts


@given(pairs=PAIRS)
def test_congruences_against_sympy(pairs: list[tuple[int, int]]) -> None:
    theirs = crt([m for m, _ in pairs], [r % m for m, r in pairs])
    counts = meeting(pairs)
    if theirs is None:
        assert counts.is_empty
        return
    # Of moduli with a common divisor crt may give their product; the solutions repeat by the lcm.
    residue, modulus = int(theirs[0]), int(ilcm(1, *(m for m, _ in pairs)))
    assert counts.modulus == modulus
    assert counts.above(0) == residue % modulus


@given(pairs=PAIRS, wanted=st.integers(0, 5000))
def test_congruences_against_counting(pairs: list[tuple[int, int]], wanted: int) -> None:
    counts = meeting(pairs)
    fitting = [x for x in range(9000) if all(x % m == r % m for m, r in pairs)]
    assert [x for x in range(500) if x in counts] == [x for x in fitting if x < 500]
    nearest = counts.nearest(wanted)
    if fitting and fitting[-1] > 5000 + abs(fitting[0] - wanted):
        least = min(abs(x - wanted) for x in fitting)
        assert nearest == max(x for x in fitting if abs(x - wanted) == least)


@given(
    factor=st.fractions(min_value=-4, max_value=4, max_denominator=6),
    offset=st.fractions(min_value=-20, max_value=20, max_denominator=6),
    modulus=st.integers(1, 24),
)
def test_a_linear_congruence_against_counting(
    factor: Fraction, offset: Fraction, modulus: int
) -> None:
    counts = CountSet.every(0).congruent(factor, offset, modulus)
    fitting = [x for x in range(400) if (factor * x + offset) % modulus == 0]
    assert [x for x in range(400) if x in counts] == fitting


# Common practice: a body's stitches parted at the underarms and edges, in five graded sizes.
BODY = (
    (56, 16, 100, 16, 56),
    (61, 18, 110, 18, 61),
    (66, 20, 120, 20, 66),
    (71, 22, 130, 22, 71),
    (76, 24, 140, 24, 76),
)
TOTALS = (244, 268, 292, 316, 340)


def body(totals: tuple[int, ...] = TOTALS) -> str:
    parts = " pm ".join("k" + "/".join(str(row[at]) for row in BODY) for at in range(5))
    return (
        'pattern "Body"\n  sizes one, two, three, four, five\n'
        "  gauge 20 stitches 28 rows = 10 cm\n"
        "motif rib over 4n\n  row 1: * k2 p2 *\n  row 2: * k2 p2 *\n"
        f"piece body flat\n  cast on {'/'.join(map(str, totals))}\n  work rib for 12 rows\n"
        f"  row: {parts}\n  bind off\n"
    )


def test_five_sizes_whose_parts_add_up() -> None:
    assert tuple(sum(row) for row in BODY) == TOTALS
    checked = check_source(Source.of("body.loop", body()))
    assert checked.problems == ()
    assert tuple(walk.cast_on for walk in checked.walks) == TOTALS


@pytest.mark.parametrize("size", range(5))
def test_a_size_whose_parts_do_not_add_up_is_found(size: int) -> None:
    totals = tuple(n + 4 * (i == size) for i, n in enumerate(TOTALS))
    problems = check_source(Source.of("body.loop", body(totals))).problems
    assert [p.sizes for p in problems] == [(("one", "two", "three", "four", "five")[size],)]


@cache
def five_sizes() -> Checked:
    return check_source(Source.of("body.loop", body()))


@given(cm=st.integers(90, 250))
def test_the_parts_of_a_new_width_add_up_again(cm: int) -> None:
    before = five_sizes()
    new = resize(before, Wish.of(before.pattern, f"{cm} cm", None, "three"), check_source)
    after = check_source(new.source)
    # One size alone is made wider than the next, which is said; nothing else is.
    assert {p.rule for p in after.problems} <= {"sizes-disorder"}
    row = re.search(r"row: (k[\d/]+(?: pm k[\d/]+)+)", after.source.text)
    assert row is not None
    parts = [int(part.split("/")[2]) for part in re.findall(r"k([\d/]+)", row[1])]
    assert sum(parts) == after.walks[2].cast_on
    assert parts == parts[::-1]  # both fronts and both underarms stay alike
    assert abs(sum(parts) - cm * 2) <= 2 and sum(parts) % 4 == 0


@pytest.mark.parametrize("bust", [81, 91, 102, 112, 122, 132, 142])
def test_a_graded_body_in_broad_rib_is_of_the_class_4n_plus_2(bust: int) -> None:
    before = checked_example("heron-scarf")
    new = resize(before, Wish.of(before.pattern, f"{bust} cm"), check_source)
    cast_on = check_source(new.source).walks[0].cast_on
    assert cast_on is not None and cast_on % 4 == 2
    assert abs(cast_on - bust * 2.4) <= 2


def mid_gauge(weight: YarnWeight) -> float:
    """Stitches to 4 inches in the middle of a category; the one figure where a side is open."""
    ends = [n for n in (weight.stitches_min, weight.stitches_max) if n is not None]
    return sum(ends) / len(ends)


def mid_needle(weight: YarnWeight) -> float:
    ends = [n for n in (weight.needle_min_mm, weight.needle_max_mm) if n is not None]
    sold = [needle.mm for needle in needles() if needle.mm >= min(ends)]
    return min(sold, key=lambda mm: abs(mm - sum(ends) / len(ends)))


def one_throw(weight: YarnWeight) -> str:
    """The throw in one size, its yarn and needle those of the weight."""
    before = checked_example("skerry-throw")
    text = resize(before, Wish.of(before.pattern, only="throw"), check_source).source.text
    text = text.replace("weight 4", f"weight {weight.category}")
    metres = [m for m in (weight.metres_min, weight.metres_max) if m is not None]
    text = text.replace("100 g 200 m", f"100 g {sum(metres) / len(metres):g} m")
    return text.replace("4.5 mm", f"{mid_needle(weight):g} mm")


@pytest.mark.parametrize("weight", yarn_weights(), ids=lambda w: w.name)
def test_every_usual_blanket_at_every_yarn_weight(weight: YarnWeight) -> None:
    stitches = mid_gauge(weight)
    rows = stitches * 1.8  # the throw's own fabric: 36 rows to 20 stitches
    before = check_source(Source.of("throw.loop", one_throw(weight)))
    assert not before.has_errors
    for blanket in blanket_sizes():
        width, length = _middle(blanket)
        wish = Wish.of(
            before.pattern,
            f"{width:.2f} mm",
            f"{length:.2f} mm",
            gauge=[f"{stitches:g} stitches {rows:g} rows = 4 in"],
        )
        after = check_source(resize(before, wish, check_source).source)
        # The throw's own needle and balls are not those of a bed's blanket; all else must hold.
        serious = [
            p
            for p in after.problems
            if p.severity != "advice" and p.rule not in ("needle-short", "yarn-short")
        ]
        assert serious == [], (blanket.name, serious)
        walk = after.walks[0]
        one = 101.6 / stitches
        found = piece_width(after.pattern, walk)
        assert found == pytest.approx((walk.cast_on or 0) * one)
        assert abs(found - width) <= one + 0.01  # half a repeat of 2 stitches
        assert walk.cast_on is not None and walk.cast_on % 2 == 0
        high = walk.height
        assert high is not None
        assert abs(high - length) <= 2 * 101.6 / rows + 0.01  # half a motif of 4 rows


def _middle(blanket: BlanketSize) -> tuple[float, float]:
    return (
        (blanket.width_min + blanket.width_max) / 2,
        (blanket.length_min + blanket.length_max) / 2,
    )


@cache
def registry() -> pint.UnitRegistry:
    return pint.UnitRegistry()


@given(mm=st.floats(10, 5000))
def test_printed_lengths_against_pint(mm: float) -> None:
    length = registry().Quantity(mm, "mm")
    assert abs(parse_quantity(cm(mm)).at(0) - length.m_as("cm")) <= 0.25 + 1e-9
    assert abs(parse_quantity(inches(mm)).at(0) - length.m_as("inch")) <= 0.125 + 1e-9
    assert (parse_quantity(cm(mm)).at(0) * 2) % 1 == 0
    assert (parse_quantity(inches(mm)).at(0) * 4) % 1 == 0


def test_four_inches_against_ten_centimetres() -> None:
    ratio = registry().Quantity(4, "inch").m_as("cm") / 10
    assert ratio == pytest.approx(1.016)
    widths = {}
    for over in ("10 cm", "4 in"):
        text = f'pattern "G"\n  gauge 20 stitches 28 rows = {over}\n'
        text += "piece a flat\n  cast on 100\n  rows 4: knit\n  bind off\n"
        checked = check_source(Source.of("g.loop", text))
        widths[over] = piece_width(checked.pattern, checked.walks[0])
    assert widths["10 cm"] == 500.0
    assert widths["4 in"] == pytest.approx(500.0 * ratio)
