"""length-unreached: a length (or a ball's end) that no repeat of the motif leads to."""

from __future__ import annotations

import re
from collections.abc import Iterator

from loopwright.check.context import Context, in_size
from loopwright.check.rule import Rule
from loopwright.count.walk import Finding
from loopwright.problem import ERROR, Problem

_UNIT = re.compile(r"\d\s*(inch|inches|in|yards?|yd|cm|mm|m)\b", re.IGNORECASE)


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
            message, help = _length(context, first, name, where)
        yield context.problem(group, "the length is never reached", message, help=help)


def _length(context: Context, finding: Finding, name: str, where: str) -> tuple[str, str]:
    target, done, one = (_measure(mm, _inches(context, finding)) for mm in finding.numbers)
    message = f"The piece is {done} long here{where} and is to reach {target}"
    if finding.numbers[0] <= finding.numbers[1]:
        past = ", which it has already." if target == done else ": it is past that already."
        return message + past, (
            f"make the rows before it fewer or the length more than {done}, or leave {name} out."
        )
    message += f", but {name} is {one} high: not even half of it fits."
    return message, "make the piece longer, or leave the motif out."


def _inches(context: Context, finding: Finding) -> bool:
    """Whether the length that is worked to was given in inches."""
    said = _UNIT.search(context.pattern.source.slice(finding.span))
    if said is not None:
        return said[1].startswith(("in", "y"))
    length = finding.piece.length or context.pattern.length
    return length is not None and length.unit in ("in", "yd")


def _measure(mm: int, inches: bool) -> str:
    # The walk gives whole millimetres, which is finer than a tenth of an inch.
    return f"{round(mm / 25.4, 1):g} in" if inches else f"{mm / 10:g} cm"


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
