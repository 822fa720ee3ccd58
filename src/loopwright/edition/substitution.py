"""What to look for in another yarn: its weight, its length, and how its fibre behaves."""

from __future__ import annotations

from loopwright.edition.catalogue import Catalogue
from loopwright.facts.fibres import behaviours
from loopwright.facts.yarns import yarn_weight
from loopwright.fit.units import grams_and_ounces, metres_and_yards
from loopwright.model.pattern import Pattern, Yarn

PER_100_G = 100.0


def substitution_of(pattern: Pattern, words: Catalogue, yards_first: bool) -> tuple[str, ...]:
    """A line for each yarn that is knit with and says enough of itself; then how to buy."""
    knit = {shade.yarn.key for shade in pattern.shades}
    told = [_told(yarn, words, yards_first) for yarn in pattern.yarns if yarn.name.key in knit]
    lines = [line for line in told if line]
    if not lines:
        return ()
    return (
        *lines,
        words.text(
            "Buy another yarn by its length, not by its weight: the list of shades says what each "
            "takes. Knit and wash a swatch of it first."
        ),
    )


def _told(yarn: Yarn, words: Catalogue, yards_first: bool) -> str:
    traits = [trait for trait in (_weight(yarn, words), _length(yarn, words, yards_first)) if trait]
    if not traits:
        return ""
    name = yarn.text.text if yarn.text else yarn.name.text
    line = words.say(
        "In place of {yarn}, look for a yarn of {traits}.", yarn=name, traits=", ".join(traits)
    )
    return " ".join((line, *(words.text(text) for text in behaviours(yarn.made_of))))


def _weight(yarn: Yarn, words: Catalogue) -> str:
    """The trade's category, and the gauge that is usual for it."""
    try:
        weight = yarn_weight(yarn.weight if yarn.weight is not None else -1)
    except KeyError:
        return ""
    name = words.name(weight.name, f"weight {weight.category}")
    low, high = weight.stitches_min, weight.stitches_max
    if low is None or high is None:
        return words.say("weight {n} ({name})", n=weight.category, name=name)
    return words.say(
        "weight {n} ({name}: mostly {low} to {high} stitches to {size} of stockinette)",
        n=weight.category,
        name=name,
        low=low,
        high=high,
        size=words.figures("10 cm / 4 in"),
    )


def _length(yarn: Yarn, words: Catalogue, yards_first: bool) -> str:
    """Metres and yards to 100 g."""
    if not yarn.metres or not yarn.grams:
        return ""
    both = (metres_and_yards(yarn.metres / yarn.grams * PER_100_G), grams_and_ounces(PER_100_G))
    length, weight = (
        words.figures(" / ".join(reversed(text.split(" / "))) if yards_first else text)
        for text in both
    )
    return words.say("about {length} to {weight}", length=length, weight=weight)
