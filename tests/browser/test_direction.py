"""Right-to-left words in a real browser: where they come to stand among the others."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise
from pathlib import Path
from typing import Any

import pytest

from loopwright import cli
from loopwright.build import BuildOptions, build_editions
from loopwright.compile import check_source
from loopwright.notation.source import Source

Open = Callable[..., Any]
SIZES = ("קטן", "גדול (XL)", "بزرگ")
SOURCE = f"""pattern "צעיף (2024)!"
  sizes {", ".join(f'"{name}"' for name in SIZES)}
  gauge 20 stitches 30 rows = 10 cm on 4 mm
yarn shore "غزل ناعم": 100 g 2000 m, weight 4
shade kelp "כחול" of shore, colour #2f5d62
strand A feeds kelp
motif m over 2n + 4
  row 1 in A: k2 * k2 * k2
  row 2 in A: purl
piece p flat
  cast on 60/80/100 in A
  work m x4
  note "לסיים עם (2) שורות"
  bind off in A
"""

# The left and right edge of each of some words in the first element that a selector finds.
PLACES = """([selector, words]) => {
  const text = document.querySelector(selector);
  const whole = document.createTreeWalker(text, NodeFilter.SHOW_TEXT);
  const found = {};
  for (let node = whole.nextNode(); node; node = whole.nextNode())
    for (const word of words) {
      const at = node.data.indexOf(word);
      if (at < 0 || word in found) continue;
      const range = document.createRange();
      range.setStart(node, at);
      range.setEnd(node, at + word.length);
      const box = range.getBoundingClientRect();
      found[word] = [box.left, box.right];
    }
  return words.map((word) => found[word]);
}"""


def page_of(text: str) -> str:
    checked = check_source(Source.of("a.loop", text))
    assert not checked.has_errors
    made, failed = build_editions(checked, BuildOptions(kinds=("html",)), "a")
    assert not failed
    return made[0][1].decode("utf-8")


@pytest.mark.parametrize("what", ["chart", "schematic"])
def test_a_drawing_of_its_own_reads_so_too(
    opened: Open, what: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "a.loop"
    path.write_text(SOURCE, "utf-8")
    assert cli.main(["picture", str(path), "--what", what]) == 0
    page = opened(f"<!DOCTYPE html><title>a</title>{capsys.readouterr().out}")
    assert rising(page.evaluate(PLACES, ["svg text", ["!", "(2024)", "צעיף"]]))


def rising(places: list[list[float]]) -> bool:
    return all(a[1] <= b[0] + 0.5 for a, b in pairwise(places))


def test_names_of_sizes_stand_in_the_order_of_their_numbers(opened: Open) -> None:
    page = opened(page_of(SOURCE))
    assert rising(page.evaluate(PLACES, [".sizes", ["קטן", "גדול", "بزرگ"]]))
    assert rising(page.evaluate(PLACES, [".sizes", ["(XL)", "גדול", "بزرگ"]]))
    # The test can fail: without what sets them apart they run into one another.
    page.evaluate("""() => { const all = document.querySelector(".sizes");
        all.textContent = all.textContent.replace(/[\\u2068\\u2069]/g, ""); }""")
    assert not rising(page.evaluate(PLACES, [".sizes", ["קטן", "גדול", "بزرگ"]]))


@pytest.mark.parametrize(
    ("selector", "words"),
    [("h1", ["!", "(2024)", "צעיף"]), ("li.note .text", ["שורות", "(2)", "לסיים"]),
     (".yarn p", ["ناعم", "غزل", "200"])],
)  # fmt: skip
def test_a_text_reads_from_right_to_left_in_itself(
    opened: Open, selector: str, words: list[str]
) -> None:
    assert rising(opened(page_of(SOURCE)).evaluate(PLACES, [selector, words]))
