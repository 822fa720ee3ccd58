"""The table of a resize asks for the yarn of all sizes once, and not once for each size."""

from __future__ import annotations

from typing import Any

import pytest

from loopwright.compile import check_source
from loopwright.fit import costs
from loopwright.fit.table import compare
from loopwright.notation.source import Source

SIX = """pattern "Six"
  sizes a, b, c, d, e, f
  gauge 20 stitches 28 rows = 10 cm

yarn wool "Wool": 50 g 110 m
shade grey "Grey" of wool, colour #808080
strand A feeds grey x40

piece scarf flat
  cast on 40/44/48/52/56/60 in A
  rows 50: knit
  bind off
"""


def test_the_yarn_is_reckoned_once_for_each_state(monkeypatch: pytest.MonkeyPatch) -> None:
    real, asked = costs.yarn_report, []

    def counted(*args: Any) -> Any:
        asked.append(args)
        return real(*args)

    monkeypatch.setattr(costs, "yarn_report", counted)
    before = check_source(Source.of("six.loop", SIX))
    after = check_source(Source.of("six.loop", SIX.replace("rows 50", "rows 60")))
    assert not after.has_errors, after.problems
    groups = compare(before, after)
    yarn = [f for group in groups for f in group.figures if f.name == "Grey"]
    assert len(yarn) == 6 and all(f.before < f.after for f in yarn)  # type: ignore[operator]
    assert len(asked) == 2
