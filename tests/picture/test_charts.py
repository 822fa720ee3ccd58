"""Charts beyond their rows: frames, keys, strips, strands, and how much is drawn."""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET
from collections.abc import Callable
from pathlib import Path

from loopwright.check.checked import Checked
from loopwright.picture.cells import Chart, charts_of
from loopwright.picture.faces import NO_STITCH
from loopwright.picture.ground import MOST_COLUMNS, MOST_ROWS
from loopwright.picture.sheet import sheet_svg
from loopwright.picture.strips import Strip, cell_mm, strips_of
from loopwright.picture.svg import chart_svg
from loopwright.picture.symbols import symbol

Check = Callable[..., Checked]
ROOT = Path(__file__).parent.parent.parent
SVG = "{http://www.w3.org/2000/svg}"


def source(motif: str, cast: int = 20, piece: str = "flat", head: str = "") -> str:
    return (
        f'pattern "Cloth"\n{head}\nmotif m {motif}\npiece cloth {piece}\n  cast on {cast}\n'
        "  work m x2\n  bind off\n"
    )


def chart(check: Check, text: str) -> Chart:
    checked = check(text)
    assert not checked.has_errors, checked.problems
    (found,), left = charts_of(checked.pattern, checked.walks, [0])
    assert not left
    return found


def whole(found: Chart) -> str:
    return chart_svg(found, Strip(0, found.columns, 0, len(found.rows)), "c")


# --- the frame ----------------------------------------------------------------------------------


def test_the_frame_holds_one_repeat_and_leaves_the_edges_outside(check: Check) -> None:
    found = chart(
        check,
        source(
            "over 4n + 6\n  edge 3 garter\n  row 1: k3 * k2 p2 * k3\n  row 2: k3 * k2 p2 * k3", 18
        ),
    )
    assert found.columns == 10
    assert [frame.sides for frame in found.frames] == [((3, 7), (3, 7))]


def test_rows_that_name_the_repeat_from_another_place_still_run_straight(check: Check) -> None:
    found = chart(check, source("over 4n + 2\n  row 1: k2 * p2 k2 *\n  row 2: p2 * k2 p2 *", 22))
    (frame,) = found.frames
    assert len(set(frame.sides)) == 1


def test_a_repeat_that_moves_has_a_frame_with_a_step(check: Check) -> None:
    found = chart(
        check,
        source("over 4n + 2\n  row 1: p1 * yo k2tog k2 * p1\n  row 2: purl\n"
               "  row 3: * yo k2tog k2 * p2\n  row 4: purl", 22),
    )  # fmt: skip
    (frame,) = found.frames
    assert all(side is not None and side[1] - side[0] == 4 for side in frame.sides)
    first, third = frame.sides[0], frame.sides[2]
    assert first is not None and third is not None and first != third


def test_each_stretch_between_markers_has_its_own_frame(check: Check) -> None:
    text = (ROOT / "examples" / "drift-shawl.loop").read_text("utf-8")
    checked = check(text)
    charts, _ = charts_of(checked.pattern, checked.walks, [0])
    assert [len(found.frames) for found in charts] == [2, 2]


def test_a_motif_of_one_count_has_no_frame(check: Check) -> None:
    assert chart(check, source("over 6\n  row 1: k3 yo k2tog k1\n  row 2: purl", 6)).frames == ()


# --- rows -----------------------------------------------------------------------------------------


def test_a_flat_motif_of_one_row_is_drawn_from_both_sides(check: Check) -> None:
    found = chart(check, source("over 2n\n  row 1: * k1 p1 *"))
    assert [row.rs for row in found.rows] == [True, False]


def test_in_the_round_every_row_is_numbered_at_the_right(check: Check) -> None:
    found = chart(check, source("over 4n\n  round 1: * k2 p2 *\n  round 2: knit", 20, "round"))
    assert found.round and all(row.rs for row in found.rows)
    labels = ET.fromstring(whole(found)).iter(f"{SVG}text")
    assert {label.attrib["text-anchor"] for label in labels} == {"start"}


def test_a_strand_has_its_letter_beside_its_colour(check: Check) -> None:
    head = (
        "yarn wool: 50 g 100 m\nshade moss of wool, colour #5f6b3a\n"
        "shade oat of wool, colour #d9c8a5\nstrand A feeds moss\nstrand B feeds oat\n"
    )
    text = source(
        "over 2n\n  row 1 in A: knit\n  row 2: purl\n  row 3 in B: knit\n  row 4: purl",
        20,
        head=head,
    )
    found = chart(check, text)
    assert [row.strand for row in found.rows] == ["A", "A", "B", "B"]
    root = ET.fromstring(whole(found))
    fills = [p.attrib["fill"] for p in root.iter(f"{SVG}path") if p.attrib["class"] == "strand"]
    assert fills == ["#5f6b3a", "#d9c8a5"]  # one path a colour, whatever the number of rows
    letters = [t.text for t in root.iter(f"{SVG}text") if t.attrib.get("font-weight")]
    assert letters == ["A", "A", "B", "B"]


def test_every_row_has_a_band_that_a_page_can_mark(check: Check) -> None:
    found = chart(check, source("over 2n\n  row 1: * k1 p1 *\n  row 2: * p1 k1 *"))
    bands = [r for r in ET.fromstring(whole(found)).iter(f"{SVG}rect") if "data-row" in r.attrib]
    assert [(b.attrib["data-row"], b.attrib["id"]) for b in bands] == [
        ("1", "c-row-1"),
        ("2", "c-row-2"),
    ]


def test_stitches_that_a_row_has_not_got_keep_their_columns(check: Check) -> None:
    found = chart(
        check,
        source("over 6\n  row 1: k3 yo k3\n  row 2: knit\n  row 3: k2 k2tog k3\n  row 4: knit", 6),
    )
    assert found.columns == 7
    assert [row.blank for row in found.rows] == [(), (), (3,), (3,)]
    # The last three stitches stand above one another in every row.
    for row in found.rows:
        right = [p.symbol for p in row.placed if p.right < 2]
        assert right == (["k", "k"] if row.rs else ["p", "p"])


# --- the key ------------------------------------------------------------------------------------


def test_the_key_has_exactly_the_symbols_used_with_both_meanings(check: Check) -> None:
    found = chart(
        check,
        source("over 2n + 4\n  row 1: k2 * sl1 wyif k1 * k2\n  row 2: k2 * p1 * k2"),
    )
    assert [(line.symbol, line.rs, line.ws) for line in found.key] == [
        ("k", "knit", "purl"),
        ("p", "purl", "knit"),
        ("sl front", "sl with yarn in front", "sl with yarn in back"),
    ]
    drawn = {placed.symbol for row in found.rows for placed in row.placed}
    assert {line.symbol for line in found.key} == drawn


def test_no_stitch_stands_in_the_key_only_where_a_square_is_empty(check: Check) -> None:
    even = chart(check, source("over 6\n  row 1: k2tog yo k4\n  row 2: purl", 6))
    assert NO_STITCH not in [line.symbol for line in even.key]
    odd = chart(check, source("over 6\n  row 1: k3 yo k3\n  row 2: k2tog k5", 6))
    assert NO_STITCH in [line.symbol for line in odd.key]


def test_groups_that_make_as_many_stitches_are_told_apart(check: Check) -> None:
    found = chart(
        check,
        source("over 4\n  row 1: (k1 yo k1) in 1 (p1 yo p1) in 1 k2\n  row 2: p3tog p3tog p2", 4),
    )
    groups = [line.symbol for line in found.key if line.symbol.startswith("into")]
    svg = whole(found)
    paths = {
        name: re.search(f'data-symbol="{re.escape(name)}".*? d="(.*?)"', svg) for name in groups
    }
    assert len(groups) == 2 and all(paths.values())
    strokes = [match[1].count("M") for match in paths.values() if match]
    assert len(set(strokes)) == 2


def test_symbols_lean_as_their_decreases_lean() -> None:
    def leans(name: str) -> float:
        _, _, commands = symbol(name, 1).lines[0]
        dx, dy = (float(n) for n in commands[1:].split(" "))
        return dx / -dy

    assert leans("k2tog") > 0 > leans("ssk")
    assert leans("k3tog") > 0 > leans("sssk")


# --- strips -------------------------------------------------------------------------------------


def big(columns: int, rows: int) -> str:
    units = ["k1 p1", "yo k2tog", "ssk yo", "sl1 wyif k1", "k1 tbl p1"]
    lines = []
    for number in range(1, rows + 1):
        body = " ".join(units[(number * 3 + at * 7) % 5] for at in range(columns // 2))
        lines.append(f"  row {number}: {body}")
    return source(f"over {columns}\n" + "\n".join(lines), columns)


def test_a_large_chart_is_cut_into_strips_that_fit_a_page(check: Check) -> None:
    found = chart(check, big(90, 70))
    strips = strips_of(found)
    seen = [
        (row, column)
        for strip in strips
        for row in range(strip.bottom, strip.top)
        for column in range(strip.right, strip.left)
    ]
    assert len(seen) == len(set(seen)) == 90 * 70
    for strip in strips:
        assert strip.left - strip.right <= MOST_COLUMNS
        assert strip.top - strip.bottom <= MOST_ROWS
    # Legible squares, and labels and all within the text of an A4 page.
    assert cell_mm(found) >= 3.5
    for strip in strips:
        wide = re.search(r'width="([\d.]+)mm" height="([\d.]+)mm"', chart_svg(found, strip, "c"))
        assert wide and float(wide[1]) <= 176 and float(wide[2]) <= 245


def test_a_strip_repeats_the_row_numbers(check: Check) -> None:
    found = chart(check, big(60, 20))
    for strip in strips_of(found):
        labels = [t.text for t in ET.fromstring(chart_svg(found, strip, "c")).iter(f"{SVG}text")]
        assert labels == [str(n) for n in range(1, 21)]


def test_a_cable_is_not_cut_where_another_line_can_be_found(check: Check) -> None:
    body = "k1 " + " ".join(["c6f"] * 14)
    found = chart(check, source(f"over 85\n  row 1: {body}\n  row 2: purl", 85))
    for strip in strips_of(found):
        assert strip.right in (0, 85) or strip.right % 6 in (0, 1)


def test_the_number_of_paths_does_not_grow_with_the_chart(check: Check) -> None:
    small, large = (sheet_svg("", [chart(check, big(60, rows))]) for rows in (10, 40))
    assert small.count("<path") == large.count("<path") < 60
    assert large.count("<text") < 150


def test_a_name_cannot_bring_anything_into_the_picture(check: Check) -> None:
    text = source("over 2n\n  row 1: * k1 zz *\n  row 2: purl").replace(
        "motif", 'stitch zz "<script>x</script>": takes 1, makes 1, "<b onload=1 href=x>"\nmotif', 1
    )
    checked = check(text)
    assert not checked.has_errors, checked.problems
    charts, _ = charts_of(checked.pattern, checked.walks, [0])
    svg = sheet_svg("<script>alert(1)</script>", charts)
    root = ET.fromstring(svg)
    assert not [e for e in root.iter() if e.tag.removeprefix(SVG) in ("script", "b")]
    assert not [name for e in root.iter() for name in e.attrib if name in ("onload", "href")]
    assert any("<script>x</script>" in (e.text or "") for e in root.iter())  # as letters only
