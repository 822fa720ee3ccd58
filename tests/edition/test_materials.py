"""Materials, skills, charts in place, boxes for repeats, and the care that a source states."""

from __future__ import annotations

import io
import re
from collections.abc import Callable
from itertools import pairwise
from pathlib import Path

import pikepdf
import pytest

from loopwright.build import BuildOptions, build_editions, document_of
from loopwright.check.checked import Checked
from loopwright.compile import check_source
from loopwright.edition.document import Document, Line, Section
from loopwright.edition.indexed import indexed
from loopwright.edition.render import boxes, kept_together, pairs, tens
from loopwright.edition.skills import SKILLS, skill_of
from loopwright.edition.ticks import ticks
from loopwright.facts.yarns import yarn_weights
from loopwright.model.stitch import trade_stitches
from loopwright.notation.source import Source

EXAMPLES = sorted((Path(__file__).parents[2] / "examples").glob("*.loop"))
Check = Callable[..., Checked]
CLOTH = """pattern "P"
{head}yarn oak "{name}": {yarn}
shade bark "Bark" of oak
strand A feeds bark
piece p flat
  cast on 20
  rows 40: knit
  bind off
"""


def words(check: Check, yarn: str, name: str = "Oak", head: str = "", **options: str) -> Document:
    checked = check(CLOTH.format(yarn=yarn, name=name, head=head))
    assert not checked.has_errors, checked.problems
    return document_of(checked, BuildOptions(**options))  # type: ignore[arg-type]


# --- another yarn -------------------------------------------------------------------------------


def test_another_yarn_is_told_by_weight_gauge_length_and_fibre(check: Check) -> None:
    line, buy = words(check, '50 g 125 m, weight 3, fibre "cotton"').substitution
    # 125 m to 50 g is 250 m to 100 g; the trade's table gives weight 3 21 to 24 stitches.
    assert "weight 3 (Light: mostly 21 to 24 stitches to 10 cm / 4 in of stockinette)" in line
    assert "about 250 m / 273 yd to 100 g / 3½ oz" in line
    assert "Cotton has no spring" in line and "Wool" not in line
    assert buy.startswith("Buy another yarn by its length")


def test_only_what_the_yarn_says_is_told(check: Check) -> None:
    assert words(check, "50 g").substitution == ()
    (line, _) = words(check, "weight 7").substitution
    assert line == "In place of Oak, look for a yarn of weight 7 (Jumbo)."
    assert {w.category for w in yarn_weights() if w.stitches_min is None} == {7}
    (line, _) = words(check, "50 g 100 m", "Silk and merino").substitution
    assert "weight" not in line and "Silk drapes" in line and "Wool has spring" in line


def test_yards_stand_first_in_a_pattern_in_inches(check: Check) -> None:
    line, _ = words(check, "100 g 200 m", units="in").substitution
    assert "about 219 yd / 200 m to 3½ oz / 100 g" in line


# --- skills -------------------------------------------------------------------------------------


def test_every_stitch_of_the_trade_comes_to_a_skill() -> None:
    for stitch in trade_stitches().values():
        assert skill_of(stitch, ()) in SKILLS, stitch.word
    lean = {word: skill_of(trade_stitches()[word], ()) for word in ("ssk", "m1l", "m1r", "cdd")}
    assert lean == {
        "ssk": "decrease left",
        "m1l": "increase left",
        "m1r": "increase right",
        "cdd": "decrease double",
    }


def test_skills_are_what_the_rows_ask_for_and_no_more(check: Check) -> None:
    found = words(check, "100 g 200 m").skills
    assert found == ("Casting on", "Knit and purl stitches", "Binding off")
    checked = check(
        'pattern "P"\npiece p flat\n  cast on 20 by long-tail\n  row: k1 ssk k14 k2tog k1\n'
        "  row: p9 sl1 wyif p8\n  row: c4f k14\n  bind off by suspended\n"
    )
    assert not checked.has_errors, checked.problems
    assert document_of(checked, BuildOptions()).skills == (
        "Casting on (long tail)",
        "Knit and purl stitches",
        "Decreases that lean to the left",
        "Decreases that lean to the right",
        "Slipping stitches with the yarn in front",
        "Cables with a cable needle",
        "Binding off (suspended)",
    )


# --- care ---------------------------------------------------------------------------------------


def test_stated_care_stands_in_the_order_of_the_marks(check: Check) -> None:
    # ISO 3758: washing, bleaching, drying, ironing, professional care.
    head = "  care no iron, Dry-flat, no dry cleaning, WASH 30 Gently, no bleach\n"
    (care,) = words(check, '100 g, fibre "wool"', head=head).care
    assert care == (
        "Machine wash at 30 °C at most, on a gentle cycle. Do not bleach. Dry flat. Do not iron. "
        "Do not dry-clean. Of another yarn, the care line of its ball band decides."
    )


def test_without_a_care_line_the_fibre_speaks(check: Check) -> None:
    assert words(check, '100 g, fibre "wool"').care[0].startswith("Wool can felt")
    assert words(check, '100 g, fibre "linen"').care == ()


# --- boxes, and rows that stay together ---------------------------------------------------------


def repeat(*tally: int, repeats: int = 0) -> Line:
    return Line("repeat", "", "Rep", "", tally=tally, repeats=repeats)


def test_many_repeats_have_a_box_for_ten() -> None:
    assert tens(repeat(34, 101)) == ((10, 20, 30, 34), (*range(10, 101, 10), 101))
    assert tens(repeat(20, 120))[0] == (10, 20)
    assert boxes(repeat(34, 101)) == ()
    # One box each up to a hundred; beyond six hundred a row counter serves better.
    assert tens(repeat(100)) == () and boxes(repeat(100)) == (100,)


@pytest.mark.parametrize("number", [1, 4, 5, 6, 39, 40, 41, 80, 97, 100])
def test_a_box_is_drawn_for_each_time_in_fives_and_forties(number: int) -> None:
    wide, high, view, path = ticks(number)
    left, top, *size = (float(figure) for figure in view.split())
    assert size == [wide * 10, high * 10], "a unit of the drawing is a tenth of a millimetre"
    assert wide < 210 - 2 * 17 - 16, "A4 between its margins, behind the name of a size"
    drawn = re.findall(r"M(\d+) (\d+)h(\d+)v(\d+)h-(\d+)z", path)
    assert "".join(f"M{x} {y}h{a}v{b}h-{c}z" for x, y, a, b, c in drawn) == path
    assert len({(x, y) for x, y, *_ in drawn}) == len(drawn) == number
    assert len({side for _, _, *sides in drawn for side in sides}) == 1, "they are squares"
    places = [(int(x), int(y), int(side)) for x, y, side, *_ in drawn]
    assert all(left < x and x + side < left + size[0] for x, _, side in places)
    assert all(top < y and y + side < top + size[1] for _, y, side in places)
    assert places == sorted(places, key=lambda at: (at[1], at[0])), "ticked as one reads"
    for after, (one, two) in enumerate(pairwise(places), start=1):
        if after % 40 == 0:
            assert two[0] == 0 and two[1] > one[1] + one[2]
        else:
            gap = two[0] - one[0] - one[2]
            assert one[1] == two[1] and (gap > 10 if after % 5 == 0 else 0 < gap < 10)
    assert tens(repeat(600)) and not tens(repeat(601))
    assert tens(repeat(10**9, 3)) == () and tens(repeat()) == ()


def test_the_rows_of_a_repeat_stay_with_it() -> None:
    rows = [Line("row", f"Row {n}:", "Knit.", "") for n in range(1, 10)]
    section = Section(
        "P", 2, (Line("do", "", "Cast on.", ""), *rows[:4], repeat(3, repeats=3), rows[5])
    )
    assert kept_together(section) == {2, 3, 4}  # not the row that is not repeated
    assert kept_together(Section("P", 2, (*rows, repeat(3)))) == set()
    long = Section("P", 2, (*rows, repeat(3, repeats=9)))
    assert kept_together(long) == {3, 4, 5, 6, 7, 8}


def test_each_side_of_a_measure_stays_on_its_line() -> None:
    assert str(pairs("1 (2) m / 3 (4) yd")) == (
        '<span class="measure">1 (2) m /</span> <span class="measure">3 (4) yd</span>'
    )
    long = "1 (" + ", ".join(["1000"] * 20) + ") m / 3 yd"
    assert "measure" not in str(pairs(long))
    assert "<b>" not in str(pairs("<b> / <i>"))


# --- pictures -----------------------------------------------------------------------------------


def test_a_chart_stands_where_its_rows_are_written_out() -> None:
    text = next(path for path in EXAMPLES if path.stem == "sandpiper-sock").read_text("utf-8")
    document = document_of(check_source(Source.of("s", text)), BuildOptions())
    placed = {section.heading: section.motifs for section in document.sections}
    assert placed["Cuff and leg"] == ("rib",)
    assert placed["Heel"] == ("flap", "turn-heel")
    assert placed["Toe"] == ("toe",)
    assert placed["Foot"] == ()


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_a_page_and_a_pdf_are_light_enough_to_be_sent(path: Path) -> None:
    checked = check_source(Source.of(path.stem, path.read_text("utf-8")))
    made, failed = build_editions(checked, BuildOptions(("pdf", "html")), path.stem)
    assert not failed
    for name, data in made:
        assert len(data) < 150_000, (name, len(data))
    with pikepdf.open(io.BytesIO(dict(made)[f"{path.stem}.pdf"])) as pdf:
        for page in pdf.pages:
            for image in page.get_images().values():
                assert image.ColorSpace[0] == "/Indexed"
                shown = pikepdf.PdfImage(image).as_pil_image().convert("RGB")
                assert shown.getcolors(128) is not None  # it can be read, and has few colours


def test_only_a_png_of_numbered_colours_is_kept() -> None:
    from PIL import Image

    def png(mode: str) -> bytes:
        out = io.BytesIO()
        Image.new("RGB", (7, 5), (1, 2, 3)).convert(mode).save(out, "PNG")
        return out.getvalue()

    found = indexed(png("P"))
    assert found is not None and (found.width, found.height) == (7, 5)
    assert indexed(png("RGB")) is None and indexed(b"GIF89a") is None
