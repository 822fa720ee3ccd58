"""The yarn of a pattern, size by size: what `yarn` prints and what the rules look at."""

from __future__ import annotations

from collections.abc import Sequence
from math import ceil

from loopwright.count.walk import Walk
from loopwright.facts.loops import rule_of_thumb
from loopwright.model.pattern import Pattern, Work
from loopwright.notation.tree import UntilSpent
from loopwright.record import dataclass
from loopwright.yarn.book import ledger_of, yarn_of_strand
from loopwright.yarn.feed import Ends, Run, ends_of, runs_of, yarn_of_shade
from loopwright.yarn.joins import Eaten, allotted, eat
from loopwright.yarn.ledger import Ledger
from loopwright.yarn.loop import Loop, Loops


@dataclass(frozen=True, slots=True)
class StrandYarn:
    """One strand in one size: metres and grams (None: the ball does not say), each ± `spread`.

    `fed` is what its feeds hold in metres (None: not said). `bought` is what each feed is to
    hold: the upper end of the range and the margin.
    """

    key: str | None
    name: str | None
    metres: float
    grams: float | None
    spread: float
    loop: Loop
    runs: tuple[Run, ...]
    eaten: Eaten
    fed: float | None
    bought: tuple[float, ...]

    @property
    def upper_missing(self) -> float:
        """The metres that are missing where the figure is at the upper end of its range."""
        if self.fed is None:
            return 0.0
        return self.metres * (1 + self.spread) - self.fed


@dataclass(frozen=True, slots=True)
class ShadeYarn:
    """One shade in one size: what is eaten of it, and the balls to buy (None: not to be said)."""

    key: str
    name: str
    metres: float
    grams: float | None
    balls: int | None


@dataclass(frozen=True, slots=True)
class SizeYarn:
    """The yarn of one size."""

    size: int
    name: str
    ledger: Ledger
    strands: tuple[StrandYarn, ...]
    shades: tuple[ShadeYarn, ...]

    def strand(self, key: str | None) -> StrandYarn | None:
        return next((strand for strand in self.strands if strand.key == key), None)


@dataclass(frozen=True, slots=True)
class YarnReport:
    """All sizes that can be reckoned. `ends` is how balls are joined, `margin` what is added to
    the upper end before balls are counted."""

    sizes: tuple[SizeYarn, ...]
    ends: Ends
    margin: float


def margin() -> float:
    """The factor of the safety margin, 1.1 for a tenth."""
    return rule_of_thumb("safety margin").high


def ended_by_yarn(pattern: Pattern) -> set[str]:
    """The strands whose end ends a piece of work (``until A is spent``)."""
    return {
        item.amount.strand.key
        for piece in pattern.pieces
        for item in piece.items
        if isinstance(item, Work) and isinstance(item.amount, UntilSpent)
    }


def yarn_report(pattern: Pattern, walks: Sequence[Walk]) -> YarnReport:
    """What every strand and shade takes in every size whose pieces could all be walked.

    A size is left out where a piece has a finding, or where neither a swatch nor a gauge tells
    how long a loop is.
    """
    loops = Loops(pattern)
    sizes: list[SizeYarn] = []
    for size, name in enumerate(pattern.sizes):
        mine = [walk for walk in walks if walk.size == size]
        if not mine or not all(walk.sound for walk in mine):
            continue
        ledger = ledger_of(pattern, mine, loops, size)
        if ledger is not None:
            sizes.append(_size(pattern, ledger, loops, size, name))
    return YarnReport(tuple(sizes), ends_of(pattern), margin())


def _size(pattern: Pattern, ledger: Ledger, loops: Loops, size: int, name: str) -> SizeYarn:
    ends = ends_of(pattern, size)
    strands: list[StrandYarn] = []
    # Strands in the order of the file, then those that no line declares.
    order = [s.name.key for s in pattern.strands if s.name.key in ledger.strands]
    for key in [*order, *(k for k in ledger.strands if k not in order)]:
        strands.append(_strand(pattern, ledger, loops, ends, key, size))
    return SizeYarn(size, name, ledger, tuple(strands), _shades(pattern, strands))


def _strand(
    pattern: Pattern, ledger: Ledger, loops: Loops, ends: Ends, key: str | None, size: int
) -> StrandYarn:
    declared = pattern.strand(key) if key is not None else None
    runs = runs_of(pattern, declared, size) if declared is not None else ()
    eaten = eat(ledger, key, runs, ends)
    spread = ledger.spread.get(key, 0.0)
    yarn = yarn_of_strand(pattern, key)
    loop = loops.of(yarn, None, size)
    assert loop is not None  # the ledger would not be there
    grams: float | None = None
    if runs:
        weights = [
            used * run.grams_per_metre if run.grams_per_metre is not None else None
            for used, run in zip(eaten.used, runs, strict=True)
        ]
        if all(weight is not None for weight in weights):
            grams = sum(weight for weight in weights if weight is not None)
    elif yarn is not None and yarn.grams and yarn.metres:
        grams = eaten.need * yarn.grams / yarn.metres
    amounts = [run.metres * run.count if run.metres is not None else None for run in runs]
    fed = None
    if runs and all(amount is not None for amount in amounts):
        fed = sum(amount for amount in amounts if amount is not None)
    # Where the work ends by this strand, its feeds are the measure, and no margin is to be had.
    wanted = eaten.need * (1 + spread) * margin()
    if key in ended_by_yarn(pattern) and fed is not None:
        wanted = fed
    return StrandYarn(
        key,
        declared.name.text if declared is not None else key,
        eaten.need,
        grams,
        spread,
        loop,
        runs,
        eaten,
        fed,
        allotted(runs, wanted),
    )


def _shades(pattern: Pattern, strands: Sequence[StrandYarn]) -> tuple[ShadeYarn, ...]:
    used: dict[str, float] = {}
    bought: dict[str, float] = {}
    for strand in strands:
        for run, eaten, buy in zip(strand.runs, strand.eaten.used, strand.bought, strict=True):
            used[run.shade] = used.get(run.shade, 0.0) + eaten
            bought[run.shade] = bought.get(run.shade, 0.0) + buy
    out: list[ShadeYarn] = []
    for shade in pattern.shades:
        key = shade.name.key
        if key not in used:
            continue
        yarn = yarn_of_shade(pattern, key)
        ball = yarn.metres if yarn is not None else None
        weight = yarn.grams if yarn is not None else None
        out.append(
            ShadeYarn(
                key,
                shade.name.text,
                used[key],
                used[key] * weight / ball if weight and ball else None,
                ceil(bought[key] / ball - 1e-9) if ball else None,
            )
        )
    return tuple(out)
