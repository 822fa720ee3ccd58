"""Bytes and letters at the edge of a text: line ends, marks, tabs, cases, numbers."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from loopwright.compile import Checked, check_source
from loopwright.notation import tree
from loopwright.notation.bounds import MAX_LINE, MAX_NAME, MAX_NESTING, MAX_SIZES
from loopwright.notation.line import split_comment
from loopwright.notation.parse import parse
from loopwright.notation.source import Source

TEXT = (
    'pattern "Cloth"\n  sizes small, large\nmotif rib over 2n\n  row 1: * k1 p1 *\n'
    "  row 2: as row 1\npiece cloth flat\n  cast on 20/24\n  work rib x4\n  row: k21\n  bind off\n"
)

CheckText = Callable[[str], Checked]


def places(checked: Checked) -> list[tuple[str, int, int]]:
    return [(p.rule, *checked.source.line_column(p.span.start)) for p in checked.problems]


@pytest.mark.parametrize(
    "change",
    [
        lambda text: text.replace("\n", "\r\n"),
        lambda text: text.replace("\n", "\r"),
        lambda text: "\ufeff" + text,
        lambda text: "\ufeff" + text.replace("\n", "\r\n"),
        lambda text: text.rstrip("\n"),
        lambda text: text.replace("\n", "   \n"),
        lambda text: text.upper().replace("RIB", "rib").replace("CLOTH", "cloth"),
        lambda text: text.replace(" x4", " ×4"),
        lambda text: text.replace(":", " :\t").replace("\t", "", 1),
        lambda text: text.replace(" rib x4", "\u00a0rib\u00a0x4"),
    ],
    ids=["crlf", "cr", "bom", "bom-crlf", "no-last-end", "trailing", "upper", "times", "tab",
         "nbsp"],
)  # fmt: skip
def test_same_reading(change: Callable[[str], str], check: CheckText) -> None:
    plain, changed = check(TEXT), check(change(TEXT))
    assert [p[0] for p in places(plain)] == ["count-over", "count-short"]
    assert [p[:2] for p in places(changed)] == [p[:2] for p in places(plain)]
    assert [w.rows for w in changed.walks] == [w.rows for w in plain.walks]


def test_tabs_count_as_one_column(check: CheckText) -> None:
    checked = check(TEXT.replace("  row: k21", "\t\trow:\tk21"))
    assert places(checked)[0] == ("count-over", 9, 8)


@pytest.mark.parametrize(
    ("line", "code", "comment"),
    [
        ("row 1: k2 -- two", "row 1: k2 ", "-- two"),
        ('note "a -- b"', 'note "a -- b"', ""),
        ('note "a -- b" -- c "d -- e"', 'note "a -- b" ', '-- c "d -- e"'),
        ("-- all", "", "-- all"),
        ('note "open -- end', 'note "open -- end', ""),
        ("work a to length - 2 rows", "work a to length - 2 rows", ""),
        ("work a to length --2 rows", "work a to length ", "--2 rows"),
        ('"" -- x', '"" ', "-- x"),
        ("---", "", "---"),
    ],
)
def test_split_comment(line: str, code: str, comment: str) -> None:
    assert split_comment(line) == (code, comment)


@given(st.text('ab"- ', max_size=30))
def test_split_comment_loses_nothing(line: str) -> None:
    code, comment = split_comment(line)
    assert code + comment == line
    assert code.count('"') % 2 == 0 or not comment


def statement(line: str) -> tree.Statement:
    parsed = parse(Source.of("cloth.loop", line))
    assert not parsed.problems, parsed.problems
    return parsed.lines[0].statement


@pytest.mark.parametrize(
    ("text", "values"),
    [("7", (7,)), ("7.5", (7.5,)), ("7½", (7.5,)), ("½", (0.5,)), ("180/240/300", (180, 240, 300)),
     ("7½/8¼/9", (7.5, 8.25, 9)), ("1⅓", (4 / 3,)), ("0", (0,)), ("007", (7,))],
)  # fmt: skip
def test_numbers(text: str, values: tuple[float, ...]) -> None:
    line = statement(f"width {text} cm")
    assert isinstance(line, tree.MeasureLine)
    assert line.quantity.values == pytest.approx(values)
    assert line.quantity.mm(0) == pytest.approx(values[0] * 10)


@pytest.mark.parametrize(
    ("unit", "mm"),
    [("mm", 1), ("cm", 10), ("in", 25.4), ("inch", 25.4), ("inches", 25.4), ("m", 1000),
     ("metres", 1000), ("meters", 1000), ("yd", 914.4), ("yards", 914.4), ("IN", 25.4)],
)  # fmt: skip
def test_units(unit: str, mm: float) -> None:
    for space in ("", " "):
        line = statement(f"width 2{space}{unit}")
        assert isinstance(line, tree.MeasureLine) and line.quantity.mm() == pytest.approx(2 * mm)


def test_names_keep_their_case_and_words_do_not() -> None:
    motif = statement("MOTIF WoVen OVER 2N + 4 STARTS WS")
    assert isinstance(motif, tree.MotifLine)
    assert motif.name.text == "WoVen" and motif.name.key == "woven" and motif.starts_ws
    assert motif.form is not None and (motif.form.unit, motif.form.fixed) == (2, 4)
    row = statement("ROW 3 IN Kelp: K2 SL1 WYIF C4F")
    assert isinstance(row, tree.RowLine) and row.strand is not None and row.strand.text == "Kelp"
    assert isinstance(row.body, tree.Steps)
    assert [step.text for step in row.body.steps if isinstance(step, tree.Word)] == [
        "k2", "sl1", "c4f",
    ]  # fmt: skip


def test_names_are_looked_up_whatever_their_case(check: CheckText) -> None:
    text = TEXT.replace("work rib", "work RIB").replace("row: k21", "row: * k1 *")
    assert not check(text).problems


@pytest.mark.parametrize(
    "name",
    [
        "Åse",
        "käse",
        "réseau",
        "шарф",
        "毛糸",
        "a-b",
        "a_b",
        "x2",
        "n",
        "row",
        "knit",
        "in",
        "cm",
        "k2tog",
        "rs",
        "x",
    ],
)
def test_names_of_many_kinds(name: str, check: CheckText) -> None:
    """A word of the notation may also be a name where a name stands."""
    text = TEXT.replace("motif rib", f"motif {name}").replace("work rib", f"work {name}")
    checked = check(text.replace("row: k21", "row: * k1 *"))
    assert not checked.problems, checked.problems
    assert checked.pattern.motifs[0].name.text == name


@pytest.mark.parametrize(
    "form", ["2n", "2n + 4", "2n+4", "2N+4", "n", "n + 1", "2n - 1", "2n − 1", "12"]
)
def test_forms(form: str) -> None:
    line = statement(f"motif a over {form}")
    assert isinstance(line, tree.MotifLine) and line.form is not None
    said = str(line.form).replace("−", "-").replace(" ", "")
    assert said == form.lower().replace("−", "-").replace(" ", "")


def test_five_broken_lines_give_five_problems(check: CheckText) -> None:
    lines = ["width = 2 cm", "motif rib ovr 2n", "row 1: * k1", "cast 20", "work rib"]
    for count in range(1, 6):
        checked = check('pattern "Cloth"\n' + "\n".join(lines[:count]) + "\n")
        unclear = [p for p in checked.problems if p.rule == "line-unclear"]
        assert len(unclear) == count and checked.recovered
        assert [checked.source.line_column(p.span.start)[0] for p in unclear] == list(
            range(2, 2 + count)
        )


def test_a_recovered_source_is_not_walked(check: CheckText) -> None:
    checked = check(TEXT.replace("row: k21", "row: k21 ("))
    assert checked.recovered and not checked.walks and not checked.proofs
    assert [p.rule for p in checked.problems] == ["line-unclear"]


def test_bounds_are_said(check: CheckText) -> None:
    long = "k1 " * (MAX_LINE // 3 + 1)
    deep = "(" * (MAX_NESTING + 1) + "k1" + ")" * (MAX_NESTING + 1)
    for line, bound in ((long, MAX_LINE), (deep, MAX_NESTING)):
        problems = check(TEXT.replace("k21", line)).problems
        assert [p.rule for p in problems] == ["number-too-big"]
        assert f"{bound:,}" in problems[0].message
    just = "(" * MAX_NESTING + "k1" + ")" * MAX_NESTING
    assert not check(TEXT.replace("k21", f"{just} * k1 *")).problems
    named = check(TEXT.replace("rib", "r" * (MAX_NAME + 1)))
    assert {p.rule for p in named.problems} >= {"number-too-big"}
    sizes = ", ".join(f"s{n}" for n in range(MAX_SIZES + 1))
    many = check(TEXT.replace("small, large", sizes).replace("20/24", "20").replace("k21", "k20"))
    assert [p.rule for p in many.problems] == ["number-too-big"]


def test_many_unreadable_lines_are_given_up(check: CheckText) -> None:
    checked = check("@@@\n" * 5000)
    assert len(checked.problems) == 102  # a hundred and one, and that the rest was left
    assert "5,001" in checked.problems[-1].message or "5,000" in checked.problems[-1].message


@given(st.text(max_size=200))
def test_reading_never_raises(text: str) -> None:
    check_source(Source.of("cloth.loop", text))


WORDS = st.sampled_from(
    [
        "pattern", "piece", "motif", "row", "rows", "every", "ws", "cast on", "bind off", "work",
        "until", "to", "length", "x2", "in", "=>", "+", "-", "2", "2n", ":", ",", "over", "as",
        "knit", "sm", "pm", "rm", "k1", "p1", "yo", "k2tog", "1/2", "cm", "stitches", "gauge",
        "=", "A", "is", "spent", "*", "(", ")", '"a"', "--",
    ]
)  # fmt: skip


@given(st.lists(st.lists(WORDS, max_size=8).map(" ".join), max_size=8).map("\n".join))
def test_reading_words_in_any_order_never_raises(text: str) -> None:
    check_source(Source.of("cloth.loop", text))


def test_line_and_column_of_every_offset() -> None:
    source = Source.of("cloth.loop", "ab\n\ncd")
    assert [source.line_column(at) for at in range(7)] == [
        (1, 1), (1, 2), (1, 3), (2, 1), (3, 1), (3, 2), (3, 3),
    ]  # fmt: skip
    assert [source.line_text(line) for line in (1, 2, 3)] == ["ab", "", "cd"]
