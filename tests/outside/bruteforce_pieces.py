"""Whole sources of several pieces, knitted by the hands of `two_needles`."""

from __future__ import annotations

import re
from dataclasses import dataclass, field

from bruteforce import (
    STITCH,
    CannotRead,
    CannotWork,
    FileText,
    Line,
    Loop,
    MotifText,
    RowText,
    _motif_rows,
    _number,
    _on_form,
    parse_form,
)
from two_needles import Hands, Holders


@dataclass(slots=True)
class PieceText:
    """A piece as lines."""

    name: str
    in_round: bool
    starts_ws: bool
    lines: list[Line] = field(default_factory=list)


@dataclass(frozen=True, slots=True)
class Knitted:
    """A piece: the count and the side of each row."""

    counts: list[int]
    right_sides: list[bool]


_MOTIF = re.compile(r"motif\s+([\w-]+)(?:\s+over\s+([\dn+ -]+?))?((?:\s+starts ws|\s+round)*)")
_ROW = re.compile(r"(?:rows?|rounds?)\s*([\d\s,/-]*)(?:in\s+\w+\s*)?:\s*(.*)")


def read_pieces(text: str) -> tuple[FileText, list[PieceText]]:
    """The motifs and the pieces of a source. Raises `CannotRead` where a line is not known."""
    file = FileText({}, {}, False, False, [], {})
    pieces: list[PieceText] = []
    blocks: list[tuple[MotifText, list[Line]]] = []
    where: list[Line] | None = None
    for number, raw in enumerate(text.splitlines(), 1):
        line = Line(re.sub(r'"[^"]*"', '""', raw).split("--")[0].strip().lower())
        line.number = number
        words = line.split()
        if not words or words[0] in ("note", "section", "edge"):
            continue
        if words[0] == "motif":
            match = _MOTIF.fullmatch(line)
            if match is None:
                raise CannotRead(line)
            form = parse_form(match[2]) if match[2] else None
            blocks.append((MotifText(match[1], form, "starts ws" in (match[3] or "")), []))
            where = blocks[-1][1]
        elif words[0] == "piece":
            pieces.append(PieceText(words[1], "round" in words, line.endswith("starts ws")))
            where = pieces[-1].lines
        elif words[0] == "stitch":
            own = re.match(r"stitch (\w+).*takes (\d+), makes (\d+)", line)
            if own is None:
                raise CannotRead(line)
            file.own[own[1]] = (int(own[2]), int(own[3]))
        elif words[0] in ("yarn", "shade", "strand", "pattern"):
            where = None
        elif where is not None:
            where.append(line)
    for motif, lines in blocks:
        motif.rows = _motif_rows(motif, lines)
        file.motifs[motif.name] = motif
    return file, pieces


def knit_pieces(text: str, size: int = 0) -> dict[str, Knitted]:
    """Knit every piece in file order. Raises `CannotWork` where it cannot be done as written."""
    file, pieces = read_pieces(text)
    holders = Holders()
    made = {piece.name: _knit(piece, file, holders, size) for piece in pieces}
    if holders.held:
        raise CannotWork(f"{sorted(holders.held)} are never taken")
    return made


def _knit(piece: PieceText, file: FileText, holders: Holders, size: int) -> Knitted:
    hands = Hands(file.own, holders, piece.in_round, not piece.starts_ws, size)
    begun = False
    for line in piece.lines:
        _line(line, piece, file, hands)
        begun = begun or hands.on_needle
    if hands.live or not begun:
        raise CannotWork(f"{hands.live} stitches of {piece.name} at its end")
    return Knitted(hands.counts, hands.right_sides)


def _line(line: str, piece: PieceText, file: FileText, hands: Hands) -> None:
    words = line.split()
    holders, size = hands.holders, hands.size
    if line.startswith("cast on") and "more" not in words:
        if hands.on_needle:
            raise CannotWork("cast on over live stitches")
        hands.bring([STITCH] * _number(words[2], size), False)
        return
    if words[0] in ("take", "join") and line != "join round":
        names = line[4:].replace(",", " ").split()
        more = [x for name in names for x in reversed(holders.take(name))]
        hands.bring(more[::-1], True)
        return
    if line.startswith("pick up"):
        hands.bring([STITCH] * _number(words[2], size), False)
        return
    if not hands.on_needle:
        raise CannotWork(f"{line!r} without a stitch")
    if line.startswith("cast on"):
        hands.bring([STITCH] * _number(words[2], size), False)
    elif words[0] == "hold":
        hands.hold(words[-1], None if words[1] == "all" else _number(words[1], size))
    elif line.startswith(("bind off", "leave live")):
        if words[0] == "bind":
            hands.whole()
        else:
            holders.put(piece.name, [x for x in hands.needle if isinstance(x, Loop)], True)
        hands.left, hands.right, hands.on_needle = [], [], False
    elif line in ("join round", "leave round"):
        hands.change_round(line == "join round")
    elif line.startswith("begin round after"):
        hands.begin_after(_number(words[3], size))
    elif words[0] == "work":
        _work(words, file, hands)
    else:
        match = _ROW.fullmatch(line)
        if match is None:
            raise CannotRead(line)
        times = _number(match[1].strip() or "1", size)
        if times > 1 and re.search(r"\b(hold|take)\b", match[2]):
            raise CannotWork("a row that holds or takes is worked once")
        for _ in range(times):
            hands.work(RowText.of(match[2], getattr(line, "number", 0)))


def _work(words: list[str], file: FileText, hands: Hands) -> None:
    motif = file.motifs[words[1]]
    if not _on_form(motif, hands.live):
        raise CannotWork(f"{hands.live} stitches are not on the form of {motif.name}")
    rows = motif.rows
    if words[2] == "for":
        for at in range(_number(words[3], hands.size)):
            hands.work(rows[at % len(rows)])
        return
    if words[2] == "until":
        target = _number(words[3], hands.size)
        for _ in range(100):
            for row in rows:
                hands.work(row)
            if hands.live == target:
                return
        raise CannotWork(f"{target} stitches are never reached")
    times = re.fullmatch(r"x([\d/]+)", "".join(words[2:]))
    if times is None:
        raise CannotRead(" ".join(words))
    for _ in range(_number(times[1], hands.size)):
        for row in rows:
            hands.work(row)
