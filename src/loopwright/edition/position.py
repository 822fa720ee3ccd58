"""What lies on both sides of each yarn over: UK usage has a name for each case."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence

from loopwright.model.body import Fill, Group, Step, Stitches
from loopwright.model.stitch import Stitch
from loopwright.notation.tree import Special

Hands = frozenset[str]
"""Where the yarn is beside a step: ``k`` behind the work, ``p`` in front; several or none."""

_NONE: Hands = frozenset()
_KNIT, _PURL = frozenset("k"), frozenset("p")
_PURLED = re.compile(r"p\d*tog|p|pfb|ssp|m1p|brp")


def positions(steps: tuple[Step, ...], sizes: Sequence[int]) -> dict[int, str]:
    """``kk``, ``kp``, ``pk`` or ``pp`` of each yarn over, by the id of its step.

    Round a repeated unit its last stitch stands before its first one. A yarn over whose
    neighbours differ from one repeat to the next has no entry.
    """
    found: dict[int, set[str]] = {}
    _visit(steps, _NONE, _NONE, tuple(sizes), found)
    return {step: pairs.pop() for step, pairs in found.items() if len(pairs) == 1}


def _visit(
    steps: tuple[Step, ...],
    before: Hands,
    after: Hands,
    sizes: tuple[int, ...],
    found: dict[int, set[str]],
) -> None:
    for at, step in enumerate(steps):
        left = _near(reversed(steps[:at]), True) or before
        right = _near(steps[at + 1 :], False) or after
        if isinstance(step, Stitches):
            if step.stitch.word == "yo":
                # At the edge of a row there is a stitch on one side only.
                found.setdefault(id(step), set()).update(
                    a + b for a in left or right or _KNIT for b in right or left or _KNIT
                )
        elif isinstance(step, Fill) or (
            isinstance(step, Group) and any(step.number(size) > 1 for size in sizes)
        ):
            first, last = _near(step.steps, False), _near(reversed(step.steps), True)
            _visit(step.steps, left | last, right | first, sizes, found)
        elif isinstance(step, Group):
            _visit(step.steps, left, right, sizes, found)


def _near(steps: Iterable[Step], backwards: bool) -> Hands:
    """The hand of the nearest step that is a stitch; nothing where none is."""
    for step in steps:
        hand = _hand(step, backwards)
        if hand:
            return hand
    return _NONE


def _hand(step: Step, backwards: bool) -> Hands:
    if isinstance(step, Special):
        return _KNIT if step.kind == "pick" else _NONE
    if not isinstance(step, Stitches):
        inside = getattr(step, "steps", ())
        return _near(reversed(inside) if backwards else inside, backwards)
    return _hand_of(step.stitch, step.modifiers)


def _hand_of(stitch: Stitch, modifiers: Sequence[str]) -> Hands:
    if stitch.word == "yo" or stitch.kind in ("marker", "turn"):
        return _NONE
    if stitch.kind == "slip":
        return _PURL if "wyif" in modifiers else _KNIT
    return _PURL if _PURLED.fullmatch(stitch.word) else _KNIT


def between_stitches(steps: Sequence[tuple[Stitch | None, Sequence[str]]]) -> list[str]:
    """`positions` of each yarn over among single stitches, by their places.

    Empty for all others (None: no single stitch), and for one at an edge: what lies beyond it is
    not known.
    """
    hands = [_NONE if stitch is None else _hand_of(stitch, how) for stitch, how in steps]
    found = []
    for at, (stitch, _) in enumerate(steps):
        left = next((hand for hand in reversed(hands[:at]) if hand), _NONE)
        right = next((hand for hand in hands[at + 1 :] if hand), _NONE)
        is_over = stitch is not None and stitch.word == "yo"
        found.append("".join((*left, *right)) if is_over and left and right else "")
    return found
