"""What the grammar of each language asks: plurals, elision, ordinals, commas, capitals."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from loopwright.build import BuildOptions, build_editions
from loopwright.compile import check_source
from loopwright.edition.language import catalogue
from loopwright.notation.source import Source

EXAMPLES = Path(__file__).parents[2] / "examples"


def page(text: str, language: str, kind: str = "text") -> str:
    checked = check_source(Source.of("test.loop", text))
    assert not checked.has_errors, checked.problems
    ((_, data),), failed = build_editions(checked, BuildOptions((kind,), language=language), "q")
    assert not failed
    return data.decode().replace("\u00a0", " ")


SIZED = """pattern "Q"
  sizes s, m, l
piece one flat
  cast on 20/30/40
  row 1: k2 * p1 k1 * k2
  row 2: k2tog * p1 *
  bind off
"""


@pytest.mark.parametrize(
    ("language", "said"),
    [
        ("de", "20 (30; 40) M anschlagen."),
        ("fr", "Monter 20 (30 ; 40) m."),
        ("es", "Montar 20 (30; 40) p."),
        ("en", "Cast on 20 (30, 40) sts."),
    ],
)
def test_sizes_are_parted_so_that_no_comma_can_be_a_decimal_one(language: str, said: str) -> None:
    text = page(SIZED, language)
    assert said in text
    assert ("(19; 29; 39 M)" in text) == (language == "de")
    assert ("(19 ; 29 ; 39 m)" in text) == (language == "fr")


@pytest.mark.parametrize(
    ("language", "one", "two"),
    [
        ("de", "die nächste M für instep stilllegen", "die nächsten 2 M für instep stilllegen"),
        (
            "fr",
            "mettre la m suivante en attente pour instep",
            "mettre les 2 m suivantes en attente pour instep",
        ),
        (
            "es",
            "dejar el p siguiente en espera para instep",
            "dejar los 2 p siguientes en espera para instep",
        ),
    ],
)
def test_one_stitch_is_said_in_the_singular(language: str, one: str, two: str) -> None:
    for number, said in ((1, one), (2, two)):
        source = (
            f'pattern "Q"\npiece one flat\n  cast on 20\n  row: k9 hold {number} as instep * k1 *\n'
            f"  row: knit\n  bind off\npiece two flat\n  take instep\n  row: knit\n  bind off\n"
        )
        assert said in page(source, language)


def test_french_shortens_its_de_before_a_vowel_of_a_name_only() -> None:
    say = catalogue("fr").say
    message = "slip the held {name} {sts} back to the left needle"
    assert say(message, name="instep", sts="m") == "remettre les m en attente d’instep sur " + (
        "l’aiguille gauche"
    )
    assert "de thumb" in say(message, name="thumb", sts="m")
    assert "d’épaule" in say(message, name="épaule", sts="m")
    # What a writer says is never changed.
    why = "about the size of a coin, de a"
    assert why in catalogue("fr").many(
        "Leave the remaining {sts} live: {why}.", "", 2, n=3, st="m", why=why
    )


@pytest.mark.parametrize(
    ("language", "said"),
    [
        ("en", ["1st", "2nd", "12th"]),
        ("de", ["1.", "2.", "12."]),
        ("fr", ["1er", "2e", "12e"]),
        ("es", ["1.ª", "2.ª", "12.ª"]),
    ],
)
def test_ordinals(language: str, said: list[str]) -> None:
    assert [catalogue(language).ordinal(number) for number in (1, 2, 12)] == said


@pytest.mark.parametrize(
    ("language", "said"),
    [
        ("en", ["999", "1,234", "12,345", "1,234,567"]),
        ("de", ["999", "1.234", "12.345", "1.234.567"]),
        ("fr", ["999", "1\u202f234", "12\u202f345", "1\u202f234\u202f567"]),
        ("es", ["999", "1234", "12.345", "1.234.567"]),  # Unicode CLDR
    ],
)
def test_thousands(language: str, said: list[str]) -> None:
    numbers = (999, 1234, 12345, 1234567)
    assert [catalogue(language).grouped(number) for number in numbers] == said


@pytest.mark.parametrize(
    ("language", "said"),
    [
        ("de", ("Zwischen den Formrunden jede Runde rechts stricken.", "in jeder 12.")),
        ("fr", ("Entre les tours de façonnage, tricoter à l’endroit chaque tour.", "tous les 12")),
        ("es", ("Entre las vueltas de forma, tejer del derecho cada vuelta.", "cada 12")),
    ],
)
@pytest.mark.parametrize("kind", ["text", "spoken"])
def test_changes_that_are_spread(language: str, said: tuple[str, str], kind: str) -> None:
    source = (EXAMPLES / "curlew-sleeves.loop").read_text("utf-8")
    text = page(source, language, kind)
    for words in said:
        assert words in text
    # No ordinal, and no word for a round, is left from another language or without its capital.
    assert "12th" not in text and "jede runde" not in text


@pytest.mark.parametrize(
    ("language", "said"),
    [
        ("de", "Reihen 1–2 noch 9 Mal wdh."),
        ("fr", "Rép les rangs 1–2 encore 9 fois."),
        ("es", "Rep las hileras 1–2, 9 veces más."),
    ],
)
def test_rows_are_repeated_in_whole_sentences(language: str, said: str) -> None:
    source = (
        'pattern "Q"\nmotif m\n  row 1: k1 * p1 *\n  row 2: k2 * p1 *\npiece one flat\n'
        "  cast on 20\n  work m x10\n  bind off\n"
    )
    assert said in page(source, language)


@pytest.mark.parametrize("language", ["de", "fr", "es"])
def test_the_figures_of_the_notes_on_yarn_have_the_comma_of_the_language(language: str) -> None:
    for name in ("tideline-wrap", "skerry-throw"):
        text = page((EXAMPLES / f"{name}.loop").read_text("utf-8"), language)
        text = text.replace("US 1.5", "")
        assert re.search(r"\d,\d", text)
        assert not re.findall(r"\d\.\d", text)
