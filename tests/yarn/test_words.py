"""What is printed: notes at joins, amounts by shade, another yarn, and the JSON's shape."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path

import pytest

from loopwright import cli
from loopwright.build import BuildOptions, build_editions
from loopwright.check.checked import Checked
from loopwright.yarn.notes import joins_of
from loopwright.yarn.report import yarn_report
from loopwright.yarn.swap import gauge_questions, read_other, swaps

Check = Callable[[str], Checked]
EXAMPLE = Path(__file__).parents[2] / "examples" / "tideline-wrap.loop"


def text_of(checked: Checked, **more: str) -> str:
    made, failed = build_editions(checked, BuildOptions(("text",), **more), "cloth")  # type: ignore[arg-type]
    assert not failed
    return made[0][1].decode()


def test_a_note_stands_behind_the_rows_in_which_its_join_falls(check: Check) -> None:
    checked = check(EXAMPLE.read_text("utf-8"))
    report = yarn_report(checked.pattern, checked.walks)
    notes = joins_of(report, 0, range(2))
    assert [note.strand for note in notes] == ["A", "B", "A"]
    lines = text_of(checked).splitlines()
    at = next(i for i, line in enumerate(lines) if line.startswith("Rep Rows 3–6"))
    for place, note in enumerate(notes):
        rows = [join.spot.row for join in note.joins if join is not None]
        assert f"in Row {rows[0]} ({rows[1]})" in lines[at + 2 + place]
    assert "do not begin another" in lines[at + 1]
    assert lines[at + 5].startswith("Next 2 rows")
    assert "16 in" in lines[at + 2] and "6 in" in lines[at + 2]


RING = """pattern "Ring"
  gauge 20 stitches 28 rows = 10 cm
yarn w "Wool": 50 g 100 m, weight 4
shade a "Ash" of w
shade b "Bog" of w
strand A feeds half a, b x2
piece cowl {kind}
  cast on {count} in A
  {rows}: knit
  bind off
"""


def first_join(checked: Checked) -> int:
    """The row in which the first ball ends."""
    report = yarn_report(checked.pattern, checked.walks)
    return report.sizes[0].strands[0].eaten.joins[0].spot.row


@pytest.mark.parametrize(
    ("language", "row", "round_", "weighed"),
    [
        ("en", "in Row {}, after", "in Round {}, after", "After Round {} the scale"),
        ("de", "in Reihe {}, nach", "in Runde {}, nach", "Nach Runde {} sollte"),
        ("fr", "au rang {}, après", "au tour {}, après", "Après le tour {}, la balance"),
        ("es", "en la hilera {}, tras", "en la vuelta {}, tras", "Tras la vuelta {} la balanza"),
    ],
)
def test_a_join_in_a_round_is_told_as_one(
    language: str, row: str, round_: str, weighed: str, check: Check
) -> None:
    for kind in ("flat", "round"):
        word = "rounds 60" if kind == "round" else "rows 60"
        checked = check(RING.format(kind=kind, count=190, rows=word))
        made, failed = build_editions(
            checked, BuildOptions(("text", "spoken", "html"), language=language), "ring"
        )
        at = first_join(checked)
        assert not failed
        for _, data in made:
            text = data.decode().replace("\u00a0", " ")
            assert (round_.format(at) in text) == (kind == "round")
            assert (weighed.format(at - 1) in text) == (kind == "round")
            assert (row.format(at) in text) == (kind == "flat")


def test_a_join_behind_rows_of_both_kinds_is_told_by_its_own(check: Check) -> None:
    text = RING.format(kind="flat", count=190, rows="rows 4: knit\n  join round\n  rounds 60")
    checked = check(text)
    assert first_join(checked) > 4
    assert f"in Round {first_join(checked)}, after" in text_of(checked)
    text = RING.format(kind="round", count=190, rows="rounds 4: knit\n  leave round\n  rows 60")
    checked = check(text)
    assert first_join(checked) > 4
    assert f"in Row {first_join(checked)}, after" in text_of(checked)


def test_the_table_of_the_yarn_tells_rounds_from_rows(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], check: Check
) -> None:
    for kind, word in (("flat", "row"), ("round", "round")):
        path = tmp_path / f"{kind}.loop"
        text = RING.format(kind=kind, count=190, rows=f"{word}s 60")
        at = first_join(check(text))
        path.write_text(text, "utf-8")
        assert cli.main(["yarn", str(path)]) == 0
        told = capsys.readouterr().out
        assert f"a to b: in {word} {at}, after" in told
        assert f"({word}s " in told and f"are left when {word} {at - 1} is done" in told
        assert cli.main(["yarn", str(path), "--row", "3"]) == 0
        assert capsys.readouterr().out.splitlines()[1].split()[0] == word


def test_one_size_has_its_own_numbers_alone(check: Check) -> None:
    checked = check(EXAMPLE.read_text("utf-8"))
    text = text_of(checked, size="wide")
    row = yarn_report(checked.pattern, checked.walks).sizes[1].strands[0].eaten.joins[0].spot.row
    assert f"in Row {row}, after" in text


def test_a_new_ball_of_the_same_shade_needs_no_note(check: Check) -> None:
    text = EXAMPLE.read_text("utf-8").replace("half kelp, ember, half kelp", "kelp x2")
    text = text.replace('shade ember "Ember" of shore, colour #8c3b2e\n', "")
    checked = check(text)
    notes = joins_of(yarn_report(checked.pattern, checked.walks), 0, range(2))
    assert [note.strand for note in notes] == ["B"]


@pytest.mark.parametrize(
    "text", ["", "50 g", "120 m", "fifty g 120 m", "50 g 120 m, weight 9", "50 g 120 m of wool"]
)
def test_a_ball_that_cannot_be_read(text: str) -> None:
    with pytest.raises(ValueError):
        read_other(text)


def test_another_yarn(check: Check) -> None:
    checked = check(EXAMPLE.read_text("utf-8"))
    report = yarn_report(checked.pattern, checked.walks)
    other = read_other("1¾ oz 130 yd, weight 3")
    assert other.metres == pytest.approx(130 * 0.9144)
    for swap, size in zip(swaps(report, other), report.sizes, strict=True):
        bought = sum(sum(strand.bought) for strand in size.strands)
        balls = sum(number for _, _, number in swap.shades)
        assert bought <= balls * other.metres < bought + len(swap.shades) * other.metres
    words = " ".join(gauge_questions(checked.pattern, other))
    assert "weights differ" in words and "swatch" in words.lower()
    same = gauge_questions(checked.pattern, read_other("100 g 200 m, weight 4"))
    assert len(same) == 1 and "swatch" in same[0]


def test_json_has_the_promised_shape(capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["yarn", str(EXAMPLE), "--json"]) == 0
    data = json.loads(capsys.readouterr().out)
    assert [size["size"] for size in data["sizes"]] == ["narrow", "wide"]
    for size in data["sizes"]:
        for strand in size["strands"]:
            assert {"strand", "metres", "grams", "joins"} <= strand.keys()
            for join in strand["joins"]:
                assert {"row", "stitch", "from", "to", "left_grams"} <= join.keys()
        for shade in size["shades"]:
            assert {"shade", "metres", "grams", "balls"} <= shade.keys()
        eaten = sum(strand["metres"] for strand in size["strands"])
        assert sum(shade["metres"] for shade in size["shades"]) == pytest.approx(eaten, abs=0.5)


def test_rows_and_one_row_agree(capsys: pytest.CaptureFixture[str]) -> None:
    call = ["yarn", str(EXAMPLE), "--size", "wide", "--json"]
    assert cli.main([*call, "--rows"]) == 0
    (every,) = json.loads(capsys.readouterr().out)["rows"]
    assert cli.main([*call, "--row", "77"]) == 0
    (one,) = json.loads(capsys.readouterr().out)["rows"]
    assert one["rows"] == [row for row in every["rows"] if row["row"] == 77]
    totals: dict[str, float] = {}
    for row in every["rows"]:
        before = totals.get(row["strand"])
        if before is not None:
            assert row["total_metres"] >= before + row["metres"] - 0.02
        totals[row["strand"]] = row["total_metres"]


def test_plan_prints_feeds_that_check(check: Check, capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["plan", str(EXAMPLE), "--size", "wide", "--balls", "2", "each", "--json"]) == 0
    plan = json.loads(capsys.readouterr().out)["plans"][0]
    text = EXAMPLE.read_text("utf-8").replace("until A is spent, keep 3 rows", "x100")
    for line in plan["strands"]:
        old = next(row for row in text.splitlines() if row.startswith(f"strand {line['strand']} "))
        text = text.replace(old, f"strand {line['strand']} feeds {line['feeds']}")
    rules = {problem.rule for problem in check(text).problems}
    assert not rules & {"same-shade-twice", "unknown-name", "line-unclear"}


@pytest.mark.parametrize(
    "args", [["--size", "huge"], ["--row", "9999"], ["--row", "0"], ["--with", "wool"]]
)
def test_wrong_calls(args: list[str], capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["yarn", str(EXAMPLE), *args]) == 2
    assert capsys.readouterr().err.startswith("loopwright:")
