"""The outer stitches of rows: what edge they make, and what they should make.

A row's outer stitches are read from both ends as worked; garter, stockinette and seed are told
by how a stitch looks from the right side, which a wrong-side row turns round.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from loopwright.model.body import Fill, Group, Step, Stitches
from loopwright.model.pattern import Row
from loopwright.problem import Edit
from loopwright.record import dataclass, field

MAX_INFERRED = 8


@dataclass(frozen=True, slots=True)
class Outer:
    """One outer stitch: ``k``, ``p``, ``sl`` or ``?`` (shaping, cables, anything else).

    `fixed` is false where it comes from a fill.
    """

    sign: str
    fixed: bool


@dataclass(frozen=True, slots=True)
class EdgeRow:
    """A row with the side it is worked on; `number` gives seed stitch its turn."""

    row: Row
    rs: bool
    number: int
    known: dict[tuple[int, bool], tuple[int, list[Outer]]] = field(
        default_factory=dict, repr=False, compare=False
    )
    """What `ends` has read: up to how many stitches, and which they are."""

    def ends(self, wanted: int, size: int, backwards: bool) -> list[Outer]:
        """The `outer` stitches of the row; each end is read once."""
        key = (size, backwards)
        read, found = self.known.get(key, (0, []))
        if read < wanted:
            read = max(wanted, MAX_INFERRED)
            found = outer(self.row.body.steps, read, size, backwards)
            self.known[key] = (read, found)
        return found[:wanted]


def outer(steps: tuple[Step, ...], wanted: int, size: int, backwards: bool) -> list[Outer]:
    """The first (or last, outermost first) `wanted` stitches of a body, or fewer if it ends."""
    found: list[Outer] = []
    for item in _signs(steps, size, backwards, True):
        found.append(item)
        if len(found) >= wanted:
            break
    return found


def _signs(steps: tuple[Step, ...], size: int, backwards: bool, fixed: bool) -> Iterator[Outer]:
    for step in reversed(steps) if backwards else steps:
        if isinstance(step, Stitches):
            if step.stitch.kind == "marker":
                continue
            sign = step.stitch.word if step.stitch.word in ("k", "p", "sl") else "?"
            one = Outer(sign, fixed)
            for _ in range(min(step.number(size), 64)):
                yield one
        elif isinstance(step, Fill):
            # Worked as often as it fits: its first units are what the edge meets.
            for _ in range(64):
                yield from _signs(step.steps, size, backwards, False)
        elif isinstance(step, Group):
            if step.into is not None:
                yield Outer("?", fixed)
                continue
            for _ in range(min(step.number(size), 64)):
                yield from _signs(step.steps, size, backwards, fixed)


def breaks(kind: str, count: int, edge: EdgeRow, size: int) -> str | None:
    """Where a row breaks an edge: ``beginning``, ``end`` or None.

    A slipped edge has its outermost stitch slipped at one end of the row and worked at the
    other; the rest of it is knit or purl.
    """
    ends = {
        "beginning": edge.ends(count, size, False),
        "end": edge.ends(count, size, True),
    }
    if kind == "slipped":
        first = [ends[place][0].sign for place in ends if ends[place]]
        if first.count("sl") != 1:
            return "beginning"
        for place, items in ends.items():
            if any(item.sign not in ("k", "p") for item in items[1:]):
                return place
            if len(items) < count or items[0].sign == "?":
                return place
        return None
    for place, items in ends.items():
        if len(items) < count or not _is_kind(kind, items, edge):
            return place
    return None


def _is_kind(kind: str, items: list[Outer], edge: EdgeRow) -> bool:
    signs = [item.sign for item in items]
    if any(sign not in ("k", "p") for sign in signs):
        return False
    if kind == "garter":
        # In the round garter is knit and purl rounds in turn; flat it is knit on both sides.
        if edge.row.round:
            return len(set(signs)) == 1
        return all(sign == "k" for sign in signs)
    faces = [(sign == "k") == edge.rs for sign in signs]
    if kind == "stockinette":
        return all(faces)
    # Seed: every stitch differs from the one beside it.
    return all(one != other for one, other in pairwise(faces))


def seed_phase(edge: EdgeRow, place: str, size: int) -> bool | None:
    """Whether the outermost stitch of a seed edge shows a knit face; None where it is no k or p.

    `place` is ``beginning`` or ``end`` of the row as worked.
    """
    items = edge.ends(1, size, place == "end")
    if not items or items[0].sign not in ("k", "p"):
        return None
    return (items[0].sign == "k") == edge.rs


def fixed_at_both_ends(edge: EdgeRow, count: int, size: int) -> bool:
    """Whether the row writes its outer `count` stitches out at both ends, outside a fill."""
    for backwards in (False, True):
        items = edge.ends(count, size, backwards)
        if len(items) < count or not all(item.fixed for item in items):
            return False
    return edge.row.body.whole is None


def edge_edits(kind: str, count: int, edge: EdgeRow) -> tuple[Edit, ...] | None:
    """The edits that make a row's outer stitches a garter or stockinette edge, or None.

    Only where the outer `count` stitches of a wrong end are whole steps of plain k and p (in
    every size alike), so that no stitch but these is touched and no count is moved.
    """
    if kind not in ("garter", "stockinette") or (kind == "garter" and edge.row.round):
        return None
    row = edge.row
    if row.as_row is not None or row.body.whole or row.body.broken:
        return None
    word = f"{'k' if kind == 'garter' or edge.rs else 'p'}{count}"
    edits: list[Edit] = []
    for backwards in (False, True):
        items = outer(row.body.steps, count, 0, backwards)
        if len(items) == count and _is_kind(kind, items, edge):
            continue
        steps = _whole_steps(row.body.steps, count, backwards)
        if steps is None:
            return None
        edits.append(Edit(row.in_body(steps[0].span.to(steps[-1].span)), word))
    return tuple(edits) or None


def _whole_steps(steps: tuple[Step, ...], count: int, backwards: bool) -> list[Stitches] | None:
    """The outer steps that are `count` plain stitches together, in their order."""
    found: list[Stitches] = []
    left = count
    for step in reversed(steps) if backwards else steps:
        if left == 0:
            break
        if not isinstance(step, Stitches) or step.stitch.word not in ("k", "p"):
            return None
        if step.modifiers or len(set(step.count)) != 1:
            return None
        left -= step.count[0]
        found.append(step)
    return (found[::-1] if backwards else found) if left == 0 else None
