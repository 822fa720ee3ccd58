"""The stitches of a row in the trade's wording."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from loopwright.count.affine import Affine
from loopwright.count.spread import spread_over_stitches
from loopwright.edition.numbers import sized, times
from loopwright.facts.words import terms
from loopwright.model.body import Body, Evenly, Fill, Group, Step, Stitches
from loopwright.model.stitch import Stitch

_SINGLE = {"k", "p", "sl"}  # printed with their count: k2
# Of these nobody asks how many stitches they take and make.
_PLAIN_KINDS = {"marker", "slip", "bind", "cast", "drop"}
_MODIFIERS = {
    "wyif": "with yarn in front",
    "wyib": "with yarn in back",
    "kwise": "knitwise",
    "pwise": "purlwise",
    "tbl": "through the back loop",
}


@dataclass(slots=True)
class Used:
    """The abbreviations that were printed: what they mean, and what the stitch takes and makes."""

    found: dict[str, tuple[str, str]] = field(default_factory=dict)

    def term(self, *names: str) -> None:
        """General words of the trade: st, sts, rep, RS …"""
        for name in names:
            self.found.setdefault(name, (terms()[name], ""))

    def stitch(self, stitch: Stitch) -> None:
        plain = stitch.word in ("k", "p") or stitch.kind in _PLAIN_KINDS
        note = "" if plain else f"takes {stitch.takes}, makes {stitch.makes}"
        self.found.setdefault(stitch.abbr, (stitch.meaning, note))

    def modifier(self, word: str) -> None:
        self.found.setdefault(word, (_MODIFIERS[word], ""))


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
    """Words the bodies of a pattern for some sizes; notes what it used."""

    def __init__(self, sizes: Sequence[int], used: Used) -> None:
        self.sizes = sizes
        self.used = used

    def body(self, body: Body, fills: FillTimes) -> str:
        """A body as printed: ``k2, *sl1 wyif, k1; rep from * to last 2 sts, k2``."""
        if body.whole is not None:
            return "knit" if body.whole == "k" else "purl"
        self._index = 0
        self._fills = fills
        return ", ".join(self._steps(self._unrolled(body.steps)))

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
                text = self._fill(step, steps[at + 1 :])
                if text:
                    parts.append(text)
            else:
                parts.append(self._step(step, 0))
        return parts

    def _step(self, step: Step, depth: int) -> str:
        if isinstance(step, Stitches):
            return self._stitches(step)
        if isinstance(step, Evenly):
            return self._evenly(step)
        if isinstance(step, Group):
            if _has_fill(step.steps):
                index = self._index
                inner = ", ".join(self._steps(step.steps))
                # Its fills were met once in the words and once a time in the count.
                self._index = index + (self._index - index) * step.number(self.sizes[0])
            else:
                inner = ", ".join(self._step(s, depth + 1) for s in step.steps)
            nested = any(isinstance(s, Group) for s in step.steps)
            left, right = ("[", "]") if nested and depth == 0 else ("(", ")")
            if step.into is not None:
                values = [step.into.at(size) for size in self.sizes]
                self.used.term("st" if set(values) == {1} else "sts")
                where = "next st" if set(values) == {1} else f"next {sized(values)} sts"
                return f"{left}{inner}{right} in {where}"
            values = [step.number(size) for size in self.sizes]
            if set(values) == {1}:
                return inner
            return f"{left}{inner}{right} {times(values)}"
        return self._fill(step, ())

    def _evenly(self, step: Evenly) -> str:
        """``k4, (k2tog, k8) 5 times, (k2tog, k7) 6 times, k2tog, k4``."""
        index = self._index
        self._index += 1
        one = self._stitches(Stitches(step.change.stitch, (1,), step.change.modifiers, step.span))
        plain = self._fills.plain(index, len(self.sizes))
        self.used.stitch(step.plain.stitch)
        abbr = step.plain.stitch.abbr
        changes = [step.change.number(size) for size in self.sizes]
        if plain is None:
            rest = "purling" if abbr == "p" else "knitting"
            return f"{one} {times(changes)}, evenly spread, {rest} the sts between"
        spread = [spread_over_stitches(n, s) for n, s in zip(changes, plain, strict=True)]
        parts = [self._plain(abbr, [s.first for s in spread])]
        for place in range(2):
            blocks = [s.blocks[place] if place < len(s.blocks) else (0, 0) for s in spread]
            often = [block[1] for block in blocks]
            if any(often):
                gap = self._plain(abbr, [block[0] for block in blocks])
                inner = f"{one}, {gap}" if gap else one
                single = set(often) == {1}
                parts.append(inner if single else f"({inner}) {times(often)}")
        parts += [one if any(changes) else "", self._plain(abbr, [s.last for s in spread])]
        return ", ".join(part for part in parts if part)

    def _plain(self, abbr: str, counts: list[int]) -> str:
        return f"{abbr}{sized(counts)}" if any(counts) else ""

    def _stitches(self, step: Stitches) -> str:
        stitch = step.stitch
        self.used.stitch(stitch)
        for modifier in step.modifiers:
            self.used.modifier(modifier)
        values = [step.number(size) for size in self.sizes]
        tail = "".join(f" {modifier}" for modifier in step.modifiers)
        if stitch.word in _SINGLE:
            return f"{stitch.abbr}{sized(values)}{tail}"
        if stitch.kind in ("bind", "cast", "drop"):
            self.used.term("st" if set(values) == {1} else "sts")
            return f"{stitch.abbr} {sized(values)} {'st' if set(values) == {1} else 'sts'}{tail}"
        if set(values) == {1}:
            return f"{stitch.abbr}{tail}"
        return f"{stitch.abbr}{tail} {times(values)}"

    def _fill(self, step: Fill, after: tuple[Step, ...]) -> str:
        index = self._index
        self._index += 1
        once = self._fills.fixed(index)
        if once == 0:
            return ""
        units = [self._step(s, 1) for s in step.steps]
        if once == 1:
            return ", ".join(units)
        end = self._end(after)
        only = step.steps[0]
        plain = (
            len(step.steps) == 1
            and isinstance(only, Stitches)
            and only.stitch.word in ("k", "p")
            and not only.modifiers
            and all(only.number(size) == 1 for size in self.sizes)
        )
        if plain and isinstance(only, Stitches):
            return f"{only.stitch.abbr} to {end}"
        self.used.term("rep")
        return f"*{', '.join(units)}; rep from * to {end}"

    def _end(self, after: tuple[Step, ...]) -> str:
        """Where a fill stops: ``end``, ``last 2 sts``, ``marker``, ``2 sts before marker``."""
        rest: list[Step] = []
        marker = False
        for step in after:
            if isinstance(step, Stitches) and step.stitch.word in ("sm", "rm"):
                marker = True
                break
            rest.append(step)
        left = [sum(_takes(step, size) for step in rest) for size in self.sizes]
        word = "st" if set(left) == {1} else "sts"
        if set(left) == {0}:
            return "marker" if marker else "end"
        self.used.term(word)
        if marker:
            return f"{sized(left)} {word} before marker"
        return f"last {'st' if word == 'st' else f'{sized(left)} sts'}"


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
    if isinstance(step, Group) and step.into is not None:
        return step.into.at(size)
    inner = sum(_takes(s, size) for s in step.steps)
    return inner * (step.number(size) if isinstance(step, Group) else 1)
