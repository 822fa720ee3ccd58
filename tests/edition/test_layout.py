"""The three editions laid out: what stands on the page, in the tags and in the text layer."""

from __future__ import annotations

import ctypes.util
import io
import os
import re
import subprocess
import sys
from collections.abc import Callable
from dataclasses import replace
from functools import cache
from hashlib import sha256
from html.parser import HTMLParser
from itertools import pairwise
from pathlib import Path
from typing import NamedTuple

import pikepdf
import pytest
from fontTools.ttLib import TTFont
from markupsafe import escape

from loopwright.edition.document import Abbreviation, Document, Line, Section, Shade, Table
from loopwright.edition.engine import NativeLibrariesMissing
from loopwright.edition.html import render_html
from loopwright.edition.pdf import _own_fonts_only, render_pdf
from loopwright.edition.render import boxes, clean, colours, soft, template_folder
from loopwright.edition.text import render_text

KELP, FOAM, DUNE = "#2f5d62", "#f4f1e8", "#c9a66b"


def row(number: int, side: str, strand: str, text: str, count: str = "", new: bool = True) -> Line:
    colour = KELP if strand == "A" else FOAM
    return Line("row", f"Row {number} ({side}):", text, count, strand, new, (colour,))


def throw() -> Document:
    """Two strands, three sizes, rows over several pages."""
    border = (
        Line(
            "do",
            "",
            "With A and the long-tail method, cast on 180 (240, 300) sts.",
            "(180, 240, 300 sts)",
            "A",
            True,
            (KELP,),
        ),
        row(1, "RS", "A", "With A, knit.", new=False),
        row(2, "WS", "A", "With A, knit.", new=False),
    )
    motif = []
    for number in range(3, 75, 4):
        motif += [
            row(number, "RS", "B", "With B, k2, *sl1 wyif, k1; rep from * to last 2 sts, k2."),
            row(number + 1, "WS", "B", "With B, k2, purl to last 2 sts, k2.", new=False),
            row(
                number + 2,
                "RS",
                "A",
                "With A, k2, *k1, sl1 wyif; rep from * to last 2 sts, k2; the strand that rests "
                "is carried up loosely behind the two edge stitches at the start of the row.",
                "(182, 242, 302 sts)" if number % 3 == 0 else "",
            ),
            row(number + 3, "WS", "A", "With A, k2, purl to last 2 sts, k2.", new=False),
        ]
    return Document(
        language="en-GB",
        title="Lantern Quay Throw",
        designer="Ottoline Ferris",
        summary="A dense, woven-looking throw in two strands of worsted wool. One strand rests at "
        "the edge while the other works two rows.",
        level="Easy",
        sizes=("lap", "throw", "bed"),
        finished=Table(
            "After blocking",
            ("Size", "Width", "Length"),
            (
                ("lap", "90 cm / 35½ in", "110 cm / 43¼ in"),
                ("throw", "120 cm / 47¼ in", "150 cm / 59 in"),
                ("bed", "150 cm / 59 in", "190 cm / 74¾ in"),
            ),
        ),
        gauge=("20 sts × 36 rows = 10 cm / 4 in in the woven pattern, after blocking",),
        needles=("4.5 mm (US 7, UK 7) circular, 90 cm / 36 in long",),
        yarns=("Worsted wool blend: 100 g = 200 m / 219 yd, weight 4 (medium)",),
        shades=(
            Shade("Kelp", "Worsted wool blend", "A", "2 (3, 5) balls", (KELP,)),
            Shade("Foam", "Worsted wool blend", "B", "2 (3, 4) balls", (FOAM,)),
            Shade("Tide", "Worsted wool blend", "A", "1 ball", (KELP, "#6a9c89", DUNE)),
        ),
        notions=("Blunt tapestry needle", "Two removable markers"),
        notes=(
            "Slip all stitches purlwise. With wyif the strand passes in front of the stitch, "
            "on the side that faces you.",
            "Measure the length flat, from the cast-on edge, without stretching.",
        ),
        abbreviations=(
            Abbreviation("k", "knit", ""),
            Abbreviation("p", "purl", ""),
            Abbreviation("k2tog", "knit 2 stitches together", "takes 2, makes 1"),
            Abbreviation("rep", "repeat", ""),
            Abbreviation("RS", "right side", ""),
            Abbreviation("sl1 wyif", "slip 1 stitch purlwise with the yarn in front", ""),
            Abbreviation("st(s)", "stitch(es)", ""),
            Abbreviation("WS", "wrong side", ""),
        ),
        sections=(
            Section("Throw", 2, ()),
            Section("Border", 3, border),
            Section(
                "Woven pattern",
                3,
                (
                    Line("note", "", "Twist the strands once at the start of each RS row.", ""),
                    *motif,
                    Line("repeat", "", "Rep Rows 3–74 4 (6, 8) more times.", "", tally=(4, 6, 8)),
                ),
            ),
            Section(
                "Finish",
                3,
                (
                    row(1, "RS", "A", "With A, knit.", new=True),
                    Line("do", "", "With A, bind off all sts by the suspended method.", ""),
                    Line("note", "", "Weave in the ends along the edge of their own shade.", ""),
                ),
            ),
        ),
        cautions=("Throws for a baby: no fringe, no beads, nothing that comes off.",),
        notices=("Yarn amounts are estimates until a swatch has been weighed.",),
    )


def hat() -> Document:
    """One strand, one size, in the round."""
    return Document(
        language="en",
        title="Smörbåt Cap",
        designer="Ines Råberg",
        summary="A plain cap with a quick crown.",
        level="Basic",
        sizes=(),
        finished=Table("", ("Round the head", "Height"), (("50⅔ cm / 20 in", "21 cm / 8⅜ in"),)),
        gauge=("22 sts × 30 rnds = 10 cm / 4 in in stocking stitch in the round",),
        needles=("4 mm (US 6, UK 8) circular, 40 cm / 16 in long", "4 mm double-pointed, 5"),
        yarns=("Oat, light wool: 50 g = 120 m",),
        shades=(Shade("Oat", "Light wool", "", "1 ball", (DUNE,)),),
        notions=("Marker",),
        notes=(),
        abbreviations=(Abbreviation("k", "knit", ""), Abbreviation("rnd", "round", "")),
        sections=(
            Section(
                "Cap",
                2,
                (
                    Line("do", "", "Cast on 96 sts.", "(96 sts)"),
                    Line("do", "", "Join to work in the round; place a marker.", ""),
                    Line("row", "Rnd 1:", "*K1, p1; rep from * to end.", ""),
                    Line("repeat", "", "Rep Rnd 1 eleven more times.", "", tally=(11,)),
                    Line("row", "Rnds 13–40:", "Knit.", ""),
                    Line("row", "Rnd 41:", "*K6, k2tog; rep from * to end.", "(84 sts)"),
                    Line("row", "Rnd 42:", "Knit.", ""),
                ),
            ),
        ),
        cautions=(),
        notices=(),
    )


LONG = "Donaudampfschifffahrts" * 30


def hostile() -> Document:
    """Everything a careless or a wicked source may put into a string."""
    evil = (
        "{{ 7*7 }} {% raw %} </style><script>alert(1)</script> <img src=http://example.invalid/a>"
        " url(http://example.invalid/b) file:///etc/passwd @import 'x'; & \"'"
    )
    return Document(
        language='en"><script>',
        title=evil,
        designer=LONG,
        summary=f"{evil} \x1b[31m\x00 {LONG}",
        level="<b>",
        sizes=("<i>", LONG),
        finished=Table(evil, ("<td>", LONG), ((evil, LONG), ("", "½"))),
        gauge=(evil,),
        needles=(LONG,),
        yarns=(evil,),
        shades=(
            Shade(evil, LONG, "<a>", "", ("#12345", "red;background:url(http://example.invalid)")),
            Shade("Plain", "", "B", "", ("#00ff00",)),
        ),
        notions=("file:///etc/passwd",),
        notes=(LONG, evil),
        abbreviations=(Abbreviation(LONG, evil, LONG),),
        sections=(
            Section(
                evil,
                2,
                (
                    Line("row", f"Row 1 (RS) {LONG}:", LONG, evil, LONG, True, ("#zzzzzz",)),
                    Line('x" onclick="y', "Row 2:", evil, "(1 st)", "<b>", True, ("#ff0000\n",)),
                    Line("repeat", "", LONG, "", tally=(10**9,)),
                    Line("note", "", evil, "\x1b]0;x\x07"),
                ),
            ),
        ),
        cautions=(evil,),
        notices=(LONG,),
    )


# --- reading a PDF back -----------------------------------------------------------------------


class Leaf(NamedTuple):
    """One piece of tagged text: the tags above it, outermost first, its page and what it says."""

    tags: tuple[str, ...]
    item: int  # which list item it is in, counted in reading order; 0 outside of any
    page: int
    text: str


def _to_unicode(font: pikepdf.Object) -> dict[int, str]:
    table = font.ToUnicode.read_bytes().decode("ascii")
    pairs = re.findall(r"<([0-9a-fA-F]+)> <([0-9a-fA-F]+)>", table)
    return {int(code, 16): bytes.fromhex(text).decode("utf-16-be") for code, text in pairs}


def _marked_text(page: pikepdf.Page) -> dict[int, str]:
    """The text of each marked content of a page, and of each artifact."""
    maps = {name: _to_unicode(font) for name, font in page.resources.Font.items()}
    found: dict[int, str] = {}
    current: list[int | None] = []
    letters: dict[int, str] = {}
    artifacts = 0
    for operands, operator in pikepdf.parse_content_stream(page):
        match str(operator):
            case "BDC":
                mcid = operands[1].get("/MCID")
                current.append(None if mcid is None else int(mcid))
            case "BMC":  # an artifact: below nought, each by itself
                artifacts += 1
                current.append(-artifacts)
            case "EMC":
                current.pop()
            case "Tf":
                letters = maps[str(operands[0])]
            case "Tj" | "TJ":
                pieces = operands[0] if str(operator) == "TJ" else operands
                text = ""
                for piece in pieces:
                    if isinstance(piece, pikepdf.String):
                        raw = bytes(piece)
                        codes = [
                            int.from_bytes(raw[i : i + 2], "big") for i in range(0, len(raw), 2)
                        ]
                        text += "".join(letters.get(code, "\ufffd") for code in codes)
                if current and current[-1] is not None:
                    found[current[-1]] = found.get(current[-1], "") + text
    return found


def read_back(data: bytes) -> list[Leaf]:
    """The text of a tagged PDF in its reading order, found through the structure tree alone."""
    with pikepdf.open(io.BytesIO(data)) as pdf:
        numbers = {page.objgen: index for index, page in enumerate(pdf.pages)}
        texts = [_marked_text(page) for page in pdf.pages]
        leaves: list[Leaf] = []
        items = 0

        def walk(element: pikepdf.Object, tags: tuple[str, ...], item: int) -> None:
            nonlocal items
            tags = (*tags, str(element.S).removeprefix("/"))
            if tags[-1] == "LI":
                items += 1
                item = items
            page = numbers.get(element.Pg.objgen, -1) if "/Pg" in element else -1
            kids = element.get("/K", [])
            for kid in kids if isinstance(kids, pikepdf.Array) else [kids]:
                if isinstance(kid, pikepdf.Dictionary):
                    walk(kid, tags, item)
                else:
                    leaves.append(Leaf(tags, item, page, texts[page].get(int(kid), "")))

        for root in pdf.Root.StructTreeRoot.K:
            walk(root, (), 0)
        return leaves


def squeezed(text: str) -> str:
    return "".join(text.split())


def items_of(leaves: list[Leaf]) -> dict[int, tuple[set[int], str]]:
    """For each list item the pages it stands on and its text without spaces."""
    result: dict[int, tuple[set[int], str]] = {}
    for leaf in leaves:
        if leaf.item:
            pages, text = result.get(leaf.item, (set(), ""))
            result[leaf.item] = (pages | {leaf.page}, text + squeezed(leaf.text))
    return result


@cache
def pdf_of(make: Callable[[], Document], paper: str) -> bytes:
    return render_pdf(make(), paper)  # type: ignore[arg-type]


PAPERS = pytest.mark.parametrize("paper", ["a4", "letter"])
SAMPLES = pytest.mark.parametrize("make", [throw, hat, hostile])


# --- the text edition -------------------------------------------------------------------------


def test_text_has_one_instruction_a_line_exactly() -> None:
    lines = render_text(throw()).splitlines()
    assert "Row 3 (RS): With B, k2, *sl1 wyif, k1; rep from * to last 2 sts, k2." in lines
    assert (
        "With A and the long-tail method, cast on 180 (240, 300) sts. (180, 240, 300 sts)" in lines
    )
    for section in throw().sections:
        for line in section.lines:
            assert " ".join(p for p in (line.label, line.text, line.count) if p) in lines


def test_text_reads_from_top_to_bottom() -> None:
    text = render_text(hat())
    assert text.startswith("SMÖRBÅT CAP\n===========\nby Ines Råberg\n\nA plain cap")
    assert text.endswith("Rnd 41: *K6, k2tog; rep from * to end. (84 sts)\nRnd 42: Knit.\n")
    assert "\n\n\n" not in text
    assert not re.search(r"[ \t]$", text, re.MULTILINE)
    order = ["Level: Basic", "GAUGE", "NEEDLES", "YARN", "NOTIONS", "ABBREVIATIONS", "\nCAP\n"]
    assert [text.index(part) for part in order] == sorted(text.index(part) for part in order)


def test_text_aligns_tables() -> None:
    lines = render_text(throw()).splitlines()
    start = lines.index("Size   Width            Length")
    assert lines[start + 1] == "lap    90 cm / 35½ in   110 cm / 43¼ in"
    assert lines[start + 3] == "bed    150 cm / 59 in   190 cm / 74¾ in"
    assert "Tide   Worsted wool blend  A       1 ball" in lines


def test_text_leaves_out_what_a_pattern_lacks() -> None:
    text = render_text(replace(hat(), notions=(), designer="", level=""))
    assert "NOTIONS" not in text
    assert "Level" not in text
    assert "by" not in text.split()


def test_text_keeps_hostile_strings_as_text_and_drops_controls() -> None:
    text = render_text(hostile())
    assert "{{ 7*7 }}" in text
    assert "49" not in text
    assert "</style><script>alert(1)</script>" in text
    assert "&lt;" not in text
    assert not re.search("[\x00-\x09\x0b-\x1f\x7f]", text)
    assert f"Row 2: {hostile().title} (1 st)" in text.splitlines()


# --- the HTML edition -------------------------------------------------------------------------


class Page(HTMLParser):
    """Collects what could make a request or run, and the text outside of the style."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.tags: list[str] = []
        self.attributes: list[tuple[str, str, str]] = []
        self.texts: dict[str, str] = {}
        self.feed(page)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append(tag)
        self.attributes += [(tag, name, value or "") for name, value in attrs]

    def handle_data(self, data: str) -> None:
        tag = self.tags[-1] if self.tags else ""
        self.texts[tag] = self.texts.get(tag, "") + data


@SAMPLES
def test_html_asks_for_nothing_and_runs_nothing(make: Callable[[], Document]) -> None:
    page = Page(render_html(make()))
    assert not {"script", "link", "img", "iframe", "object", "embed", "base", "form"} & set(
        page.tags
    )
    # The only drawings are the boxes to tick, and all that they are made of is a path.
    ticked = [count for part in make().sections for line in part.lines for count in boxes(line)]
    drawn = [value for tag, name, value in page.attributes if (tag, name) == ("svg", "class")]
    assert drawn == ["ticks"] * len(ticked) and page.tags.count("path") == len(ticked)
    for tag, name, value in page.attributes:
        assert not name.startswith("on"), (tag, name)
        assert name not in {"src", "srcset", "data", "action", "poster", "background"}
        if name == "href":
            assert value.startswith("#")
        if name == "style":
            assert re.fullmatch(r"background:#[0-9a-fA-F]{6}", value)
        if name == "http-equiv":
            assert value == "Content-Security-Policy"


@SAMPLES
def test_html_says_all_that_the_text_says(make: Callable[[], Document]) -> None:
    seen = squeezed(re.sub(r"<[^>]*>", "", render_html(make()).split("<body>")[1]))
    for section in clean(make()).sections:
        for line in section.lines:
            assert squeezed(escape(line.label + line.text + line.count)) in seen


def test_html_never_ends_its_style_early_and_never_evaluates() -> None:
    source = render_html(hostile())
    assert source.count("</style>") == 1
    assert "49" not in re.sub(r"#part-\d+|<style>.*</style>", "", source, flags=re.DOTALL)
    page = Page(source)
    style = (template_folder() / "pattern.css").read_text(encoding="utf-8")
    assert page.texts["style"].strip() == style.strip()
    assert page.texts["title"].strip() == hostile().title


def test_html_only_lets_whole_colours_through() -> None:
    assert colours(("#12345", "#2f5d62", "red", "#2f5d62;x", "#2f5d62\n", "#GGGGGG")) == (
        "#2f5d62",
    )
    assert render_html(hostile()).count('style="background:') == 1


def test_html_is_in_the_language_of_the_document_and_has_one_outline() -> None:
    page = Page(render_html(throw()))
    assert ("html", "lang", "en-GB") in page.attributes
    assert page.tags.count("h1") == 1
    assert page.tags.count("main") == 1
    ids = [value for _, name, value in page.attributes if name == "id"]
    assert len(ids) == len(set(ids))
    levels = [int(tag[1]) for tag in page.tags if tag in {"h1", "h2", "h3"}]
    assert all(after - before <= 1 for before, after in pairwise(levels))


def test_html_tags_a_strand_with_its_letter_where_it_changes() -> None:
    source = render_html(throw())
    tags = re.findall(
        r'<li class="(\w+) change(?: kept)?"><span class="tag" aria-hidden="true">(.*?)</i>', source
    )
    # The cast-on, then a change every second row of 72, then the first row of the last section.
    assert len(tags) == 1 + 36 + 1
    assert all(re.search(r"background:#\w{6}.*<i>[AB]$", tag) for _, tag in tags)
    assert "tag" not in re.findall(r'class="(\w+)"', render_html(hat()))


def test_html_draws_a_box_for_each_repeat() -> None:
    def drawn(page: str) -> list[int]:
        return [path.count("z") for path in re.findall(r'<svg class="ticks".* d="([^"]*)"/>', page)]

    assert drawn(render_html(throw())) == [4, 6, 8]
    assert drawn(render_html(hat())) == [11]
    assert drawn(render_html(hostile())) == []


def test_a_long_word_in_a_table_may_be_broken_and_stays_the_same_word() -> None:
    assert soft("a short <b>") == escape("a short <b>")
    assert soft(LONG).count("<wbr>") == len(LONG) // 12 - 1
    assert soft(LONG).replace("<wbr>", "") == LONG


# --- the style sheet and the fonts ------------------------------------------------------------


def _luminance(colour: str) -> float:
    """Relative luminance, as WCAG 2 defines it."""
    parts = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    linear = [p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4 for p in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def test_style_has_no_address_and_enough_contrast() -> None:
    css = (template_folder() / "pattern.css").read_text(encoding="utf-8")
    assert not re.search(r"url\(|@import|https?:|</", css)
    blocks = re.findall(r":root \{(.*?)\}", css, re.DOTALL)[:2]
    assert len(blocks) == 2
    for block in blocks:
        named = dict(re.findall(r"--(\w+): (#[0-9a-f]{6});", block))

        def contrast(one: str, other: str, named: dict[str, str] = named) -> float:
            high, low = sorted((_luminance(named[one]), _luminance(named[other])), reverse=True)
            return (high + 0.05) / (low + 0.05)

        for ground in ("paper", "tint"):
            for ink in ("ink", "quiet", "accent"):
                assert contrast(ink, ground) >= 4.5, (ink, ground)
            assert contrast("edge", ground) >= 3, ground


def test_fonts_are_small_licensed_and_have_what_we_set() -> None:
    folder = template_folder() / "fonts"
    files = sorted(path.name for path in folder.iterdir())
    faces = [name for name in files if name.endswith((".ttf", ".otf"))]
    assert sum((folder / name).stat().st_size for name in files) < 2_500_000
    for name in faces:
        licence = (folder / f"OFL-{name.partition('-')[0]}.txt").read_text(encoding="utf-8")
        assert "SIL OPEN FONT LICENSE Version 1.1" in licence
        assert "No reserved font name" in licence
        with TTFont(folder / name, lazy=True) as font:
            features = {
                record.FeatureTag for record in font["GSUB"].table.FeatureList.FeatureRecord
            }
            assert "tnum" in features
            # Inter has no two thirds; the label family falls back on the text family for it.
            missing = {c for c in "½¼¾⅓⅔⅛⅜⅝⅞–—×−→■□“”’…" if ord(c) not in font.getBestCmap()}
            assert missing <= ({"⅔"} if name.startswith("Inter") else set())


# --- the PDF edition --------------------------------------------------------------------------


@PAPERS
@SAMPLES
def test_pdf_is_tagged_and_says_what_it_is(make: Callable[[], Document], paper: str) -> None:
    doc = make()
    with pikepdf.open(io.BytesIO(pdf_of(make, paper))) as pdf:
        assert pdf.Root.MarkInfo.Marked
        assert str(pdf.Root.Lang) == doc.language
        assert str(pdf.docinfo.Title) == doc.title
        assert pdf.Root.ViewerPreferences.DisplayDocTitle
        assert not {"/CreationDate", "/ModDate"} & set(pdf.docinfo.keys())
        assert not {"/OpenAction", "/AA", "/AcroForm"} & set(pdf.Root.keys())
        with pdf.open_metadata() as metadata:
            assert metadata["pdfuaid:part"] == "1"
        width, height = (float(side) for side in pdf.pages[0].mediabox[2:])
        mm = 72 / 25.4
        expected = (210 * mm, 297 * mm) if paper == "a4" else (8.5 * 72, 11 * 72)
        assert (width, height) == pytest.approx(expected, abs=0.1)
        assert not [
            obj for obj in pdf.objects if isinstance(obj, pikepdf.Dictionary) and "/URI" in obj
        ]


@PAPERS
def test_pdf_has_bookmarks_in_order(paper: str) -> None:
    with (
        pikepdf.open(io.BytesIO(pdf_of(throw, paper))) as pdf,
        pdf.open_outline() as outline,
    ):
        (top,) = outline.root
        assert top.title == "Lantern Quay Throw"
        titles = [item.title for item in top.children]
        assert titles[0] == "Finished measurements"
        assert titles[-2:] == ["Abbreviations", "Throw"]
        assert [item.title for item in top.children[-1].children] == [
            "Border",
            "Woven pattern",
            "Finish",
        ]


@PAPERS
@SAMPLES
def test_pdf_uses_the_bundled_fonts_only(make: Callable[[], Document], paper: str) -> None:
    with pikepdf.open(io.BytesIO(pdf_of(make, paper))) as pdf:
        fonts = [
            obj
            for obj in pdf.objects
            if isinstance(obj, pikepdf.Dictionary) and obj.get("/Type") == "/FontDescriptor"
        ]
        assert fonts
        for font in fonts:
            assert re.search(r"\+Pattern-(Text|Label)", str(font.FontName)), font.FontName
            assert "/FontFile2" in font or "/FontFile3" in font


@PAPERS
def test_pdf_text_layer_has_each_line_whole_on_one_page(paper: str) -> None:
    leaves = read_back(pdf_of(throw, paper))
    assert "\ufffd" not in "".join(leaf.text for leaf in leaves)
    items = items_of(leaves)
    assert max(leaf.page for leaf in leaves) >= 3
    expected = [line for section in throw().sections for line in section.lines]
    # List items: the abbreviations, then the lines; a line split over a page would make two.
    found = list(items.values())[len(throw().abbreviations) :]
    assert len(found) == len(expected)
    for line, (pages, text) in zip(expected, found, strict=True):
        assert len(pages) == 1
        said = squeezed(line.label + line.text + line.count)
        assert said in text
        if line.kind == "row":
            assert text.removeprefix(line.strand) == said


@PAPERS
def test_pdf_splits_no_row_however_tall(paper: str) -> None:
    # Rows of six to nine lines, so that lines enough for a page's last and first are there.
    tall = tuple(
        row(number, "RS", "A", "With A, " + "k2, yo, k2tog, " * (30 + number % 4 * 5) + "k2.")
        for number in range(1, 30)
    )
    doc = replace(throw(), abbreviations=(), sections=(Section("Tall", 2, tall),))
    leaves = read_back(render_pdf(doc, paper))  # type: ignore[arg-type]
    assert max(leaf.page for leaf in leaves) >= 3
    items = list(items_of(leaves).values())
    assert len(items) == len(tall)
    for line, (pages, text) in zip(tall, items, strict=True):
        assert len(pages) == 1
        assert text == squeezed(line.strand + line.label + line.text)


@PAPERS
def test_pdf_leaves_no_heading_alone_at_a_page_foot(paper: str) -> None:
    # A piece's heading, a section's, and rows, pushed down a line at a time over the page's foot.
    doc = replace(throw(), abbreviations=())
    piece, border, *_ = doc.sections
    turned = set()
    for extra in range(11):
        longer = replace(
            doc, notes=doc.notes + ("Note.",) * extra, sections=(piece, border, border)
        )
        leaves = read_back(render_pdf(longer, paper))  # type: ignore[arg-type]
        headings = 0
        for leaf, following in pairwise(leaves):
            if {"H1", "H2", "H3"} & set(leaf.tags):
                headings += 1
                assert leaf.page == following.page, (extra, leaf.text)
        assert headings == 11
        turned.add(next(leaf.page for leaf in leaves if leaf.text == "Throw"))
        turned.add(leaves[-1].page)
    assert turned == {0, 1}


@PAPERS
def test_pdf_has_title_and_number_on_each_page(paper: str) -> None:
    with pikepdf.open(io.BytesIO(pdf_of(throw, paper))) as pdf:
        total = len(pdf.pages)
        for number, page in enumerate(pdf.pages, 1):
            said = [squeezed(text) for text in _marked_text(page).values()]
            assert "LanternQuayThrow" in said
            assert f"{number}/{total}" in said
            assert "lap,throw,bed" in said


@PAPERS
def test_pdf_keeps_hostile_text_as_text_and_on_the_page(paper: str) -> None:
    leaves = read_back(pdf_of(hostile, paper))
    everything = squeezed("".join(leaf.text for leaf in leaves))
    assert squeezed(hostile().title) in everything
    # Each long word is all there, in however many lines.
    assert everything.count("Donaudampfschifffahrts") >= 30 * 12
    assert "root:" not in everything


def test_pdf_is_the_same_in_another_process() -> None:
    script = (
        "import sys, test_layout as t\n"
        "from hashlib import sha256\n"
        "print(*(sha256(t.render_pdf(t.throw(), p)).hexdigest() for p in ('a4', 'letter')))\n"
    )
    environment = os.environ | {
        "PYTHONPATH": os.pathsep.join([str(Path(__file__).parent), *filter(None, sys.path)])
    }
    runs = [
        subprocess.run(
            [sys.executable, "-c", script],
            env=environment | {"PYTHONHASHSEED": seed, "TZ": zone},
            capture_output=True,
            text=True,
            check=True,
        )
        for seed, zone in (("1", "UTC"), ("2", "Asia/Tokyo"))
    ]
    here = " ".join(sha256(pdf_of(throw, paper)).hexdigest() for paper in ("a4", "letter"))
    assert {run.stdout.strip() for run in runs} == {here}
    assert [run.stderr for run in runs] == ["", ""]


def _run(script: str) -> subprocess.CompletedProcess[str]:
    environment = os.environ | {
        "PYTHONPATH": os.pathsep.join([str(Path(__file__).parent), *filter(None, sys.path)])
    }
    return subprocess.run(
        [sys.executable, "-c", script], env=environment, capture_output=True, text=True, check=True
    )


def test_pdf_without_native_libraries_says_one_line_and_the_rest_still_works() -> None:
    run = _run(
        "import cffi, sys\n"
        "def refuse(*a, **k): raise OSError('cannot load library')\n"
        "cffi.FFI.dlopen = refuse\n"
        "from loopwright.edition.engine import NativeLibrariesMissing\n"
        "from loopwright.edition.pdf import render_pdf\n"
        "import test_layout as t\n"
        "for paper in ('a4', 'letter'):\n"
        "    try: render_pdf(t.hat(), paper)\n"
        "    except NativeLibrariesMissing as problem: print(problem)\n"
        "print(len(t.render_html(t.hat())) > 1000, len(t.render_text(t.hat())) > 500)\n"
    )
    first, second, rest = run.stdout.splitlines()
    assert first == second
    assert first.startswith("a PDF needs the Pango text libraries")
    assert "install" in first
    assert rest == "True True"
    assert run.stderr == ""


@pytest.mark.parametrize(
    ("platform", "tool", "command"),
    [
        ("darwin", None, "brew install pango"),
        ("linux", "dnf", "dnf install pango"),
        (
            "linux",
            "apt-get",
            "apt install libpango-1.0-0 libpangoft2-1.0-0 libharfbuzz-subset0",
        ),
    ],
)
def test_the_install_command_is_the_platform_s_own(
    monkeypatch: pytest.MonkeyPatch, platform: str, tool: str | None, command: str
) -> None:
    monkeypatch.setattr("loopwright.edition.engine.sys.platform", platform)
    monkeypatch.setattr(
        "loopwright.edition.engine.shutil.which", lambda name: name if name == tool else None
    )
    assert str(NativeLibrariesMissing()).endswith(": " + command)


def test_heavy_libraries_wait_until_they_are_needed() -> None:
    run = _run(
        "import sys\n"
        "import loopwright.edition.html, loopwright.edition.pdf, loopwright.edition.text\n"
        "print(*(n for n in ('weasyprint', 'jinja2', 'PIL', 'fontTools') if n in sys.modules))\n"
    )
    assert run.stdout.strip() == ""


def test_loading_weasyprint_leaves_the_library_look_up_as_it_was() -> None:
    before = ctypes.util.find_library
    pdf_of(hat, "a4")
    assert ctypes.util.find_library is before


def test_nothing_but_the_bundled_fonts_is_fetched() -> None:
    fetcher = _own_fonts_only()
    folder = template_folder() / "fonts"
    good = fetcher.fetch("loopwright-font:Vollkorn-Regular.ttf")
    assert good.read() == (folder / "Vollkorn-Regular.ttf").read_bytes()
    for address in (
        "file:///etc/passwd",
        (folder / "Vollkorn-Regular.ttf").as_uri(),
        "http://example.invalid/a.ttf",
        "data:text/plain,x",
        "loopwright-font:../pattern.css",
        "loopwright-font:OFL-Inter.txt",
    ):
        with pytest.raises(ValueError, match="fetches nothing"):
            fetcher.fetch(address)


def test_rendering_says_nothing_on_the_terminal(capfd: pytest.CaptureFixture[str]) -> None:
    render_pdf(hat(), "a4")
    assert capfd.readouterr() == ("", "")
