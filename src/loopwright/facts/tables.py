"""The tables of the trade that the package carries, read once and only when wanted.

The only module of the core that opens a file, and only the package's own. What the rows mean
stands in the modules beside this one.
"""

from __future__ import annotations

import csv
from collections.abc import Mapping
from functools import cache
from pathlib import Path
from types import MappingProxyType

FOLDER = Path(__file__).parent


@cache
def table(name: str) -> tuple[Mapping[str, str], ...]:
    """The rows of ``facts/<name>.csv``, each a read-only mapping by column.

    Raises FileNotFoundError where there is no such table, ValueError where a row has more or
    fewer cells than the header.
    """
    path = FOLDER / f"{name}.csv"
    with path.open(encoding="utf-8", newline="") as file:
        header, *rows = csv.reader(file, strict=True)
    for row in rows:
        if len(row) != len(header):
            raise ValueError(f"{path.name}: {len(row)} cells under {len(header)} columns: {row}")
    return tuple(MappingProxyType(dict(zip(header, row, strict=True))) for row in rows)
