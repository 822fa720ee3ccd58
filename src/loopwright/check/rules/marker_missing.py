"""marker-missing: a marker is slipped or removed where none hangs."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, count_of
from loopwright.check.neighbours import whose
from loopwright.check.rule import Rule
from loopwright.problem import ERROR, Problem


def check(context: Context) -> Iterator[Problem]:
    for group in context.findings("marker-missing"):
        first = group[0]
        assert first.snag is not None
        hang = first.snag.misfit.segments - 1
        have = "no marker hangs" if hang == 0 else f"only {count_of(hang, 'marker')} hang"
        if hang == 1:
            have = "only 1 marker hangs"
        yield context.problem(
            group,
            "a marker is slipped where none hangs",
            f"{whose(first)} meets a marker here, but {have} on the needle.",
            help="place it in an earlier row with pm, or take this sm or rm out.",
        )


RULE = Rule(
    name="marker-missing",
    severity=ERROR,
    title="a marker is slipped where none hangs",
    what="sm and rm need a marker that an earlier row placed with pm. In flat work the next row "
    "meets the markers in reverse order.",
    wrong="""pattern "No marker"
piece swatch flat
  cast on 20
  row: k10 sm k10
  bind off
""",
    right="""pattern "A marker"
piece swatch flat
  cast on 20
  row: k10 pm k10
  row: k10 sm k10
  bind off
""",
    check=check,
)
