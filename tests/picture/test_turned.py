"""Charts of rows that turn: where they begin and end, what waits, and what has no chart."""

from __future__ import annotations

import os
import re
import sys
from collections.abc import Callable
from itertools import pairwise
from pathlib import Path

import pytest
from hypothesis import HealthCheck, event, given, settings
from hypothesis import strategies as st

from loopwright.check.checked import Checked
from loopwright.compile import check_source
from loopwright.notation.source import Source
from loopwright.picture.cells import charts_of
from loopwright.picture.chart import Chart, Left
from loopwright.picture.faces import NO_STITCH, WAITING
from loopwright.picture.strips import Strip, strips_of
from loopwright.picture.svg import chart_svg
from loopwright.picture.turnwords import notes_of
from loopwright.picture.words import chart_words, title_of

HERE = Path(__file__).parent
sys.path[:0] = [str(HERE), str(HERE.parent / "outside")]
from reader import read_chart  # noqa: E402
from test_random_pieces import MOTIFS, counting_errors, write_program  # noqa: E402
from turned import compare_turned  # noqa: E402

Check = Callable[..., Checked]
GARMENTS = HERE.parent / "outside" / "garments"
EXAMPLES = HERE.parent.parent / "examples"


def source(rows: str, cast: int, before: str = "", times: str = "x1", kind: str = "flat") -> str:
    """A motif `m` worked after some rows; it ends live, so that no row need close it."""
    motif = "\n  ".join(rows.splitlines())
    lines = "\n  ".join(before.splitlines())
    return (
        f'pattern "Short"\nmotif m\n  {motif}\npiece p {kind}\n  cast on {cast}\n  {lines}\n'
        f"  work m {times}\n  leave live\n"
    )


def charts(text: str) -> tuple[Checked, tuple[Chart, ...], tuple[Left, ...]]:
    checked = check_source(Source.of("short.loop", text))
    assert not checked.has_errors, checked.problems
    found, left = charts_of(checked.pattern, checked.walks, range(len(checked.pattern.sizes)))
    return checked, found, left


def one(text: str) -> Chart:
    checked, (found,), left = charts(text)
    assert not left
    assert compared(checked) == 1
    return found


def whole(chart: Chart) -> str:
    return chart_svg(chart, Strip(0, chart.columns, 0, len(chart.rows)), "c")


def compared(checked: Checked) -> int:
    """Read every chart of turned rows back; how many there were."""
    count = 0
    motifs = {motif.name.text: motif for motif in checked.pattern.motifs}
    for size in range(len(checked.pattern.sizes)):
        found, _ = charts_of(checked.pattern, checked.walks, [size])
        walks = [walk for walk in checked.walks if walk.size == size]
        for chart in found:
            if chart.turns:
                rows = read_chart(whole(chart))
                compare_turned(chart, motifs[chart.name], size, rows, walks)
                count += 1
    return count


def extents(chart: Chart) -> list[tuple[int, int]]:
    """The first and last column that each row works, from the right."""
    return [(row.placed[0].right, row.placed[-1].left) for row in chart.rows]


# --- where rows begin and end ---------------------------------------------------------------------


def test_a_row_begins_where_the_last_has_turned() -> None:
    found = one(source("row 1: k5 turn\nrow 2: p3 turn\nrow 3: k6 turn\nrow 4: p8", 12))
    assert extents(found) == [(0, 4), (2, 4), (2, 7), (0, 7)]
    assert [row.rs for row in found.rows] == [True, False, True, False]
    assert [row.turn and row.turn.boundary for row in found.rows] == [5, 2, 8, None]


def test_what_waits_is_no_empty_square() -> None:
    found = one(source("row 1: k5 turn\nrow 2: p5\nrow 3: k10\nrow 4: p10", 10))
    assert found.rows[0].waiting == found.rows[1].waiting == (5, 6, 7, 8, 9)
    assert not any(row.blank for row in found.rows)
    assert WAITING in [entry.symbol for entry in found.key]
    assert NO_STITCH not in [entry.symbol for entry in found.key]


def test_a_stitch_that_is_gone_does_not_wait() -> None:
    found = one(source("row 1: k3 k2tog turn\nrow 2: p4", 8, times="x2"))
    for row in found.rows:
        assert not set(row.blank) & set(row.waiting)
        assert len(row.blank) + len(row.waiting) + sum(p.cells for p in row.placed) == found.columns
    # The decrease empties the column beyond it: the worked stitches stay above one another.
    assert extents(found)[:2] == [(0, 3), (0, 3)]
    assert found.rows[0].blank == (4,)


def test_the_far_end_may_be_reached_by_a_row_that_turns() -> None:
    found = one(source("row 1: k4 turn\nrow 2: p4", 4))
    assert found.rows[0].turn is not None and found.rows[0].turn.boundary == 4
    assert not found.rows[0].waiting


def test_in_the_round_a_turned_row_goes_back_and_the_next_goes_round() -> None:
    text = source("round 1: k8 w&t\nround 2: p6 w&t\nround 3: knit", 12, kind="round")
    found = one(text)
    assert [row.rs for row in found.rows] == [True, False, True]
    assert found.round and found.word == "Row" and found.sided
    assert extents(found) == [(0, 7), (2, 7), (2, 9)]
    assert "wrong-side rows at the left" in chart_words(found)


def test_a_motif_that_begins_on_the_wrong_side() -> None:
    text = (
        'pattern "P"\nmotif m starts ws\n  row 1: p3 turn\n  row 2: k2 ssk turn\npiece p flat\n'
        "  cast on 9\n  row: k5 turn\n  work m x3\n  leave live\n"
    )
    found = one(text)
    assert [row.rs for row in found.rows] == [False, True]


def test_an_odd_motif_worked_again_is_drawn_from_both_sides() -> None:
    once = one(source("row 1: k6 turn\nrow 2: p4 turn\nrow 3: k2 turn", 8))
    assert len(once.rows) == 3
    rows = "row 1: * k1 * to last 2 turn"
    twice = one(source(rows, 30, times="x12"))
    assert [row.rs for row in twice.rows][:4] == [True, False, True, False]


def test_markers_that_hang_over_a_short_row() -> None:
    text = source(
        "row 1: * k1 * sm k2 turn\nrow 2: p2 sm * p1 *\nrow 3: * k1 * sm * k1 *\n"
        "row 4: * p1 * sm * p1 *",
        12,
        "row: k6 pm k6\nrow: p6 sm p6",
        "x2",
    )
    found = one(text)
    assert {mark.boundary for row in found.rows for mark in row.marks} == {
        found.rows[2].marks[0].boundary
    }


# --- wraps ------------------------------------------------------------------------------------


def test_the_ring_stands_round_the_stitch_that_is_wrapped() -> None:
    found = one(source("row 1: k5 w&t\nrow 2: p2 w&t\nrow 3: k9\nrow 4: purl", 12))
    assert [row.turn and row.turn.wrapped for row in found.rows] == [5, 2, None, None]
    svg = whole(found)
    assert svg.count('data-symbol="w&amp;t"') == svg.count('data-symbol="w&amp;t~"') == 1
    both = {entry.symbol: (entry.rs, entry.ws) for entry in found.key}
    assert both["w&t"] == ("w&t", "") and both["w&t~"] == ("", "w&t")


# --- how much is drawn ----------------------------------------------------------------------------

HEEL = (
    "row 1: sl1 * k1 * to 1 before gap ssk k1 turn\nrow 2: sl1 * p1 * to 1 before gap p2tog p1 turn"
)


def test_rows_that_grow_are_drawn_as_often_as_they_are_worked() -> None:
    found = one(source(HEEL, 32, "row: k18 ssk k1 turn\nrow: sl1 p5 p2tog p1 turn", "x5"))
    assert len(found.rows) == 10 and not found.frames
    wide = [last - first + 1 for first, last in extents(found)]
    assert all(later > earlier for earlier, later in pairwise(wide))
    assert notes_of(found).startswith("All 5 times")


def test_a_part_of_a_repeat_is_drawn_as_far_as_it_is_worked() -> None:
    before = "row: k18 ssk k1 turn\nrow: sl1 p5 p2tog p1 turn"
    found = one(source(HEEL, 32, before, "for 5 rows"))
    assert len(found.rows) == 5


def test_rows_that_grow_too_far_are_drawn_once_with_a_frame() -> None:
    found = one(source(HEEL, 132, "row: k70 ssk k1 turn\nrow: sl1 p9 p2tog p1 turn", "x25"))
    assert len(found.rows) == 2 and found.frames
    assert "as worked the first time" in notes_of(found) and "More stitches wait" in notes_of(found)
    assert found.columns < 20


def test_rows_that_are_the_same_each_time_are_drawn_once() -> None:
    found = one(source("row 1: k5 k2tog turn\nrow 2: k6", 150, times="x140"))
    assert len(found.rows) == 2 and found.columns < 12
    assert notes_of(found) == "More stitches wait at the ends than are drawn."


def test_a_form_is_drawn_on_its_least_count_with_the_repeat_framed() -> None:
    text = (
        'pattern "P"\nmotif m over 4n\n  row 1: * k2 p2 * to last 4 turn\n  row 2: * k2 p2 *\n'
        "  row 3: * k2 p2 *\n  row 4: * k2 p2 *\npiece p flat\n  cast on 40\n  work m x3\n"
        "  bind off\n"
    )
    found = one(text)
    assert found.columns == 8
    assert {side[1] - side[0] for frame in found.frames for side in frame.sides if side} == {4}
    # No frame reaches over stitches that wait.
    for frame in found.frames:
        for row, side in zip(found.rows, frame.sides, strict=True):
            assert side is None or not set(range(*side)) & set(row.waiting)


@pytest.mark.parametrize("count", [10**3, 10**6, 10**9 - 10])
def test_a_vast_needle_costs_no_more(count: int) -> None:
    found = one(source("row 1: k5 k2tog turn\nrow 2: k6", count, times="x5"))
    assert found.columns < 12


def test_sizes_that_turn_elsewhere_have_a_chart_each() -> None:
    text = (GARMENTS / "toe_up_stocking_short_row_heel.loop").read_text("utf-8")
    _, found, left = charts(text)
    assert not left
    assert [title_of(chart) for chart in found] == [
        "Toe", "Inward, size child", "Inward, size grown", "Outward, size child",
        "Outward, size grown",
    ]  # fmt: skip


def test_sizes_that_turn_alike_share_one_chart() -> None:
    text = source("row 1: k3 k2tog turn\nrow 2: k4", 20, times="x3").replace(
        'pattern "Short"', 'pattern "Short"\n  sizes small, large'
    ).replace("cast on 20", "cast on 20/30")  # fmt: skip
    _, found, _ = charts(text)
    assert [title_of(chart) for chart in found] == ["M"]


def test_a_size_list_in_the_place_of_a_turn_makes_a_chart_for_each() -> None:
    _, found, _ = charts((GARMENTS / "sloped_shoulders.loop").read_text("utf-8"))
    assert [chart.size for chart in found] == ["small", "large"]


# --- what is drawn --------------------------------------------------------------------------------


def test_no_line_of_the_grid_runs_between_stitches_that_wait() -> None:
    found = one(source("row 1: k4 turn\nrow 2: p4\nrow 3: k4 turn\nrow 4: p4", 12))
    (grid,) = re.findall(r'<path class="grid"[^>]* d="([^"]+)"', whole(found))
    label = re.search(r'x="([\d.]+)"[^>]*text-anchor="start"', whole(found))
    assert label
    inner = float(label[1]) - 2 - 40  # the left side of the squares that are worked
    assert min(float(x) for x in re.findall(r"M([\d.]+) ", grid)) == inner


def test_a_hook_is_drawn_once_where_a_chart_is_cut() -> None:
    rows = "row 1: k41 turn\nrow 2: p41\nrow 3: k60 turn\nrow 4: p60"
    checked, (found,), _ = charts(source(rows, 90))
    assert compared(checked) == 1
    strips = [chart_svg(found, strip, "c") for strip in strips_of(found)]
    assert len(strips) > 1
    hooks = [
        len(re.findall("M", d))
        for svg in strips
        for d in re.findall(r'data-symbol="turn" [^>]* d="([^"]+)"', svg)
    ]
    assert sum(hooks) == 2


def test_the_words_say_where_each_row_turns() -> None:
    found = one(source("row 1: k5 turn\nrow 2: p3 turn\nrow 3: k6 turn\nrow 4: p8", 12))
    words = chart_words(found)
    assert (
        "row 1 works squares 1 to 5 and turns, row 2 works squares 5 to 3 and turns, "
        "row 3 works squares 3 to 8 and turns, row 4 works squares 8 to 1." in words
    )
    assert "wait on the needle" in words


# --- what has no chart ----------------------------------------------------------------------------


def test_a_gap_that_no_piece_has_left_cannot_be_drawn() -> None:
    text = source(HEEL, 8).replace("work m x1", "rows 2: knit")
    _, found, (left,) = charts(text)
    assert not found
    assert "no piece works them" in left.reason


def test_stitches_taken_from_elsewhere_cannot_be_drawn() -> None:
    text = source("row 1: k4 pick up 3 along left edge turn\nrow 2: p7", 8)
    _, found, (left,) = charts(text)
    assert not found
    assert left.reason == "it holds, takes or picks up stitches"


# --- against random pieces ------------------------------------------------------------------------


def test_the_comparison_can_fail() -> None:
    """A hook, a stitch or a waiting line that stands elsewhere is seen."""
    text = source("row 1: k5 turn\nrow 2: p3 turn\nrow 3: k6 turn\nrow 4: p8", 12)
    checked, (found,), _ = charts(text)
    motif = checked.pattern.motifs[0]
    svg = whole(found)
    compare_turned(found, motif, 0, read_chart(svg), list(checked.walks))
    broken = [
        svg.replace('data-symbol="turn"', 'data-symbol="w&amp;t"'),
        re.sub(r'(data-symbol="waiting"[^>]* d="M[^M]+)M[^M]+', r"\1", svg),
        re.sub(r'(data-symbol="turn~"[^>]* d="M)([\d.]+)',
               lambda m: m[1] + str(float(m[2]) + 10), svg),
        svg.replace('data-row="2"', 'data-row="9"'),
    ]  # fmt: skip
    for other in broken:
        assert other != svg
        with pytest.raises((AssertionError, IndexError, ValueError, KeyError)):
            compare_turned(found, motif, 0, read_chart(other), list(checked.walks))


def test_random_short_rows_read_back() -> None:
    """Random pieces as far as they can be worked; the motifs that they work among others."""
    tries = int(os.environ.get("LOOPWRIGHT_EXAMPLES", "100"))
    seen = 0

    @settings(
        max_examples=tries,
        deadline=None,
        suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large],
    )
    @given(st.data())
    def read_back(data: st.DataObject) -> None:
        nonlocal seen
        text, refused = write_program(data)
        lines = text.splitlines()
        if refused is not None:
            del lines[refused - 1]
        checked = check_source(Source.of("p.loop", "\n".join(lines) + "\n"))
        if not counting_errors(checked):
            seen += compared(checked)

    read_back()
    assert seen > tries  # of turned rows, in some of the pieces


def _as_often_as_it_goes(head: str, name: str, times: int, kind: str) -> Checked | None:
    """A motif worked so many times, or half as many, or once; None if the needle bears neither."""
    for reps in (times, times // 2 or 1, 1):
        text = (
            f'pattern "P"\n{MOTIFS}piece p {kind}\n  {head}\n  work {name} x{reps}\n  leave live\n'
        )
        checked = check_source(Source.of("p.loop", text))
        if not counting_errors(checked):
            return checked
    return None


@settings(max_examples=int(os.environ.get("LOOPWRIGHT_EXAMPLES", "60")), deadline=None)
@given(st.data())
def test_motifs_begun_in_the_middle_of_a_row_read_back(data: st.DataObject) -> None:
    """Two rows turn where they happen to, and a motif goes on from there."""
    cast = data.draw(st.integers(8, 60))
    first = data.draw(st.integers(4, cast))
    second = data.draw(st.integers(2, first))
    head = [f"cast on {cast}", f"row: k{first} turn", f"row: p{second} turn"]
    kind = data.draw(st.sampled_from(["flat", "round"]))
    name = data.draw(st.sampled_from(["heel", "inward", "outward", "edging", "ramp", "odd"]))
    checked = _as_often_as_it_goes("\n  ".join(head), name, data.draw(st.integers(1, 12)), kind)
    if checked is None:
        event("never")
        return
    found, _ = charts_of(checked.pattern, checked.walks, [0])
    mine = next((chart for chart in found if chart.name == name), None)
    event("no chart" if mine is None else notes_of(mine).split(" ")[0] or "whole")
    assert mine is not None, head
    compared(checked)


@settings(max_examples=100, deadline=None)
@given(st.data())
def test_random_wedges_read_back(data: st.DataObject) -> None:
    """Motifs of written-out short rows, worked from the right side of a whole needle."""
    cast = count = data.draw(st.integers(6, 30))
    right, rs, rows = 0, True, []
    for _ in range(data.draw(st.integers(1, 8))):
        ahead = count - right if rs else right
        if not ahead:
            break
        takes = data.draw(st.integers(1, ahead))
        word = data.draw(st.sampled_from(["k1", "k2tog", "kfb", "yo", "(k1 yo k1) in 1", "p1"]))
        used, more = {
            "k2tog": (2, -1),
            "kfb": (1, 1),
            "yo": (0, 1),
            "k1": (1, 0),
            "p1": (1, 0),
        }.get(word, (1, 2))
        if takes < used:
            word, used, more = "k1", 1, 0
        plain = takes - used
        at = data.draw(st.integers(0, plain))
        steps = [f"k{at}" if at else "", word, f"p{plain - at}" if plain - at else ""]
        rows.append(" ".join(filter(None, [*steps, data.draw(st.sampled_from(["turn", "w&t"]))])))
        right = right + takes + more if rs else right - takes
        count += more
        rs = not rs
    body = "\n".join(f"row {n}: {row}" for n, row in enumerate(rows, 1))
    checked = check_source(Source.of("p.loop", source(body, cast)))
    assert counting_errors(checked) == [], body
    assert compared(checked) == 1
