"""Fixed samples of every edition: its text, and where it has any, its structure.

Three patterns that differ: flat in three sizes and two strands, in the round with shaping, and
several pieces with a holder. The English text edition has its samples in ``tests/test_examples``.
Read a changed sample as a knitter before it is accepted.
"""

from __future__ import annotations

import sys
from html.parser import HTMLParser
from pathlib import Path

import pytest
from shared.editions import edition
from syrupy.assertion import SnapshotAssertion

sys.path.insert(0, str(Path(__file__).parent))
import pdf_tree

THREE = ("skerry-throw", "gull-hat", "eider-mitten")
_BLOCKS = {"h1", "h2", "h3", "h4", "p", "li", "th", "td", "caption", "title", "legend", "button"}


class Outline(HTMLParser):
    """The blocks of a page, a line each, in order: the tag, and what it says or shows."""

    def __init__(self) -> None:
        super().__init__()
        self.lines: list[str] = []
        self.open: list[list[str]] = []
        self.silent = 0

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        told = dict(attrs)
        if tag in ("style", "script"):
            self.silent += 1
        if tag == "img":
            self.lines.append(f"img {told.get('alt')}")
        if tag in _BLOCKS:
            place = len(self.lines)
            self.lines.append("")
            scope = f"[{told['scope']}]" if told.get("scope") else ""
            self.open.append([tag, f"{tag}{scope}", str(place)])

    def handle_endtag(self, tag: str) -> None:
        if tag in ("style", "script"):
            self.silent -= 1
        if self.open and self.open[-1][0] == tag:
            _, head, place, *texts = self.open.pop()
            self.lines[int(place)] = f"{head} {' '.join(''.join(texts).split())}".rstrip()

    def handle_data(self, data: str) -> None:
        if self.open and not self.silent:
            self.open[-1].append(data)


def outline_of(page: bytes) -> str:
    reader = Outline()
    reader.feed(page.decode())
    assert not reader.open
    return "\n".join(reader.lines)


@pytest.mark.parametrize("name", THREE)
@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_pdf(name: str, paper: str, snapshot: SnapshotAssertion) -> None:
    outline = pdf_tree.outline_of(edition(name, "pdf", paper=paper))
    assert "\ufffd" not in outline
    if paper == "a4":
        assert outline == snapshot
    else:  # the same words in the same order on either paper
        assert "".join(outline.split()) == "".join(
            pdf_tree.outline_of(edition(name, "pdf")).split()
        )


@pytest.mark.parametrize("name", THREE)
def test_html(name: str, snapshot: SnapshotAssertion) -> None:
    assert outline_of(edition(name, "html")) == snapshot


@pytest.mark.parametrize("name", THREE)
def test_spoken(name: str, snapshot: SnapshotAssertion) -> None:
    sizes = {"skerry-throw": "throw", "gull-hat": "medium", "eider-mitten": "woman"}
    assert edition(name, "spoken", size=sizes[name]).decode() == snapshot


@pytest.mark.parametrize("name", THREE)
def test_lesson(name: str, snapshot: SnapshotAssertion) -> None:
    sizes = {"skerry-throw": "throw", "gull-hat": "medium", "eider-mitten": "woman"}
    assert edition(name, "lesson", size=sizes[name]).decode() == snapshot


@pytest.mark.parametrize("name", THREE[1:])
@pytest.mark.parametrize("language", ["de", "fr", "es", "uk"])
def test_text_in_other_words(name: str, language: str, snapshot: SnapshotAssertion) -> None:
    options = {"terms": "uk"} if language == "uk" else {"language": language}
    assert edition(name, "text", **options).decode() == snapshot


@pytest.mark.parametrize("language", ["de", "fr", "es"])
def test_spoken_in_other_languages(language: str, snapshot: SnapshotAssertion) -> None:
    size, name = "throw", "skerry-throw"
    assert edition(name, "spoken", size=size, language=language).decode() == snapshot


@pytest.mark.parametrize("language", ["de", "fr", "es"])
def test_lesson_in_other_languages(language: str, snapshot: SnapshotAssertion) -> None:
    size, name = "woman", "eider-mitten"
    assert edition(name, "lesson", size=size, language=language).decode() == snapshot


def test_pdf_in_german(snapshot: SnapshotAssertion) -> None:
    assert pdf_tree.outline_of(edition("gull-hat", "pdf", language="de")) == snapshot


@pytest.mark.parametrize("name", THREE[:2])
def test_large_text(name: str, snapshot: SnapshotAssertion) -> None:
    size = {"skerry-throw": "lap", "gull-hat": "small"}[name]
    assert edition(name, "text", large=True, size=size).decode() == snapshot


def test_large_pages(snapshot: SnapshotAssertion) -> None:
    page = outline_of(edition("gull-hat", "html", large=True))
    assert page == snapshot
    outline = pdf_tree.outline_of(edition("gull-hat", "pdf", large=True))
    assert squeezed(outline) == squeezed(page)


def squeezed(outline: str) -> str:
    """What an outline says without its tags; a page's title stands in no tag on paper."""
    lines = (line.strip().partition(" ") for line in outline.splitlines())
    return "".join("".join(said.split()) for tag, _, said in lines if tag != "title")
