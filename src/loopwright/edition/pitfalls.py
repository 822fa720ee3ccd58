"""Where a maker usually errs, told from a walk: sides, strands, offsets, counts, short rows."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.count.repeat import Entry
from loopwright.count.walk import Walk, Worked
from loopwright.edition.voice import Voice
from loopwright.model.body import Fill, Group, Step, Stitches
from loopwright.model.pattern import Motif, Row
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class Point:
    """`where` in the piece, and what to watch there."""

    where: str
    text: str


@dataclass(frozen=True, slots=True)
class _Spot:
    """A row where it is first worked: its event, its place in it, and how often it comes."""

    event: Worked
    index: int
    times: int

    @property
    def row(self) -> Row:
        return self.entry.row

    @property
    def entry(self) -> Entry:
        entries = self.event.chunk.entries
        return entries[self.index % len(entries)]

    @property
    def number(self) -> int:
        return self.event.first_row + self.index


@dataclass(frozen=True, slots=True)
class Change:
    """A row at which another strand takes over.

    `index` is its place among the event's entries, `first` counts the event's rows up to the
    first time, `times` says how often.
    """

    event: Worked
    index: int
    first: int
    times: int


def changes_of(walk: Walk) -> Iterator[Change]:
    """Where strands take over, in the order of the entries; the cast-on's is the first."""
    strand: str | None = None
    for event in walk.events:
        if not isinstance(event, Worked):
            named = getattr(getattr(event, "item", None), "strand", None)
            strand = named.key if named is not None else strand
            continue
        chunk = event.chunk
        named_rows = [entry.row.strand.key for entry in chunk.entries if entry.row.strand]
        # In a repeat after the first, the row before the first one is the last.
        first, again = strand, named_rows[-1] if named_rows else strand
        for index, entry in enumerate(chunk.entries):
            if entry.row.strand is None:
                continue
            key = entry.row.strand.key
            at_first = first is not None and first != key
            later = chunk.reps - 1 if again is not None and again != key else 0
            if at_first or later:
                start = index if at_first else index + len(chunk.entries)
                yield Change(event, index, start, at_first + later)
            first = again = key
        strand = named_rows[-1] if named_rows else strand


def points_of(walk: Walk, voice: Voice) -> tuple[Point, ...]:
    """The points of one piece in one size, in the order of its rows."""
    points: list[tuple[int, Point]] = []

    def add(spot: _Spot, text: str) -> None:
        at, event = spot.index, spot.event
        label = voice.label(spot.number, spot.number, event.is_round(at), event.is_rs(at))
        points.append((spot.number, Point(label.rstrip(": \u00a0"), text)))

    seen: set[tuple[str, int]] = set()
    side: tuple[bool, bool] | None = None
    for spot in _spots(walk):
        row = spot.row
        how = _side(spot)
        if side is not None and how != side:
            add(spot, _turned(side, how, voice))
        side = how
        for kind, text in _of_row(spot, voice):
            if (kind, id(row)) not in seen:
                seen.add((kind, id(row)))
                add(spot, text)
    for change in changes_of(walk):
        row = change.event.chunk.entries[change.index].row
        spot = _Spot(change.event, change.first, change.times)
        if ("strand", id(row)) not in seen and row.strand is not None:
            seen.add(("strand", id(row)))
            again = voice.t("; so in every repeat") if change.times > 1 else ""
            message = "strand {strand} takes over at {edge}{again}."
            add(
                spot, voice.t(message, strand=row.strand.text, edge=_edge(spot, voice), again=again)
            )
    return tuple(point for _, point in sorted(points, key=lambda pair: pair[0]))


def _spots(walk: Walk) -> Iterator[_Spot]:
    for event in walk.events:
        if isinstance(event, Worked):
            for index in range(len(event.chunk.entries)):
                yield _Spot(event, index, event.chunk.reps)


def _side(spot: _Spot) -> tuple[bool, bool]:
    """Whether it is a round, and whether odd numbers are right-side rows."""
    whole = spot.event.is_round(spot.index)
    return whole, whole or spot.event.is_rs(spot.index) == (spot.number % 2 == 1)


def _turned(before: tuple[bool, bool], now: tuple[bool, bool], voice: Voice) -> str:
    if now[0] and not before[0]:
        return voice.t("from here the right side faces in every round.")
    if before[0] and not now[0]:
        return voice.t("from here the work is turned after every row.")
    if now[1]:
        return voice.t("sides and numbers part: from here right-side rows have odd numbers.")
    return voice.t("sides and numbers part: from here right-side rows have even numbers.")


def _edge(spot: _Spot, voice: Voice) -> str:
    if spot.event.is_round(spot.index):
        return voice.t("the beginning of the round")
    # As seen from the right side: right-side rows run from the right edge to the left one.
    if spot.event.is_rs(spot.index):
        return voice.t("the right edge, seen from the right side")
    return voice.t("the left edge, seen from the right side")


def _of_row(spot: _Spot, voice: Voice) -> Iterator[tuple[str, str]]:
    entry = spot.entry
    row = entry.row
    start, end = entry.start, entry.end
    if (start.fixed, start.unit) != (end.fixed, end.unit):
        change = end.fixed - start.fixed
        if change > 0:
            message = "count: {before} before, {after} after ({n} more){again}."
        else:
            message = "count: {before} before, {after} after ({n} fewer){again}."
        grows = end.unit - start.unit
        again = ""
        if spot.times > 1 and not grows:
            again = voice.t("; the same change in each of {n} repeats", n=spot.times)
        counts = {"before": start.fixed, "after": end.fixed, "n": abs(change)}
        yield "count", voice.t(message, **counts, again=again)
    if entry.turns:
        message = "a short row: turn where the row says, and leave the rest unworked."
        yield "short", voice.t(message)
    if row.claim is not None:
        message = "stop and count: {sts} after this row."
        if spot.event.is_round(spot.index):
            message = "stop and count: {sts} after this round."
        yield "claim", voice.t(message, **voice.amount((end.fixed,)))
    motif = spot.event.motif
    earlier = _two_before(motif, row)
    if earlier is not None and _is_offset(earlier, row):
        if spot.event.is_round(spot.index):
            message = "its repeat is shifted against that of round {n}: look at the stitches below."
        else:
            message = "its repeat is shifted against that of row {n}: look at the stitches below."
        yield "offset", voice.t(message, n=spot.number - 2)


def _two_before(motif: Motif | None, row: Row) -> Row | None:
    if motif is None or row not in motif.rows:
        return None
    at = motif.rows.index(row)
    return motif.rows[at - 2] if at >= 2 else None


def _is_offset(one: Row, other: Row) -> bool:
    """Both rows have one fill of the same steps, which begins at another of them."""
    first, second = _fill_of(one), _fill_of(other)
    if first is None or second is None:
        return False
    (before, unit), (later, again) = first, second
    if sorted(unit) != sorted(again) or len(unit) < 2:
        return False
    return unit != again or (before - later) % _takes_of(other) != 0


def _fill_of(row: Row) -> tuple[int, tuple[str, ...]] | None:
    """What stands before the row's one fill, in stitches of size 0, and the fill's steps."""
    steps = row.body.steps
    at = [index for index, step in enumerate(steps) if isinstance(step, Fill)]
    if len(at) != 1:
        return None
    fill = steps[at[0]]
    assert isinstance(fill, Fill)
    return sum(map(_takes, steps[: at[0]])), tuple(_flat(fill.steps))


def _takes_of(row: Row) -> int:
    fill = next(step for step in row.body.steps if isinstance(step, Fill))
    return max(sum(map(_takes, fill.steps)), 1)


def _flat(steps: tuple[Step, ...]) -> Iterator[str]:
    for step in steps:
        if isinstance(step, Stitches):
            word = " ".join((step.stitch.word, *step.modifiers))
            yield from [word] * min(step.number(0), 64)
        elif isinstance(step, Group):
            yield from list(_flat(step.steps)) * min(step.number(0), 64)


def _takes(step: Step) -> int:
    if isinstance(step, Stitches):
        return step.stitch.takes * step.number(0)
    if isinstance(step, Group):
        if step.into is not None:
            return step.into.at(0)
        return sum(map(_takes, step.steps)) * step.number(0)
    return 0
