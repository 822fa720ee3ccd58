"""Casting on: how many stitches, and which other counts a piece could be cast on with."""

from __future__ import annotations

from loopwright.count.live import Live
from loopwright.count.measure import width_gauge
from loopwright.count.progress import Progress
from loopwright.count.proof import form_set
from loopwright.count.walk import Cast
from loopwright.model.pattern import CastOn, Motif, Work
from loopwright.notation.bounds import MAX_NUMBER

_TRIED = 64
"""Counts walked on each side for a cast-on that fits."""

_NO_MATTER = ("gauge-missing", "claim-wrong", "never-bound-off", "side-flip", "row-twice",
              "row-missing", "length-unreached")  # fmt: skip
"""Findings that no other cast-on would mend."""


def cast_on(so_far: Progress, index: int, item: CastOn) -> bool:
    """Cast on; False where the piece cannot be walked further, here and in all such functions."""
    if so_far.state is not None:
        so_far.find("never-bound-off", item.span, "again", numbers=(so_far.count,))
    if so_far.instead is not None and so_far.first_cast is None:
        count: int | None = so_far.instead
    elif item.count is not None:
        count = item.count.at(so_far.size)
    else:
        count = _count_for_width(so_far, item)
    if count is None:
        return False
    if item.strand:
        so_far.strand = item.strand.key
    so_far.state = Live.of(count)
    so_far.cast_span = item.count.span if item.count is not None else item.span
    so_far.moved = item.count is None
    if so_far.first_cast is None:
        so_far.first_cast = count
    so_far.widest = max(so_far.widest, count)
    so_far.events.append(Cast(item, index, count))
    return True


def _count_for_width(so_far: Progress, item: CastOn) -> int | None:
    """The count nearest to the stated width that the whole piece takes."""
    width = so_far.piece.width or so_far.pattern.width
    gauge = width_gauge(so_far.pattern, so_far.piece)
    if width is None:
        so_far.find("gauge-missing", item.span, "width")
        return None
    if width.unit is None:
        return None  # said by unit-missing
    if gauge is None or gauge.over.unit is None:
        so_far.find("gauge-missing", item.span, "gauge")
        return None
    wanted = width.mm(so_far.size) * gauge.stitches / gauge.over.mm()
    from loopwright.count.solve import counts_for

    counts = counts_for(so_far.piece, so_far.size, so_far.tapes)
    found = counts.nearest(wanted)
    if found is None or not 1 <= found <= MAX_NUMBER:
        so_far.find("cast-on-misfit", item.span, "none", numbers=(round(wanted),))
        return None
    return found


def on_form(so_far: Progress, item: Work, motif: Motif) -> bool:
    """Whether a motif is begun on a count of its form; else the finding with the nearest ones.

    Behind a count that was cast on wrong, what hangs is taken to be the likelier right one.
    """
    form, count = motif.form, so_far.count
    if form is None or so_far.unsure:
        return True
    takes = (
        count == form.fixed
        if form.unit == 0
        else count >= form.unit + form.fixed and (count - form.fixed) % form.unit == 0
    )
    if takes:
        return True
    if not so_far.moved and so_far.cast_span is not None:
        fewer, more = _nearest_cast_ons(so_far, count, motif)
        numbers = (count, fewer, more, item.line)
        so_far.find("cast-on-misfit", so_far.cast_span, "cast-on", motif=motif, numbers=numbers)
        # Go on as if the likelier of the two had been cast on.
        instead = [n for n in (fewer, more) if n > 0]
        if instead:
            so_far.state = Live.of(min(instead, key=lambda n: (abs(n - count), -n)))
    else:
        counts = form_set(motif)
        numbers = (count, counts.below(count) or 0, counts.above(count) or 0, item.line)
        so_far.find("cast-on-misfit", item.span, "work", motif=motif, numbers=numbers)
    return False


def _nearest_cast_ons(so_far: Progress, count: int, motif: Motif) -> tuple[int, int]:
    """The nearest cast-ons below and above that the whole piece can be walked with; 0: none."""
    if so_far.instead is not None:
        return 0, 0  # a walk that only tries a count proposes no other
    from loopwright.count.solve import counts_for

    counts = counts_for(so_far.piece, so_far.size, so_far.tapes)
    if counts.is_empty:
        counts = form_set(motif)
    found = [0, 0]
    for way, step in enumerate((-1, 1)):
        at = counts.below(count) if step < 0 else counts.above(count)
        for _ in range(_TRIED):
            if at is None or not 1 <= at <= MAX_NUMBER:
                break
            if _walks_with(so_far, at):
                found[way] = at
                break
            at = counts.below(at - 1) if step < 0 else counts.above(at + 1)
    return found[0], found[1]


def _walks_with(so_far: Progress, count: int) -> bool:
    return all(found.rule in _NO_MATTER for found in so_far.anew(count, None).findings)
