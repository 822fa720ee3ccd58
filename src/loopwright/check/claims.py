"""A claim and its row disagree: what speaks for the row, so that the claim may be mended.

A claim is there to find a slip in the row. To write the row's own count over it would hide that
slip, so it is done only where something else says that the row is as it was meant.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from loopwright.check.context import Context
from loopwright.count.live import Live
from loopwright.count.repeat import Entry
from loopwright.count.row import work_row
from loopwright.count.walk import Walk
from loopwright.model.body import Group, Step, Stitches
from loopwright.model.pattern import Row
from loopwright.notation.tree import Special

_LEANS = {
    "ssk": "2tog",
    "skp": "2tog",
    "k2tog": "2tog",
    "ssp": "p2tog",
    "sssk": "3tog",
    "sk2p": "3tog",
    "k3tog": "3tog",
    "m1l": "m1",
    "m1r": "m1",
    "lt": "twist",
    "rt": "twist",
}
"""Stitches that are each other's mirror image, by what they are alike in."""

_MOST = 200  # steps of a row that are looked at


def row_is_sure(context: Context, row: Row, walks: tuple[Walk, ...]) -> bool:
    """Whether the row, not its claim, is right beyond doubt.

    It is where its shaping is the same from both ends (one slip would break that) and it starts
    with a count that is said, or where the row that comes next takes the count the row leaves and
    could not take the claimed one.
    """
    mirrored = _is_mirrored(row.body.steps) and _starts_surely(row, walks)
    return mirrored or _next_row_says(context, row, walks)


def _starts_surely(row: Row, walks: tuple[Walk, ...]) -> bool:
    """Whether the count that the row starts with is said: by the cast-on, or by a claim since.

    A count claimed may be wrong because of a slip before the row, as “x7” typed for “x8”, which
    a claimed change is not.
    """
    assert row.claim is not None
    if row.claim.sign:
        return True
    for walk in walks:
        sure = True
        for entry in _once(walk):
            if entry.row is row:
                if not sure:
                    return False
                continue
            claim = entry.row.claim
            if claim is not None and not claim.sign:
                sure = entry.end.fixed == claim.count.at(walk.size)
            elif entry.start != entry.end:
                sure = False
    return True


def _is_mirrored(steps: tuple[Step, ...]) -> bool:
    signs = list(_signs(steps))
    if not signs or len(signs) > _MOST or signs != signs[::-1]:
        return False
    # A row that shapes nothing may have lost what it should, and what stands in the middle is
    # its own image whatever it holds.
    if not any(_shapes(step) for step in steps):
        return False
    return len(signs) % 2 == 0 or not _shapes(steps[len(steps) // 2])


def _signs(steps: tuple[Step, ...]) -> Iterator[str]:
    for step in steps:
        if isinstance(step, Stitches):
            word = _LEANS.get(step.stitch.word, step.stitch.word)
            if step.stitch.kind == "cable":
                word = word[:-1]
            yield f"{word} {step.count}"
        elif isinstance(step, Group):
            times = step.times.values if step.times else ""
            into = step.into.values if step.into else ""
            yield f"({' '.join(_signs(step.steps))}) {times} {into}"
        elif isinstance(step, Special):
            yield f"{step.kind} {step.count.values if step.count else ''}"
        else:
            yield f"* {' '.join(_signs(step.steps))} *"


def _shapes(step: Step) -> bool:
    """Whether a step makes more or fewer stitches than it takes."""
    if isinstance(step, Stitches):
        return step.stitch.takes != step.stitch.makes
    if isinstance(step, Special):
        return step.kind not in ("last", "gap")
    if isinstance(step, Group) and step.into is not None:
        return True
    return any(_shapes(inner) for inner in step.steps)


def _next_row_says(context: Context, row: Row, walks: tuple[Walk, ...]) -> bool:
    assert row.claim is not None
    found = False
    for walk in walks:
        entries = list(_once(walk))
        for entry, following in pairwise(entries):
            if entry.row is not row:
                continue
            said = row.claim.count.at(walk.size)
            signed = {"+": entry.start.fixed + said, "-": entry.start.fixed - said}
            claimed = signed.get(row.claim.sign, said)
            if claimed == entry.end.fixed:
                continue
            tape = context.tapes.of(following.row.body, walk.size)
            if claimed < 0 or tape.marked or tape.broken or tape.asks or tape.turns:
                return False
            if work_row(tape, Live.of(claimed)).misfit is None:
                return False
            found = True
    return found


def _once(walk: Walk) -> Iterator[Entry]:
    """The rows of a walk in order, those of a repeat once and then the first of it again."""
    for event in walk.events:
        chunk = getattr(event, "chunk", None)
        if chunk is None:
            continue
        yield from chunk.entries
        if chunk.rows > len(chunk.entries):
            yield chunk.entries[0]
