"""Where a file puts stitches aside and where it asks for them, for the rules of holders."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context
from loopwright.count.walk import Finding
from loopwright.model.body import specials_of
from loopwright.model.pattern import Hold, LeaveLive, Pattern, Piece, PieceRow, Take
from loopwright.notation.near import nearest
from loopwright.notation.source import Span
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class Place:
    """A line or step of `piece` that puts stitches aside, or takes them, under `name`."""

    name: str
    piece: Piece
    span: Span


def _in_rows(piece: Piece, kind: str) -> Iterator[Place]:
    for item in piece.items:
        if isinstance(item, PieceRow):
            for step in specials_of(item.row.body.steps):
                if step.kind == kind and step.name is not None:
                    yield Place(step.name.key, piece, item.row.in_body(step.span))


def put_aside(pattern: Pattern) -> list[Place]:
    """Every place that holds stitches, and every piece left live, in file order."""
    found: list[Place] = []
    for piece in pattern.pieces:
        for item in piece.items:
            if isinstance(item, Hold):
                found.append(Place(item.name.key, piece, item.span))
            elif isinstance(item, LeaveLive):
                found.append(Place(piece.name.key, piece, item.span))
        found += _in_rows(piece, "hold")
    return sorted(found, key=lambda place: place.span)


def asked_for(pattern: Pattern) -> list[Place]:
    """Every place that takes held stitches or joins a piece, in file order."""
    found: list[Place] = []
    for piece in pattern.pieces:
        for item in piece.items:
            if isinstance(item, Take):
                found += [Place(name.key, piece, name.span) for name in item.names]
        found += _in_rows(piece, "take")
    return sorted(found, key=lambda place: place.span)


def failed(context: Context, piece: Piece, size: int) -> bool:
    """Whether the walk of a piece met anything else than stitches that are never taken."""
    return any(
        finding.rule != "never-bound-off"
        for walk in context.walks_of(piece)
        if walk.size == size
        for finding in walk.findings
    )


def never_taken(context: Context, size: int) -> list[Finding]:
    """Held stitches of one size that no line asks for."""
    asked = asked_for(context.pattern)
    return [
        finding
        for walk in context.walks
        if walk.size == size
        for finding in walk.findings
        if (finding.rule, finding.detail) == ("never-bound-off", "held")
        # A line that asks for them and never came to it stands in a piece that failed before.
        and not any(p.name == finding.name and failed(context, p.piece, size) for p in asked)
    ]


def unknown(context: Context, size: int) -> list[Finding]:
    """Lines of one size that ask for a name under which nothing is ever put aside."""
    names = {place.name for place in put_aside(context.pattern)}
    return [
        finding
        for walk in context.walks
        if walk.size == size
        for finding in walk.findings
        if (finding.rule, finding.detail) == ("holder-empty", "never") and finding.name not in names
    ]


def meant(context: Context, empty: Finding) -> Finding | None:
    """The held stitches that a line with an unknown name most likely means.

    Those of the nearest name that nothing else takes, or the only ones that are never taken, if
    this is the only unknown name.
    """
    if empty not in unknown(context, empty.size):
        return None
    left = never_taken(context, empty.size)
    close = nearest(empty.name, [finding.name for finding in left])
    if close is not None:
        return next(finding for finding in left if finding.name == close)
    return left[0] if len(left) == len(unknown(context, empty.size)) == 1 else None
