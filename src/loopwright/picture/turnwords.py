"""What a chart of rows that turn says in words."""

from __future__ import annotations

from loopwright.picture.chart import Chart, ChartRow

_MOST_TOLD = 12
"""Rows whose ends are told one by one; of more, the first and the last few."""


def turn_words(chart: Chart) -> str:
    """Sentences with a space behind them; empty where no row turns.

    Which squares each row works, for a reader who does not see where it begins and ends.
    """
    if not chart.turns:
        return ""
    rows = list(chart.rows)
    if len(rows) <= _MOST_TOLD:
        told = ", ".join(_extent(row) for row in rows)
    else:
        half = _MOST_TOLD // 2
        first, last = (", ".join(map(_extent, part)) for part in (rows[:half], rows[-half:]))
        told = f"{first}, and so on, to {last}"
    note = f" {chart.note}" if chart.note else ""
    return (
        "Rows turn before their end, and the stitches that they leave wait on the needle. "
        f"Counted from the right, {told}.{note} "
    )


def _extent(row: ChartRow) -> str:
    turns = " and turns" if row.turn is not None else ""
    if not row.placed:
        return f"row {row.number} works no square{turns}"
    first, last = row.placed[0].right + 1, row.placed[-1].left + 1
    if not row.rs:
        first, last = last, first
    squares = f"square {first}" if first == last else f"squares {first} to {last}"
    return f"row {row.number} works {squares}{turns}"
