"""What stands in a page's margins, marked as no part of the text.

WeasyPrint marks the title and the page's number at the foot as text, but hangs them into no tree:
for a reader aloud they are neither text nor ornament. In PDF 1.7 (ISO 32000-1, 14.8.2.2) such
running matter is an artifact.
"""

from __future__ import annotations

from typing import Any


def margins_as_artifacts(pdf: Any) -> None:
    """Mark what no element of the tree reaches as an artifact, in a PDF about to be written."""
    by_number = {item.number: item for item in pdf.objects}
    root = by_number[_number(pdf.catalog["StructTreeRoot"])]
    seen: set[int] = set()
    waiting = [_number(kid) for kid in root["K"] if _is_reference(kid)]
    while waiting:
        number = waiting.pop()
        if number in seen:
            continue
        seen.add(number)
        kids = by_number[number].get("K", ())
        kids = kids if isinstance(kids, list) else (kids,)
        waiting += [_number(kid) for kid in kids if _is_reference(kid)]
    lost: set[int] = set()
    elements: list[Any] = [item for item in pdf.objects if isinstance(item, dict)]
    marks: dict[int, set[int]] = {}
    for item in elements:
        if item.get("Type") == "/StructElem" and item.number not in seen:
            lost.add(item.number)
            kids = item.get("K", ())
            for kid in kids if isinstance(kids, list) else (kids,):
                if isinstance(kid, int):
                    marks.setdefault(_number(item["Pg"]), set()).add(kid)
    for page, numbers in marks.items():
        stream = by_number[_number(by_number[page]["Contents"])]
        _unmark(stream.stream, numbers)
    tree = by_number[_number(root["ParentTree"])]["Nums"]
    for entry in tree:
        if isinstance(entry, list):
            entry[:] = [
                "null" if _is_reference(one) and _number(one) in lost else one for one in entry
            ]


def _unmark(content: list[Any], numbers: set[int]) -> None:
    """Open an artifact where a page's content opens one of these marks: a tag, its properties, and
    the operator."""
    for place in range(2, len(content)):
        if content[place] == b"BDC" and isinstance(content[place - 1], dict):
            if content[place - 1].get("MCID") in numbers:
                content[place - 2 : place + 1] = [b"/Artifact", b"", b"BMC"]


def _is_reference(value: Any) -> bool:
    return isinstance(value, bytes) and value.endswith(b" R")


def _number(reference: bytes) -> int:
    return int(reference.split()[0])
