"""Short rows, holders, picking up and joining, against needles made of plain lists."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from loopwright.check.checked import Checked
from loopwright.compile import check_source
from loopwright.notation.source import Source

Check = Callable[[str], Checked]


def piece(*lines: str, kind: str = "flat", cast: str = "cast on 20") -> str:
    return "\n".join(['pattern "P"', f"piece p {kind}", cast, *lines]) + "\n"


def counts(checked: Checked, at: int = 0) -> list[int]:
    return [row.end for row in checked.walks[at].listed()]


def sides(checked: Checked, at: int = 0) -> str:
    return " ".join(row.side for row in checked.walks[at].listed())


def rules(checked: Checked) -> list[str]:
    return [problem.rule for problem in checked.problems]


# --- short rows -----------------------------------------------------------------------------------


class Needles:
    """Two needles as lists of stitch names; the gap is where the last turn but one left off."""

    def __init__(self, count: int) -> None:
        self.left: list[str] = ["o"] * count  # what the row meets first stands first
        self.right: list[str] = []  # what was worked last stands last

    def row(self, works: int, decrease: bool) -> None:
        made = ["x"] * works
        if decrease:
            made.pop()
        before = self.right
        rest = self.left[works:]
        on_right = before + made
        # Turned: the right needle is now the left one, met from its tip.
        self.left = on_right[::-1]
        self.right = rest[::-1]

    @property
    def total(self) -> int:
        return len(self.left) + len(self.right)


@settings(max_examples=120, deadline=None)
@given(
    st.integers(8, 40),
    st.lists(st.tuples(st.integers(0, 100), st.booleans(), st.booleans()), min_size=1, max_size=8),
)
def test_turned_rows_leave_what_lists_leave(count: int, rows: list[tuple[int, bool, bool]]) -> None:
    needles = Needles(count)
    lines, ends = [], []
    for part, decrease, by_end in rows:
        ahead = len(needles.left)
        works = max(2, ahead * part // 100)
        if works > ahead:
            break
        tail = " k2tog turn" if decrease else " k2 turn"
        body = f"* k1 * to last {ahead - works + 2}{tail}" if by_end else f"k{works - 2}{tail}"
        if works == 2 and not by_end:
            body = tail.strip()
        lines.append(f"row: {body}")
        needles.row(works, decrease)
        ends.append(needles.total)
    lines.append(f"row: k{len(needles.left)}")
    ends.append(needles.total)
    needles.row(len(needles.left), False)
    # Behind a whole row every stitch is within reach again.
    lines += [f"row: k{needles.total}", "bind off"]
    ends.append(needles.total)
    checked = check_source(Source.of("p.loop", piece(*lines, cast=f"cast on {count}")))
    assert checked.problems == ()
    assert counts(checked) == ends


def test_a_fill_runs_to_the_gap(check: Check) -> None:
    # A heel of 20: the gap lies behind the stitches made since the turn before the last.
    checked = check(
        piece(
            "row: k11 ssk k1 turn",  # 14 of 20 used, 6 left
            "row: sl1 p3 p2tog p1 turn",  # 13 were made: 7 used, 6 left
            "row: sl1 * k1 * to 1 before gap ssk k1 turn",  # 6 lie before the gap
            "row: sl1 * p1 * to 1 before gap p2tog p1 turn",
            "row: sl1 * k1 * to 1 before gap ssk k1 turn",
            "row: sl1 * p1 * to 1 before gap p2tog p1 turn",
            "row: sl1 * k1 * to 1 before gap ssk k1",
            "row: sl1 * p1 * to 1 before gap p2tog p1",
            "bind off",
        )
    )
    assert checked.problems == ()
    assert counts(checked) == [19, 18, 17, 16, 15, 14, 13, 12]


def test_a_motif_of_turned_rows_is_counted_without_unrolling(check: Check) -> None:
    source = (
        'pattern "P"\nmotif heel\n'
        "  row 1: sl1 * k1 * to 1 before gap ssk k1 turn\n"
        "  row 2: sl1 * p1 * to 1 before gap p2tog p1 turn\n"
        "piece p flat\n  cast on 1000000000\n"
        "  row: k500000001 ssk k1 turn\n  row: sl1 p5 p2tog p1 turn\n"
        "  work heel x100000000\n  leave live\n"
    )
    checked = check(source)
    assert checked.problems == ()
    assert checked.walks[0].rows == 200_000_002
    last = next(checked.walks[0].listed(200_000_002))
    assert last.end == 1_000_000_000 - 2 - 200_000_000


def test_a_motif_of_turned_rows_breaks_where_it_breaks(check: Check) -> None:
    source = (
        'pattern "P"\nmotif heel\n'
        "  row 1: sl1 * k1 * to 1 before gap ssk k1 turn\n"
        "  row 2: sl1 * p1 * to 1 before gap p2tog p1 turn\n"
        "piece p flat\n  cast on 20\n"
        "  row: k11 ssk k1 turn\n  row: sl1 p3 p2tog p1 turn\n"
        "  work heel x4\n  leave live\n"
    )
    # 6 stitches wait at each side; every repeat eats 2 of them: the fourth finds none.
    (problem, *_) = check(source).problems
    assert problem.rule in ("count-over", "fill-unclear")
    assert "repeat 4" in problem.message or problem.rule == "fill-unclear"


def test_a_turn_in_the_round_changes_sides(check: Check) -> None:
    checked = check(
        piece("round: knit", "row: k8 turn", "row: sl1 p7 turn", "round: knit", "bind off",
              kind="round")
    )  # fmt: skip
    assert checked.problems == ()
    assert sides(checked) == "rs rs ws rs"
    assert counts(checked) == [20, 20, 20, 20]


def test_a_round_that_runs_back_must_turn(check: Check) -> None:
    checked = check(piece("row: k8 turn", "round: k8", "bind off", kind="round"))
    assert rules(checked) == ["stitches-unreached"]


def test_markers_are_met_again_after_a_turn(check: Check) -> None:
    checked = check(
        piece(
            "row: k10 pm k10",
            "row: p12 turn",  # the marker hangs after 10
            "row: k2 sm k10",
            "row: * p1 * sm * p1 *",
            "bind off",
        )
    )
    # The row that passes the marker names none, and moves no stitch.
    assert checked.problems == ()


@pytest.mark.parametrize(
    ("row", "detail"),
    [
        ("row: * k1 * turn", "must say where it stops"),
        ("row: k5 turn k5", "belongs to the next row"),
        ("row: * k1 * to 2 before gap turn", "No gap lies ahead"),
        ("row: (k1 turn) x2", "belongs to the next row"),
        ("row: * k1 turn *", "turn stands inside"),
    ],
)
def test_a_turn_that_cannot_be_counted(check: Check, row: str, detail: str) -> None:
    checked = check(piece(row, "row: knit", "bind off"))
    assert checked.problems[0].rule == "fill-unclear"
    assert detail in checked.problems[0].message


def test_what_a_turn_leaves_behind_is_said(check: Check) -> None:
    checked = check(piece("row: k15 turn", "bind off"))
    assert rules(checked) == ["stitches-unreached"]
    assert "5 stitches lie behind the last turn" in checked.problems[0].message


def test_a_place_passed_already(check: Check) -> None:
    checked = check(piece("row: k12 * k1 * to last 10 turn", "row: knit", "bind off"))
    assert rules(checked) == ["count-over"]


# --- holders --------------------------------------------------------------------------------------


MITTEN = """pattern "Mitten"
  sizes child, adult
piece hand round
  cast on 32/40
  rounds 10: * k1 p1 *
  round: k12/14 hold 8/12 as thumb co8/12 * k1 * => 32/40
  rounds 20: knit
  bind off
piece thumb round
  take thumb
  pick up 8/12 along upper edge
  rounds 12: knit
  bind off
"""


def test_held_stitches_are_taken_by_another_piece(check: Check) -> None:
    checked = check(MITTEN)
    assert checked.problems == ()
    thumbs = [w for w in checked.walks if w.piece.name.key == "thumb"]
    assert [next(w.listed()).start for w in thumbs] == [16, 24]


def test_stitches_never_taken_are_said_with_their_row_and_sizes(check: Check) -> None:
    checked = check(MITTEN[: MITTEN.index("piece thumb")])
    (problem,) = checked.problems
    assert problem.rule == "never-bound-off"
    assert "8 stitches" in problem.message and "after row 11 of “hand”" in problem.message
    assert problem.sizes == ()


def test_a_row_takes_stitches_back(check: Check) -> None:
    checked = check(
        piece(
            "row: k5 hold 10 as front k5 => 10",
            "rows 3: knit",
            "row: k5 take front k10 k5 => 20",
            "bind off",
        )
    )
    assert checked.problems == ()
    assert counts(checked) == [10, 10, 10, 10, 20]


def test_a_line_holds_the_stitches_the_next_row_meets(check: Check) -> None:
    checked = check(
        piece(
            "row: k5 pm k15",  # the way back meets 15, then the marker, then 5
            "hold 17 as right",
            "row: p3",
            "bind off",
            "take right",
            "row: k17",
            "bind off",
        )
    )
    assert checked.problems == ()


def test_hold_all_and_take_again(check: Check) -> None:
    checked = check(piece("rows 2: knit", "hold all as rest", "take rest", "row: k20", "bind off"))
    assert checked.problems == ()


def test_too_many_held(check: Check) -> None:
    checked = check(piece("hold 21 as rest", "row: knit", "bind off", "take rest"))
    assert rules(checked) == ["count-over"]
    assert "21 stitches are to go onto the holder, but 20 stitches lie ahead" in (
        checked.problems[0].message
    )


def test_a_row_that_holds_is_worked_once(check: Check) -> None:
    checked = check(piece("rows 2: hold 5 as t k15", "bind off", cast="cast on 20"))
    assert rules(checked) == ["holder-full"]


# --- more stitches, pieces joined -----------------------------------------------------------------


def test_pieces_are_joined(check: Check) -> None:
    source = (
        'pattern "Vest"\n'
        'piece front flat\n  cast on 30\n  rows 4: knit\n  leave live "joined"\n'
        "piece back flat\n  cast on 34\n  rows 4: knit\n  leave live\n"
        "piece yoke round\n  join front, back\n  round: knit => 64\n  bind off\n"
    )
    assert check(source).problems == ()


def test_a_piece_further_down_cannot_be_joined(check: Check) -> None:
    source = (
        'pattern "Vest"\n'
        "piece yoke round\n  join front\n  round: knit\n  bind off\n"
        "piece front flat\n  cast on 30\n  rows 4: knit\n  leave live\n"
    )
    (problem,) = check(source).problems
    assert problem.rule == "holder-empty" and "further down" in problem.message


def test_more_stitches_come_at_the_end_of_the_row(check: Check) -> None:
    checked = check(
        piece(
            "row: k10 pm k10",
            "cast on 4 more by backward loop",  # behind the row just worked: met first
            "row: p14 sm p10 => 24",
            "pick up 6 along right edge",
            "row: k16 sm k14 => 30",
            "bind off",
        )
    )
    assert checked.problems == ()


def test_picking_up_begins_a_piece(check: Check) -> None:
    source = (
        'pattern "Band"\npiece band flat\n  pick up 84 along neck edge\n'
        "  rows 6: * k2 p2 *\n  bind off\n"
    )
    assert check(source).problems == ()


def test_round_and_back(check: Check) -> None:
    checked = check(
        piece("row: k5 pm k15", "join round", "round: k5 sm k15", "leave round",
              "row: k5 sm k15", "row: p15 sm p5", "bind off")
    )  # fmt: skip
    assert checked.problems == ()
    assert sides(checked) == "rs rs rs ws"


def test_live_stitches_name_where_they_came_from(check: Check) -> None:
    checked = check(piece("row: k18 kfb k1 => 21", "hold 5 as tip", "cast on 3 more"))
    texts = [problem.message for problem in checked.problems]
    assert any(
        "19 stitches of “p” are left on the needle: 20 were cast on, 3 were taken from holders or "
        "picked up, 5 were put onto holders and 1 was made in the rows." in text
        for text in texts
    ), texts


def test_a_cast_on_of_more_needs_stitches(check: Check) -> None:
    assert rules(check('pattern "P"\npiece p flat\n  cast on 4 more\n  bind off\n')) == [
        "no-cast-on"
    ]


def test_the_rounds_begin_elsewhere(check: Check) -> None:
    checked = check(
        piece("round: k4 pm k6 pm k10", "begin round after 3", "round: k1 sm k6 sm k13",
              "begin round after 4", "round: k3 sm k14 sm k3", "bind off", kind="round")
    )  # fmt: skip
    assert checked.problems == ()


@pytest.mark.parametrize(("kind", "rule"), [("flat", "out-of-place"), ("round", "count-over")])
def test_the_rounds_cannot_begin_there(check: Check, kind: str, rule: str) -> None:
    checked = check(piece("round: knit", "begin round after 20", "bind off", kind=kind))
    assert rules(checked) == [rule]
