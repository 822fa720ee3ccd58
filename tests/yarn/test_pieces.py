"""Yarn of what is not plain rows: picked-up stitches, stitches cast on later, live ends, turns."""

from __future__ import annotations

import itertools
from collections.abc import Callable

import pytest

from loopwright.check.checked import Checked
from loopwright.yarn.ledger import Ledger, Lump
from loopwright.yarn.report import yarn_report

Check = Callable[[str], Checked]

HEAD = """pattern "Heel"
  gauge 20 stitches 28 rows = 10 cm in stockinette
yarn wool: 50 g 100 m
shade kelp of wool
strand A feeds kelp x9
piece heel flat
  cast on 40
"""
LOOP = (21.6 / (200 * 280)) ** 0.5  # metres, at the gauge above


def ledger_of(check: Check, lines: str) -> Ledger:
    checked = check(HEAD + lines)
    assert not checked.has_errors, [p.message for p in checked.problems]
    return yarn_report(checked.pattern, checked.walks).sizes[0].ledger


def lumps(ledger: Ledger) -> list[tuple[str, int]]:
    return [(p.kind, p.stitches) for p in ledger.parts if isinstance(p, Lump) and p.kind != "end"]


def test_a_short_row_eats_only_what_it_works(check: Check) -> None:
    ledger = ledger_of(check, "  row: k30 turn\n  row: p20 turn\n  rows 2: knit\n  bind off\n")
    rows = [ledger.through("a", 0, row) for row in range(5)]
    took = [(b - a) / LOOP for a, b in itertools.pairwise(rows)]
    assert took[:2] == pytest.approx([30, 20])


def test_picked_up_stitches_eat_a_loop_each(check: Check) -> None:
    ledger = ledger_of(check, "  rows 2: knit\n  pick up 12\n  rows 2: knit\n  bind off\n")
    assert lumps(ledger) == [("cast-on", 40), ("picking up", 12), ("bind-off", 52)]
    picked = next(p for p in ledger.parts if isinstance(p, Lump) and p.kind == "picking up")
    assert picked.metres == pytest.approx(12 * LOOP)


def test_a_piece_left_live_has_no_bind_off(check: Check) -> None:
    ledger = ledger_of(check, "  rows 2: knit\n  leave live\n")
    assert lumps(ledger) == [("cast-on", 40)]
