"""Lines in their blocks: what stands under an opening line that could not be read."""

from __future__ import annotations

from loopwright.build import BuildOptions, build_editions
from loopwright.compile import check_source
from loopwright.notation.source import Source

SOURCE = """pattern "P"
  gauge 20 stitches 28 rows = 10 cm
motif m over 2n
  row 1: * k1 p1 *
{piece}
  cast on 20{method}
  row 1: knit
  work m x2
  bind off
"""


def rules(**words: str) -> list[str]:
    text = SOURCE.format(**({"piece": "piece hat flat", "method": ""} | words))
    return [problem.rule for problem in check_source(Source.of("p.loop", text)).problems]


def test_one_slip_in_an_opening_line_gives_one_message() -> None:
    assert rules() == []
    # Its lines are neither out of place in the motif before it nor rows of that motif.
    assert rules(piece="piece hat in the round") == ["line-unclear"]
    assert rules(piece="piece") == ["line-unclear"]
    # With no opening line at all they are out of place, and clash with the motif's row.
    assert "out-of-place" in rules(piece="")


def test_a_method_may_be_named_with_its_article() -> None:
    for method in ("long-tail", "the long-tail", "the long-tail method"):
        text = SOURCE.format(piece="piece hat flat", method=f" by {method}")
        checked = check_source(Source.of("p.loop", text))
        assert not checked.has_errors, checked.problems
        ((_, page),) = build_editions(checked, BuildOptions(kinds=("text",)), "p")[0]
        assert "by the long-tail method" in page.decode("utf-8"), method
