"""The tables of the trade that the package carries, read once and only when wanted."""

from __future__ import annotations

import csv
from functools import lru_cache
from pathlib import Path


@lru_cache(maxsize=None)
def table(name: str) -> tuple[dict[str, str], ...]:
    """The rows of ``facts/<name>.csv``, each a dict by column. Raises FileNotFoundError."""
    path = Path(__file__).parent / f"{name}.csv"
    with path.open(encoding="utf-8", newline="") as file:
        return tuple(csv.DictReader(file))
