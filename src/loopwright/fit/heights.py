"""New lengths: for each piece and size the rows of its fabric."""

from __future__ import annotations

from loopwright.check.checked import Checked
from loopwright.count.measure import height_of_row
from loopwright.count.walk import Walk
from loopwright.fit.growth import GrowthLever, lever_for
from loopwright.fit.lengths import Part, parts_of, plan_rows, works_to_length, write_plan
from loopwright.fit.note import Figures, Note
from loopwright.fit.slots import Sheet, measure_edit
from loopwright.fit.stops import Stops
from loopwright.model.pattern import Item
from loopwright.problem import Edit


def new_heights(
    checked: Checked,
    aims: dict[tuple[int, int], float],
    before: Checked | None,
    scale: float | None,
    widths_too: bool,
    asked: bool,
    stops: Stops,
    notes: list[str],
) -> list[Edit]:
    """The edits that give each piece (by its place) and size its length in mm.

    `before` is the pattern at its old gauge, where the gauge is new: then every part keeps its own
    height. `asked` is whether a length was asked for at all; else a piece whose rows cannot follow
    is only noted.
    """
    sheet = Sheet(len(checked.pattern.sizes))
    edits: list[Edit] = []
    for place, piece in enumerate(checked.pattern.pieces):
        by_itself = works_to_length(piece)
        to_lengths: dict[int, tuple[Part, list[float | None]]] = {}
        for size in range(len(checked.pattern.sizes)):
            target = aims.get((place, size))
            walk = next(w for w in checked.walks if w.piece is piece and w.size == size)
            if target is None or (by_itself and before is None):
                continue
            if walk.height is None:
                stops.add(
                    piece.span,
                    "the length cannot be counted",
                    "The pattern has no gauge, so nobody can say how many rows the length takes.",
                    "add a line such as “gauge 20 stitches 28 rows = 10 cm”.",
                )
                return []
            # A piece that grows by its repeats has the length that its width gives it.
            growing = _growing(checked, walk) if widths_too else ()
            parts = parts_of(checked, walk, growing)
            # At a new gauge a line that works to a length of its own follows by itself.
            free = by_itself or bool(growing)
            if before is not None and any(part.measure is not None for part in parts):
                parts = [part for part in parts if part.measure is None]
                free = True
            factors = _factors(before, parts)
            if growing and factors is None and scale is not None:
                factors = [scale] * len(parts)
            if (by_itself or growing) and factors is None:
                continue
            if not parts:
                if not free:
                    _no_parts(walk, target, asked, stops, notes)
                continue
            plan = plan_rows(parts, None if free else target, walk.height, factors)
            if plan.missing < -_tolerance(parts) and asked:
                tallest = max(parts, key=lambda part: part.tall)
                stops.add(
                    tallest.span,
                    f"{piece.name.text} cannot be that short",
                    "Not one repeat of this line would be left.",
                )
                continue

            for part, by in write_plan(plan, sheet, size):
                assert part.measure is not None and part.measure.measure is not None
                none: list[float | None] = [None] * len(checked.pattern.sizes)
                _, values = to_lengths.setdefault(id(part.item), (part, none))
                values[size] = part.measure.measure.mm(size) + by
        for part, values in to_lengths.values():
            assert part.measure is not None
            edits += measure_edit(checked.source, part.measure.measure, values)
    return edits + sheet.edits()


def _tolerance(parts: list[Part]) -> float:
    return max(part.unit * part.height for part in parts)


def _growing(checked: Checked, walk: Walk) -> tuple[Item, ...]:
    """The line whose repeats make the width: another length must not undo it."""
    try:
        lever = lever_for(checked, walk.piece, walk.size, 1.0)
    except ValueError:
        return ()
    return (lever.item,) if isinstance(lever, GrowthLever) else ()


def _factors(before: Checked | None, parts: list[Part]) -> list[float] | None:
    """How many times as many rows each part takes at the new gauge; None where it is the old."""
    if before is None:
        return None
    factors = []
    for part in parts:
        motif = getattr(part.item, "plain", None) or getattr(part.item, "motif", None)
        factors.append((height_of_row(before.pattern, motif) or part.height) / part.height)
    return factors if any(abs(factor - 1) > 1e-9 for factor in factors) else None


def _no_parts(walk: Walk, target: float, asked: bool, stops: Stops, notes: list[str]) -> None:
    name = walk.piece.name.text
    assert walk.height is not None
    if asked:
        stops.add(
            walk.piece.span,
            f"{name} cannot change its length",
            f"{name} works no motif so many times or to a length, so nothing says which of its "
            "rows would have to be worked more often.",
            "put the rows that vary into a motif: “work NAME x8” or “work NAME to length”.",
        )
    elif abs(target - walk.height) > 1:
        notes.append(
            Note(
                "the length of {name} follows from its rows: it is {length} now",
                name=name,
                length=Figures(f"{walk.height / 10:.1f} cm"),
            )
        )
