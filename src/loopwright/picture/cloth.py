"""The cloth as arrays: what each stitch shows on the right side, and in which colour."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING, Any

from loopwright.count.walk import Bound, Cast, Moved, Walk, Worked
from loopwright.model.pattern import Pattern, Row
from loopwright.picture.faces import INTO, OWN, symbol_of
from loopwright.picture.outline import is_one_cloth, steps_out
from loopwright.picture.steps import Laid, Op, lay_out
from loopwright.picture.thread import Colours, Palette, Thread, thread_of
from loopwright.record import dataclass

if TYPE_CHECKING:
    from numpy import ndarray

(
    NOTHING, KNIT, PURL, RIGHT, LEFT, HOLE, SLIPPED, FLOAT, TWISTED, BOBBLE, EDGE,
) = range(11)  # fmt: skip
"""What a stitch shows: V, bump, a V that leans, a hole, a long loop (with a strand across), …"""

MOST_CELLS = 4_000_000
_MOST_IN_ROW = 20_000
_CAST_ON_LOOPS = 2.0
"""Plain loops of yarn that a cast-on stitch takes, as the walk reckons it."""
_BIND_OFF_LOOPS = 1.5


class NotOneCloth(ValueError):
    """A piece whose rows do not lie on one another. Its text says why."""


class TooLarge(ValueError):
    """A piece of more stitches than a picture can show. Its text says how many."""


@dataclass(frozen=True, slots=True)
class Cloth:
    """A piece as arrays of one shape (rows upwards, stitches from left to right).

    `kind` is what a stitch shows, `main` the colour of its loop and `other` that of the strand or
    loop that crosses it: both are places in `colours`, and `names` are the shades that have them.
    `rows` are its worked rows, `stitches` its widest.
    """

    kind: ndarray
    main: ndarray
    other: ndarray
    colours: tuple[str, ...]
    names: tuple[str, ...]
    rows: int
    stitches: int


@dataclass(frozen=True, slots=True, eq=False)
class _Sample:
    """A row over a count of stitches, in the view from the left: arrays over what it makes.

    `source` is the loop below, `kept` where that loop is only slipped on, `eaten` the loops of yarn
    that the row has taken before the stitch; `total` all that it takes.
    """

    kind: ndarray
    source: ndarray
    kept: ndarray
    eaten: ndarray
    total: float


def cloth_of(pattern: Pattern, walk: Walk, instead: Colours | None = None, seed: int = 0) -> Cloth:
    """The cloth of one piece in one size. Raises TooLarge, and NotOneCloth."""
    if not is_one_cloth(walk):
        raise NotOneCloth(
            f"{walk.piece.name.text} has short rows or stitches that are held, taken or picked "
            "up, so its rows do not lie on one another as one flat cloth"
        )
    height = walk.rows + 2
    if height * max(walk.widest, 1) > MOST_CELLS:
        raise TooLarge(
            f"{walk.rows:,} rows of up to {walk.widest:,} stitches are more than a picture shows "
            f"({MOST_CELLS:,} stitches)"
        )
    return _Knitter(pattern, walk, instead or {}, seed).knit()


class _Knitter:
    def __init__(self, pattern: Pattern, walk: Walk, instead: Colours, seed: int) -> None:
        self.pattern = pattern
        self.size = walk.size
        self.walk = walk
        self.palette = Palette(pattern, instead)
        self.seed = seed
        self.threads: dict[str | None, Thread] = {}
        self.eaten: dict[str | None, float] = {}
        self.samples: dict[tuple[int, bool, tuple[int, ...]], _Sample | None] = {}
        self.strand: str | None = pattern.strands[0].name.key if pattern.strands else None
        self.needle: Any = None
        self.lines: list[tuple[float, Any, Any, Any]] = []
        self.anchor = _anchor(walk)

    def knit(self) -> Cloth:
        import numpy as np

        for event in self.walk.events:
            if isinstance(event, Moved):
                self._take(getattr(event.item, "strand", None))
                self.needle = self._edge(event.count, _CAST_ON_LOOPS)
            elif isinstance(event, Cast):
                self._take(event.item.strand)
                self.needle = self._edge(event.count, _CAST_ON_LOOPS)
            elif isinstance(event, Bound):
                self._take(getattr(event.item, "strand", None))
                self._edge(event.count, _BIND_OFF_LOOPS)
            elif isinstance(event, Worked):
                self._work(event)
        if not self.lines:
            empty = np.zeros((1, 1), dtype=np.uint8)
            return Cloth(empty, empty, empty, ("#808080",), ("",), 0, 0)
        low = min(offset for offset, *_ in self.lines)
        starts = [round(offset - low) for offset, *_ in self.lines]
        wide = max(at + len(kind) for at, (_, kind, _, _) in zip(starts, self.lines, strict=True))
        shape = (len(self.lines), wide)
        if shape[0] * shape[1] > MOST_CELLS:
            raise TooLarge("the piece is too wide and too long for one picture")
        kind = np.zeros(shape, dtype=np.uint8)
        main = np.zeros(shape, dtype=np.int32)
        other = np.zeros(shape, dtype=np.int32)
        for row, (at, (_, kinds, mains, others)) in enumerate(zip(starts, self.lines, strict=True)):
            stop = at + len(kinds)
            kind[row, at:stop] = kinds
            main[row, at:stop] = mains
            other[row, at:stop] = others
        colours = tuple(self.palette.colours)
        names = tuple(" or ".join(self.palette.names.get(at, ())) for at in range(len(colours)))
        return Cloth(kind, main, other, colours, names, self.walk.rows, self.walk.widest)

    def _take(self, strand: Any) -> None:
        if strand is not None:
            self.strand = strand.key

    def _thread(self) -> Thread:
        key = self.strand
        if key not in self.threads:
            found = self.pattern.strand(key) if key is not None else None
            self.threads[key] = thread_of(self.pattern, found, self.size, self.palette, self.seed)
        return self.threads[key]

    def _edge(self, count: int, loops: float) -> Any:
        import numpy as np

        start = self.eaten.get(self.strand, 0.0)
        colour = self._thread().at(start + loops * (np.arange(count) + 0.5))
        self.eaten[self.strand] = start + loops * count
        self._lay(np.full(count, EDGE, dtype=np.uint8), colour, colour, count)
        return colour

    def _lay(self, kind: Any, main: Any, other: Any, wide: int) -> None:
        """Lay a row over the ones below, drawn out or pushed together to `wide` stitches."""
        import numpy as np

        if wide != len(kind) and len(kind):
            spread = ((np.arange(wide) + 0.5) * len(kind) / wide).astype(np.int64)
            kind, main, other = kind[spread], main[spread], other[spread]
        start = {"left": 0.0, "right": -float(len(kind)), "middle": -len(kind) / 2}[self.anchor]
        self.lines.append((start, kind, main, other))

    def _work(self, event: Worked) -> None:
        entries = event.chunk.entries
        # A row inside a motif may be wider than any that `Walk.widest` knows.
        last = max(event.chunk.reps - 1, 0)
        wide = max(
            (count.at(k) for e in entries for count in (e.start, e.end) for k in (0, last)),
            default=0,
        )
        if wide > _MOST_IN_ROW:
            raise TooLarge(f"a row of {wide:,} stitches is more than a picture shows")
        stepped = any(steps_out(entry.row.body.steps) for entry in entries)
        for index in range(event.rows):
            repeat, at = divmod(index, len(entries))
            entry = entries[at]
            rs = event.round or (event.rs == (index % 2 == 0))
            self._take(entry.row.strand)
            fills = tuple(fill.at(repeat) for fill in entry.fills)
            sample = self._sample(entry.row, rs, fills, entry.start.at(repeat))
            # Lace that gives stitches and takes them back keeps the width of its repeat.
            ends = sorted((entries[0].start.at(repeat), entries[-1].end.at(repeat)))
            count = entry.end.at(repeat)
            self._row(sample, count if stepped else min(max(count, ends[0]), ends[1]))

    def _sample(self, row: Row, rs: bool, fills: tuple[int, ...], count: int) -> _Sample | None:
        key = (id(row.body), rs, (count, *fills))
        if key not in self.samples:
            laid = lay_out(row.body, self.size, fills)
            whole = laid.takes == count == (0 if self.needle is None else len(self.needle))
            self.samples[key] = _sample_of(laid, rs) if whole else None
        return self.samples[key]

    def _row(self, sample: _Sample | None, wide: int) -> None:
        import numpy as np

        if self.needle is None:
            return
        if sample is None or (sample.source.size and sample.source.max() >= len(self.needle)):
            # A row of a kind that this room cannot lay out: plain stitches stand in.
            count = len(self.needle)
            plain = np.arange(count)
            sample = _Sample(
                np.full(count, KNIT, np.uint8), plain, np.zeros(count, bool), plain, count
            )
        start = self.eaten.get(self.strand, 0.0)
        own = self._thread().at(start + sample.eaten)
        self.eaten[self.strand] = start + sample.total
        below = self.needle[sample.source] if len(self.needle) else own
        main = np.where(sample.kept, below, own)
        other = np.where(sample.kept, own, below)
        self._lay(sample.kind, main, other, wide)
        self.needle = main


def _anchor(walk: Walk) -> str:
    """Which edge of a piece runs straight: the one opposite to where stitches are bound off.

    ``middle`` where none are, or at both: the rows then lie centred on one another.
    """
    sides: set[str] = set()
    for event in walk.events:
        if not isinstance(event, Worked):
            continue
        for index, entry in enumerate(event.chunk.entries):
            steps = entry.row.body.steps
            rs = event.round or (event.rs == (index % 2 == 0))
            for at, step in ((0, steps[:1]), (1, steps[-1:])):
                word = getattr(step[0], "stitch", None) if step else None
                if word is not None and word.kind in ("bind", "cast") and len(steps) > 1:
                    sides.add("right" if (at == 0) == rs else "left")
    if len(sides) != 1:
        return "middle"
    return "left" if sides == {"right"} else "right"


def _sample_of(laid: Laid, rs: bool) -> _Sample:
    import numpy as np

    kinds: list[int] = []
    sources: list[int] = []
    kept: list[bool] = []
    eaten: list[float] = []
    taken, used = 0, 0.0
    looks: dict[int, tuple[tuple[int, bool], ...]] = {}
    takes = laid.takes
    for op in laid.ops:
        look = looks.get(id(op))
        if look is None:
            look = looks[id(op)] = tuple(_looks(op, rs))
        for index, (kind, keep) in enumerate(look):
            kinds.append(kind)
            sources.append(max(min(taken + min(index, max(op.takes - 1, 0)), takes - 1), 0))
            kept.append(keep)
            eaten.append(used + op.yarn * (index + 0.5) / len(look))
        taken += op.takes
        used += op.yarn
    way = -1 if rs else 1  # a right-side row is worked from the right
    source = np.asarray(sources, dtype=np.int64)[::way]
    if rs:
        source = takes - 1 - source
    return _Sample(
        np.asarray(kinds, dtype=np.uint8)[::way],
        source,
        np.asarray(kept, dtype=bool)[::way],
        np.asarray(eaten, dtype=np.float64)[::way],
        used,
    )


def _looks(op: Op, rs: bool) -> Iterator[tuple[int, bool]]:
    """For each stitch an op makes, as worked: what it shows, and whether it is slipped on."""
    if op.is_marker or op.goes:
        return
    name = symbol_of(op, rs)
    if name.startswith(INTO):
        for inner in op.inner:
            yield from _looks(inner, rs)
        return
    if name in ("kfb", "pfb"):
        pair = ((KNIT, False), (PURL, False))
        yield from pair if name == "kfb" else pair[::-1]
        return
    if name.startswith("sl") and op.stitch is not None and op.stitch.kind == "slip":
        yield (FLOAT if name.endswith("front") else SLIPPED), True
        return
    if name.startswith(OWN):
        bobble = op.makes == op.takes == 1 and op.yarn >= 3
        yield from ((BOBBLE if bobble else KNIT, False),) * op.makes
        return
    word = name.removesuffix("~")
    far = name.endswith("~")
    if op.stitch is not None and op.stitch.kind == "cable":
        yield from _crossed(word, op.makes, rs, far)
        return
    yield from ((PURL if far else _KIND.get(word, _guess(word)), False),) * op.makes


_KIND = {
    "k": KNIT, "p": PURL, "k tbl": TWISTED, "p tbl": PURL, "yo": HOLE, "m1p": PURL, "ssk": LEFT,
    "skp": LEFT, "sssk": LEFT, "sk2p": LEFT, "ssp": PURL, "brp": PURL,
}  # fmt: skip


def _guess(word: str) -> int:
    if word.endswith("tog"):
        return PURL if word.startswith("p") else RIGHT
    return KNIT


def _crossed(word: str, count: int, rs: bool, far: bool) -> Iterator[tuple[int, bool]]:
    """A crossing: the half that lies in front leans its way, the other the other way."""
    if far:
        yield from ((PURL, False),) * count
        return
    half = count // 2
    # From the right: what crosses to the right lies there after the crossing.
    if word.endswith("f") or word == "lt":
        view = [KNIT] * (count - half) + [LEFT] * half
    else:
        view = [RIGHT] * (count - half) + [KNIT] * half
    yield from ((kind, False) for kind in (view if rs else view[::-1]))
