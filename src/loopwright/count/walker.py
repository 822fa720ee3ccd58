"""Each piece walked for each size, with exact whole numbers and no unrolled repeats."""

from __future__ import annotations

from collections.abc import Mapping

from loopwright.count.between_rows import begin_round, bring, change_round, finish, hold
from loopwright.count.cast_on import cast_on
from loopwright.count.progress import Estimate, Progress
from loopwright.count.repeat import Repeater
from loopwright.count.tape import Tape, Tapes
from loopwright.count.waiting import Holders
from loopwright.count.walk import Bound, Cast, Finding, Moved, Said, Walk
from loopwright.count.work_lines import work_motif, work_piece_row
from loopwright.model.pattern import (
    BeginRound,
    BindOff,
    CastOn,
    Hold,
    Item,
    JoinRound,
    LeaveLive,
    LeaveRound,
    Pattern,
    PickUp,
    Piece,
    PieceRow,
    Remark,
    Spread,
    Take,
    Work,
)
from loopwright.record import replace


def walk_piece(
    pattern: Pattern,
    piece: Piece,
    size: int,
    tapes: Tapes,
    repeater: Repeater,
    estimate: Estimate | None = None,
    instead: int | None = None,
    holders: Holders | None = None,
    forced: Mapping[Work, int] | None = None,
) -> Walk:
    """Walk one piece in one size. `instead` stands in for the written cast-on count.

    `holders` are the stitches that earlier pieces have put aside; the walk changes them.
    `forced` says how often lines that end by yarn are worked; with it any other such line is
    worked once.
    """
    holders = Holders() if holders is None else holders
    before = holders.copy()

    def anew(count: int | None, forced: Mapping[Work, int] | None) -> Walk:
        return walk_piece(pattern, piece, size, tapes, repeater, None, count, before.copy(), forced)

    so_far = Progress(
        pattern, piece, size, tapes, repeater, holders, estimate, instead, forced, anew
    )
    so_far.rs = not piece.starts_ws
    so_far.round = piece.in_round
    if len(pattern.strands) == 1:
        so_far.strand = pattern.strands[0].name.key
    for index, item in enumerate(piece.items):
        if not _walk_item(so_far, index, item):
            break
    else:
        _end(so_far)
    return Walk(
        piece,
        size,
        tuple(so_far.events),
        tuple(so_far.findings),
        tuple(so_far.sites),
        so_far.first_cast,
        so_far.widest,
        so_far.row - 1,
        so_far.height,
        not so_far.findings,
        tuple(so_far.reached),
    )


def walk_size(
    pattern: Pattern, size: int, tapes: Tapes, repeater: Repeater, estimate: Estimate | None = None
) -> tuple[Walk, ...]:
    """Walk every piece in one size, in file order: later ones take what earlier ones hold."""
    holders = Holders()
    walks: list[Walk] = []
    for piece in pattern.pieces:
        walk = walk_piece(pattern, piece, size, tapes, repeater, estimate, None, holders)
        walks.append(walk)
        if estimate is not None:
            estimate.note(walk)
    for left in holders.waiting.values():
        if left.live:
            continue
        found = Finding(
            "never-bound-off",
            size,
            left.span,
            left.piece,
            "held",
            row_number=left.row,
            numbers=(left.count,),
            name=left.name,
        )
        at = pattern.pieces.index(left.piece)
        walks[at] = replace(walks[at], findings=(*walks[at].findings, found), sound=False)
    return tuple(walks)


def _walk_item(so_far: Progress, index: int, item: Item) -> bool:
    """Walk one item; False where the piece cannot be walked further."""
    if isinstance(item, Remark):
        so_far.events.append(Said(item, index))
        return True
    if isinstance(item, CastOn) and not item.more:
        return cast_on(so_far, index, item)
    if isinstance(item, PickUp | Take | CastOn):
        return bring(so_far, index, item)
    if so_far.state is None:
        detail = "bound" if any(isinstance(e, Bound) for e in so_far.events) else "never"
        so_far.find("no-cast-on", item.span, detail)
        return False
    if isinstance(item, Hold):
        return hold(so_far, index, item)
    if isinstance(item, JoinRound | LeaveRound):
        return change_round(so_far, index, item)
    if isinstance(item, BeginRound):
        return begin_round(so_far, index, item)
    if isinstance(item, BindOff | LeaveLive):
        return finish(so_far, index, item)
    following = _following(so_far, index)
    if isinstance(item, PieceRow):
        return work_piece_row(so_far, index, item, following)
    if isinstance(item, Spread):
        from loopwright.count.spread_lines import work_spread  # few pieces have such a line

        return work_spread(so_far, index, item, following)
    return work_motif(so_far, index, item, following)


def _following(so_far: Progress, index: int) -> Tape | None:
    """The next row that is worked behind an item.

    None where none is, where a spread line comes, or where the row takes stitches whose number
    is not known.
    """
    items = so_far.piece.items
    for place in range(index + 1, len(items)):
        item = items[place]
        if isinstance(item, PieceRow | Work | Spread):
            break
    else:
        return None
    tape: Tape | None = None
    if isinstance(item, PieceRow):
        tape = so_far.tape(item.row)
    elif isinstance(item, Work) and item.motif is not None and item.motif.rows:
        tape = so_far.tape(item.motif.rows[0])
    return None if tape is None or tape.asks else tape


def _end(so_far: Progress) -> None:
    """The last line is done: nothing may hang any more."""
    piece = so_far.piece
    if so_far.state is None:
        if not any(isinstance(e, Cast | Moved) for e in so_far.events):
            so_far.find("no-cast-on", piece.span, "empty")
        return
    live = so_far.count
    if live > 0:
        cast = sum(e.count for e in so_far.events if isinstance(e, Cast))
        numbers = (live, cast, so_far.brought, so_far.put_aside)
        so_far.find("never-bound-off", piece.span, "end", numbers=numbers)
