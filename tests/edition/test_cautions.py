"""Cautions: each fires where the pattern's words call for it, and is silent where they do not."""

from __future__ import annotations

import pytest

from loopwright.compile import check_source
from loopwright.edition.catalogue import ENGLISH
from loopwright.edition.cautions import BALL_BAND, LOCAL_RULES, SLEEP_ADVICE, care_of, cautions_of
from loopwright.edition.language import catalogue
from loopwright.edition.text import render_text
from loopwright.edition.words import SWATCH, make_document
from loopwright.facts.tables import table
from loopwright.facts.words import safety_caution
from loopwright.model.pattern import Pattern
from loopwright.notation.source import Source


def pattern_of(
    title: str, summary: str = "", sizes: str = "", notes: str = "", yarn: str = "", rows: str = ""
) -> Pattern:
    source = f'pattern "{title}"\n'
    source += f'  summary "{summary}"\n' if summary else ""
    source += f"  sizes {sizes}\n" if sizes else ""
    source += f'  notion "{notes}"\n' if notes else ""
    source += f"yarn y{yarn}\nshade s of y\nstrand A feeds s\n" if yarn else ""
    source += f"motif m over 8n\n  row 1: {rows}\n  row 2: purl\n" if rows else ""
    source += "piece cloth flat\n  cast on 40\n  rows 2: knit\n"
    source += "  work m x2\n" if rows else ""
    checked = check_source(Source.of("test.loop", source + "  bind off\n"))
    assert not checked.has_errors, checked.problems
    return checked.pattern


def names(pattern: Pattern) -> set[str]:
    said = cautions_of(pattern, ENGLISH)
    rows = {row["caution"]: row["name"] for row in table("safety_cautions")}
    return {
        name for line in said for caution, name in rows.items() if line.startswith(f"{caution} ")
    }


FIRES = [
    ({"title": "Crib Blanket"}, {"infant blanket"}),
    ({"title": "Harbour Throw", "summary": "For a newborn, or for a chair."}, {"infant blanket"}),
    ({"title": "Soft Quilt", "sizes": "cot, bed"}, {"infant blanket"}),
    ({"title": "Lull Shawl", "summary": "For ages 0-3 months"}, {"infant blanket"}),
    ({"title": "Child’s Hood", "summary": "It closes with an i-cord."}, {"neck cord EU"}),
    ({"title": "Hooded Jacket, 9-10 years", "summary": "A hood with a cord."}, {"neck cord"}),
    ({"title": "Toddler Bonnet", "notes": "ribbon, 60 cm"}, {"neck cord EU"}),
    ({"title": "Boys’ Trousers, 4-5 years", "notes": "a cord for the waist"}, {"waist cord"}),
    ({"title": "Baby Cardigan", "notes": "5 buttons"}, {"small parts"}),
    ({"title": "Owl for a toddler", "notes": "safety eyes, 6 mm"}, {"small parts"}),
    ({"title": "Cap, 2T", "notes": "a pom-pom"}, {"pompom"}),
    ({"title": "Toddler Scarf", "notes": "fringe"}, {"scarf", "pompom"}),
    ({"title": "Baby Vest", "summary": "All in eyelets."}, {"openwork"}),
    ({"title": "Baby Vest", "rows": "* yo k2tog k2 *"}, {"openwork"}),
    ({"title": "Baby Vest", "rows": "* yo k2tog yo k2tog yo k2tog k2 *"}, {"openwork"}),
    ({"title": "Infant Mitts", "yarn": ' "Mohair and silk": 25 g 210 m'}, {"loose hairs"}),
]  # fmt: skip
SILENT = [
    {"title": "Harbour Throw", "summary": "For a sofa."},
    {"title": "Blanket Coat", "notes": "5 buttons"},
    {"title": "Baby Hat", "summary": "A ribbed cap."},
    {"title": "Adult Hood", "summary": "It closes with an i-cord."},
    {"title": "Child’s Scarf, 8 years", "notes": "fringe"},
    {"title": "Cardigan, 5-6 years", "notes": "5 buttons"},
    {"title": "Throw in baby alpaca"},
    {"title": "Throw in kid mohair", "notes": "fringe"},
    {"title": "Lace Shawl", "rows": "* yo k2tog yo k2tog yo k2tog k2 *"},
    {"title": "Baby Vest", "rows": "* k6 yo k2tog *"},
    {"title": "Picnic Blanket", "summary": "Not for infants."},
    {"title": "Scotland Throw", "summary": "Its edge is tied off; catch the eye."},
    {"title": "Child’s Mittens", "summary": "Joined by nothing."},
]


@pytest.mark.parametrize(
    ("told", "fires"), FIRES, ids=lambda x: str(sorted(x) if isinstance(x, set) else x)[:60]
)
def test_it_fires(told: dict[str, str], fires: set[str]) -> None:
    assert names(pattern_of(**told)) == fires


@pytest.mark.parametrize("told", SILENT, ids=lambda x: str(x)[:60])
def test_it_is_silent(told: dict[str, str]) -> None:
    assert names(pattern_of(**told)) == set()


def test_every_caution_fires_somewhere() -> None:
    assert {name for _, fires in FIRES for name in fires} == {
        row["name"] for row in table("safety_cautions")
    }


@pytest.mark.parametrize("language", ["en", "de", "fr", "es"])
def test_a_caution_gives_way_to_local_rules(language: str) -> None:
    words = catalogue(language)
    for told, _ in FIRES:
        for line in cautions_of(pattern_of(**told), words):
            assert line.endswith((words.text(SLEEP_ADVICE), words.text(LOCAL_RULES)))
            assert language == "en" or safety_caution("small parts") not in line


@pytest.mark.parametrize(
    ("yarn", "words"),
    [
        (' "Shore": 100 g 200 m, fibre "100% wool"', ["felt"]),
        (' "Merino sock": 100 g 400 m', ["felt"]),
        (' "Shore": 100 g 200 m, fibre "superwash wool"', []),
        (' "Cotton": 100 g 200 m, fibre "cotton"', []),
        (' "Mix": 100 g 200 m, fibre "60% acrylic, 40% wool"', ["felt", "iron"]),
        (": 50 g 100 m", []),
    ],
)
def test_care_of_the_fibre(yarn: str, words: list[str]) -> None:
    lines = care_of(pattern_of("Q", yarn=yarn), ENGLISH)
    assert len(lines) == (len(words) + 1 if words else 0)
    for line, word in zip(lines, words, strict=False):
        assert word in line
    assert not lines or lines[-1] == BALL_BAND


def test_the_swatch_line_stays_in_every_pattern() -> None:
    checked = check_source(
        Source.of("t.loop", 'pattern "Q"\npiece p flat\n  cast on 4\n  rows 2: knit\n  bind off\n')
    )
    assert SWATCH in render_text(make_document(checked.pattern, checked.walks))
