"""Changes spread over rows, as patterns print them.

``dec on every 6th row 4 times, then on every 4th row 9 times``.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from loopwright.count.affine import Affine
from loopwright.count.repeat import Entry
from loopwright.count.row import total
from loopwright.count.walk import Event, Worked
from loopwright.edition.document import Line
from loopwright.edition.numbers import ordinal, sized, times
from loopwright.edition.phrases import FillTimes
from loopwright.model.pattern import Motif, Spread

if TYPE_CHECKING:
    from loopwright.edition.rows import PieceWriter

Blocks = list[tuple[int, int]]


def spread_lines(writer: PieceWriter, item: Spread, here: list[list[Event]]) -> list[Line]:
    """The lines of a spread: the row that changes, the rows between, and when which is worked."""
    groups = [[e for e in events if isinstance(e, Worked)] for events in here]
    change, plain = item.motif, item.plain
    present = [group for group in groups if group]
    if change is None or plain is None or not present:
        return []
    entries = [_change_of(group, item) for group in groups]
    found = [entry for entry in entries if entry is not None]
    event = present[0][0]
    lines: list[Line] = []
    if found:
        lines += _shaping_row(writer, item, found, groups, event)
    lines += _between(writer, plain, groups, event)
    lines.append(_when(writer, item, groups, event))
    return lines


def _change_of(group: list[Worked], item: Spread) -> Entry | None:
    assert item.motif is not None
    row = item.motif.rows[0]
    return next((e for w in group for e in w.chunk.entries if e.row is row), None)


def _shaping_row(
    writer: PieceWriter, item: Spread, found: list[Entry], groups: list[list[Worked]], event: Worked
) -> list[Line]:
    assert item.motif is not None
    row = item.motif.rows[0]
    # From one change to the next the row's fills differ: say where they stop, not how often.
    fills = FillTimes(
        tuple(tuple(Affine(f.fixed, f.unit or 1) for f in entry.fills) for entry in found),
        tuple(2 for _ in found),
    )
    text = writer.sentence(row, fills)
    if event.round:
        writer.used.term("rnd")
        label = "Shaping rnd:"
    else:
        writer.used.term("RS")
        label = "Shaping row (RS):"
    by = {entry.end.fixed - entry.start.fixed for entry in found}
    count = ""
    if len(by) == 1 and (change := by.pop()):
        writer.used.term("st" if abs(change) == 1 else "sts")
        word = "more" if change > 0 else "fewer"
        count = f"({abs(change)} {'st' if abs(change) == 1 else 'sts'} {word})"
    return [writer.line("row", label, text, count, writer.spelled(row))]


def _between(
    writer: PieceWriter, plain: Motif, groups: list[list[Worked]], event: Worked
) -> list[Line]:
    words = {"k": "knit", "p": "purl"}
    whole = [words.get(row.body.whole or "") for row in plain.rows]
    unit = "rnd" if event.round else "row"
    if all(whole) and (len(whole) == 1 or (len(whole) == 2 and not event.round)):
        writer.used.term(unit if len(whole) == 1 else "RS")
        if len(set(whole)) == 1:
            text = f"{whole[0]} every {unit}"
        else:
            writer.used.term("WS")
            first, second = ("RS", "WS") if plain.is_rs(1) else ("WS", "RS")
            text = f"{whole[0]} the {first} rows and {whole[1]} the {second} rows"
        return [Line("do", "", f"Between the shaping {unit}s, {text}.", "")]
    lines = []
    for row in plain.rows:
        cells = [
            next((e for w in group for e in w.chunk.entries if e.row is row), None)
            for group in groups
        ]
        fills = FillTimes(
            tuple(tuple(Affine(f.fixed, f.unit or 1) for f in c.fills) for c in cells if c),
            tuple(2 for c in cells if c),
        )
        side = "" if event.round else f" ({'RS' if plain.is_rs(row.number) else 'WS'})"
        label = f"{plain.name.text.capitalize()} {unit} {row.number}{side}:"
        text = writer.sentence(row, fills)
        lines.append(writer.line("row", label, text, "", writer.spelled(row)))
    name = plain.name.text
    lines.append(
        Line("do", "", f"Work the {name} {unit}s in turn between the shaping {unit}s.", "")
    )
    return lines


def _when(writer: PieceWriter, item: Spread, groups: list[list[Worked]], event: Worked) -> Line:
    """On which rows the change is worked, and what is left to work after the last."""
    assert item.motif is not None
    row = item.motif.rows[0]
    blocks: list[Blocks] = []
    tails: list[int] = []
    place = 0
    for group in groups:
        mine: Blocks = []
        tail = 0
        for worked in group:
            rows = [entry.row for entry in worked.chunk.entries]
            if row not in rows:
                tail += worked.rows
                continue
            place = len(rows) - 1 - rows.index(row)
            if mine and mine[-1][0] == len(rows):
                mine[-1] = (len(rows), mine[-1][1] + worked.chunk.reps)
            else:
                mine.append((len(rows), worked.chunk.reps))
        blocks.append(mine)
        tails.append(tail + (place if mine else 0))
    unit = "rnd" if event.round else "row"
    writer.used.term(f"{unit}s") if event.round else None
    phrases: list[str] = []
    changes = [sum(n for _, n in mine) for mine in blocks]
    if place and any(changes):
        firsts = [mine[0][0] - place if mine else 0 for mine in blocks]
        phrases.append(f"on the {sized(firsts, ordinal)} {unit}")
        blocks = [[(mine[0][0], mine[0][1] - 1), *mine[1:]] if mine else [] for mine in blocks]
    for at in range(2):
        cells = [mine[at] if at < len(mine) and mine[at][1] else (0, 0) for mine in blocks]
        often = [n for _, n in cells]
        if any(often):
            phrases.append(f"on {_every([e for e, _ in cells], unit)} {times(often)}")
    text = f"Work the shaping {unit} {', then '.join(phrases)}" if phrases else ""
    if any(tails):
        rest = f"{sized(tails)} {unit if set(tails) == {1} else unit + 's'}"
        text += f"; then work {rest} without shaping" if text else f"Work {rest} without shaping"
    ends = [total(group[-1].chunk.after).fixed if group else None for group in groups]
    tally = tuple(changes) if len(set(changes)) > 1 else (changes[0],)
    return Line("repeat", "", f"{text}.", writer.count(ends, True), tally=tally)


def _every(rows: list[int], unit: str) -> str:
    """``every 6th row``, ``every row``, ``every 6th (8th, 8th) row``."""
    if set(rows) == {1}:
        return f"every {unit}"
    if set(rows) == {2}:
        return f"every other {unit}"
    return f"every {sized(rows, ordinal)} {unit}"
