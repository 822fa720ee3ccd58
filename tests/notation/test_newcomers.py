"""Slips of a newcomer to the language itself: a right idea in other words, order or marks.

Each slip stands in place of a line of a right pattern. What is offered for it must be the one
message, and the pattern must be right again with the line that is offered.
"""

from __future__ import annotations

import re
from collections.abc import Callable

import pytest

from loopwright.compile import Checked

CheckText = Callable[[str], Checked]

SCARF = """pattern "Cloth"
  designer "Ann Field"
  gauge 20 stitches 28 rows = 10 cm
  needle straight 4 mm
yarn wool "Wool": 100 g 200 m, weight 4
shade red "Red" of wool, colour #aa2222
strand A feeds red x2
motif rib over 4n + 2
  row 1: k2 * p2 k2 *
  row 2: p2 * k2 p2 *
piece scarf flat
  cast on 42 in A
  work rib x10
  bind off
"""

# The slip, and the line that is offered; the line it stands for is the one it is most like.
OFFERED = {
    "pattern": [
        ('title "Cloth"', 'pattern "Cloth"'),
        ('name "Cloth"', 'pattern "Cloth"'),
        ("pattern 'Cloth'", 'pattern "Cloth"'),
        ('Pattern: "Cloth"', 'pattern "Cloth"'),
    ],
    "designer": [
        ('by "Ann Field"', 'designer "Ann Field"'),
        ('author "Ann Field"', 'designer "Ann Field"'),
        ('Design by: "Ann Field"', 'designer "Ann Field"'),
        ("designer 'Ann Field'", 'designer "Ann Field"'),
        ("designer “Ann Field”", 'designer "Ann Field"'),
        ("designer Ann Field", 'designer "Ann Field"'),
        ("finished width 21 cm", "width 21 cm"),
        ("sizes S M L", "sizes S, M, L"),
    ],
    "gauge": [
        ("gauge 20 x 28 = 10 cm", "gauge 20 stitches 28 rows = 10 cm"),
        ("tension 20 × 28 to 10 cm", "gauge 20 stitches 28 rows = 10 cm"),
        ("gauge 20,5 stitches 28 rows = 10 cm", "gauge 20.5 stitches 28 rows = 10 cm"),
        ("gauge 20 sts, 28,5 rows = 10 cm", "gauge 20 stitches 28.5 rows = 10 cm"),
    ],
    "needle": [
        ("needle 4mm straight", "needle straight 4 mm"),
        ("dpns 4 mm", "needle double-pointed 4 mm"),
    ],
    "yarn": [
        ('yarn wool "Wool": 100 g 200 m, worsted', 'yarn wool "Wool": 100 g 200 m, weight 4'),
        ('yarn wool "Wool": 100 g / 200 m, DK', 'yarn wool "Wool": 100 g 200 m, weight 3'),
        ('yarn wool "Wool": 50g = 100m, weight 4', 'yarn wool "Wool": 50g 100m, weight 4'),
    ],
    "strand": [
        ("strand A feeds 2 balls of red", "strand A feeds red x2"),
        ("strand A feeds red 2", "strand A feeds red x2"),
        ("strand A feeds red x 2 balls", "strand A feeds red x2"),
        ("strand A: red x2", "strand A feeds red x2"),
    ],
    "motif": [
        ("motif rib over 4 + 2", "motif rib over 4n + 2"),
        ('motif "rib" over 4n + 2', "motif rib over 4n + 2"),
        ("stitch pattern rib over 4n + 2", "motif rib over 4n + 2"),
        ("motif rib multiple of 4 + 2", "motif rib over 4n + 2"),
    ],
    "row": [
        ("1. k2 * p2 k2 *", "row 1: k2 * p2 k2 *"),
        ("1: k2 * p2 k2 *", "row 1: k2 * p2 k2 *"),
        ("R1: k2 * p2 k2 *", "row 1: k2 * p2 k2 *"),
        ("row one: k2 * p2 k2 *", "row 1: k2 * p2 k2 *"),
        ("1st row: k2 * p2 k2 *", "row 1: k2 * p2 k2 *"),
    ],
    "piece": [
        ("piece scarf in the round", "piece scarf round"),
        ("piece scarf worked in the round", "piece scarf round"),
        ("piece scarf (circular)", "piece scarf round"),
        ("piece scarf worked flat", "piece scarf flat"),
        ("piece scarf knit back and forth", "piece scarf flat"),
        ("piece scarf, flat", "piece scarf flat"),
        ('piece "scarf" flat', "piece scarf flat"),
        ("piece left sleeve flat", "piece left-sleeve flat"),
        ("piece flat scarf", "piece scarf flat"),
        ("flat piece scarf", "piece scarf flat"),
        ("scarf flat", "piece scarf flat"),
        ("part scarf flat", "piece scarf flat"),
    ],
    "cast on": [
        ("cast-on 42 in A", "cast on 42 in A"),
        ("CO 42", "cast on 42"),
        ("cast 42", "cast on 42"),
        ("cast on forty-two stitches in A", "cast on 42 in A"),
        ("cast on 42 with A", "cast on 42 in A"),
        ("using A, cast on 42.", "cast on 42 in A"),
    ],
    "work": [
        ("work rib 10 times", "work rib x10"),
        ("work rib 10x", "work rib x10"),
        ("work rib for 10 repeats", "work rib x10"),
        ("work 10 repeats of rib", "work rib x10"),
        ("repeat rib 3 times", "work rib x3"),
        ("work motif rib x10", "work rib x10"),
        ('work "rib" x10', "work rib x10"),
        ("rib x10", "work rib x10"),
        ("knit rib x10", "work rib x10"),
        ("work in rib for 20 rows", "work rib for 20 rows"),
        ("work rib until 20 cm", "work rib to 20 cm"),
        ("work rib until piece measures 20 cm", "work rib to 20 cm"),
        ("work rib for 20cm", "work rib to 20 cm"),
        ("work rib 20 cm", "work rib to 20 cm"),
        ("work rib to 20,5 cm", "work rib to 20.5 cm"),
    ],
    "bind off": [
        ("cast off", "bind off"),
        ("bind-off.", "bind off"),
        ("BO all stitches", "bind off"),
    ],
}

# Slips that have no one right line: what must be said, and what must not.
TOLD = [
    ("needle straight 4 mm", "needle straight 4", "needle straight 4 mm", "4 cm"),
    ("work rib x10", "rows 4: stockinette", "“row 1: knit” and “row 2: purl”", "takes 1"),
    ("work rib x10", "garter stitch for 4 rows", "write “rows 4: knit”", "note"),
    ("work rib x10", "knit every row", "write “rows 20: knit”", "note"),
    ("work rib x10", "row: k1, p1, ...", "stands between two stars", "parenthesis"),
    ("work rib x10", "row: k1 p1 etc", "stands between two stars", "takes 1"),
    ("row 2: p2 * k2 p2 *", "row 2: knit the knits and purl the purls", "its own stitches", "=>"),
    ("cast on 42 in A", "cast on", "write “cast on 240 in A by long-tail”", "note"),
    ("cast on 42 in A", "cast on for 40 cm", "here “cast on for width”", "note"),
    ("bind off", "bind off 42 stitches", "takes all live stitches", "“by”"),
    ('designer "Ann Field"', '"Ann Field"', 'write: designer "Ann Field"', "cannot be read here"),
]  # fmt: skip


def with_slip(start: str, slip: str) -> str:
    """The scarf with a slip in place of its first line that starts so."""
    return re.sub(rf"^( *){start}\b.*$", lambda m: m[1] + slip, SCARF, count=1, flags=re.M)


CASES = [(start, slip, line) for start, slips in OFFERED.items() for slip, line in slips]


def test_the_scarf_is_right(check: CheckText) -> None:
    assert not check(SCARF).problems


@pytest.mark.parametrize(("start", "slip", "line"), CASES, ids=[case[1] for case in CASES])
def test_the_line_to_write_is_offered_and_nothing_else_is_said(
    start: str, slip: str, line: str, check: CheckText
) -> None:
    text = with_slip(start, slip)
    assert text != SCARF
    checked = check(text)
    errors = [problem for problem in checked.problems if problem.is_error]
    assert len(errors) == 1, [problem.message for problem in errors]
    offered = re.findall(r"^write: (.*)$", errors[0].help, re.M)
    assert offered[0] == line
    # The line can be read, and where there is a fix it is that line.
    assert not [p for p in check(with_slip(start, line)).problems if p.rule == "line-unclear"]
    if errors[0].fix is not None:
        assert offered == [line] and errors[0].fix.title == f"write “{line}”"


@pytest.mark.parametrize(("right", "slip", "said", "not_said"), TOLD, ids=[t[1] for t in TOLD])
def test_what_has_no_one_line_is_told_what_to_do(
    right: str, slip: str, said: str, not_said: str, check: CheckText
) -> None:
    (problem, *_) = [
        p for p in check(SCARF.replace(right, slip, 1)).problems if p.is_error
    ]  # fmt: skip
    told = f"{problem.message} {problem.help}"
    assert said in told and not_said not in told


@pytest.mark.parametrize(
    "slip", ["piece hat flat in the round", "piece the scarf flat", "piece scarf of rows flat"]
)
def test_a_piece_that_may_be_either_gets_no_line_to_write(slip: str, check: CheckText) -> None:
    (problem, *_) = check(with_slip("piece", slip)).problems
    assert problem.is_error and "write:" not in problem.help and problem.fix is None


def test_a_ball_without_units_is_asked_for_each_of_its_own(check: CheckText) -> None:
    checked = check(with_slip("yarn", 'yarn wool "Wool": 100 200, weight 4'))
    told = [p.help for p in checked.problems if p.rule == "unit-missing"]
    assert told == [
        "write 100 g, or another of these units.",
        "write 200 m, or another of these units.",
    ]


def test_a_number_without_its_word_may_be_rows_or_repeats(check: CheckText) -> None:
    (problem, *_) = check(with_slip("work", "work rib for 11")).problems
    assert problem.is_error and problem.fix is None and "write:" not in problem.help


def test_a_fabric_is_no_motif_unless_the_file_has_one_of_that_name(check: CheckText) -> None:
    (problem, *_) = check(with_slip("work", "work stockinette for 10 cm")).problems
    assert "name the motif that is worked" in problem.help


@pytest.mark.parametrize(
    ("needle", "right"),
    [
        ("needle circular 80 cm 4 mm", "needle circular 4 mm 80 cm"),
        ("needle circular 32 in 4.5 mm", "needle circular 4.5 mm 32 in"),
        ("needle double-pointed 20cm 4mm", "needle double-pointed 4mm 20cm"),
    ],
)
def test_a_needle_with_its_length_first_is_turned(
    check: CheckText, needle: str, right: str
) -> None:
    text = SCARF.replace("needle straight 4 mm", needle)
    (problem,) = (p for p in check(text).problems if p.rule == "line-unclear")
    assert problem.title == "the needle is thicker than it is long" and problem.fix is not None
    mended = text
    for edit in sorted(problem.fix.edits, key=lambda edit: -edit.span.start):
        mended = mended[: edit.span.start] + edit.text + mended[edit.span.end :]
    assert mended == SCARF.replace("needle straight 4 mm", right)
    assert [p.rule for p in check(text).problems] == ["line-unclear"], "said once"


def test_a_needle_by_its_length_alone_has_no_thickness(check: CheckText) -> None:
    (problem,) = check(SCARF.replace("straight 4 mm", "circular 80 cm")).problems  # said once
    assert problem.title == "the needle has no thickness"
    assert "as in 4 mm 80 cm" in problem.help
    assert not check(SCARF.replace("straight 4 mm", "straight 100 mm")).has_errors
