"""What a size costs in yarn, for the table of a resize: the one place that asks the yarn room."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import ceil

from loopwright.check.checked import Checked
from loopwright.count.walk import Bound, Cast, Walk, Worked
from loopwright.facts.loops import rule_of_thumb
from loopwright.model.pattern import Pattern, Strand
from loopwright.yarn.loop import loop_length


@dataclass(frozen=True, slots=True)
class ShadeCost:
    """The yarn of one shade in one size: metres without a margin, balls to buy with it."""

    shade: str
    metres: float
    balls: int | None


def shade_costs(checked: Checked, size: int) -> tuple[ShadeCost, ...]:
    """The yarn of every shade, in the order of the file; empty where it cannot be reckoned.

    The loops of a strand are its own stitches, two a stitch cast on and one and a half a stitch
    bound off; the balls of a strand are eaten in order, its last shade takes the rest.
    """
    pattern = checked.pattern
    metres: dict[str, float] = {}
    for key, loops in _loops(checked, size).items():
        strand = pattern.strand(key)
        if strand is None or not strand.feeds:
            continue
        first = pattern.shade(strand.feeds[0].shade.key)
        yarn = pattern.yarn(first.yarn.key) if first is not None else None
        loop = loop_length(pattern, yarn)
        if loop is None:
            continue
        for name, length in _fed(pattern, strand, size, loops * loop.metres):
            metres[name] = metres.get(name, 0.0) + length
    margin = rule_of_thumb("safety margin").high
    out = []
    for shade in pattern.shades:
        if shade.name.key not in metres:
            continue
        yarn = pattern.yarn(shade.yarn.key)
        length = metres[shade.name.key]
        balls = ceil(length * margin / yarn.metres - 1e-9) if yarn and yarn.metres else None
        out.append(ShadeCost(shade.text.text if shade.text else shade.name.text, length, balls))
    return tuple(out)


def _loops(checked: Checked, size: int) -> dict[str, float]:
    """The plain loops that each strand makes in one size."""
    loops: dict[str, float] = {}
    strands = checked.pattern.strands
    binding = rule_of_thumb("bind-off yarn by row").high
    for walk in checked.walks:
        if walk.size != size:
            continue
        strand = strands[0].name.key if len(strands) == 1 else None
        for event in walk.events:
            if isinstance(event, Cast | Bound):
                named = getattr(event.item, "strand", None)
                strand = named.key if named is not None else strand
                each = 2.0 if isinstance(event, Cast) else binding
                if strand is not None:
                    loops[strand] = loops.get(strand, 0.0) + each * event.count
            elif isinstance(event, Worked):
                for index, entry in enumerate(event.chunk.entries):
                    strand = entry.row.strand.key if entry.row.strand else strand
                    times = event.chunk.reps + (1 if index < event.chunk.part else 0)
                    fixed, unit = entry.yarn
                    if strand is not None:
                        eaten = fixed * times + unit * times * (times - 1) / 2
                        loops[strand] = loops.get(strand, 0.0) + eaten
    return loops


def _fed(pattern: Pattern, strand: Strand, size: int, metres: float) -> Iterator[tuple[str, float]]:
    """A strand's metres shared out to its shades in the order in which it eats them."""
    for at, feed in enumerate(strand.feeds):
        shade = pattern.shade(feed.shade.key)
        yarn = pattern.yarn(shade.yarn.key) if shade is not None else None
        has = 0.0
        if feed.amount is not None and feed.amount.is_length:
            has = feed.amount.metres(size)
        elif feed.amount is not None and feed.amount.is_weight:
            if yarn is not None and yarn.grams and yarn.metres:
                has = feed.amount.grams(size) / yarn.grams * yarn.metres
        elif yarn is not None and yarn.metres:
            balls = feed.balls.at(size) if feed.balls is not None else 1
            has = balls * yarn.metres * (0.5 if feed.half else 1.0)
        last = at == len(strand.feeds) - 1
        eaten = metres if last else min(metres, has)
        metres -= eaten
        yield feed.shade.key, eaten


def tail_mm(checked: Checked, walk: Walk) -> float | None:
    """The long-tail tail of a cast-on in mm: once round the needle a stitch, and the margin.

    None without a needle size. Source: `facts/rules_of_thumb.csv`, common practice.
    """
    mm = needle_mm(checked.pattern)
    if mm is None or walk.cast_on is None:
        return None
    rule = rule_of_thumb("long-tail tail by needle")
    return walk.cast_on * mm * rule.high * rule_of_thumb("safety margin").high


def needle_mm(pattern: Pattern) -> float | None:
    """The needle of the pattern: that of its first gauge, else its first needle line."""
    gauge = pattern.gauge_for(None)
    if gauge is not None and gauge.needle is not None and gauge.needle.unit is not None:
        return gauge.needle.mm()
    for needle in pattern.needles:
        if needle.size.unit is not None:
            return needle.size.mm()
    return None


_SOLD = (400, 600, 800, 1000, 1200, 1500)
_CABLE_LESS = 228.6  # 8 to 10 inches


def needle_length_mm(walk: Walk, width: float) -> float:
    """The circular needle for a width in mm: the longest that goes round, or the first that holds
    the fabric on its cable; lengths as sold.

    Source: `facts/rules_of_thumb.csv` (a flat fabric up to three times the cable; in the round no
    longer than the way round), common practice.
    """
    if walk.piece.in_round:
        fit = [length for length in _SOLD if length <= width]
        return float(max(fit, default=_SOLD[0]))
    most = rule_of_thumb("flat on circular needle")
    fit = [length for length in _SOLD if width <= (length - _CABLE_LESS) * most.low]
    return float(min(fit, default=_SOLD[-1]))
