"""New widths: for each piece and size the number its width hangs on."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.checked import Checked
from loopwright.count.measure import width_gauge
from loopwright.count.walk import Moved, Said, Walk
from loopwright.fit.growth import lever_for
from loopwright.fit.least import TooNarrow, is_too_wide
from loopwright.fit.levers import CastLever, Lever
from loopwright.fit.note import Note
from loopwright.fit.slots import Sheet
from loopwright.fit.stops import Stops
from loopwright.fit.targets import Wanted
from loopwright.model.pattern import Piece, PieceRow, Take, Work
from loopwright.notation.source import Span
from loopwright.problem import Edit


def new_widths(
    checked: Checked,
    aims: dict[tuple[int, int], float],
    wish: Wanted,
    stops: Stops,
    notes: list[str],
) -> list[Edit]:
    """The edits that give each piece (by its place) and size its width in mm.

    `wish` is what was asked for the pattern in each size, for the words of what stops it.
    """
    sheet = Sheet(len(checked.pattern.sizes))
    for place, piece in enumerate(checked.pattern.pieces):
        narrow = TooNarrow(piece, wish)
        for size in range(len(checked.pattern.sizes)):
            width = aims.get((place, size))
            if width is not None and not _turn(
                checked, piece, size, width, sheet, narrow, stops, notes
            ):
                break
        narrow.tell(checked.pattern, stops)
    return sheet.edits()


def _turn(
    checked: Checked,
    piece: Piece,
    size: int,
    width: float,
    sheet: Sheet,
    narrow: TooNarrow,
    stops: Stops,
    notes: list[str],
) -> bool:
    """One piece in one size; False where it is stopped."""
    gauge = width_gauge(checked.pattern, piece)
    walk = next(w for w in checked.walks if w.piece is piece and w.size == size)
    if walk.cast_on is None or _goes_on(walk):
        return True
    if gauge is None or gauge.over.unit is None:
        stops.add(
            piece.span,
            "the width cannot be counted",
            "The pattern has no gauge, so nobody can say how many stitches the width takes.",
            "add a line such as “gauge 20 stitches 28 rows = 10 cm”.",
        )
        return False
    lever = lever_for(checked, piece, size, width)
    if is_too_wide(lever, width, stops):
        return False
    found = lever.nearest()
    if found is None or (lever.unit == 0 and found.width and _stuck(lever, found.value)):
        _cannot(checked, lever, stops)
        return False
    if narrow.takes(lever, found, width):
        return True  # the other sizes may be as narrow: one message says it of all
    sheet.take(found.sheet)
    if lever.is_far(found):
        sizes = checked.pattern.sizes
        notes.append(
            Note(
                "no count of {name} fits within half a repeat of that width{where}: the nearest is "
                "{n} stitches, and the width would take {wanted}",
                name=piece.name.text,
                where=Note(" in size {size}", size=sizes[size]) if len(sizes) > 1 else "",
                n=f"{found.widest:,}",
                wanted=f"{lever.wanted:.0f}",
            )
        )
    return True


def _goes_on(walk: Walk) -> bool:
    """Whether a piece begins with stitches that another one has left: it is as wide as they are."""
    first = next((event for event in walk.events if not isinstance(event, Said)), None)
    return isinstance(first, Moved) and isinstance(first.item, Take)


def _stuck(lever: Lever, value: int) -> bool:
    """Whether the one count that fits is not the one the width takes."""
    return abs(value - lever.aim) > 0.5


def _cannot(checked: Checked, lever: Lever, stops: Stops) -> None:
    """Name the lines that hold on one count only."""
    name = lever.piece.name.text
    now = lever.walk.cast_on or 0
    said = False
    for span, what in _fixed_lines(checked, lever):
        said = True
        stops.add(
            span,
            f"{name} cannot change its width",
            f"{what}, and nothing says which of its numbers would have to change with the width "
            f"(it is written for the {now:,} stitches of the cast-on).",
            "let a fill between stars take up the stitches that vary.",
        )
    if not said:
        stops.add(
            lever.piece.span,
            f"{name} cannot change its width",
            f"No other count near that width suits all the rows of {name}.",
        )


def _fixed_lines(checked: Checked, lever: Lever) -> Iterator[tuple[Span, str]]:
    """The lines of a piece that hold on one count only, with the start of a sentence on each."""
    loose = {index for index, _ in lever.loose} if isinstance(lever, CastLever) else set()
    for index, item in enumerate(lever.piece.items):
        if isinstance(item, PieceRow):
            if not checked.tapes.of(item.row.body, lever.size).fills and index not in loose:
                yield item.row.place, "This row has no fill"
        elif isinstance(item, Work) and item.motif is not None:
            form = item.motif.form
            if form is not None and form.unit == 0:
                yield form.span, f"The motif {item.motif.name.text} is worked over one count only"
                continue
            for row in item.motif.rows:
                tape = checked.tapes.of(row.body, lever.size)
                if not tape.fills and row.as_row is None:
                    yield row.place, f"Row {row.number} of {item.motif.name.text} has no fill"
