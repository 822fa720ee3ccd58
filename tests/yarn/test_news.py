"""What the rules are told: remedies that mend, shades held at once, pools."""

from __future__ import annotations

import re
from collections.abc import Callable

import pytest

from loopwright.check.checked import Checked
from loopwright.yarn.report import yarn_report
from loopwright.yarn.stripes import pooling, stripe_falls

Check = Callable[[str], Checked]

SHORT = """pattern "Short"
  gauge 20 stitches 28 rows = 10 cm in stockinette
yarn wool: 50 g 100 m
shade kelp of wool
strand A feeds kelp x{balls}
motif plain over 2n
  row 1: * k1 sl1 *
  row 2: purl
piece scarf flat
  cast on {count}
  work plain x{reps}
  bind off
"""


def shortages(check: Check, **more: int) -> list[str]:
    """What is said of the middle figure: more than advice."""
    values = {"balls": 3, "count": 60, "reps": 300} | more
    return [p.rule for p in check(SHORT.format(**values)).problems if p.severity != "advice"]


def test_each_remedy_mends_and_no_smaller_one_does(check: Check) -> None:
    (problem,) = check(SHORT.format(balls=3, count=60, reps=220)).problems
    assert problem.rule == "yarn-short"
    found = re.search(
        r"(\d+) balls? more.* (\d+) rows fewer.* (\d+) stitches fewer \((\d+)", problem.help
    )
    assert found is not None
    balls, rows, stitches, left = map(int, found.groups())
    assert rows % 2 == 0 and stitches % 2 == 0 and left == 60 - stitches
    assert shortages(check, reps=220) == ["yarn-short"]
    assert shortages(check, balls=3 + balls, reps=220) == []
    assert shortages(check, balls=3 + balls - 1, reps=220) == ["yarn-short"]
    assert shortages(check, reps=220 - rows // 2) == []
    assert shortages(check, reps=220 - rows // 2 + 1) == ["yarn-short"]
    assert shortages(check, count=left, reps=220) == []
    assert shortages(check, count=left + 2, reps=220) == ["yarn-short"]


def test_a_way_out_that_leaves_another_pattern_is_not_named(check: Check) -> None:
    """Three balls last for some 165 repeats: of 220 a quarter is left out, of 300 nearly half."""
    (near,) = check(SHORT.format(balls=3, count=60, reps=220)).problems
    assert "rows fewer" in near.help and "stitches fewer" in near.help
    (far,) = check(SHORT.format(balls=3, count=60, reps=300)).problems
    assert re.fullmatch(r"feed it \d balls more of kelp\.", far.help)


def test_the_place_and_the_metres_are_those_of_the_ledger(check: Check) -> None:
    checked = check(SHORT.format(balls=3, count=60, reps=300))
    strand = yarn_report(checked.pattern, checked.walks).sizes[0].strand("a")
    assert strand is not None and strand.eaten.short is not None
    short = strand.eaten.short
    assert strand.metres - 300 == pytest.approx(short.metres)
    assert short.spot is not None
    assert f"row {short.spot.row:,} of scarf" in checked.problems[0].message
    assert f"{short.metres:,.0f} m are missing" in checked.problems[0].message


def test_the_upper_end_of_the_range_is_advice(check: Check) -> None:
    # 3 balls and 165 repeats: enough in the middle, not 15 % above it.
    at = next(n for n in range(300, 0, -1) if not shortages(check, reps=n))
    (problem,) = check(SHORT.format(balls=3, count=60, reps=at)).problems
    assert (problem.rule, problem.severity) == ("yarn-short", "advice")
    assert not check(SHORT.format(balls=3, count=60, reps=int(at / 1.2))).problems


STRIPED = """pattern "Tide"
  gauge 20 stitches 40 rows = 10 cm in garter
yarn wool: 100 g 400 m
shade tide of wool, stripes #2f5d62 {one} m, #c9a66b 5 m
strand A feeds tide x9
piece scarf flat
  cast on 60
  rows 400: knit
  bind off
"""


def test_the_height_of_a_stripe_in_rows(check: Check) -> None:
    checked = check(STRIPED.format(one=20))
    size = yarn_report(checked.pattern, checked.walks).sizes[0]
    (fall,) = stripe_falls(checked.pattern, size)
    row = size.ledger.through("a", 0, 11) - size.ledger.through("a", 0, 10)
    assert (fall.repeat, fall.stitches, fall.pools) == (25, 60, None)
    assert fall.rows == pytest.approx(25 / row)
    assert sum(fall.heights) == pytest.approx(fall.rows)


@pytest.mark.parametrize(
    ("rows", "in_round", "expected"),
    [(2.0, False, (1, 2)), (1.0, False, (2, 2)), (0.5, True, (2, 1)), (1.0, True, (1, 1)),
     (2.03, False, (1, 2)), (1.4, False, None), (5.2, False, None), (2.0, True, None)],
)  # fmt: skip
def test_when_colours_pool(rows: float, in_round: bool, expected: tuple[int, int] | None) -> None:
    """Held against colours laid out: in step, each colour lies over itself after the way back."""
    assert pooling(rows, in_round) == expected

    # A row of 400 places; the strand's length at a place, in repeats, forth and back by turns.
    def phase(row: int, x: float) -> float:
        back = row % 2 == 1 and not in_round
        return ((row + (1 - x if back else x)) / rows) % 1.0

    way = 1 if in_round else 2
    drift = [abs((phase(r + way, x) - phase(r, x) + 0.5) % 1.0 - 0.5)
             for r in range(6) for x in (0.1, 0.4, 0.9)]  # fmt: skip
    assert (max(drift) <= 0.041) == (expected is not None)


def test_shades_held_at_once_are_told_by_their_rows(check: Check) -> None:
    text = """pattern "Two"
  gauge 20 stitches 36 rows = 10 cm in stripe
yarn wool: 50 g 100 m
shade kelp of wool
shade foam of wool
strand A feeds half kelp, foam
strand B feeds foam x2
motif stripe over n
  rows 1, 2 in A: knit
  rows 3, 4 in B: knit
piece scarf flat
  cast on 30 in A
  work stripe x40
  bind off in A
"""
    checked = check(text)
    (problem,) = checked.problems
    join = yarn_report(checked.pattern, checked.walks).sizes[0].strands[0].eaten.joins[0]
    assert f"rows {join.spot.row} to 160" in problem.message
    # In a second piece the strands are not in the hands at once.
    apart = text.replace("feeds half kelp, foam", "feeds kelp x2").replace(
        "foam x2", "foam, kelp x2"
    )
    assert not check(apart).problems
