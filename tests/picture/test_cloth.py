"""The cloth: which yarn lies on the right side at each stitch, and the picture made of it."""

from __future__ import annotations

import io
import os
import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path

import numpy as np
import pytest
from PIL import Image

from loopwright.check.checked import Checked
from loopwright.picture import cloth as c
from loopwright.picture.cloth import Cloth, TooLarge, cloth_of
from loopwright.picture.fabric import fabric_of
from loopwright.picture.palettes import read_choice, read_choices
from loopwright.picture.raster import draw, view_of
from loopwright.yarn.loop import Loops

Check = Callable[..., Checked]
ROOT = Path(__file__).parent.parent.parent
MOSS, OAT = "#5f6b3a", "#d9c8a5"

TWO = """pattern "Band"
  gauge 20 stitches 30 rows = 10 cm
yarn wool "Wool": 50 g 100 m, weight 4
shade moss "Moss" of wool, colour #5f6b3a
shade oat "Oat" of wool, colour #d9c8a5
strand A feeds {a}
strand B feeds {b}
piece band flat
  cast on {cast} in A
{rows}
  bind off in A
"""


def two(rows: str, cast: int = 4, a: str = "moss", b: str = "oat") -> str:
    return TWO.format(rows=rows, cast=cast, a=a, b=b)


def made(check: Check, text: str, seed: int = 0, size: int = 0) -> Cloth:
    checked = check(text)
    # The sources here stripe as the picture needs it, wherever the strands hang.
    assert {p.rule for p in checked.problems if p.is_error} <= {"strand-far-side"}
    walk = next(w for w in checked.walks if w.size == size)
    return cloth_of(checked.pattern, walk, seed=seed)


def row(cloth: Cloth, number: int) -> list[tuple[int, str, str]]:
    """A row from left to right: what each stitch shows, its loop's colour, the other's."""
    return [
        (int(kind), cloth.colours[main], cloth.colours[other])
        for kind, main, other in zip(
            cloth.kind[number], cloth.main[number], cloth.other[number], strict=True
        )
    ]


def test_a_knit_row_shows_vs_and_a_purl_row_the_loops_below(check: Check) -> None:
    cloth = made(
        check, two("  row in A: knit\n  row in A: purl\n  row in B: purl\n  row in B: purl")
    )
    assert row(cloth, 1) == [(c.KNIT, MOSS, MOSS)] * 4
    assert row(cloth, 2) == [(c.KNIT, MOSS, MOSS)] * 4  # purled on the wrong side
    assert row(cloth, 3) == [(c.PURL, OAT, MOSS)] * 4  # the first bumps hold heads of the old yarn
    assert row(cloth, 4) == [(c.KNIT, OAT, OAT)] * 4


def test_a_slipped_stitch_shows_the_loop_below_with_its_strand_before_or_behind(
    check: Check,
) -> None:
    rows = "  rows 2 in A: knit\n  row in B: k1 sl1 wyif k1 sl1\n  row in B: sl1 p1 sl1 wyib p1"
    cloth = made(check, two(rows))
    # Worked from the right: k1, sl1 wyif, k1, sl1.
    assert row(cloth, 3) == [
        (c.SLIPPED, MOSS, OAT),
        (c.KNIT, OAT, MOSS),
        (c.FLOAT, MOSS, OAT),
        (c.KNIT, OAT, MOSS),
    ]
    # On the wrong side from the left; yarn in front there is behind, seen from the right side.
    assert row(cloth, 4) == [
        (c.FLOAT, MOSS, OAT),
        (c.KNIT, OAT, OAT),
        (c.FLOAT, MOSS, OAT),
        (c.KNIT, OAT, OAT),
    ]


def test_edges_are_drawn_in_the_strand_that_makes_them(check: Check) -> None:
    cloth = made(check, two("  row in B: knit"))
    assert row(cloth, 0) == [(c.EDGE, MOSS, MOSS)] * 4
    assert row(cloth, 2) == [(c.EDGE, MOSS, MOSS)] * 4


def test_a_join_falls_where_the_ball_ends_loop_by_loop(check: Check) -> None:
    text = two("  rows 12 in A: knit\n  row in B: knit", 20, a="1 m moss, oat")
    checked = check(text)
    loop = Loops(checked.pattern).of(checked.pattern.yarns[0], None, 0)
    assert loop is not None
    # The cast-on takes two loops a stitch; then one loop a stitch, row by row.
    left = 1.0 / loop.metres - 2 * 20
    cloth = made(check, text)
    for number in range(1, 13):
        shades = [main for _, main, _ in row(cloth, number)]
        if number % 2:
            shades.reverse()  # right-side rows are worked from the right
        for at, shade in enumerate(shades):
            eaten = (number - 1) * 20 + at + 0.5
            assert shade == (MOSS if eaten < left else OAT), (number, at)
    assert 0 < left < 240  # the join is in the cloth


def test_a_self_striping_yarn_runs_through_its_stripes(check: Check) -> None:
    text = two("  rows 40 in A: knit\n  row in B: knit", 20).replace(
        "colour #5f6b3a", "stripes #111111 2 m, #222222 1 m"
    )
    cloth = made(check, text)
    shares = np.bincount(cloth.main[1:41].ravel(), minlength=2) / 800
    assert shares[cloth.colours.index("#111111")] == pytest.approx(2 / 3, abs=0.1)
    assert row(cloth, 0)[0][1] == "#111111"
    others = [made(check, text, seed).main.tobytes() for seed in range(1, 5)]
    assert len({*others, cloth.main.tobytes()}) == 5
    assert made(check, text, 3).main.tobytes() == others[2]


def test_a_hole_a_lean_and_a_bobble(check: Check) -> None:
    text = two("  row in A: k1 yo k2tog ssk mb k2\n  row in B: knit", 8).replace(
        "piece", 'stitch mb "bobble": takes 1, makes 1, yarn 5, "as you like"\npiece'
    )
    kinds = [kind for kind, _, _ in row(made(check, text), 1)]
    seen = [k for k in kinds if k != c.NOTHING]
    assert seen == [c.KNIT, c.KNIT, c.BOBBLE, c.LEFT, c.RIGHT, c.HOLE, c.KNIT]


def test_shaped_rows_lie_centred_and_an_edging_keeps_its_straight_edge(check: Check) -> None:
    grown = made(check, two("  row in A: k1 yo k2 yo k1\n  row in A: knit\n  row in B: knit"))
    assert [(line > 0).tolist() for line in grown.kind[:2]] == [
        [False, True, True, True, True, False],
        [True] * 6,
    ]
    path = ROOT / "tests/outside/patterns/core/sawtooth_edging.loop"
    edging = made(check, path.read_text("utf-8"))
    assert (edging.kind[:, -1] > 0).all()  # bound off at the left, so the right edge is straight
    assert not (edging.kind[:, 0] > 0).all()


def test_lace_that_gives_and_takes_keeps_its_width(check: Check) -> None:
    path = ROOT / "tests/outside/patterns/core/seafoam_stitch.loop"
    cloth = made(check, path.read_text("utf-8"))
    assert (cloth.kind > 0).all()


# --- the picture ----------------------------------------------------------------------------------


def test_the_picture_has_the_proportions_of_the_gauge(check: Check) -> None:
    cloth = made(check, two("  rows 58 in A: knit\n  row in B: knit", 60))
    high, wide, _ = draw(cloth, view_of(cloth, 20 / 30, None, 600)).shape
    rows, stitches = cloth.kind.shape
    assert wide == 600
    assert high / wide == pytest.approx(rows * (20 / 30) / stitches, rel=0.01)


def test_a_plain_stripe_has_its_colour_where_it_lies(check: Check) -> None:
    cloth = made(check, two("  rows 10 in A: knit\n  row in B: knit\n  row in B: purl", 20))
    picture = draw(cloth, view_of(cloth, 1.0, None, 400)).astype(int)
    low, high = picture[-100:-40].mean(axis=(0, 1)), picture[25:50].mean(axis=(0, 1))
    assert low[1] > low[0] > low[2]  # moss is greenest
    assert high.min() > low.max()  # oat is lighter


def test_other_colours_do_not_touch_the_source_and_stand_side_by_side(check: Check) -> None:
    checked = check(two("  rows 10 in A: knit\n  row in B: knit", 20))
    walk = checked.walks[0]
    one = fabric_of(checked.pattern, walk)
    red = read_choice("moss=#f00, OAT = #00ff00", checked.pattern)
    other = fabric_of(checked.pattern, walk, [red])
    assert other.png != one.png
    image = np.asarray(Image.open(io.BytesIO(other.png))).astype(int)
    assert (image[..., 2] * 2 <= image[..., :2].max(axis=2)).mean() > 0.95
    sheet = fabric_of(checked.pattern, walk, [red, read_choice("", checked.pattern, "as it is")])
    assert sheet.width > sheet.height
    assert "Side by side" in sheet.words


def test_zoom_shows_a_corner_in_which_loops_can_be_seen(check: Check) -> None:
    checked = check(two("  rows 200 in A: knit\n  row in B: knit", 200))
    near = fabric_of(checked.pattern, checked.walks[0], zoom=20)
    assert near.width == 30 * 20
    assert near.words.startswith("A corner")


def test_the_words_say_what_the_picture_shows(check: Check) -> None:
    checked = check(two("  rows 10 in A: knit\n  row in B: knit", 20))
    fabric = fabric_of(checked.pattern, checked.walks[0])
    assert fabric.words == (
        "The band of Band as it looks from the right side: 20 stitches at its widest, 11 rows "
        "high. From below upwards: Moss from the cast-on edge, Oat from row 11."
    )
    assert Image.open(io.BytesIO(fabric.png)).text["Description"] == fabric.words


def test_the_bytes_are_the_same_in_another_process() -> None:
    code = (
        "from loopwright.compile import check_source\n"
        "from loopwright.notation.source import Source\n"
        "from loopwright.picture.fabric import fabric_of\n"
        "import hashlib, sys\n"
        "c = check_source(Source.of('a', open(sys.argv[1]).read()))\n"
        "print(hashlib.sha256(fabric_of(c.pattern, c.walks[0]).png).hexdigest())\n"
    )
    path = str(ROOT / "examples" / "skerry-throw.loop")
    prints = {
        subprocess.run(
            [sys.executable, "-c", code, path],
            capture_output=True,
            text=True,
            check=True,
            env={**os.environ, "PYTHONHASHSEED": seed},
        ).stdout
        for seed in ("1", "2")
    }
    assert len(prints) == 1


def test_a_blanket_is_drawn_in_well_under_a_second(check: Check) -> None:
    rows = "  row in B: k2 * sl1 wyif k1 * k2\n  row in B: k2 * p1 * k2\n" * 3
    text = two("  rows 394 in A: knit\n" + rows, 240)
    checked = check(text)
    fabric_of(checked.pattern, checked.walks[0])  # the libraries are loaded
    start = time.process_time()
    fabric_of(checked.pattern, checked.walks[0])
    assert time.process_time() - start < 0.8


def test_a_piece_beyond_all_measure_is_refused_at_once(check: Check) -> None:
    checked = check(two("  rows 900000 in A: knit\n  row in B: knit", 900))
    with pytest.raises(TooLarge, match="900,001 rows"):
        cloth_of(checked.pattern, checked.walks[0])


# --- palettes -----------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("moss", "write kelp="),
        ("mauve=#ffffff", "there is no shade “mauve”; the pattern has moss, oat"),
        ("moss=red", "“red” is no colour"),
        ("moss=#12345", "“#12345” is no colour"),
    ],
)
def test_a_slip_in_a_palette_is_told(check: Check, text: str, said: str) -> None:
    pattern = check(two("  row in A: knit\n  row in B: knit")).pattern
    with pytest.raises(ValueError) as error:
        read_choice(text, pattern)
    assert said in str(error.value)


def test_a_file_of_palettes(check: Check) -> None:
    pattern = check(two("  row in A: knit\n  row in B: knit")).pattern
    choices = read_choices(
        "-- three\nHarbour: moss=#112233, oat=#445566\nas written:\n\nmoss=#abc -- short\n", pattern
    )
    assert [(choice.name, dict(choice.colours)) for choice in choices] == [
        ("Harbour", {"moss": "#112233", "oat": "#445566"}),
        ("as written", {}),
        ("", {"moss": "#aabbcc"}),
    ]
    with pytest.raises(ValueError, match="line 2: there is no shade"):
        read_choices("moss=#112233\nfern=#445566\n", pattern)
    with pytest.raises(ValueError, match="holds no palette"):
        read_choices("-- nothing\n", pattern)
