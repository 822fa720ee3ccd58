"""What a designer reads after a slip in a garment: two slips for each of the right ones.

Each case changes one place of a source in `tests/outside/garments`; the snapshot holds the change
and the whole printed result. Read a changed snapshot as a knitter before it is updated.
"""

# ruff: noqa: E501  (a slip stands on one line)

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

import pytest
from syrupy.assertion import SnapshotAssertion

from loopwright.check.printing import problems_text, summary
from loopwright.compile import Checked

GARMENTS = Path(__file__).parent.parent / "outside" / "garments"

# garment, what is slipped, the right words, the wrong ones
SLIPS: list[tuple[str, str, str, str]] = [
    ("stocking_with_heel_flap", "held instep forgotten", "pm take instep k20/28 pm", "pm pm"),
    ("stocking_with_heel_flap", "heel turned a stitch early", "k11/15 ssk k1", "k10/14 ssk k1"),
    ("toe_up_stocking_short_row_heel", "one pair too many on the way back", "outward x5/6", "outward x7/6"),
    ("toe_up_stocking_short_row_heel", "turned a stitch late", "p18/22 w&t", "p20/24 w&t"),
    ("sock_with_dutch_heel", "one turn too many", "square-heel x8", "square-heel x9"),
    ("sock_with_dutch_heel", "one pick-up too many", "up 14 along right", "up 15 along right"),
    ("sock_with_band_heel", "a side never taken", "  take left-side\n", "  take right-side\n"),
    ("sock_with_band_heel", "band of one stitch less", "right-side k10 h", "right-side k9 h"),
    ("mitten_with_thumb_gusset", "thumb never taken", "  take thumb\n", "  cast on 11/13\n"),
    ("mitten_with_thumb_gusset", "a gusset round too few", "gusset x5/6", "gusset x4/5"),
    ("mitten_with_afterthought_thumb", "one decrease too few", "(k6 k2tog) x5", "(k6 k2tog) x4"),
    ("mitten_with_afterthought_thumb", "odd thumb", "pick up 16", "pick up 17"),
    ("half_mitts_knitted_flat", "turn forgotten", "rm k10 rm turn", "rm k10 rm"),
    ("half_mitts_knitted_flat", "marker forgotten", "row: k18 rm k10 rm", "row: k28"),
    ("cap_with_round_crown", "a wedge of another width", "(k9/10/12 pm) x7", "(k9/10/11 pm) x7"),
    ("cap_with_round_crown", "a count never met", "until 16 stitches", "until 12 stitches"),
    ("beret", "wrong claim", "m1 * => 110", "m1 * => 108"),
    ("beret", "decrease line left out", "  round: * k8 k2tog * => 90\n", ""),
    ("bonnet_with_dutch_back", "turned a stitch early", "k43 ssk", "k42 ssk"),
    ("bonnet_with_dutch_back", "one pair too many", "back x21", "back x22"),
    ("bonnet_t_shaped", "second side a stitch short", "  row: bo20/24 * k1 *\n  rows", "  row: bo20/24 k19/24\n  rows"),
    ("bonnet_t_shaped", "left live unsaid", "  leave live", "  -- leave live"),
    ("pi_shawl_with_edging", "one edging repeat too many", "edging x144", "edging x145"),
    ("pi_shawl_with_edging", "edging a stitch narrower", "row 2: k6", "row 2: k5"),
    ("square_shawl_with_toothed_edging", "a tooth too many", "teeth x32", "teeth x33"),
    ("square_shawl_with_toothed_edging", "a yarn over forgotten", "k1 yo k4", "k1 k4"),
    ("triangle_shawl_with_tab", "picked up one too few", "up 3 along cast-on", "up 2 along cast-on"),
    ("triangle_shawl_with_tab", "yarn over forgotten", "yo sm k3 => +4", "sm k3 => +4"),
    ("half_hexagon_shawl", "marker forgotten in the motif", "k1 sm (yo", "k1 (yo"),
    ("half_hexagon_shawl", "placed one too few", "(k2 pm) x3 k1", "(k2 pm) x2 k3"),
    ("crescent_by_short_rows", "one short-row pair too many", "widen x11", "widen x12"),
    ("crescent_by_short_rows", "bound off behind a turn", "x11\n  rows 2: knit\n  row: k1", "x9\n  bind off\n  row: k1"),
    ("shawl_with_centre_panel", "one repeat too few", "narrow x18", "narrow x17"),
    ("shawl_with_centre_panel", "panel of another width", "sm k15 sm k2tog", "sm k14 sm k2tog"),
    ("leaf_edging", "one stitch too few in one row", "p6 kfb k1", "p5 kfb k1"),
    ("leaf_edging", "tooth bound off short", "p2tog bo3 p3 k4", "p2tog bo2 p4 k4"),
    ("raglan_pullover_top_down", "sleeve held short", "hold 32/38/44 as right", "hold 32/36/44 as right"),
    ("raglan_pullover_top_down", "same holder twice", "as right-sleeve", "as left-sleeve"),
    ("yoke_pullover_bottom_up", "sleeve joined twice", "take right-sleeve k", "take left-sleeve k"),
    ("yoke_pullover_bottom_up", "sleeves bound off", '  leave live "joined to the yoke"', "  bind off"),
    ("set_in_vest", "one side of the neck forgotten", "  take back-left\n  row: p10 p2tog\n  row: knit\n  bind off\n", ""),
    ("set_in_vest", "taken under another name", "take front-right", "take front-rigth"),
    ("v_neck_front", "half of another size", "k30/34 hold 30/34", "k30/34 hold 29/34"),
    ("v_neck_front", "mitre marker forgotten", "pm k1 pm k30/34", "pm k31/35"),
    ("drop_shoulder_pullover", "neck of one stitch more", "bo26/28/30 k22", "bo27/28/30 k22"),
    ("drop_shoulder_pullover", "rib on an odd count", "up 60/64/70", "up 61/64/70"),
    ("kimono_jacket", "sleeve cast on too short", "  cast on 24 more\n  rows 21", "  cast on 23 more\n  rows 21"),
    ("kimono_jacket", "neck never taken", "as neck hold 41", "as nack hold 41"),
    ("leg_warmers", "calf to an odd rib", "calf x4/4/6", "calf x4/5/6"),
    ("leg_warmers", "cast on a stitch too many", "on 56/64/72", "on 57/64/72"),
    ("glove", "held before it is made", "take three-fingers", "take four-fingers"),
    ("glove", "finger a stitch narrower", "k6 hold 26 as two-fingers co2 k6", "k6 hold 26 as two-fingers co2 k5"),
    ("mitred_squares_joined", "one pick-up too many", "pick up 13", "pick up 14"),
    ("mitred_squares_joined", "cast on before there is a stitch", "  pick up 13 along left edge\n", ""),
    ("entrelac_panel", "turned a stitch late", "row 2: k7 ssk turn", "row 2: k8 ssk turn"),
    ("entrelac_panel", "one repeat too many", "second-base edge turn => 32\n  work rectangle x7", "second-base edge turn => 32\n  work rectangle x9"),
    ("leaf_square", "yarn over at the edge forgotten", "yo k3 p7 k4", "k3 p7 k4"),
    ("leaf_square", "one decrease row too few", "rows 21: k2tog", "rows 20: k2tog"),
    ("blanket_of_clusters", "decreases of another width", "k5tog", "k4tog"),
    ("blanket_of_clusters", "cast-on of another multiple", "on 99", "on 98"),
    ("baby_bootee", "instep a stitch narrower", "row: p11 turn", "row: p10 turn"),
    ("baby_bootee", "picked up one too few", "k11 pick up 8", "k11 pick up 7"),
    ("saddle_shoulder_straps", "held under another name", "as back-right", "as right-back"),
    ("saddle_shoulder_straps", "joined from further down", "piece left-strap flat\n  take front-left", "piece left-strap flat\n  join collar, front-left"),
    ("sloped_shoulders", "no place where the fill stops", "to last 6/7 turn", "turn"),
    ("sloped_shoulders", "one step too many", "slope x2", "slope x5"),
]  # fmt: skip


def lines(*body: str, kind: str = "flat") -> str:
    """A piece ``p`` of these lines, twenty stitches cast on."""
    return "\n".join(['pattern "P"', f"piece p {kind}", "  cast on 20", *body]) + "\n"


CASES: dict[str, str] = {
    "taken before they are put aside": lines(
        "  take tip", "  row: knit", "  hold 5 as tip", "  bind off"
    ),
    "joined, and never left live": lines("  hold all as rest")
    + "piece q flat\n  join p\n  take rest\n  bind off\n",
    "joined twice": lines("  leave live")
    + "piece q flat\n  join p\n  bind off\npiece r flat\n  join p\n  bind off\n",
    "held twice under one name, one stitch": lines(
        "  row: hold 1 as tip k19", "  hold 1 as tip", "  bind off", "  take tip", "  bind off"
    ),
    "a holder emptied before the row wants its stitches": lines(
        "  row: k5 hold 12 as front k3", "  row: k9 take front * k1 *", "  bind off"
    ),
    "a row inside a motif runs back": 'pattern "P"\nmotif wedge\n  row 1: k5 turn\n  row 2: p5\n'
    + lines("  work wedge x2", "  bind off", kind="round").partition("\n")[2],
    "shaped past a marker by a turned row": lines(
        "  row: k10 pm k10", "  row: p9 p2tog p1 turn", "  row: knit", "  bind off"
    ),
    "the gap passed by": lines(
        "  row: k12 turn", "  row: p6 turn", "  row: k8 * k1 * to 1 before gap turn", "  bind off"
    ),
    "a line of more before anything": 'pattern "P"\npiece p flat\n  cast on 4 more\n  bind off\n',
    "nothing ever cast on": 'pattern "P"\npiece p flat\n  note "soon"\n',
    "the last stitch held, and forgotten": lines("  row: k19 hold 1 as tip", "  bind off"),
}
"""Whole sources, for what no garment shows."""


NAMES = [f"{garment}: {what}" for garment, what, _, _ in SLIPS]


def slipped(garment: str, right: str, wrong: str) -> str:
    text = (GARMENTS / f"{garment}.loop").read_text(encoding="utf-8")
    assert right in text, (garment, right)
    return text.replace(right, wrong, 1)


@pytest.mark.parametrize("slip", SLIPS, ids=NAMES)
def test_message(
    slip: tuple[str, str, str, str],
    check: Callable[..., Checked],
    snapshot: SnapshotAssertion,
) -> None:
    garment, _, right, wrong = slip
    checked = check(slipped(garment, right, wrong), f"{garment}.loop")
    text = problems_text(checked.problems, checked.source)
    change = f"{right.strip()}\n~~~~ became\n{wrong.strip()}"
    assert f"{change}\n{'-' * 20}\n{text}({summary(checked.problems)})" == snapshot


@pytest.mark.parametrize("name", CASES)
def test_lines(name: str, check: Callable[..., Checked], snapshot: SnapshotAssertion) -> None:
    checked = check(CASES[name])
    assert checked.problems
    text = problems_text(checked.problems, checked.source)
    assert f"{CASES[name]}{'-' * 20}\n{text}({summary(checked.problems)})" == snapshot


def test_every_garment_has_two_slips() -> None:
    told = [garment for garment, _, _, _ in SLIPS]
    assert {name: told.count(name) for name in told} == {
        path.stem: 2 for path in GARMENTS.glob("*.loop")
    }


@pytest.mark.parametrize("slip", SLIPS, ids=NAMES)
def test_every_slip_is_found(
    slip: tuple[str, str, str, str], check: Callable[..., Checked]
) -> None:
    garment, _, right, wrong = slip
    problems = check(slipped(garment, right, wrong)).problems
    assert problems
    # One slip, few messages: what follows from it is not told again and again.
    assert len(problems) <= 4, [re.sub(r"\s+", " ", p.message) for p in problems]
