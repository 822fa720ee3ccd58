"""A PDF made from a hostile source holds nothing that acts: no script, no launch, no attachment."""

from __future__ import annotations

import io
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pikepdf
import pytest

from loopwright.build import BuildOptions, build_editions
from loopwright.compile import check_source
from loopwright.notation.source import Source

THROW = Path(__file__).parents[2].joinpath("examples/skerry-throw.loop").read_text("utf-8")
EVIL = (
    "<script>app.alert(1)</script><a href='javascript:1'>{{ 7*7 }}</a></style><img src="
    "'file:///etc/passwd'><link rel=attachment href='file:///etc/passwd'>url(http://x.invalid/)"
    "<iframe src='data:text/html,1'></iframe><svg onload=alert(1)><!-- ]]> %PDF /JS (1) /Launch"
)
# What a viewer would act upon or open, by ISO 32000: actions, scripts, files, forms, media.
ACTING = {
    "/JS", "/JavaScript", "/Launch", "/OpenAction", "/AA", "/EmbeddedFile", "/EmbeddedFiles",
    "/AF", "/SubmitForm", "/ImportData", "/GoToR", "/GoToE", "/RichMedia", "/Movie", "/Sound",
    "/Rendition", "/XFA", "/AcroForm", "/URI", "/FileAttachment", "/Filespec",
}  # fmt: skip


def parts(thing: Any, seen: set[tuple[int, int]]) -> Iterator[str]:
    """Each key and each name in a PDF object and all that it reaches."""
    if isinstance(thing, pikepdf.Object) and thing.is_indirect:
        if thing.objgen in seen:
            return
        seen.add(thing.objgen)
    if isinstance(thing, pikepdf.Dictionary | pikepdf.Stream):
        for key, value in thing.items():
            yield key
            yield from parts(value, seen)
    elif isinstance(thing, pikepdf.Array):
        for value in thing:
            yield from parts(value, seen)
    elif isinstance(thing, pikepdf.Name):
        yield str(thing)


def names_in(pdf: pikepdf.Pdf) -> set[str]:
    seen: set[tuple[int, int]] = set()
    return {name for thing in (pdf.Root, *pdf.objects) for name in parts(thing, seen)}


def test_the_search_finds_what_acts() -> None:
    with pikepdf.new() as pdf:
        pdf.add_blank_page()
        action = pikepdf.Dictionary(S=pikepdf.Name.JavaScript, JS=pikepdf.String("1"))
        pdf.Root.OpenAction = pdf.make_indirect(action)
        assert names_in(pdf) & ACTING == {"/OpenAction", "/JavaScript", "/JS"}


@pytest.mark.parametrize("large", [False, True])
def test_a_pdf_is_inert(large: bool) -> None:
    quoted = EVIL.replace('"', "'")
    text = THROW
    for old in ("Skerry Throw", "Marit Solheim", "Worsted wool", "Kelp", "Finishing"):
        text = text.replace(f'"{old}"', f'"{quoted}"')
    text = text.replace('note "Carry', f'note "{quoted} Carry')
    checked = check_source(Source.of("evil.loop", text))
    assert not checked.has_errors
    made, failed = build_editions(checked, BuildOptions(("pdf",), large=large), "evil")
    if failed:
        pytest.skip(failed[0])
    with pikepdf.open(io.BytesIO(made[0][1])) as pdf:
        names = names_in(pdf)
        assert {"/Page", "/StructTreeRoot"} <= names
        assert names & ACTING == set()
        assert len(pdf.attachments) == 0
        for page in pdf.pages:
            for note in page.get("/Annots", []):
                # Links inside the document are all that a page may hold.
                assert note.Subtype == "/Link"
                assert "/Dest" in note or note.A.S == "/GoTo"
        title = str(pdf.docinfo.Title)
    assert "{{ 7*7 }}" in title
    assert "49" not in title
