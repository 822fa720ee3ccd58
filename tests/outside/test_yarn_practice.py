"""Metres against the rules of practice of the trade, each with how far the model lies from it.

Sources: common practice, as printed in pattern books and shop leaflets without a standard behind
them. Where a rule and the geometry disagree the test says by how much; no constant of the model
was chosen for it.
"""

from __future__ import annotations

from collections.abc import Callable
from math import pi

import pytest

from loopwright.check.checked import Checked
from loopwright.yarn.joins import eat
from loopwright.yarn.ledger import Ledger, Lump
from loopwright.yarn.report import yarn_report

YARD = 0.9144
Check = Callable[[str], Checked]

PLAIN = """pattern "Cloth"
  gauge {stitches} stitches {rows} rows = 10 cm in stockinette on {needle} mm
yarn wool: 100 g 200 m, weight 4
shade kelp of wool
strand A feeds kelp x40
motif plain over n
  row 1: knit
  row 2: purl
piece cloth flat
  cast on {count} by long-tail
  work plain x{reps}
  bind off
"""


def ledger_of(check: Check, text: str) -> Ledger:
    checked = check(text)
    assert not checked.has_errors
    return yarn_report(checked.pattern, checked.walks).sizes[0].ledger


def lump(ledger: Ledger, kind: str) -> Lump:
    return next(part for part in ledger.parts if isinstance(part, Lump) and part.kind == kind)


def rows_alone(ledger: Ledger) -> float:
    return sum(part.metres_of("a") for part in ledger.parts if not isinstance(part, Lump))


# stitches, rows in 10 cm; how far the rule lies above the washed geometry, as printed beside it.
@pytest.mark.parametrize(
    ("stitches", "rows", "above"),
    [(18, 24, 0.118), (20, 28, 0.091), (22, 30, 0.105), (14, 19, 0.109), (28, 36, 0.138)],
)
def test_yards_are_length_times_width_times_gauge_over_six(
    check: Check, stitches: int, rows: int, above: float
) -> None:
    count, reps = stitches * 5, rows * 5  # 50 cm by 100 cm
    ledger = ledger_of(
        check, PLAIN.format(stitches=stitches, rows=rows, needle=4.5, count=count, reps=reps)
    )
    width, length = 50 / 2.54, 100 / 2.54
    rule = length * width * (stitches / 10 * 2.54) / 6 * YARD
    model = rows_alone(ledger)
    assert rule / model - 1 == pytest.approx(above, abs=0.002)
    assert abs(rule / model - 1) < 0.15
    # With its edges and ends, as a maker buys it, the model comes nearer.
    assert abs(rule / ledger.total("a") - 1) < 0.15


@pytest.mark.parametrize(
    ("needle", "stitches", "rows", "above"),
    [(5.0, 18, 24, 0.054), (4.5, 20, 28, 0.080), (4.0, 22, 30, 0.042)],
)
def test_a_stitch_is_one_and_a_half_pi_needles(
    check: Check, needle: float, stitches: int, rows: int, above: float
) -> None:
    ledger = ledger_of(
        check, PLAIN.format(stitches=stitches, rows=rows, needle=needle, count=100, reps=10)
    )
    rule = 1.5 * pi * needle / 1000
    model = rows_alone(ledger) / 2000
    assert rule / model - 1 == pytest.approx(above, abs=0.002)
    assert abs(rule / model - 1) < 0.15


def test_a_baby_blanket_of_a_yard_square_takes_about_a_thousand_yards(check: Check) -> None:
    # 36 inches, 18 x 24 in 4 inches; the rule of six says 972 yards, the geometry alone 883.
    ledger = ledger_of(check, PLAIN.format(stitches=18, rows=24, needle=5, count=165, reps=110))
    yards = ledger.total("a") / YARD
    assert rows_alone(ledger) / YARD == pytest.approx(883, rel=0.01)
    assert abs(yards / 1000 - 1) < 0.15
    assert abs(yards / 972 - 1) < 0.15


def test_a_bind_off_takes_five_to_six_widths(check: Check) -> None:
    for stitches, rows in ((18, 24), (20, 28), (22, 30)):
        ledger = ledger_of(
            check, PLAIN.format(stitches=stitches, rows=rows, needle=4.5, count=100, reps=10)
        )
        width = 100 / stitches / 10
        widths = lump(ledger, "bind-off").metres / width
        # "Generous" practice says 6 widths and 6 inches, a tight hand measured 4.6.
        assert 5.0 <= widths + 0.0 <= 6.2
        assert widths == pytest.approx(1.5 * rows_alone(ledger) / 20 / width)


def test_a_row_takes_three_to_four_widths_and_a_little_more(check: Check) -> None:
    for stitches, rows in ((18, 24), (20, 28), (22, 30)):
        ledger = ledger_of(
            check, PLAIN.format(stitches=stitches, rows=rows, needle=4.5, count=100, reps=10)
        )
        widths = rows_alone(ledger) / 20 / (100 / stitches / 10)
        # The high rule is 4; the washed geometry lies at 3.9 to 4.05 (at most 1.2 % above).
        assert 3.0 <= widths <= 4.0 * 1.012


@pytest.mark.parametrize(("stitches", "rows"), [(16, 22), (18, 24), (20, 28)])
def test_a_tail_of_four_yards_for_240_stitches(check: Check, stitches: int, rows: int) -> None:
    """A long-tail cast-on of 240 stitches in medium yarn on 4.5 mm wants 4 yards at least."""
    ledger = ledger_of(
        check, PLAIN.format(stitches=stitches, rows=rows, needle=4.5, count=240, reps=10)
    )
    loop = rows_alone(ledger) / (20 * 240)
    tail = lump(ledger, "cast-on").metres - 240 * loop  # the ball's end makes a loop a stitch
    assert tail >= 4 * YARD
    # Another rule, stitches times needle millimetres over 8 in inches, says 3.75 yards: the model
    # lies 15 % above it at 20 stitches in 10 cm and 44 % at 16.
    needle_rule = 240 * 4.5 / 8 * 0.0254
    assert tail / needle_rule - 1 == pytest.approx(
        {16: 0.443, 18: 0.283, 20: 0.155}[stitches], abs=2e-3
    )


WOVEN = """pattern "Throw"
  gauge {stitches} stitches {rows} rows = 10 cm in stockinette on 4.5 mm
yarn generic: 100 g 200 m, weight 4
shade one of generic
shade other of generic
strand A feeds one
strand B feeds other
motif woven over 2n + 4
  edge 2 garter
  row 1 in B: k2 * sl1 wyif k1 * k2
  row 2 in B: k2 * p1 * k2
  row 3 in A: k2 * k1 sl1 wyif * k2
  row 4 in A: as row 2
piece throw flat
  cast on 240 in A by long-tail
  rows 2 in A: knit
  work woven x8
  bind off in B
"""


@pytest.mark.parametrize(("stitches", "rows", "share"), [(20, 28, 0.398), (16, 22, 0.502)])
def test_a_little_under_half_of_the_first_ball(
    check: Check, stitches: int, rows: int, share: float
) -> None:
    """Two rows and 8 times 4 of the slipped texture use a little under half of strand A's 100 g.

    For a generic ball of 100 g and 200 m, at both ends of the gauge range of its category: the
    model says 40 % at the tight end and a hair over half at the loose one.
    """
    ledger = ledger_of(check, WOVEN.format(stitches=stitches, rows=rows))
    used = ledger.through("a", 0, 34) / 200
    assert used == pytest.approx(share, abs=0.001)
    assert used < 0.5 * 1.05


def test_a_worked_in_join_wants_sixteen_inches(check: Check) -> None:
    text = WOVEN.replace("  gauge", "  join by worked-in\n  gauge", 1).format(stitches=16, rows=22)
    text = text.replace("feeds one\n", "feeds half one, half one\n").replace(
        "feeds other", "feeds other x2"
    )
    checked = check(text)
    report = yarn_report(checked.pattern, checked.walks)
    assert report.ends.tail == pytest.approx(16 * 0.0254)
    assert report.ends.worked_back == pytest.approx(6 * 0.0254)
    size = report.sizes[0]
    strand = size.strand("a")
    assert strand is not None and len(strand.eaten.joins) == 1
    # Both ends are paid for: the strand takes two tails more than its stitches.
    assert strand.metres - size.ledger.total("a") == pytest.approx(2 * 16 * 0.0254)
    again = eat(size.ledger, "a", strand.runs, report.ends)
    assert again.joins[0].metres == pytest.approx(100 - 16 * 0.0254)
