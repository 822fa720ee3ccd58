"""The slips of a knitter who has only ever read printed patterns, and what is said to each.

Each slip is one line; the snapshot holds the line and what is printed for it. A snapshot is a
claim that the message is true and that the offered line is what the printed phrase means.
"""

from __future__ import annotations

import re
import time
from collections.abc import Callable
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from syrupy.assertion import SnapshotAssertion

from loopwright.check.printing import problem_text
from loopwright.compile import Checked
from loopwright.notation.habits import LOOKED_AT, answer_to
from loopwright.notation.line import reads
from loopwright.notation.parse import parse
from loopwright.notation.rewrite import apply_edits
from loopwright.notation.source import Source
from loopwright.notation.unread import habit_reader
from loopwright.problem import Problem

CheckText = Callable[[str], Checked]
HERE = Path(__file__).parent.parent
RIGHT = sorted([*HERE.parent.glob("examples/*.loop"), *HERE.glob("outside/patterns/**/*.loop")])

# Lines of a piece, by what the slip is about.
PIECE = """
Row 1 (RS): K2, *yo, k2tog; rep from * to end.
K2, *yo, k2tog; rep from * to end
row 1: *k1, p1; rep from *
row 1: *k1, p1; rep from * across
row 1: *k1, p1* rep to last 2 sts, k2
row 1: *k1, p1*; rep between *s to last st, k1
row 1: k3, *yo, k2tog, repeat from * until the last 3 stitches, k3
row 1: *k1, p1; rep from * to last 3 sts, k2
row: *k1, p1; rep from *, end k1
row: *k1, p1; rep from * 3 more times, k2
row: *k1, p1; rep from * once more, k2
row: *k1, p1; rep from * 3 times, k2
row: *k1, p1* 4 times
row: * k1 p1 * x4
Row 1: *K2, [yo, k2tog] twice; rep from * to end of row.
[k1, p1] 4 times
row: [k1, p1] 4 times
row: (k1, p1) 4 times
row: (k1,p1) twice, k3
row: (k1, p1) rep 4 times
row: (k1, p1) to last 2 sts, p2
row: k1, p1 to end
row: k1, p1 rib to end
row 1: k1, yo, (k1, yo, k1) in next st, k2
row 1: {k1 p1} x4
row: 3 (k1 p1)
row: k1 x 4, p1
row: k2, sl 1 wyif, k2
row: k2, sl1 with yarn in front, k2
row: sl 1 pwise wyib, k10
row: slip first stitch, k10
row: sl1p, k10
row: k 2 tog, k10
row: k2 together, k1
row: knit 2 together, k1
row: K 2 TOG TBL, k1
row: sl1, k1, psso, k3
row: SL 1, K2TOG, PSSO, K3
row: sl 1, k1, pass slipped stitch over, k3
row: SKPO, k3
row: m1 left, k3
row: make 1 right, k3
row: inc 1, k3
row: k2, dec 1, k3
row: k5, kf&b, k1fb
row: k2, yf, k2tog
row: k2, yfwd, k2tog
row: k2, yrn, p2tog
row: k2, yon, k2tog
row: k2, wool forward, k2tog
row: yo twice, k2tog
row: tw2r, k4
row: k1-tbl, p1tbl
row: kb1, p1
row: k2p2
row: K1;P1
row: k1 and p1, then k1
row 3: k2, p2.
row: k 4, p 4
row: 4k, 4p
row: knit five stitches, purl 1
row: k4 sts, p4 sts
row: k4 (6, 8), p2
row: place marker, k10, slip marker
pm, k10, slm
row: bind off 3 sts, k to end
row 1: knit across
row 1: knit to end
Knit all sts
K across
row 1: k to last 2 sts, k2
row: k1, p to last st, k1
row 1: p to marker
row: k5, p to marker, sm, k5
row: k to 2 sts before marker, k2tog, sm, k3
row: k2, p2 (240 sts)
row: k2, p2 - 240 sts
row: k2, p2 [240 sts]
row: k2, p2 -> 240
row: k1, m1, k to last st, m1, k1 (2 sts increased)
Row 1 (RS) - k1, p1
Row 1 (WS): k1, p1
Row 2 RS: k1, p1
1st row: k2, p2
First row: k2, p2
Row 1. K2, P2
Row 1 k2 p2
row one: knit
Row1: knit
R1: k2
Rnd 1: knit
Round 1 - k all
Rows 1 and 3: Knit
Rows 1 & 3: k2 p2
Rows 1 to 4: knit.
Row 2 and all WS rows: purl
ws row: purl
all ws rows: Purl.
even rows: purl
every other row: purl
Next row (WS): purl
Next 4 rows: knit
Knit 4 rows
Work 4 rows in garter st
Row 3 with B: k2, p2
With A, row 3: k to end
with A: k all
Row 4: Rep row 2.
row: (k1 p1
row: k1 p1)
row: k2 * k1 p1
row: k2 * k1 p1 * k2 *
row: * k1 (* p1 *) k1 *
Rep rows 1-4 6 times
Repeat Rows 1–4 until piece measures 10"
Rep last 2 rows 5 times more
work woven 8 times
work in woven pattern until piece measures 20 cm
work 20 rows in woven
work even until 20 cm
cast-on 240 sts
CO 240
Cast on 240 stitches.
using A, cast on 240 sts
Cast on 240 sts with A using the long-tail method
cast on 180 (240, 300)
cast on 180, 240, 300
cast on 1,000
BO all sts
Row 9: BO all sts.
Bind off loosely
bind off loosely in pattern
bind off in pattern
cast off
Join in the round, being careful not to twist.
Break yarn and pull through remaining stitches.
Weave in ends.
# a comment
"""

# Lines of the pattern's head and of its yarns.
HEAD = """
pattern Skerry Throw
Title: Skerry Throw
designer: Marit Solheim
note “Read it through first.”
level: beginner
Sizes: S (M, L)
width 10"
width 7 1/2 in
width 7,5 cm
width: 90 cm
width 36 (40, 44) in
Finished size: 36" x 50"
needle: 4,5 mm
4mm needles
US 7
needle US 7
size 8 needles
Needles: US 7 (4.5 mm) circular, 32"
5.00mm needles
20 sts = 4"
gauge: 20 sts and 36 rows
Gauge: 20 sts and 28 rows to 4"
tension: 22 sts x 30 rows = 10 cm square
gauge 20 stiches 30 rows = 10 cm
Materials: wool
Abbreviations: k = knit
Notions: tapestry needle
yarn: worsted wool
yarn shore "Wool" 100 g 200 m
MC: kelp
strand A = kelp
motif woven (multiple of 2 sts + 4)
motif woven 2n + 4
motif woven ovr 2n + 4
motif woven: over 2n + 4
"""


def lines(text: str) -> list[str]:
    return [line for line in text.splitlines() if line.strip()]


IN_PIECE, IN_HEAD = lines(PIECE), lines(HEAD)
SLIPS = [*IN_PIECE, *IN_HEAD]


def source_of(slip: str) -> str:
    """A small pattern with the slip in its fourth line."""
    if slip in IN_HEAD:
        return f'pattern "Cloth"\n  level easy\n  sizes a, b, c\n{slip}\n'
    return f'pattern "Cloth"\n  sizes a, b, c\npiece cloth flat\n  {slip}\n'


OF_WORDS = ("line-unclear", "unknown-word", "unknown-name", "unit-missing")


def said_to(slip: str, check: CheckText) -> list[Problem]:
    """What is said to the slip's words; what the small pattern lacks beside is left out."""
    checked = check(source_of(slip))
    return [
        p
        for p in checked.problems
        if p.rule in OF_WORDS and checked.source.line_column(p.span.start)[0] == 4
    ]


def offered(problem: Problem) -> list[str]:
    """The lines that a problem's help gives, ready to paste."""
    return re.findall(r"^write: (.*)$", problem.help, re.M)


@pytest.mark.parametrize("slip", SLIPS)
def test_slip(slip: str, check: CheckText, snapshot: SnapshotAssertion) -> None:
    source = check(source_of(slip)).source
    text = "\n".join(problem_text(problem, source) for problem in said_to(slip, check))
    fix = any(problem.fix is not None for problem in said_to(slip, check))
    assert f"{text}{'(can be fixed)' if fix else ''}" == snapshot


@pytest.mark.parametrize("slip", SLIPS)
def test_a_slip_gets_one_answer_with_help(slip: str, check: CheckText) -> None:
    (problem,) = said_to(slip, check)
    assert problem.is_error and problem.help


@pytest.mark.parametrize("slip", SLIPS)
def test_case_is_no_matter(slip: str, check: CheckText) -> None:
    def told(text: str) -> tuple[str, list[str]]:
        (problem,) = said_to(text, check)
        return problem.message.lower(), [line.lower() for line in offered(problem)]

    if slip in IN_PIECE:
        assert told(slip.upper()) == told(slip) == told(slip.lower())


@pytest.mark.parametrize("slip", SLIPS)
def test_what_is_offered_can_be_read(slip: str, check: CheckText) -> None:
    for problem in said_to(slip, check):
        for line in offered(problem):
            parsed = parse(Source.of("cloth.loop", line + "\n"))
            assert not parsed.problems and not parsed.recovered
            assert len(parsed.lines) == (0 if line.startswith("--") else 1)


@pytest.mark.parametrize("slip", SLIPS)
def test_a_fix_is_the_offered_line_and_mends_the_slip(slip: str, check: CheckText) -> None:
    text = source_of(slip)
    for problem in said_to(slip, check):
        if problem.fix is None:
            continue
        mended = apply_edits(text, problem.fix.edits)
        line = mended.splitlines()[3].strip()
        assert offered(problem) in ([line], [])
        before = [p.rule for p in check(text).problems]
        after = [p.rule for p in check(mended).problems]
        assert after.count(problem.rule) < before.count(problem.rule)


@pytest.mark.parametrize(
    "slip",
    [
        "row: *k1, p1; rep from * 3 times, k2",  # 3 or 4 in all
        "row: (k1, p1) rep 4 times",
        "row: k2 * k1 p1",  # where does it close?
        "row: k2, yfwd, k2tog",  # an increase, or the yarn moved?
        "row: k1, p1 to end",  # is k1 part of the repeat?
        "Row 1 (WS): k1, p1",  # the motif may start on the wrong side
        "K2, *yo, k2tog; rep from * to end",  # which row is it?
        "row: *k1, p1; rep from * to last 3 sts, k2",  # 3 left, 2 worked
    ],
)
def test_what_print_leaves_open_is_never_fixed(slip: str, check: CheckText) -> None:
    problems = said_to(slip, check)
    assert problems and all(problem.fix is None for problem in problems)


def test_both_readings_are_offered_and_named(check: CheckText) -> None:
    (problem,) = said_to("row: *k1, p1; rep from * 3 times, k2", check)
    assert [re.sub(r"\s*--.*", "", line) for line in offered(problem)] == [
        "row: (k1 p1) x4 k2",
        "row: (k1 p1) x3 k2",
    ]
    assert all(" in all" in line for line in offered(problem))


def test_the_files_own_stitches_are_known(check: CheckText) -> None:
    text = (
        'pattern "Cloth"\nstitch mb "bobble": takes 3, makes 1\npiece cloth flat\n  cast on 20\n'
        "  row: *k2, mb; rep from * to last 3 sts, MB\n  bind off\n"
    )
    (problem,) = [p for p in check(text).problems if p.rule == "line-unclear"]
    assert offered(problem) == ["row: * k2 mb * mb"]


# --- the printed phrase and its meaning, made independently ------------------------------------

# A stitch as print may spell it, what it takes and what it makes.
STITCHES = [
    ("k1", 1, 1), ("K2", 2, 2), ("k 3", 3, 3), ("p1", 1, 1), ("purl 2", 2, 2), ("k2tog", 2, 1),
    ("k 2 tog", 2, 1), ("yo", 0, 1), ("yrn", 0, 1), ("ssk", 2, 1), ("sl 1 wyif", 1, 1),
    ("sl1, k2tog, psso", 3, 1), ("m1 left", 0, 1), ("kf&b", 1, 2), ("p2tog", 2, 1),
]  # fmt: skip
some = st.lists(st.sampled_from(STITCHES), min_size=0, max_size=3)
units = st.lists(st.sampled_from(STITCHES), min_size=1, max_size=4).filter(
    lambda unit: sum(takes for _, takes, _ in unit) > 0
)


def printed(steps: list[tuple[str, int, int]]) -> str:
    return ", ".join(text for text, _, _ in steps)


def counted(steps: list[tuple[str, int, int]]) -> tuple[int, int]:
    return sum(takes for _, takes, _ in steps), sum(makes for _, _, makes in steps)


def sts(count: int) -> str:
    return "last st" if count == 1 else f"last {count} sts"


@st.composite
def phrases(draw: st.DrawFn) -> tuple[str, int, int]:
    """A printed row, and how many stitches it takes and makes by what it says."""
    before, unit, after = draw(some), draw(units), draw(some)
    repeats = draw(st.integers(2, 9))
    (a, b), (c, d), (e, f) = counted(before), counted(unit), counted(after)
    lead = printed(before) + ", " if before else ""
    rest = ", " + printed(after) if after else ""
    inner = printed(unit)
    ways = [
        f"{lead}*{inner}; rep from * {repeats - 1} more time{'s' * (repeats > 2)}{rest}",
        f"{lead}({inner}) {repeats} times{rest}",
        f"{lead}[{inner}] {repeats} times{rest}",
        f"{lead}*{inner}* {repeats} times{rest}",
        f"{lead}*{inner}; repeat from * {repeats} times in all{rest}",
    ]
    if e:
        ways += [
            f"{lead}*{inner}; rep from * to {sts(e)}{rest}",
            f"{lead}*{inner}, repeat from * until the {sts(e)}{rest}",
            f"{lead}*{inner}* to {sts(e)}{rest}",
            f"{lead}[{inner}] to {sts(e)}{rest}",
        ]
    if not after:
        ways += [
            f"{lead}*{inner}; rep from * to end",
            f"{lead}*{inner}; rep from * across",
            f"{lead}*{inner}* to end of row.",
            f"{lead}({inner}) to end",
        ]
    text = draw(st.sampled_from(ways))
    return text, a + repeats * c + e, b + repeats * d + f


@given(phrases(), st.sampled_from(["Row 1:", "Row 1 (RS):", "1st row:", "row 1 -"]))
def test_the_offered_row_counts_to_what_print_says(
    check: CheckText, phrase: tuple[str, int, int], head: str
) -> None:
    text, takes, makes = phrase
    answer = answer_to(f"{head} {text}", habit_reader(Source.of("cloth.loop", "")))
    assert answer is not None and answer.certain
    (line,) = answer.lines
    source = (
        f'pattern "Cloth"\npiece cloth flat\n  cast on {takes}\n  {line} => {makes}\n  bind off\n'
    )
    assert [p.rule for p in check(source).problems if p.is_error] == []


@given(phrases())
def test_a_row_that_print_contradicts_is_not_offered(phrase: tuple[str, int, int]) -> None:
    """“to last 3 sts” where what follows works another number is said, not mended."""
    text, _, _ = phrase
    match = re.search(r"last (?:(\d+) sts|st)\b", text)
    if match is None:
        return
    wrong = text[: match.start()] + f"last {int(match[1] or 1) + 1} sts" + text[match.end() :]
    answer = answer_to(f"row 1: {wrong}", habit_reader(Source.of("cloth.loop", "")))
    assert answer is not None and not answer.lines and "left after the repeat" in answer.message


# --- no false friends ---------------------------------------------------------------------------


def test_right_patterns_hear_nothing_of_it(check: CheckText) -> None:
    assert len(RIGHT) > 40
    for path in RIGHT:
        text = path.read_text("utf-8")
        assert not parse(Source.of(path.name, text)).problems, path.name
        for problem in check(text).problems:
            assert not offered(problem) and problem.rule != "unknown-word", path.name


def test_rows_of_right_patterns_are_not_bent() -> None:
    """Asked about a row that is right, the room has nothing to say, or says the same row."""
    for path in RIGHT:
        text = path.read_text("utf-8")
        reader = habit_reader(Source.of(path.name, text))
        for line in lines(text):
            bare = re.sub(r"\s*--.*", "", line).strip()
            if re.match(r"(?:row|round|every)", bare, re.I) and '"' not in bare:
                answer = answer_to(bare, reader)
                assert answer is None or bare in answer.lines or not answer.certain, (path, line)


def test_a_typing_slip_is_no_habit(check: CheckText) -> None:
    for line, wanted in (
        ("row: k9 k2tgo k9", "k2tog"),
        ("rwo: k9", "row"),
        ("wrok rib x4", "work"),
        ("cats on 20", "cast"),
    ):
        (problem,) = said_to(line, check)
        assert problem.help == f"did you mean “{wanted}”?" and problem.fix is not None


# --- any text at all -------------------------------------------------------------------------

PIECES = st.sampled_from(
    ["k1", "p", "*", "(", ")", "[", "]", "rep from *", "to end", "to last 2 sts", "x4", "twice",
     "row", "1", ":", ";", ",", ".", "rs", "(WS)", "sts", "20", "=>", "cast on", "CO", "bind off",
     "work", "until", "in", "A", "-", "–", "“", '"', "7 1/2", "in", "(240, 300)", "gauge", "yarn",
     "needle", "US 7", "more times", "psso", "sl 1", "wyif", "marker", "and", "all", "knit"]
)  # fmt: skip


@given(st.one_of(st.text(max_size=60), st.lists(PIECES, max_size=14).map(" ".join)))
def test_any_line_is_answered_or_passed_on(line: str) -> None:
    line = line.replace("\n", " ").replace("\r", " ")
    answer = answer_to(line, habit_reader(Source.of("cloth.loop", "")))
    if answer is not None:
        assert answer.message and answer.advice
        assert all(text.startswith("--") or reads(text) for text in answer.lines)
        assert not answer.certain or len(answer.lines) == 1


@pytest.mark.parametrize(
    "unit",
    ["k", "1 ", "(", "[(", "* ", "k1 (", "1,", "1 (1, ", "rep ", "to the ", "k1, ", "and then ",
     " ", "k1p1", "row 1 ", "sl 1 ", "cast on ", "work in ", '"', "yarn in ", "1/", "- ",
     "with A, "],
)  # fmt: skip
def test_no_line_takes_long(unit: str) -> None:
    reader = habit_reader(Source.of("cloth.loop", ""))
    for head in ("", "row 1: ", "cast on ", "rep rows ", "width ", "20 sts "):
        line = (head + unit * LOOKED_AT)[:LOOKED_AT]
        start = time.perf_counter()
        answer_to(line, reader)
        assert time.perf_counter() - start < 0.5, head
