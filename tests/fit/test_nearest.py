"""The nearest count to a width, the next smaller and the next larger, each walked."""

from __future__ import annotations

import json
from collections.abc import Callable
from functools import lru_cache
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shared.editions import text_of

from loopwright.check.checked import Checked
from loopwright.cli import main
from loopwright.compile import check_source
from loopwright.fit.loose import shares
from loopwright.fit.nearest import Fit, fits, together
from loopwright.notation.source import Source

FOLDER = Path(__file__).parent.parent.parent / "examples"
CheckText = Callable[[str], Checked]


@lru_cache(maxsize=10)
def checked_of(text: str) -> Checked:
    return check_source(Source.of("f.loop", text))


def one_fit(text: str, mm: float) -> Fit:
    checked = checked_of(text)
    assert not checked.has_errors, checked.problems
    found, without = fits(checked, (mm,) * len(checked.pattern.sizes))
    assert not without
    return found[0]


TWO = """pattern "Two motifs"
  gauge 20 stitches 28 rows = 10 cm
motif one over {a}n + {b}
  row 1: k{b} * k{a} *
motif two over {c}n + {d}
  row 1: k{d} * p{c} *
piece cloth flat
  cast on {start}
  work one for 4 rows
  work two for 4 rows
  bind off
"""


@given(
    a=st.integers(2, 9),
    c=st.integers(2, 9),
    b=st.integers(1, 8),
    d=st.integers(1, 8),
    mm=st.integers(50, 3000),
)
def test_two_motifs_by_brute_force(a: int, b: int, c: int, d: int, mm: int) -> None:
    fitting = [
        x
        for x in range(1, 1500)
        if x >= max(a + b, c + d) and (x - b) % a == 0 and (x - d) % c == 0
    ]
    text = TWO.format(a=a, b=b, c=c, d=d, start=fitting[0] if fitting else 40)
    if not fitting:
        assert check_source(Source.of("f.loop", text)).has_errors
        return
    fit = one_fit(text, mm)
    wanted = mm / 5
    least = min(abs(x - wanted) for x in fitting)
    best = max(x for x in fitting if abs(x - wanted) == least)  # of two equally near the larger
    assert fit.nearest is not None and fit.nearest.cast_on == best
    assert fit.nearest.width == pytest.approx(best * 5)
    smaller = max((x for x in fitting if x < best), default=None)
    assert (fit.smaller.cast_on if fit.smaller else None) == smaller
    assert fit.larger is not None
    assert fit.larger.cast_on == min(x for x in fitting if x > best)
    step = fit.larger.cast_on - best
    assert fit.far == (abs(best - wanted) > max(step, 2) / 2)


def test_of_two_equally_near_counts_the_larger() -> None:
    text = TWO.format(a=4, b=2, c=4, d=2, start=42)
    assert one_fit(text, 44 * 5).nearest.cast_on == 46  # type: ignore[union-attr]
    assert one_fit(text, 44 * 5 - 0.1).nearest.cast_on == 42  # type: ignore[union-attr]


def test_a_width_in_inches_keeps_its_ties() -> None:
    text = TWO.format(a=4, b=2, c=4, d=2, start=42).replace("= 10 cm", "= 4 in")
    assert one_fit(text, 44 * 25.4 / 5).nearest.cast_on == 46  # type: ignore[union-attr]


@pytest.mark.parametrize("cm", range(30, 90))
def test_the_hat_at_any_width(cm: int) -> None:
    fit = one_fit(text_of("gull-hat"), cm * 10)
    assert fit.nearest is not None
    assert fit.nearest.cast_on % 8 == 0
    assert abs(fit.nearest.cast_on - cm * 2) <= 4


@given(cm=st.integers(30, 400))
def test_the_shawl_hangs_on_its_repeats(cm: int) -> None:
    fit = one_fit(text_of("drift-shawl"), cm * 10)
    assert fit.motif == "wing"
    assert fit.nearest is not None and fit.nearest.repeats is not None
    # 9 stitches, 4 more in each repeat of wing and of the 5 of the border.
    assert fit.nearest.widest == 9 + 4 * (fit.nearest.repeats + 5)
    assert abs(fit.nearest.widest - cm * 1.8) <= 2 or fit.nearest.repeats == 1


def test_a_count_out_of_reach_is_said(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> None:
    path = tmp_path / "f.loop"
    path.write_text(TWO.format(a=9, b=8, c=9, d=8, start=26), "utf-8")
    assert main(["fit", str(path), "--width", "2 cm"]) == 0
    out = capsys.readouterr().out
    assert "no count fits within half a repeat of 2 cm" in out
    assert "next smaller        –" in out


def test_the_command(capsys: pytest.CaptureFixture[str]) -> None:
    throw = str(FOLDER / "skerry-throw.loop")
    assert main(["fit", throw, "--width", "151cm", "--size", "bed"]) == 0
    out = capsys.readouterr().out
    assert "151 cm / 59½ in wide is 302 stitches (20 stitches = 10 cm in woven)" in out
    assert "cast-ons that every row takes: 2n + 4" in out
    assert main(["fit", throw, "--json"]) == 0
    found = json.loads(capsys.readouterr().out)
    assert [p["nearest"]["cast_on"] for p in found["pieces"]] == [180, 240, 300]
    assert [p["sizes"] for p in found["pieces"]] == [["lap"], ["throw"], ["bed"]]
    for wrong in (["--width", "150"], ["--width", "100 g"], ["--size", "huge"]):
        assert main(["fit", throw, *wrong]) == 2
    assert main(["fit", str(FOLDER / "drift-shawl.loop")]) == 1
    assert "no width is stated" in capsys.readouterr().err


def test_pieces_that_join_share_a_count(check: CheckText) -> None:
    piece = "piece {0} flat\n  cast on 44\n  work {0} for 4 rows\n  bind off\n"
    text = (
        'pattern "Joined"\n  gauge 20 stitches 28 rows = 10 cm\n'
        "motif back over 6n + 2\n  row 1: k2 * k6 *\nmotif front over 4n\n  row 1: * k4 *\n"
        + piece.format("back")
        + piece.format("front")
    )
    found = together(check(text), 0, 300.0)
    assert found is not None
    assert found.form == "12n − 4"  # for n = 1, 2, 3 … as every form
    assert (found.smaller, found.nearest, found.larger) == (44, 56, 68)


@given(
    parts=st.lists(st.tuples(st.integers(1, 6), st.floats(1, 120)), min_size=1, max_size=5),
    shift=st.integers(-3, 3),
)
def test_shares_come_out_exactly(parts: list[tuple[int, float]], shift: int) -> None:
    left = sum(often * max(round(target), 1) for often, target in parts) + shift * parts[0][0]
    found = shares(parts, left)
    if found is None:
        return
    assert sum(often * value for (often, _), value in zip(parts, found, strict=True)) == left
    assert all(value >= 1 for value in found)
    if shift == 0:
        assert all(abs(v - t) <= 4.5 or v == 1 for v, (_, t) in zip(found, parts, strict=True))
