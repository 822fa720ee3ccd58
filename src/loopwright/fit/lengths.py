"""New numbers of rows for a length: whole motifs, ends kept, row parity kept."""

from __future__ import annotations

from math import floor, lcm

from loopwright.check.checked import Checked
from loopwright.count.measure import height_of_row
from loopwright.count.walk import Walk, Worked
from loopwright.fit.slots import Sheet
from loopwright.model.pattern import Item, Piece, PieceRow, Spread, Work
from loopwright.notation.source import Span
from loopwright.notation.tree import Count, ForRows, Times, ToLength
from loopwright.record import dataclass

FABRIC_ROWS = 8
"""A row line worked so often or more (or with a number for each size) is fabric, which may grow;
one of fewer rows is a border and stays."""


BORDER = 1 / 3
"""A part of less than this share of the tallest part's height is a border too, and stays where
another length is asked for; at a new gauge it keeps its height."""


@dataclass(frozen=True, slots=True)
class Part:
    """A line of a piece that may be worked longer: `rows` now, by whole `unit`s, `least` at least.

    `height` is that of a row in mm. `write` puts a new number of rows into a sheet; `measure` is
    set instead for a line that works to a length of its own.
    """

    item: Item
    span: Span
    rows: int
    unit: int
    least: int
    height: float
    count: Count | None
    per_count: int
    measure: ToLength | None = None

    @property
    def tall(self) -> float:
        return self.rows * self.height


@dataclass(frozen=True, slots=True)
class Plan:
    """New rows for the parts of a piece in one size, and how far it still is off, in mm."""

    rows: tuple[tuple[Part, int], ...]
    missing: float


def works_to_length(piece: Piece) -> bool:
    """Whether a line of the piece works to the stated length, and so follows it by itself."""
    return any(
        isinstance(amount, ToLength) and amount.measure is None
        for item in piece.items
        if (amount := getattr(item, "over", None) or getattr(item, "amount", None)) is not None
    )


def parts_of(checked: Checked, walk: Walk, without: tuple[Item, ...] = ()) -> list[Part]:
    """The lines of a walked piece that may be worked longer, in order."""
    parts: list[Part] = []
    for index, item in enumerate(walk.piece.items):
        events = [e for e in walk.events if isinstance(e, Worked) and e.index == index]
        if not events or item in without:
            continue
        part = _part(checked, walk, item, events)
        if part is not None:
            parts.append(part)
    return parts


def _part(checked: Checked, walk: Walk, item: Item, events: list[Worked]) -> Part | None:
    size = walk.size
    rows = sum(event.rows for event in events)
    turn = 2  # an even number of rows more or fewer: the piece ends on the side it ended on
    motif = getattr(item, "plain", None) or getattr(item, "motif", None)
    height = height_of_row(checked.pattern, motif)
    if height is None:
        return None
    if isinstance(item, PieceRow):
        tape = checked.tapes.of(item.row.body, size)
        if item.times is None or tape.fixed_makes != tape.fixed_takes:
            return None
        if any(op.makes != op.takes for op in tape.ops):
            return None
        varies = len(set(item.times.values)) > 1
        if rows < FABRIC_ROWS and not varies:
            return None
        return Part(item, item.times.span, rows, turn, turn, height, item.times, 1)
    if isinstance(item, Spread):
        assert item.plain is not None
        if not isinstance(item.over, ForRows):
            return None
        step = len(item.plain.rows) if events[0].round else lcm(len(item.plain.rows), turn)
        changes = sum(
            event.chunk.reps
            for event in events
            if any(entry.start != entry.end for entry in event.chunk.entries)
        )
        unit = lcm(step, turn)
        return Part(
            item, item.over.span, rows, unit, max(changes, 1) * step, height, item.over.rows, 1
        )
    if not isinstance(item, Work) or item.motif is None:
        return None
    length = len(item.motif.rows)
    unit = length if events[0].round and length > 1 else lcm(length, turn)
    amount = item.amount
    if isinstance(amount, Times):
        return Part(item, amount.span, rows, unit, length, height, amount.count, length)
    if isinstance(amount, ForRows):
        return Part(item, amount.span, rows, unit, min(unit, rows), height, amount.rows, 1)
    if isinstance(amount, ToLength) and amount.measure is not None:
        return Part(item, amount.span, rows, length, length, height, None, 1, amount)
    return None


def plan_rows(
    parts: list[Part], target: float | None, now: float, factors: list[float] | None = None
) -> Plan:
    """Rows for a height of `target` mm, where the whole is `now` mm high.

    Every part grows in proportion (or by its own factor, at a new gauge) by whole units, and the
    tallest takes what is left; without a target it too has its factor. Without factors nothing
    changes where the height is as near already as the tallest part's unit allows.
    """
    if not parts:
        return Plan((), 0.0 if target is None else target - now)
    tallest = max(parts, key=lambda part: part.tall)
    left = 0.0 if target is None else target - now
    if factors is None:
        if abs(left) <= tallest.unit * tallest.height / 2 + 1e-6:
            return Plan(tuple((part, part.rows) for part in parts), left)
        body = [part for part in parts if part.tall >= tallest.tall * BORDER]
        together = sum(part.tall for part in body)
        factors = [(left + together) / together if part in body else 1.0 for part in parts]
    rows: dict[int, int] = {}
    for part, factor in zip(parts, factors, strict=True):
        if part is tallest and target is not None:
            continue
        rows[id(part)] = _whole(part, part.rows * factor)
        left -= (rows[id(part)] - part.rows) * part.height
    if target is None:
        left = 0.0
    else:
        rows[id(tallest)] = _whole(tallest, tallest.rows + left / tallest.height)
        left -= (rows[id(tallest)] - tallest.rows) * tallest.height
    return Plan(tuple((part, rows[id(part)]) for part in parts), left)


def _whole(part: Part, rows: float) -> int:
    """The nearest number of rows that keeps the part's end and parity; halves go up."""
    by = floor((rows - part.rows) / part.unit + 0.5 + 1e-9)
    new = part.rows + by * part.unit
    while new < part.least:
        new += part.unit
    return new


def write_plan(plan: Plan, sheet: Sheet, size: int) -> list[tuple[Part, float]]:
    """Put a plan into a sheet; gives the lines that work to a length of their own, and by how
    many mm that length changes (it is measured from the cast-on, so what lies before counts)."""
    to_lengths: list[tuple[Part, float]] = []
    grown = 0.0
    for part, rows in plan.rows:
        grown += (rows - part.rows) * part.height
        if part.count is not None and rows != part.rows:
            sheet.put_count(part.count, size, rows // part.per_count)
        elif part.measure is not None and grown:
            to_lengths.append((part, grown))
    return to_lengths
