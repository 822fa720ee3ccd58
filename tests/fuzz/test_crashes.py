"""What the fuzzers found, each by name with its small source: mended, and held so."""

from __future__ import annotations

import sys
from collections.abc import Callable
from pathlib import Path

import pytest

from loopwright.compile import Checked

sys.path.insert(0, str(Path(__file__).parent))
import fuzz_properties as properties

Check = Callable[..., Checked]


def rules(found: Checked) -> list[str]:
    return sorted(p.rule for p in found.problems)


@pytest.mark.parametrize(
    "gauge", ["0 stitches 28 rows = 10 cm", "20 stitches 28 rows = 0 cm",
              "20 stitches 0 rows = 10 cm", "20 stitches 28 rows = 0/10 cm"],
)  # fmt: skip
def test_a_gauge_of_nothing(check: Check, gauge: str) -> None:
    text = f"""pattern "Nothing"
  sizes lap, bed
  width 20 cm
  length 20 cm
  gauge {gauge}
motif m over n
  row 1: * k1 *
  row 2: * p1 *
piece p flat
  cast on for width
  work m to length
  bind off
"""
    properties.everything(text)
    # Said once, where it stands, and not again as a gauge that is missing.
    assert rules(check(text)) == ["line-unclear"]


def test_a_measure_without_a_unit_is_not_also_missing(check: Check) -> None:
    text = """pattern "Bare"
  width 20
  length 20
  gauge 20 stitches 28 rows = 10 cm
motif m over n
  row 1: * k1 *
  row 2: * p1 *
piece p flat
  cast on for width
  work m to length
  bind off
"""
    properties.everything(text)
    assert set(rules(check(text))) == {"unit-missing"}


def test_a_misfit_before_a_row_that_takes_held_stitches(check: Check) -> None:
    text = 'pattern "T"\npiece p flat\n  cast on 12\n  row: p10\n  row: take q * k1 *\n  bind off\n'
    properties.everything(text)
    assert rules(check(text)) == ["count-short", "holder-empty"]


def test_a_motif_that_takes_held_stitches_and_is_not_worked(check: Check) -> None:
    text = 'pattern "T"\nmotif out\n  row 1: take q k1 => 1\n'
    properties.everything(text)
    assert rules(check(text)) == ["never-used"]


def test_a_line_that_ends_too_soon_at_the_end_of_the_text(check: Check) -> None:
    (problem,) = (p for p in check("row").problems if p.rule == "line-unclear")
    assert (problem.span.start, problem.span.end) == (3, 3)
    properties.everything("row")


def test_the_look_at_the_neighbours_minds_neither_case_nor_spaces(check: Check) -> None:
    text = """pattern "N"
motif paw over 7n + 4
  row 1: k2 * ssk * sk2p
  row 3: K2 * k2tog k3 ssk * k2
  row 8: (k1 p1)x1 * p1 *
  row 9: (K1  p1) x1 * p1 *
piece p flat
  cast on 39
  work paw x3
  bind off
"""
    properties.layout_holds(text)
