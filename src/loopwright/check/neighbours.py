"""A look sideways: what the other rows of the block do where one does not count out."""

from __future__ import annotations

from loopwright.check.context import Context, count_of, listed
from loopwright.count.row import Misfit
from loopwright.count.tape import stitches_of
from loopwright.count.walk import Finding
from loopwright.model.body import Fill
from loopwright.model.pattern import Motif, PieceRow, Row, Work
from loopwright.notation.format import format_steps
from loopwright.notation.source import Span
from loopwright.problem import Edit, Fix
from loopwright.record import dataclass

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
        label += f" {row.number} of “{finding.motif.name.text}”"
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


@dataclass(frozen=True, slots=True)
class _Parts:
    """What a row writes before its one fill, behind it and inside it, with what each takes.

    `spans` are the places in the file; None for a part that has no words.
    """

    texts: tuple[str, str, str]
    takes: tuple[int, int, int]
    spans: tuple[Span | None, Span | None, Span | None]
    fill: Span


BEFORE, BEHIND, INSIDE = range(3)
_VERBS = ("begin with", "end with", "repeat")


def _parts(context: Context, row: Row, size: int) -> _Parts | None:
    """The parts of a row with one fill; None where there is no such, or where it is as another."""
    fills = [i for i, step in enumerate(row.body.steps) if isinstance(step, Fill)]
    if len(fills) != 1 or row.body.whole:
        return None
    steps = row.body.steps
    at = fills[0]
    fill = steps[at]
    assert isinstance(fill, Fill)
    parts = (steps[:at], steps[at + 1 :], fill.steps)
    source = context.pattern.source
    spans = [row.in_body(part[0].span.to(part[-1].span)) if part else None for part in parts]
    # Case and spacing are the writer's; only other steps are another text.
    texts = [format_steps(source.slice(span).replace(",", " ")) if span else "" for span in spans]
    takes = [stitches_of(part, size)[0] for part in parts]
    return _Parts(
        (texts[0], texts[1], texts[2]),
        (takes[0], takes[1], takes[2]),
        (spans[0], spans[1], spans[2]),
        row.in_body(fill.span),
    )


@dataclass(frozen=True, slots=True)
class Advice:
    """What the neighbours do otherwise: a sentence, a help, and a fix where it is certain."""

    look: str = ""
    help: str = ""
    fix: Fix | None = None


def advice(context: Context, finding: Finding) -> Advice:
    """What the neighbouring rows share that this one has not; empty words where there is none."""
    if finding.motif is None or finding.row is None:
        return Advice()
    misfit = finding.snag.misfit if finding.snag is not None else None
    return advice_for(context, finding.motif, finding.row, misfit, finding.size)


def advice_for(
    context: Context, motif: Motif, row: Row, misfit: Misfit | None, size: int
) -> Advice:
    """What the other rows of a motif share that `row` has not, and whether it mends `misfit`."""
    mine = _parts(context, row, size)
    others = [
        (other.number, parts)
        for other in motif.rows
        if other.body is not row.body and (parts := _parts(context, other, size)) is not None
    ]
    if mine is None or len(others) < 2:
        return Advice()
    odd = [
        (place, others[0][1])
        for place in (BEHIND, BEFORE, INSIDE)
        if len({parts.texts[place] for _, parts in others}) == 1
        and mine.texts[place] != others[0][1].texts[place]
    ]
    named = [(place, like) for place, like in odd if like.texts[place]]
    whole = len(others) == sum(other.body is not row.body for other in motif.rows)
    fix = None
    if len(odd) == len(named) == 1 and whole and row.as_row is None and misfit is not None:
        fix = _fix(mine, named[0][1], named[0][0], misfit)
    if not named or (named[0][0] == INSIDE and fix is None):
        return Advice()
    place, like = named[0]
    text, verb = like.texts[place], _VERBS[place]
    rows = listed(str(number) for number, _ in others)
    return Advice(f" Rows {rows} {verb} {text}.", f"{verb} {text}, as the other rows do.", fix)


def _fix(mine: _Parts, like: _Parts, place: int, misfit: Misfit) -> Fix | None:
    """The other rows' part in place of this row's, if one word differs and the row then fits."""
    if misfit.segments > 1 or misfit.kind not in ("short", "over", "uneven"):
        return None
    if not _one_word(mine.texts[place].split(), like.texts[place].split()):
        return None
    takes = list(mine.takes)
    takes[place] = like.takes[place]
    rest = misfit.have - takes[BEFORE] - takes[BEHIND]
    if rest < 0 or takes[INSIDE] < 1 or rest % takes[INSIDE]:
        return None
    text = like.texts[place]
    span = mine.spans[place]
    if span is not None:
        edit = Edit(span, text)
    elif place == BEFORE:
        edit = Edit(Span(mine.fill.start, mine.fill.start), f"{text} ")
    else:
        edit = Edit(Span(mine.fill.end, mine.fill.end), f" {text}")
    return Fix(f"{_VERBS[place]} “{text}”, as the other rows do", (edit,))


def _one_word(mine: list[str], like: list[str]) -> bool:
    """Whether one word more, fewer or other makes the one of the other."""
    short, long = sorted((mine, like), key=len)
    if len(long) - len(short) > 1:
        return False
    at = next((i for i, word in enumerate(short) if word != long[i]), len(short))
    return short[at + (len(short) == len(long)) :] == long[at + 1 :]


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
