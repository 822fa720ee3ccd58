"""What was read of a printed row: its steps, and whether they agree with what it says of them."""

from __future__ import annotations

from loopwright.notation.habits.counts import total
from loopwright.record import dataclass


class Unread(Exception):
    """The row holds something that has no certain meaning; `said` answers it, or is empty."""

    def __init__(self, habit: str = "", message: str = "") -> None:
        super().__init__(habit)
        self.habit = habit
        self.message = message


@dataclass(frozen=True, slots=True)
class Step:
    """A step as it is written. `other` is the second reading of print, with what each means.

    `takes` is by size, None for a fill; `last` is how many stitches print says are left after
    a fill; `simple` marks a plain k or p with its count.
    """

    text: str
    takes: tuple[int, ...] | None
    kind: str = "step"
    last: tuple[int, ...] | None = None
    to_marker: bool = False
    other: str = ""
    readings: tuple[str, str] = ("", "")


@dataclass(frozen=True, slots=True)
class Body:
    """A body of the notation with the claim behind it; `texts` are its readings (one or two).

    `habits` are the keys of what print writes otherwise; `certain` as in `Answer`.
    """

    texts: tuple[str, ...]
    readings: tuple[str, ...]
    habits: tuple[str, ...]
    certain: bool


def joined(steps: list[Step], second: bool = False) -> str:
    return " ".join(step.other if second and step.other else step.text for step in steps)


def taken_by(steps: list[Step]) -> tuple[int, ...] | None:
    each = [step.takes for step in steps if step.takes is not None]
    return total(each) if len(each) == len(steps) else None


def _number(count: tuple[int, ...]) -> str:
    return "/".join(map(str, count))


def hold_together(steps: list[Step]) -> None:
    """What print says is left after a fill must be what follows it. Raises Unread."""
    for place, step in enumerate(steps):
        if step.kind != "fill" or step.last is None:
            continue
        after = []
        for following in steps[place + 1 :]:
            if following.kind in ("marker", "fill"):
                break
            after.append(following)
        ends = len(after) + place + 1
        if step.to_marker and (ends >= len(steps) or steps[ends].kind != "marker"):
            raise Unread("to-marker")
        taken = taken_by(after)
        if step.last == (0,) and not step.to_marker:
            if after:
                raise Unread("to-end-inside")
            continue
        if taken is None:
            raise Unread("to-end")
        if taken != step.last and len({*step.last, *taken}) != 1:
            what = _number(step.last)
            does = _number(taken)
            raise Unread(
                "to-end",
                f"The row says that {what} {'stitch is' if what == '1' else 'stitches are'} left "
                f"after the repeat, and what follows it works {does if after else 'none'}.",
            )
