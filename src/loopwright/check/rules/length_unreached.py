"""length-unreached: a length (or a ball's end) that no repeat of the motif leads to."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, in_size
from loopwright.check.rule import Rule
from loopwright.problem import ERROR, Problem


def check(context: Context) -> Iterator[Problem]:
    for group in context.findings("length-unreached"):
        first = group[0]
        assert first.motif is not None
        name = first.motif.name.text
        where = in_size(context, first.size)
        if first.detail == "strand":
            message = f"No row of “{name}” is worked with that strand, so it never ends by it."
            help = "name a strand that the motif's rows use."
        elif first.detail == "spent":
            message = f"The strand is used up before one repeat of “{name}” is done{where}."
            help = "give the strand more balls, or keep fewer rows."
        else:
            target, done, one = (n / 10 for n in first.numbers)
            message = (
                f"The piece is {done:g} cm long here{where} and is to reach {target:g} cm, but "
                f"“{name}” is {one:g} cm high: not even half of it fits."
            )
            help = "make the piece longer, or leave the motif out."
        yield context.problem(group, "the length is never reached", message, help=help)


RULE = Rule(
    name="length-unreached",
    severity=ERROR,
    title="the length is never reached",
    what="“work … to 40 cm” works whole motifs until the piece, measured from the cast-on, is "
    "that long. Here it is that long already, so there is nothing to work.",
    wrong="""pattern "Long already"
  gauge 20 stitches 40 rows = 10 cm
motif ridge over n
  row 1: knit
  row 2: knit
piece swatch flat
  cast on 20
  rows 80: knit
  work ridge to 10 cm
  bind off
""",
    right="""pattern "On the way"
  gauge 20 stitches 40 rows = 10 cm
motif ridge over n
  row 1: knit
  row 2: knit
piece swatch flat
  cast on 20
  rows 20: knit
  work ridge to 10 cm
  bind off
""",
    check=check,
)
