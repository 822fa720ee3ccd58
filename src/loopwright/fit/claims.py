"""The writer's claims (``=> 244``) where a change of counts has made them wrong."""

from __future__ import annotations

from loopwright.check.checked import Checked
from loopwright.count.walk import Worked
from loopwright.fit.slots import number_list
from loopwright.notation.source import Source, Span
from loopwright.problem import Edit
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class Claimed:
    """A claim that was written anew: its line (from 1), what it said and what it says."""

    line: int
    before: str
    after: str


def mend_claims(checked: Checked) -> tuple[list[Edit], list[Claimed]]:
    """Absolute claims that no longer hold, with the counts that do.

    The checked source is one whose counts were just changed. A claim of a change (``=> +4``)
    does not hang on the count and stays.
    """
    source, sizes = checked.source, len(checked.pattern.sizes)
    wrong = {f.span for w in checked.walks for f in w.findings if f.rule == "claim-wrong"}
    ends: dict[Span, dict[int, int]] = {}
    written: dict[Span, tuple[Span, tuple[int, ...]]] = {}
    for walk in checked.walks:
        for event in walk.events:
            if not isinstance(event, Worked):
                continue
            for entry in event.chunk.entries:
                claim = entry.row.claim
                if claim is None or claim.sign:
                    continue
                place = entry.row.at(claim.span)
                if place in wrong:
                    ends.setdefault(place, {}).setdefault(walk.size, entry.end.fixed)
                    written[place] = (entry.row.at(claim.count.span), claim.count.values)
    edits, claims = [], []
    for place in sorted(ends):
        found = ends[place]
        span, values = written[place]
        old = [values[s] if s < len(values) else values[-1] for s in range(sizes)]
        text = number_list([found.get(s, old[s]) for s in range(sizes)], len(values) > 1)
        edits.append(Edit(span, text))
        claims.append(Claimed(line_of(source, span), source.slice(span), text))
    return edits, claims


def line_of(source: Source, span: Span) -> int:
    return source.line_column(span.start)[0]
