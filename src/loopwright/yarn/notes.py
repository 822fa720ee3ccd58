"""What the editions print of the yarn: amounts to buy, and notes where a ball changes.

Pure functions from the report to sentences; where several sizes differ, a number stands for each
in order: ``Row 38 (52, 70)``.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from math import ceil

from loopwright.fit.units import cm, grams_and_ounces, inches, metres_and_yards
from loopwright.model.pattern import Pattern, Piece, Work
from loopwright.notation.tree import UntilSpent
from loopwright.yarn.joins import Join
from loopwright.yarn.ledger import Rows
from loopwright.yarn.report import SizeYarn, StrandYarn, YarnReport
from loopwright.yarn.supply import closing


@dataclass(frozen=True, slots=True)
class JoinNote:
    """A join as it is printed: the strand, the item of the piece behind which the note stands,
    and for each size the join, or None where that size does not come to it."""

    strand: str
    item: int
    joins: tuple[Join | None, ...]


def joins_of(report: YarnReport, piece: int, sizes: Sequence[int]) -> tuple[JoinNote, ...]:
    """The joins of a piece (by its place) that a maker must be told of.

    These are the joins where the shade changes or a ball is put by. A new ball of the same shade
    is joined wherever the old one ends.
    """
    chosen = [size for size in report.sizes if size.size in sizes]
    found: dict[tuple[str, int], dict[int, Join]] = {}
    items: dict[tuple[str, int], int] = {}
    for size in chosen:
        for strand in size.strands:
            for join in strand.eaten.joins:
                if join.spot.piece != piece or not (join.changes_shade or join.leaves_some):
                    continue
                key = (strand.name or "", join.run)
                found.setdefault(key, {})[size.size] = join
                items[key] = max(items.get(key, 0), _item(size, join))
    notes = [
        JoinNote(key[0], items[key], tuple(by_size.get(size.size) for size in chosen))
        for key, by_size in found.items()
    ]
    return tuple(sorted(notes, key=lambda note: (note.item, _first_row(note))))


def _first_row(note: JoinNote) -> int:
    return min(join.spot.row for join in note.joins if join is not None)


def _item(size: SizeYarn, join: Join) -> int:
    """The item of the piece in which a join falls; for an edge or an end, the rows before it."""
    item = 0
    for place, part in enumerate(size.ledger.parts):
        if place > join.spot.part:
            break
        if isinstance(part, Rows) and part.piece == join.spot.piece:
            item = part.item
    return item


def join_notes(
    pattern: Pattern,
    report: YarnReport,
    piece: Piece,
    sizes: Sequence[int],
    inches_first: bool,
) -> dict[int, tuple[str, ...]]:
    """The sentences to print behind each item of a piece, by its place among the items."""
    place = pattern.pieces.index(piece)
    out: dict[int, list[str]] = {}
    for index, item in enumerate(piece.items):
        if isinstance(item, Work) and isinstance(item.amount, UntilSpent):
            text = _spent_text(pattern, report, place, index, item.amount, sizes)
            if text:
                out.setdefault(index, []).append(text)
    for note in joins_of(report, place, sizes):
        out.setdefault(note.item, []).append(
            _join_sentence(pattern, report, note, len(pattern.strands) > 1, inches_first)
        )
    return {index: tuple(texts) for index, texts in out.items()}


_PLACES = {
    "cast-on": "in the cast-on",
    "bind-off": "in the bind-off",
    "picking up": "while you pick up stitches",
    "end": "at the end of the work",
    "row": "in this row",
}


def _join_sentence(
    pattern: Pattern, report: YarnReport, note: JoinNote, several: bool, inches_first: bool
) -> str:
    there = [join for join in note.joins if join is not None]
    first = there[0]
    old, new = _shade(pattern, first.old), _shade(pattern, first.new)
    strand = f" of strand {note.strand}" if several else ""
    rows = _sized(note.joins, lambda join: f"{join.spot.row:,}")
    stitches = _sized(note.joins, lambda join: f"{join.spot.stitch:,}")
    if all(join.spot.where != "row" for join in there):
        where = _PLACES[first.spot.where]
    elif all(join.spot.stitch == 0 for join in there):
        where = f"at the start of Row {rows}"
    else:
        where = f"in Row {rows}, after {stitches} stitches"
    tail = f"{inches(first.tail * 1000)} / {cm(first.tail * 1000)}"
    if not inches_first:
        tail = " / ".join(reversed(tail.split(" / ")))
    verb = f"changes to {new}" if old != new else "goes on with a new ball"
    text = f"Yarn: the {old}{strand} {verb} about here: {where}, with ends of {tail} for the join"
    back = report.ends.worked_back * 1000
    if back:
        text += f" (work {cm(back)} / {inches(back)} of each back into its own strand)"
    text += "."
    if any(join.leaves_some for join in there):
        before = _sized(note.joins, lambda join: f"{max(join.spot.row - 1, 0):,}")
        weight = _sized(note.joins, lambda join: f"{join.row_grams or 0:.0f}")
        left = _sized(note.joins, lambda join: f"{join.left_grams or 0:.0f}")
        text += f" After Row {before} the scale should show {weight} g of {old}; "
        text += f"put the ball by at {left} g." if left != weight else "put that ball by."
    return text


def _spent_text(
    pattern: Pattern,
    report: YarnReport,
    place: int,
    item: int,
    amount: UntilSpent,
    sizes: Sequence[int],
) -> str:
    key = amount.strand.key
    limits: list[str] = []
    repeats: list[str] = []
    shade = ""
    for size in report.sizes:
        if size.size not in sizes:
            continue
        strand = size.strand(key)
        gpm = strand.runs[-1].grams_per_metre if strand is not None and strand.runs else None
        if strand is None or gpm is None:
            return ""
        after, one = closing(size.ledger, key, place, item)
        limits.append(_grams((after + one) * gpm))
        repeats.append(_grams(one * gpm))
        shade = _shade(pattern, strand.runs[-1].shade)
    if not limits:
        return ""
    declared = pattern.strand(key)
    name = f" of strand {declared.name.text}" if declared and len(pattern.strands) > 1 else ""
    return (
        f"Yarn: your last ball{name} ({shade}) may end sooner or later than here. Weigh it "
        f"before each repeat, which takes {_texts(repeats)} g: when less than {_texts(limits)} g "
        "are left, do not begin another but go on with what follows; while more is left, work "
        "another."
    )


def _grams(value: float) -> str:
    return f"{value:.0f}" if value >= 9.95 else f"{value:.1f}"


def _shade(pattern: Pattern, key: str) -> str:
    shade = pattern.shade(key)
    if shade is None:
        return key
    return shade.text.text if shade.text is not None else shade.name.text


def _sized(joins: tuple[Join | None, ...], show: Callable[[Join], str]) -> str:
    return _texts([show(join) if join is not None else "–" for join in joins])


def _texts(values: Sequence[str]) -> str:
    if len(set(values)) == 1:
        return values[0]
    return f"{values[0]} ({', '.join(values[1:])})"


def yarn_lines(
    pattern: Pattern, report: YarnReport, sizes: Sequence[int], yards_first: bool
) -> tuple[str, ...]:
    """A line for each shade: what is taken of it; then what the figures rest on."""
    chosen = [size for size in report.sizes if size.size in sizes]
    if len(chosen) < len(sizes) or not chosen:
        return ()
    lines: list[str] = []
    for shade in pattern.shades:
        each = [next((s for s in size.shades if s.key == shade.name.key), None) for size in chosen]
        found = [s for s in each if s is not None]
        if not found:
            continue
        length = _both([s.metres if s else 0.0 for s in each], metres_and_yards, yards_first)
        text = f"{_shade(pattern, shade.name.key)}: about {length}"
        if all(s.grams is not None for s in found):
            grams = [s.grams or 0.0 if s else 0.0 for s in each]
            text += f", {_both(grams, grams_and_ounces, yards_first)}"
        lines.append(text + ".")
    if lines:
        lines.append(_ground_text(chosen[0].strands, report))
    return tuple(lines)


def balls_to_buy(report: YarnReport, sizes: Sequence[int]) -> dict[str, list[int]]:
    """The balls to buy of each shade (by key), a number for each size; empty where one lacks.

    Never fewer than the strands are fed: a writer may know of a second sock.
    """
    chosen = [size for size in report.sizes if size.size in sizes]
    if len(chosen) < len(sizes):
        return {}
    out: dict[str, list[int]] = {}
    for place, size in enumerate(chosen):
        fed: dict[str, float] = {}
        for strand in size.strands:
            for run in strand.runs:
                fed[run.shade] = fed.get(run.shade, 0.0) + (run.balls or 0.0) * run.count
        for shade in size.shades:
            if shade.balls is None:
                return {}
            least = ceil(fed.get(shade.key, 0.0) - 1e-9)
            out.setdefault(shade.key, [0] * len(chosen))[place] = max(shade.balls, least)
    return out


def _ground_text(strands: Sequence[StrandYarn], report: YarnReport) -> str:
    widest = max(strands, key=lambda strand: strand.spread)
    what = {
        "swatch": "a weighed swatch",
        "geometry": "the gauge, by the geometry of plain knit",
    }[widest.loop.ground]
    share = round((report.margin - 1) * 100)
    return (
        f"These amounts rest on {what}, and may be {widest.spread * 100:.0f} % more or less. The "
        f"balls in the table are enough for the upper end and {share} % more."
    )


def _both(values: Sequence[float], show: Callable[[float], str], turned: bool) -> str:
    """``644 (1158, 1823) m / 704 (1266, 1994) yd``."""
    pairs = [show(value).split(" / ") for value in values]
    halves = []
    for side in (1, 0) if turned else (0, 1):
        unit = pairs[0][side].rpartition(" ")[2]
        halves.append(f"{_texts([pair[side].rpartition(' ')[0] for pair in pairs])} {unit}")
    return " / ".join(halves)
