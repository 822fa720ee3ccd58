"""Every chart, read back from its SVG, says what the rows of the model say."""

from __future__ import annotations

import re
import sys
from pathlib import Path

import pytest

from loopwright.compile import check_source
from loopwright.count.walk import Walk
from loopwright.model.body import Body, Fill, Group, Stitches
from loopwright.model.pattern import Motif
from loopwright.notation.source import Source
from loopwright.picture.cells import charts_of
from loopwright.picture.chart import Chart
from loopwright.picture.strips import Strip
from loopwright.picture.svg import chart_svg

HERE = Path(__file__).parent
sys.path.insert(0, str(HERE))
from reader import read_chart  # noqa: E402
from turned import compare_turned  # noqa: E402
from worded import as_worked, inner, word_of  # noqa: E402

ROOT = HERE.parent.parent
SOURCES = sorted(
    [
        *(ROOT / "examples").glob("*.loop"),
        *(ROOT / "tests/outside/patterns").rglob("*.loop"),
        *(ROOT / "tests/outside/garments").rglob("*.loop"),
    ]
)


def expected(body: Body, size: int, stretches: list[int]) -> list[str]:
    """A body worked word by word over stretches of stitches between markers."""
    flat: list[tuple[str, int, int] | list[tuple[str, int, int]]] = []

    def spell(steps: tuple[object, ...], into: list) -> None:  # type: ignore[type-arg]
        for step in steps:
            if isinstance(step, Stitches):
                one = (word_of(step), step.stitch.takes, step.stitch.makes)
                into.extend([one] * step.number(size))
            elif isinstance(step, Fill):
                unit: list[tuple[str, int, int]] = []
                spell(step.steps, unit)
                into.append(unit)
            elif isinstance(step, Group) and step.into is not None:
                text = "(" + ", ".join(inner(s) for s in step.steps) + ")"
                makes: list[tuple[str, int, int]] = []
                spell(step.steps, makes)
                into.append((text, step.into.at(size), sum(m for _, _, m in makes)))
            elif isinstance(step, Group):
                for _ in range(step.number(size)):
                    spell(step.steps, into)

    spell(body.steps, flat)
    marked = any(isinstance(x, tuple) and x[0] in ("sm", "rm") for x in flat)
    hanging = list(stretches) if marked else [sum(stretches)]
    words: list[str] = []
    left = hanging.pop(0)
    for at, item in enumerate(flat):
        if isinstance(item, tuple):
            words.append(item[0])
            left -= item[1]
            if item[0] in ("sm", "rm"):
                assert left == 0, "stitches left before a marker"
                left = hanging.pop(0)
            continue
        after = 0
        for later in flat[at + 1 :]:
            if isinstance(later, tuple):
                if later[0] in ("sm", "rm"):
                    break
                after += later[1]
        while left > after:
            words += [word for word, _, _ in item]
            left -= sum(takes for _, takes, _ in item)
    assert left == 0 and not hanging, "the row does not come out"
    return words


def takes_of(words: list[str], body: Body) -> list[int]:
    """The stitches that each stretch of a first row takes, read off the chart's own words."""
    known = {"(": 1}

    def learn(steps: tuple[object, ...]) -> None:
        for step in steps:
            if isinstance(step, Stitches):
                known[word_of(step)] = step.stitch.takes
            elif isinstance(step, Group) and step.into is not None:
                text = "(" + ", ".join(inner(s) for s in step.steps) + ")"
                known[text] = step.into.at(0)
            elif isinstance(step, Group | Fill):
                learn(step.steps)

    learn(body.steps)
    stretches = [0]
    for word in words:
        if word in ("sm", "rm"):
            stretches.append(0)
        else:
            stretches[-1] += known[word]
    return stretches


def charts_in(text: str) -> list[tuple[Chart, Motif, int, list[Walk]]]:
    checked = check_source(Source.of("cloth.loop", text))
    assert not checked.has_errors, checked.problems
    found = []
    for size in range(len(checked.pattern.sizes)):
        charts, left = charts_of(checked.pattern, checked.walks, [size])
        assert not left
        motifs = {motif.name.text: motif for motif in checked.pattern.motifs}
        walks = [walk for walk in checked.walks if walk.size == size]
        found += [(chart, motifs[chart.name], size, walks) for chart in charts]
    return found


@pytest.mark.parametrize("path", SOURCES, ids=lambda p: p.stem)
def test_a_chart_says_what_the_rows_say(path: Path) -> None:
    compare(path.read_text("utf-8"))


def compare(text: str) -> None:
    for chart, motif, size, walks in charts_in(text):
        svg = chart_svg(chart, Strip(0, chart.columns, 0, len(chart.rows)), "c")
        rows = read_chart(svg)
        assert [row.number for row in rows] == list(range(1, len(rows) + 1))
        if chart.turns:
            compare_turned(chart, motif, size, rows, walks)
            continue
        assert not any(row.waiting or row.hook for row in rows)
        assert len(rows) % len(motif.rows) == 0
        sides = {row.number: row.rs for row in rows}
        flat = not all(sides.values()) or len(rows) == 1
        for row in rows:
            if flat and len(rows) > 1:
                assert row.rs == (sides[1] == (row.number % 2 == 1))
        first = as_worked(rows[0])
        stretches = takes_of(first, motif.rows[0].body)
        # Rows before the first that names the markers leave them, and every stitch, where they are.
        named = next((r for r in rows if {"sm", "rm"} & set(as_worked(r))), rows[0])
        if named is not rows[0] and not flat:
            stretches = takes_of(as_worked(named), motif.rows[named.number - 1].body)
        assert sum(stretches) == chart.start
        for row in rows:
            body = motif.rows[(row.number - 1) % len(motif.rows)].body
            words = as_worked(row)
            assert words == expected(body, size, stretches), (chart.name, row.number)
            stretches = _after(words, body, stretches, turned=flat)


def _after(words: list[str], body: Body, stretches: list[int], turned: bool) -> list[int]:
    """What hangs after a row, stretch by stretch, in the order in which the next row meets it."""
    makes: dict[str, int] = {}

    def learn(steps: tuple[object, ...]) -> None:
        for step in steps:
            if isinstance(step, Stitches):
                makes[word_of(step)] = step.stitch.makes
            elif isinstance(step, Group) and step.into is not None:
                text = "(" + ", ".join(inner(s) for s in step.steps) + ")"
                made: list[int] = []
                for each in step.steps:
                    made.append(_makes(each))
                makes[text] = sum(made)
            elif isinstance(step, Group | Fill):
                learn(step.steps)

    learn(body.steps)
    if not any(word in ("sm", "rm", "pm") for word in words):
        out = list(stretches) if len(stretches) > 1 else [sum(makes[w] for w in words)]
        if len(stretches) > 1:
            assert sum(makes[w] for w in words) == sum(stretches)
    else:
        out = [0]
        for word in words:
            if word in ("sm", "pm"):
                out.append(0)
            elif word != "rm":
                out[-1] += makes[word]
    return out[::-1] if turned else out


def _makes(step: object) -> int:
    if isinstance(step, Stitches):
        return step.stitch.makes * step.count[0]
    assert isinstance(step, Group)
    times = 1 if step.times is None else step.times.at(0)
    return sum(_makes(s) for s in step.steps) * times


def test_the_reader_sees_a_wrong_symbol() -> None:
    """The check above can fail: a chart with two stitches changed reads differently."""
    chart, motif, size, _ = charts_in(
        (ROOT / "examples" / "fernbank-scarf.loop").read_text("utf-8")
    )[0]
    svg = chart_svg(chart, Strip(0, chart.columns, 0, len(chart.rows)), "c")
    swapped = re.sub(
        'data-symbol="(yo|sk2p)"',
        lambda m: f'data-symbol="{"sk2p" if m[1] == "yo" else "yo"}"',
        svg,
    )
    rows = read_chart(swapped)
    assert as_worked(rows[0]) != expected(motif.rows[0].body, size, [chart.start])
    assert as_worked(rows[1]) == expected(motif.rows[1].body, size, [chart.start])


RARE = """pattern "Sampler"
  sizes small, large
stitch mb "make bobble": takes 1, makes 1, yarn 5, "(k1, p1, k1) in the next stitch, turn, p3tog"
stitch wrap3 "wrap three": takes 3, makes 3, yarn 4, "slip 3, wrap, knit 3"
{motifs}
piece cloth flat
  cast on {cast}
  work sampler x1
  bind off
"""


@pytest.mark.parametrize(
    ("rows", "cast"),
    [
        ("row 1: rt lt c4f c4b t3f t3b * k1 *\n  row 2: * p1 * rt c4f lt c5b", 26),
        ("row 1: k1 tbl p1 tbl sl1 kwise sl1 kwise wyif sl1 wyif k1b brk brp sl1yo * k1 *\n"
         "  row 2: k1 tbl p1 tbl sl1 kwise sl1 kwise wyif sl1 wyif k1b brk brp sl1yo * p1 *", 12),
        ("row 1: m1 m1p m1l m1r lli rli k1 * k1 * sk2p sssk s2kp\n"
         "  row 2: m1 m1p m1l m1r lli rli k1 * k1 * sk2p sssk cdd", 12),
        ("row 1: ssk ssp skp k4tog p5tog k8tog * k1 * yo10 (k1 yo) x4 k1\n"
         "  row 2: ssk ssp skp k4tog p5tog k8tog * k1 * yo10 (k1 yo) x4 k1", 40),
        ("row 1: bo3 k1 * k1 * co3\n  row 2: k2 drop1 kfb pfb p2tog * k1 * mb wrap3", 14),
        ("row 1: (k1 yo k1) in 1 (k1 p1 k1) in 1 ((k1 yo) x2 k1) in 1 * k1 *\n"
         "  row 2: k3tog k3tog k5tog * p1 *", 10),
        ("row 1: k2 pm * k1 * pm k2\n  row 2: p2 rm * p1 * rm p2", 9),
        ("row 1: k1/2 * k1 * k2 tbl k1 wyif\n  row 2: (p1 k1) x2/3 * p1 *", 12),
        ("row 1: p1 * k1 yo * k2\n  row 2: * k2tog * p1 yo yo k2tog", 9),
    ],
)  # fmt: skip
def test_rare_stitches_on_both_sides(rows: str, cast: int) -> None:
    compare(RARE.format(motifs=f"motif sampler\n  {rows}", cast=cast))
