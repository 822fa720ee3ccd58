"""The tables: each row whole and sourced, each name once, each number in order."""

from __future__ import annotations

import re
from itertools import pairwise
from pathlib import Path

import pytest

from loopwright.facts import tables as reader
from loopwright.facts.loops import loop_constants, rule_of_thumb
from loopwright.facts.sizes import blanket_sizes
from loopwright.facts.tables import table
from loopwright.facts.words import safety_caution, terms, uk_terms
from loopwright.facts.yarns import yarn_weight, yarn_weights

FOLDER = Path(reader.__file__).parent
NAMES = sorted(path.stem for path in FOLDER.glob("*.csv"))
KEYS = {
    "blanket_sizes": ("name",),
    "care": ("words",),
    "chart_symbols": ("symbol",),
    "edges": ("kind", "method"),
    "estimates": ("name",),
    "fabrics": ("fabric",),
    "joins": ("join",),
    "fibre_care": ("name",),
    "fibres": ("fibre",),
    "loop_constants": ("structure", "state"),
    "needle_sizes": ("mm",),
    "rules_of_thumb": ("name",),
    "safety_cautions": ("name",),
    "spoken": ("word",),
    "stitches": ("word",),
    "terms": ("abbr",),
    "terms_us_uk": ("us",),
    "vision": ("vision",),
    "yarn_weights": ("category",),
}


def test_every_table_has_its_key_told_here() -> None:
    assert set(NAMES) == set(KEYS)


@pytest.mark.parametrize("name", NAMES)
def test_every_row_names_its_source_in_words(name: str) -> None:
    for row in table(name):
        source = row["source"]
        assert len(source) >= 5, row
        assert not re.search(r"\bS\d\d\b|https?:|www\.|\.(com|org|net)\b", source), source


@pytest.mark.parametrize("name", NAMES)
def test_no_cell_has_stray_spaces_and_no_row_comes_twice(name: str) -> None:
    keys = [tuple(row[column] for column in KEYS[name]) for row in table(name)]
    assert len(set(keys)) == len(keys) > 0
    for row in table(name):
        assert all(cell == " ".join(cell.split()) for cell in row.values()), row


def test_every_yarn_factor_says_where_it_is_from() -> None:
    for row in table("stitches"):
        assert "yarn" in row["source"], row
        assert 0 <= float(row["yarn"]) <= 2 * max(int(row["takes"]), int(row["makes"]), 1)


def test_a_table_is_read_once_and_cannot_be_changed() -> None:
    rows = table("terms")
    assert table("terms") is rows
    with pytest.raises(TypeError):
        rows[0]["meaning"] = "another"  # type: ignore[index]


def test_a_table_that_is_not_there() -> None:
    with pytest.raises(FileNotFoundError):
        table("no_such_table")


def test_a_row_of_another_width_is_refused(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "broken.csv").write_text("a,source\n1,here\n2\n", "utf-8")
    monkeypatch.setattr(reader, "FOLDER", tmp_path)
    with pytest.raises(ValueError, match=r"broken.csv: 1 cells under 2 columns"):
        reader.table.__wrapped__("broken")


def test_yarn_weights_run_from_thin_to_thick() -> None:
    assert [weight.category for weight in yarn_weights()] == list(range(8))
    for thin, thick in pairwise(yarn_weights()):
        assert thin.stitches_max is not None
        assert thick.stitches_max is not None
        assert thin.stitches_max > thick.stitches_max
        assert (thin.needle_min_mm or 0) < (thick.needle_min_mm or 0)
        assert (thin.metres_max or 0) > (thick.metres_max or 0)


def test_what_is_usual_for_a_weight() -> None:
    medium = yarn_weight(4)
    assert medium.name == "Medium"
    assert "worsted" in medium.yarns
    assert [medium.usual_stitches(n) for n in (15, 16, 20, 21)] == [False, True, True, False]
    assert [medium.usual_needle(mm) for mm in (4, 4.5, 5.5, 6)] == [False, True, True, False]
    assert [medium.usual_metres(m) for m in (100, 200, 300)] == [False, True, False]
    # The standard leaves the thick end open.
    assert yarn_weight(7).usual_needle(40)
    assert yarn_weight(7).usual_stitches(2)
    assert not yarn_weight(7).usual_stitches(7)


def test_the_overlap_of_fine_and_light_stays() -> None:
    both = [
        n
        for n in range(40)
        if yarn_weight(2).usual_stitches(n) and yarn_weight(3).usual_stitches(n)
    ]
    assert both == [23, 24]


@pytest.mark.parametrize("category", [-1, 8])
def test_a_category_that_is_not_there(category: int) -> None:
    with pytest.raises(KeyError):
        yarn_weight(category)


def test_loop_constants() -> None:
    assert loop_constants().ks == 21.6
    assert loop_constants("plain knit", "dry relaxed").ks == 19.0
    assert loop_constants("plain knit", "fully relaxed").kw == 4.2
    with pytest.raises(KeyError):
        loop_constants("felt")


@pytest.mark.parametrize("row", table("loop_constants"), ids=lambda row: row["state"])
def test_ks_is_the_product_of_kc_and_kw(row: dict[str, str]) -> None:
    # Each is published with one decimal, so each may be off by 0.05.
    off = 0.05 * (float(row["kc"]) + float(row["kw"])) + 0.05
    assert float(row["kc"]) * float(row["kw"]) == pytest.approx(float(row["ks"]), abs=off)


def test_rules_of_thumb() -> None:
    assert rule_of_thumb("worked-in join tail").low == pytest.approx(16 * 25.4)
    assert rule_of_thumb("bind-off yarn").high == 6
    for row in table("rules_of_thumb"):
        rule = rule_of_thumb(row["name"])
        assert 0 < rule.low <= rule.high
        assert rule.unit
    with pytest.raises(KeyError):
        rule_of_thumb("luck")


def test_the_long_tail_rule_is_stitches_times_millimetres_over_eight_inches() -> None:
    # 240 stitches on 5 mm: 150 inches.
    factor = rule_of_thumb("long-tail tail by needle").low
    assert 240 * 5 * factor == pytest.approx(150 * 25.4)


def test_blanket_sizes() -> None:
    for size in blanket_sizes():
        assert 0 < size.width_min <= size.width_max
        assert 0 < size.length_min <= size.length_max
    throw = next(size for size in blanket_sizes() if size.name == "throw")
    assert (throw.width_min, throw.length_max) == (pytest.approx(1270), pytest.approx(1524))


def test_words() -> None:
    assert terms()["rep"] == "repeat"
    assert terms()["RS"] == "right side"
    assert uk_terms()["bind off"] == "cast off"
    # A word is explained in one table only.
    assert not {word.lower() for word in terms()} & {row["word"] for row in table("stitches")}


def test_cautions_are_whole_sentences() -> None:
    for row in table("safety_cautions"):
        sentence = safety_caution(row["name"])
        assert sentence[0].isupper()
        assert sentence.endswith(".")
    with pytest.raises(KeyError):
        safety_caution("dragons")
