"""Resize: the nearest count that fits, the text kept, and the result checked."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from loopwright.check.checked import Checked
from loopwright.cli import main
from loopwright.compile import check_source
from loopwright.fit.resize import CannotResize, Wish, resize
from loopwright.notation.source import Source

FOLDER = Path(__file__).parent.parent.parent / "examples"
THROW = FOLDER / "skerry-throw.loop"


def checked(text: str) -> Checked:
    return check_source(Source.of("test.loop", text))


def resized(text: str, width: str | None = None, length: str | None = None,
            size: str | None = None) -> str:  # fmt: skip
    before = checked(text)
    assert not before.has_errors, before.problems
    wish = Wish.of(before.pattern, width, length, size)
    return resize(before, wish, check_source).source.text


def rib(unit: int, rest: int, stitches: int, gauge: int = 20, claim: str = "") -> str:
    return (
        f'pattern "Rib"   -- kept\n  width {stitches * 10 / gauge:g} cm\n'
        f"  gauge {gauge} stitches 28 rows = 10 cm\n\n"
        f"motif rib over {unit}n + {rest}\n  row 1: k{rest} * p1 k{unit - 1} *\n  row 2: purl\n"
        f"piece scarf flat\n  cast on {stitches}  -- the count\n  row: knit{claim}\n  row: knit\n"
        "  work rib x8\n  bind off\n"
    )


@given(
    unit=st.integers(2, 12), rest=st.integers(1, 9), n=st.integers(3, 30), cm=st.integers(15, 300)
)
def test_the_nearest_count_by_brute_force(unit: int, rest: int, n: int, cm: int) -> None:
    text = resized(rib(unit, rest, unit * n + rest), width=f"{cm} cm")
    after = checked(text)
    # A width between two repeats may be asked for; the nearest is taken, and that is said.
    assert {problem.rule for problem in after.problems} <= {"width-odd-repeat"}
    wanted = cm * 2
    fitting = [unit * k + rest for k in range(1, 700)]
    nearest = min(abs(count - wanted) for count in fitting)
    best = max(c for c in fitting if abs(c - wanted) == nearest)  # of two the larger
    assert after.walks[0].cast_on == best


@given(cm=st.integers(40, 400), size=st.sampled_from(["lap", "throw", "bed"]))
def test_the_throw_at_any_width(cm: int, size: str) -> None:
    text = resized(THROW.read_text("utf-8"), width=f"{cm}cm", size=size)
    after = checked(text)
    # One size alone made wider than the next, or than its needle holds, is said and no more; and
    # the balls are those of the width that was.
    assert {problem.rule for problem in after.problems} <= {
        "sizes-disorder",
        "needle-short",
        "yarn-short",
    }
    place = after.pattern.sizes.index(size)
    assert abs(after.walks[place].cast_on - cm * 2) <= 1
    assert resized(text, width=f"{cm}cm", size=size) == text


@given(cm=st.integers(60, 400))
def test_the_throw_at_any_length(cm: int) -> None:
    after = checked(resized(THROW.read_text("utf-8"), length=f"{cm}cm"))
    # The balls are those of the length that was.
    assert {problem.rule for problem in after.problems} <= {"yarn-short"}
    for walk in after.walks:
        assert abs(walk.height - cm * 10) <= 2 * 100 / 36 + 1e-6
        assert walk.rows % 4 == 0  # two rows before, whole motifs of four, two after


def test_only_the_numbers_change() -> None:
    text = THROW.read_text("utf-8")
    new = resized(text, width="160cm", size="bed")
    changed = [(a, b) for a, b in zip(text.splitlines(), new.splitlines(), strict=True) if a != b]
    assert changed == [
        ("  width 90/120/150 cm", "  width 90/120/160 cm"),
        (
            "  cast on 180/240/300 in A by long-tail",
            "  cast on 180/240/320 in A by long-tail",
        ),
    ]


def test_claims_follow() -> None:
    new = resized(rib(4, 2, 42, claim=" => 42"), width="30cm")
    assert "row: knit => 62" in new
    assert "cast on 62  -- the count" in new


def test_repeats_go_by_whole_motifs() -> None:
    text = rib(4, 2, 42).replace("  width", "  length 6.43 cm\n  width")
    new = resized(text, length="20 cm")
    # 56 rows are 20 cm: two knit rows stay, so 27 motifs of two rows.
    assert "work rib x27" in new
    assert "length 20 cm" in new


def test_a_row_without_a_fill_is_named() -> None:
    text = rib(4, 2, 42).replace("  row: knit\n  work", "  row: (k1 p1) x21\n  work")
    with pytest.raises(CannotResize) as error:
        resized(text, width="60cm")
    assert [p.span for p in error.value.problems]
    line = checked(text).source.line_column(error.value.problems[0].span.start)[0]
    assert text.splitlines()[line - 1] == "  row: (k1 p1) x21"


def test_a_row_written_out_follows_where_its_numbers_say_how() -> None:
    text = rib(4, 2, 42).replace("  row: knit\n  work", "  row: k2 p38 k2\n  work")
    assert "row: k2 p118 k2" in resized(text, width="61cm")


@pytest.mark.parametrize(
    ("width", "size", "words"),
    [
        ("150", None, "no unit"),
        ("wide", None, "wide"),
        ("100/120 cm", None, "3 sizes"),
        ("100 g", None, "length"),
        ("100/120/140 cm", "lap", "list"),
        ("100 cm", "huge", "no size"),
    ],
)
def test_wrong_wishes(width: str, size: str | None, words: str) -> None:
    with pytest.raises(ValueError, match=words):
        resized(THROW.read_text("utf-8"), width=width, size=size)


def test_the_command(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    source = tmp_path / "throw.loop"
    source.write_bytes(THROW.read_bytes())
    new = tmp_path / "new.loop"
    assert main(["resize", str(source), "--width", "100cm", "--size", "lap", "-o", str(new)]) == 0
    out = capsys.readouterr().out
    assert "stitches" in out
    assert "+20" in out
    assert source.read_bytes() == THROW.read_bytes()
    assert main(["check", str(new)]) == 0
    capsys.readouterr()
    assert main(["resize", str(source), "--width", "100cm", "--size", "lap"]) == 0
    assert capsys.readouterr().out == new.read_text("utf-8")
    assert main(["resize", str(source), "--width", "100cm", "-o", str(source)]) == 2
    assert main(["resize", str(source), "--width", "100cm", "--size", "lap", "--in-place"]) == 0
    assert source.read_text("utf-8") == new.read_text("utf-8")
    assert main(["resize", str(source)]) == 2
    fixed = tmp_path / "fixed.loop"
    text = rib(4, 2, 42).replace("  row: knit\n  work", "  row: (k1 p1) x21\n  work")
    fixed.write_text(text, "utf-8")
    target = tmp_path / "wider.loop"
    assert main(["resize", str(fixed), "--width", "60cm", "-o", str(target)]) == 1
    assert not target.exists()
    assert "no fill" in capsys.readouterr().err


GROWING = (
    'pattern "Shawl"\n  gauge 20 stitches 30 rows = 10 cm\nmotif grow over n + 2\n'
    "  row 1: k1 yo * k1 * yo k1\n  row 2: knit\n  row 3: k1 yo * k1 * yo k1\n  row 4: knit\n"
    "piece shawl flat\n  cast on 5\n  work grow {amount}\n  bind off\n"
)


@pytest.mark.parametrize(
    ("amount", "new"), [("x20", "x29"), ("for 80 rows", "for 116 rows"),
                        ("for 82 rows", "for 114 rows"), ("for 83 rows", "for 115 rows")]
)  # fmt: skip
def test_a_shawl_grows_by_its_repeats_also_where_the_last_is_not_finished(
    amount: str, new: str
) -> None:
    """Four stitches a repeat, 5 at the neck: 120 stitches are 60 cm."""
    text = resized(GROWING.format(amount=amount), width="60cm")
    assert f"  cast on 5\n  work grow {new}\n" in text


@pytest.mark.parametrize("times", [7, 8])
def test_a_row_worked_from_both_sides_grows_by_its_own_stitches(times: int) -> None:
    """Two stitches a row: 25 times from 10 stitches are the 60 that 30 cm take."""
    text = resized(
        'pattern "Fan"\n  gauge 20 stitches 30 rows = 10 cm\nmotif grow\n'
        "  row 1: k1 yo * k1 * sm * k1 * yo k1\npiece fan flat\n  cast on 10\n"
        f"  row: k5 pm k5\n  work grow x{times}\n  bind off\n",
        width="30cm",
    )
    assert "  cast on 10\n" in text and "  work grow x25\n" in text
