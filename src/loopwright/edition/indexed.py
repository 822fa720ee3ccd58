"""Pictures of few colours in a PDF, kept as they are: numbers into a table of colours.

WeasyPrint spells every pixel out as three bytes, which makes a picture of cloth up to ten times
as heavy as the PNG it was made of. A PDF can hold the PNG's own data instead.
"""

from __future__ import annotations

import struct
from collections.abc import Iterable
from typing import Any
from zlib import compress, crc32

from loopwright.record import dataclass

_HEAD = b"\x89PNG\r\n\x1a\n"
_BY_TABLE = 3


@dataclass(frozen=True, slots=True)
class Indexed:
    """A PNG's size in pixels, bits a pixel, table of colours (three bytes each) and data."""

    width: int
    height: int
    bits: int
    table: bytes
    data: bytes


def indexed(png: bytes) -> Indexed | None:
    """The parts of a PNG whose pixels are numbers of colours; None for one of another kind.

    The layout is that of the PNG specification (ISO/IEC 15948).
    """
    if not png.startswith(_HEAD):
        return None
    at, width, height, bits, table, data = len(_HEAD), 0, 0, 0, b"", []
    while at + 8 <= len(png):
        (long,) = struct.unpack(">I", png[at : at + 4])
        kind, body = png[at + 4 : at + 8], png[at + 8 : at + 8 + long]
        if kind == b"IHDR":
            width, height, bits, colours, *_, woven = struct.unpack(">IIBBBBB", body)
            if colours != _BY_TABLE or woven:
                return None
        elif kind == b"PLTE":
            table = body
        elif kind == b"IDAT":
            data.append(body)
        at += 12 + long
    return Indexed(width, height, bits, table, b"".join(data)) if table and data else None


def blank(picture: Indexed) -> bytes:
    """A PNG of the same size with nothing on it, to lay a page out with: WeasyPrint unpacks every
    picture and packs it anew, in vain where `keep_indexed` then puts the right data in."""
    line = b"\0" * (1 + (picture.width * picture.bits + 7) // 8)
    head = struct.pack(">IIBBBBB", picture.width, picture.height, picture.bits, _BY_TABLE, 0, 0, 0)
    return _HEAD + b"".join(
        struct.pack(">I", len(body)) + kind + body + struct.pack(">I", crc32(kind + body))
        for kind, body in (
            (b"IHDR", head),
            (b"PLTE", picture.table),
            (b"IDAT", compress(line * picture.height, 1)),
            (b"IEND", b""),
        )
    )


def keep_indexed(pdf: Any, pictures: Iterable[Indexed]) -> None:
    """Put the data of `pictures` in place of what WeasyPrint made of them, found by their size."""
    import pydyf  # type: ignore[import-untyped]

    known = {(picture.width, picture.height): picture for picture in pictures}
    for item in pdf.objects:
        extra = getattr(item, "extra", None) or {}
        if extra.get("Subtype") != "/Image" or extra.get("ColorSpace") != "/DeviceRGB":
            continue
        picture = known.get((extra["Width"], extra["Height"]))
        if picture is None:
            continue
        last = len(picture.table) // 3 - 1
        table = f"<{picture.table.hex()}>"
        extra["ColorSpace"] = pydyf.Array(("/Indexed", "/DeviceRGB", last, table))
        extra["BitsPerComponent"] = picture.bits
        extra["DecodeParms"] = pydyf.Dictionary(
            {
                "Predictor": 15,
                "Colors": 1,
                "BitsPerComponent": picture.bits,
                "Columns": picture.width,
            }
        )
        item.stream = [picture.data]
