"""The PDF edition: the HTML page set on paper with the bundled fonts."""

from __future__ import annotations

import contextlib
import logging
import re
import shutil
from base64 import b64decode
from types import MappingProxyType
from typing import TYPE_CHECKING, Any, Literal
from xml.etree import ElementTree

from loopwright.edition.engine import load_weasyprint, no_collecting, own_style
from loopwright.edition.html import render_html
from loopwright.edition.indexed import Indexed, blank, indexed, keep_indexed
from loopwright.edition.lean import for_page, names_in
from loopwright.edition.margins import margins_as_artifacts
from loopwright.edition.render import template_folder

if TYPE_CHECKING:
    from collections.abc import Collection, Iterator, Mapping, Sequence
    from pathlib import Path

    from loopwright.edition.document import Document

# A scheme of our own: the pattern's page can name no file, and no other address is answered.
_SCHEME = "loopwright-font:"
_PICTURE_SCHEME = "loopwright-picture:"
_FACES = (
    ("Pattern Text", "normal", 400, "Vollkorn-Regular.ttf"),
    ("Pattern Text", "italic", 400, "Vollkorn-Italic.ttf"),
    ("Pattern Text", "normal", 600, "Vollkorn-SemiBold.ttf"),
    ("Pattern Label", "normal", 400, "Inter-Regular.otf"),
    ("Pattern Label", "normal", 600, "Inter-SemiBold.otf"),
)
_PAPER = {"a4": "A4", "letter": "letter"}
_BAND = re.compile(r'<rect class="row"[^>]*/>')
# No value of an attribute holds a bare ">": the templates escape it.
_VOID = re.compile(r"<((?:meta|img|wbr)\b[^>]*)>")
_PNG = "data:image/png;base64,"
_NEXT_TO_NOTHING = 0.3
"""The part of a page up to which it is worth while to try and do without it."""
# The same letters, closer lines: only so much that nothing runs together.
_CLOSER = """@media print {
  html { line-height: 1.28; }
  section { margin-top: 3.6mm; }
  .trio { margin-top: 3.6mm; }
  .notice { margin-top: 3mm; }
  .part { margin-top: 5.5mm; }
  .part.level-3 { margin-top: 3.4mm; }
  .part h2, .charts h2, .schematics h2 { margin-bottom: 1mm; }
  .lines li { padding-top: 0.16em; padding-bottom: 0.16em; }
  .lines li.note { padding-top: 0.3em; padding-bottom: 0.3em; }
  .charted { margin-top: 2.5mm; }
  /* The sizes that a drawing states of itself go before a style that is given beside the page. */
  .schematic { width: auto !important; height: auto !important; max-height: 46mm; }
}
@page { margin: 13mm 17mm 17mm 17mm; }
"""


def render_pdf(doc: Document, paper: Literal["a4", "letter"]) -> bytes:
    """The pattern as a tagged PDF, its language, title and bookmarks set.

    The bytes depend on the document, the paper, the bundled fonts and the versions of WeasyPrint
    and Pango; never on the time or the process. A letter that the bundled fonts lack is drawn with
    a font of the system. Raises NativeLibrariesMissing where Pango is not installed.
    """
    pictures = frozenset({doc.cloth.src} if doc.cloth is not None else ())
    return pdf_of(render_html(doc), paper, pictures, closer=_CLOSER)


def pdf_of(
    page: str,
    paper: Literal["a4", "letter"],
    pictures: Collection[str] = frozenset(),
    closer: str = "",
) -> bytes:
    """A page of our own templates as a tagged PDF, under the terms of `render_pdf`.

    `pictures` are the ``data:`` addresses that the page may show; `closer` is a style to try where
    the last page holds next to nothing, kept where it saves that page.
    """
    # The bands that mark a row on a screen cost a writer of PDFs as much as the symbols; and a
    # picture's address is read letter by letter, so on paper it has a short one.
    page = _BAND.sub("", page)
    known: dict[str, bytes] = {}
    kept: list[Indexed] = []
    for number, picture in enumerate(sorted(pictures)):
        data = _bytes_of(picture)
        if (parts := indexed(data)) is not None:
            kept.append(parts)
            data = blank(parts)
        known[f"{_PICTURE_SCHEME}{number}"] = data
        page = page.replace(picture, f"{_PICTURE_SCHEME}{number}")
    weasyprint = load_weasyprint()
    with _quiet(), no_collecting():
        from weasyprint.text.fonts import FontConfiguration

        fonts = FontConfiguration()
        try:
            fetcher = _own_fonts_only(known)

            def read(css: str) -> Any:
                return weasyprint.CSS(string=css, font_config=fonts, url_fetcher=fetcher)

            bare, css = parted(page)
            names = names_in(bare)
            styles = [read(for_page(css, names) + _paper_style(paper))]
            html = html_of(bare, fetcher, for_page(own_style(), names, css))

            def laid_out() -> Any:
                return html.render(stylesheets=styles, font_config=fonts, pdf_variant="pdf/ua-1")

            document = laid_out()
            if closer and is_nearly_empty(document.pages):
                styles.append(read(for_page(closer, names)))
                tried = laid_out()
                document = tried if len(tried.pages) < len(document.pages) else document

            def finish(_: Any, pdf: Any) -> None:
                margins_as_artifacts(pdf)
                keep_indexed(pdf, kept)

            result = document.write_pdf(finisher=finish, pdf_variant="pdf/ua-1")
        finally:
            _clear(fonts)
    assert isinstance(result, bytes)
    return result


def parted(page: str) -> tuple[str, str]:
    """A page without its style, and the style: it is read once, however often the page is set."""
    start, end = page.find("<style>"), page.find("</style>")
    if start < 0 or end < 0:
        return page, ""
    return page[:start] + page[end + len("</style>") :], page[start + len("<style>") : end]


def html_of(page: str, fetcher: Any, usual: str = "") -> Any:
    """A page of our own templates as WeasyPrint's HTML. `usual` is the style of the elements by
    themselves, where all of WeasyPrint's own is not asked for.

    The templates close every element, so that but for the elements that have no end the page is
    XML as well, which Python's own parser reads in a twentieth of the time. A page that is no XML
    (a letter that XML does not know) is read as HTML.
    """
    import weasyprint
    from cssselect2 import ElementWrapper  # type: ignore[import-untyped]
    from weasyprint.css.counters import CounterStyle

    class Page(weasyprint.HTML):  # type: ignore[misc]
        def __init__(self) -> None:
            try:
                root = ElementTree.fromstring(_VOID.sub(r"<\1/>", page))
            except ElementTree.ParseError:
                super().__init__(string=page, url_fetcher=fetcher)
                return
            self.base_url = None
            self.url_fetcher = fetcher
            self.media_type = "print"
            self.wrapper_element = ElementWrapper.from_html_root(root, content_language=None)
            self.etree_element = root

        def _ua_stylesheets(self, forms: bool = False) -> Any:
            return [sheet] if usual else super()._ua_stylesheets(forms)

        def _ua_counter_style(self) -> Any:
            return [marks.copy()] if usual else super()._ua_counter_style()

    if usual:
        marks = CounterStyle()
        sheet = weasyprint.CSS(string=usual, counter_style=marks, url_fetcher=fetcher)
    return Page()


def _clear(fonts: Any) -> None:
    """Remove the folder of the faces now, and not when the last of the page is given up: a process
    that has printed its page need not take it apart before it ends."""
    folder = getattr(fonts, "_folder", None)
    if folder is not None:
        shutil.rmtree(folder, ignore_errors=True)


def is_nearly_empty(pages: Sequence[Any]) -> bool:
    """Whether the last of several laid-out pages holds next to nothing.

    Then the whole is worth laying out once more, a little closer.
    """
    if len(pages) < 2:
        return False
    page = pages[-1]._page_box
    # The first box is the text, those behind it are what stands in the margins.
    used = _lowest(page.children[0]) - page.content_box_y()
    return bool(used / page.height < _NEXT_TO_NOTHING)


def _lowest(box: Any) -> float:
    """The lowest edge of what a box draws: its lines, its pictures and the cells of its tables."""
    children = getattr(box, "children", ())
    if not children:
        return float(box.position_y + (box.margin_height() if box.height != "auto" else 0))
    return max(_lowest(child) for child in children)


def _bytes_of(address: str) -> bytes:
    return b64decode(address.removeprefix(_PNG))


def _paper_style(paper: Literal["a4", "letter"]) -> str:
    faces = "".join(
        f'@font-face {{ font-family: "{family}"; font-style: {style}; font-weight: {weight};'
        f' src: url("{_SCHEME}{file}") }}\n'
        for family, style, weight, file in _FACES
    )
    return f"{faces}@page {{ size: {_PAPER[paper]} }}\n"


def _own_fonts_only(pictures: Mapping[str, bytes] = MappingProxyType({})) -> Any:
    """A fetcher that answers for the bundled fonts by name, and for the document's own pictures:
    PNGs by the addresses that stand for them. It refuses every other address.
    """
    from weasyprint.urls import URLFetcher, URLFetcherResponse

    folder = template_folder() / "fonts"
    known = {_SCHEME + file: folder / file for *_, file in _FACES}

    class OwnFontsOnly(URLFetcher):  # type: ignore[misc]
        def fetch(self, url: str, headers: Any = None) -> Any:
            if url in pictures:
                return URLFetcherResponse(url, pictures[url], {"Content-Type": "image/png"})
            if url not in known:
                raise ValueError("a pattern fetches nothing")
            return URLFetcherResponse(url, known[url].read_bytes(), {"Content-Type": "font/sfnt"})

    return OwnFontsOnly()


def bundled_fonts() -> tuple[Path, ...]:
    """The font files of the PDF, in the installed package."""
    folder = template_folder() / "fonts"
    return tuple(folder / file for *_, file in _FACES)


@contextlib.contextmanager
def _quiet() -> Iterator[None]:
    """Keep what WeasyPrint and fontTools log about our own style sheet from the user's screen."""
    loggers = [logging.getLogger(name) for name in ("weasyprint", "fontTools")]
    levels = [logger.level for logger in loggers]
    for logger in loggers:
        logger.setLevel(logging.CRITICAL + 1)
    try:
        yield
    finally:
        for logger, level in zip(loggers, levels, strict=True):
            logger.setLevel(level)
