"""The whole pipeline on one page: every stage gives its value and the problems it met."""

from __future__ import annotations

from loopwright.check.checked import Checked
from loopwright.check.context import Context
from loopwright.check.registry import run_rules
from loopwright.count.proof import prove
from loopwright.count.repeat import Repeater
from loopwright.count.tape import Tapes
from loopwright.count.walker import walk_size
from loopwright.model.build import build
from loopwright.notation.parse import parse
from loopwright.notation.source import Source
from loopwright.problem import Problem
from loopwright.yarn.news import yarn_news
from loopwright.yarn.supply import Supply

_SURE_ANYWAY = ("unknown-word", "row-twice")


def check_source(source: Source) -> Checked:
    """Read, count and check a source, for every size. Pure; never raises for what it holds."""
    parsed = parse(source)
    built = build(parsed)
    pattern = built.pattern
    tapes, repeater = Tapes(), Repeater()
    sizes = range(len(pattern.sizes))
    supply = Supply(pattern)
    by_size = [walk_size(pattern, size, tapes, repeater, supply) for size in sizes]
    walks = tuple(by_size[size][at] for at in range(len(pattern.pieces)) for size in sizes)
    proofs = tuple(
        prove(motif, size, tapes, repeater) for motif in pattern.motifs for size in sizes
    )
    problems = [*parsed.problems, *built.problems]
    if parsed.recovered:
        # A line that could not be read may hold what the other rules would miss.
        problems += [
            p for p in run_rules(Context(pattern, (), (), tapes)) if p.rule in _SURE_ANYWAY
        ]
        walks, proofs = (), ()
    else:
        yarn = yarn_news(pattern, walks, tapes, repeater)
        problems += run_rules(Context(pattern, walks, proofs, tapes, yarn))
    return Checked(source, pattern, walks, proofs, in_order(problems), parsed.recovered, tapes)


def in_order(problems: list[Problem]) -> tuple[Problem, ...]:
    """Problems by their place in the file; each said once."""
    seen: set[tuple[object, ...]] = set()
    out: list[Problem] = []
    for problem in sorted(problems, key=lambda p: (p.span.start, p.span.end, p.rule)):
        mark = (problem.rule, problem.span, problem.title)
        if mark not in seen:
            seen.add(mark)
            out.append(problem)
    return tuple(out)
