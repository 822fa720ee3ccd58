"""gauge-missing: something is to be measured, and nothing says how."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context
from loopwright.check.rule import Rule
from loopwright.problem import ERROR, WARNING, Problem

_CASES = {
    "gauge": (
        "the gauge is missing",
        "This is measured in centimetres or inches, and nothing says how many stitches and rows "
        "go into them.",
        "add a line to the pattern such as “gauge 20 stitches 28 rows = 10 cm”.",
    ),
    "width": (
        "the width is missing",
        "The cast-on is to follow from the width, and neither the piece nor the pattern has one.",
        "add a line such as “width 90 cm”.",
    ),
    "length": (
        "the length is missing",
        "The piece is worked to its length, and neither the piece nor the pattern has one.",
        "add a line such as “length 120 cm”.",
    ),
    "yarn": (
        "the yarn cannot be reckoned",
        "How far a strand lasts follows from its balls (grams and metres) and from the gauge or a "
        "weighed swatch, and one of them is missing.",
        "give the yarn its grams and metres, the strand its feeds, and the pattern its gauge.",
    ),
}


def check(context: Context) -> Iterator[Problem]:
    # A gauge that cannot be used has been told where it stands.
    spoilt = any(gauge.over.unit is None for gauge in context.pattern.gauges)
    for group in context.findings("gauge-missing"):
        if spoilt and group[0].detail == "gauge":
            continue
        title, message, help = _CASES[group[0].detail]
        yield context.problem(group, title, message, help=help)
    pattern = context.pattern
    measure = pattern.width or pattern.length
    if measure is not None and not pattern.gauges:
        if not any(f.rule == "gauge-missing" for w in context.walks for f in w.findings):
            yield Problem(
                "gauge-missing",
                WARNING,
                "the gauge is missing",
                "The pattern states its size but no gauge, so nobody can tell whether the counts "
                "give that size.",
                measure.span,
                help="add a line such as “gauge 20 stitches 28 rows = 10 cm”.",
            )


RULE = Rule(
    name="gauge-missing",
    severity=ERROR,
    title="a measure that cannot be reckoned",
    what="Widths and lengths become stitches and rows by the gauge. Where a count is to follow "
    "from a measure, the gauge (and the measure) must be there. A stated size without a gauge is "
    "a warning.",
    wrong="""pattern "No gauge"
piece swatch flat
  cast on 20
  work ridge to 10 cm
  bind off
motif ridge over n
  row 1: knit
  row 2: knit
""",
    right="""pattern "Gauge"
  gauge 20 stitches 40 rows = 10 cm
piece swatch flat
  cast on 20
  work ridge to 10 cm
  bind off
motif ridge over n
  row 1: knit
  row 2: knit
""",
    check=check,
)
