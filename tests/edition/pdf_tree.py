"""Reads a tagged PDF back through its structure tree, for the tests of this room."""

from __future__ import annotations

import io
import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Any

import pikepdf

BLOCKS = ("H1", "H2", "H3", "H4", "H5", "H6", "P", "LI", "TH", "TD", "Figure", "Caption")
_PAINT = {"Tj", "TJ", "'", '"', "Do", "S", "s", "f", "F", "f*", "B", "B*", "b", "b*", "sh", "EI"}


@dataclass
class Element:
    """An element of the tree: its tag, its attributes, what is in it in order (text or elements),
    and its own dictionary."""

    tag: str
    raw: Any
    kids: list[Element | str] = field(default_factory=list)

    def all(self) -> Iterator[Element]:
        """This element and those in it, in reading order."""
        yield self
        for kid in self.kids:
            if isinstance(kid, Element):
                yield from kid.all()

    @property
    def text(self) -> str:
        return "".join(kid if isinstance(kid, str) else kid.text for kid in self.kids)

    def leaves(self) -> Iterator[str]:
        """The pieces of text, in order."""
        for kid in self.kids:
            if isinstance(kid, str):
                yield kid
            else:
                yield from kid.leaves()

    @property
    def told(self) -> str:
        """The text without what is drawn in a picture, which its words stand for."""
        if self.tag == "Figure":
            return ""
        return "".join(kid if isinstance(kid, str) else kid.told for kid in self.kids)

    @property
    def alt(self) -> str:
        return str(self.raw.get("/Alt", ""))

    def attribute(self, name: str) -> Any:
        """An attribute of the element (``/Scope``, ``/Headers``), or None."""
        found = self.raw.get("/A", [])
        for one in found if isinstance(found, pikepdf.Array) else [found]:
            if isinstance(one, pikepdf.Dictionary) and name in one:
                return one[name]
        return None


def tree_of(pdf: pikepdf.Pdf) -> Element:
    """The structure tree under one root, with the text of its marked contents."""
    numbers = {page.objgen: index for index, page in enumerate(pdf.pages)}
    texts = [marked(page)[0] for page in pdf.pages]

    def read(element: Any, page: int) -> Element:
        page = numbers.get(element.Pg.objgen, page) if "/Pg" in element else page
        out = Element(str(element.get("/S", "Root")).removeprefix("/"), element)
        kids = element.get("/K", [])
        for kid in kids if isinstance(kids, pikepdf.Array) else [kids]:
            if not isinstance(kid, pikepdf.Dictionary):
                out.kids.append(texts[page].get(int(kid), ""))
            elif str(kid.get("/Type", "")) == "/MCR":
                where = numbers[kid.Pg.objgen] if "/Pg" in kid else page
                out.kids.append(texts[where].get(int(kid.MCID), ""))
            elif str(kid.get("/Type", "")) != "/OBJR":
                out.kids.append(read(kid, page))
        return out

    return read(pdf.Root.StructTreeRoot, 0)


def marked(page: pikepdf.Page) -> tuple[dict[int, str], list[str]]:
    """The text of each marked content of a page, and what is painted outside of any mark."""
    fonts = page.resources.get("/Font", {})
    maps = {name: _letters(font) for name, font in fonts.items()}
    texts: dict[int, str] = {}
    marks: list[int | None] = []
    letters: dict[int, str] = {}
    loose: list[str] = []
    for operands, operator in pikepdf.parse_content_stream(page):
        name = str(operator)
        if name in ("BDC", "BMC"):
            told = operands[1] if name == "BDC" else {}
            number = told.get("/MCID") if isinstance(told, pikepdf.Dictionary) else None
            marks.append(None if number is None else int(number))
            if number is not None:
                texts.setdefault(int(number), "")
        elif name == "EMC":
            marks.pop()
        elif name == "Tf":
            letters = maps[str(operands[0])]
        elif name in _PAINT:
            if not marks:
                loose.append(name)
            if name in ("Tj", "TJ"):
                number = next((mark for mark in reversed(marks) if mark is not None), None)
                if number is not None:
                    texts[number] += _said(operands[0] if name == "TJ" else operands, letters)
    return texts, loose


def _said(pieces: Any, letters: dict[int, str]) -> str:
    out = ""
    for piece in pieces:
        if isinstance(piece, pikepdf.String):
            raw = bytes(piece)
            codes = (int.from_bytes(raw[i : i + 2], "big") for i in range(0, len(raw), 2))
            out += "".join(letters.get(code, "\ufffd") for code in codes)
    return out


def _letters(font: Any) -> dict[int, str]:
    table = font.ToUnicode.read_bytes().decode("ascii")
    pairs = re.findall(r"<([0-9a-fA-F]+)> <([0-9a-fA-F]+)>", table)
    return {int(code, 16): bytes.fromhex(text).decode("utf-16-be") for code, text in pairs}


def outline_of(data: bytes) -> str:
    """The blocks of a PDF, a line each, in reading order: the tag, and what it says or shows."""
    with pikepdf.open(io.BytesIO(data)) as pdf:
        return "\n".join(_blocks(tree_of(pdf), 0))


def _blocks(element: Element, depth: int) -> Iterator[str]:
    if element.tag in BLOCKS:
        # Each line of a paragraph is an element, without the space at which it was broken.
        said = " ".join((element.alt or " ".join(element.leaves())).split())
        yield f"{'  ' * depth}{element.tag} {said}".rstrip()
        depth += 1
        inner = [each for each in element.all() if each.tag == "Figure" and each is not element]
        for figure in inner:
            yield f"{'  ' * depth}Figure {figure.alt}"
        return
    if element.tag in ("Table", "L"):
        yield f"{'  ' * depth}{element.tag}"
        depth += 1
    for kid in element.kids:
        if isinstance(kid, Element):
            yield from _blocks(kid, depth)
