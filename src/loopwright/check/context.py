"""What every rule looks at: the pattern, its walks and its proofs."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from loopwright.check.yarn_news import NO_NEWS, YarnNews
from loopwright.count.affine import CountSet
from loopwright.count.columns import slipping_bodies
from loopwright.count.proof import Proof
from loopwright.count.strands import Pickup, pickups
from loopwright.count.tape import Tapes
from loopwright.count.walk import Finding, Walk
from loopwright.model.pattern import Motif, Pattern, Piece
from loopwright.notation.source import Span
from loopwright.notation.tree import form_text
from loopwright.problem import ERROR, Fix, Label, Problem
from loopwright.record import dataclass, field


@dataclass(frozen=True, slots=True, eq=False)
class Context:
    """`walks` holds one walk a piece and size, `proofs` one proof a motif and size; `yarn` is
    what the yarn room found (empty where a line could not be read)."""

    pattern: Pattern
    walks: tuple[Walk, ...]
    proofs: tuple[Proof, ...]
    tapes: Tapes
    yarn: YarnNews = NO_NEWS
    _pickups: dict[int, tuple[Pickup, ...]] = field(default_factory=dict)
    _slipping: list[set[int]] = field(default_factory=list)

    @property
    def sizes(self) -> tuple[str, ...]:
        return self.pattern.sizes

    def proof_of(self, motif: Motif, size: int) -> Proof | None:
        return next((p for p in self.proofs if p.motif is motif and p.size == size), None)

    @property
    def slipping(self) -> set[int]:
        """The ids of the bodies that slip a stitch, found once for all rules."""
        if not self._slipping:
            self._slipping.append(slipping_bodies(self.pattern))
        return self._slipping[0]

    def pickups_of(self, walk: Walk) -> tuple[Pickup, ...]:
        """Where each strand is taken up in a walk, found once for all rules."""
        found = self._pickups.get(id(walk))
        if found is None:
            found = self._pickups[id(walk)] = tuple(pickups(self.pattern, walk))
        return found

    def walks_of(self, piece: Piece) -> tuple[Walk, ...]:
        return tuple(walk for walk in self.walks if walk.piece is piece)

    def findings(self, *rules: str) -> Iterator[list[Finding]]:
        """The findings of rules, those of one place (all its sizes) together, in file order.

        Rows of a motif whose form is broken are left out: the form's problem says it all.
        """
        places: dict[tuple[Span, str, str], list[Finding]] = {}
        for walk in self.walks:
            for finding in walk.findings:
                if finding.rule not in rules or self._said_by_form(finding):
                    continue
                key = (finding.span, finding.rule, finding.detail)
                group = places.setdefault(key, [])
                if all(other.size != finding.size for other in group):
                    group.append(finding)
        for key in sorted(places, key=lambda k: (k[0], k[1], k[2])):
            yield places[key]

    def _said_by_form(self, finding: Finding) -> bool:
        if finding.motif is None or finding.snag is None:
            return False
        proof = self.proof_of(finding.motif, finding.size)
        return proof is not None and proof.verdict == "form"

    def size_names(self, sizes: Iterable[int]) -> tuple[str, ...]:
        """The names of some sizes; empty where they are all of them."""
        chosen = sorted(set(sizes))
        if len(chosen) == len(self.sizes):
            return ()
        return tuple(self.sizes[size] for size in chosen)

    def problem(
        self,
        group: list[Finding],
        title: str,
        message: str,
        *,
        help: str = "",
        labels: tuple[Label, ...] = (),
        severity: str = ERROR,
        rule: str | None = None,
        span: Span | None = None,
        fix: Fix | None = None,
    ) -> Problem:
        """A problem for one place; its sizes are those of the findings."""
        first = group[0]
        said = in_size(self, first.size)
        if said and {finding.size for finding in group} == set(range(len(self.sizes))):
            # The numbers are those of the first size; that the others fail too must be said.
            message = message.replace(said, f"{said} (the others likewise)", 1)
        return Problem(
            rule or first.rule,
            severity,
            title,
            message,
            span or first.span,
            labels,
            help,
            self.size_names(f.size for f in group),
            fix,
        )


def count_of(number: int, noun: str) -> str:
    """``1 stitch``, ``1,240 stitches``."""
    many = "stitches" if noun == "stitch" else f"{noun}s"
    return f"{number:,} {noun if number == 1 else many}"


def listed(words: Iterable[str], last: str = "and") -> str:
    """``a``, ``a and b``, ``a, b and c``."""
    items = list(words)
    if len(items) < 2:
        return "".join(items)
    return f"{', '.join(items[:-1])} {last} {items[-1]}"


def in_size(context: Context, size: int) -> str:
    """`` in the lap size`` where the file has several sizes."""
    names = context.sizes
    return f" in size {names[size]}" if len(names) > 1 else ""


def set_text(counts: CountSet) -> str | None:
    """A set of counts as a form, such as ``4n + 2``; None where it has none to show."""
    low = counts.above(counts.low)
    if low is None:
        return None
    if counts.modulus == 0:
        return str(low)
    return form_text(counts.modulus, low - counts.modulus)
