"""size-count: a size list of the wrong length."""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import pairwise

from loopwright.check.context import Context, count_of, listed
from loopwright.check.rule import Rule
from loopwright.notation.source import Span
from loopwright.problem import ERROR, Edit, Fix, Problem


def check(context: Context) -> Iterator[Problem]:
    names = context.pattern.size_names
    for length, span in context.pattern.size_lists:
        if length == len(names):
            continue
        text = context.pattern.source.slice(span)
        if not names:
            message = f"{text} has {count_of(length, 'number')}, but the pattern names no sizes."
            help = "add a line such as “sizes small, large”, or write one number."
        else:
            message = (
                f"{text} has {count_of(length, 'number')}, and the pattern has "
                f"{count_of(len(names), 'size')}: {listed(n.text for n in names)}."
            )
            help = "write one number for each size in that order, or one number for all."
        if length == 2 and span.end - span.start <= 4:
            help += " (A slash is always a size list: half is ½ or 0.5.)"
        yield Problem(
            "size-count",
            ERROR,
            "a size list of the wrong length",
            message,
            span,
            help=help,
            fix=_fix(text, length, max(len(names), 1), span),
        )


def _fix(text: str, length: int, sizes: int, span: Span) -> Fix | None:
    """The list without what is too much, where that can be only one thing.

    Numbers that are all the same are one number for all sizes; a list that is one too long and
    grows but for one number that stands in it twice was typed with that number doubled.
    """
    match = re.fullmatch(r"([^\d]*)(\d+(?:/\d+)+)", text)
    if match is None or length <= 1:
        return None
    numbers = match[2].split("/")
    if len(set(numbers)) == 1:
        right = numbers[0]
    else:
        once = [n for at, n in enumerate(numbers) if at == 0 or n != numbers[at - 1]]
        ways = [int(b) > int(a) for a, b in pairwise(once)]
        if length != sizes + 1 or len(once) != sizes or len(set(ways)) != 1:
            return None
        right = "/".join(once)
    at = Span(span.start + len(match[1]), span.end)
    return Fix(f"write “{right}” for “{match[2]}”", (Edit(at, right),))


RULE = Rule(
    name="size-count",
    severity=ERROR,
    title="a size list of the wrong length",
    what="180/240/300 gives one value for each size, in the order of the “sizes” line. A list "
    "with more or fewer numbers than there are sizes cannot be right.",
    wrong="""pattern "Two for three"
  sizes small, middle, large
piece swatch flat
  cast on 20/24
  rows 4: knit
  bind off
""",
    right="""pattern "Three for three"
  sizes small, middle, large
piece swatch flat
  cast on 20/24/28
  rows 4: knit
  bind off
""",
    check=check,
)
