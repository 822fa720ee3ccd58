"""What fabric rows make: plain, garter, rib or between, and how much of it is slipped.

Faces are read off a small piece of the motif, about a hundred stitches wide, so that the cost is
that of the source and not of the cloth, and its edges count for as little as in a cloth.
"""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.count.live import Live, total
from loopwright.count.row import work_row
from loopwright.count.tape import tape_of
from loopwright.facts.amounts import fabric_ks, fabric_words
from loopwright.facts.loops import loop_constants
from loopwright.model.body import Fill, Group, Step, Stitches
from loopwright.model.pattern import Motif, Row
from loopwright.record import dataclass

_WIDE = 100
_WIDEST = 400
_ROWS = 64
_MIXED = 0.1
_RIB = 0.25  # at least every fourth stitch meets one of the other face beside it


@dataclass(frozen=True, slots=True)
class Fabric:
    """A fabric: its `name`, its constant `ks`, and shares of its stitches.

    `worked` is the share that makes a new loop (a slipped stitch makes none in its row); `eaten`
    is the mean yarn of a stitch in plain loops.
    """

    name: str
    ks: float
    worked: float = 1.0
    eaten: float = 1.0


def plain() -> Fabric:
    """Plain knit in the washed state."""
    return Fabric("plain", loop_constants("plain knit", "wet relaxed").ks)


def fabric_named(words: str) -> Fabric | None:
    """The fabric that a gauge names in the trade's words, or None."""
    known = fabric_words()
    for word in (words.casefold(), *words.casefold().replace("-", " ").split()):
        if word in known:
            name = known[word]
            return plain() if name == "plain" else Fabric(name, fabric_ks(name))
    return None


def fabric_of_motif(motif: Motif, size: int) -> Fabric:
    """The fabric of a motif; plain knit where its faces cannot be read (it is shaped)."""
    form = motif.form
    count = 0
    if form is not None:
        count = form.fixed
        if form.unit:
            count += form.unit * max(_WIDE // form.unit, 1)
    return fabric_of_rows(motif.rows[:_ROWS], size, count, not motif.starts_ws, motif.in_round)


def fabric_of_rows(
    rows: tuple[Row, ...], size: int, count: int, rs: bool, in_round: bool
) -> Fabric:
    """The fabric of some rows worked over `count` stitches (0: the fewest they all take)."""
    grid: list[list[str]] = []
    loops = stitches = worked = 0.0
    for index, row in enumerate(rows):
        tape = tape_of(row.body, size)
        if tape.broken or tape.trouble is not None or tape.marked or not tape.even:
            return plain()
        if not count:
            count = sum(op.takes for op in tape.ops) + sum(op.takes for op in tape.fills)
        outcome = work_row(tape, Live.of(count))
        if outcome.misfit is not None or count > _WIDEST or count < 1 or tape.turns:
            return plain()
        if total(outcome.after(Live.of(count), in_round)).fixed != count:
            return plain()
        faces = list(_signs(row.body.steps, size, iter([f.fixed for f in outcome.fills])))
        stitches += len(faces)
        loops += outcome.yarn[0]
        worked += sum(1 for face in faces if face != "sl")
        right = in_round or rs == (index % 2 == 0)
        grid.append(faces if right else [_turned(face) for face in reversed(faces)])
    if not grid or not worked or any(len(line) != len(grid[0]) for line in grid):
        return plain()
    shares = (worked / stitches, loops / stitches)
    up = _share(zip(a, b, strict=True) for a, b in zip(grid, [*grid[1:], grid[0]], strict=True))
    beside = _share(zip(line, [*line[1:], line[0]], strict=True) for line in grid)
    base = plain()
    if up >= 1 and beside <= 0:
        return Fabric("garter", fabric_ks("garter"), *shares)
    if up <= 0 and beside >= _RIB:
        return Fabric("rib", fabric_ks("rib"), *shares)
    # Derived: rows draw together where a knit face meets a purl face above it, in plain knit
    # nowhere and in garter everywhere.
    name = "textured" if up > _MIXED else "plain"
    return Fabric(name, base.ks + (fabric_ks("garter") - base.ks) * min(up, 1.0), *shares)


def _turned(face: str) -> str:
    return {"k": "p", "p": "k"}.get(face, face)


def _share(lines: Iterator[Iterator[tuple[str, str]]]) -> float:
    """The share of neighbours, both knit or purl, whose faces differ."""
    seen = other = 0
    for line in lines:
        for one, two in line:
            if one in ("k", "p") and two in ("k", "p"):
                seen += 1
                other += one != two
    return other / seen if seen else 0.0


def _signs(steps: tuple[Step, ...], size: int, fills: Iterator[int]) -> Iterator[str]:
    """One sign a stitch taken: k, p, sl, or ? for what makes some other face."""
    for step in steps:
        if isinstance(step, Stitches):
            kind = step.stitch.kind
            sign = {"knit": "k", "purl": "p", "slip": "sl"}.get(kind, "?")
            yield from (sign for _ in range(step.number(size) * step.stitch.takes))
        elif isinstance(step, Fill):
            unit = list(_signs(step.steps, size, iter(())))
            yield from unit * next(fills, 0)
        elif isinstance(step, Group):
            if step.into is not None:
                yield from ("?" for _ in range(step.into.at(size)))
            else:
                for _ in range(step.number(size)):
                    yield from _signs(step.steps, size, fills)
