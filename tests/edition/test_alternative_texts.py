"""What stands for a picture: in the language of the page, and said where there is none."""

from __future__ import annotations

import io
import re
import sys
from html.parser import HTMLParser
from pathlib import Path

import pytest

from loopwright.build import BuildOptions, build_editions
from loopwright.compile import Checked, check_source
from loopwright.edition.chart_words import group_words, meaning
from loopwright.edition.language import LANGUAGES, catalogue
from loopwright.notation.source import Source
from loopwright.picture.cells import charts_of

sys.path.insert(0, str(Path(__file__).parent))
from pdf_tree import outline_of

EXAMPLES = Path(__file__).parents[2] / "examples"
OTHERS = [language for language in LANGUAGES if language != "en"]

BURRS = """pattern "Burr Mat"
  sizes small, large
  gauge 20 stitches 28 rows = 10 cm
yarn w "Plain wool": 50 g 100 m, weight 4
shade a "Ash" of w
strand A feeds a x3
motif burrs over 4n + 3
  row 1: k1 * (k1 yo k1) in 1 p3tog * k2
  row 2: purl
  row 3: k1 * p3tog (k1 p1 k1) in 1 * k2
  row 4: purl
motif held
  row 1: k2 hold 3 as thumb * k1 *
  row 2: k1 * k1 *
  row 3: k2 take thumb * k1 *
  row 4: purl
motif spare
  row 1: k2 hold 3 as pocket * k1 *
piece mat flat
  cast on 43/63 in A
  work burrs x10
  rows 2: k2 * k1 *
  work held x1
  bind off
"""


def checked_of(text: str) -> Checked:
    checked = check_source(Source.of("test.loop", text))
    assert not checked.has_errors, checked.problems
    return checked


def pages(checked: Checked, *kinds: str, **options: object) -> dict[str, bytes]:
    """The editions by the ends of their names."""
    made, failed = build_editions(checked, BuildOptions(kinds, **options), "p")  # type: ignore[arg-type]
    if failed:
        pytest.skip(failed[0])
    return {name.removeprefix("p"): data for name, data in made}


class _Texts(HTMLParser):
    """Every text that stands for a picture or names a part of a page."""

    def __init__(self) -> None:
        super().__init__()
        self.found: list[str] = []
        self.inside = 0

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.inside += tag == "svg"
        self.found += [value or "" for name, value in attrs if name in ("alt", "aria-label")]
        self.title = tag == "title" and self.inside > 0

    def handle_endtag(self, tag: str) -> None:
        self.inside -= tag == "svg"
        self.title = False

    def handle_data(self, data: str) -> None:
        if getattr(self, "title", False):
            self.found.append(data)


def alternatives(page: bytes) -> list[str]:
    parser = _Texts()
    parser.feed(page.decode("utf-8"))
    return parser.found


@pytest.mark.parametrize("language", OTHERS)
@pytest.mark.parametrize("name", ["plover-spiral", "eider-mitten"])
def test_no_alternative_text_is_left_in_english(name: str, language: str) -> None:
    checked = checked_of((EXAMPLES / f"{name}.loop").read_text("utf-8"))
    english = alternatives(pages(checked, "html")[".html"])
    mine = alternatives(pages(checked, "html", language=language)[".html"])
    assert len(english) == len(mine) >= 8
    kinds = {"Chart", "Symbol"}
    kinds |= {"The", "Schematic"} if name == "eider-mitten" else set()
    assert kinds <= {text.split(" ")[0] for text in english}
    assert [one for one, other in zip(english, mine, strict=True) if one == other] == []
    words = re.compile(
        r"\b(the|of|rows?|rounds?|squares?|seen|shows|works?|turns|stitch(es)?|size|symbol|chart|"
        r"knit|purl|yarn|widest|width|length|round|from|words?)\b",
        re.IGNORECASE,
    )
    # The sizes and the motifs are called by the writer.
    assert [text for text in mine if words.search(text)] == []


@pytest.mark.parametrize("language", OTHERS)
def test_the_alternative_texts_of_a_pdf_are_those_of_the_page(language: str) -> None:
    import pikepdf

    checked = checked_of(BURRS)
    made = pages(checked, "pdf", "html", language=language)
    with pikepdf.open(io.BytesIO(made[".pdf"])) as pdf:
        found = {
            str(item["/Alt"])
            for item in pdf.objects
            if isinstance(item, pikepdf.Dictionary) and "/Alt" in item
        }
    drawn = {text for text in alternatives(made[".html"].split(b"<form")[0]) if len(text) > 12}
    assert len(found) > 6
    assert found <= drawn


@pytest.mark.parametrize(
    ("language", "said"),
    [
        ("en", "(k1, yo, k1) in the next stitch"),
        ("de", "(1 re, 1 U, 1 re) in die nächste Masche"),
        ("fr", "(1 m end, 1 j, 1 m end) dans la maille suivante"),
        ("es", "(1 d, 1 heb, 1 d) en el punto siguiente"),
    ],
)
def test_a_group_in_a_key_is_said_as_its_row_says_it(language: str, said: str) -> None:
    checked = checked_of(BURRS)
    page = pages(checked, "html", language=language)[".html"].decode("utf-8")
    assert f">{said}</td>" in page
    # The key, its alternative text, the chart's, and the row.
    assert page.count(said.partition(")")[0]) > 3


def test_a_group_in_uk_terms_names_its_yarn_overs_by_their_places() -> None:
    text = BURRS.replace("(k1 yo k1) in 1", "(k1 yo p1) in 1").replace("(k1 p1 k1)", "(yo k1 yo)")
    charts, _ = charts_of((checked := checked_of(text)).pattern, checked.walks, (0,))
    groups = [entry.group for entry in charts[0].key if entry.group is not None]
    uk = catalogue("en", "uk")
    # What lies beyond the edge of a group is not known.
    assert [group_words(group, uk) for group in groups] == [
        "(k1, yfrn, p1) in the next stitch",
        "(yo, k1, yo) in the next stitch",
    ]


def test_a_group_into_several_stitches() -> None:
    checked = checked_of(
        'pattern "P"\nmotif m over 4n + 2\n  row 1: k1 * (k1 p1 k1) in 3 k1 * k1\n  row 2: purl\n'
        "piece p flat\n  cast on 22\n  work m x2\n  bind off\n"
    )
    charts, _ = charts_of(checked.pattern, checked.walks, (0,))
    (group,) = [entry.group for entry in charts[0].key if entry.group is not None]
    said = "(1 re, 1 li, 1 re) in die nächsten 3 Maschen"
    assert group_words(group, catalogue("de")) == said


def test_several_modifiers_of_a_key_are_said() -> None:
    assert meaning("k2tog tbl", catalogue("de")) == "2 re zus verschr"
    assert meaning("sl wyif kwise", catalogue("de")) != "sl wyif kwise"
    assert meaning("MB", catalogue("de")) == "MB"


# --- no chart -------------------------------------------------------------


@pytest.mark.parametrize(
    ("language", "said"),
    [
        ("en", "No chart is drawn of Held: it holds, takes or picks up stitches."),
        ("de", "Von Held ist keine Strickschrift gezeichnet:"),
        ("fr", "Il n’y a pas de grille de Held"),
        ("es", "No hay gráfico de Held:"),
    ],
)
def test_a_page_says_where_a_chart_would_stand_that_there_is_none(language: str, said: str) -> None:
    page = pages(checked_of(BURRS), "html", language=language)[".html"].decode("utf-8")
    main = page.partition("</main>")[0]
    assert main.count(said) == 1
    # Below the chart that there is, above the rows; nothing is said of a motif that is not worked.
    assert main.index("chart-1") < main.index(said) < main.index('<ul class="lines"')
    assert "Spare" not in main


def test_a_pdf_says_so_too_and_editions_without_charts_do_not() -> None:
    checked = checked_of(BURRS)
    said = "No chart is drawn"
    made = pages(checked, "pdf", "text", "spoken", "lesson")
    assert said in outline_of(made[".pdf"])
    large = pages(checked, "html", "text", large=True)
    for name, data in {**made, **large}.items():
        if name != ".pdf":
            assert said not in data.decode("utf-8"), name


def test_nothing_is_said_where_every_motif_has_its_chart() -> None:
    checked = checked_of((EXAMPLES / "heron-scarf.loop").read_text("utf-8"))
    assert "No chart" not in pages(checked, "html")[".html"].decode("utf-8")
    plain = 'pattern "P"\npiece p flat\n  cast on 20\n  rows 4: knit\n  bind off\n'
    assert "No chart" not in pages(checked_of(plain), "html")[".html"].decode("utf-8")


@pytest.mark.parametrize(("kind", "word"), [("flat", "rows"), ("round", "rounds")])
def test_a_motif_that_is_too_long_is_said_to_be_in_its_own_word(kind: str, word: str) -> None:
    rows = "".join(f"  row {at}: k{at % 40 + 1} p{49 - at % 40}\n" for at in range(1, 403))
    head = "motif long over 50 round\n" if kind == "round" else "motif long over 50\n"
    text = f'pattern "P"\n{head}{rows}piece p {kind}\n  cast on 50\n  work long x1\n  bind off\n'
    page = pages(checked_of(text), "html")[".html"].decode("utf-8")
    assert f"No chart is drawn of Long: it has more than 400 {word}." in page


def test_a_size_without_a_chart_is_named_and_hides_no_other() -> None:
    checked = checked_of(
        'pattern "P"\n  sizes s, m, l\nmotif wide\n  row 1: k20/400/30 p2\n  row 2: k2 p20/400/30\n'
        "piece p flat\n  cast on 22/402/32\n  work wide x2\n  bind off\n"
    )
    main = pages(checked, "html")[".html"].decode("utf-8").partition("</main>")[0]
    assert re.findall(r"Chart: ([^<]*)<", main) == ["Wide, size s", "Wide, size l"]
    assert main.count("No chart is drawn of Wide, size m: no small number of stitches") == 1
    german = pages(checked, "html", language="de")[".html"].decode("utf-8").partition("</main>")[0]
    assert re.findall(r"Strickschrift: ([^<]*)<", german) == ["Wide, Größe s", "Wide, Größe l"]
