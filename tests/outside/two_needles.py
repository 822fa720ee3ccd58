"""The knitter of `bruteforce` with two needles and holders.

It knows the pieces part of the notation from its description alone: stitches lie on a left and a
right needle, a turn swaps the needles, and a gap is a thing between two stitches. Nothing is
reckoned: every row is worked loop by loop, and what cannot be done with the hands is refused.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field

from bruteforce import (
    STITCH,
    CannotWork,
    Fill,
    Loop,
    Marker,
    Own,
    RowText,
    Word,
    _number,
    read_body,
)


@dataclass(frozen=True, slots=True)
class Gap:
    """What a turn leaves between two stitches; `row` is the row that turned."""

    row: int


Thing = Loop | Marker | Gap


@dataclass(frozen=True, slots=True)
class Special:
    """``hold``, ``take``, ``pick``, ``last``, ``gap`` or ``turn`` inside a row."""

    kind: str
    count: int = 0
    name: str = ""


Step = Word | Fill | Special

_SPECIAL = re.compile(
    r"hold\s+(?P<hold>[\d/]+)(?:\s+st\w*)?\s+as\s+(?P<as>[\w-]+)"
    r"|take\s+(?P<take>[\w-]+)"
    r"|pick\s+up\s+(?P<pick>[\d/]+)(?:\s+st\w*)?(?:\s+along\s+[\w-]+\s+edge)?"
    r"|to\s+last\s+(?P<last>[\d/]+)(?:\s+st\w*)?"
    r"|to\s+(?P<before>[\d/]+)(?:\s+st\w*)?\s+before\s+gap"
    r"|to\s+(?P<gap>gap)"
    r"|(?P<turn>w&t|turn)\b"
)


def read_row(body: str, own: Own, size: int) -> list[Step]:
    """A row's steps, with the words of the pieces language among the stitches."""
    steps: list[Step] = []
    at = 0
    text = body.strip().lower()
    for match in _SPECIAL.finditer(text):
        plain = text[at : match.start()].strip(" ,")
        steps += read_body(plain, own, size) if plain else []
        at = match.end()
        if match["hold"]:
            steps.append(Special("hold", _number(match["hold"], size), match["as"]))
        elif match["take"]:
            steps.append(Special("take", 0, match["take"]))
        elif match["pick"]:
            steps.append(Special("pick", _number(match["pick"], size)))
        elif match["last"]:
            steps.append(Special("last", _number(match["last"], size)))
        elif match["before"]:
            steps.append(Special("gap", _number(match["before"], size)))
        else:
            steps.append(Special("gap" if match["gap"] else "turn"))
    plain = text[at:].strip(" ,")
    return steps + (read_body(plain, own, size) if plain else [])


@dataclass(slots=True)
class Holders:
    """Stitches off the needles, by name; `live` are finished pieces that nothing has to take."""

    held: dict[str, list[Thing]] = field(default_factory=dict)
    live: dict[str, list[Thing]] = field(default_factory=dict)

    def put(self, name: str, stitches: list[Thing], live: bool = False) -> None:
        if name in self.held or name in self.live:
            raise CannotWork(f"{name} holds stitches already")
        (self.live if live else self.held)[name] = stitches

    def take(self, name: str) -> list[Thing]:
        for place in (self.held, self.live):
            if name in place:
                return place.pop(name)
        raise CannotWork(f"nothing waits as {name}")


@dataclass(slots=True)
class Hands:
    """Two needles as stacks: the last of `left` is met next, the last of `right` came last."""

    own: Own
    holders: Holders
    in_round: bool
    rs: bool
    size: int
    left: list[Thing] = field(default_factory=list)
    right: list[Thing] = field(default_factory=list)
    on_needle: bool = False
    passed: bool = False  # this row has passed a marker without a word
    uneven: bool = False  # a step of it makes not as many as it takes
    counts: list[int] = field(default_factory=list)
    right_sides: list[bool] = field(default_factory=list)

    @property
    def needle(self) -> list[Thing]:
        """All that hangs, so that loops can be counted."""
        return self.left + self.right

    @property
    def live(self) -> int:
        return _loops(self.left) + _loops(self.right)

    # --- rows -------------------------------------------------------------------------------

    def work(self, row: RowText) -> None:
        """One row. Raises `CannotWork`, also where the claim is wrong."""
        if not self.on_needle:
            raise CannotWork("no stitch on the needle")
        steps = read_row(row.body, self.own, self.size)
        before = self.live
        number = len(self.counts) + 1
        turning = any(isinstance(s, Special) and s.kind == "turn" for s in steps)
        if self.in_round and not self.rs and not turning:
            raise CannotWork("the round runs backwards")
        speaks = any(isinstance(s, Word) and s.is_marker for s in steps)
        self.passed = self.uneven = False
        turned = self._steps(steps, speaks, number)
        if not turned:
            if not speaks:
                self._slip_markers()
            if _loops(self.left) or any(isinstance(x, Marker) for x in self.left):
                raise CannotWork(f"{len(self.left)} left on the needle")
            self.left = []
        self.right_sides.append(self.rs)
        self._turn(number, turned)
        self.counts.append(self.live)
        _check_claim(row.claim, before, self.live, self.size)

    def _turn(self, number: int, turned: bool) -> None:
        if self.in_round and not turned:
            self.left, self.right = self.right[::-1], []
            return
        if _loops(self.left):
            self.left.append(Gap(number))
        self.left, self.right = self.right, self.left
        self.rs = not self.rs

    def _steps(self, steps: list[Step], speaks: bool, number: int) -> bool:
        for at, step in enumerate(steps):
            rest = steps[at + 1 :]
            if isinstance(step, Word):
                self._word(step, speaks)
            elif isinstance(step, Fill):
                self._fill(step, rest, speaks, number)
            elif step.kind == "turn":
                if rest:
                    raise CannotWork("steps behind a turn")
                return True
            elif step.kind in ("last", "gap"):
                fills = [i for i, s in enumerate(steps[:at]) if isinstance(s, Fill)]
                if not fills or any(_parts(s) for s in steps[fills[-1] : at]):
                    raise CannotWork("no fill that could end there")
            elif step.kind == "hold":
                self._is_uneven(True)
                self.holders.put(step.name, [self._next(speaks) for _ in range(step.count)])
            elif step.kind == "take":
                self._is_uneven(True)
                self.left += self.holders.take(step.name)
            else:
                self._is_uneven(True)
                self.right += [STITCH] * step.count
        return False

    def _slip_markers(self) -> None:
        while self.left and not isinstance(self.left[-1], Loop):
            thing = self.left.pop()
            if isinstance(thing, Marker):
                self.right.append(thing)
                self.passed = True
        self._is_uneven(False)

    def _is_uneven(self, uneven: bool) -> None:
        """A row that names no marker may pass them only where no step shifts stitches."""
        self.uneven = self.uneven or uneven
        if self.uneven and self.passed:
            raise CannotWork("stitches move past a marker unsaid")

    def _pass_gaps(self) -> None:
        while self.left and isinstance(self.left[-1], Gap):
            self.left.pop()

    def _next(self, speaks: bool) -> Thing:
        """Take the next loop off the left needle."""
        self._pass_gaps()
        if not self.left:
            raise CannotWork("no stitch left")
        if isinstance(self.left[-1], Marker):
            if speaks:
                raise CannotWork("a marker in the way")
            raise CannotWork("stitches move past a marker unsaid")
        return self.left.pop()

    def _word(self, word: Word, speaks: bool) -> None:
        if word.text == "pm":
            self.right.append(Marker())
            return
        if word.is_marker:
            self._pass_gaps()
            if not self.left or not isinstance(self.left[-1], Marker):
                raise CannotWork(f"no marker to {word.text}")
            ring = self.left.pop()
            if word.text == "sm":
                self.right.append(ring)
            return
        if not speaks and word.takes == word.makes:
            for _ in range(word.takes):
                self._slip_markers()
                self.right.append(self._next(speaks))
            return
        self._is_uneven(word.takes != word.makes)
        for _ in range(word.takes):
            self._next(speaks)
        self.right += [STITCH] * word.makes

    def _fill(self, fill: Fill, rest: list[Step], speaks: bool, number: int) -> None:
        if not any(word.takes for word in fill.words):
            raise CannotWork("a fill that takes no stitch never ends")
        needed, stop = self._needed(rest)
        ahead = self._ahead(speaks and stop is None)
        if stop is not None and stop.kind == "last":
            ahead -= stop.count
        elif stop is not None:
            to_gap = self._loops_to_gap(number - 2)
            if to_gap is None:
                raise CannotWork("no gap ahead")
            ahead = to_gap - stop.count
        while ahead > needed:
            for word in fill.words:
                self._word(word, speaks)
                ahead -= word.takes
        if ahead < needed:
            raise CannotWork("the fill does not come out even")

    def _needed(self, rest: list[Step]) -> tuple[int, Special | None]:
        """Loops that the steps up to the fill's end want, and the words that end it."""
        needed = 0
        for step in rest:
            if isinstance(step, Fill):
                raise CannotWork("two fills with nothing between them")
            if isinstance(step, Word):
                if step.text in ("sm", "rm"):
                    break
                needed += step.takes
            elif step.kind == "hold":
                needed += step.count
            elif step.kind == "take":
                needed -= _loops(self.holders.held.get(step.name, []))
                needed -= _loops(self.holders.live.get(step.name, []))
            elif step.kind in ("last", "gap"):
                return needed, step
            elif step.kind == "turn":
                raise CannotWork("a fill before a turn says not where it stops")
        return needed, None

    def _ahead(self, to_marker: bool) -> int:
        count = 0
        for thing in reversed(self.left):
            if to_marker and isinstance(thing, Marker):
                break
            count += isinstance(thing, Loop)
        return count

    def _loops_to_gap(self, row: int) -> int | None:
        count = 0
        for thing in reversed(self.left):
            if isinstance(thing, Gap) and thing.row == row:
                return count
            count += isinstance(thing, Loop)
        return None

    # --- between rows -----------------------------------------------------------------------

    def bring(self, stitches: list[Thing], behind: bool) -> None:
        """Stitches that come onto the needle: at the end of the row just worked, or behind all."""
        if self.on_needle and _loops(self.right) and behind:
            self.right[:0] = stitches
        elif self.on_needle and (behind or self.in_round):
            self.left[:0] = stitches
        else:
            self.left += stitches
        self.on_needle = True

    def whole(self) -> None:
        if _loops(self.right):
            raise CannotWork("stitches lie behind a turn")

    def hold(self, name: str, count: int | None) -> None:
        if count is None:
            self.holders.put(name, [x for x in self.needle if isinstance(x, Loop)])
            self.left, self.right, self.on_needle = [], [], False
            return
        if count > _loops(self.left):
            raise CannotWork(f"no {count} stitches to hold")
        held: list[Thing] = []
        while len(held) < count:
            thing = self.left.pop()
            if isinstance(thing, Loop):
                held.append(thing)
        self.holders.put(name, held)
        self.on_needle = self.live > 0

    def begin_after(self, count: int) -> None:
        self.whole()
        if not self.in_round or not self.rs or count >= self.live:
            raise CannotWork("the rounds cannot begin there")
        moved: list[Thing] = []
        while _loops(moved) < count:
            moved.append(self.left.pop())
        self.left = [x for x in moved[::-1] if not isinstance(x, Gap)] + self.left

    def change_round(self, in_round: bool) -> None:
        self.whole()
        if in_round and not self.in_round and not self.rs:
            self.left.reverse()
        self.in_round, self.rs = in_round, True


def _loops(things: list[Thing]) -> int:
    return sum(1 for x in things if isinstance(x, Loop))


def _parts(step: Step) -> bool:
    """A hanging marker or a stop: no fill reaches past it."""
    if isinstance(step, Word):
        return step.text in ("sm", "rm")
    return isinstance(step, Special) and step.kind in ("last", "gap")


def _check_claim(claim: str, before: int, after: int, size: int) -> None:
    if not claim:
        return
    sign = claim[0] if claim[0] in "+-" else ""
    said = _number(claim.lstrip("+-"), size)
    if after != {"": said, "+": before + said, "-": before - said}[sign]:
        raise CannotWork(f"{after} stitches where {claim} is claimed")
