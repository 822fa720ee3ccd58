"""A look sideways: what the other rows of the block do where one does not count out."""

from __future__ import annotations

from loopwright.check.context import Context, count_of, listed
from loopwright.count.row import Misfit
from loopwright.count.walk import Finding
from loopwright.model.body import Fill
from loopwright.model.pattern import Motif, PieceRow, Row, Work

_FEW = 3
"""Fewer stitches than these are a slip of the count, hardly a short row."""


def whose(finding: Finding) -> str:
    """``Row 3 of woven`` or ``Row 12``, as the start of a sentence.

    What narrows it follows between commas: the repeat, the stretch, what a turn has left.
    """
    row = finding.row
    label = "Round" if row is not None and row.round else "Row"
    parts: list[str] = []
    if finding.motif is not None and row is not None:
        label += f" {row.number} of {finding.motif.name.text}"
        if finding.repeat:
            parts.append(f"in repeat {finding.repeat + 1:,}")
    else:
        label += f" {finding.row_number:,}"
    if finding.snag is not None:
        misfit = finding.snag.misfit
        if misfit.segments > 1:
            parts.append(f"in stretch {misfit.segment + 1} between the markers")
        if misfit.begin:
            parts.append(f"from {misfit.begin} on")
        if misfit.end and misfit.kind in ("short", "over"):
            parts.append(f"up to {misfit.end}")
        if misfit.behind:
            parts.append(f"with {count_of(misfit.behind, 'stitch')} out of reach behind the turn")
    return f"{', '.join([label, *parts])}{',' if parts else ''}"


def stretch(misfit: Misfit) -> str:
    """`` in stretch 2 of 4 between the markers``, `` up to the last 5``, or nothing."""
    upto = f" up to {misfit.end}" if misfit.end else ""
    if misfit.segments < 2:
        return upto
    return f" in stretch {misfit.segment + 1} of {misfit.segments} between the markers{upto}"


def _around(context: Context, row: Row) -> tuple[str, str] | None:
    """The writer's words before and after the one fill of a row; None where there is no such."""
    fills = [i for i, step in enumerate(row.body.steps) if isinstance(step, Fill)]
    if len(fills) != 1 or row.body.whole:
        return None
    steps = row.body.steps
    at = fills[0]
    source = context.pattern.source

    def text(part: tuple[object, ...]) -> str:
        if not part:
            return ""
        first, last = part[0], part[-1]
        span = first.span.to(last.span)  # type: ignore[attr-defined]
        return " ".join(source.slice(row.in_body(span)).replace(",", " ").split())

    return text(steps[:at]), text(steps[at + 1 :])


def advice(context: Context, finding: Finding) -> tuple[str, str]:
    """What the neighbouring rows share that this one has not: a sentence and a help, or empty."""
    motif, row = finding.motif, finding.row
    if motif is None or row is None:
        return "", ""
    look, help = _sideways(context, motif, row)
    if not help and finding.repeat and finding.rule == "count-over" and finding.snag is not None:
        lack = finding.snag.misfit.used - finding.snag.misfit.have
        name, often = motif.name.text, {1: "once", 2: "twice"}.get(finding.repeat)
        often = often or f"{finding.repeat:,} times"
        help = f"work {name} {often} here, or begin it with {lack:,} more."
    return look, help


def _sideways(context: Context, motif: Motif, row: Row) -> tuple[str, str]:
    mine = _around(context, row)
    others = [
        (other.number, around)
        for other in motif.rows
        if other.body is not row.body and (around := _around(context, other)) is not None
    ]
    if mine is None or len(others) < 2:
        return "", ""
    for place, verb in ((1, "end"), (0, "begin")):
        shared = {around[place] for _, around in others}
        if len(shared) == 1 and mine[place] not in shared:
            text = shared.pop()
            if not text:
                continue
            rows = listed(str(number) for number, _ in others)
            return (
                f" Rows {rows} {verb} with {text}.",
                f"{verb} with {text}, as the other rows do.",
            )
    return "", ""


def turn_hint(context: Context, finding: Finding) -> str:
    """A further help for a row that may have been meant to turn: other rows of its piece do."""
    snag, row = finding.snag, finding.row
    if snag is None or row is None or row.round or snag.misfit.have - snag.misfit.used < _FEW:
        return ""
    rows = [item.row for item in finding.piece.items if isinstance(item, PieceRow)]
    rows += [
        row
        for item in finding.piece.items
        if isinstance(item, Work) and item.motif is not None
        for row in item.motif.rows
    ]
    turning = any(context.tapes.of(row.body, finding.size).turns for row in rows)
    return " If it is a short row, end it with turn." if turning else ""
