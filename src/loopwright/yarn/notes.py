"""What the editions print of the yarn: amounts to buy, and notes where a ball changes.

Pure functions from the report to sentences; where several sizes differ, a number stands for each
in order: ``Row 38 (52, 70)``.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from math import ceil

from loopwright.fit.units import cm, grams_and_ounces, inches, metres_and_yards
from loopwright.model.pattern import Pattern, Piece, Work
from loopwright.notation.tree import UntilSpent
from loopwright.record import dataclass
from loopwright.yarn.joins import Join
from loopwright.yarn.ledger import Rows
from loopwright.yarn.report import SizeYarn, StrandYarn, YarnReport
from loopwright.yarn.supply import closing

Say = Callable[[str], str]


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
    text: Say = str,
) -> dict[int, tuple[str, ...]]:
    """The sentences to print behind each item of a piece, by its place among the items.

    `text` turns each English message into the words of the pages.
    """
    place = pattern.pieces.index(piece)
    out: dict[int, list[str]] = {}
    for index, item in enumerate(piece.items):
        if isinstance(item, Work) and isinstance(item.amount, UntilSpent):
            spent = _spent_text(pattern, report, place, index, item.amount, sizes, text)
            if spent:
                out.setdefault(index, []).append(spent)
    for note in joins_of(report, place, sizes):
        out.setdefault(note.item, []).append(
            _join_sentence(pattern, report, note, len(pattern.strands) > 1, inches_first, text)
        )
    return {index: tuple(texts) for index, texts in out.items()}


def _place_text(where: str, text: Say) -> str:
    """Where between rows a ball ends."""
    if where == "cast-on":
        return text("in the cast-on")
    if where == "bind-off":
        return text("in the bind-off")
    if where == "picking up":
        return text("while you pick up stitches")
    return text("at the end of the work")


def _join_sentence(
    pattern: Pattern,
    report: YarnReport,
    note: JoinNote,
    several: bool,
    inches_first: bool,
    text: Say,
) -> str:
    there = [join for join in note.joins if join is not None]
    first = there[0]
    old, new = _shade(pattern, first.old), _shade(pattern, first.new)
    rows = _sized(note.joins, lambda join: f"{join.spot.row:,}")
    stitches = _sized(note.joins, lambda join: f"{join.spot.stitch:,}")
    if all(join.spot.where != "row" for join in there):
        where = _place_text(first.spot.where, text)
    elif all(join.spot.stitch == 0 for join in there):
        where = text("at the start of Row {row}").format(row=rows)
    else:
        where = text("in Row {row}, after {stitches} stitches").format(row=rows, stitches=stitches)
    tail = f"{inches(first.tail * 1000)} / {cm(first.tail * 1000)}"
    if not inches_first:
        tail = " / ".join(reversed(tail.split(" / ")))
    ball = f"{old} ({note.strand})" if several else old
    if old != new:
        message = (
            "Yarn: the {ball} changes to {new} about here: {where}, with ends of {tail} for the "
            "join."
        )
    else:
        message = (
            "Yarn: the {ball} goes on with a new ball about here: {where}, with ends of {tail} "
            "for the join."
        )
    said = text(message).format(ball=ball, new=new, where=where, tail=tail)
    back = report.ends.worked_back * 1000
    if back:
        message = " Work {length} of each end back into its own strand."
        said += text(message).format(length=f"{cm(back)} / {inches(back)}")
    if any(join.leaves_some for join in there):
        before = _sized(note.joins, lambda join: f"{max(join.spot.row - 1, 0):,}")
        weight = _sized(note.joins, lambda join: f"{join.row_grams or 0:.0f}")
        left = _sized(note.joins, lambda join: f"{join.left_grams or 0:.0f}")
        if left != weight:
            message = (
                " After Row {row} the scale should show {grams} g of {old}; put the ball by at "
                "{left} g."
            )
        else:
            message = " After Row {row} the scale should show {grams} g of {old}; put that ball by."
        said += text(message).format(row=before, grams=weight, old=old, left=left)
    return said


def _spent_text(
    pattern: Pattern,
    report: YarnReport,
    place: int,
    item: int,
    amount: UntilSpent,
    sizes: Sequence[int],
    text: Say,
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
    ball = f"{shade}, {declared.name.text}" if declared and len(pattern.strands) > 1 else shade
    message = (
        "Yarn: your last ball ({ball}) may end sooner or later than here. Weigh it before each "
        "repeat, which takes {one} g: when less than {limit} g are left, do not begin another but "
        "go on with what follows; while more is left, work another."
    )
    return text(message).format(ball=ball, one=_texts(repeats), limit=_texts(limits))


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
    pattern: Pattern,
    report: YarnReport,
    sizes: Sequence[int],
    text: Say = str,
) -> tuple[str, ...]:
    """What the figures of `needed` rest on; empty where a size has none.

    `text` turns each English message into the words of the pages.
    """
    chosen = [size for size in report.sizes if size.size in sizes]
    if len(chosen) < len(sizes) or not chosen:
        return ()
    known = {shade.key for size in chosen for shade in size.shades}
    if not any(shade.name.key in known for shade in pattern.shades):
        return ()
    return (_ground_text(chosen[0].strands, report, text),)


def needed(
    report: YarnReport, sizes: Sequence[int], yards_first: bool
) -> dict[str, tuple[str, str]]:
    """What is knit of each shade (by key), its length and its weight, a number for each size.

    ``600 (1000) m / 656 (1094) yd`` and ``300 (500) g / 10½ (17¾) oz``; the weight is empty where
    the balls do not say it. Without any margin, which is in `balls_to_buy`.
    """
    chosen = [size for size in report.sizes if size.size in sizes]
    if len(chosen) < len(sizes) or not chosen:
        return {}
    out: dict[str, tuple[str, str]] = {}
    for key in dict.fromkeys(shade.key for size in chosen for shade in size.shades):
        each = [next((s for s in size.shades if s.key == key), None) for size in chosen]
        length = _both([s.metres if s else 0.0 for s in each], metres_and_yards, yards_first)
        weight = ""
        if all(s.grams is not None for s in each if s is not None):
            grams = [s.grams or 0.0 if s else 0.0 for s in each]
            weight = _both(grams, grams_and_ounces, yards_first)
        out[key] = (length, weight)
    return out


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


def _ground_text(strands: Sequence[StrandYarn], report: YarnReport, text: Say) -> str:
    widest = max(strands, key=lambda strand: strand.spread)
    if widest.loop.ground == "swatch":
        message = (
            "These amounts rest on a weighed swatch, and may be {spread} % more or less. The balls "
            "to buy are enough for the upper end and {share} % more."
        )
    else:
        message = (
            "These amounts rest on the gauge, by the geometry of plain knit, and may be {spread} % "
            "more or less. The balls to buy are enough for the upper end and {share} % more."
        )
    share = round((report.margin - 1) * 100)
    return text(message).format(spread=f"{widest.spread * 100:.0f}", share=share)


def _both(values: Sequence[float], show: Callable[[float], str], turned: bool) -> str:
    """``644 (1158, 1823) m / 704 (1266, 1994) yd``."""
    pairs = [show(value).split(" / ") for value in values]
    halves = []
    for side in (1, 0) if turned else (0, 1):
        unit = pairs[0][side].rpartition(" ")[2]
        halves.append(f"{_texts([pair[side].rpartition(' ')[0] for pair in pairs])} {unit}")
    return " / ".join(halves)
