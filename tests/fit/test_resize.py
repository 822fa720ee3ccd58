"""Resize: the nearest count that fits, the text kept, and the result checked."""

from __future__ import annotations

import re
from functools import lru_cache
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shared.editions import text_of

from loopwright.check.checked import Checked
from loopwright.cli import main
from loopwright.compile import check_source
from loopwright.fit.resize import CannotResize, Wish, resize
from loopwright.notation.source import Source

FOLDER = Path(__file__).parent.parent.parent / "examples"
THROW = FOLDER / "skerry-throw.loop"


@lru_cache(maxsize=50)
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
    text = resized(text_of("skerry-throw"), width=f"{cm}cm", size=size)
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
    after = checked(resized(text_of("skerry-throw"), length=f"{cm}cm"))
    # The balls are those of the length that was.
    assert {problem.rule for problem in after.problems} <= {"yarn-short"}
    for walk in after.walks:
        assert abs(walk.height - cm * 10) <= 2 * 100 / 36 + 1e-6
        assert walk.rows % 4 == 0  # two rows before, whole motifs of four, two after


def test_only_the_numbers_change() -> None:
    text = text_of("skerry-throw")
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
        resized(text_of("skerry-throw"), width=width, size=size)


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


# --- widths that cannot be ------------------------------------------------------------------

TWO = (
    'pattern "Set"\n  sizes small, large\n  width 40/60 cm\n'
    "  gauge 22 stitches 30 rows = 10 cm\n"
    "motif rib over 4n + 2\n  row 1: k2 * p2 k2 *\n  row 2: p2 * k2 p2 *\n"
    "motif wide over 24n + 10\n  row 1: k10 * p12 k12 *\n  row 2: p10 * k12 p12 *\n"
    "piece scarf flat\n  cast on 90/130\n  work rib x20\n  bind off\n"
    "piece cover flat\n  cast on 130/202\n  work wide x20\n  bind off\n"
)


def stopped(text: str, **asked: str) -> CannotResize:
    before = checked(text)
    with pytest.raises(CannotResize) as error:
        resize(before, Wish.of(before.pattern, **asked), check_source)
    return error.value


def test_a_width_below_one_repeat_and_its_edges_names_the_least_of_each_size() -> None:
    """6 stitches at 22 to 10 cm are 2.73 cm, and 34 are 15.45 cm: not less."""
    scarf, cover = stopped(TWO, width="1cm").problems
    assert scarf.title == "scarf cannot be so narrow"
    assert "In every size scarf takes 6 stitches or more (one repeat with its edges), " in (
        scarf.message
    )
    assert scarf.help == "ask for 2.8 cm / 1¼ in or more for every size."
    # The cover is 59 cm wide where the pattern is 40, and 92 where it is 60.
    assert "In size small cover takes 34 stitches or more" in cover.message
    assert cover.help == (
        "ask for 10.5 cm / 4¼ in or more for size small and 10.1 cm / 4 in or more for size large."
    )
    (one,) = stopped(TWO, width="2/60cm").problems[:1]
    assert one.help == "ask for 2.8 cm / 1¼ in or more for size small."


@given(
    unit=st.integers(2, 30), rest=st.integers(1, 12), gauge=st.integers(9, 40),
    inch=st.booleans(), data=st.data(),
)  # fmt: skip
def test_the_least_width_that_is_said_can_be_had_and_nothing_below_it(
    unit: int, rest: int, gauge: int, inch: bool, data: st.DataObject
) -> None:
    text = rib(unit, rest, unit * 40 + rest, gauge)
    least = unit + rest
    stitches = data.draw(st.floats(0.2, least - 0.6))
    (problem,) = stopped(text, width=f"{stitches * 10 / gauge:.6f} cm").problems
    both = re.fullmatch(r"ask for ([\d.]+) cm / ([\d¼½¾]+) in or more\.", problem.help)
    assert both is not None, problem.help
    after = checked(resized(text, width=f"{both[2]} in" if inch else f"{both[1]} cm"))
    assert after.walks[0].cast_on == least


def test_a_shawl_cannot_be_narrower_than_its_motif_worked_once() -> None:
    (problem,) = stopped(GROWING.format(amount="x20"), width="1cm").problems
    assert "shawl takes 9 stitches or more (grow worked once), 4.5 cm / 2 in wide" in (
        problem.message
    )


def test_a_width_of_more_stitches_than_there_may_be() -> None:
    (problem,) = stopped(rib(4, 2, 62), width="999999999cm").problems
    assert "would take 1,999,999,998 stitches" in problem.message
    assert problem.help == "scarf can have 500000000 cm at most."


def test_a_width_too_narrow_writes_nothing(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    new = tmp_path / "new.loop"
    assert main(["resize", str(THROW), "--width", "1cm", "-o", str(new)]) == 1
    assert not new.exists()
    told = capsys.readouterr()
    assert "ask for 3 cm / 1¼ in or more for every size" in told.err and not told.out
    assert main(["resize", str(THROW), "--width", "3cm", "--size", "lap", "-o", str(new)]) == 0
    assert "cast on 6/240/300" in new.read_text("utf-8")
    for wrong, words in (("-5cm", "less than nothing"), ("0cm", "is nothing"), ("5", "no unit")):
        assert main(["resize", str(THROW), "--width", wrong]) == 2
        assert words in capsys.readouterr().err


def test_what_stops_a_new_size_is_shown_in_its_own_line(
    capsys: pytest.CaptureFixture[str],
) -> None:
    assert main(["resize", str(THROW), "--add-size", "doll 1 cm x 10 cm"]) == 1
    assert "│ piece throw flat\n" in capsys.readouterr().err


# --- counts that were worked out for one size -----------------------------------------------

HELD = (
    'pattern "Two"\n  width 20 cm\n  gauge 20 stitches 30 rows = 10 cm\n'
    "motif rib over 4n + 2\n  row 1: k2 * p2 k2 *\n  row 2: p2 * k2 p2 *\n"
    "piece low flat\n  cast on 42\n  work rib x10\n  hold {held} as rest\n{then}"
    "piece high flat\n  take rest\n  work rib x4\n  bind off\n"
)


def test_all_stitches_held_follow_the_width() -> None:
    text = resized(HELD.format(held="all", then=""), width="30cm")
    assert "cast on 62\n" in text
    after = checked(text)
    assert not after.has_errors
    assert [row.start for row in after.walks[1].listed()] == [62] * 8


def test_stitches_held_by_number_do_not() -> None:
    (problem,) = stopped(HELD.format(held="22", then="  bind off\n"), width="30cm").problems
    assert "In “low” stitches are held here." in problem.message
    assert "loopwright fit" in problem.help
    (problem,) = stopped(HELD.format(held="22", then="  bind off\n"), length="60cm").problems
    assert "line 9 of low keeps the stitches there are" in problem.help


def test_stitches_held_in_a_row_are_as_literal_as_those_held_between_rows() -> None:
    text = (
        'pattern "Slit"\n  width 20 cm\n  gauge 20 stitches 30 rows = 10 cm\n'
        "piece hand round\n  cast on 40\n  rounds 10: knit\n"
        "  round: k10 hold 8 as thumb co8 * k1 *\n  rounds 10: knit\n  bind off\n"
        "piece thumb round\n  take thumb\n  rounds 10: knit\n  bind off\n"
    )
    (problem,) = stopped(text, width="30cm").problems
    assert checked(text).source.line_column(problem.span.start)[0] == 7
    assert problem.title == "hand cannot change its size"
