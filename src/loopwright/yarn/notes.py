"""What the editions print of the yarn: amounts to buy, and notes where a ball changes.

Pure functions from the report to sentences; where several sizes differ, a number stands for each
in order: ``Row 38 (52, 70)``.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from math import ceil
from typing import Protocol

from loopwright.fit.units import cm, grams_and_ounces, inches, metres_and_yards
from loopwright.model.pattern import Pattern, Piece, Work
from loopwright.notation.tree import UntilSpent
from loopwright.record import dataclass
from loopwright.yarn.joins import Join
from loopwright.yarn.ledger import Rows
from loopwright.yarn.report import SizeYarn, StrandYarn, YarnReport
from loopwright.yarn.supply import closing


class Words(Protocol):
    """The words of the pages: what these notes need of a catalogue."""

    @property
    def between_sizes(self) -> str:
        """What parts the numbers of several sizes."""

    def say(self, message: str, **parts: object) -> str:
        """An English message in the language of the pages, with its parts put in."""

    def figures(self, text: str) -> str:
        """Figures with their units as the language writes them."""

    def grouped(self, number: int) -> str:
        """A whole number with its thousands parted."""


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
    words: Words,
) -> dict[int, tuple[str, ...]]:
    """The sentences to print behind each item of a piece, by its place among the items."""
    place = pattern.pieces.index(piece)
    out: dict[int, list[str]] = {}
    for index, item in enumerate(piece.items):
        if isinstance(item, Work) and isinstance(item.amount, UntilSpent):
            spent = _spent_text(pattern, report, place, index, item.amount, sizes, words)
            if spent:
                out.setdefault(index, []).append(spent)
    for note in joins_of(report, place, sizes):
        out.setdefault(note.item, []).append(
            _join_sentence(pattern, report, note, len(pattern.strands) > 1, inches_first, words)
        )
    return {index: tuple(texts) for index, texts in out.items()}


def _place_text(where: str, words: Words) -> str:
    """Where between rows a ball ends."""
    if where == "cast-on":
        return words.say("in the cast-on")
    if where == "bind-off":
        return words.say("in the bind-off")
    if where == "picking up":
        return words.say("while you pick up stitches")
    return words.say("at the end of the work")


def _join_sentence(
    pattern: Pattern,
    report: YarnReport,
    note: JoinNote,
    several: bool,
    inches_first: bool,
    words: Words,
) -> str:
    there = [join for join in note.joins if join is not None]
    first = there[0]
    old, new = _shade(pattern, first.old), _shade(pattern, first.new)
    apart = words.between_sizes
    rows = _sized(note.joins, lambda join: words.grouped(join.spot.row), apart)
    stitches = _sized(note.joins, lambda join: words.grouped(join.spot.stitch), apart)
    if all(join.spot.where != "row" for join in there):
        where = _place_text(first.spot.where, words)
    elif all(join.spot.stitch == 0 for join in there):
        message = "at the start of Row {row}"
        if all(join.spot.round for join in there):
            message = "at the start of Round {row}"
        where = words.say(message, row=rows)
    else:
        message = "in Row {row}, after {stitches} stitches"
        if all(join.spot.round for join in there):
            message = "in Round {row}, after {stitches} stitches"
        where = words.say(message, row=rows, stitches=stitches)
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
    said = words.say(message, ball=ball, new=new, where=where, tail=words.figures(tail))
    back = report.ends.worked_back * 1000
    if back:
        message = " Work {length} of each end back into its own strand."
        said += words.say(message, length=words.figures(f"{cm(back)} / {inches(back)}"))
    if any(join.leaves_some for join in there):
        before = _sized(note.joins, lambda join: words.grouped(max(join.spot.row - 1, 0)), apart)
        weight = _sized(note.joins, lambda join: f"{join.row_grams or 0:.0f}", apart)
        left = _sized(note.joins, lambda join: f"{join.left_grams or 0:.0f}", apart)
        rounds = all(join.round_before for join in there)
        if left != weight:
            message = (
                " After Row {row} the scale should show {grams} of {old}; put the ball by at "
                "{left}."
            )
            if rounds:
                message = (
                    " After Round {row} the scale should show {grams} of {old}; put the ball by "
                    "at {left}."
                )
        else:
            message = " After Row {row} the scale should show {grams} of {old}; put that ball by."
            if rounds:
                message = (
                    " After Round {row} the scale should show {grams} of {old}; put that ball by."
                )
        grams, kept = words.figures(f"{weight} g"), words.figures(f"{left} g")
        said += words.say(message, row=before, grams=grams, old=old, left=kept)
    return said


def _spent_text(
    pattern: Pattern,
    report: YarnReport,
    place: int,
    item: int,
    amount: UntilSpent,
    sizes: Sequence[int],
    words: Words,
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
        "repeat, which takes {one}: when less than {limit} are left, do not begin another but "
        "go on with what follows; while more is left, work another."
    )
    each, limit = (
        words.figures(f"{_texts(values, words.between_sizes)} g") for values in (repeats, limits)
    )
    return words.say(message, ball=ball, one=each, limit=limit)


def _grams(value: float) -> str:
    return f"{value:.0f}" if value >= 9.95 else f"{value:.1f}"


def _shade(pattern: Pattern, key: str) -> str:
    shade = pattern.shade(key)
    if shade is None:
        return key
    return shade.text.text if shade.text is not None else shade.name.text


def _sized(joins: tuple[Join | None, ...], show: Callable[[Join], str], apart: str) -> str:
    return _texts([show(join) if join is not None else "–" for join in joins], apart)


def _texts(values: Sequence[str], apart: str) -> str:
    if len(set(values)) == 1:
        return values[0]
    return f"{values[0]} ({apart.join(values[1:])})"


def yarn_lines(
    pattern: Pattern,
    report: YarnReport,
    sizes: Sequence[int],
    words: Words,
) -> tuple[str, ...]:
    """What the figures of `needed` rest on; empty where a size has none."""
    chosen = [size for size in report.sizes if size.size in sizes]
    if len(chosen) < len(sizes) or not chosen:
        return ()
    known = {shade.key for size in chosen for shade in size.shades}
    if not any(shade.name.key in known for shade in pattern.shades):
        return ()
    return (_ground_text(chosen[0].strands, report, words),)


def needed(
    report: YarnReport, sizes: Sequence[int], yards_first: bool, apart: str = ", "
) -> dict[str, tuple[str, str]]:
    """What is knit of each shade (by key), its length and its weight, a number for each size.

    ``600 (1000) m / 656 (1094) yd`` and ``300 (500) g / 10½ (17¾) oz``; the weight is empty where
    the balls do not say it. Without any margin, which is in `balls_to_buy`. `apart` parts
    the sizes.
    """
    chosen = [size for size in report.sizes if size.size in sizes]
    if len(chosen) < len(sizes) or not chosen:
        return {}
    out: dict[str, tuple[str, str]] = {}
    for key in dict.fromkeys(shade.key for size in chosen for shade in size.shades):
        each = [next((s for s in size.shades if s.key == key), None) for size in chosen]
        length = _both([s.metres if s else 0.0 for s in each], metres_and_yards, yards_first, apart)
        weight = ""
        if all(s.grams is not None for s in each if s is not None):
            grams = [s.grams or 0.0 if s else 0.0 for s in each]
            weight = _both(grams, grams_and_ounces, yards_first, apart)
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


def _ground_text(strands: Sequence[StrandYarn], report: YarnReport, words: Words) -> str:
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
    return words.say(message, spread=f"{widest.spread * 100:.0f}", share=share)


def _both(values: Sequence[float], show: Callable[[float], str], turned: bool, apart: str) -> str:
    """``644 (1158, 1823) m / 704 (1266, 1994) yd``."""
    pairs = [show(value).split(" / ") for value in values]
    halves = []
    for side in (1, 0) if turned else (0, 1):
        unit = pairs[0][side].rpartition(" ")[2]
        numbers = [pair[side].rpartition(" ")[0] for pair in pairs]
        halves.append(f"{_texts(numbers, apart)} {unit}")
    return " / ".join(halves)
