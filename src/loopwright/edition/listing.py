"""The row-by-row listing of `rows`, made piece by piece so that long ones need no memory."""

from __future__ import annotations

import json
from collections.abc import Iterator

from loopwright.check.checked import Checked


def rows_json(checked: Checked) -> Iterator[str]:
    """The listing as JSON text, in parts."""
    pattern = checked.pattern
    title = pattern.title.text if pattern.title else ""
    yield f'{{"pattern": {json.dumps(title, ensure_ascii=False)}, "sizes": ['
    for size, name in enumerate(pattern.sizes):
        yield (", " if size else "") + f'{{"size": {json.dumps(name, ensure_ascii=False)}, '
        yield '"pieces": ['
        walks = [walk for walk in checked.walks if walk.size == size]
        for number, walk in enumerate(walks):
            yield (", " if number else "") + '{"piece": '
            yield json.dumps(walk.piece.name.text, ensure_ascii=False) + ', "rows": ['
            for index, row in enumerate(walk.listed()):
                yield (",\n  " if index else "\n  ") + json.dumps(
                    {
                        "row": row.row,
                        "side": row.side,
                        "strand": row.strand,
                        "start": row.start,
                        "end": row.end,
                        "line": row.line,
                    },
                    ensure_ascii=False,
                )
            yield "]}"
        yield "]}"
    yield "]}\n"


def rows_table(checked: Checked) -> Iterator[str]:
    """The listing as a table a person reads."""
    pattern = checked.pattern
    several = len(pattern.sizes) > 1
    first = True
    for walk in checked.walks:
        head = walk.piece.name.text + (f", size {pattern.sizes[walk.size]}" if several else "")
        cast = f" (cast on {walk.cast_on:,})" if walk.cast_on is not None else ""
        yield ("" if first else "\n") + f"{head}{cast}\n"
        first = False
        yield f"{'row':>9} {'side':<5}{'strand':<8}{'start':>9}{'end':>9}{'line':>7}\n"
        for row in walk.listed():
            yield (
                f"{row.row:>9} {row.side:<5}{row.strand or '–':<8}"
                f"{row.start:>9}{row.end:>9}{row.line:>7}\n"
            )
