"""The spoken edition: full words only, and read back by a small reader it gives the model's counts.

The reader knows English sentences and nothing of the project: what a sentence takes from the left
needle and puts on the right one.
"""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from loopwright.build import BuildOptions, build_editions
from loopwright.compile import check_source
from loopwright.edition.spoken import in_full
from loopwright.notation.source import Source

EXAMPLES = sorted((Path(__file__).parents[2] / "examples").glob("*.loop"))
# Abbreviations of the printed edition that are no words of their own.
SHORT = re.compile(
    r"\b(k\d+|p\d+|sl\d*|sts?|rep|rnds?|foll|ssk|ssp|skp|yo|k2tog|p2tog|kfb|pfb|wyif|wyib|tbl|pm|sm"
    r"|rm|RS|WS|M1[LR]?|CDD|BO|CO|w&t)\b"
)

ONE = (  # what a sentence says, how many it takes and makes
    (r"(?:repeat the next )?(?:knit|purl) (\d+)$", lambda n: (n, n)),
    (r"slip (\d+)(?: with yarn in (?:front|back))?(?: (?:knit|purl)wise)?$", lambda n: (n, n)),
    (r"(?:knit|purl) (\d+) together(?: through the back loop)?$", lambda n: (n, 1)),
    (r"slip, slip, (?:knit|purl) the 2 slipped stitches together$", lambda: (2, 1)),
    (r"slip 1, knit 1, pass the slipped stitch over$", lambda: (2, 1)),
    (r"slip 1, knit 2 together, pass the slipped stitch over$", lambda: (3, 1)),
    (r"(?:centred double decrease)$", lambda: (3, 1)),
    (r"yarn over$", lambda: (0, 1)),
    (r"make 1(?: left| right| purlwise)?$", lambda: (0, 1)),
    (r"(?:knit|purl) into the front and back of the next stitch$", lambda: (1, 2)),
    (r"(?:place|slip|remove) (?:a|the|\d+) markers?$", lambda: (0, 0)),
    (r"(?:place a marker|turn)$", lambda: (0, 0)),
    (r"cable (\d+) (?:front|back)$", lambda n: (n, n)),
)  # fmt: skip


def one(text: str) -> tuple[int, int]:
    text = text.strip().rstrip(".").lower()
    for pattern, said in ONE:
        match = re.match(pattern, text)
        if match:
            return said(*map(int, match.groups()))  # type: ignore[no-any-return,operator]
    raise AssertionError(f"not understood: {text}")


def run(text: str) -> tuple[int, int]:
    """Steps said in one breath."""
    takes = makes = 0
    rest = text
    while rest:
        # Some steps hold commas themselves: take the longest start that is a step.
        for end in sorted({len(rest), *(m.start() for m in re.finditer(", ", rest))}, reverse=True):
            try:
                a, b = one(rest[:end])
            except AssertionError:
                continue
            takes, makes, rest = takes + a, makes + b, rest[end + 2 :]
            break
        else:
            raise AssertionError(f"not understood: {rest}")
    return takes, makes


def step(text: str, have: int) -> tuple[int, int]:
    """What a line of a row takes and makes, of `have` stitches that are left."""
    low = text.rstrip(".").lower()
    if low in ("knit every stitch", "purl every stitch"):
        return have, have
    match = re.match(r"repeat the next (?:(\d+) stitches|stitch) (\d+) times: (.*)", low)
    if match:
        takes, makes = run(match[3])
        assert takes == int(match[1] or 1), text
        return takes * int(match[2]), makes * int(match[2])
    match = re.match(r"(\d+) times: (.*)", low)
    if match:
        takes, makes = run(match[2])
        return takes * int(match[1]), makes * int(match[1])
    match = re.match(r"(?:knit|purl) (?:until (\d+) (?:is|are) left|to the end)$", low)
    if match:
        number = have - int(match[1] or 0)
        return number, number
    return run(low)


def read_rows(text: str) -> list[tuple[list[str], int]]:
    """Each row of a spoken edition: its steps and the count that is said after it."""
    found = []
    for block in text.split("\n\n"):
        lines = block.splitlines()
        if re.match(r"(Row|Round|Rows|Rounds|Next) ", lines[0]):
            steps = [line for line in lines[1:-1] if not line.startswith("With strand")]
            match = re.match(r"([\d]+) stitch(?:es)?\.$", lines[-1])
            assert match, block
            found.append((steps, int(match[1])))
    return found


def spoken(text: str, size: str | None = None) -> str:
    checked = check_source(Source.of("test.loop", text))
    assert not checked.has_errors, checked.problems
    made, _ = build_editions(checked, BuildOptions(("spoken",), size), "test")
    return made[0][1].decode()


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda p: p.stem)
def test_no_abbreviation_is_left(path: Path) -> None:
    text = spoken(path.read_text("utf-8"))
    body = text.replace("(US", "").replace("UK", "")
    assert not SHORT.findall(body)
    assert "*" not in text and "×" not in text


BODIES = st.lists(
    st.sampled_from(
        ["k3", "p2", "sl1 wyif", "k2tog", "ssk", "yo", "kfb", "m1l", "(k1 yo) x2", "k3tog"]
    ),
    max_size=4,
)
UNITS = st.lists(
    st.sampled_from(["k1", "p2", "sl1 wyif", "k2tog", "yo k2tog"]), min_size=1, max_size=3
)
TAKES = {"k3": 3, "p2": 2, "sl1 wyif": 1, "k2tog": 2, "ssk": 2, "yo": 0, "kfb": 1, "m1l": 0,
         "(k1 yo) x2": 2, "k3tog": 3, "k1": 1, "yo k2tog": 2}  # fmt: skip
MAKES = {"k3": 3, "p2": 2, "sl1 wyif": 1, "k2tog": 1, "ssk": 1, "yo": 1, "kfb": 2, "m1l": 1,
         "(k1 yo) x2": 4, "k3tog": 1, "k1": 1, "yo k2tog": 2}  # fmt: skip


@settings(max_examples=150, deadline=None)
@given(BODIES, UNITS, st.integers(1, 40), BODIES)
def test_what_is_said_counts_out(
    before: list[str], unit: list[str], often: int, after: list[str]
) -> None:
    fixed = sum(TAKES[word] for word in before + after)
    cast = fixed + often * sum(TAKES[word] for word in unit)
    source = (
        f'pattern "P"\npiece p flat\n  cast on {cast}\n'
        f"  row: {' '.join(before)} * {' '.join(unit)} * {' '.join(after)}\n  bind off\n"
    )
    ((steps, said),) = read_rows(spoken(source))
    left, made = cast, 0
    for line in steps:
        takes, makes = step(line, left)
        left, made = left - takes, made + makes
    right = sum(MAKES[w] for w in before + after) + often * sum(MAKES[w] for w in unit)
    assert left == 0
    assert made == said == right


def test_each_size_in_its_turn() -> None:
    source = (
        'pattern "P"\n  sizes small, large\npiece p flat\n  cast on 20/30\n'
        "  row: k2 * p1 k1 * k2\n  bind off\n"
    )
    text = spoken(source)
    assert text.index("Size small.") < text.index("8 times") < text.index("Size large.")
    assert "13 times" in text
    assert "Size small." not in spoken(source, "large")


@pytest.mark.parametrize(
    ("short", "full"),
    [
        ("43¼ in", "43 and a quarter inches"),
        ("1 m", "1 metre"),
        ("½ in", "a half of an inch"),
        ("110 cm / 43¼ in", "110 centimetres, or 43 and a quarter inches"),
        ("20 sts and 36 rows = 10 cm", "20 stitches and 36 rows make 10 centimetres"),
        ("3½ oz", "3 and a half ounces"),
    ],
)
def test_measures_in_full_words(short: str, full: str) -> None:
    assert in_full(short) == full
