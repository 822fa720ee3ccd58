"""The spoken edition: full words only, and measures as they are said.

That its counts are the model's is in ``test_spoken_read_back``.
"""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from loopwright.build import BuildOptions, build_editions
from loopwright.compile import check_source
from loopwright.edition.aloud import aloud, in_full
from loopwright.edition.catalogue import ENGLISH
from loopwright.edition.language import catalogue
from loopwright.notation.source import Source

EXAMPLES = sorted((Path(__file__).parents[2] / "examples").glob("*.loop"))
# Abbreviations of the printed edition that are no words of their own.
SHORT = re.compile(
    r"\b(k\d+|p\d+|sl\d*|sts?|rep|rnds?|foll|ssk|ssp|skp|yo|k2tog|p2tog|kfb|pfb|wyif|wyib|tbl|pm|sm"
    r"|rm|RS|WS|M1[LR]?|CDD|BO|CO|w&t)\b"
)


def spoken(text: str, size: str | None = None, language: str = "en") -> str:
    checked = check_source(Source.of("test.loop", text))
    assert not checked.has_errors, checked.problems
    made, _ = build_editions(checked, BuildOptions(("spoken",), size, language=language), "test")
    return made[0][1].decode()


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda p: p.stem)
def test_no_abbreviation_is_left(path: Path) -> None:
    text = spoken(path.read_text("utf-8"))
    body = text.replace("(US", "").replace("UK", "")
    assert not SHORT.findall(body)
    assert "*" not in text and "×" not in text


def test_each_size_in_its_turn() -> None:
    source = (
        'pattern "P"\n  sizes small, large\npiece p flat\n  cast on 20/30\n'
        "  row: k2 * p1 k1 * k2\n  bind off\n"
    )
    text = spoken(source)
    assert text.index("Size small.") < text.index("8 times") < text.index("Size large.")
    assert "13 times" in text
    assert "Size small." not in spoken(source, "large")


@pytest.mark.parametrize(
    ("short", "full"),
    [
        ("43¼ in", "43 and a quarter inches"),
        ("1 m", "1 metre"),
        ("½ in", "a half of an inch"),
        ("110 cm / 43¼ in", "110 centimetres, or 43 and a quarter inches"),
        ("20 sts and 36 rows = 10 cm", "20 stitches and 36 rows make 10 centimetres"),
        ("3½ oz", "3 and a half ounces"),
    ],
)
def test_measures_in_full_words(short: str, full: str) -> None:
    assert in_full(short, ENGLISH) == full


@pytest.mark.parametrize(
    ("figures", "de", "fr", "es"),
    [
        ("1 m", "1 Meter", "1 mètre", "1 metro"),
        ("1.5 m", "1,5 Meter", "1,5 mètre", "1,5 metros"),
        ("9.6 m / 10 yd", "9,6 Meter oder 10 Yard", "9,6 mètres ou 10 yards",
         "9,6 metros o 10 yardas"),
        ("43¼ in", "43 und ein viertel Zoll", "43 pouces et quart", "43 pulgadas y cuarto"),
        ("1½ oz", "1 und eine halbe Unze", "1 once et demie", "1 onza y media"),
        ("3¾ oz", "3 und drei viertel Unzen", "3 onces trois quarts", "3 onzas y tres cuartos"),
        ("½ in", "ein halber Zoll", "un demi-pouce", "media pulgada"),
        ("110 cm / 43¼ in", "110 Zentimeter oder 43 und ein viertel Zoll",
         "110 centimètres ou 43 pouces et quart", "110 centímetros o 43 pulgadas y cuarto"),
        ("4.5 mm", "4,5 Millimeter", "4,5 millimètres", "4,5 milímetros"),
    ],
)  # fmt: skip
def test_measures_in_other_languages(figures: str, de: str, fr: str, es: str) -> None:
    said = [aloud(catalogue(language)).figures(figures) for language in ("de", "fr", "es")]
    assert said == [de, fr, es]


def test_a_writer_s_own_measures_stay_where_their_language_is_not_known() -> None:
    note = "Block to 43¼ in, over 20 sts."
    assert in_full(note, ENGLISH) == "Block to 43 and a quarter inches, over 20 stitches."
    for language in ("de", "fr", "es"):
        assert in_full(note, aloud(catalogue(language))) == note


def test_what_follows_a_repeat_inside_a_line_is_told_from_it() -> None:
    source = (
        'pattern "P"\npiece p flat\n  cast on 60\n'
        "  row: * (k1 p1) x2 p2 * \n  row: * (p1 (k1 p1) x2) x2 k2 *\n  bind off\n"
    )
    text = spoken(source)
    assert "10 times: 2 times: knit 1, purl 1, then purl 2." in text
    assert (
        "5 times: 2 times: purl 1, 2 times: knit 1, purl 1, when all these are done, knit 2."
        in text
    )
    assert "2-mal: 1 Masche rechts, 1 Masche links, dann 2 Maschen links." in spoken(
        source, language="de"
    )
