"""The words of rows: the whole text of small sources, and repeats that are never off by one."""

from __future__ import annotations

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from loopwright.compile import check_source
from loopwright.edition.numbers import in_words, sized
from loopwright.edition.text import render_text
from loopwright.edition.voice import Voice
from loopwright.edition.words import make_document
from loopwright.notation.source import Source


def text_of(source: str, **options: str) -> str:
    checked = check_source(Source.of("test.loop", source))
    assert not checked.has_errors, checked.problems
    return render_text(make_document(checked.pattern, checked.walks, **options))


def flat(*lines: str, cast_on: str = "20", head: str = "", kind: str = "flat") -> str:
    body = "".join(f"  {line}\n" for line in lines)
    return f'pattern "P"\n{head}piece cloth {kind}\n  cast on {cast_on}\n{body}  bind off\n'


def motif(over: str, *rows: str) -> str:
    return f"motif m over {over}\n" + "".join(f"  {row}\n" for row in rows)


CASES = {
    "fill to the last stitches": flat("row: k2 * p1 k1 * k2"),
    "fill to the end": flat("row: * k2 p2 *"),
    "one stitch": flat("row: k2 * p1 * k1"),
    "equal rows joined": flat("row: knit", "row: knit", "rows 2: knit"),
    "different rows not joined": flat("row: knit", "row: purl", "row: knit"),
    "groups": flat("row: (k1 p1) x5 ((k1 p1) x2 k1) x2"),
    "all into one": flat("row: (k1 yo k1) in 1 k19", cast_on="20"),
    "increases change the count": flat("row: k1 yo * k1 * yo k1", "row: purl"),
    "binding off inside": flat("row: bo3 k17"),
    "cables and twists": flat("row: c4f c4b rt lt k8"),
    "modifiers": flat("row: sl1 wyif k1 tbl k2tog tbl * k1 *"),
    "several words": flat("row: kfb2 k2tog3 * k1 *"),
    "sizes": 'pattern "P"\n  sizes a, b, c\npiece cloth flat\n  cast on 20/24/28\n'
    "  row: k2/3/4 * k1 p1 * k2/3/4\n  rows 2/4/6: knit\n  row: purl\n  bind off\n",
    "motif repeated": flat("work m x8", head=motif("n", "row 1: knit", "row 2: purl")),
    "motif twice": flat(
        "work m x2", "rows 2: knit", "work m x3", head=motif("n", "row 1: knit", "row 2: purl")
    ),
    "motif for rows": flat(
        "work m for 7 rows",
        head=motif("2n", "row 1: knit", "row 2: purl", "row 3: * k1 p1 *", "row 4: purl"),
    ),
    "motif of one row": flat("work m x9", head=motif("2n", "row 1: * k1 p1 *")),
    "every wrong-side row": flat(
        "work m x3",
        head=motif("2n", "row 1: knit", "row 3: * k1 p1 *", "row 5: knit", "every ws row: purl"),
    ),
    "growing motif": flat(
        "work m x5", head=motif("n + 3", "row 1: k1 yo * k1 * yo k2", "row 2: purl")
    ),
    "in the round": flat(
        "rounds 3: * k2 p2 *",
        "work m until 5 stitches",
        kind="round",
        cast_on="20",
        head=motif("2n", "round 1: * k2tog *", "round 2: knit").replace("over 2n", "round"),
    ),
    "markers": flat(
        "row: k8 pm k4 pm k8",
        "row: purl",
        "row: * k1 * m1r sm k4 sm m1l * k1 *",
        "row: * p1 * sm * p1 * sm p2 * p1 *",
    ),
    "join round": flat("rows 2: knit", "join round", "rounds 4: knit"),
    "own stitch": 'pattern "P"\nstitch mb "make bobble": takes 1, makes 1, "(k1, yo, k1) in next '
    'st"\npiece cloth flat\n  cast on 20\n  row: * k3 mb *\n  bind off\n',
    "two strands": 'pattern "P"\nyarn w: 50 g 100 m\nshade r of w, colour #aa0000\n'
    "shade g of w, colour #00aa00\nstrand A feeds r\nstrand B feeds g\n"
    "piece cloth flat\n  cast on 20 in A by long-tail\n  rows 2 in A: knit\n"
    "  rows 2 in B: knit\n  row in A: knit\n  bind off in A by suspended\n",
    "until spent": 'pattern "P"\n  gauge 20 stitches 28 rows = 10 cm\nyarn w: 50 g 100 m\n'
    "shade r of w\nstrand A feeds r\n"
    + motif("n", "row 1: knit", "row 2: purl")
    + "piece cloth flat\n  cast on 40 in A\n  work m until A is spent, keep 3 rows\n  bind off\n",
}


@pytest.mark.parametrize("name", CASES)
def test_wording(name: str, snapshot: object) -> None:
    """Each snapshot holds the source and the whole text."""
    assert f"{CASES[name]}\n~~~~~~~~\n{text_of(CASES[name])}" == snapshot


def test_all_counts() -> None:
    text = text_of(flat("row: k2 * p1 * k2", "rows 2: knit"), counts="all")
    assert "Row 1 (RS): K2, p to last 2 sts, k2. (20 sts)" in text
    assert "Rows 2–3: Knit. (20 sts)" in text


def test_one_size_alone() -> None:
    source = CASES["sizes"]
    text = text_of(source, size="b")
    assert "Cast on 24 sts." in text
    assert "Row 1 (RS): K3, *k1, p1; rep from * to last 3 sts, k3." in text


@given(
    rows=st.integers(1, 6), before=st.integers(0, 3), reps=st.integers(1, 140),
    part=st.integers(0, 5), after=st.integers(0, 4),
)  # fmt: skip
def test_repeats_are_never_off_by_one(
    rows: int, before: int, reps: int, part: int, after: int
) -> None:
    """A small reader counts the rows that the printed text tells a maker to work."""
    part = part % rows
    lines = [f"row {n + 1}: k{n + 2} * p1 *" for n in range(rows)]
    work = [f"rows {before}: purl"] if before else []
    work.append(f"work m for {rows * reps + part} rounds")
    work += [f"rows {after}: knit"] if after else []
    head = motif("n + 10", *lines).replace("row ", "round ")
    source = flat(*(w.replace("rows", "rounds") for w in work), head=head, kind="round")
    text = text_of(source)
    assert _rows_told(text) == before + rows * reps + part + after


_NUMBER = {in_words(n): n for n in range(1, 100)}


def _rows_told(text: str) -> int:
    """Rows a maker works: labels, and repeats by the rows they name."""
    total = 0
    for line in text.splitlines():
        if found := re.match(r"Rnds? (\d+)(?:–(\d+))?:", line):
            first, last = int(found[1]), int(found[2] or found[1])
            assert first == total + 1, line
            total = last
        elif found := re.match(r"(?:Rep|Work) Rnds? (\d+)(?:–(\d+))?,? (.*?)[.;]", line):
            length = int(found[2] or found[1]) - int(found[1]) + 1
            words = found[3].removesuffix(" more").removesuffix(" more times")
            words = words.removesuffix(" times")
            times = {"once": 1, "twice": 2}.get(words) or _NUMBER.get(words) or int(words)
            total += length * times
            # What follows goes on from here.
    return total


def test_numbers() -> None:
    assert in_words(49) == "forty-nine"
    assert in_words(100) == "100"
    assert sized([180, 240, 300]) == "180 (240, 300)"
    assert sized([4, 4]) == "4"
    assert Voice().repeat(False, 3, 6, [7], "") == "Rep Rows 3–6 seven more times."
    assert Voice().repeat(False, 3, 6, [1, 1], "") == "Rep Rows 3–6 once more."
    assert Voice().repeat(False, 3, 6, [97, 133], "") == "Rep Rows 3–6, 97 (133) more times."
