"""From a checked source to the bytes of its editions."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from loopwright.check.checked import Checked
from loopwright.edition.document import Document
from loopwright.edition.errata import Change, with_errata
from loopwright.edition.words import make_document

KINDS = ("pdf", "html", "text", "spoken")


@dataclass(frozen=True, slots=True)
class BuildOptions:
    """What to make: `kinds` are of `KINDS`; `changes` are those since the last print, if asked."""

    kinds: tuple[str, ...] = ("pdf", "html", "text")
    size: str | None = None
    units: str | None = None
    paper: Literal["a4", "letter"] = "a4"
    counts: str = "changes"
    changes: tuple[Change, ...] | None = None


def document_of(checked: Checked, options: BuildOptions) -> Document:
    """The words of a checked source. Raises ValueError where it has errors."""
    if checked.has_errors:
        raise ValueError("a pattern with errors is never rendered")
    document = make_document(
        checked.pattern, checked.walks, options.size, options.units, options.counts
    )
    return document if options.changes is None else with_errata(document, options.changes)


def build_editions(
    checked: Checked, options: BuildOptions, name: str
) -> tuple[list[tuple[str, bytes]], list[str]]:
    """The editions as file names and bytes, and a line for each that could not be made.

    An edition that fails for want of native libraries leaves the others whole.
    """
    document = document_of(checked, options)
    made: list[tuple[str, bytes]] = []
    failed: list[str] = []
    for kind in options.kinds:
        if kind == "pdf":
            from loopwright.edition.pdf import NativeLibrariesMissing, render_pdf

            try:
                made.append((f"{name}.pdf", render_pdf(document, options.paper)))
            except NativeLibrariesMissing as error:
                failed.append(str(error))
        elif kind == "html":
            from loopwright.edition.html import render_html

            made.append((f"{name}.html", render_html(document).encode("utf-8")))
        elif kind == "spoken":
            made.append((f"{name}-spoken.txt", _spoken(checked, options).encode("utf-8")))
        else:
            from loopwright.edition.text import render_text

            made.append((f"{name}.txt", render_text(document).encode("utf-8")))
    return made, failed


def _spoken(checked: Checked, options: BuildOptions) -> str:
    """The spoken edition: the size that is asked for, or each in turn."""
    from loopwright.edition.spoken import Spoken, render_spoken

    sizes = (options.size,) if options.size is not None else checked.pattern.sizes
    return render_spoken(
        [
            make_document(checked.pattern, checked.walks, size, options.units, "all", Spoken())
            for size in sizes
        ]
    )
