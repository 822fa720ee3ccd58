"""Which column each stitch of a chart stands in, so that stitches stay above one another.

A row that keeps its count puts its n-th stitch into the column of the n-th loop, as charts do: a
yarn over and its decrease trade places. A row that changes the count opens a column for each
stitch more and leaves one empty for each stitch fewer, at its increases and decreases, where the
other stitches are moved least (a shortest path over loops and stitches).

A row that turns works only the loops from `start` to `stop`; the others keep their columns. Where
rows turn, columns are opened and left empty as near to the end of the row as may be, so that it
begins where the last one has turned, and decreases move the stitches that wait.
"""

from __future__ import annotations

from collections.abc import Sequence

from loopwright.picture.steps import Op
from loopwright.record import dataclass

_GAP = 1000.0
_FOREIGN_GAP = 50.0
_NEVER = 1e12


@dataclass(frozen=True, slots=True)
class Cell:
    """A stitch of the row and the columns it spans, as identities; `op` is its place in the row."""

    op: int
    columns: tuple[int, ...]


class Columns:
    """The columns of a chart in order from the right, and which of them hold a loop now."""

    def __init__(self, loops: int, turning: bool = False) -> None:
        self.turning = turning
        self.order = list(range(loops))
        self.loops = list(range(loops))

    def work(
        self, ops: Sequence[Op], start: int = 0, stop: int | None = None, back: bool = False
    ) -> list[Cell]:
        """Work a row, its ops in the order of the right-side view, from the right.

        It works the loops `start` to `stop` (None: all that follow), counted from the right, and
        runs from the left if it goes `back`.
        Raises ValueError where the row does not take what hangs.
        """
        stop = len(self.loops) if stop is None else stop
        if not 0 <= start <= stop <= len(self.loops) or sum(op.takes for op in ops) != stop - start:
            raise ValueError("the row does not take the stitches that hang")
        owners, spans, gone = _cells(ops)
        columns = self._assign(ops, owners, spans, gone, (start, stop), back)
        cells: list[Cell] = []
        made: list[int] = []
        for index, (op, column) in enumerate(zip(owners, columns, strict=True)):
            if not gone[index]:
                made.append(column)
            if cells and cells[-1].op == op and not gone[index]:
                cells[-1] = Cell(op, (*cells[-1].columns, column))
            else:
                cells.append(Cell(op, (column,)))
        self.loops[start:stop] = made
        return cells

    def _assign(
        self,
        ops: Sequence[Op],
        owners: list[int],
        spans: list[tuple[int, int]],
        gone: list[bool],
        worked: tuple[int, int],
        back: bool,
    ) -> list[int]:
        start, stop = worked
        loops = self.loops[start:stop]
        if len(owners) == len(loops) and not any(gone):
            return list(loops)
        if self.turning and back:
            path = _path(ops[::-1], *_cells(ops[::-1]), len(loops), True)[::-1]
        else:
            path = _path(ops, owners, spans, gone, len(loops), self.turning)
        columns: list[int] = []
        loop = 0
        # The last column passed, from the right.
        left = self.loops[start - 1] if start else None
        beyond = self.loops[stop] if stop < len(self.loops) else None
        for step in path:
            if step == "open":
                following = loops[loop] if loop < len(loops) else beyond
                left = self._open(left, following, set(columns))
                columns.append(left)
                continue
            if step == "match":
                columns.append(loops[loop])
            left = loops[loop]
            loop += 1
        return columns

    def _open(self, before: int | None, after: int | None, taken: set[int]) -> int:
        """A column between two: an empty one that is there, or a new one."""
        start = 0 if before is None else self.order.index(before) + 1
        stop = len(self.order) if after is None else self.order.index(after)
        for place in range(start, stop):
            if self.order[place] not in taken:
                return self.order[place]
        new = len(self.order)
        self.order.insert(start, new)
        return new


def _cells(ops: Sequence[Op]) -> tuple[list[int], list[tuple[int, int]], list[bool]]:
    """For each cell of a row: its op, the loops that op takes, and whether they go."""
    owners: list[int] = []
    spans: list[tuple[int, int]] = []
    gone: list[bool] = []
    at = 0
    for index, op in enumerate(ops):
        if op.goes:
            for loop in range(at, at + op.takes):
                owners.append(index)
                spans.append((loop, loop + 1))
                gone.append(True)
        else:
            for _ in range(op.makes):
                owners.append(index)
                spans.append((at, at + op.takes))
                gone.append(False)
        at += op.takes
    return owners, spans, gone


def _path(
    ops: Sequence[Op],
    owners: list[int],
    spans: list[tuple[int, int]],
    gone: list[bool],
    loops: int,
    late: bool,
) -> list[str]:
    """The cheapest way through loops and cells: match, open (a new column) or close (an empty).

    Where two are as cheap, columns are opened `late` in the row, or else early.
    """
    match = "then match" if late else "match"
    taker = [0] * loops
    at = 0
    for index, op in enumerate(ops):
        for loop in range(at, at + op.takes):
            taker[loop] = index
        at += op.takes
    closing = [0.0 if ops[t].takes > ops[t].makes >= 1 else _FOREIGN_GAP for t in taker]
    opening = [
        _NEVER if gone[c] else (0.0 if ops[o].makes > ops[o].takes else _FOREIGN_GAP)
        for c, o in enumerate(owners)
    ]
    cells = len(owners)
    band = abs(cells - loops) + sum(gone) + 12
    best: list[dict[int, tuple[float, str]]] = [{} for _ in range(loops + 1)]
    best[0][0] = (0.0, "")
    for i in range(loops + 1):
        row = best[i]
        for j in range(max(0, i - band), min(cells, i + band) + 1):
            if i == j == 0:
                continue
            found = (_NEVER * 2, "")
            if j and (j - 1) in row:
                found = min(found, (row[j - 1][0] + _GAP + opening[j - 1], "open"))
            if i and j in best[i - 1]:
                found = min(found, (best[i - 1][j][0] + _GAP + closing[i - 1], "close"))
            if i and j and (j - 1) in best[i - 1]:
                cost = _moved(spans[j - 1], i - 1, gone[j - 1])
                found = min(found, (best[i - 1][j - 1][0] + cost, match))
            row[j] = found
    path: list[str] = []
    i, j = loops, cells
    while i or j:
        step = best[i][j][1]
        path.append("match" if step == match else step)
        if step != "open":
            i -= 1
        if step != "close":
            j -= 1
    path.reverse()
    return path


def _moved(span: tuple[int, int], loop: int, gone: bool) -> float:
    """How far a cell in the column of `loop` lies from the loops it takes; their middle is best."""
    first, last = span
    middle = loop + 0.5
    away = max(first - middle, middle - last, 0.0)
    if gone and away:
        return _NEVER
    return away + 0.01 * abs(middle - (first + last) / 2)
