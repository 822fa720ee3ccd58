"""Stitches followed from row to row in a narrow layout, against the whole width and height."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from loopwright.compile import check_source
from loopwright.notation.source import Source

UNIT = st.lists(st.sampled_from(["k1", "p1", "sl1", "sl1 wyif"]), min_size=4, max_size=4)
MOTIF = st.lists(UNIT, min_size=1, max_size=3).map(lambda rows: [*rows, *rows[: len(rows) % 2]])


def longest_run(rows: list[list[str]], count: int, reps: int) -> int:
    """The most rows on end in which any stitch is slipped, every row knit stitch by stitch."""
    ages = [0] * count
    longest = 0
    number = 0
    for _ in range(reps):
        for row in rows:
            worked = row * (count // len(row))
            if number % 2:
                worked = worked[::-1]  # as seen from the right side
            ages = [
                age + 1 if w.startswith("sl") else 0 for age, w in zip(ages, worked, strict=True)
            ]
            longest = max(longest, *ages)
            number += 1
    return longest


@given(rows=MOTIF, n=st.integers(1, 9), reps=st.integers(1, 6), bound=st.integers(0, 7))
def test_the_longest_run_is_found(rows: list[list[str]], n: int, reps: int, bound: int) -> None:
    lines = "".join(f"  row {i}: * {' '.join(row)} *\n" for i, row in enumerate(rows, 1))
    text = (
        f'pattern "Slips"\n  bound slip {bound} rows\n  bound float 99 stitches\n'
        f"motif tuck over 4n\n{lines}piece cloth flat\n  cast on {4 * n}\n"
        f"  work tuck x{reps}\n  bind off\n"
    )
    checked = check_source(Source.of("test.loop", text))
    found = [p for p in checked.problems if p.rule == "slip-long"]
    assert bool(found) == (longest_run(rows, 4 * n, reps) > bound)


def test_a_billion_stitches_and_rows_are_answered_at_once() -> None:
    text = (
        'pattern "Slips"\nmotif tuck over 4n\n  row 1: * k3 sl1 *\n  row 2: * sl1 wyif p3 *\n'
        "  row 3: * k3 sl1 *\n  row 4: purl\n"
        "piece cloth flat\n  cast on 1000000000\n  work tuck x200000000\n  bind off\n"
    )
    checked = check_source(Source.of("test.loop", text))
    (problem,) = checked.problems
    assert problem.rule == "slip-long" and "3 rows on end" in problem.title


def test_wrong_side_rows_are_seen_from_the_right_side() -> None:
    def said(second: str) -> list[str]:
        text = (
            f'pattern "Slips"\n  bound slip 1 row\nmotif tuck over 4n\n  row 1: * k3 sl1 *\n'
            f"  row 2: {second}\n  row 3: knit\n  row 4: purl\n"
            "piece cloth flat\n  cast on 16\n  work tuck x2\n  bind off\n"
        )
        return [p.rule for p in check_source(Source.of("test.loop", text)).problems]

    # Worked back, the stitch slipped last comes first.
    assert said("* sl1 wyif p3 *") == ["slip-long"]
    assert said("* p3 sl1 wyif *") == []


def test_a_stitch_is_followed_past_increases() -> None:
    text = (
        'pattern "Grown"\npiece cloth flat\n  cast on 9\n'
        "  row: k1 yo k3 sl1 k3 yo k1\n  row: k1 yo p4 sl1 wyif p4 yo k1\n"
        "  row: k1 yo k5 sl1 k5 yo k1\n  row: purl\n  bind off\n"
    )
    problems = check_source(Source.of("test.loop", text)).problems
    assert [p.rule for p in problems] == ["slip-long"]
    aside = text.replace("k5 sl1 k5", "k4 sl1 k6")
    assert check_source(Source.of("test.loop", aside)).problems == ()
