"""Schematics: outlines to scale, measures of every size, and text that never lies on text."""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET
from collections.abc import Callable
from pathlib import Path

import pytest

from loopwright.check.checked import Checked
from loopwright.picture.outline import is_one_cloth, outline_of
from loopwright.picture.schematic import (
    Schematic,
    schematic_sheet,
    schematic_svg,
    schematic_words,
    schematics_of,
)

Check = Callable[..., Checked]
ROOT = Path(__file__).parent.parent.parent
SVG = "{http://www.w3.org/2000/svg}"
SOURCES = sorted(
    [*(ROOT / "examples").glob("*.loop"), *(ROOT / "tests/outside/patterns").rglob("*.loop")]
)
GAUGE = "\n  gauge 20 stitches 28 rows = 10 cm"


def drawn(check: Check, text: str) -> tuple[Schematic, ...]:
    if "gauge" not in text:
        text = re.sub(r'(pattern "[^"]*")', r"\1" + GAUGE, text, count=1)
    checked = check(text)
    assert not checked.has_errors, checked.problems
    sizes = tuple(range(len(checked.pattern.sizes)))
    return schematics_of(checked.pattern, checked.walks, sizes)


def test_a_rectangle_has_its_measures_at_the_gauge(check: Check) -> None:
    (found,) = drawn(
        check,
        'pattern "P"\n  sizes small, large\n  gauge 20 stitches 25 rows = 10 cm\n'
        "piece p flat\n  cast on 40/60\n  rows 50/100: knit\n  bind off\n",
    )
    assert [(m.letter, m.words, m.mm) for m in found.measures] == [
        ("A", "width", (200.0, 300.0)),
        ("B", "length", (200.0, 400.0)),
    ]
    assert found.outline.points == ((0.0, 200.0), (200.0, 200.0))


def test_a_shaped_piece_is_as_wide_at_each_height_as_its_rows(check: Check) -> None:
    checked = check(
        'pattern "P"\n  gauge 20 stitches 20 rows = 10 cm\nmotif grow\n'
        "  row 1: k1 yo * k1 * yo k1\n  row 2: knit\npiece p flat\n  cast on 10\n"
        "  rows 10: knit\n  work grow x10\n  rows 10: knit\n  bind off\n"
    )
    outline = outline_of(checked.pattern, checked.walks[0])
    assert outline is not None
    assert outline.points == ((0.0, 50.0), (50.0, 50.0), (150.0, 150.0), (200.0, 150.0))


def test_a_tube_is_laid_flat_and_says_so(check: Check) -> None:
    (found,) = drawn(check, (ROOT / "examples/gull-hat.loop").read_text("utf-8"))
    assert found.outline.around
    assert found.measures[0].words == "around, at the cast-on edge"
    assert found.measures[0].mm == (440.0, 480.0, 520.0)
    assert "tube laid flat" in found.note
    path = next(
        p
        for p in ET.fromstring(schematic_svg(found)).iter(f"{SVG}path")
        if p.get("class") == "piece"
    )
    xs = [float(x) for x in re.findall(r"[ML]([\d.]+) ", path.attrib["d"])]
    ys = [float(y) for y in re.findall(r"[ML][\d.]+ ([\d.]+)", path.attrib["d"])]
    across, up = max(xs) - min(xs), max(ys) - min(ys)
    assert across / up == pytest.approx(220.0 / found.outline.height, rel=0.01)


def test_a_disc_from_the_middle_is_drawn_as_one(check: Check) -> None:
    text = (ROOT / "tests/outside/patterns/core/pi_shawl.loop").read_text("utf-8")
    (found,) = drawn(check, text)
    assert found.outline.disc
    assert found.measures[0].mm[0] == pytest.approx(2 * found.outline.height)


def test_an_edging_shows_its_teeth(check: Check) -> None:
    text = (ROOT / "tests/outside/patterns/core/sawtooth_edging.loop").read_text("utf-8")
    (found,) = drawn(check, text)
    widths = [width for _, width in found.outline.points]
    assert max(widths) == pytest.approx(50.0) and min(widths) == pytest.approx(30.0)
    assert widths.count(max(widths)) == 7


def test_lace_that_gives_and_takes_has_straight_sides(check: Check) -> None:
    text = (ROOT / "tests/outside/patterns/core/seafoam_stitch.loop").read_text("utf-8")
    (found,) = drawn(check, text)
    assert found.outline.is_even


def test_a_pattern_without_gauge_has_no_schematic(check: Check) -> None:
    checked = check('pattern "P"\npiece p flat\n  cast on 9\n  rows 4: knit\n  bind off\n')
    assert schematics_of(checked.pattern, checked.walks, (0,)) == ()


def test_a_million_repeats_cost_nothing(check: Check) -> None:
    (found,) = drawn(
        check,
        'pattern "P"\n  gauge 20 stitches 20 rows = 10 cm\nmotif m over 2n\n  row 1: * k1 p1 *\n'
        "  row 2: knit\npiece p flat\n  cast on 20\n  work m x1000000\n  bind off\n",
    )
    assert found.outline.height == 10_000_000.0


def boxes(svg: str) -> list[tuple[float, float, float, float, str]]:
    """Where each text lies: 0.62 of its size a letter, which is more than the fonts take."""
    found = []
    for text in ET.fromstring(svg).iter(f"{SVG}text"):
        size, words = float(text.attrib["font-size"]), text.text or ""
        x, y, wide = float(text.attrib["x"]), float(text.attrib["y"]), 0.62 * size * len(words)
        x -= {"middle": wide / 2, "end": wide}.get(text.attrib.get("text-anchor", ""), 0.0)
        found.append((x, y - 0.75 * size, x + wide, y + 0.2 * size, words))
    return found


@pytest.mark.parametrize("path", SOURCES, ids=lambda p: p.stem)
def test_no_text_lies_on_another_and_none_outside(check: Check, path: Path) -> None:
    schematics = drawn(check, path.read_text("utf-8"))
    if not schematics:
        walks = check(path.read_text("utf-8")).walks
        assert walks and not any(is_one_cloth(walk) for walk in walks)
        return
    for svg in [schematic_sheet("T", schematics), *(schematic_svg(s) for s in schematics)]:
        wide, high = (float(n) for n in re.findall(r'viewBox="0 0 ([\d.]+) ([\d.]+)"', svg)[0])
        if svg.count("<g transform") == 0:
            found = boxes(svg)
            for box in found:
                assert box[0] >= 0 and box[1] >= 0 and box[2] <= wide and box[3] <= high, box
            for at, one in enumerate(found):
                for other in found[at + 1 :]:
                    apart = (
                        one[2] <= other[0]
                        or other[2] <= one[0]
                        or one[3] <= other[1]
                        or other[3] <= one[1]
                    )
                    assert apart, (one, other)
        else:  # the sheet: the drawings are checked by themselves, so take them out
            rest = re.sub(r"<g transform.*?</g>", "", svg)
            found = boxes(rest)
            for at, one in enumerate(found):
                assert one[2] <= wide and one[3] <= high, one
                for other in found[at + 1 :]:
                    assert (
                        one[2] <= other[0]
                        or other[2] <= one[0]
                        or one[3] <= other[1]
                        or other[3] <= one[1]
                    ), (one, other)
    for schematic in schematics:
        words = schematic_words(schematic)
        assert schematic.measures[0].words in words and " in" in words
