"""Even growth and sets of counts, against brute force and sympy."""

from __future__ import annotations

from fractions import Fraction

from hypothesis import assume, given
from hypothesis import strategies as st
from sympy.ntheory.modular import solve_congruence

from loopwright.count.affine import (
    Affine,
    CountSet,
    Range,
    first_negative,
    first_not_zero,
)

small = st.integers(-30, 30)
TOP = 400  # brute force looks at 0 … TOP


@st.composite
def count_sets(draw: st.DrawFn) -> CountSet:
    low = draw(st.integers(0, 20))
    high = draw(st.none() | st.integers(0, 60))
    modulus = draw(st.integers(0, 12))
    return CountSet(draw(st.integers(0, 30)), modulus, low, high)


def members(counts: CountSet) -> set[int]:
    """By the definition: residue, modulus, low and high."""
    high = TOP if counts.high is None else min(counts.high, TOP)
    return {
        x
        for x in range(counts.low, high + 1)
        if (x == counts.residue if counts.modulus == 0
            else (x - counts.residue) % counts.modulus == 0)
    }  # fmt: skip


@given(small, small, st.integers(0, 40))
def test_total_is_the_sum(fixed: int, unit: int, times: int) -> None:
    value = Affine(fixed, unit)
    assert value.total(times) == sum(value.at(n) for n in range(times))


@given(small, small, small, small, st.integers(0, 9))
def test_sums_are_even_growth_too(a: int, b: int, c: int, d: int, n: int) -> None:
    assert (Affine(a, b) + Affine(c, d)).at(n) == Affine(a, b).at(n) + Affine(c, d).at(n)
    assert Affine(a, b).plus(c).at(n) == Affine(a, b).at(n) + c


@given(small, small, st.integers(0, 12), st.integers(0, 9), st.none() | st.integers(0, 40))
def test_first_not_zero(fixed: int, unit: int, mod: int, low: int, high: int | None) -> None:
    value = Affine(fixed, unit)
    end = 60 if high is None else high
    bad = (n for n in range(low, end + 1) if (value.at(n) % mod if mod else value.at(n)))
    assert first_not_zero(value, mod, Range(low, high)) == next(bad, None)


@given(small, small, st.integers(0, 9), st.none() | st.integers(0, 40))
def test_first_negative(fixed: int, unit: int, low: int, high: int | None) -> None:
    value = Affine(fixed, unit)
    end = 60 if high is None else high
    bad = (n for n in range(low, end + 1) if value.at(n) < 0)
    assert first_negative(value, Range(low, high)) == next(bad, None)


@given(count_sets(), st.integers(-10, 120))
def test_membership_and_neighbours(counts: CountSet, count: int) -> None:
    inside = members(counts)
    assert (count in counts) == (count in inside)
    assert counts.is_empty == (not inside)
    assert counts.above(count) == min((x for x in inside if x >= count), default=None)
    assert counts.below(count) == max((x for x in inside if x <= count), default=None)


@given(count_sets(), st.fractions(-5, 120, max_denominator=4))
def test_nearest(counts: CountSet, wanted: Fraction) -> None:
    inside = members(counts)
    found = counts.nearest(float(wanted))
    if not inside:
        assert found is None
    else:
        best = min(inside, key=lambda x: (abs(x - wanted), -x))
        assert found == best


@given(
    count_sets(),
    st.fractions(-6, 6, max_denominator=6),
    st.fractions(-20, 20, max_denominator=6),
    st.integers(0, 12),
)
def test_congruent(counts: CountSet, factor: Fraction, offset: Fraction, modulus: int) -> None:
    found = counts.congruent(factor, offset, modulus)

    def holds(x: int) -> bool:
        value = factor * x + offset
        if modulus == 0:
            return value == 0
        return (value / modulus).denominator == 1

    right = {x for x in members(counts) if holds(x)}
    assert members(found) == right


@given(count_sets(), st.fractions(-6, 6, max_denominator=6),
       st.fractions(-20, 20, max_denominator=6))  # fmt: skip
def test_at_least(counts: CountSet, factor: Fraction, offset: Fraction) -> None:
    found = counts.at_least(factor, offset)
    assert members(found) == {x for x in members(counts) if factor * x + offset >= 0}


@given(st.lists(st.tuples(st.integers(0, 40), st.integers(1, 30)), min_size=1, max_size=4))
def test_together_as_sympy_says(asked: list[tuple[int, int]]) -> None:
    """Each pair asks x to leave a residue; together it is the Chinese remainder theorem."""
    found = CountSet.every()
    for residue, modulus in asked:
        found = found.congruent(Fraction(1), Fraction(-residue), modulus)
    answer = solve_congruence(*asked)
    if answer is None:
        assert found.is_empty
    else:
        residue, modulus = (int(part) for part in answer)
        assert (found.residue, found.modulus) == (residue, modulus)


@given(st.integers(10**15, 10**18), st.integers(2, 10**9))
def test_large_counts_are_exact(count: int, modulus: int) -> None:
    assume(count % modulus)
    found = CountSet.every().congruent(Fraction(1), Fraction(-count), modulus)
    assert count in found and count + 1 not in found
    assert found.above(count) == count and found.below(count - 1) == count - modulus
