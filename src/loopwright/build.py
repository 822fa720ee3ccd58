"""From a checked source to the bytes of its editions."""

from __future__ import annotations

from contextlib import suppress
from typing import TYPE_CHECKING, Literal

from loopwright.check.checked import Checked
from loopwright.edition.catalogue import Catalogue
from loopwright.edition.direction import isolator
from loopwright.edition.document import ClothPicture, Document, Personal
from loopwright.edition.language import catalogue
from loopwright.edition.pictures import cloth_picture, with_pictures
from loopwright.edition.voice import Voice
from loopwright.edition.words import make_document
from loopwright.record import dataclass, replace

if TYPE_CHECKING:
    from collections.abc import Callable

    from loopwright.edition.errata import Change

KINDS = ("pdf", "html", "text", "spoken", "lesson")
_PAGES = ("pdf", "html", "text")


@dataclass(frozen=True, slots=True)
class BuildOptions:
    """What to make: `kinds` are of `KINDS`; `changes` are those since the last print, if asked.

    `language` is one of `LANGUAGES`, `terms` (of `TERMS`) are the ``us`` or ``uk`` ones of English;
    `large` asks for the pages in large print instead.
    """

    kinds: tuple[str, ...] = ("pdf", "html", "text")
    size: str | None = None
    units: str | None = None
    paper: Literal["a4", "letter"] = "a4"
    counts: str = "changes"
    changes: tuple[Change, ...] | None = None
    personal: Personal | None = None
    terms: str = "us"
    language: str = "en"
    large: bool = False

    @property
    def words(self) -> Catalogue:
        """The words of the pages. Raises ValueError for a language or terms that are not there."""
        return catalogue(self.language, self.terms)


def document_of(checked: Checked, options: BuildOptions) -> Document:
    """The words of a checked source. Raises ValueError where it has errors."""
    if checked.has_errors:
        raise ValueError("a pattern with errors is never rendered")
    document = make_document(
        checked.pattern,
        checked.walks,
        options.size,
        options.units,
        options.counts,
        Voice(options.words),
    )
    if options.changes is not None:
        from loopwright.edition.errata import with_errata

        document = with_errata(document, options.changes)
    return replace(document, personal=options.personal)


def has_cloth(options: BuildOptions) -> bool:
    """Whether one of the editions shows the cloth."""
    return not options.large and bool({"pdf", "html"} & set(options.kinds))


def cloth_of(checked: Checked, options: BuildOptions) -> ClothPicture | None:
    """The cloth that the editions show; None where it cannot be drawn."""
    sizes = checked.pattern.sizes
    size = 0 if options.size is None else sizes.index(options.size)
    return cloth_picture(checked.pattern, checked.walks, size, options.words)


def _make_ready() -> None:
    """Load what sets the page, if it can be loaded, while there is something else to wait for."""
    from loopwright.edition.engine import NativeLibrariesMissing, load_weasyprint

    with suppress(NativeLibrariesMissing):
        load_weasyprint()


def _apart(checked: Checked, document: Document) -> Document:
    """A document for a page, its right-to-left texts set apart."""
    from loopwright.edition.render import set_apart

    return set_apart(document, isolator(checked.source.text))


def _bytes(checked: Checked, text: str) -> bytes:
    """A plain text, its right-to-left texts set apart."""
    apart = isolator(checked.source.text)
    return (text if apart is None else apart(text)).encode("utf-8")


def build_editions(
    checked: Checked,
    options: BuildOptions,
    name: str,
    cloth: Callable[[], ClothPicture | None] | None = None,
) -> tuple[list[tuple[str, bytes]], list[str]]:
    """The editions as file names and bytes, and a line for each that could not be made.

    An edition that fails for want of native libraries leaves the others whole. `cloth` gives the
    picture of `cloth_of` where it is drawn elsewhere meanwhile.
    """
    if options.large:
        return _large(checked, options, name)
    document = document_of(checked, options)
    if has_cloth(options):
        if cloth is not None and "pdf" in options.kinds:
            _make_ready()
        document = with_pictures(
            document, checked.pattern, checked.walks, options.size, options.units, cloth
        )
    made: list[tuple[str, bytes]] = []
    failed: list[str] = []
    for kind in options.kinds:
        if kind == "pdf":
            from loopwright.edition.engine import NativeLibrariesMissing
            from loopwright.edition.pdf import render_pdf

            try:
                made.append((f"{name}.pdf", render_pdf(_apart(checked, document), options.paper)))
            except NativeLibrariesMissing as error:
                failed.append(str(error))
        elif kind == "html":
            from loopwright.edition.web import render_page

            sizes = [_apart(checked, d) for d in _pages_of_sizes(checked, options, document)]
            page = render_page(_apart(checked, document), sizes)
            made.append((f"{name}.html", page.encode("utf-8")))
        elif kind == "spoken":
            made.append((f"{name}-spoken.txt", _bytes(checked, _spoken(checked, options))))
        elif kind == "lesson":
            made.append((f"{name}-lesson.txt", _bytes(checked, _lesson(checked, options))))
        else:
            from loopwright.edition.text import render_text

            made.append((f"{name}.txt", _bytes(checked, render_text(document))))
    return made, failed


def _pages_of_sizes(checked: Checked, options: BuildOptions, document: Document) -> list[Document]:
    """What the page shows when one size is picked; none where it has one size only.

    The cloth is drawn once: it says itself of which size it is.
    """
    if options.size is not None or len(checked.pattern.sizes) < 2:
        return []
    out = []
    for size in checked.pattern.sizes:
        alone = document_of(checked, replace(options, size=size))
        drawn = with_pictures(
            alone, checked.pattern, checked.walks, size, options.units, lambda: document.cloth
        )
        out.append(drawn)
    return out


def _each_size(
    checked: Checked, options: BuildOptions, counts: str, voice: type[Voice]
) -> list[Document]:
    """The document of the size that is asked for, or of each in turn."""
    sizes = (options.size,) if options.size is not None else checked.pattern.sizes
    return [
        make_document(
            checked.pattern, checked.walks, size, options.units, counts, voice(options.words)
        )
        for size in sizes
    ]


def _large(
    checked: Checked, options: BuildOptions, name: str
) -> tuple[list[tuple[str, bytes]], list[str]]:
    """The pages in large print; editions that have no pages stay as they are."""
    from loopwright.edition.large import Large, render_large_html, render_large_text

    if checked.has_errors:
        raise ValueError("a pattern with errors is never rendered")
    documents = _each_size(checked, options, options.counts, Large)
    if options.changes is not None:
        from loopwright.edition.errata import with_errata

        documents[-1] = with_errata(documents[-1], options.changes)
    others = tuple(kind for kind in options.kinds if kind not in _PAGES)
    made, failed = build_editions(checked, replace(options, kinds=others, large=False), name)
    for kind in (kind for kind in options.kinds if kind in _PAGES):
        if kind == "text":
            made.append((f"{name}-large.txt", _bytes(checked, render_large_text(documents))))
            continue
        page = render_large_html([_apart(checked, doc) for doc in documents])
        if kind == "html":
            made.append((f"{name}-large.html", page.encode("utf-8")))
            continue
        from loopwright.edition.engine import NativeLibrariesMissing
        from loopwright.edition.pdf import pdf_of

        try:
            made.append((f"{name}-large.pdf", pdf_of(page, options.paper)))
        except NativeLibrariesMissing as error:
            failed.append(str(error))
    return made, failed


def _lesson(checked: Checked, options: BuildOptions) -> str:
    """The teaching sheet of the size that is asked for, or of each in turn."""
    from loopwright.edition.lesson import make_lesson, render_lesson

    pattern, walks = checked.pattern, checked.walks
    documents = _each_size(checked, options, "changes", Voice)
    first = pattern.sizes.index(options.size) if options.size is not None else 0
    return render_lesson(
        tuple(
            make_lesson(pattern, walks, size, document, Voice(options.words))
            for size, document in enumerate(documents, first)
        )
    )


def _spoken(checked: Checked, options: BuildOptions) -> str:
    """The spoken edition: the size that is asked for, or each in turn."""
    from loopwright.edition.spoken import Spoken, render_spoken

    return render_spoken(_each_size(checked, options, "all", Spoken))
