"""How the PDF is made sooner: what is left out, put off or named beforehand changes no page."""

from __future__ import annotations

import gc
import io
import subprocess
import sys
import tempfile
from base64 import b64encode
from pathlib import Path
from xml.etree.ElementTree import Element

import pikepdf
import pytest
from PIL import Image

from loopwright.build import BuildOptions, build_editions, document_of
from loopwright.compile import check_source
from loopwright.edition.document import Document
from loopwright.edition.engine import load_weasyprint
from loopwright.edition.html import render_html
from loopwright.edition.indexed import blank, indexed
from loopwright.edition.lean import for_page, names_in
from loopwright.edition.pdf import html_of, parted, pdf_of, render_pdf
from loopwright.edition.pictures import with_pictures
from loopwright.notation.source import Source

EXAMPLES = sorted((Path(__file__).parents[2] / "examples").glob("*.loop"))


def hat() -> Document:
    """A page with next to nothing on it."""
    return Document(
        language="en", title="Plain Hat", designer="", summary="", level="", sizes=(),
        finished=None, gauge=(), needles=(), yarns=(), shades=(), notions=(), notes=(),
        abbreviations=(), sections=(), cautions=(), notices=(),
    )  # fmt: skip


def test_a_page_is_parted_from_its_style() -> None:
    whole = render_html(hat())
    page, style = parted(whole)
    assert style and page.replace("</head>", f"<style>{style}</style>\n</head>").split() == (
        whole.split()
    )
    lean = for_page(style, names_in(page))
    assert "@media screen" in style and "@media screen" not in lean
    assert lean.count("@media print") == style.count("@media print") > 0
    assert parted("<p>plain") == ("<p>plain", "")


def tree(element: Element) -> list[object]:
    """Every element, attribute and text, in order; but for the names of namespaces, which are no
    attributes to XML."""
    return [
        (
            each.tag,
            sorted(item for item in each.attrib.items() if not item[0].endswith("}xmlns")),
            each.text or "",
            each.tail or "",
        )
        for each in element.iter()
    ]


@pytest.mark.parametrize("source", EXAMPLES, ids=lambda path: path.stem)
@pytest.mark.parametrize("large", [False, True], ids=["", "large"])
def test_a_page_read_as_xml_is_the_page_read_as_html(source: Path, large: bool) -> None:
    checked = check_source(Source.of(source.name, source.read_text("utf-8")))
    options = BuildOptions(kinds=("html",), size=checked.pattern.sizes[0], large=large)
    if large:
        page = build_editions(checked, options, "page")[0][0][1].decode("utf-8")
    else:
        words = document_of(checked, options)
        page = render_html(with_pictures(words, checked.pattern, checked.walks, options.size))
    page, _ = parted(page)
    weasyprint = load_weasyprint()
    mine = html_of(page, None)
    theirs = weasyprint.HTML(string=page)
    assert mine.wrapper_element.in_html_document
    # Between the parts of the head and behind the body the two keep other line ends; no text.
    for part in ("head", "body"):
        one, other = mine.etree_element.find(part), theirs.etree_element.find(part)
        one.tail = other.tail = one[-1].tail = other[-1].tail = None
        one.text = other.text = None
        assert tree(one) == tree(other)


@pytest.mark.parametrize("word", ["a\x01b", "a\x0cb", "a\x00b", "a\ufffeb"])
def test_a_letter_that_xml_does_not_know_is_read_as_html(word: str) -> None:
    load_weasyprint()
    page = f"<!DOCTYPE html><html lang='en'><title>a</title><body><p>{word}</p></body></html>"
    found = html_of(page, None).etree_element.find("body/p")
    assert found is not None and found.text[0] == "a" and found.text[-1] == "b"


def test_a_page_is_laid_out_with_a_blank_and_shows_the_picture() -> None:
    """In the place of the cloth WeasyPrint meets an empty picture of the same size."""
    spots = Image.effect_noise((31, 17), 90).convert("P")
    made = io.BytesIO()
    spots.save(made, "PNG")
    parts = indexed(made.getvalue())
    assert parts is not None
    empty = Image.open(io.BytesIO(blank(parts)))
    empty.load()
    assert empty.size == (31, 17) and len(set(empty.tobytes())) == 1
    src = "data:image/png;base64," + b64encode(made.getvalue()).decode()
    body = f'<body><img src="{src}" alt="b"></body>'
    page = f'<html lang="en"><head><title>a</title></head>{body}</html>'
    with pikepdf.open(io.BytesIO(pdf_of(page, "a4", {src}))) as pdf:
        (image,) = (made for _, made in pdf.pages[0].Resources.XObject.items())
        shown = pikepdf.PdfImage(image).as_pil_image().convert("RGB")
    assert shown.size == (31, 17)
    assert shown.tobytes() == spots.convert("RGB").tobytes()


def test_a_page_leaves_no_folder_behind(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.setattr(tempfile, "tempdir", str(tmp_path))
    collecting = gc.isenabled()
    gc.disable()
    try:
        render_pdf(hat(), "a4")
        assert not list(tmp_path.iterdir())
    finally:
        if collecting:
            gc.enable()


def test_types_of_c_named_beforehand_are_those_that_cffi_finds() -> None:
    load_weasyprint()
    from weasyprint.text.ffi import ffi

    names = [
        "char[]", "char[4]", "PangoRectangle *", "FcChar8 **", "PangoLogAttr[]", "unsigned int *",
        "hb_tag_t[100]", "hb_codepoint_t[29]", "PangoFcFontMap *",
    ]  # fmt: skip
    known = ffi._parsed_types
    assert type(known).__name__ == "Known", "cffi keeps its types otherwise: see _name_types"
    mine = [ffi.typeof(name) for name in names]
    ffi._parsed_types = {}
    try:
        assert all(one is ffi.typeof(name) for one, name in zip(mine, names, strict=True))
    finally:
        ffi._parsed_types = known


def test_without_harfbuzz_subset_fonttools_is_loaded_after_all() -> None:
    """As on a machine with an old HarfBuzz: the tools that were put off make the PDF's fonts."""
    probe = (
        "import sys\n"
        "from loopwright.edition.engine import load_weasyprint\n"
        "from loopwright.edition.pdf import pdf_of\n"
        "load_weasyprint()\n"
        "assert 'fontTools.subset' not in sys.modules\n"
        "from weasyprint.pdf import fonts\n"
        "fonts.harfbuzz_subset = None\n"
        "page = pdf_of('<html lang=en><title>a</title><p>k2tog', 'a4')\n"
        "assert page.startswith(b'%PDF')\n"
        "print('fontTools.subset' in sys.modules)\n"
    )
    run = subprocess.run(
        [sys.executable, "-c", probe], capture_output=True, encoding="utf-8", check=True, timeout=60
    )
    assert run.stdout == "True\n"
