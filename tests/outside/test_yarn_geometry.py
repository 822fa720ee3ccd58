"""Loop lengths against the plain-knit geometry of Munden, as published and as worked out by hand.

Sources: D. L. Munden, J. Text. Inst. 50 (1959), T448–T471 (constants, from memory); an Indian
graduate examination in textiles of 2015, question 54 (kw 4.2, kc 5.5, l 0.5 cm: 92 loops to a
square centimetre); the table of gauges below is arithmetic on the constants, done apart.
"""

from __future__ import annotations

from collections.abc import Callable
from math import sqrt

import pytest

from loopwright.check.checked import Checked
from loopwright.facts.loops import loop_constants, rule_of_thumb
from loopwright.model.pattern import Gauge
from loopwright.notation.quantity import Quantity
from loopwright.notation.source import Span
from loopwright.yarn.loop import munden_loop
from loopwright.yarn.report import yarn_report

SPAN = Span(0, 1)

# stitches and rows in 10 cm; loop in mm at ks 19.0, 21.6, 23.1; metres to a square metre at 21.6.
TABLE = {
    "lace": (32, 44, 11.62, 12.39, 12.81, 1744),
    "super fine": (28, 36, 13.73, 14.64, 15.14, 1476),
    "fine": (25, 34, 14.95, 15.94, 16.49, 1355),
    "light": (22, 30, 16.97, 18.09, 18.71, 1194),
    "medium 20": (20, 28, 18.42, 19.64, 20.31, 1100),
    "medium 18": (18, 24, 20.97, 22.36, 23.12, 966),
    "bulky": (14, 19, 26.73, 28.50, 29.47, 758),
    "super bulky": (9, 12, 41.94, 44.72, 46.25, 483),
    "jumbo": (6, 8, 62.92, 67.08, 69.37, 322),
}


def gauge(stitches: float, rows: float, centimetres: float = 10.0) -> Gauge:
    over = Quantity((centimetres,), "cm", SPAN)
    return Gauge(stitches, rows, over, None, None, None, None, SPAN)


def test_the_examination_value() -> None:
    kw, kc, length = 4.2, 5.5, 0.5
    density = (kw / length) * (kc / length)
    assert density == pytest.approx(92.4)
    assert munden_loop(gauge(kw / length, kc / length, 1.0), kw * kc) * 100 == pytest.approx(length)
    full = loop_constants("plain knit", "fully relaxed")
    assert full.ks / length**2 == pytest.approx(92.4)


def test_eighteen_by_twenty_four_is_the_root_of_five() -> None:
    for ks, centimetres in ((19.0, 2.097), (21.6, sqrt(5)), (23.1, 2.312)):
        assert munden_loop(gauge(18, 24), ks) * 100 == pytest.approx(centimetres, abs=5e-4)
    for ks, metres in ((19.0, 906), (21.6, 966), (23.1, 999)):
        assert 180 * 240 * munden_loop(gauge(18, 24), ks) == pytest.approx(metres, abs=0.6)
    assert 1000 * munden_loop(gauge(18, 24), 21.6) == pytest.approx(22.4, abs=0.05)


@pytest.mark.parametrize("name", TABLE)
def test_every_gauge_of_the_table(name: str) -> None:
    stitches, rows, dry, wet, full, square = TABLE[name]
    for ks, millimetres in ((19.0, dry), (21.6, wet), (23.1, full)):
        assert munden_loop(gauge(stitches, rows), ks) * 1000 == pytest.approx(millimetres, abs=6e-3)
    metres = munden_loop(gauge(stitches, rows), 21.6) * stitches * rows * 100
    assert metres == pytest.approx(square, abs=0.6)


CLOTH = """pattern "Cloth"
  gauge {gauge} = 10 cm in {fabric}
yarn wool: 100 g 200 m, weight 4
shade kelp of wool
strand A feeds kelp x{balls}
motif plain over n
  row 1: knit
  row 2: purl
piece cloth flat
  cast on {count}
  {rows}
  bind off
"""


def row_metres(checked: Checked, row: int) -> float:
    """What row `row` alone takes, as the difference of two running totals."""
    ledger = yarn_report(checked.pattern, checked.walks).sizes[0].ledger
    return ledger.through("a", 0, row) - ledger.through("a", 0, row - 1)


@pytest.mark.parametrize("name", TABLE)
def test_a_row_of_the_ledger_has_the_loops_of_the_table(
    name: str, check: Callable[[str], Checked]
) -> None:
    stitches, rows, _, wet, _, _ = TABLE[name]
    text = CLOTH.format(
        gauge=f"{stitches} stitches {rows} rows",
        fabric="stockinette",
        balls=9,
        count=100,
        rows="work plain x10",
    )
    assert row_metres(check(text), 7) * 1000 == pytest.approx(100 * wet, abs=0.6)
    # Source: common practice, a row takes three to four times its width; Munden's kw says 3.8 to
    # 4.2 and the washed state lies between.
    width = 100 / stitches * 100
    assert 3.8 <= row_metres(check(text), 7) * 1000 / width <= 4.2


def test_garter_takes_the_loop_of_plain_of_the_same_needle(check: Callable[[str], Checked]) -> None:
    """Derived: 18 x 24 plain and 18 x 36 garter (rows doubled against stitches) are one loop."""
    plain = CLOTH.format(
        gauge="18 stitches 24 rows", fabric="stockinette", balls=9, count=90, rows="work plain x10"
    )
    garter = CLOTH.format(
        gauge="18 stitches 36 rows", fabric="garter", balls=9, count=90, rows="rows 20: knit"
    ).replace("motif plain over n\n  row 1: knit\n  row 2: purl\n", "")
    assert row_metres(check(garter), 7) == pytest.approx(row_metres(check(plain), 7), rel=1e-3)


def test_a_slipped_stitch_takes_a_float_one_stitch_wide() -> None:
    low, high = rule_of_thumb("slipped stitch yarn").low, rule_of_thumb("slipped stitch yarn").high
    # Derived: 1 / kw, in each of the published states.
    for state in ("dry relaxed", "wet relaxed", "fully relaxed"):
        assert low - 0.005 <= 1 / loop_constants("plain knit", state).kw <= high + 0.005
