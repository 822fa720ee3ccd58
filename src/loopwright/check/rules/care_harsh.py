"""care-harsh: the stated care is harder than the yarn's fibre bears."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context
from loopwright.check.rule import Rule
from loopwright.facts.care import Care, care_named, felts, is_acrylic
from loopwright.model.pattern import Yarn
from loopwright.problem import ADVICE, Label, Problem

_GENTLE = {30: 1, 40: 2}
"""How gentle a machine must be with wool that can felt, by its degrees: common practice."""
_COOL_IRON = 110


def check(context: Context) -> Iterator[Problem]:
    care = context.pattern.care
    if care is None:
        return
    for part in care.parts:
        phrase = care_named(part.text)
        if phrase is None:
            continue
        for yarn in context.pattern.yarns:
            harm, advice = _harm(phrase, yarn)
            if harm:
                yield Problem(
                    "care-harsh",
                    ADVICE,
                    "the care is harder than the yarn bears",
                    harm,
                    part.span,
                    (Label(yarn.span, "this yarn"),),
                    advice,
                )
                break


def _harm(phrase: Care, yarn: Yarn) -> tuple[str, str]:
    """What a phrase would do to a yarn, and what would be right; empty where it does none."""
    name = yarn.name.text
    if felts(yarn.made_of):
        bad = f"“{phrase.words}” can felt {name}, which is wool or other hair and not said to be"
        bad += " washable."
        if phrase.of == "washing" and phrase.degrees is not None:
            if phrase.gentle < _GENTLE.get(phrase.degrees, 3):
                return bad, "“hand wash” or “wash 30 gently”; or say “superwash” in its fibre."
        if phrase.of == "tumble drying" and phrase.gentle < 2:
            return bad, "“no tumble dry”, and “dry flat”; or say “superwash” in its fibre."
    if is_acrylic(yarn.made_of) and phrase.of == "ironing" and (phrase.degrees or 0) > _COOL_IRON:
        return f"“{phrase.words}” takes the spring out of {name}, which has acrylic in it.", (
            "“no iron”, or “iron low” with care."
        )
    return "", ""


_SOURCE = """pattern "Wool scarf"
  care {care}, no bleach, dry flat
yarn oak "Worsted": 100 g 200 m, weight 4, fibre "100% wool"
shade bark "Bark" of oak, colour #6b4a2f
strand A feeds bark
piece scarf flat
  cast on 30 in A
  rows 8 in A: knit
  bind off in A
"""

RULE = Rule(
    name="care-harsh",
    severity=ADVICE,
    title="the stated care is harder than the fibre bears",
    what="Wool and other hair that is not said to be washable felts with heat and rubbing: it is "
    "washed by hand, at 30 °C on a gentle cycle, or at 40 °C on a very gentle one, and not "
    "tumbled dry. Acrylic loses its spring under an iron that is more than cool. The rule reads "
    "the fibre and the printed name of each yarn; it is common practice, and the ball band is "
    "right.",
    wrong=_SOURCE.format(care="wash 60"),
    right=_SOURCE.format(care="hand wash"),
    check=check,
)
