"""What a changed source is, by a knitter's hands alone, and what the checker says of it.

The knitter is `tests/outside/bruteforce.py`, which shares nothing with the compiler: it works
every row stitch by stitch. A change is

- ``stuck`` where a row can no longer be worked as written, in some size: stitches are missing or
  left over, a fill does not come out, a marker is not there, a claim is not the count, a motif is
  begun on a count that is none of its form's, or a line can no longer be read. These must all be
  reported, at the line that was changed or at the line where the knitter is stuck;
- ``other`` where every row can be worked and some count is another: a right pattern in itself,
  only not the writer's. Nobody can tell without knowing what was meant;
- ``same`` where no row's count is altered (a knit for a purl, a strand, a modifier).
"""

from __future__ import annotations

import sys
from dataclasses import dataclass
from pathlib import Path

from loopwright.check.fixing import fix_text
from loopwright.compile import check_source
from loopwright.notation.source import Source

sys.path.insert(0, str(Path(__file__).parents[1] / "outside"))
sys.path.insert(0, str(Path(__file__).parent))
import bruteforce
from mutate import Mutation

STUCK, OTHER, SAME = "stuck", "other", "same"

# What the checker may say only where a row cannot be worked.
COUNTING = (
    "count-short",
    "count-over",
    "fill-uneven",
    "claim-wrong",
    "marker-missing",
    "marker-missed",
    "count-unreached",
)


@dataclass(frozen=True, slots=True)
class Knitted:
    """What the knitter made of a source: counts a size, or the line where it got stuck."""

    counts: tuple[tuple[int, ...], ...]
    stuck: bool
    line: int
    why: str


def knit(text: str, sizes: int) -> Knitted:
    """Knit a source in every size."""
    counts: list[tuple[int, ...]] = []
    for size in range(sizes):
        try:
            knitted = bruteforce.knit_file(text, size)
        except bruteforce.CannotWork as error:
            return Knitted((), True, error.line, str(error))
        except bruteforce.CannotRead as error:
            return Knitted((), True, 0, f"cannot read {error}")
        except (IndexError, ValueError, KeyError) as error:
            return Knitted((), True, 0, f"cannot read: {error!r}")
        counts.append((knitted.cast_on, *knitted.counts))
    return Knitted(tuple(counts), False, 0, "")


@dataclass(frozen=True, slots=True)
class Verdict:
    """A change judged from both sides.

    `reported` is whether the checker finds anything, `placed` whether an error of it is at the
    right line, `false_alarm` the rule that says a row does not fit which the knitter works, and
    `counts_differ` whether the checker counts a clean source otherwise than the knitter, and
    `guessed` whether a fix made a clean source of it that is not the writer's.
    """

    kind: str
    reported: bool
    placed: bool
    false_alarm: str
    counts_differ: bool
    guessed: bool
    rules: tuple[str, ...]
    lines: tuple[int, ...]
    why: str


def judge(mutation: Mutation, whole: Knitted, sizes: int) -> Verdict:
    """Knit and check a changed source."""
    knitted = knit(mutation.text, sizes)
    checked = check_source(Source.of("changed.loop", mutation.text))
    errors = [p for p in checked.problems if p.is_error]
    lines = {
        checked.source.line_column(span.start)[0]
        for problem in errors
        for span in (problem.span, *(label.span for label in problem.labels))
    }
    kind = STUCK if knitted.stuck else SAME if knitted.counts == whole.counts else OTHER
    false_alarm = ""
    differ = False
    if not knitted.stuck:
        false_alarm = next((p.rule for p in errors if p.rule in COUNTING), "")
        if not errors:
            differ = knitted.counts != tuple(
                (walk.cast_on or 0, *(row.end for row in walk.listed()))
                for size in range(sizes)
                for walk in checked.walks
                if walk.size == size
            )
    guessed = False
    if knitted.stuck and any(p.fix for p in checked.problems):
        fixed = fix_text("changed.loop", mutation.text, check_source)
        if not fixed.checked.problems:
            guessed = knit(fixed.text, sizes).counts != whole.counts
    return Verdict(
        kind,
        bool(errors) if knitted.stuck else bool(checked.problems),
        bool(lines & {mutation.line, knitted.line}),
        false_alarm,
        differ,
        guessed,
        tuple(p.rule for p in checked.problems),
        tuple(sorted(lines)),
        knitted.why,
    )
