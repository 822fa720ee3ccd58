"""A motif proved on its ``over`` form, for every n at once."""

from __future__ import annotations

from typing import TYPE_CHECKING

from loopwright.count.affine import Affine, CountSet, Range
from loopwright.count.live import Live
from loopwright.count.repeat import Repeater, Snag
from loopwright.count.tape import PLACE, Tape
from loopwright.model.pattern import Motif
from loopwright.record import dataclass

if TYPE_CHECKING:
    from loopwright.count.solve import TapesLike


@dataclass(frozen=True, slots=True)
class Proof:
    """What was found of a motif in one size.

    `snags` are the rows that do not hold (none: proved). `verdict` is ``ok``, ``row`` where one
    row is the odd one out among rows that hold, ``form`` where the form itself is wrong, or
    ``open`` where nothing can be proved (no form, unknown words, or markers that hang from
    outside). `holds` are the counts on which all its rows do hold.
    """

    motif: Motif
    size: int
    verdict: str
    snags: tuple[Snag, ...]
    holds: CountSet


def prove(motif: Motif, size: int, tapes: TapesLike, repeater: Repeater) -> Proof:
    """Prove a motif's rows on its form. The form's n runs from 1 without end."""
    form = motif.form
    pairs = [(row, tapes.of(row.body, size)) for row in motif.rows]
    if form is None or not pairs or any(tape.broken or tape.asks for _, tape in pairs):
        return Proof(motif, size, "open", (), CountSet.none())
    start = Live((Affine(form.fixed, form.unit),))
    over = Range(1, None) if form.unit else Range(0, 0)
    if form.unit == 0:
        start = Live.of(form.fixed)
    _, _, snags = repeater.sweep(pairs, start, over, motif.in_round, None)
    if not snags:
        return Proof(motif, size, "ok", (), CountSet.none())
    if any(snag.kind in ("no-marker", "marker-missed") for snag in snags):
        if snags[0].kind == "no-marker" and not any(t.marked and _places(t) for _, t in pairs):
            return Proof(motif, size, "open", (), CountSet.none())
        return Proof(motif, size, "row", tuple(snags[:1]), CountSet.none())
    if any(snag.kind == "trouble" for snag in snags):
        return Proof(motif, size, "row", tuple(snags), CountSet.none())
    bad = {snag.row for snag in snags}
    good = [
        row
        for row, tape in pairs
        if row not in bad and row.as_row is None and (not tape.fills or tape.fills[0].takes > 1)
    ]
    from loopwright.count.solve import holds_on

    holds = holds_on(motif, size, tapes)
    always = all(snag.misfit.always for snag in snags)
    # A fill whose unit is no multiple of the form's is a slip in the row, not a form too wide.
    foreign = form.unit > 0 and any(s.misfit.unit and s.misfit.unit % form.unit for s in snags)
    verdict = "row" if good and (always or foreign) else "form"
    return Proof(motif, size, verdict, tuple(snags), holds)


def form_set(motif: Motif) -> CountSet:
    """The counts of a motif's form for n = 1, 2, 3 …"""
    form = motif.form
    if form is None:
        return CountSet.every(1)
    if form.unit == 0:
        return CountSet(form.fixed, 0, form.fixed)
    return CountSet(form.fixed, form.unit, max(form.unit + form.fixed, 0))


def _places(tape: Tape) -> bool:
    """Whether a row places a marker itself."""
    return any(op.kind == PLACE for op in tape.ops)
