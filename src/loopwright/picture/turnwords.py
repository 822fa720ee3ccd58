"""What a chart of rows that turn says in words."""

from __future__ import annotations

from loopwright.picture.chart import Chart, ChartRow
from loopwright.picture.wording import PLAIN, Wording

_MOST_TOLD = 12
"""Rows whose ends are told one by one; of more, the first and the last few."""


def notes_of(chart: Chart, words: Wording = PLAIN) -> str:
    """What has to be known of rows that turn, in sentences; empty where there is nothing."""
    return " ".join(words.say(message, times=times) for message, times in chart.notes)


def turn_words(chart: Chart, words: Wording = PLAIN) -> str:
    """Which squares each row works, for a reader who does not see where it begins and ends.

    In sentences; empty where no row turns.
    """
    if not chart.turns:
        return ""
    rows = list(chart.rows)
    if len(rows) <= _MOST_TOLD:
        told = _extents(rows, words)
    else:
        half = _MOST_TOLD // 2
        first, last = _extents(rows[:half], words), _extents(rows[-half:], words)
        told = words.say("{first}, and so on, to {last}", first=first, last=last)
    message = "Rows turn before their end, and the stitches that they leave wait on the needle."
    counted = words.say("Counted from the right, {rows}.", rows=told)
    return " ".join(filter(None, (words.text(message), counted, notes_of(chart, words))))


def _extents(rows: list[ChartRow], words: Wording) -> str:
    return ", ".join(_extent(row, words) for row in rows)


def _extent(row: ChartRow, words: Wording) -> str:
    turns = row.turn is not None
    if not row.placed:
        message = "row {n} works no square"
        if turns:
            message = "row {n} works no square and turns"
        return words.say(message, n=row.number)
    first, last = row.placed[0].right + 1, row.placed[-1].left + 1
    if not row.rs:
        first, last = last, first
    if first == last:
        message = "row {n} works square {first}"
        if turns:
            message = "row {n} works square {first} and turns"
        return words.say(message, n=row.number, first=first)
    message = "row {n} works squares {first} to {last}"
    if turns:
        message = "row {n} works squares {first} to {last} and turns"
    return words.say(message, n=row.number, first=first, last=last)
