"""The spoken edition read back, in each of its languages: its counts are those of the model."""

from __future__ import annotations

import sys
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shared.fitted import row_of

from loopwright.build import BuildOptions, build_editions
from loopwright.compile import Checked, check_source
from loopwright.edition.language import LANGUAGES
from loopwright.notation.source import Source

sys.path.insert(0, str(Path(__file__).parent))
import spoken_reader as reader

EXAMPLES = sorted((Path(__file__).parents[2] / "examples").glob("*.loop"))


def checked_of(text: str) -> Checked:
    checked = check_source(Source.of("test.loop", text))
    assert not checked.has_errors, checked.problems
    return checked


def said(checked: Checked, language: str, size: str | None = None) -> list[reader.SaidRow]:
    options = BuildOptions(("spoken",), size, language=language)
    ((_, data),), failed = build_editions(checked, options, "test")
    assert not failed
    return reader.rows_of(data.decode(), reader.TONGUES[language])


STEPS = ["k3", "p2", "sl1 wyif", "sl2", "k2tog", "p3tog", "ssk", "ssp", "skp", "sk2p", "cdd", "yo",
         "yo2", "kfb", "pfb2", "m1", "m1l2", "m1r", "k1 tbl", "k2tog tbl", "(k1 yo) x2", "k2tog2",
         "ssk2", "c4f", "sl1 kwise"]  # fmt: skip
UNITS = ["k1", "p2", "sl1 wyif", "k2tog", "yo k2tog", "(p1 k1) x2", "yo skp", "yo sk2p yo"]


@pytest.mark.parametrize("language", LANGUAGES)
@settings(max_examples=100, deadline=None)
@given(data=st.data())
def test_what_is_said_counts_out(language: str, data: st.DataObject) -> None:
    before = data.draw(st.lists(st.sampled_from(STEPS), max_size=4))
    unit = data.draw(st.lists(st.sampled_from(UNITS), min_size=1, max_size=3))
    after = data.draw(st.lists(st.sampled_from(STEPS), max_size=4))
    often = data.draw(st.integers(1, 40))
    source = row_of(before, unit, after, often)
    checked = checked_of(source)
    (row,) = checked.walks[0].listed()
    (found,) = said(checked, language)
    assert reader.read_row(found, row.start, reader.TONGUES[language]) == found.count == row.end


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("unit", ["k1", "p1", "k1 p1", "yo k2tog k1"])
@pytest.mark.parametrize("edge", [0, 1, 3])
def test_a_fill_that_grows_counts_out(language: str, unit: str, edge: int) -> None:
    takes = 3 if "tog" in unit else len(unit.split())
    knit = f"k{edge}" if edge else ""
    grow = " ".join(["yo"] * takes)
    source = (
        f'pattern "Q"\nmotif m\n  row 1: {knit} * {unit} * {grow} {knit}\n  row 2: purl\n'
        f"piece p flat\n  cast on {2 * edge + 4 * takes}\n  work m x3\n  bind off\n"
    )
    checked = checked_of(source)
    rows = list(checked.walks[0].listed())
    tongue = reader.TONGUES[language]
    found = said(checked, language)
    assert [(row.first, row.last) for row in found] == [(1, 1), (2, 2)]
    for row in found:
        # The words stand for each of the repeats, and the fill for another number in each.
        for again in range(3):
            listed = rows[row.first - 1 + 2 * again]
            assert reader.read_row(row, listed.start, tongue) == listed.end
        assert row.count == rows[row.first - 1].end


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_rows_of_the_examples_count_out(language: str) -> None:
    tongue = reader.TONGUES[language]
    read = heard = 0
    for path in EXAMPLES:
        checked = checked_of(path.read_text("utf-8"))
        for size, name in enumerate(checked.pattern.sizes):
            walks = [walk for walk in checked.walks if walk.size == size and walk.rows]
            listed = [{row.row: row for row in walk.listed()} for walk in walks]
            piece, before, turned = -1, 10**9, False
            for row in said(checked, language, name if len(checked.pattern.sizes) > 1 else None):
                piece += row.first <= before  # the next piece counts from one again
                before = row.first
                short, turned = turned and row.first > 1, reader.turns(row, tongue)
                first, last = listed[piece][row.first], listed[piece][row.last]
                assert row.count == first.end == last.end, row
                heard += 1
                try:
                    assert reader.read_row(row, first.start, tongue, short) == first.end, row
                    read += 1
                except reader.NotUnderstood as what:
                    # Only what stops at a marker or at a gap, and what comes from a holder.
                    assert any(
                        word in str(what)
                        for word in (
                            "marker", "markierung", "marqueur", "marcador",
                            "gap", "lücke", "vide", "hueco",
                            "held", "stillgelegten", "en attente d", "en espera de",
                        )
                    ), what  # fmt: skip
    assert heard > 200
    assert read > 0.8 * heard


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_reader_finds_what_is_wrong(language: str) -> None:
    tongue = reader.TONGUES[language]
    source = 'pattern "Q"\npiece p flat\n  cast on 20\n  row: k2 * p1 k1 * k2\n  bind off\n'
    (row,) = said(checked_of(source), language)
    assert reader.read_row(row, 20, tongue) == 20
    for wrong in (19, 21, 22):
        with pytest.raises(AssertionError):
            reader.read_row(row, wrong, tongue)
    with pytest.raises(reader.NotUnderstood):
        reader.read_line("xyz", 3, tongue)
