"""The lines of a piece that work no row: stitches that come and go, and how it goes on."""

from __future__ import annotations

from loopwright.count.walk import Bound, Cast, Event, Moved
from loopwright.edition.line_writer import LineWriter
from loopwright.model.pattern import (
    BeginRound,
    BindOff,
    CastOn,
    Hold,
    Item,
    JoinRound,
    LeaveLive,
    LeaveRound,
    PickUp,
    Take,
)


def between(writer: LineWriter, item: Item, events: list[Event]) -> None:
    """A line that works no row: stitches that come and go, and how the piece goes on."""
    voice = writer.voice
    if isinstance(item, JoinRound):
        writer.do(voice.join_round())
    elif isinstance(item, LeaveRound):
        writer.do(voice.leave_round())
    elif isinstance(item, BeginRound):
        writer.do(voice.begin_round([item.count.at(size) for size in writer.sizes]))
    elif isinstance(item, CastOn) and not item.more:
        _cast_on(writer, item, [e.count for e in events if isinstance(e, Cast)])
    elif isinstance(item, BindOff | LeaveLive):
        _finish(writer, item, [e.count for e in events if isinstance(e, Bound)])
    elif isinstance(item, Hold | Take | PickUp | CastOn):
        _move(writer, item, [e for e in events if isinstance(e, Moved)])


def _cast_on(writer: LineWriter, item: CastOn, counts: list[int]) -> None:
    strand = writer.strand_text(item)
    method = item.method.text if item.method else None
    text = writer.voice.cast_on(counts, writer.said(strand), method)
    if writer.piece.in_round:
        text += f"{writer.voice.then}{writer.voice.join_round()}"
    writer.do(text, "", strand)


def _finish(writer: LineWriter, item: BindOff | LeaveLive, counts: list[int]) -> None:
    if isinstance(item, LeaveLive):
        writer.do(writer.voice.leave_live(counts, item.text.text if item.text else None))
        return
    strand = writer.strand_text(item)
    method = item.method.text if item.method else None
    writer.do(writer.voice.bind_off(counts, writer.said(strand), method), "", strand)


def _move(writer: LineWriter, item: Hold | Take | PickUp | CastOn, moved: list[Moved]) -> None:
    if not moved:
        return
    first = [abs(e.counts[0]) for e in moved]
    strand = None if isinstance(item, Hold | Take) else writer.strand_text(item)
    if isinstance(item, Hold):
        text = writer.voice.put_aside(first, item.name.text, item.count is None)
    elif isinstance(item, Take):
        counts = [[e.counts[at] for e in moved] for at in range(len(item.names))]
        text = writer.voice.bring([name.text for name in item.names], counts, item.joined)
    elif isinstance(item, PickUp):
        edge = item.edge.text if item.edge is not None else ""
        text = writer.voice.pick_up(first, writer.said(strand), edge)
    else:
        method = item.method.text if item.method else None
        text = writer.voice.cast_on_more(first, writer.said(strand), method)
    several = isinstance(item, Take) and len(item.names) > 1
    changed = several or any(e.total not in (0, e.count) for e in moved)
    writer.do(text, writer.count([e.total for e in moved], changed), strand)
