"""New counts for a new size or gauge, written into the text where the old ones stand."""

from __future__ import annotations

from collections.abc import Callable

from loopwright.check.checked import Checked
from loopwright.count.walk import Walk
from loopwright.count.widths import piece_width
from loopwright.fit.asked import Wish
from loopwright.fit.claims import Claimed, mend_claims
from loopwright.fit.columns import add_column, only_column
from loopwright.fit.gauges import gauge_edits, gauge_of, needle_advice
from loopwright.fit.heights import new_heights
from loopwright.fit.note import Note
from loopwright.fit.slots import measure_edit
from loopwright.fit.stops import CannotResize, Stops, stop_at_literal_shapes
from loopwright.fit.targets import Wanted, length_target, stated, width_target
from loopwright.fit.turning import new_widths
from loopwright.notation.rewrite import apply_edits
from loopwright.notation.source import Source
from loopwright.problem import Edit
from loopwright.record import dataclass, replace

__all__ = ["CannotResize", "Resized", "Wish", "resize"]

Check = Callable[[Source], Checked]
Targets = dict[tuple[int, int], float]
"""What a piece (by its place) should measure in a size, in mm; what is not in it stays."""


@dataclass(frozen=True, slots=True)
class Resized:
    """The new source and what a reader of the call should know."""

    source: Source
    notes: tuple[str, ...]
    claims: tuple[Claimed, ...] = ()


@dataclass(frozen=True, slots=True)
class _Aims:
    """What every piece should measure, and what the pattern's own lines should say."""

    widths: Targets
    lengths: Targets
    pattern_width: Wanted
    pattern_length: Wanted
    asked_length: bool


def resize(checked: Checked, wish: Wish, check: Check) -> Resized:
    """Find the new counts and write them in. Raises CannotResize, ValueError for a wrong wish.

    The count for a width is the nearest one that every row and motif of the piece takes, of two
    equally near ones the larger. Rows go by whole motifs; what is not fabric stays. The result is
    for the caller to check; `check` is asked for the counts on the way.
    """
    notes: list[str] = []
    stop_at_literal_shapes(checked, wish)
    if wish.only is not None:
        place = checked.pattern.sizes.index(wish.only)
        checked = check(only_column(checked, place))
        wish = replace(wish, width=_one(wish.width, place), length=_one(wish.length, place))
    if wish.add is not None:
        source, place, model = add_column(checked, wish.add.name, wish.add.width, wish.add.length)
        old = checked.pattern.sizes[model]
        checked = check(source)
        sizes = range(len(checked.pattern.sizes))
        wish = replace(
            wish,
            width=tuple(wish.add.width if s == place else None for s in sizes),
            length=tuple(wish.add.length if s == place else None for s in sizes),
        )
        notes.append(
            f"size {wish.add.name if wish.add else ''} began as a copy of {old}; the balls a "
            "strand feeds on are still those"
        )
    aims = _aims(checked, wish)
    before = checked if wish.gauges else None
    checked = _regauged(checked, wish, check, notes)
    claims: list[Claimed] = []
    stops = Stops()
    if aims.widths:
        edits = _measures(checked, "width", aims.pattern_width, aims.widths)
        edits += new_widths(checked, aims.widths, wish.width, stops, notes)
        stops.raise_any(checked.source)
        checked = _rechecked(checked, edits, check, claims)
    if aims.lengths:
        edits = _measures(checked, "length", aims.pattern_length, aims.lengths)
        edits += new_heights(
            checked,
            aims.lengths,
            before,
            wish.scale,
            bool(aims.widths),
            aims.asked_length,
            stops,
            notes,
        )
        stops.raise_any(checked.source)
        checked = _rechecked(checked, edits, check, claims)
    if wish.everywhere:
        for kind, wanted in (("width", wish.width), ("length", wish.length)):
            if len(wanted) > 1 and len(set(wanted)) == 1 and wanted[0] is not None:
                message = "all sizes now have the same width; --size NAME changes one alone"
                if kind == "length":
                    message = "all sizes now have the same length; --size NAME changes one alone"
                notes.append(Note(message))
    return Resized(checked.source, tuple(dict.fromkeys(notes)), tuple(claims))


def _one(wanted: Wanted, place: int) -> Wanted:
    return (wanted[place],)


def _aims(checked: Checked, wish: Wish) -> _Aims:
    """What is to be measured afterwards, by the pattern as it stands before."""
    pattern = checked.pattern
    sizes = range(len(pattern.sizes))
    widths: Targets = {}
    lengths: Targets = {}
    chosen = [wish.size is None or pattern.sizes[s] == wish.size for s in sizes]
    for walk in checked.walks:
        key = (pattern.pieces.index(walk.piece), walk.size)
        wide = _aim(checked, walk, "width", wish, chosen[walk.size])
        long = _aim(checked, walk, "length", wish, chosen[walk.size])
        if wide is not None:
            widths[key] = wide
        if long is not None:
            lengths[key] = long

    def line(kind: str, wanted: Wanted) -> Wanted:
        measure = getattr(pattern, kind)
        if measure is None or measure.unit is None:
            return (None,) * len(pattern.sizes)
        by = wish.scale
        return tuple(
            w if w is not None else measure.mm(s) * by if by is not None and chosen[s] else None
            for s, w in zip(sizes, wanted, strict=True)
        )

    return _Aims(
        widths,
        lengths,
        line("width", wish.width),
        line("length", wish.length),
        wish.scale is not None or any(w is not None for w in wish.length),
    )


def _aim(checked: Checked, walk: Walk, kind: str, wish: Wish, chosen: bool) -> float | None:
    wanted = (wish.width if kind == "width" else wish.length)[walk.size]
    find = width_target if kind == "width" else length_target
    if wanted is not None:
        return find(checked, walk, wanted)
    if not wish.gauges and (wish.scale is None or not chosen):
        return None
    now = stated(checked.pattern, walk.piece, kind, walk.size)
    counted = piece_width(checked.pattern, walk) if kind == "width" else walk.height
    if now is None:
        now = counted
    if now is None:
        return None
    return now * wish.scale if wish.scale is not None and chosen else now


def _regauged(checked: Checked, wish: Wish, check: Check, notes: list[str]) -> Checked:
    """The pattern with its new gauges."""
    edits: list[Edit] = []
    for gauge_wish in wish.gauges:
        gauge = gauge_of(checked.pattern, gauge_wish)
        found, said = gauge_edits(checked.source, gauge, gauge_wish)
        edits += found
        notes += said
    if not wish.gauges:
        return checked
    asked = {id(gauge_of(checked.pattern, w)) for w in wish.gauges}
    for gauge in checked.pattern.gauges:
        if id(gauge) not in asked:
            name = gauge.fabric.text if gauge.fabric else ""
            notes.append(
                Note(
                    "the gauge in {name} stays as it is; give yours with --gauge “… in {name}”",
                    name=name,
                )
                if name
                else Note("the other gauge stays as it is")
            )
    if any(swatch.weight is not None for swatch in checked.pattern.swatches) and edits:
        notes.append(
            Note(
                "the swatch line was weighed at the old gauge, and the yarn figures rest on it: "
                "weigh your own"
            )
        )
    if edits:
        source = Source.of(checked.source.name, apply_edits(checked.source.text, edits))
        checked = check(source)
    main = checked.pattern.gauge_for(None)
    advice = needle_advice(main) if main is not None else None
    if advice is not None:
        notes.append(advice)
    return checked


def _measures(checked: Checked, kind: str, whole: Wanted, aims: Targets) -> list[Edit]:
    """The lines that state a measure, in the writer's own unit."""
    pattern, source = checked.pattern, checked.source
    edits = measure_edit(source, getattr(pattern, kind), whole)
    sizes = range(len(pattern.sizes))
    for place, piece in enumerate(pattern.pieces):
        own = getattr(piece, kind)
        edits += measure_edit(source, own, [aims.get((place, size)) for size in sizes])
    return edits


def _rechecked(checked: Checked, edits: list[Edit], check: Check, claims: list[Claimed]) -> Checked:
    """The source with some edits, and with the claims that follow from them."""
    if not edits:
        return checked
    again = check(Source.of(checked.source.name, apply_edits(checked.source.text, edits)))
    mended, said = mend_claims(again)
    if not mended:
        return again
    claims += said
    return check(Source.of(again.source.name, apply_edits(again.source.text, mended)))
