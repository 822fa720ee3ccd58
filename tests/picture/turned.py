"""A chart of rows that turn, knitted from what was read of it, and held against the model's rows.

The hands know nothing but the squares, hooks and lines: how many stitches lie on either side of
them, and in which columns. The body of each row says what has to be worked there; where its fills
end is looked at on the needle.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from reader import ReadRow
from worded import as_worked, inner, word_of

from loopwright.count.walk import Walk, Worked
from loopwright.model.body import Fill, Group, Stitches
from loopwright.model.pattern import Motif
from loopwright.notation.tree import Special
from loopwright.picture.chart import Chart
from loopwright.picture.turnwords import notes_of


@dataclass(frozen=True)
class Word:
    """A word and what it takes and makes; a place (``last``, ``gap``) with its number."""

    text: str
    takes: int = 0
    makes: int = 0
    place: str = ""


Item = Word | list[Word]
TURNS = ("turn", "w&t")


def spelled(steps: Sequence[object], size: int) -> list[Item]:
    """Steps word by word; a fill as the list of its unit."""
    items: list[Item] = []
    for step in steps:
        if isinstance(step, Stitches):
            one = Word(word_of(step), step.stitch.takes, step.stitch.makes)
            items += [one] * step.number(size)
        elif isinstance(step, Fill):
            items.append([word for word in spelled(step.steps, size) if isinstance(word, Word)])
        elif isinstance(step, Special):
            count = step.count.at(size) if step.count is not None else 0
            items.append(Word("", count, 0, step.kind))
        elif isinstance(step, Group) and step.into is not None:
            made = [word for word in spelled(step.steps, size) if isinstance(word, Word)]
            text = "(" + ", ".join(inner(s) for s in step.steps) + ")"
            items.append(Word(text, step.into.at(size), sum(word.makes for word in made)))
        elif isinstance(step, Group):
            for _ in range(step.number(size)):
                items += spelled(step.steps, size)
    return items


def matched(items: list[Item], words: list[str]) -> tuple[list[Word], list[int]]:
    """The words with what they take and make, places among them, and how often fills are worked."""
    segments: list[list[Item]] = [[]]
    for item in items:
        segments[-1].append(item)
        if isinstance(item, Word) and item.text in ("sm", "rm"):
            segments.append([])
    out: list[Word] = []
    times: list[int] = []
    at = 0
    for number, segment in enumerate(segments):
        last = number == len(segments) - 1
        mark = len(words) if last else words.index(segment[-1].text, at) + 1  # type: ignore[union-attr]
        fixed = sum(isinstance(item, Word) and not item.place for item in segment)
        for item in segment:
            if isinstance(item, list):
                often, rest = divmod(mark - at - fixed, len(item))
                assert rest == 0 and often >= 0, (words, items)
                times.append(often)
                out += item * often
            else:
                out.append(item)
        at = mark
    assert [word.text for word in out if not word.place] == words, (words, items)
    return out, times


def compare_turned(
    chart: Chart, motif: Motif, size: int, rows: list[ReadRow], walks: list[Walk]
) -> None:
    """Knit the rows of a chart and compare each with its body, and with the walk where it says
    that it shows every time."""
    right: int | None = None  # stitches to the right of the hands
    loops: list[int] | None = None  # the columns that hold a stitch, from the right
    gap: int | None = None  # stitches before the gap; not known before the first row
    line: int | None = None  # where the last row turned
    rs = rows[0].rs
    fills: list[list[int]] = []
    for row in rows:
        body = motif.rows[(row.number - 1) % len(motif.rows)].body
        words = as_worked(row) + ([row.hook.symbol] if row.hook else [])
        steps, times = matched(spelled(body.steps, size), words)
        fills.append(times)
        takes = sum(word.takes for word in steps if not word.place)
        makes = sum(word.makes for word in steps)
        squares = [s for s in row.squares if s.symbol not in ("waiting", "no stitch")]
        assert squares or not makes, "a row without squares"
        edge = squares[0].right if squares else row.hook.line  # type: ignore[union-attr]
        waits = [c for c in row.waiting if c < edge], [c for c in row.waiting if c >= edge]
        if loops is None:
            right = len(waits[0]) if rs else len(waits[0]) + takes
        assert right is not None
        assert row.rs == rs, row.number
        # Whoever begins at the turn leaves behind what lies on the other side of it.
        total = len(waits[0]) + takes + len(waits[1])
        assert (len(waits[0]) if rs else total - len(waits[1])) == right, row.number
        ahead = total - right if rs else right
        rest = ahead - takes
        if loops is not None:
            assert total == len(loops)
            assert loops[: len(waits[0])] == waits[0]
            assert loops[len(loops) - len(waits[1]) :] == waits[1]
        # A stitch that is new before the first has a column of its own before the turn.
        fresh = next((w.takes == 0 for w in steps if not w.place and w.makes), False)
        if line is not None and squares and not fresh:
            assert edge >= line if rs else squares[-1].right + squares[-1].cells <= line
        _places(steps, rest, takes, gap)
        # The hook stands at the last stitch worked, bends away from it, and rings the next one.
        if row.hook is None:
            assert rest == 0, f"row {row.number} leaves {rest}"
        else:
            far = squares[-1].right + squares[-1].cells if squares else row.hook.line
            assert row.hook.line == (far if rs else edge)
            assert row.hook.way == (1 if rs else -1)
            beyond = waits[1][:1] if rs else waits[0][-1:]
            wraps = row.hook.symbol == "w&t" and beyond
            assert row.hook.wrapped == (beyond[0] if wraps else -1)
        made = _columns(row, steps)
        loops = [*waits[0], *made, *waits[1]]
        assert loops == sorted(loops) and len(loops) == len(waits[0]) + makes + len(waits[1])
        behind = right if rs else total - right
        line = None
        if row.hook is not None or not chart.round:
            gap = makes if behind else -1
            right = len(waits[0]) + (makes if rs else 0)
            line = row.hook.line if row.hook is not None else None
            rs = not rs
        else:
            assert rs, "a round runs backwards"
            gap = behind if behind else -1
            right = 0
    if notes_of(chart).startswith("All"):
        assert fills == _walked(motif, walks)[: len(fills)]
        assert len(fills) == len(_walked(motif, walks))


def _columns(row: ReadRow, steps: list[Word]) -> list[int]:
    """The columns of the stitches that a row makes, from the right."""
    made = []
    words = [w for w in steps if not w.place and w.text not in (*TURNS, "pm", "sm", "rm")]
    squares = [s for s in row.squares if s.symbol not in ("waiting", "no stitch")]
    at = 0
    for word in words if row.rs else words[::-1]:
        if word.makes:
            # A symbol over more squares than it makes stitches spans a column that is empty.
            square = squares[at]
            made += [square.right + i * (square.cells - 1) // max(word.makes - 1, 1)
                     for i in range(word.makes)]  # fmt: skip
            at += 1
        else:
            at += word.takes  # each stitch that goes has a square of its own
    assert at == len(squares)
    return made


def _places(steps: list[Word], rest: int, takes: int, gap: int | None) -> None:
    """Fills end where the row says: so many stitches before the end of the needle, or the gap."""
    done = 0
    for word in steps:
        if word.place == "last":
            assert takes + rest - done == word.takes
        elif word.place == "gap" and gap is not None:
            assert gap - done == word.takes
        elif not word.place:
            done += word.takes


def _walked(motif: Motif, walks: list[Walk]) -> list[list[int]]:
    """How often each fill of every row is worked in the first run of a motif."""
    mine = [
        [e for e in walk.events if isinstance(e, Worked) and e.motif is motif] for walk in walks
    ]
    events = next(found for found in mine if found)
    out = []
    for event in events:
        if event.item is not events[0].item:
            break
        for index in range(event.rows):
            k, at = divmod(index, len(event.chunk.entries))
            out.append([fill.at(k) for fill in event.chunk.entries[at].fills])
    return out
