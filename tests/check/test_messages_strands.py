"""What a knitter reads of strands, slips, sizes, needles and gauges; and where nothing is said.

Each case holds a source and the whole printed result, as in `test_messages`. The silent cases are
right patterns that lie close to a rule.
"""

from __future__ import annotations

import re
from collections.abc import Callable

import pytest
from syrupy.assertion import SnapshotAssertion

from loopwright.check.printing import problems_text, summary
from loopwright.compile import Checked

CheckText = Callable[[str], Checked]

STRANDS = "strand A\nstrand B\nstrand C\n"
SIZES = "  sizes small, middle, large\n"
GAUGE = "  gauge 20 stitches 28 rows = 10 cm\n"


def cloth(*lines: str, head: str = "", before: str = STRANDS, piece: str = "flat") -> str:
    """A pattern with one piece of these lines; `head` stands in the pattern's block.

    Of the strands only those that are worked with stay declared.
    """
    body = "".join(f"  {line}\n" for line in lines)
    text = f'pattern "Cloth"\n{head}{before}piece cloth {piece}\n{body}'
    for name in "ABC":
        if f" in {name}" not in text:
            text = text.replace(f"strand {name}\n", "")
    return text


def panel(form: str, *rows: str, strands: bool = True) -> str:
    """A motif ``panel`` with these rows (each ``1 in A: k1``), behind three strands."""
    lines = "".join(f"  row {row}\n" for row in rows)
    return (STRANDS if strands else "") + f"motif panel over {form}\n{lines}"


def worked(amount: str, *rows: str, form: str = "2n", cast_on: str = "20", head: str = "") -> str:
    """A motif of rows without strands, worked in a flat piece."""
    return cloth(
        f"cast on {cast_on}",
        f"work panel {amount}",
        "bind off",
        head=head,
        before=panel(form, *rows, strands=False),
    )


def needle(length: str, stitches: int, piece: str = "flat", more: str = "") -> str:
    word = "rounds" if piece == "round" else "rows"
    return cloth(
        f"cast on {stitches}",
        f"{word} 8: knit",
        "bind off",
        head=f"{GAUGE}  needle circular 4.5 mm {length}\n{more}",
        before="",
        piece=piece,
    )


def yarn(gauge: str, weight: int | None = 4, needles: str = "") -> str:
    told = f", weight {weight}" if weight is not None else ""
    return cloth(
        "cast on 20",
        "rows 8: knit",
        "bind off",
        head=f"  gauge {gauge}\n{needles}",
        before=f"yarn oak: 100 g 200 m{told}\nshade bark of oak\nstrand A feeds bark\n",
    )


WRONG: dict[str, str] = {
    # --- strands ---
    "one-row stripes repeated flat": cloth(
        "cast on 20 in A", "rows 2: knit", "work panel x400000000", "bind off in A",
        before=panel("n", "1 in A: knit", "2 in B: knit"),
    ),
    "an odd stripe inside a motif": cloth(
        "cast on 20 in A", "work panel x10", "bind off in A",
        before=panel("n", "1 in A: knit", "2 in A: purl", "3 in B: knit", "4 in A: purl"),
    ),
    "far side only in the second repeat": cloth(
        "cast on 20 in A", "work panel x6", "bind off in B",
        before=panel("n", "1 in A: knit", "2 in B: knit", "3 in B: knit", "4 in B: knit"),
    ),
    "far side in one size": cloth(
        "cast on 20 in A", "rows 2 in A: knit", "rows 2/3/4 in B: knit", "rows 2 in A: knit",
        "rows 2 in B: knit", "bind off in A", head=SIZES,
    ),
    "bind-off with the strand at the other edge": cloth(
        "cast on 20 in A", "rows 2 in A: knit", "row in B: knit", "bind off in A",
    ),
    "long carry in a motif": cloth(
        "cast on 20 in A", "work panel x3", "bind off in A",
        before=panel("n", "1 in A: knit", "2 in A: purl", "3 in B: knit", "4 in B: purl",
                     "5 in B: knit", "6 in B: purl", "7 in B: knit", "8 in B: purl",
                     "9 in B: knit", "10 in B: purl", "11 in B: knit", "12 in B: purl"),
    ),
    "long carry from one repeat to the next": cloth(
        "cast on 20 in A", "work panel x500000", "bind off in A",
        before=panel("n", "1 in A: knit", "2 in A: purl", "3 in B: knit", "4 in B: purl",
                     "5 in A: knit", "6 in A: purl", "7 in A: knit", "8 in A: purl",
                     "9 in A: knit", "10 in A: purl", "11 in A: knit", "12 in A: purl"),
    ),
    "long carry in the round": cloth(
        "cast on 80 in A", "rounds 20 in B: knit", "round in A: knit", "bind off in A",
        piece="round",
    ),
    "a bound of its own for carrying": cloth(
        "cast on 20 in A", "rows 2 in B: knit", "rows 2 in A: knit", "bind off in A",
        head="  bound carry 1 row\n",
    ),
    "no strand at the motif": cloth(
        "cast on 20 in A", "rows 2: knit", "bind off",
        before=panel("n", "1: knit", "2 in B: knit"),
    ) + "piece second flat\n  work panel x2\n  cast on 20\n  bind off in A\n",
    # --- slips ---
    "slipped in every row": worked("x4", "1: * sl1 k1 *", "2: * p1 sl1 wyif *"),
    "slipped over the join of two repeats": worked(
        "x4", "1: k1 sl1 * k1 * k1", "2: purl", "3: k1 sl1 * k1 * k1",
        "4: * p1 * sl1 wyif p1", form="n + 3",
    ),
    "slipped too long in a thick yarn": cloth(
        "cast on 11 in A", "row: k5 sl1 k5", "row: k5 sl1 wyif k5", "row: k5 sl1 k5",
        "row: k5 sl1 wyif k5", "row: k5 sl1 k5", "row: knit", "bind off",
        before="yarn rope: 100 g 60 m, weight 6\nshade tar of rope\nstrand A feeds tar\n",
    ),
    "slipped in the rows of a piece": cloth(
        "cast on 11", "row: k5 sl1 k5", "row: k5 sl1 wyif k5", "rows 2: k5 sl1 k5", "bind off",
        before="",
    ),
    "float over the join of two units": worked(
        "x4", "1: k1 * sl3 k4 sl3 * k1", "2: purl", form="10n + 2", cast_on="22"
    ),
    "float at a fine gauge": worked(
        "x4", "1: k2 * (sl1 wyif) x9 k1 * k2", "2: purl", form="10n + 4", cast_on="24",
        head="  gauge 32 stitches 44 rows = 10 cm\n",
    ),
    "float in the larger sizes": worked(
        "x4", "1: k2 * sl4/6/8 wyif k6/4/2 * k2", "2: purl", form="10n + 4", cast_on="24",
        head=SIZES,
    ),
    "woven without turns": cloth(
        "cast on 24 in A", "rows 2: knit", "work panel x4", "bind off in A",
        before=panel("2n + 4", "1 in B: k2 * sl1 wyif k1 * k2", "2 in B: k2 * p1 * k2",
                     "3 in A: k2 * sl1 wyif k1 * k2", "4 in A: as row 2"),
    ),
    "one band of four out of turn": worked(
        "x4", "1: k1 * k1 sl1 * k1", "2: purl", "3: k1 * sl1 k1 * k1", "4: purl",
        "5: k1 * sl1 k1 * k1", "6: purl", "7: k1 * sl1 k1 * k1", "8: purl", form="2n + 2",
    ),
    # --- sizes ---
    "two sizes changed places in a row": cloth(
        "cast on 20/22/24", "row: k5/7/6 * k1 * k5", "bind off", head=SIZES, before="",
    ),
    "a claim out of order": cloth(
        "cast on 20/30/40", "row: knit => 20/30/40", "rows 8/6/10: knit", "bind off",
        head=SIZES, before="",
    ),
    "a width out of order": cloth(
        "cast on 20/22/24", "rows 4: knit", "bind off", head=SIZES + "  width 10/21/12 cm\n",
        before="",
    ),
    # --- sizes and widths ---
    "size-off in two sizes of three": cloth(
        "cast on 20/24/28", "rows 4: knit", "bind off",
        head=SIZES + "  width 10/18/20 cm\n" + GAUGE, before="",
    ),
    "the second piece has a width of its own": cloth(
        "cast on 20", "rows 4: knit", "bind off", head="  width 10 cm\n" + GAUGE, before="",
    ) + "piece band flat\n  width 20 cm\n  cast on 20\n  rows 4: knit\n  bind off\n",
    "two sizes come to one count": cloth(
        "cast on 72/72/96", "work panel x2", "bind off",
        head=SIZES + "  width 34/38/48 cm\n" + GAUGE,
        before=panel("24n", "1: * k12 p12 *", "2: * k12 p12 *", strands=False),
    ),
    # --- needles ---
    "too many in the round": needle("40 cm", 200, "round"),
    "too few in the round": needle("60 cm", 100, "round"),
    "too few for any circular needle": needle("40 cm", 40, "round"),
    "too many in the bed size": cloth(
        "cast on 100/200/300", "rows 8: knit", "bind off", before="",
        head=SIZES + GAUGE + "  needle circular 4.5 mm 24 in\n",
    ),
    # --- gauge ---
    "gauge of another weight": yarn("28 stitches 36 rows = 10 cm"),
    "gauge where two weights meet": yarn("23 stitches 32 rows = 4 in", 5),
    "needle far off": yarn("18 stitches 25 rows = 10 cm on 10 mm"),
    "needle far off in another fabric": yarn("18 stitches 25 rows = 10 cm in seed on 2.5 mm"),
    "gauge and needle, no weight": yarn("30 stitches 40 rows = 10 cm on 8 mm", None),
    "needle of the needle line": yarn(
        "18 stitches 25 rows = 10 cm", 4, "  needle circular 2.5 mm 80 cm\n"
    ),
    # --- the bound line ---
    "a bound of nothing known": cloth(
        "cast on 2", "bind off", head="  bound cable 4 rows\n", before=""
    ),
    "a bound in the wrong unit": cloth(
        "cast on 2", "bind off", head="  bound float 4 rows\n", before=""
    ),
    "a bound given twice": cloth(
        "cast on 2", "bind off", head="  bound slip 4 rows\n  bound slip 6 rows\n", before=""
    ),
    "a bound without its unit": cloth(
        "cast on 2", "bind off", head="  bound slip 4\n", before=""
    ),
    "a bound in a piece": cloth("cast on 2", "bound slip 4 rows", "bind off", before=""),
}  # fmt: skip

SILENT: dict[str, str] = {
    # --- strands ---
    "two-row stripes a billion times": cloth(
        "cast on 20 in A", "work panel x200000000", "bind off in A",
        before=panel("n", "1 in B: knit", "2 in B: purl", "3 in A: knit", "4 in A: purl"),
    ),
    "one row each of three strands": cloth(
        "cast on 20 in A", "work panel x4", "bind off in A",
        before=panel("n", "1 in A: knit", "2 in B: knit", "3 in C: knit",
                     "4 in A: knit", "5 in B: knit", "6 in C: knit"),
    ),
    "one-row stripes in the round": cloth(
        "cast on 80 in A", "rounds 2: knit", "round in B: knit", "round in A: knit",
        "round in B: knit", "bind off in A", piece="round",
    ),
    "flat, then joined to the round": cloth(
        "cast on 80 in A", "rows 3 in A: knit", "rows 2 in B: knit", "join round",
        "round in A: knit", "round in B: knit", "bind off in A",
    ),
    "a new cast-on begins anew": cloth(
        "cast on 20 in A", "row in A: knit", "row in B: knit", "bind off in B",
        "cast on 20 in A", "rows 2 in A: knit", "bind off",
    ),
    "a note says that it is cut": cloth(
        "cast on 20 in A", "rows 3 in A: knit", "rows 3 in B: knit",
        'note "Cut A and join it anew."', "rows 2 in A: knit", "bind off in A",
    ),
    "a note says how it is carried": cloth(
        "cast on 20 in A", "rows 2 in A: knit", "rows 40 in B: knit",
        'note "You have carried A up the edge, twisted with B."', "rows 2 in A: knit",
        "bind off in A",
    ),
    "a strand that is never taken up again": cloth(
        "cast on 20 in A", "rows 3 in A: knit", "rows 40 in B: knit", "row in C: knit",
        "bind off in C",
    ),
    "carried just so far": cloth(
        "cast on 20 in A", "rows 2 in A: knit", "rows 8 in B: knit", "rows 2 in A: knit",
        "row in C: knit", "bind off in C",
    ),
    "rows that name no strand go on with the last": cloth(
        "cast on 20 in A", "rows 2: knit", "rows 2 in B: knit", "row in C: knit", "bind off",
    ),
    "a motif that begins with the strand in hand": cloth(
        "cast on 20 in A", "work panel x3", "row in C: knit", "bind off",
        before=panel("n", "1: knit", "2: purl", "3 in B: knit", "4: purl",
                     "5 in A: knit", "6: purl"),
    ),
    # --- slips ---
    "heel stitch": worked("x8", "1: * sl1 k1 *", "2: sl1 wyif * p1 *"),
    "eye of partridge": worked(
        "x8", "1: * sl1 k1 *", "2: sl1 wyif * p1 *", "3: sl1 * sl1 k1 * k1", "4: as row 2"
    ),
    "heel stitch written out over four rows": worked(
        "x8", "1: * sl1 k1 *", "2: sl1 wyif * p1 *", "3: * sl1 k1 *", "4: sl1 wyif * p1 *"
    ),
    "slipped rib on both sides of one row": worked(
        "x8", "1: * k1 sl1 *", "2: * sl1 wyif p1 *", "3: knit", "4: purl"
    ),
    "bricks in pairs of rows": worked(
        "x8", "1: k1 sl1 * k3 sl1 * k1", "2: k1 sl1 wyif * k3 sl1 wyif * k1", "3: knit",
        "4: k1 * p1 * k1", "5: k3 * sl1 k3 *", "6: k3 * sl1 wyif k3 *", "7: knit",
        "8: k1 * p1 * k1", form="4n + 3", cast_on="23",
    ),
    "two bands above one another, then two beside": worked(
        "x4", "1: k1 * k1 sl1 * k1", "2: purl", "3: k1 * k1 sl1 * k1", "4: purl",
        "5: k1 * sl1 k1 * k1", "6: purl", "7: k1 * sl1 k1 * k1", "8: purl", form="2n + 2",
    ),
    "stacked on purpose in two strands": cloth(
        "cast on 24 in A", "rows 2: knit", "work panel x4", "bind off in A",
        before=panel("2n + 4", "1 in B: k2 * sl1 wyif k1 * k2", "2 in B: k2 * p1 * k2",
                     "3 in A: as row 1", "4 in A: as row 2"),
    ),
    "a slipped edge": worked("x8", "1: sl1 * k1 * k1", "2: sl1 wyif * p1 * p1", form="n + 2"),
    "four rows of slips in a thick yarn": cloth(
        "cast on 11 in A", "row: k5 sl1 k5", "row: k5 sl1 wyif k5", "row: k5 sl1 k5",
        "row: k5 sl1 wyif k5", "row: knit", "bind off",
        before="yarn rope: 100 g 60 m, weight 6\nshade tar of rope\nstrand A feeds tar\n",
    ),
    "a file bears more slips": worked(
        "x1000000", "1: * sl1 k1 *", "2: * p1 sl1 wyif *", "3: knit", "4: purl",
        head="  bound slip 2 rows\n",
    ),
    "five on end": worked("x4", "1: k5 * sl5 k5 *", "2: purl", form="10n + 5", cast_on="25"),
    "floats of an inch at a fine gauge": worked(
        "x4", "1: k2 * sl8 wyif k2 * k2", "2: purl", form="10n + 4", cast_on="24",
        head="  gauge 32 stitches 44 rows = 10 cm\n",
    ),
    "a row that only slips": worked("x4", "1: knit", "2: purl", "3: * sl1 *", "4: purl",
                                    form="n"),
    "slips of one row and knits of the next, over shaping": worked(
        "x3", "1: k2 yo * sl1 k1 * yo k2", "2: purl", "3: k2 yo * k1 * yo k2", "4: purl", form="2n",
    ).replace(" over 2n", ""),
    # --- sizes ---
    "stitches that go down as others go up": cloth(
        "cast on 20/22/24", "row: k9/8/7 * k1 * k9/8/7", "bind off", head=SIZES, before="",
    ),
    "sizes named from the largest": cloth(
        "cast on 24/22/20", "rows 30/28/26: knit", "bind off",
        head="  sizes large, middle, small\n  width 12/11/10 cm\n", before="",
    ).replace("  width", GAUGE + "  width"),
    "all sizes alike in one list": cloth(
        "cast on 20/20/24", "rows 4: knit", "bind off", head=SIZES, before="",
    ),
    # --- widths ---
    "a triangle from the tip": cloth(
        "cast on 3", "work panel x40", "bind off",
        head="  width 41.5 cm\n" + GAUGE,
        before="motif panel\n  row 1: k1 yo * k1 * yo k1 => +2\n  row 2: purl\n",
    ),
    "a ruffle at the end of a straight band": cloth(
        "cast on 20", "rows 40: knit", "row: (kfb) x20", "bind off",
        head="  width 10 cm\n" + GAUGE, before="",
    ),
    "a short repeat between two widths": cloth(
        "cast on 36", "work panel x4", "bind off", head="  width 18.5 cm\n" + GAUGE,
        before=panel("4n", "1: * k2 p2 *", "2: * k2 p2 *", strands=False),
    ),
    # --- needles ---
    "a throw of 240 on 24 inches": needle("24 in", 240),
    "a round as long as its needle": needle("40 cm", 80, "round"),
    "double-pointed needles are named": needle(
        "40 cm", 40, "round", "  needle double-pointed 4.5 mm\n"
    ),
    "a long loop": needle("80 cm", 40, "round"),
    "a needle without a length": needle("80 cm", 900).replace(" 80 cm", ""),
    # --- gauge ---
    "twenty in worsted": yarn("20 stitches 28 rows = 10 cm on 4.5 mm"),
    "between two weights": yarn("20.5 stitches 28 rows = 10 cm on 4 mm", 3),
    "a neighbour's needle": yarn("18 stitches 25 rows = 10 cm on 6.5 mm"),
    "a dense fabric that is named": yarn("28 stitches 50 rows = 10 cm in linen on 5 mm"),
    "lace on any needle": yarn("18 stitches 25 rows = 10 cm on 5 mm", 0),
}  # fmt: skip


@pytest.mark.parametrize("name", WRONG)
def test_message(name: str, check: CheckText, snapshot: SnapshotAssertion) -> None:
    checked = check(WRONG[name])
    text = problems_text(checked.problems, checked.source)
    assert f"{WRONG[name]}{'-' * 20}\n{text}({summary(checked.problems)})" == snapshot


@pytest.mark.parametrize("name", SILENT)
def test_silence(name: str, check: CheckText) -> None:
    checked = check(SILENT[name])
    assert problems_text(checked.problems, checked.source) == ""


def test_rows_that_are_left_may_go_down(check: CheckText) -> None:
    text = cloth(
        "cast on 20/22/24",
        "work panel to length - 6/4/2 rows",
        "rows 6: knit",
        "bind off",
        head=SIZES + "  length 20/24/28 cm\n" + GAUGE,
        before=panel("n", "1: knit", "2: purl", strands=False),
    )
    assert "sizes-disorder" not in [problem.rule for problem in check(text).problems]


def test_a_bound_that_is_offered_settles_it(check: CheckText) -> None:
    """Each “bound … N …” that a message offers, written into the pattern, silences it."""
    tried = 0
    for name, text in WRONG.items():
        for problem in check(text).problems:
            match = re.search(r"“(bound (\w+) \d+ \w+)”", problem.help)
            if match:
                tried += 1
                old = re.sub(rf"  bound {match[2]} .*\n", "", text)
                again = old.replace('"Cloth"\n', f'"Cloth"\n  {match[1]}\n', 1)
                assert problem.rule not in [p.rule for p in check(again).problems], name
    assert tried >= 8


def test_a_note_that_is_offered_settles_it(check: CheckText) -> None:
    for name in ("far side in one size", "bind-off with the strand at the other edge"):
        (problem,) = (p for p in check(WRONG[name]).problems if p.rule == "strand-far-side")
        match = re.search(r"\((note “.*?”)\)", problem.help)
        assert match
        line = check(WRONG[name]).source.line_column(problem.span.start)[0]
        lines = WRONG[name].splitlines(keepends=True)
        lines.insert(line - 1, "  " + match[1].replace("“", '"').replace("”", '"') + "\n")
        assert "strand-far-side" not in [p.rule for p in check("".join(lines)).problems]


def test_the_needle_that_is_offered_holds(check: CheckText) -> None:
    for name in ("too many in the round", "too few in the round", "too many in the bed size"):
        (problem,) = check(WRONG[name]).problems
        match = re.search(r"needle of (\d+ (?:cm|in))", problem.help)
        assert match
        again = re.sub(r"(needle circular 4.5 mm) .*", rf"\1 {match[1]}", WRONG[name])
        assert check(again).problems == (), name
