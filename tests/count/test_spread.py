"""Changes spread evenly: exact sums, gaps that differ by at most one step, and the walk of it."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from loopwright.check.checked import Checked
from loopwright.compile import check_source
from loopwright.count.spread import spread_over_rows, spread_over_stitches
from loopwright.notation.source import Source

CheckText = Callable[[str], Checked]


@given(n=st.integers(0, 400), m=st.integers(0, 5000), step=st.integers(1, 12))
def test_over_rows_the_sum_is_exact(n: int, m: int, step: int) -> None:
    spread = spread_over_rows(n, m, step)
    if n * step > m:
        assert spread is None
        return
    assert spread is not None
    gaps = [every for every, times in spread.blocks for _ in range(times)]
    assert len(gaps) == n == spread.changes
    assert sum(gaps) + spread.tail == m == spread.rows
    assert all(gap >= step and gap % step == 0 for gap in gaps)
    assert not gaps or max(gaps) - min(gaps) <= step
    assert gaps == sorted(gaps, reverse=True)
    # Nothing is left over that would have made room for one more step of one distance.
    assert n == 0 or spread.tail < step


@given(n=st.integers(0, 400), plain=st.integers(0, 5000))
def test_over_stitches_the_sum_is_exact(n: int, plain: int) -> None:
    spread = spread_over_stitches(n, plain)
    inner = [gap for gap, times in spread.blocks for _ in range(times)]
    assert spread.plain == plain
    assert len(inner) == max(n - 1, 0)
    # The stitches before the first and after the last change are one gap, parted in the middle.
    ends = spread.first + spread.last
    assert spread.first - spread.last in (0, 1) or n == 0
    gaps = [*inner, ends] if n else []
    assert not gaps or max(gaps) - min(gaps) <= 1
    assert ends == max(gaps, default=plain)


def test_the_printed_example_of_the_trade() -> None:
    spread = spread_over_rows(13, 60, 2)
    assert spread is not None
    assert spread.blocks == ((6, 4), (4, 9))
    assert spread.tail == 0


SLEEVE = """pattern "Sleeve"
motif plain over n
  row 1: knit
  row 2: purl
motif narrow
  row 1: k1 ssk * k1 * k2tog k1 => -2
piece sleeve flat{starts}
  cast on 60
  spread narrow {times} in plain over {rows} rows
  bind off
"""


@given(n=st.integers(1, 26), rows=st.integers(1, 90), ws=st.booleans())
def test_the_walk_works_what_the_arithmetic_says(n: int, rows: int, ws: bool) -> None:
    text = SLEEVE.format(times=f"x{n}", rows=rows, starts=" starts ws" if ws else "")
    checked = check_source(Source.of("s.loop", text))
    if rows < 2 * n:
        assert {p.rule for p in checked.problems} == {"spread-tight"}
        return
    assert checked.problems == ()
    listed = list(checked.walks[0].listed())
    assert len(listed) == rows
    changes = [row for row in listed if row.end != row.start]
    assert len(changes) == n
    assert listed[-1].end == 60 - 2 * n
    assert all(row.side == "rs" for row in changes)
    # Between them the fabric goes on: knit on the right side, purled on the wrong one.
    assert all(row.line == (3 if row.side == "rs" else 4) for row in listed if row not in changes)
    gaps = [b.row - a.row for a, b in pairwise(changes)]
    assert not gaps or max(gaps) - min(gaps) <= 2


def test_until_a_count_is_the_same_as_so_many_times(check: CheckText) -> None:
    by_count = check(SLEEVE.format(times="until 34 stitches", rows=60, starts=""))
    by_times = check(SLEEVE.format(times="x13", rows=60, starts=""))
    assert by_count.problems == by_times.problems == ()
    rows = [[(r.start, r.end) for r in c.walks[0].listed()] for c in (by_count, by_times)]
    assert rows[0] == rows[1]


def test_a_count_that_is_never_reached_is_said(check: CheckText) -> None:
    checked = check(SLEEVE.format(times="until 35 stitches", rows=60, starts=""))
    assert [p.rule for p in checked.problems] == ["count-unreached"]


def test_to_a_length_it_ends_on_the_side_it_began(check: CheckText) -> None:
    text = SLEEVE.format(times="x5", rows=60, starts="").replace("over 60 rows", "to 20 cm")
    text = text.replace('"Sleeve"\n', '"Sleeve"\n  gauge 20 stitches 27 rows = 10 cm\n')
    checked = check(text)
    assert checked.problems == ()
    assert checked.walks[0].rows == 54


@pytest.mark.parametrize(
    ("body", "after"),
    [
        ("spread k2tog x7", 53),
        ("spread m1 x12", 72),
        ("k2 spread kfb x5 k2", 65),
        ("spread sk2p x20", 20),
        ("p4 spread p2tog x3 p4", 57),
    ],
)
def test_over_a_row(check: CheckText, body: str, after: int) -> None:
    checked = check(
        f'pattern "R"\npiece r flat\n  cast on 60\n  row: {body} => {after}\n  bind off\n'
    )
    assert checked.problems == ()


def test_too_many_for_a_row_is_said(check: CheckText) -> None:
    checked = check(
        'pattern "R"\npiece r flat\n  cast on 60\n  row: spread k2tog x31\n  bind off\n'
    )
    assert [p.rule for p in checked.problems] == ["count-over"]


def test_a_thousand_million_changes_answer_at_once(check: CheckText) -> None:
    for times in ("x400000000", "x1", "x3"):
        text = SLEEVE.format(times=times, rows=1000000000, starts="")
        assert check(text).problems
