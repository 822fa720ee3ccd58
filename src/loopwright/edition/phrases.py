"""The stitches of a row in the trade's wording."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from loopwright.count.affine import Affine
from loopwright.edition.numbers import sized, times
from loopwright.facts.words import terms
from loopwright.model.body import Body, Fill, Group, Step, Stitches
from loopwright.model.stitch import Stitch
from loopwright.notation.tree import Special

_SINGLE = {"k", "p", "sl"}  # printed with their count: k2
# Of these nobody asks how many stitches they take and make.
_PLAIN_KINDS = {"marker", "turn", "slip", "bind", "cast", "drop"}
_ENDS = ("last", "gap")  # they say where the fill before them stops
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
            if isinstance(step, Group) and _has_fill(step.steps) and not _closed(step.steps):
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
            elif not isinstance(step, Special) or step.kind not in _ENDS:
                parts.append(self._step(step, 0))
        return parts

    def _step(self, step: Step, depth: int) -> str:
        if isinstance(step, Stitches):
            return self._stitches(step)
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
        if isinstance(step, Special):
            return self._special(step)
        return self._fill(step, ())

    def _special(self, step: Special) -> str:
        name = step.name.text if step.name is not None else ""
        if step.kind == "take":
            self.used.term("sts")
            return f"slip the held {name} sts back to the left needle"
        values = [step.count.at(size) if step.count is not None else 0 for size in self.sizes]
        word = "st" if set(values) == {1} else "sts"
        self.used.term(word)
        if step.kind == "hold":
            return f"place next {sized(values)} {word} on a holder for {name}"
        return f"pick up and knit {sized(values)} {word}{along(name)}"

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
        marker = gap = False
        left = [0] * len(self.sizes)
        for step in after:
            if isinstance(step, Special) and step.kind in _ENDS:
                gap = step.kind == "gap"
                if step.count is not None:
                    left = [step.count.at(size) for size in self.sizes]
                break
            if isinstance(step, Stitches) and step.stitch.word in ("sm", "rm"):
                marker = True
                break
            rest.append(step)
        for at, size in enumerate(self.sizes):
            left[at] += sum(_takes(step, size) for step in rest)
        word = "st" if set(left) == {1} else "sts"
        place = "marker" if marker else "gap" if gap else ""
        if set(left) == {0}:
            return place or "end"
        self.used.term(word)
        if place:
            return f"{sized(left)} {word} before {place}"
        return f"last {'st' if word == 'st' else f'{sized(left)} sts'}"


def along(edge: str) -> str:
    """`` along the left edge``; nothing where no edge is named."""
    return f" along the {edge} edge" if edge else ""


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
