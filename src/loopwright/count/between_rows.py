"""What is done between two rows: stitches held, taken, picked up and bound off, rounds joined."""

from __future__ import annotations

from loopwright.count.affine import Affine
from loopwright.count.live import Live, end_to_end, parted, summed
from loopwright.count.progress import Progress
from loopwright.count.waiting import Waiting
from loopwright.count.walk import Bound, Moved, Said
from loopwright.model.pattern import (
    BeginRound,
    BindOff,
    CastOn,
    Hold,
    JoinRound,
    LeaveLive,
    LeaveRound,
    PickUp,
    Take,
)
from loopwright.notation.bounds import MAX_NUMBER
from loopwright.notation.source import Span


def finish(so_far: Progress, index: int, item: BindOff | LeaveLive) -> bool:
    """Bind all stitches off, or leave them live for another piece."""
    count = so_far.count
    if isinstance(item, BindOff):
        _unreached(so_far, item.span, "bind")
        if item.strand:
            so_far.strand = item.strand.key
    else:
        name = so_far.piece.name.key
        so_far.put(Waiting(name, count, so_far.piece, so_far.row - 1, item.span, True))
    so_far.events.append(Bound(item, index, count))
    so_far.state = None
    return True


def _unreached(so_far: Progress, span: Span, detail: str) -> None:
    """Stitches that a short row has left must be worked before the whole piece goes on."""
    behind = sum(part.fixed for part in so_far.live.behind)
    if behind and not so_far.unsure:
        so_far.find("stitches-unreached", span, detail, numbers=(behind,))


# --- rounds -----------------------------------------------------------------------------------


def change_round(so_far: Progress, index: int, item: JoinRound | LeaveRound) -> bool:
    """From rows to rounds, or back to rows."""
    _unreached(so_far, item.span, "join" if isinstance(item, JoinRound) else "leave")
    if isinstance(item, JoinRound) and not so_far.round and not so_far.rs:
        # Joined at the end of a right-side row, not turned: the round meets it from its start.
        live = so_far.live
        gap = None if live.gap is None else summed(live.ahead) - live.gap
        so_far.state = Live(live.ahead[::-1], live.behind, gap)
    so_far.round = isinstance(item, JoinRound)
    so_far.rs = True
    so_far.events.append(Said(item, index))
    return True


def begin_round(so_far: Progress, index: int, item: BeginRound) -> bool:
    """The beginning of the rounds moves; the stitches up to it are knit."""
    count, have, live = item.count.at(so_far.size), so_far.count, so_far.live
    if not so_far.round or not so_far.rs or live.behind:
        so_far.find("out-of-place", item.span, "begin")
        return False
    if count >= have:
        so_far.find("count-over", item.span, "begin", numbers=(count, have))
        return False
    first, rest = parted([part.fixed for part in live.ahead], count)
    parts = tuple(map(Affine, rest))
    # A gap that is knit past is closed.
    so_far.state = Live(end_to_end(parts, tuple(map(Affine, first))), (), _gap_left(live, count))
    so_far.events.append(Said(item, index))
    return True


def _gap_left(live: Live, count: int) -> Affine | None:
    """Where the gap is when the first `count` stitches are no longer ahead; None: behind it."""
    gap = live.gap
    return gap.plus(-count) if gap is not None and gap.fixed >= count else None


# --- stitches off the needle and onto it ------------------------------------------------------


def hold(so_far: Progress, index: int, item: Hold) -> bool:
    """The first stitches, or all, go onto a holder."""
    have, live = so_far.count, so_far.live
    if item.count is None:
        count, so_far.state = have, None
    else:
        count = item.count.at(so_far.size)
        parts = [part.fixed for part in live.ahead]
        if count > sum(parts):
            so_far.find("count-over", item.span, "hold", numbers=(count, sum(parts)))
            return False
        kept = tuple(map(Affine, parted(parts, count)[1]))
        rest = Live(kept, live.behind, _gap_left(live, count))
        so_far.state = rest if have > count else None
    so_far.moved = True
    so_far.put(Waiting(item.name.key, count, so_far.piece, so_far.row - 1, item.span, False))
    so_far.events.append(Moved(item, index, -count, (count,), have - count))
    return True


def bring(so_far: Progress, index: int, item: Take | PickUp | CastOn) -> bool:
    """More stitches on the needle: at the end of the row just worked, or behind the others."""
    counts: list[int] = []
    if isinstance(item, Take):
        for name in item.names:
            found = so_far.take(name.key, name.span)
            if found is None:
                return False
            counts.append(found)
    else:
        assert item.count is not None
        counts.append(item.count.at(so_far.size))
        so_far.brought += counts[0]
        if item.strand:
            so_far.strand = item.strand.key
    count = sum(counts)
    if so_far.state is None:
        if isinstance(item, CastOn):
            so_far.find("no-cast-on", item.span, "more")
            return False
        so_far.state = Live.of(count)
    else:
        so_far.state = _with_more(so_far.state, count, so_far.round, isinstance(item, Take))
    if so_far.first_cast is None:
        so_far.first_cast = count
    so_far.moved = True
    now = so_far.count
    so_far.widest = max(so_far.widest, now)
    so_far.events.append(Moved(item, index, count, tuple(counts), now))
    if now > MAX_NUMBER:
        so_far.find("number-too-big", item.span, "stitches", numbers=(now,))
        return False
    return True


def _with_more(live: Live, count: int, in_round: bool, behind: bool) -> Live:
    """`count` more stitches: behind all others, or at the end of the row just worked."""
    more = (Affine(count),)
    if behind and live.behind:
        return Live(live.ahead, end_to_end(live.behind, more), live.gap)
    if in_round or behind:
        return Live(end_to_end(live.ahead, more), live.behind, live.gap)
    gap = live.gap.plus(count) if live.gap is not None else None
    return Live(end_to_end(more, live.ahead), live.behind, gap)
