"""never-used: something declared that nothing uses."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context
from loopwright.check.rule import Rule
from loopwright.model.body import words_of
from loopwright.model.pattern import PieceRow
from loopwright.notation.near import nearest
from loopwright.notation.source import Span
from loopwright.problem import WARNING, Problem


def check(context: Context) -> Iterator[Problem]:
    pattern = context.pattern
    used: dict[str, set[str]] = {"motif": set(), "strand": set(), "shade": set(), "yarn": set()}
    for reference in pattern.references:
        used[reference.kind].add(reference.name.key)
    words: set[str] = set()
    bodies = [row.body for motif in pattern.motifs for row in motif.rows]
    bodies += [i.row.body for p in pattern.pieces for i in p.items if isinstance(i, PieceRow)]
    for body in bodies:
        words.update(s.stitch.word for s in words_of(body.steps))
    strands_named = used["strand"] or len(pattern.strands) > 1
    declared: list[tuple[str, str, str, Span]] = []
    declared += [("motif", m.name.key, m.name.text, m.span) for m in pattern.motifs]
    if strands_named:  # one strand alone need not be named in the rows
        declared += [("strand", s.name.key, s.name.text, s.span) for s in pattern.strands]
    declared += [("shade", s.name.key, s.name.text, s.span) for s in pattern.shades]
    declared += [("yarn", y.name.key, y.name.text, y.span) for y in pattern.yarns]
    names = {kind: {key for k, key, _, _ in declared if k == kind} for kind in used}
    for kind, key, text, span in declared:
        # A name typed wrong where it is used is said by unknown-name alone.
        meant = {nearest(name, names[kind]) for name in used[kind] - names[kind]}
        if key not in used[kind] and key not in meant:
            yield _problem(kind, text, span)
    for stitch in pattern.stitches:
        if stitch.word not in words and stitch.span is not None:
            yield _problem("stitch", stitch.abbr, stitch.span)


def _problem(kind: str, name: str, span: Span) -> Problem:
    verb = {
        "motif": "No piece works it",
        "strand": "No row is worked with it",
        "shade": "No strand feeds on it",
        "yarn": "No shade is of it",
        "stitch": "No row works it",
    }[kind]
    return Problem(
        "never-used",
        WARNING,
        f"the {kind} “{name}” is never used",
        f"{verb}, so a maker would read of it for nothing.",
        span,
        help="use it or delete the line.",
    )


RULE = Rule(
    name="never-used",
    severity=WARNING,
    title="something is declared and never used",
    what="A motif, strand, shade, yarn or stitch that nothing uses is mostly the trace of an "
    "earlier version, or of a name typed wrong elsewhere.",
    wrong="""pattern "Left over"
motif rib over 2n
  row 1: * k1 p1 *
  row 2: * k1 p1 *
piece swatch flat
  cast on 20
  rows 8: knit
  bind off
""",
    right="""pattern "All used"
motif rib over 2n
  row 1: * k1 p1 *
  row 2: * k1 p1 *
piece swatch flat
  cast on 20
  work rib x4
  bind off
""",
    check=check,
)
