"""A source after every rule."""

from __future__ import annotations

from loopwright.count.proof import Proof
from loopwright.count.tape import Tapes
from loopwright.count.walk import Walk
from loopwright.model.pattern import Pattern
from loopwright.notation.source import Source
from loopwright.problem import Problem
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True, eq=False)
class Checked:
    """The pattern, one walk a piece and size, one proof a motif and size, and all problems.

    `walks` and `proofs` are empty where a line could not be read (`recovered`).
    """

    source: Source
    pattern: Pattern
    walks: tuple[Walk, ...]
    proofs: tuple[Proof, ...]
    problems: tuple[Problem, ...]
    recovered: bool
    tapes: Tapes

    @property
    def has_errors(self) -> bool:
        return any(problem.is_error for problem in self.problems)
