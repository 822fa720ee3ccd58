"""The stitches of a row, step by step, in a voice's words."""

from __future__ import annotations

from collections.abc import Sequence

from loopwright.count.affine import Affine
from loopwright.count.spread import spread_over_stitches
from loopwright.edition.position import positions
from loopwright.edition.step_words import Unit
from loopwright.edition.voice import Voice
from loopwright.model.body import Body, Evenly, Fill, Group, Step, Stitches
from loopwright.notation.tree import Special
from loopwright.record import dataclass

_ENDS = ("last", "gap")  # they say where the fill before them stops


@dataclass(frozen=True, slots=True)
class FillTimes:
    """How often the fills of a row are worked: one list a size, in the order of the fills."""

    sizes: tuple[tuple[Affine, ...], ...]
    repeats: tuple[int, ...]

    def fixed(self, index: int) -> int | None:
        """The one number of times in every size and repeat, or None where it varies."""
        values: set[int] = set()
        for fills, repeats in zip(self.sizes, self.repeats, strict=True):
            if index >= len(fills):
                return None
            values.add(fills[index].fixed)
            if fills[index].unit and repeats > 1:
                return None
        return values.pop() if len(values) == 1 else None

    def plain(self, index: int, sizes: int) -> list[int] | None:
        """The number of times in each of the `sizes`; None where it varies between repeats."""
        found = [
            fills[index].fixed
            for fills, repeats in zip(self.sizes, self.repeats, strict=True)
            if index < len(fills) and (not fills[index].unit or repeats <= 1)
        ]
        return found if len(found) == sizes else None


class Phraser:
    """Words the bodies of a pattern for some sizes (places in `sizes`), in one voice."""

    def __init__(self, sizes: Sequence[int], voice: Voice) -> None:
        self.sizes = sizes
        self.voice = voice

    def body(self, body: Body, fills: FillTimes) -> str:
        """A body as said: ``k2, *sl1 wyif, k1; rep from * to last 2 sts, k2``."""
        if body.whole is not None:
            return self.voice.whole(body.whole)
        self._index = 0
        self._fills = fills
        self._between = positions(body.steps, self.sizes)
        return self.voice.steps(self._steps(self._unrolled(body.steps)))

    # --- inside -----------------------------------------------------------------------------------

    def _unrolled(self, steps: tuple[Step, ...]) -> tuple[Step, ...]:
        """Groups are written out where a fill in them ends outside them."""
        out: list[Step] = []
        for step in steps:
            if isinstance(step, Evenly):
                out.append(step)
            elif isinstance(step, Group) and _has_fill(step.steps) and not _closed(step.steps):
                for _ in range(step.number(self.sizes[0])):
                    out += self._unrolled(step.steps)
            else:
                out.append(step)
        return tuple(out)

    def _steps(self, steps: tuple[Step, ...]) -> list[str]:
        parts: list[str] = []
        for at, step in enumerate(steps):
            if isinstance(step, Fill):
                parts += self._fill(step, steps[at + 1 :])
            elif isinstance(step, Evenly):
                parts += self._evenly(step)
            elif not isinstance(step, Special) or step.kind not in _ENDS:
                parts.append(self._step(step, 0))
        return parts

    def _step(self, step: Step, depth: int) -> str:
        if isinstance(step, Stitches):
            values = [step.number(size) for size in self.sizes]
            between = self._between.get(id(step), "")
            return self.voice.stitches(step.stitch, values, step.modifiers, between)
        if isinstance(step, Evenly):
            return self.voice.steps(self._evenly(step))
        if isinstance(step, Group):
            return self._group(step, depth)
        if isinstance(step, Special):
            return self._special(step)
        return self.voice.steps(self._fill(step, ()))

    def _group(self, step: Group, depth: int) -> str:
        if _has_fill(step.steps):
            index = self._index
            inner = self._steps(step.steps)
            # Its fills were met once in the words and once a time in the count.
            self._index = index + (self._index - index) * step.number(self.sizes[0])
        else:
            inner = [self._step(s, depth + 1) for s in step.steps]
        nested = depth == 0 and any(isinstance(s, Group) for s in step.steps)
        if step.into is not None:
            return self.voice.into(inner, [step.into.at(size) for size in self.sizes], nested)
        return self.voice.group(inner, [step.number(size) for size in self.sizes], nested)

    def _evenly(self, step: Evenly) -> list[str]:
        """``k4, (k2tog, k8) 5 times, (k2tog, k7) 6 times, k2tog, k4``, step by step."""
        index = self._index
        self._index += 1
        say = self.voice.stitches
        stitch = step.plain.stitch
        one = say(step.change.stitch, [1], step.change.modifiers)
        changes = [step.change.number(size) for size in self.sizes]
        plain = self._fills.plain(index, len(self.sizes))
        if plain is None:
            return [self.voice.evenly(one, changes, stitch.word == "p")]
        spread = [spread_over_stitches(n, s) for n, s in zip(changes, plain, strict=True)]
        firsts, lasts = [s.first for s in spread], [s.last for s in spread]
        parts = [say(stitch, firsts, ())] if any(firsts) else []
        for place in range(2):
            blocks = [s.blocks[place] if place < len(s.blocks) else (0, 0) for s in spread]
            gaps, often = [block[0] for block in blocks], [block[1] for block in blocks]
            if any(often):
                inner = [one, say(stitch, gaps, ())] if any(gaps) else [one]
                parts.append(self.voice.group(inner, often, False))
        if any(changes):
            parts.append(one)
        return [*parts, say(stitch, lasts, ())] if any(lasts) else parts

    def _special(self, step: Special) -> str:
        name = step.name.text if step.name is not None else ""
        if step.kind == "take":
            return self.voice.take(name)
        values = [step.count.at(size) if step.count is not None else 0 for size in self.sizes]
        return (self.voice.hold if step.kind == "hold" else self.voice.pick)(values, name)

    def _fill(self, step: Fill, after: tuple[Step, ...]) -> list[str]:
        index = self._index
        self._index += 1
        often = self._fills.fixed(index)
        if often == 0:
            return []
        units = [self._step(s, 1) for s in step.steps]
        if often == 1:
            return units
        only = step.steps[0]
        plain = (
            len(step.steps) == 1
            and isinstance(only, Stitches)
            and only.stitch.word in ("k", "p")
            and not only.modifiers
            and all(only.number(size) == 1 for size in self.sizes)
        )
        takes = sum(_takes(s, self.sizes[0]) for s in step.steps)
        left, place = self._end(after)
        stitch = only.stitch if plain and isinstance(only, Stitches) else None
        return [self.voice.fill(Unit(tuple(units), takes, stitch, often, left, place))]

    def _end(self, after: tuple[Step, ...]) -> tuple[tuple[int, ...], str]:
        """How many stitches follow a fill, and up to what: the end (empty), a marker, the gap."""
        left = [0] * len(self.sizes)
        for step in after:
            if isinstance(step, Stitches) and step.stitch.word in ("sm", "rm"):
                return tuple(left), "marker"
            if isinstance(step, Special) and step.kind in _ENDS:
                for at, size in enumerate(self.sizes):
                    left[at] += step.count.at(size) if step.count is not None else 0
                return tuple(left), "gap" if step.kind == "gap" else ""
            for at, size in enumerate(self.sizes):
                left[at] += _takes(step, size)
        return tuple(left), ""


def _has_fill(steps: tuple[Step, ...]) -> bool:
    return any(isinstance(s, Fill) or (isinstance(s, Group) and _has_fill(s.steps)) for s in steps)


def _closed(steps: tuple[Step, ...]) -> bool:
    """Every fill among the steps is followed by a marker among them."""
    open_fill = False
    for step in steps:
        if isinstance(step, Fill):
            open_fill = True
        elif isinstance(step, Group) and _has_fill(step.steps):
            return False
        elif isinstance(step, Stitches) and step.stitch.word in ("sm", "rm"):
            open_fill = False
    return not open_fill


def _takes(step: Step, size: int) -> int:
    if isinstance(step, Stitches):
        return step.stitch.takes * step.number(size)
    if isinstance(step, Special):
        return step.count.at(size) if step.kind == "hold" and step.count is not None else 0
    if isinstance(step, Group) and step.into is not None:
        return step.into.at(size)
    inner = sum(_takes(s, size) for s in step.steps)
    return inner * (step.number(size) if isinstance(step, Group) else 1)
