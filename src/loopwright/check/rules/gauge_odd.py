"""gauge-odd: gauge, needle and yarn weight disagree with the published table."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, listed
from loopwright.check.limits import strand_yarns
from loopwright.check.rule import Rule
from loopwright.check.usual import (
    is_far,
    is_stockinette,
    range_text,
    stitches_to_four_inches,
    weight_text,
    weights_for_gauge,
    weights_for_needle,
)
from loopwright.facts.yarns import YarnWeight, yarn_weights
from loopwright.model.pattern import Gauge, Pattern
from loopwright.problem import ADVICE, Label, Problem


def check(context: Context) -> Iterator[Problem]:
    pattern = context.pattern
    weights, labels = _declared(pattern)
    if any(weight.category == 0 for weight in weights):
        return  # lace is worked at any gauge on any needle
    said: set[str] = set()
    for gauge in pattern.gauges:
        if gauge.over.unit is None or gauge.over.mm() <= 0 or gauge.stitches <= 0:
            continue
        needle = _needle(pattern, gauge)
        for problem in _check(gauge, needle, weights, labels):
            if problem.title not in said:
                said.add(problem.title)
                yield problem


def _declared(pattern: Pattern) -> tuple[list[YarnWeight], tuple[Label, ...]]:
    """The weights of the yarns that are knit with (of all, where no strand says)."""
    by_number = {weight.category: weight for weight in yarn_weights()}
    yarns = [y for s in pattern.strands for y in strand_yarns(pattern, s.name.key)]
    weights: list[YarnWeight] = []
    labels: list[Label] = []
    for yarn in yarns or pattern.yarns:
        weight = by_number.get(yarn.weight) if yarn.weight is not None else None
        if weight is None:
            return [], ()  # one yarn is of no known weight: the gauge may be its own
        if weight not in weights:
            weights.append(weight)
            labels.append(Label(yarn.span, f"weight {weight.category}"))
    return weights, tuple(labels)


def _needle(pattern: Pattern, gauge: Gauge) -> float | None:
    """The needle of a gauge; else that of the pattern, where all its needles have one size."""
    if gauge.needle is not None and gauge.needle.unit is not None:
        return gauge.needle.mm()
    sizes = {n.size.mm() for n in pattern.needles if n.size.unit is not None}
    return sizes.pop() if len(sizes) == 1 else None


def _check(
    gauge: Gauge, needle: float | None, weights: list[YarnWeight], labels: tuple[Label, ...]
) -> Iterator[Problem]:
    stitches = stitches_to_four_inches(gauge)
    fits = weights_for_gauge(stitches)
    plain = is_stockinette(gauge)
    said = False
    if weights and plain and fits and not any(weight in fits for weight in weights):
        said = True
        usual = listed(
            (
                f"{weight_text(w)} has {range_text(w.stitches_min, w.stitches_max, '')}"
                for w in weights
            ),
        )
        yield _problem(
            gauge,
            "the gauge is unusual for the yarn",
            f"{stitches:.3g} stitches to 10 cm (4 inches) of stockinette are usual for "
            f"{listed(map(weight_text, fits), 'or')}, and the yarn is of another weight: {usual}.",
            labels,
            "look whether the yarn's weight or the gauge was typed wrong; if the fabric is meant "
            "to be so open or so dense, or is no stockinette, name it: “in FABRIC”.",
        )
    if needle is None:
        return
    far = weights and all(is_far(needle, weight) for weight in weights)
    if far and not said:
        usual = listed(
            f"{weight_text(w)} {range_text(w.needle_min_mm, w.needle_max_mm, ' mm')}"
            for w in weights
        )
        on = weights_for_needle(needle)
        message = f"A needle of {needle:g} mm is far from what the yarn is mostly knit on: {usual}."
        if on:
            message += f" It is usual for {listed(map(weight_text, on), 'or')}."
        yield _problem(
            gauge,
            "the needle is unusual for the yarn",
            message,
            labels,
            "look at the millimetres (US 10 is 6 mm, UK 10 is 3.25 mm), and at the yarn's weight.",
        )
        said = True
    if plain and fits and not said and all(is_far(needle, weight) for weight in fits):
        ranges = listed(
            f"{range_text(w.needle_min_mm, w.needle_max_mm, ' mm')} for {weight_text(w)}"
            for w in fits
            if w.category != 0
        )
        if not ranges:
            return
        yield _problem(
            gauge,
            "gauge and needle do not go together",
            f"{stitches:.3g} stitches to 10 cm (4 inches) of stockinette are mostly knit on "
            f"{ranges}; this gauge is on {needle:g} mm.",
            (),
            "look whether the gauge or the needle was typed wrong; if the fabric is no "
            "stockinette, name it: “in FABRIC”.",
        )


def _problem(
    gauge: Gauge, title: str, message: str, labels: tuple[Label, ...], help: str
) -> Problem:
    return Problem("gauge-odd", ADVICE, title, message, gauge.span, labels, help)


RULE = Rule(
    name="gauge-odd",
    severity=ADVICE,
    title="gauge, needle and yarn weight are unusual together",
    what="The craft-yarn trade's table of yarn weights says how many stitches to 4 inches of "
    "stockinette, and which needles, are usual for each weight. Its ranges overlap (23 and 24 "
    "stitches are weights 2 and 3), so a gauge is held against a set of weights. A needle counts "
    "as unusual where it is outside the ranges of the weight and of both its neighbours. A gauge "
    "measured in another fabric is not compared, only its needle; lace (weight 0) is not compared "
    "at all. The table says what is usual: your swatch is right.",
    wrong="""pattern "Stout on thin"
  gauge 28 stitches 36 rows = 10 cm in stockinette on 3 mm
yarn oak "Worsted": 100 g 200 m, weight 4
shade bark "Bark" of oak, colour #6b4a2f
strand A feeds bark
piece swatch flat
  cast on 20
  rows 8: knit
  bind off
""",
    right="""pattern "Worsted on its needle"
  gauge 18 stitches 25 rows = 10 cm in stockinette on 5 mm
yarn oak "Worsted": 100 g 200 m, weight 4
shade bark "Bark" of oak, colour #6b4a2f
strand A feeds bark
piece swatch flat
  cast on 20
  rows 8: knit
  bind off
""",
    check=check,
)
