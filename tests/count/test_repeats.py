"""Repeats by arithmetic, against an unrolled walk of the same rows by brute force."""

from __future__ import annotations

import time
from dataclasses import dataclass

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from loopwright.compile import Checked, check_source
from loopwright.count.walk import Worked
from loopwright.notation.source import Source


def check(text: str) -> Checked:
    return check_source(Source.of("cloth.loop", text))


def counts(checked: Checked, piece: int = 0) -> list[tuple[int, int]]:
    return [(row.start, row.end) for row in checked.walks[piece].listed()]


def errors(checked: Checked) -> list[str]:
    return [problem.rule for problem in checked.problems if problem.is_error]


# --- the brute force: rows as plain numbers -------------------------------------------------


@dataclass(frozen=True)
class Part:
    """What is worked between two markers: fixed stitches and one fill, as (takes, makes)."""

    before: tuple[int, int]
    fill: tuple[int, int] | None
    after: tuple[int, int]

    def text(self) -> str:
        fill = f" * {word(*self.fill)} *" if self.fill else ""
        return f"{word(*self.before)}{fill} {word(*self.after)}".strip()

    def work(self, have: int) -> int | str:
        rest = have - self.before[0] - self.after[0]
        made = self.before[1] + self.after[1]
        if self.fill is None:
            return made if rest == 0 else "count-short" if rest > 0 else "count-over"
        if rest < 0:
            return "count-over"
        if rest % self.fill[0]:
            return "fill-uneven"
        return made + rest // self.fill[0] * self.fill[1]


def word(takes: int, makes: int) -> str:
    """Stitches that take and make so many: knits, then what is missing or too many."""
    even = min(takes, makes)
    text = f"k{even}" if even else ""
    if makes > even:
        text += f" yo{makes - even}"
    if takes > even:
        text += f" bo{takes - even}"
    return text.strip()


Brute = tuple[list[tuple[int, int]], tuple[int, int, str] | None]


def unrolled(rows: list[list[Part]], state: list[int], reps: int, flat: bool) -> Brute:
    """Every row of every repeat, and the first that does not fit: (repeat, row, rule)."""
    listed = []
    for repeat in range(reps):
        for index, row in enumerate(rows):
            start = sum(state)
            after: list[int] = []
            for part, have in zip(row, state, strict=True):
                made = part.work(have)
                if isinstance(made, str):
                    return listed, (repeat, index, made)
                after.append(made)
            state = after[::-1] if flat else after
            listed.append((start, sum(state)))
    return listed, None


def source(rows: list[list[Part]], state: list[int], reps: int, flat: bool) -> str:
    kind = "row" if flat else "round"
    lines = [f"  {kind} {n}: {' sm '.join(p.text() for p in row)}" for n, row in enumerate(rows, 1)]
    # The row that places the markers is worked the other way in flat work.
    places = " pm ".join(f"k{have}" for have in (state[::-1] if flat else state))
    first = [f"  {kind}: {places}"] * (len(state) > 1)
    starts = " starts ws" if first and flat else ""
    return "\n".join([
        'pattern "Cloth"', f"motif m{starts}{'' if flat else ' round'}", *lines,
        f"piece a {'flat' if flat else 'round'}", f"  cast on {sum(state)}", *first,
        f"  work m x{reps}", "  bind off", "",
    ])  # fmt: skip


numbers = st.integers(0, 4)
pairs = st.tuples(numbers, numbers).filter(any)
units = st.tuples(st.integers(1, 3), st.integers(0, 3))


@st.composite
def parts(draw: st.DrawFn) -> Part:
    return Part(draw(pairs), draw(st.none() | units), draw(st.tuples(numbers, numbers)))


@st.composite
def even_parts(draw: st.DrawFn) -> Part:
    """A part that adds or drops the same whenever it is worked."""
    before, after = draw(pairs), draw(st.tuples(numbers, numbers))
    return Part(before, (1, 1), after)


def compare(rows: list[list[Part]], state: list[int], reps: int, flat: bool) -> None:
    checked = check(source(rows, state, reps, flat))
    listed, fails = unrolled(rows, state, reps, flat)
    first = 1 if len(state) > 1 else 0  # the row that places the markers
    found = [p for p in checked.problems if p.is_error and p.rule != "never-bound-off"]
    if len(rows) % 2 and reps > 1 and flat:
        found = [p for p in found if p.rule != "side-flip"]
    if fails is None:
        assert not found, (found, source(rows, state, reps, flat))
        assert counts(checked)[first:] == listed
    else:
        repeat, index, rule = fails
        number = 1 + first + repeat * len(rows) + index
        findings = [f for f in checked.walks[0].findings if f.rule in
                    ("count-short", "count-over", "fill-uneven")]  # fmt: skip
        assert findings, source(rows, state, reps, flat)
        earliest = min(findings, key=lambda f: f.row_number)
        assert (earliest.row_number, earliest.rule) == (number, rule), source(
            rows, state, reps, flat
        )
        assert counts(checked)[first : number - 1] == listed


@given(st.lists(parts().map(lambda p: [p]), min_size=1, max_size=4), st.integers(0, 40),
       st.integers(1, 9), st.booleans())  # fmt: skip
def test_any_rows(rows: list[list[Part]], start: int, reps: int, flat: bool) -> None:
    compare(rows, [start], reps, flat)


@given(st.lists(even_parts().map(lambda p: [p]), min_size=1, max_size=4), st.integers(0, 60),
       st.integers(1, 20), st.booleans())  # fmt: skip
def test_rows_that_add_evenly(rows: list[list[Part]], start: int, reps: int, flat: bool) -> None:
    compare(rows, [start], reps, flat)


@settings(max_examples=40)
@given(st.data(), st.integers(2, 4), st.integers(1, 4), st.integers(1, 8), st.booleans())
def test_rows_between_markers(
    data: st.DataObject, segments: int, length: int, reps: int, flat: bool
) -> None:
    rows = [[data.draw(even_parts()) for _ in range(segments)] for _ in range(length)]
    state = [data.draw(st.integers(4, 30)) for _ in range(segments)]
    compare(rows, state, reps, flat)


@given(units, st.integers(1, 200), st.integers(1, 12))
def test_rows_that_multiply(unit: tuple[int, int], start: int, reps: int) -> None:
    part = Part((0, 0), unit, (0, 0))
    compare([[part], [Part((0, 0), (1, 1), (0, 0))]], [start], reps, False)


# --- as far as one likes ---------------------------------------------------------------------

GROWING = """pattern "Shawl"
motif wedge
  row 1: k2 yo * k1 * yo k2
  row 2: knit
piece shawl flat
  cast on 10
  work wedge x{reps}
  bind off
"""


@pytest.mark.parametrize("reps", [1, 2, 3, 8, 1000, 1_000_000, 400_000_000])
def test_growth_by_formula(reps: int) -> None:
    checked = check(GROWING.format(reps=reps))
    assert not checked.problems
    (walk,) = checked.walks
    assert walk.rows == 2 * reps and walk.widest == 10 + 2 * reps
    last = list(walk.listed(first=2 * reps - 1))
    assert [(r.row, r.start, r.end, r.side) for r in last] == [
        (2 * reps - 1, 8 + 2 * reps, 10 + 2 * reps, "rs"),
        (2 * reps, 10 + 2 * reps, 10 + 2 * reps, "ws"),
    ]


@pytest.mark.parametrize("cast_on", [12, 10_000_000, 1_000_000_000])
def test_wide_by_formula(cast_on: int) -> None:
    checked = check(
        'pattern "Wide"\nmotif rib over 4n\n  row 1: * k2 p2 *\n  row 2: * k2 p2 *\npiece a flat\n'
        f"  cast on {cast_on}\n  work rib x8\n  bind off\n"
    )
    assert not checked.problems
    assert counts(checked) == [(cast_on, cast_on)] * 16


def test_shrinking_stops_at_the_first_repeat_that_cannot_be() -> None:
    text = GROWING.replace("k2 yo * k1 * yo k2", "k1 ssk * k1 * k2tog k1")
    # From 100,001 stitches: repeat r begins with 100,001 - 2 (r - 1), and 5 are too few for 6.
    checked = check(text.format(reps=1_000_000).replace("cast on 10", "cast on 100001"))
    (finding,) = [f for f in checked.walks[0].findings if f.rule == "count-over"]
    assert finding.repeat + 1 == 49_999 and finding.row_number == 99_997
    assert errors(check(text.format(reps=49_998).replace("cast on 10", "cast on 100001"))) == []


def test_a_claim_that_holds_once_is_caught_in_the_second_repeat() -> None:
    text = GROWING.replace("yo k2", "yo k2 => 12")
    assert errors(check(text.format(reps=1))) == []
    (problem,) = check(text.format(reps=1_000_000)).problems
    assert problem.rule == "claim-wrong" and "14" in problem.message
    assert errors(check(text.replace("=> 12", "=> +2").format(reps=1_000_000))) == []


def seconds(text: str) -> float:
    """The best of some runs: what else the machine does only adds to it."""
    best = 9e9
    for _ in range(5):
        start = time.perf_counter()
        check(text)
        best = min(best, time.perf_counter() - start)
    return best


def test_time_goes_by_the_source_not_by_the_fabric() -> None:
    small = seconds(GROWING.format(reps=8))
    assert seconds(GROWING.format(reps=1_000_000)) < 5 * small
    wide = GROWING.replace("cast on 10", "cast on 10000000")
    assert seconds(wide.format(reps=8)) < 5 * small
    marked = GROWING.replace("work", "row: k5 pm k5\n  row: k5 sm k5\n  work").replace(
        "k2 yo * k1 * yo k2", "* k1 * yo sm yo * k1 *"
    )
    assert errors(check(marked.format(reps=8))) == []
    assert seconds(marked.format(reps=1_000_000)) < 5 * seconds(marked.format(reps=8))


# --- markers ---------------------------------------------------------------------------------


def test_flat_rows_meet_the_markers_from_the_other_end() -> None:
    checked = check(
        'pattern "Cloth"\npiece a flat\n  cast on 20\n  row: k3 pm k5 pm k12\n'
        "  row: p12 sm p5 sm p3\n  row: k3 sm k5 rm k12\n  row: k17 sm k3\n  bind off\n"
    )
    assert errors(checked) == []
    wrong = check(
        'pattern "Cloth"\npiece a flat\n  cast on 20\n  row: k3 pm k5 pm k12\n'
        "  row: p3 sm p5 sm p12\n  bind off\n"
    )
    assert errors(wrong)


def test_rounds_meet_them_in_the_same_order() -> None:
    checked = check(
        'pattern "Cloth"\npiece a round\n  cast on 20\n  round: k3 pm k5 pm k12\n'
        "  round: p3 sm p5 sm p12\n  bind off\n"
    )
    assert errors(checked) == []


@pytest.mark.parametrize("reps", [1, 2, 7, 100_000])
def test_raglan_increases(reps: int) -> None:
    """Eight increases in every second round, two in each of four stretches beside the fronts."""
    seam = "k1 m1r sm m1l k1"
    checked = check(
        'pattern "Yoke"\nmotif raglan\n'
        f"  round 1: k1 m1l * k1 * {seam} * k1 * {seam} * k1 * {seam} * k1 * m1r k1 => +8\n"
        "  round 2: knit\npiece yoke round\n  cast on 80\n"
        "  round: k28 pm k12 pm k28 pm k12\n"
        f"  work raglan x{reps}\n"
        f"  round: k{28 + 2 * reps} sm k{12 + 2 * reps} sm k{28 + 2 * reps} sm k{12 + 2 * reps}\n"
        "  bind off\n"
    )
    assert errors(checked) == []
    assert checked.walks[0].widest == 80 + 8 * reps


def test_raglan_flat_with_unlike_fronts() -> None:
    text = (
        'pattern "Yoke"\nmotif raglan\n'
        "  row 1: * k1 * m1r k1 sm k1 m1l * k1 * m1r k1 sm k1 m1l * k1 *\n  row 2: purl\n"
        "piece yoke flat\n  cast on 50\n  row: k10 pm k25 pm k15\n  row: purl\n  work raglan x{0}\n"
        "  row: k{1} sm k{2} sm k{3}\n  bind off\n"
    )
    for reps in (1, 2, 50):
        assert errors(check(text.format(reps, 10 + reps, 25 + 2 * reps, 15 + reps))) == []
        assert errors(check(text.format(reps, 15 + reps, 25 + 2 * reps, 10 + reps)))


def test_a_row_without_marker_words_leaves_them() -> None:
    text = (
        'pattern "Cloth"\npiece a flat\n  cast on 20\n  row: k5 pm k15\n  rows {0}: {1}\n'
        "  row: {2}\n  bind off\n"
    )
    assert errors(check(text.format(3, "purl", "k15 sm k5"))) == ["count-over"]
    assert errors(check(text.format(3, "purl", "k5 sm k15"))) == []
    assert errors(check(text.format(4, "* k1 p1 *", "k15 sm k5"))) == []
    assert errors(check(text.format(1, "k1 yo * k1 *", "k6 sm k15"))) == ["marker-missed"]


# --- until, for, to --------------------------------------------------------------------------


def until(rows: str, cast_on: int, target: int, over: str = "") -> Checked:
    return check(
        f'pattern "Cap"\nmotif crown{over}\n{rows}piece cap round\n  cast on {cast_on}\n'
        f"  work crown until {target} stitches\n  bind off\n"
    )


EVEN = "  round 1: * k6 k2tog *\n  round 2: knit\n"
WEDGE = "  round 1: k1 ssk * k1 * k2tog k1\n  round 2: knit\n"
HALF = "  round 1: * k2tog *\n  round 2: knit\n"


@pytest.mark.parametrize(("cast_on", "target"), [(96, 12), (20, 6), (1_000_000, 500_000), (10, 8)])
def test_until_evenly(cast_on: int, target: int) -> None:
    checked = until(WEDGE, cast_on, target)
    assert errors(checked) == []
    assert checked.walks[0].rows == cast_on - target
    (last,) = checked.walks[0].listed(first=cast_on - target)
    assert last.end == target


@pytest.mark.parametrize(("cast_on", "target", "repeats"),
                         [(64, 8, 3), (96, 12, 3), (96, 3, 5), (2**29, 2, 28)])  # fmt: skip
def test_until_by_halves(cast_on: int, target: int, repeats: int) -> None:
    checked = until(HALF, cast_on, target)
    assert errors(checked) == [] and checked.walks[0].rows == 2 * repeats


@pytest.mark.parametrize(
    ("rows", "cast_on", "target"),
    [(WEDGE, 21, 8), (HALF, 96, 8), (HALF, 96, 5), (WEDGE, 20, 40), (HALF, 8, 8),
     ("  round 1: knit\n", 20, 10), (WEDGE, 20, 20)],
)  # fmt: skip
def test_until_what_never_comes(rows: str, cast_on: int, target: int) -> None:
    assert errors(until(rows, cast_on, target)) == ["count-unreached"]


def test_until_a_row_does_not_come_out() -> None:
    assert errors(until(EVEN, 24, 8)) == ["fill-uneven"]
    assert errors(until(HALF, 12, 2)) == ["fill-uneven"]


@given(st.integers(1, 60), st.integers(1, 60), st.integers(-4, 4))
def test_until_by_brute_force(cast_on: int, target: int, change: int) -> None:
    if change == 0:
        return
    takes, makes = (1, 1 + change) if change > 0 else (1 - change, 1)
    rows = f"  round 1: {word(takes, makes)} * k1 *\n"
    checked = until(rows, cast_on, target)
    steps, count = 0, cast_on
    while count >= takes and steps < 100:
        count += change
        steps += 1
        if count == target:
            assert errors(checked) == [] and checked.walks[0].rows == steps
            return
        if (target - count) * change < 0:
            break
    assert errors(checked)


@pytest.mark.parametrize("rows", [1, 2, 3, 4, 5, 20, 21, 100_001])
def test_for_rows_stops_inside_the_motif(rows: int) -> None:
    checked = check(
        'pattern "Cloth"\nmotif m\n  row 1: k1 yo * k1 *\n  row 2: purl\n  row 3: * k1 * k2tog\n'
        f"  row 4: purl\npiece a flat\n  cast on 10\n  work m for {rows} rows\n  bind off\n"
    )
    assert errors(checked) == []
    assert checked.walks[0].rows == rows
    (last,) = checked.walks[0].listed(first=rows)
    assert last.end == (11 if rows % 4 in (1, 2) else 10)


@pytest.mark.parametrize(
    ("amount", "rows"),
    [("to 10 cm", 40), ("to 10.4 cm", 40), ("to 10.6 cm", 44), ("to 4 in", 40), ("to length", 80),
     ("to length - 2 rows", 80), ("to length - 4 rows", 76), ("to length - 3 cm", 68),
     ("to length + 2 cm", 88), ("to 100 mm", 40), ("to 0.1 m", 40)],
)  # fmt: skip
def test_to_a_length(amount: str, rows: int) -> None:
    """Four rows are a centimetre, so one motif of four rows is one; the nearest count is taken."""
    checked = check(
        'pattern "Cloth"\n  length 20 cm\n  gauge 20 stitches 40 rows = 10 cm\nmotif m\n'
        "  rows 1, 3: knit\n  rows 2, 4: purl\n"
        f"piece a flat\n  cast on 10\n  work m {amount}\n  bind off\n"
    )
    assert errors(checked) == []
    assert checked.walks[0].rows == rows
    assert checked.walks[0].height == pytest.approx(rows * 2.5)


def test_to_a_length_counts_what_is_there_already() -> None:
    checked = check(
        'pattern "Cloth"\n  gauge 20 stitches 40 rows = 10 cm\nmotif m\n  row 1: knit\n'
        "  row 2: purl\npiece a flat\n  cast on 10\n  rows 30: knit\n  work m to 10 cm\n"
        "  bind off\n"
    )
    assert errors(checked) == [] and checked.walks[0].rows == 40


# --- which rows there are --------------------------------------------------------------------


def bodies(motif: str, work: str = "x1", piece: str = "flat") -> tuple[list[str], list[str]]:
    """The lines (their text) and sides of the rows of a motif worked on 12 stitches."""
    checked = check(f'pattern "Cloth"\n{motif}piece a {piece}\n  cast on 12\n  work m {work}\n'
                    "  bind off\n")  # fmt: skip
    assert errors(checked) == [], checked.problems
    rows = list(checked.walks[0].listed())
    lines = [checked.source.line_text(r.line).split(":")[0].strip() for r in rows]
    return lines, [r.side for r in rows]


@pytest.mark.parametrize(
    ("rows", "expected"),
    [
        ("every ws row: purl\nrow 1: knit\nrow 3: * k2 p1 *\n",
         ["row 1", "every ws row", "row 3", "every ws row"]),
        ("row 1: knit\nrow 2: * p2 k1 *\nrow 3: knit\nrow 5: knit\nevery ws row: purl\n",
         ["row 1", "row 2", "row 3", "every ws row", "row 5", "every ws row"]),
        ("every rs row: knit\nrow 2: purl\nrow 4: * p1 k1 *\n",
         ["every rs row", "row 2", "every rs row", "row 4"]),
        ("every rs row: knit\nevery ws row: purl\n", ["every rs row", "every ws row"]),
        ("every row: knit\n", ["every row"]),
        ("rows 1, 3-4: knit\nrow 2: purl\n",
         ["rows 1, 3-4", "row 2", "rows 1, 3-4", "rows 1, 3-4"]),
        ("row 1: * k1 p1 *\nrow 2: as row 1\n", ["row 1", "row 2"]),
        ("row 2: as row 4\nrow 1: knit\nrow 3: as row 1\nrow 4: purl\n",
         ["row 1", "row 2", "row 3", "row 4"]),
        ("every odd row: knit\nrow 2: purl\nrow 4: purl\n",
         ["every odd row", "row 2", "every odd row", "row 4"]),
    ],
)  # fmt: skip
def test_every_lines(rows: str, expected: list[str]) -> None:
    lines, sides = bodies(f"motif m over 6n\n{rows}")
    assert lines == expected
    assert sides == ["rs", "ws", "rs", "ws", "rs", "ws"][: len(lines)]


def test_every_even_round() -> None:
    lines, sides = bodies(
        "motif m over 6n\nround 1: * k2 p1 *\nround 3: * p2 k1 *\nevery even round: knit\n",
        piece="round",
    )
    assert lines == ["round 1", "every even round", "round 3", "every even round"]
    assert sides == ["rs"] * 4


def test_starts_ws() -> None:
    motif = "motif m over 6n starts ws\nevery ws row: purl\nrow 2: knit\nrow 4: * k2 p1 *\n"
    lines, sides = bodies(motif, piece="flat starts ws")
    assert lines == ["every ws row", "row 2", "every ws row", "row 4"]
    assert sides == ["ws", "rs", "ws", "rs"]
    piece = f'pattern "Cloth"\n{motif}piece a flat\n  cast on 12\n  {{0}}work m x1\n  bind off\n'
    assert errors(check(piece.format(""))) == ["side-flip"]
    assert errors(check(piece.format("row: knit\n  "))) == []


def test_as_row_takes_its_own_strand() -> None:
    checked = check(
        'pattern "Cloth"\nyarn w: 50 g 100 m\nshade a of w\nshade b of w\nstrand A feeds a\n'
        "strand B feeds b\nmotif m over 2n\n  row 1 in A: * k1 p1 *\n  row 2 in B: as row 1\n"
        "piece p flat\n  cast on 12 in A\n  row: * k2tog * => 6\n  row in B: as row 1\n"
        "  row: * kfb *\n  row in A: purl\n  row: as row 3\n  row: knit\n  work m x1\n"
        "  bind off\n"
    )
    assert errors(checked) == []
    strands = [row.strand for row in checked.walks[0].listed()]
    assert strands == [None, "B", None, "A", None, None, "A", "B"]
    assert counts(checked) == [(12, 6), (6, 3), (3, 6), (6, 6), (6, 12), *[(12, 12)] * 3]


def test_rows_of_a_piece_run_on() -> None:
    checked = check(
        'pattern "Cloth"\nmotif m over n\n  row 1: knit\n  row 2: purl\npiece p flat\n'
        "  cast on 12\n  row: knit\n  rows 3: purl\n  rows 5-6: knit\n  row 7: knit\n"
        "  row: purl\n  work m x2\n  row 13: knit\n  bind off\n"
    )
    assert errors(checked) == []
    rows = [(row.row, row.side) for row in checked.walks[0].listed()]
    assert rows == [(n, "rs" if n % 2 else "ws") for n in range(1, 14)]


def test_joining_makes_every_round_a_right_side_row() -> None:
    checked = check(
        'pattern "Cloth"\npiece p flat\n  cast on 12\n  rows 3: knit\n  join round\n'
        "  rounds 3: knit\n  bind off\n"
    )
    assert errors(checked) == []
    assert [row.side for row in checked.walks[0].listed()] == ["rs", "ws", "rs", "rs", "rs", "rs"]


# --- forms -----------------------------------------------------------------------------------


@given(st.integers(1, 8), st.integers(-4, 9), st.integers(0, 4), st.integers(1, 8),
       st.integers(0, 4))  # fmt: skip
def test_a_form_is_proved_or_fails_at_the_smallest_n(
    unit: int, fixed: int, before: int, fill: int, after: int
) -> None:
    if unit + fixed < 1:
        return
    sign = f" {'+' if fixed > 0 else '-'} {abs(fixed)}" if fixed else ""
    steps = " ".join(f"k{n}" for n in (before,) if n) + f" * k{fill} * "
    body = steps + " ".join(f"k{n}" for n in (after,) if n)
    text = (
        f'pattern "Cloth"\nmotif m over {unit}n{sign}\n  row 1: {body}\n  row 2: {body}\n'
        "piece p flat\n  cast on {0}\n  work m x2\n  bind off\n"
    )

    def holds(count: int) -> bool:
        rest = count - before - after
        return rest >= 0 and rest % fill == 0

    fails = next((n for n in range(1, 60) if not holds(unit * n + fixed)), None)
    # Cast on a count of the form on which the rows come out, where there is one.
    good = next((unit * n + fixed for n in range(1, 60) if holds(unit * n + fixed)), unit + fixed)
    checked = check(text.format(good))
    found = {p.rule for p in checked.problems}
    if fails is None:
        assert found <= {"edge-odd-one-out"}
    else:
        assert found & {"form-broken", "fill-uneven", "count-over"}
        broken = [p for p in checked.problems if p.rule == "form-broken"]
        for problem in broken:
            assert f"with n = {fails} " in problem.message, (text, problem.message)


# --- repeats that are not finished ----------------------------------------------------------


@pytest.mark.parametrize(("rows", "row", "repeat"), [(4, 0, 0), (5, 5, 1), (6, 5, 1), (9, 5, 1)])
def test_a_claim_is_wrong_in_the_row_of_the_piece_where_it_is(
    rows: int, row: int, repeat: int
) -> None:
    """Row 1 of four leaves 12 the first time and 14 the second, whether that repeat ends or not."""
    found = (
        check(
            'pattern "Cloth"\nmotif grow over n + 2\n  row 1: k1 yo * k1 * yo k1 => 12\n'
            "  row 2: knit\n  row 3: knit\n  row 4: knit\npiece p flat\n  cast on 10\n"
            f"  work grow for {rows} rows\n  bind off\n"
        )
        .walks[0]
        .findings
    )
    told = [(f.rule, f.row_number, f.repeat, f.numbers) for f in found]
    assert told[:1] == ([("claim-wrong", row, repeat, (12, 14, 12))] if row else [])


def test_a_claim_in_a_row_that_is_worked_two_repeats_at_a_time() -> None:
    """One flat row between markers: each repeat meets them from the other side."""
    found = (
        check(
            'pattern "Cloth"\nmotif grow\n  row 1: k1 yo * k1 * sm * k1 * yo k1 => 12\n'
            "piece p flat\n  cast on 10\n  row: k5 pm k5\n  work grow x7\n  bind off\n"
        )
        .walks[0]
        .findings
    )
    told = [(f.rule, f.row_number, f.repeat, f.numbers) for f in found]
    assert told == [("claim-wrong", 3, 1, (12, 14, 12))]


def test_rows_of_a_walk_are_those_of_its_chunks() -> None:
    """Every chunk is worked whole: its rows are its entries so many times."""
    walk = check(
        'pattern "Cloth"\nmotif m over n\n  row 1: knit\n  row 2: purl\n  row 3: knit\n'
        "  row 4: k1 * p1 *\npiece p flat\n  cast on 10\n  work m for 22 rows\n  bind off\n"
    ).walks[0]
    chunks = [event.chunk for event in walk.events if isinstance(event, Worked)]
    assert [(len(chunk.entries), chunk.reps) for chunk in chunks] == [(4, 5), (2, 1)]
    assert walk.rows == 22
