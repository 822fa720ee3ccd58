"""Counts that grow evenly: ``fixed + unit * n``, and sets of counts given by congruences."""

from __future__ import annotations

from math import gcd
from typing import TYPE_CHECKING

from loopwright.record import dataclass

if TYPE_CHECKING:
    from fractions import Fraction


@dataclass(frozen=True, slots=True)
class Affine:
    """``fixed + unit * n`` for a whole number n; a plain count has `unit` 0.

    n is the n of a motif's form, or the number of repeats done before this one.
    """

    fixed: int
    unit: int = 0

    def __add__(self, other: Affine) -> Affine:
        return Affine(self.fixed + other.fixed, self.unit + other.unit)

    def __sub__(self, other: Affine) -> Affine:
        return Affine(self.fixed - other.fixed, self.unit - other.unit)

    def plus(self, number: int) -> Affine:
        return Affine(self.fixed + number, self.unit)

    def at(self, n: int) -> int:
        return self.fixed + self.unit * n

    def total(self, times: int) -> int:
        """The sum over n = 0 … times - 1, without a loop."""
        return self.fixed * times + self.unit * (times * (times - 1) // 2)


@dataclass(frozen=True, slots=True)
class Range:
    """The n that count: `low` up to `high` (None: without end)."""

    low: int
    high: int | None


def first_not_zero(value: Affine, modulus: int, over: Range) -> int | None:
    """The smallest n of a range at which `value` is no multiple of `modulus` (0: is not 0)."""
    low, high = over.low, over.high

    def fails(n: int) -> bool:
        number = value.at(n)
        return number != 0 if modulus == 0 else number % modulus != 0

    if high is not None and high < low:
        return None
    if fails(low):
        return low
    # It holds at `low`; it then holds at the next n exactly if the unit keeps it, and for all.
    if (high is None or high > low) and fails(low + 1):
        return low + 1
    return None


def first_negative(value: Affine, over: Range) -> int | None:
    """The smallest n of a range at which `value` is below 0."""
    low, high = over.low, over.high
    if high is not None and high < low:
        return None
    if value.at(low) < 0:
        return low
    if value.unit >= 0:
        return None
    n = value.fixed // -value.unit + 1
    return n if high is None or n <= high else None


@dataclass(frozen=True, slots=True)
class CountSet:
    """Counts that are `residue` modulo `modulus`, from `low` up to `high` (None: without end).

    `modulus` 0 means the one count `residue`; an empty set has `low` above `high`.
    """

    residue: int
    modulus: int
    low: int
    high: int | None = None

    @staticmethod
    def every(low: int = 0) -> CountSet:
        return CountSet(0, 1, low)

    @staticmethod
    def none() -> CountSet:
        return CountSet(0, 1, 1, 0)

    @property
    def is_empty(self) -> bool:
        return self.above(self.low) is None

    def __contains__(self, count: int) -> bool:
        if count < self.low or (self.high is not None and count > self.high):
            return False
        if self.modulus == 0:
            return count == self.residue
        return count % self.modulus == self.residue % self.modulus

    def above(self, count: int) -> int | None:
        """The smallest member that is at least `count`."""
        count = max(count, self.low)
        if self.modulus == 0:
            found = self.residue if self.residue >= count else None
        else:
            found = count + (self.residue - count) % self.modulus
        if found is None or found < self.low or (self.high is not None and found > self.high):
            return None
        return found

    def below(self, count: int) -> int | None:
        """The largest member that is at most `count`."""
        if self.high is not None:
            count = min(count, self.high)
        if self.modulus == 0:
            found = self.residue if self.residue <= count else None
        else:
            found = count - (count - self.residue) % self.modulus
        return found if found is not None and found in self else None

    def nearest(self, wanted: float | Fraction) -> int | None:
        """The member nearest to a number; of two equally near ones the larger."""
        parts, whole = wanted.as_integer_ratio()
        floor = parts // whole
        low, high = self.below(floor), self.above(floor + (1 if parts % whole else 0))
        if low is None or high is None:
            return low if high is None else high
        return low if parts - low * whole < high * whole - parts else high

    def congruent(self, factor: Fraction, offset: Fraction, modulus: int) -> CountSet:
        """The members x for which ``factor * x + offset`` is a multiple of `modulus`.

        Solved exactly: the fractions are cleared, the linear congruence is reduced by its
        greatest common divisor, and the result is merged with this set by the Chinese remainder
        theorem. A `modulus` of 0 asks for exactly 0.
        """
        scale = (
            factor.denominator * offset.denominator // gcd(factor.denominator, offset.denominator)
        )
        a = int(factor * scale)
        b = int(offset * scale)
        m = modulus * scale
        if m == 0:
            if a == 0:
                return self if b == 0 else CountSet.none()
            if b % a:
                return CountSet.none()
            return self._only(-b // a)
        common = gcd(a, m)
        if b % common:
            return CountSet.none()
        a, b, m = a // common, b // common, m // common
        residue = (-b * pow(a, -1, m)) % m if m > 1 else 0
        return self._merge(residue, m)

    def meet(self, other: CountSet) -> CountSet:
        """The counts that lie in both sets: what pieces that share their stitches all take."""
        highs = [high for high in (self.high, other.high) if high is not None]
        both = CountSet(
            self.residue, self.modulus, max(self.low, other.low), min(highs) if highs else None
        )
        if other.modulus == 0:
            return both._only(other.residue)
        return both._merge(other.residue, other.modulus)

    def _only(self, count: int) -> CountSet:
        return CountSet(count, 0, self.low, self.high) if count in self else CountSet.none()

    def _merge(self, residue: int, modulus: int) -> CountSet:
        if self.modulus == 0:
            return self if (self.residue - residue) % modulus == 0 else CountSet.none()
        common = gcd(self.modulus, modulus)
        if (residue - self.residue) % common:
            return CountSet.none()
        step = modulus // common
        times = (residue - self.residue) // common
        times = times * pow(self.modulus // common, -1, step) % step if step > 1 else 0
        together = self.modulus * step
        return CountSet(
            (self.residue + self.modulus * times) % together, together, self.low, self.high
        )

    def at_least(self, factor: Fraction, offset: Fraction) -> CountSet:
        """The members x for which ``factor * x + offset`` is not below 0."""
        if factor == 0:
            return self if offset >= 0 else CountSet.none()
        edge = -offset / factor
        if factor > 0:
            low = max(self.low, -((-edge.numerator) // edge.denominator))
            return CountSet(self.residue, self.modulus, low, self.high)
        top = edge.numerator // edge.denominator
        high = top if self.high is None else min(self.high, top)
        return CountSet(self.residue, self.modulus, self.low, high)
