"""Another yarn in place of a pattern's own: balls, and the question the gauge asks."""

from __future__ import annotations

import re
from math import ceil

from loopwright.facts.amounts import estimate
from loopwright.facts.yarns import yarn_weight
from loopwright.fit.units import parse_quantity
from loopwright.model.pattern import Pattern, Yarn
from loopwright.record import dataclass
from loopwright.yarn.feed import yarn_of_shade
from loopwright.yarn.report import SizeYarn, YarnReport

_WEIGHT = re.compile(r"\bweight\s+([0-9]+)\b", re.IGNORECASE)
_PART = re.compile(r"[0-9.½¼¾⅓⅔⅛⅜⅝⅞]+\s*[A-Za-z]+")


@dataclass(frozen=True, slots=True)
class OtherYarn:
    """A ball of another yarn: grams and metres; its standard weight or None."""

    grams: float
    metres: float
    weight: int | None


def read_other(text: str) -> OtherYarn:
    """Read ``50 g 120 m, weight 3``. Raises ValueError with a sentence for the knitter."""
    match = _WEIGHT.search(text)
    weight = int(match[1]) if match else None
    if weight is not None and not 0 <= weight <= 7:
        raise ValueError(f"there is no yarn weight {weight}: the standard has 0 to 7")
    rest = _WEIGHT.sub("", text).replace(",", " ")
    grams = metres = None
    for part in _PART.findall(rest):
        quantity = parse_quantity(part)
        if quantity.is_weight:
            grams = quantity.grams()
        else:
            metres = quantity.metres()
    if grams is None or metres is None or _PART.sub("", rest).strip():
        raise ValueError(
            f"“{text}” is no ball: write its weight and length, as in “50 g 120 m, weight 3”"
        )
    return OtherYarn(grams, metres, weight)


@dataclass(frozen=True, slots=True)
class Swap:
    """Balls of the other yarn for one size: by shade, as (shade, metres wanted, balls)."""

    size: str
    shades: tuple[tuple[str, float, int], ...]


def swaps(report: YarnReport, other: OtherYarn) -> tuple[Swap, ...]:
    """The balls of the other yarn, were it knit to the same gauge."""
    return tuple(_swap(size, other) for size in report.sizes)


def _swap(size: SizeYarn, other: OtherYarn) -> Swap:
    wanted: dict[str, float] = {}
    for strand in size.strands:
        for run, bought in zip(strand.runs, strand.bought, strict=True):
            wanted[run.shade] = wanted.get(run.shade, 0.0) + bought
        if not strand.runs:
            wanted["–"] = wanted.get("–", 0.0) + strand.metres * (1 + strand.spread)
    return Swap(
        size.name,
        tuple(
            (shade, metres, ceil(metres / other.metres - 1e-9))
            for shade, metres in wanted.items()
            if metres > 0
        ),
    )


def gauge_questions(pattern: Pattern, other: OtherYarn) -> tuple[str, ...]:
    """What a change of yarn asks, a sentence each; the last one always: swatch."""
    own: list[Yarn] = []
    for shade in pattern.shades:
        yarn = yarn_of_shade(pattern, shade.name.key)
        if yarn is not None and yarn not in own:
            own.append(yarn)
    out: list[str] = []
    for yarn in own or list(pattern.yarns):
        name = yarn.text.text if yarn.text is not None else yarn.name.text
        if other.weight is not None and yarn.weight is not None and other.weight != yarn.weight:
            out.append(
                f"The weights differ: {name} is weight {yarn.weight} "
                f"({yarn_weight(yarn.weight).name if 0 <= yarn.weight <= 7 else '?'}), the other "
                f"{other.weight} ({yarn_weight(other.weight).name}). Swatch first: at another "
                "gauge the counts give another size, and these balls are no measure."
            )
        if yarn.grams and yarn.metres:
            mine, theirs = yarn.metres / yarn.grams * 100, other.metres / other.grams * 100
            share = theirs / mine - 1
            if abs(share) > estimate("thickness differs"):
                what = "thinner" if share > 0 else "thicker or denser"
                out.append(
                    f"The other yarn runs {theirs:.0f} m to 100 g, {name} {mine:.0f} m: it is "
                    f"{what}, so ask a swatch whether it reaches the gauge."
                )
    out.append(
        "The balls hold only where the other yarn is knit to the stated gauge; a swatch tells, "
        "and no pattern promises its size in another yarn."
    )
    return tuple(out)
