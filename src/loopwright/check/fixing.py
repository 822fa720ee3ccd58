"""The certain fixes of a source, applied by span and kept only where they make it better."""

from __future__ import annotations

import re
from bisect import bisect_left
from collections.abc import Callable, Iterable, Iterator

from loopwright.check.checked import Checked
from loopwright.notation.rewrite import apply_edits
from loopwright.notation.source import Source
from loopwright.problem import Edit, Fix, Problem
from loopwright.record import dataclass

Check = Callable[[Source], Checked]

MAX_TRIED = 40
"""Fixes tried one by one where all of them together do not help."""
MAX_ROUNDS = 12
"""Times that a mended source is read again for what an unread line had hidden."""
_AROUND = 3
"""Lines that a diff shows on each side of a change."""


@dataclass(frozen=True, slots=True)
class Change:
    """A fix that was applied: which rule asked for it, and where (`line` counts from 1)."""

    rule: str
    title: str
    line: int


@dataclass(frozen=True, slots=True)
class Fixed:
    """A text after its fixes and what was changed; `before` and `checked` are the text before
    and after them, after every rule."""

    text: str
    changes: tuple[Change, ...]
    before: Checked
    checked: Checked


@dataclass(frozen=True, slots=True)
class _Step:
    """A text on its way, with what has been changed so far."""

    text: str
    checked: Checked
    changes: tuple[Change, ...]


def fix_text(name: str, text: str, check: Check) -> Fixed:
    """Apply every certain fix of a text, until none is left or none helps.

    `text` is the file's own text, with its line ends and byte-order mark, and all of it but the
    fixed spans is kept. Every step kept leaves strictly fewer problems than the one before, so
    it comes to an end. Where a line cannot be read, what it hid counts too: the fixes go on
    behind it, and are kept only if fewer problems are left in the end.
    """
    before = check(Source.of(name, text))
    step = _Step(text, before, ())
    while True:
        better = _better(step, name, check)
        if better is None:
            return Fixed(step.text, step.changes, before, step.checked)
        step = better


def _better(step: _Step, name: str, check: Check) -> _Step | None:
    """The step after this one with strictly fewer problems, or None."""
    found = list(_apart(step.checked.problems))
    if not found:
        return None
    together = _applied(step, found, name, check)
    if _fewer(together, step):
        return together
    if step.checked.recovered:
        beyond: _Step | None = together
        for _ in range(MAX_ROUNDS):
            more = list(_apart(beyond.checked.problems)) if beyond is not None else []
            if beyond is None or not more:
                break
            beyond = _applied(beyond, more, name, check)
            if _fewer(beyond, step):
                return beyond
    if len(found) > 1:
        for pair in found[:MAX_TRIED]:
            alone = _applied(step, [pair], name, check)
            if _fewer(alone, step):
                return alone
    return None


def _fewer(after: _Step, before: _Step) -> bool:
    return len(after.checked.problems) < len(before.checked.problems)


def _apart(problems: Iterable[Problem]) -> Iterator[tuple[Problem, Fix]]:
    """The problems that have a fix, without those that overlap one further up in the file."""
    taken: list[Edit] = []
    for problem in problems:
        fix = problem.fix
        if fix is None or not fix.edits:
            continue
        if not any(_overlap(edit, other) for edit in fix.edits for other in taken):
            taken += fix.edits
            yield problem, fix


def _overlap(one: Edit, other: Edit) -> bool:
    # Two insertions at one place, or edits that touch, could be read in two orders.
    return one.span.start <= other.span.end and other.span.start <= one.span.end


def _applied(step: _Step, found: list[tuple[Problem, Fix]], name: str, check: Check) -> _Step:
    source = step.checked.source
    edits = [edit for _, fix in found for edit in fix.edits]
    text = apply_to_raw(step.text, edits)
    changes = tuple(
        Change(problem.rule, fix.title, source.line_column(fix.edits[0].span.start)[0])
        for problem, fix in found
    )
    return _Step(text, check(Source.of(name, text)), step.changes + changes)


def apply_to_raw(text: str, edits: Iterable[Edit]) -> str:
    """Apply edits to a file's own text. Their spans count in the text as `Source` holds it.

    There a byte-order mark is gone and every line end is one character; here they stay as they
    are. Raises ValueError where two edits overlap.
    """
    lead = len(text) - len(text.removeprefix("\ufeff"))
    # The place, in the source's text, of each line end that is two characters here.
    wide = [match.start() - lead - n for n, match in enumerate(re.finditer("\r\n", text))]

    def own(offset: int) -> int:
        return offset + lead + bisect_left(wide, offset)

    moved = [
        Edit(type(e.span)(own(e.span.start), own(e.span.end)), e.text) for e in dict.fromkeys(edits)
    ]
    return apply_edits(text, moved)


def diff_of(name: str, before: str, after: str) -> str:
    """A unified diff of two texts of as many lines each (a fix never makes or takes a line).

    Line by line, so that it costs no more than the length of the texts.
    """
    old, new = Source.of(name, before).text.split("\n"), Source.of(name, after).text.split("\n")
    count = max(len(old), len(new))
    old += [""] * (count - len(old))
    new += [""] * (count - len(new))
    if old[-1] == new[-1] == "":
        # Behind the last line end there is no line.
        old.pop()
        new.pop()
        count -= 1
    changed = [at for at in range(count) if old[at] != new[at]]
    if not changed:
        return ""
    out = [f"--- {name}", f"+++ {name}"]
    group = [changed[0]]
    for at in [*changed[1:], None]:
        if at is not None and at - group[-1] <= 2 * _AROUND:
            group.append(at)
            continue
        out += _hunk(old, new, max(group[0] - _AROUND, 0), min(group[-1] + _AROUND + 1, count))
        group = [at] if at is not None else []
    return "\n".join(out) + "\n"


def _hunk(old: list[str], new: list[str], start: int, end: int) -> list[str]:
    size = f"{start + 1},{end - start}"
    out = [f"@@ -{size} +{size} @@"]
    gone: list[str] = []
    come: list[str] = []
    for at in range(start, end):
        if old[at] == new[at]:
            out += [*gone, *come, f" {old[at]}"]
            gone, come = [], []
        else:
            gone.append(f"-{old[at]}")
            come.append(f"+{new[at]}")
    return [*out, *gone, *come]
