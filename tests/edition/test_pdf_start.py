"""How the PDF is made sooner: what is left out, put off or named beforehand changes no page."""

from __future__ import annotations

import gc
import subprocess
import sys
import tempfile
from pathlib import Path

import pytest

from loopwright.edition.document import Document
from loopwright.edition.html import render_html
from loopwright.edition.pdf import for_paper, load_weasyprint, render_pdf


def hat() -> Document:
    """A page with next to nothing on it."""
    return Document(
        language="en", title="Plain Hat", designer="", summary="", level="", sizes=(),
        finished=None, gauge=(), needles=(), yarns=(), shades=(), notions=(), notes=(),
        abbreviations=(), sections=(), cautions=(), notices=(),
    )  # fmt: skip


def test_the_style_for_screens_alone_is_left_out_on_paper() -> None:
    page = (
        "<style>\na { b: c }\n@media screen { x { y: z } p { q: r } }\n@page { margin: 0 }\n"
        "@media screen and (min-width: 1rem) {\n  d { e: f }\n}\n@media print { g { h: i } }\n"
        "</style>@media screen { stays }"
    )
    assert for_paper(page) == (
        "<style>\na { b: c }\n\n@page { margin: 0 }\n\n@media print { g { h: i } }\n"
        "</style>@media screen { stays }"
    )
    whole = render_html(hat())
    style = whole.partition("</style>")[0]
    assert "@media screen" in style
    lean = for_paper(whole).partition("</style>")[0]
    assert "@media screen" not in lean and lean.count("{") == lean.count("}")
    assert lean.count("@media print") == style.count("@media print") > 0


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
        "from loopwright.edition.pdf import load_weasyprint, pdf_of\n"
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
