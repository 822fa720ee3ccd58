"""Row numbers that are free, against a plain set of those that are taken."""

from __future__ import annotations

from collections.abc import Callable

from hypothesis import given
from hypothesis import strategies as st

from loopwright.compile import Checked
from loopwright.model.free import Free

SPANS = st.lists(st.tuples(st.integers(1, 40), st.integers(0, 12)), max_size=30)


@given(SPANS)
def test_the_next_free_number_is_the_one_that_a_set_finds(spans: list[tuple[int, int]]) -> None:
    free, taken = Free(), set[int]()

    def above(number: int) -> int:
        return next(n for n in range(number, 200) if n not in taken)

    for low, length in spans:
        number = free.at_or_above(low)
        assert number == above(low)
        while number <= low + length:
            taken.add(number)
            after = free.take(number)
            assert after == above(number + 1)
            number = after


def test_a_taken_span_is_passed_in_one_step() -> None:
    free = Free()
    number = free.at_or_above(1)
    while number <= 10_000:
        number = free.take(number)
    assert free.at_or_above(1) == 10_001
    assert free._next[1] == 10_001


def test_a_span_that_clashes_says_so_at_its_first_number(check: Callable[..., Checked]) -> None:
    text = 'pattern "C"\nmotif m\n  row 3: k4\n  row 6: k4\n  rows 1-8: k4\n  rows 2, 2: k4\n'
    twice = [p for p in check(text).problems if p.rule == "row-twice"]
    assert [p.span.start for p in twice] == [text.index("rows 1-8"), text.index("rows 2, 2")]
    assert "row 3" in f"{twice[0].title} {twice[0].message}".lower()
