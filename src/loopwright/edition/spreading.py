"""Changes spread over rows, as patterns print them.

``dec on every 6th row 4 times, then on every 4th row 9 times``.
"""

from __future__ import annotations

from loopwright.count.affine import Affine
from loopwright.count.live import total
from loopwright.count.repeat import Entry
from loopwright.count.walk import Event, Worked
from loopwright.edition.document import Line
from loopwright.edition.line_writer import LineWriter
from loopwright.edition.phrases import FillTimes
from loopwright.edition.voice import Voice
from loopwright.model.pattern import Motif, Row, Spread

Blocks = list[tuple[int, int]]


def spread_lines(writer: LineWriter, item: Spread, here: list[list[Event]]) -> list[Line]:
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
        lines += _shaping_row(writer, item, found, event)
    lines += _between(writer, plain, groups, event)
    lines.append(_when(writer, item, groups, event))
    return lines


def spread_places(item: Spread, lines: list[Line], group: list[Event]) -> list[tuple[Row, int]]:
    """The rows of a spread in one size, each with the place of its line in `lines`.

    `lines` are as `spread_lines` made them. Rows that one sentence says together have its place.
    """
    change, plain = item.motif, item.plain
    if change is None or plain is None:
        return []
    shaped = _change_of([e for e in group if isinstance(e, Worked)], item) is not None
    found = [(change.rows[0], 0)] if shaped else []
    first = int(shaped)
    for at, row in enumerate(plain.rows):
        found.append((row, first + at if lines[first + at].kind == "row" else first))
    return found


def _change_of(group: list[Worked], item: Spread) -> Entry | None:
    assert item.motif is not None
    row = item.motif.rows[0]
    return next((e for w in group for e in w.chunk.entries if e.row is row), None)


def _shaping_row(writer: LineWriter, item: Spread, found: list[Entry], event: Worked) -> list[Line]:
    assert item.motif is not None
    row = item.motif.rows[0]
    # From one change to the next the row's fills differ: say where they stop, not how often.
    fills = FillTimes(
        tuple(tuple(Affine(f.fixed, f.unit or 1) for f in entry.fills) for entry in found),
        tuple(2 for _ in found),
    )
    text = writer.sentence(row, fills)
    by = {entry.end.fixed - entry.start.fixed for entry in found}
    count = writer.voice.changed_by(change) if len(by) == 1 and (change := by.pop()) else ""
    label = writer.voice.shaping_label(event.round)
    return [writer.line("row", label, text, count, writer.spelled(row))]


def _between(
    writer: LineWriter, plain: Motif, groups: list[list[Worked]], event: Worked
) -> list[Line]:
    voice = writer.voice
    words = {"k": voice.t("knit"), "p": voice.t("purl")}
    whole = [words.get(row.body.whole or "", "") for row in plain.rows]
    one = voice.unit(event.round, False)
    if all(whole) and (len(whole) == 1 or (len(whole) == 2 and not event.round)):
        if len(set(whole)) == 1:
            text = voice.t("{knit} every {row}", knit=whole[0], row=one)
        else:
            sides = [voice.side(plain.is_rs(1)), voice.side(not plain.is_rs(1))]
            message = "{first} the {side} rows and {second} the {other} rows"
            text = voice.t(message, first=whole[0], side=sides[0], second=whole[1], other=sides[1])
        if event.round:
            between = voice.t("Between the shaping rnds, {text}.", text=text)
        else:
            between = voice.t("Between the shaping rows, {text}.", text=text)
        return [Line("do", "", between, "")]
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
        label = voice.named_label(plain.name.text, row.number, event.round, plain.is_rs(row.number))
        text = writer.sentence(row, fills)
        lines.append(writer.line("row", label, text, "", writer.spelled(row)))
    if event.round:
        message = "Work the {name} rnds in turn between the shaping rnds."
    else:
        message = "Work the {name} rows in turn between the shaping rows."
    lines.append(Line("do", "", voice.t(message, name=plain.name.text), ""))
    return lines


def _when(writer: LineWriter, item: Spread, groups: list[list[Worked]], event: Worked) -> Line:
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
    voice = writer.voice
    one, many = voice.unit(event.round, False), voice.unit(event.round, True)
    phrases: list[str] = []
    changes = [sum(n for _, n in mine) for mine in blocks]
    if place and any(changes):
        firsts = [mine[0][0] - place if mine else 0 for mine in blocks]
        nth = voice.sized(firsts, voice.catalogue.ordinal)
        phrases.append(voice.t("on the {nth} {row}", nth=nth, row=one))
        blocks = [[(mine[0][0], mine[0][1] - 1), *mine[1:]] if mine else [] for mine in blocks]
    for at in range(2):
        cells = [mine[at] if at < len(mine) and mine[at][1] else (0, 0) for mine in blocks]
        often = [n for _, n in cells]
        if any(often):
            every = _every([e for e, _ in cells], voice, row=one, rows=many)
            phrases.append(voice.t("on {every} {times}", every=every, times=voice.times(often)))
    when = voice.t(", then ").join(phrases)
    rest = f"{voice.sized(tails)} {one if set(tails) == {1} else many}"
    if not phrases:
        message = "Work {rest} without shaping."
    elif event.round:
        message = "Work the shaping rnd {when}."
        if any(tails):
            message = "Work the shaping rnd {when}; then work {rest} without shaping."
    else:
        message = "Work the shaping row {when}."
        if any(tails):
            message = "Work the shaping row {when}; then work {rest} without shaping."
    text = voice.t(message, when=when, rest=rest)
    ends = [total(group[-1].chunk.after).fixed if group else None for group in groups]
    tally = tuple(changes) if len(set(changes)) > 1 else (changes[0],)
    return Line("repeat", "", text, writer.count(ends, True), tally=tally)


def _every(apart: list[int], voice: Voice, **words: str) -> str:
    """``every 6th row``, ``every row``, ``every 6th (8th, 8th) row``."""
    if set(apart) == {1}:
        return voice.t("every {row}", **words)
    if set(apart) == {2}:
        return voice.t("every other {row}", **words)
    nth = voice.sized(apart, voice.catalogue.ordinal)
    return voice.t("every {nth} {row}", nth=nth, n=voice.sized(apart), **words)
