"""Contrast, colour difference and simulated vision against a colour library (coloraide)."""

from __future__ import annotations

from itertools import combinations

import pytest
from coloraide import Color

from loopwright.yarn.colour import NORMAL, sights, simulated

COLOURS = ("#2f5d62", "#dfe8e6", "#c9a66b", "#8c3b2e", "#7a7a35", "#000000", "#ffffff", "#3355ff")
KINDS = {"protanopia": "protan", "deuteranopia": "deutan", "tritanopia": "tritan"}


def seen(colour: str, vision: str) -> Color:
    if vision == NORMAL:
        return Color(colour)
    made = Color(colour).filter(KINDS[vision], 1, method="machado", space="srgb-linear")
    return made.convert("srgb").clip()


@pytest.mark.parametrize("vision", KINDS)
@pytest.mark.parametrize("colour", COLOURS)
def test_simulated_colours(colour: str, vision: str) -> None:
    theirs = seen(colour, vision).to_string(hex=True)
    for at in (1, 3, 5):
        code = simulated(colour, vision)
        assert (
            abs(
                int(code[at : at + 2], 16)
                - int(Color(theirs).to_string(hex=True, compress=False)[at : at + 2], 16)
            )
            <= 1
        )


@pytest.mark.parametrize("pair", list(combinations(COLOURS, 2)), ids=" ".join)
def test_contrast_and_difference(pair: tuple[str, str]) -> None:
    for sight in sights(*pair):
        one, other = (seen(colour, sight.vision) for colour in pair)
        # The library's white and luminance have more digits than the standard's four.
        assert sight.ratio == pytest.approx(one.contrast(other), rel=2e-3)
        theirs = one.delta_e(other, method="76", space="lab-d65")
        assert sight.difference == pytest.approx(theirs, abs=0.1)
