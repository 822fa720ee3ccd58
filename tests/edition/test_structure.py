"""What a PDF tells a machine that reads it aloud: walked through its structure tree.

This is a part of what PDF/UA-1 (ISO 14289-1) asks for, and no claim that a file conforms to it.
"""

from __future__ import annotations

import io
import re
import sys
from functools import cache
from html import unescape
from itertools import pairwise
from pathlib import Path

import pikepdf
import pytest
from shared.editions import checked_example, edition

from loopwright.build import BuildOptions, document_of
from loopwright.edition.html import render_html
from loopwright.edition.pictures import with_pictures

sys.path.insert(0, str(Path(__file__).parent))
import pdf_tree

CASES = [
    ("skerry-throw", "a4", "en"),
    ("sandpiper-sock", "letter", "en"),
    ("eider-mitten", "a4", "de"),
    ("fernbank-scarf", "letter", "en"),
    ("large skerry-throw", "a4", "en"),
]
PICTURED = [case for case in CASES if not case[0].startswith("large")]


@cache
def made(name: str, paper: str, language: str) -> tuple[str, bytes]:
    """The page as it is set, and its PDF."""
    large, _, bare = name.rpartition(" ")
    options = {"paper": paper, "language": language, "large": bool(large)}
    pdf = edition(bare, "pdf", **options)
    if large:
        return edition(bare, "html", **options).decode(), pdf
    checked = checked_example(bare)
    words = document_of(checked, BuildOptions(("pdf",), **options))  # type: ignore[arg-type]
    return render_html(with_pictures(words, checked.pattern, checked.walks)), pdf


def opened(case: tuple[str, str, str]) -> pikepdf.Pdf:
    return pikepdf.open(io.BytesIO(made(*case)[1]))


def squeezed(text: str) -> str:
    return "".join(text.split())


cases = pytest.mark.parametrize("case", CASES, ids=" ".join)
pictured = pytest.mark.parametrize("case", PICTURED, ids=" ".join)


@cases
def test_it_says_its_language_title_and_that_it_is_tagged(case: tuple[str, str, str]) -> None:
    with opened(case) as pdf:
        assert str(pdf.Root.Lang) == case[2]
        assert str(pdf.docinfo.Title) in made(*case)[0]
        assert pdf.Root.ViewerPreferences.DisplayDocTitle
        assert pdf.Root.MarkInfo.Marked
        with pdf.open_metadata() as metadata:
            assert metadata["pdfuaid:part"] == "1"
            assert metadata["dc:title"] == str(pdf.docinfo.Title)


@pictured
def test_every_picture_is_a_figure_that_is_told(case: tuple[str, str, str]) -> None:
    page = made(*case)[0]
    with opened(case) as pdf:
        figures = [e for e in pdf_tree.tree_of(pdf).all() if e.tag == "Figure"]
        assert all(figure.alt.strip() for figure in figures)
        drawn = re.findall(r'<svg .*?<title[^>]*>(.*?)</title>|<img [^>]*alt="([^"]+)"', page, re.S)
        told = [unescape(svg or img) for svg, img in drawn]
        assert [squeezed(figure.alt) for figure in figures] == [squeezed(text) for text in told]
        assert len(figures) > 3


@cases
def test_every_cell_knows_its_headers(case: tuple[str, str, str]) -> None:
    with opened(case) as pdf:
        tables = [e for e in pdf_tree.tree_of(pdf).all() if e.tag == "Table"]
        assert bool(tables) != case[0].startswith("large")  # large print has no table
        for table in tables:
            heads = [e for e in table.all() if e.tag == "TH"]
            names = {str(head.raw.ID) for head in heads}
            assert heads and len(names) == len(heads)
            cells = [e for e in table.all() if e.tag == "TD"]
            assert cells
            for cell in cells:
                said = cell.attribute("/Headers")
                assert said is not None and {str(name) for name in said} <= names, cell.text
            rows = [e for e in table.all() if e.tag == "TR"]
            assert len({sum(width(e) for e in row.kids if cell_of(e)) for row in rows}) == 1


def cell_of(element: pdf_tree.Element | str) -> bool:
    return isinstance(element, pdf_tree.Element) and element.tag in ("TD", "TH")


def width(element: pdf_tree.Element | str) -> int:
    assert isinstance(element, pdf_tree.Element)
    return int(element.attribute("/ColSpan") or 1)


@cases
def test_headings_step_down_one_at_a_time(case: tuple[str, str, str]) -> None:
    with opened(case) as pdf:
        levels = [
            int(e.tag[1]) for e in pdf_tree.tree_of(pdf).all() if re.fullmatch("H[1-6]", e.tag)
        ]
    assert levels[0] == 1 and levels.count(1) == 1
    assert len(levels) > 8
    assert all(after <= before + 1 for before, after in pairwise(levels))


@cases
def test_bookmarks_are_the_headings(case: tuple[str, str, str]) -> None:
    with opened(case) as pdf, pdf.open_outline() as outline:
        headings = [
            (int(e.tag[1]), squeezed(e.text))
            for e in pdf_tree.tree_of(pdf).all()
            if re.fullmatch("H[1-6]", e.tag)
        ]

        def marks(items: list[pikepdf.OutlineItem], level: int) -> list[tuple[int, str]]:
            found = []
            for item in items:
                found.append((level, squeezed(item.title)))
                found += marks(item.children, level + 1)
            return found

        assert marks(list(outline.root), 1) == headings


@pictured
def test_lists_hold_items_and_nothing_else(case: tuple[str, str, str]) -> None:
    with opened(case) as pdf:
        root = pdf_tree.tree_of(pdf)
        lists = [e for e in root.all() if e.tag == "L"]
        assert len(lists) >= 3  # skills, abbreviations, rows
        for one in lists:
            assert {kid.tag for kid in one.kids if not isinstance(kid, str)} == {"LI"}
            assert not [kid for kid in one.kids if isinstance(kid, str) and kid.strip()]
        items = sum(e.tag == "LI" for e in root.all())
        assert items == sum(len(one.kids) for one in lists)


@cases
def test_the_tree_reads_as_the_page_does(case: tuple[str, str, str]) -> None:
    page = made(*case)[0]
    body = page.partition("<main")[2].partition(">")[2].partition("</main>")[0]
    # Not on paper, or drawn as strokes.
    body = re.sub(r"<nav .*?</nav>|<svg .*?</svg>", "", body, flags=re.S)
    said = squeezed(unescape(re.sub(r"<[^>]*>", "", body)))
    with opened(case) as pdf:
        assert squeezed(pdf_tree.tree_of(pdf).told) == said


@cases
def test_all_that_is_painted_is_tagged_or_an_artifact(case: tuple[str, str, str]) -> None:
    with opened(case) as pdf:
        used: dict[int, set[int]] = {}
        numbers = {page.objgen: index for index, page in enumerate(pdf.pages)}

        def note(element: pikepdf.Object, page: int) -> None:
            page = numbers.get(element.Pg.objgen, page) if "/Pg" in element else page
            kids = element.get("/K", [])
            for kid in kids if isinstance(kids, pikepdf.Array) else [kids]:
                if not isinstance(kid, pikepdf.Dictionary):
                    assert int(kid) not in used.setdefault(page, set())
                    used[page].add(int(kid))
                elif str(kid.get("/Type", "")) == "/MCR":
                    used.setdefault(page, set()).add(int(kid.MCID))
                elif str(kid.get("/Type", "")) != "/OBJR":
                    note(kid, page)

        note(pdf.Root.StructTreeRoot, 0)
        for number, page in enumerate(pdf.pages):
            texts, loose = pdf_tree.marked(page)
            assert not loose
            assert set(texts) == used.get(number, set())
            assert str(page.obj.get("/Tabs", "")) == "/S" or "/Annots" not in page.obj
