"""Right-to-left words in a page: in their own order, and nothing beside them in another.

`tests/browser/test_direction.py` asks a browser where the letters come to stand.
"""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from loopwright.build import BuildOptions, build_editions
from loopwright.compile import check_source
from loopwright.edition.direction import FSI, PDI, cut, direction, isolator, joined
from loopwright.notation.source import Source

TITLE, DESIGNER, SMALL, LARGE = "צעיף גלים (2024)!", "נועה ברק", "קטן (S)", "בزرگ"
SHADE, YARN, NOTE, HEADING = "כחול (7)", "غزل ناعم", "לסיים עם 2 שורות.", "סיום (2)"
SOURCE = f'''pattern "{TITLE}"
  designer "{DESIGNER}"
  summary "{NOTE}"
  sizes "{SMALL}", "{LARGE}"
  gauge 20 stitches 30 rows = 10 cm on 4 mm
  width 30/40 cm
  notion "{DESIGNER}"
yarn shore "{YARN}": 100 g 2000 m, weight 4, fibre "צמר 80%"
shade kelp "{SHADE}" of shore, colour #2f5d62
strand A feeds kelp
stitch bob "{SHADE}": takes 1, makes 1, yarn 5, "(k1 yo k1) {DESIGNER}"
motif גלים over 2n + 4
  row 1 in A: k2 * bob k1 * k2
  row 2 in A: k2 * p2 * k2
piece גוף flat
  cast on 60/80 in A
  work גלים x4
  section "{HEADING}"
  note "{NOTE}"
  rows 2 in A: knit
  bind off in A
'''
WRITTEN = (TITLE, DESIGNER, SMALL, LARGE, SHADE, YARN, NOTE, HEADING, "צמר 80%")
KINDS = ("html", "text", "spoken", "lesson")


def made(text: str, kinds: tuple[str, ...] = KINDS, large: bool = False) -> dict[str, str]:
    checked = check_source(Source.of("p.loop", text))
    assert not checked.has_errors, checked.problems
    files, failed = build_editions(checked, BuildOptions(kinds, large=large), "p")
    assert not failed
    return {name: data.decode("utf-8") for name, data in files}


@pytest.mark.parametrize("large", [False, True])
def test_each_text_is_set_apart_as_a_whole(large: bool) -> None:
    unseen = r"(?s)<head>.*?</head>|<script.*?</script>|<svg.*?</svg>"
    names = r' (?:data-motif|data-short|id)="[^"]*"'
    for name, text in made(SOURCE, large=large).items():
        page = re.sub(f"{unseen}|{names}", "", text) if name.endswith(".html") else text
        outside = re.sub(f"{FSI}[^{FSI}{PDI}]*{PDI}", "", page)
        assert FSI not in outside and PDI not in outside, name
        assert not re.search("[\u0590-\u06ff]", outside), name
        apart = set(re.findall(f"{FSI}(.*?){PDI}", page))
        assert {TITLE, SMALL} <= apart, name


def test_nothing_is_set_apart_in_what_programs_read() -> None:
    page = made(SOURCE, ("html",))["p.html"]
    head = page[: page.index("</head>")]
    assert TITLE in head and DESIGNER in head
    assert FSI not in head and PDI not in head


def test_elements_have_the_direction_of_their_text() -> None:
    page = made(SOURCE, ("html",))["p.html"]
    assert f'<h1 dir="rtl" data-short="{FSI}{TITLE}{PDI}">' in page
    assert f'<p dir="rtl">{FSI}{DESIGNER}{PDI}</p>' in page
    assert re.search(rf'<li class="note" dir="rtl"[^>]*><span class="text">{FSI}{NOTE}', page)
    assert page.count('<li class="row') and not re.search(r'<li class="row[^>]*dir=', page)


def test_a_pattern_without_such_words_is_left_as_it_is() -> None:
    example = Path(__file__).parents[2].joinpath("examples/skerry-throw.loop").read_text("utf-8")
    assert isolator(example) is None
    for page in made(example).values():
        assert FSI not in page and PDI not in page and "dir=" not in page


def test_what_the_texts_hold_beside_them_is_caught_by_its_letters() -> None:
    apart = isolator(f'pattern "{TITLE}"')
    assert apart is not None
    assert apart(f"by {TITLE}, 3") == f"by {FSI}{TITLE}{PDI}, 3"
    assert apart("was ישן מאוד (3), now 4") == f"was {FSI}ישן מאוד{PDI} (3), now 4"
    assert apart("one, two") == "one, two"


@pytest.mark.parametrize(
    ("text", "found"),
    [("שלום", "rtl"), ("(12) שלום abc", "rtl"), ("abc שלום", ""), ("12!", ""), ("", ""),
     (f"{FSI}שלום (3){PDI}", "rtl"), (f"{FSI}abc שלום{PDI}", ""), (f"by {FSI}שלום{PDI}", ""),
     (f"{FSI}שלום{PDI}, {FSI}שלום{PDI}", ""), (f"{FSI}שלום{PDI} 12 שלום", "rtl")],
)  # fmt: skip
def test_the_direction_of_a_text(text: str, found: str) -> None:
    assert direction(text) == found


def test_what_is_cut_is_closed() -> None:
    assert cut(f"{FSI}שלום{PDI}, {FSI}שלום{PDI}", 5) == f"{FSI}שלו…{PDI}"
    assert cut(f"{FSI}שלום{PDI}, {FSI}שלום{PDI}", 9) == f"{FSI}שלום{PDI}, …"
    assert cut("short", 5) == "short"
    assert cut("longer", 5) == "long…"


def test_many_texts_take_no_longer_than_their_letters() -> None:
    names = "\n".join(f'shade s{n} "כחול {n}"' for n in range(5000))
    apart = isolator(names)
    assert apart is not None
    assert joined(apart("כחול 7, כחול 8" * 2000)) == "כחול 7, כחול 8" * 2000
