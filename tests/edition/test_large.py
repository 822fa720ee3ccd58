"""The large-print edition: what its own statement says of it, held against its pages."""

from __future__ import annotations

import io
import re
from pathlib import Path

import pytest

from loopwright.build import BuildOptions, build_editions
from loopwright.compile import check_source
from loopwright.edition.large import FEATURES_PAGE, FEATURES_TEXT
from loopwright.notation.source import Source

ROOT = Path(__file__).parents[2]
EXAMPLES = sorted((ROOT / "examples").glob("*.loop"))


def made(text: str, kinds: tuple[str, ...] = ("text", "html"), **options: object) -> dict[str, str]:
    checked = check_source(Source.of("test.loop", text))
    assert not checked.has_errors, checked.problems
    files, failed = build_editions(checked, BuildOptions(kinds, large=True, **options), "q")  # type: ignore[arg-type]
    assert not failed
    return {name: data.decode() for name, data in files}


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_every_row_is_written_out_and_no_asterisk_is_left(path: Path) -> None:
    files = made(path.read_text("utf-8"))
    assert set(files) == {"q-large.txt", "q-large.html"}
    text = files["q-large.txt"]
    assert "*" not in text
    assert not re.search(r"\bfoll\b", text)
    assert FEATURES_TEXT in text
    assert FEATURES_PAGE in files["q-large.html"]
    for tag in ("<table", "<img", "<svg", "<em", "<i>", "<ul", "<script"):
        assert tag not in files["q-large.html"]


def test_one_size_at_a_time() -> None:
    source = (ROOT / "examples/skerry-throw.loop").read_text("utf-8")
    text = made(source)["q-large.txt"]
    assert not re.search(r"\d \(\d", text)
    assert text.index("88 times") < text.index("118 times") < text.index("148 times")
    page = made(source)["q-large.html"]
    for number in (1, 2, 3):
        assert f'<a href="#size-{number}">' in page
        assert f'id="size-{number}"' in page
    alone = made(source, size="throw")["q-large.txt"]
    assert "118 times" in alone
    assert "148 times" not in alone


def test_a_motif_that_comes_again_is_written_again() -> None:
    source = (
        'pattern "Q"\nmotif m over 2n\n  row 1: * k1 p1 *\n  row 2: knit\npiece p flat\n'
        "  cast on 20\n  work m x2\n  rows 2: knit\n  work m x2\n  bind off\n"
    )
    text = made(source)["q-large.txt"]
    assert "Row 1 (RS): Work (k1, p1) 10 times." in text
    assert "Row 7 (RS): Work (k1, p1) 10 times." in text


def test_what_varies_with_the_repeat_is_said_in_words() -> None:
    source = (
        'pattern "Q"\nmotif m\n  row 1: k1 yo * k1 p1 * yo k1\n  row 2: knit\npiece p flat\n'
        "  cast on 20\n  work m x3\n  bind off\n"
    )
    text = made(source)["q-large.txt"]
    assert "K1, yo, work (k1, p1) again and again to last st, yo, k1." in text


def test_spoken_stays_itself_beside_large_pages() -> None:
    source = 'pattern "Q"\npiece p flat\n  cast on 4\n  row: knit\n  bind off\n'
    assert set(made(source, ("spoken", "text"))) == {"q-spoken.txt", "q-large.txt"}


@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_the_pdf_is_large_upright_and_only_numbered(paper: str) -> None:
    import pikepdf

    checked = check_source(
        Source.of("t.loop", (ROOT / "examples/skerry-throw.loop").read_text("utf-8"))
    )
    options = BuildOptions(("pdf",), large=True, paper=paper, size="lap")  # type: ignore[arg-type]
    files, failed = build_editions(checked, options, "q")
    if failed:
        pytest.skip(failed[0])
    assert files[0][0] == "q-large.pdf"
    again, _ = build_editions(checked, options, "q")
    assert again == files
    with pikepdf.open(io.BytesIO(files[0][1])) as pdf:
        fonts, sizes, colours = set(), set(), set()
        for page in pdf.pages:
            for font in page.Resources.Font.values():
                fonts.add(str(font.BaseFont).split("+")[-1])
            scale = 1.0
            for operands, operator in pikepdf.parse_content_stream(page):
                name = str(operator)
                if name == "cm":
                    scale = abs(float(operands[0])) if float(operands[0]) not in (0, 1) else scale
                elif name == "Tf":
                    sizes.add(round(float(operands[1]) * scale, 1))
                elif name in ("rg", "RG", "g", "G"):
                    colours.add(tuple(float(value) for value in operands))
        assert fonts <= {"Pattern-Label", "Pattern-Label-Semi-Bold"}
        assert sizes
        assert sizes == {22.0, 24.0}
        assert all(set(colour) <= {0.0} or set(colour) <= {1.0} for colour in colours), colours
        assert "/StructTreeRoot" in pdf.Root
