"""The one layout: it changes nothing but the layout, and laying out again changes nothing."""

from __future__ import annotations

import json
import random
import re
from collections.abc import Callable
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from loopwright.check.registry import all_rules
from loopwright.compile import Checked, check_source
from loopwright.edition.listing import rows_json
from loopwright.notation.format import format_source
from loopwright.notation.parse import parse
from loopwright.notation.source import Source

OUTSIDE = sorted((Path(__file__).parents[1] / "outside" / "patterns").rglob("*.loop"))


def laid_out(text: str) -> str:
    parsed = parse(Source.of("cloth.loop", text))
    assert not parsed.recovered, parsed.problems
    return format_source(parsed)


def rows_of(text: str) -> list[object]:
    """The rows as the checker walks them, without the numbers of their lines."""
    checked = check_source(Source.of("cloth.loop", text))
    listing = json.loads("".join(rows_json(checked)))
    for size in listing["sizes"]:
        for piece in size["pieces"]:
            for row in piece["rows"]:
                del row["line"]
    return [listing, [(p.rule, p.message, p.sizes) for p in checked.problems]]


def comments_of(text: str) -> list[str]:
    return [part.strip() for part in re.findall(r"--\s*([a-z ]+)$", text, re.MULTILINE)]


# --- sources that count out -----------------------------------------------------------------

STITCHES = ("k1", "p1", "k2", "p3", "sl1 wyif", "k1 tbl", "c4f", "(k1 p1) x2", "rt", "sl2 kwise")
TAKES = {"k1": 1, "p1": 1, "k2": 2, "p3": 3, "sl1 wyif": 1, "k1 tbl": 1, "c4f": 4,
         "(k1 p1) x2": 4, "rt": 2, "sl2 kwise": 2}  # fmt: skip


@st.composite
def sources(draw: st.DrawFn) -> str:
    """A valid source with one motif on its form, one piece and one to three sizes."""
    sizes = draw(st.integers(1, 3))
    unit, before, after = (draw(st.lists(st.sampled_from(STITCHES), min_size=low, max_size=4))
                           for low in (1, 0, 0))  # fmt: skip
    takes = [sum(TAKES[word] for word in part) for part in (unit, before, after)]
    row = " ".join([*before, "*", *unit, "*", *after])
    form = f"{takes[0]}n" + (f" + {takes[1] + takes[2]}" if takes[1] + takes[2] else "")
    counts = [takes[0] * n + takes[1] + takes[2] for n in range(2, 2 + sizes)]
    names = draw(st.permutations(["Lap", "XL", "Bed"]))[:sizes]
    strand = draw(st.sampled_from(["", " in Main", " in B2"]))
    lines = ['pattern "A -- B"', "  width 7½ cm", "  gauge 20 stitches 30.5 rows = 10 cm"]
    if sizes > 1:
        lines.append(f"  sizes {', '.join(names)}")
    lines += [
        'yarn Wool "Soft": 50 g 110 m', "shade Kelp of Wool, colour #AbCdEf",
        "strand Main feeds Kelp x2", "strand B2 feeds half Kelp, 20 g Kelp",
        f"motif Panel over {form}", f"  row 1{strand}: {row}", f"  row 2: {row}",
        "piece Cloth flat", f"  cast on {'/'.join(map(str, counts))} in Main by long tail",
        "  rows 2 in B2: k1 * k1 * => +0", f"  work Panel x{draw(st.integers(1, 3))}",
        f"  row: k1 yo * k1 * k1 => {'/'.join(str(c + 1) for c in counts)}", "  bind off",
    ]  # fmt: skip
    return "\n".join(lines) + "\n"


NAMES = re.compile(r"Panel|Main|B2|Cloth|Lap|XL|Bed|Wool|Kelp|long|tail")


def _another(word: str, chance: random.Random) -> str:
    if word == " ":
        return chance.choice([" ", "  ", "\t", "\u00a0"])
    return word.upper() if chance.random() < 0.3 and not NAMES.search(word) else word


def untidy(text: str, seed: int) -> str:
    """The same source, laid out by someone in a hurry; names and strings untouched."""
    chance = random.Random(seed)
    out: list[str] = []
    for line in text.splitlines():
        parts = re.split(r'("[^"]*")', line.strip())
        for index, part in enumerate(parts):
            if not part.startswith('"'):
                words = "".join(_another(word, chance) for word in re.split(r"( )", part))
                spaced = chance.choice([r"\1", r" \1 ", r"\1 "])
                words = re.sub(r" ?([:,*()]) ?", spaced, words)
                if line.strip().startswith("row") and chance.random() < 0.5:
                    words = re.sub(r"\b([kp]\d) (?=[kp]\d)", r"\1, ", words)
                parts[index] = words
        if chance.random() < 0.2:
            out.append(chance.choice(["", "  ", "-- a word", "\t--a word beside"]))
        tail = chance.choice(["", "", "  ", " -- by the way", "--by the way"])
        out.append(chance.choice(["", " ", "\t\t", "      "]) + "".join(parts) + tail)
    return chance.choice(["\n", "\r\n"]).join(out) + chance.choice(["", "\n", "\n\n\n"])


@given(sources())
def test_made_sources_count_out(text: str) -> None:
    problems = check_source(Source.of("cloth.loop", text)).problems
    assert not [p for p in problems if p.is_error]


@given(sources(), st.integers(0, 10**6))
def test_format_is_idempotent_and_keeps_the_meaning(text: str, seed: int) -> None:
    messy = untidy(text, seed)
    once = laid_out(messy)
    assert laid_out(once) == once
    assert rows_of(once) == rows_of(messy)
    assert comments_of(once) == comments_of(messy.replace("\r", ""))
    for name in NAMES.findall(text):
        assert name in once


@given(sources(), st.integers(0, 10**6))
def test_format_forgets_how_it_was_typed(text: str, seed: int) -> None:
    """Without comments, blank lines and commas the layout depends on the source alone."""

    def plain(source: str) -> str:
        return "\n".join(
            line.replace(",", "") for line in laid_out(source).splitlines()
            if line and not line.strip().startswith("--")
        )  # fmt: skip

    messy = re.sub(r"--\s?by the way", "", untidy(text, seed))
    assert plain(messy) == plain(text)


@pytest.mark.parametrize("path", OUTSIDE, ids=lambda path: path.stem)
def test_format_keeps_whole_patterns(path: Path) -> None:
    text = path.read_text("utf-8")
    once = laid_out(text)
    assert laid_out(once) == once
    assert rows_of(once) == rows_of(text)


@pytest.mark.parametrize("rule", all_rules(), ids=lambda rule: rule.name)
def test_the_examples_of_rules_are_laid_out(rule: object) -> None:
    right = rule.right  # type: ignore[attr-defined]
    # They leave out the blank lines before blocks to be short in a terminal.
    assert re.sub(r"\n\n+", "\n", laid_out(right)) == right


UNTIDY = """\
-- first
PATTERN   "Skerry -- Throw"   --   title
 WIDTH 7½ CM
  Sizes Lap,XL


   -- before the yarn
Yarn Shore "Wool":100 g   200 m,weight 4
MOTIF Woven OVER 2n+4
ROW 1 IN B :k2,*sl1 WYIF,K1*,k2=>+0
rows 2 , 4,6 - 8: (K1 P1)X2 * k2TOG yo *
every WS row:as row 1
--- a section in the motif ---
piece Cloth FLAT
cast on 180/240 in A by Long-Tail
work Woven × 3
work Woven to length−2 rows
swatch 44 stitches 40 rows measures 22x11 cm
bind off


-- last
"""

TIDY = """\
-- first
pattern "Skerry -- Throw"  -- title
  width 7½ cm
  sizes Lap, XL

-- before the yarn
yarn Shore "Wool": 100 g 200 m, weight 4

motif Woven over 2n + 4
  row 1 in B: k2, * sl1 wyif, k1 *, k2 => +0
  rows 2, 4, 6-8: (k1 p1) x2 * k2tog yo *
  every ws row: as row 1

--- a section in the motif ---
piece Cloth flat
  cast on 180/240 in A by Long-Tail
  work Woven x3
  work Woven to length - 2 rows
  swatch 44 stitches 40 rows measures 22 x 11 cm
  bind off

  -- last
"""


def test_the_layout_by_example() -> None:
    # The swatch stands out of place here; the layout does not mind.
    assert laid_out(UNTIDY) == TIDY
    assert laid_out(TIDY) == TIDY


@pytest.mark.parametrize(
    ("line", "tidy"),
    [
        ("row 1:k2", "row 1: k2"),
        ("ROW:K2TOG,SSK", "row: k2tog, ssk"),
        ("row: ( k1 ( p1 k1 ) X2 )  in 1", "row: (k1 (p1 k1) x2) in 1"),
        ("row: C4F T3B", "row: c4f t3b"),
        ("row in kelp: k1", "row in kelp: k1"),
        ("row in KELP: k1", "row in KELP: k1"),
        ("row: k1=>180/240", "row: k1 => 180/240"),
        ("row: k1=>− 2", "row: k1 => -2"),
        ("width 90/120/150CM", "width 90/120/150 cm"),
        ("width 48  Inches", "width 48 inches"),
        ("width .5 cm", None),
        ("gauge 20 STS 36 Rows=10cm in We", "gauge 20 sts 36 rows = 10 cm in We"),
        ("gauge 20 sts 36 rows=4IN ON 4½mm", "gauge 20 sts 36 rows = 4 in on 4½ mm"),
        ("shade Foam OF Shore,colour #DFE8E6", "shade Foam of Shore, colour #dfe8e6"),
        ("strand A feeds HALF Kelp,Du x2 , 3g Ti", "strand A feeds half Kelp, Du x2, 3 g Ti"),
        ('sizes "Extra Large",Small', 'sizes "Extra Large", Small'),
        ("needle CIRCULAR 4.5mm 90cm", "needle CIRCULAR 4.5 mm 90 cm"),
    ],
)
def test_one_line(line: str, tidy: str | None) -> None:
    if tidy is None:
        assert parse(Source.of("cloth.loop", line)).recovered
    else:
        assert laid_out(line).strip() == tidy


def test_comments_and_blank_lines_are_kept() -> None:
    text = (
        '-- one\n\n-- two\npattern "x"\n\n  -- three\n\n  width 2 cm  -- four\n\n\n'
        "  -- five\n\npiece a flat\n\n  -- six\n"
    )
    once = laid_out(text)
    assert re.findall(r"-- (\w+)", once) == ["one", "two", "three", "four", "five", "six"]
    assert "\n\n\n" not in once
    for first, second in (("one", "two"), ("three", "width"), ("four", "five"), ("five", "piece")):
        between = once[once.index(first) : once.index(second)]
        assert "\n\n" in between, (first, second)


def test_a_string_keeps_its_dashes_and_stars() -> None:
    line = 'note "Work * k1 -- p1 * as IS"'
    assert laid_out(f"piece a flat\n{line}").splitlines()[-1].strip() == line


def test_only_comments() -> None:
    assert laid_out("") == ""
    assert laid_out("\n\n") == ""
    assert laid_out("--one\n\n\n--two") == "-- one\n\n-- two\n"


def test_format_of_a_source_with_every_statement(check: Callable[[str], Checked]) -> None:
    text = (
        'pattern "x"\n  swatch 44 sts 40 rows weighs 11.6 g in woven\n'
        "  gauge 20 stitches 36 rows = 10 cm in woven on 4.5 mm flat after blocking\n"
        'yarn a: 50 g 100 m, fibre "wool"\nstitch mb: takes 1, makes 1, yarn 5, "how"\n'
        "motif m over n - 2 round\n  rounds 1-2: knit\n"
        "piece p round\n  cast on for width\n  work m until A is spent, keep 3 rounds\n"
        "  work m until 8 sts\n  work m for 20 rounds\n  work m to 4 in\n"
        "  work m to length + 3 cm\n"
        "  join round\n"
    )
    once = laid_out(text)
    assert laid_out(once) == once
    assert [line for line in once.splitlines() if line] == text.splitlines()
