"""claim-wrong: the writer's count after a row is not the row's."""

from __future__ import annotations

import re
from collections.abc import Iterator

from loopwright.check.claims import row_is_sure
from loopwright.check.context import Context, count_of, in_size
from loopwright.check.neighbours import whose
from loopwright.check.rule import Rule
from loopwright.count.repeat import Entry
from loopwright.count.walk import Finding, Walk
from loopwright.model.pattern import Row
from loopwright.notation.source import Span
from loopwright.problem import ERROR, Edit, Fix, Problem


def check(context: Context) -> Iterator[Problem]:
    for group in context.findings("claim-wrong"):
        first = group[0]
        start, end, said = first.numbers
        where = in_size(context, first.size)
        if first.detail == "=":
            message = (
                f"{whose(first)} starts with {count_of(start, 'stitch')}{where} and leaves "
                f"{end:,}; the claim says {said:,}."
            )
            help = (
                f"write => {end:,}, if the row is right."
                if not first.repeat
                else "the count changes from repeat to repeat: claim the change, as in => +2."
            )
        else:
            change = end - start
            message = (
                f"{whose(first)} goes from {start:,} to {count_of(end, 'stitch')}{where}, "
                f"a change of {change:+,}; the claim says {first.detail}{said:,}."
            )
            help = f"write => {change:+,}, if the row is right."
        title = "the claimed count is not the row's"
        yield context.problem(group, title, message, help=help, fix=_fix(context, first))


def _fix(context: Context, finding: Finding) -> Fix | None:
    """The row's own count written as the claim, where the row is sure to be right.

    It is where all else counts out with it, in every size, where the row leaves the same count
    (or makes the same change) each time it is worked, and where `row_is_sure`.
    """
    row = finding.row
    if row is None or row.claim is None:
        return None
    walks = context.walks
    pieces = _where(walks, row)
    if any(f.rule != "claim-wrong" for w in walks for f in w.findings if id(f.piece) in pieces):
        return None
    if not row_is_sure(context, row, walks):
        return None
    sign = row.claim.sign
    values: list[int] = []
    for size in range(len(context.sizes)):
        found = {
            value
            for walk in walks
            if walk.size == size
            for event in walk.events
            if (chunk := getattr(event, "chunk", None)) is not None
            for entry in chunk.entries
            if entry.row is row
            for value in _left(entry, chunk.reps, bool(sign))
        }
        if len(found) != 1:
            return None
        values += found
    claim = row.claim
    if sign:
        if min(values) < 0 < max(values) or 0 in values:
            return None
        text = "-" if values[0] < 0 else "+"
        values = [abs(value) for value in values]
    else:
        text = ""
    text += str(values[0]) if len(set(values)) == 1 else "/".join(map(str, values))
    source = context.pattern.source
    place = row.at(claim.span)
    said = source.slice(place)
    number = re.search(r"(?:[+\-−]\s*)?[\d/]+$", said)
    if number is None:
        return None
    at = Span(place.start + number.start(), place.end)
    return Fix(f"write “=> {text}” for “{' '.join(said.split())}”", (Edit(at, text),))


def _where(walks: tuple[Walk, ...], row: Row) -> set[int]:
    return {
        id(walk.piece)
        for walk in walks
        for event in walk.events
        for entry in getattr(getattr(event, "chunk", None), "entries", ())
        if entry.row is row
    }


def _left(entry: Entry, times: int, change: bool) -> set[int]:
    """What a row leaves (or changes) in the first and the last of its times; even in between."""
    if times < 1:
        return set()
    ends = {0, times - 1}
    return {entry.end.at(n) - (entry.start.at(n) if change else 0) for n in ends}


RULE = Rule(
    name="claim-wrong",
    severity=ERROR,
    title="the claimed count is not the row's",
    what="Behind => stands the count that the writer expects after the row, or its change. The "
    "row as written leaves another count, so one of the two is wrong.",
    wrong="""pattern "Wrong claim"
piece swatch flat
  cast on 12
  row: k1 yo * k1 * yo k1 => 13
  bind off
""",
    right="""pattern "Right claim"
piece swatch flat
  cast on 12
  row: k1 yo * k1 * yo k1 => 14
  bind off
""",
    check=check,
)
