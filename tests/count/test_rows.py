"""One row: accepted on exactly its count, and on no other."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from loopwright.compile import Checked, check_source
from loopwright.notation.source import Source

# word: (takes, makes), from the trade's own meaning of each.
WORDS = {
    "k1": (1, 1), "k": (1, 1), "p12": (12, 12), "K3": (3, 3), "yo": (0, 1), "yo2": (0, 2),
    "m1l": (0, 1), "m1r": (0, 1), "m1p": (0, 1), "k2tog": (2, 1), "p2tog": (2, 1), "ssk": (2, 1),
    "ssp": (2, 1), "skp": (2, 1), "k3tog": (3, 1), "p3tog": (3, 1), "k5tog": (5, 1),
    "sssk": (3, 1), "sk2p": (3, 1), "s2kp": (3, 1), "cdd": (3, 1), "drop1": (1, 0),
    "drop3": (3, 0), "kfb": (1, 2), "pfb": (1, 2), "kfb3": (3, 6), "sl1": (1, 1),
    "sl2 wyif": (2, 2), "sl1 kwise": (1, 1), "k2 tbl": (2, 2), "c4f": (4, 4), "C6B": (6, 6),
    "c9f": (9, 9), "rt": (2, 2), "lt2": (4, 4), "bo3": (3, 0), "co3": (0, 3), "t3b": (3, 3),
}  # fmt: skip
NAMES = sorted(WORDS)

Built = tuple[str, int, int]  # text, takes, makes


def word(name: str) -> Built:
    return (name, *WORDS[name])


@st.composite
def groups(draw: st.DrawFn, inner: st.SearchStrategy[Built]) -> Built:
    steps = draw(st.lists(inner, min_size=1, max_size=3))
    text = "(" + draw(st.sampled_from([" ", ", "])).join(step[0] for step in steps) + ")"
    takes, makes = sum(s[1] for s in steps), sum(s[2] for s in steps)
    kind = draw(st.sampled_from(["", "x", "in"]))
    if kind == "x":
        times = draw(st.integers(1, 4))
        return f"{text} x{times}", takes * times, makes * times
    if kind == "in":
        into = draw(st.integers(1, 3))
        return f"{text} in {into}", into, makes
    return text, takes, makes


steps = st.recursive(st.sampled_from(NAMES).map(word), groups, max_leaves=6)


@st.composite
def bodies(draw: st.DrawFn) -> Built:
    parts = draw(st.lists(steps, min_size=1, max_size=5))
    return (
        draw(st.sampled_from([" ", ", "])).join(part[0] for part in parts),
        sum(part[1] for part in parts),
        sum(part[2] for part in parts),
    )


def one_row(count: int, body: str) -> Checked:
    text = f'pattern "Row"\npiece a flat\n  cast on {count}\n  row: {body}\n  bind off\n'
    return check_source(Source.of("row.loop", text))


def rules(checked: Checked) -> list[str]:
    """The errors; rows made at random may well be odd knitting."""
    return [problem.rule for problem in checked.problems if problem.is_error]


@given(bodies())
def test_exactly_its_count(body: Built) -> None:
    text, takes, makes = body
    checked = one_row(takes, text)
    assert rules(checked) == []
    (row,) = checked.walks[0].listed()
    assert (row.start, row.end) == (takes, makes)
    assert rules(one_row(takes + 1, text)) == ["count-short"]
    if takes:
        assert rules(one_row(takes - 1, text)) == ["count-over"]


@given(bodies())
def test_one_stitch_added_or_dropped(body: Built) -> None:
    text, takes, _ = body
    assert rules(one_row(takes, f"{text} k1")) == ["count-over"]
    assert rules(one_row(takes + 1, f"{text} k1")) == []
    assert rules(one_row(takes + 2, f"{text} k1")) == ["count-short"]


@given(bodies(), bodies(), bodies(), st.integers(0, 5), st.integers(1, 60))
def test_a_fill(before: Built, unit: Built, after: Built, times: int, extra: int) -> None:
    fixed = before[1] + after[1]
    text = f"{before[0]} * {unit[0]} * {after[0]}"
    if unit[1] == 0:
        assert rules(one_row(fixed + times, text)) == ["fill-unclear"]
        return
    count = fixed + times * unit[1]
    checked = one_row(count, text)
    assert rules(checked) == []
    (row,) = checked.walks[0].listed()
    assert row.end == before[2] + after[2] + times * unit[2]
    wrong = rules(one_row(count + extra, text))
    assert wrong == ([] if extra % unit[1] == 0 else ["fill-uneven"])
    if fixed:
        assert rules(one_row(fixed - 1, text)) == ["count-over"]


@given(bodies(), st.integers(-3, 3))
def test_a_claim(body: Built, off: int) -> None:
    text, takes, makes = body
    change = makes - takes
    if makes + off >= 0:
        found = rules(one_row(takes, f"{text} => {makes + off}"))
        assert found == (["claim-wrong"] if off else [])
    said = change + off
    found = rules(one_row(takes, f"{text} => {said:+}"))
    assert found == (["claim-wrong"] if off else [])


@given(st.lists(st.integers(1, 30), min_size=2, max_size=4), st.integers(1, 5))
def test_size_lists_inside_a_body(counts: list[int], times: int) -> None:
    sizes = ", ".join(f"s{n}" for n in range(len(counts)))
    text = (
        f'pattern "Row"\n  sizes {sizes}\npiece a flat\n'
        f"  cast on {'/'.join(str(c * times + 2 * c) for c in counts)}\n"
        f"  row: k{'/'.join(map(str, counts))} (k{times}) x{'/'.join(map(str, counts))}"
        f" p{'/'.join(map(str, counts))}\n  bind off\n"
    )
    checked = check_source(Source.of("row.loop", text))
    assert rules(checked) == []
    ends = [next(walk.listed()).end for walk in checked.walks]
    assert ends == [c * times + 2 * c for c in counts]


def test_only_the_wrong_size_is_named(check: Callable[[str], Checked]) -> None:
    checked = check(
        'pattern "Row"\n  sizes s, m, l\npiece a flat\n  cast on 20/21/20\n  row: k20\n  bind off\n'
    )
    assert [(p.rule, p.sizes) for p in checked.problems] == [("count-short", ("m",))]


@pytest.mark.parametrize(
    ("body", "count", "ends"),
    [
        ("knit", 7, 7), ("purl", 7, 7), ("PURL", 7, 7), ("(k1 p1) x0 k7", 7, 7),
        ("(k1 yo k1) in 1 k6", 7, 9), ("((k1 p1) x2 k1) x2", 10, 10),
        ("* k1 *", 0, 0), ("* k2tog *", 8, 4), ("* kfb *", 8, 16), ("k2 * p4 *", 2, 2),
        ("(k1 pm k1) x3 k1", 7, 7), ("k3, p4", 7, 7), ("k3 , p4 ,", 7, 7),
    ],
)  # fmt: skip
def test_by_example(body: str, count: int, ends: int) -> None:
    checked = one_row(count, body)
    assert rules(checked) == []
    assert next(checked.walks[0].listed()).end == ends


def test_a_marker_inside_what_is_worked_into_one_stitch() -> None:
    """All of it goes into one stitch, so it cannot be counted as if it took two."""
    found = rules(one_row(2, "(k1 pm k1) in 1 k1"))
    assert found == [] or found == ["fill-unclear"] or "marker" in " ".join(found)


def test_a_marker_inside_a_fill_is_not_passed_over_in_silence() -> None:
    """Nobody can say how many markers hang afterwards."""
    text = (
        'pattern "Row"\npiece a flat\n  cast on 20\n  row: * k5 pm *\n'
        "  row: k5 sm k5 sm k5 sm k5 sm\n  bind off\n"
    )
    problems = check_source(Source.of("row.loop", text)).problems
    # Either the markers of the fill hang and the second row meets them, or line 4 is refused.
    assert not problems or problems[0].span.start < text.index("row: k5 sm")


def test_a_fill_inside_what_is_worked_into_one_stitch_is_refused() -> None:
    assert rules(one_row(5, "(* k1 *) in 1 k4")) != []
