"""unknown-name: a motif, strand, shade or yarn that the file does not declare."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, listed
from loopwright.check.rule import Rule
from loopwright.model.pattern import EDGE_KINDS, Pattern
from loopwright.notation.near import nearest
from loopwright.problem import ERROR, Edit, Fix, Problem

_EXAMPLES = {
    "motif": "motif {0} over 2n + 4",
    "strand": "strand {0} feeds SHADE x2",
    "shade": 'shade {0} "Its name" of YARN, colour #2f5d62',
    "yarn": 'yarn {0} "What it is": 100 g 200 m',
}
# What print says behind “in” where no strand is meant: bind off in pattern.
_MANNERS = ("pattern", "patt", "rib", "ribbing", "knit", "purl")


def _known(pattern: Pattern) -> dict[str, dict[str, str]]:
    return {
        "motif": {m.name.key: m.name.text for m in pattern.motifs},
        "strand": {s.name.key: s.name.text for s in pattern.strands},
        "shade": {s.name.key: s.name.text for s in pattern.shades},
        "yarn": {y.name.key: y.name.text for y in pattern.yarns},
    }


def check(context: Context) -> Iterator[Problem]:
    known = _known(context.pattern)
    said = set()
    for reference in context.pattern.references:
        name, kind = reference.name, reference.kind
        if name.key in known[kind] or name.span in said:
            continue
        said.add(name.span)
        fix = None
        others = [k for k in known if k != kind and name.key in known[k]]
        close = nearest(name.key, known[kind])
        if kind == "strand" and name.key in _MANNERS:
            help = (
                f"behind “in” stands the strand; how it is worked is a note: "
                f'note "Bind off in {name.text}."'
            )
        elif others:
            help = f"“{name.text}” is a {others[0]}; here the name of a {kind} is wanted."
        elif close is not None:
            spelled = known[kind][close]
            help = f"did you mean “{spelled}”?"
            fix = Fix(f"write “{spelled}”", (Edit(name.span, spelled),))
        else:
            have = listed([f"“{text}”" for text in known[kind].values()])
            help = f"the file has {have}; or add: " if have else "add: "
            help += _EXAMPLES[kind].format(name.text)
        yield Problem(
            "unknown-name",
            ERROR,
            f"there is no {kind} “{name.text}”",
            f"No line of this file declares a {kind} of that name.",
            name.span,
            help=help,
            fix=fix,
        )
    edges = [m.edge for m in context.pattern.motifs] + [p.edge for p in context.pattern.pieces]
    for edge in edges:
        if edge is not None and edge.kind not in EDGE_KINDS:
            yield Problem(
                "unknown-name",
                ERROR,
                f"there is no edge “{edge.kind}”",
                f"An edge is {listed(EDGE_KINDS, 'or')}.",
                edge.span,
                help="leave the line out where the edge is none of these.",
            )


RULE = Rule(
    name="unknown-name",
    severity=ERROR,
    title="an unknown name",
    what="Motifs, strands, shades and yarns are declared by a line of their own before or after "
    "they are used. This name is declared nowhere.",
    wrong="""pattern "Misnamed"
motif rib over 2n
  row 1: * k1 p1 *
  row 2: * k1 p1 *
piece swatch flat
  cast on 20
  work ribb x4
  bind off
""",
    right="""pattern "Named"
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
