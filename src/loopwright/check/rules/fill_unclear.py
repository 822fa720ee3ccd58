"""fill-unclear: a fill of which nobody can say how often it is worked."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context
from loopwright.check.rule import Rule
from loopwright.notation.bounds import MAX_MARKERS
from loopwright.problem import ERROR, Problem

_CASES = {
    "zero": (
        "The unit of this fill takes no stitch from the needle, so it could be repeated for ever.",
        "put at least one stitch that is worked between the stars.",
    ),
    "two": (
        "A second fill follows the first without a marker between them, so nobody can say how "
        "often either is worked.",
        "keep one fill in the row, or part the two by a marker (sm).",
    ),
    "inside": (
        "A marker or a turn stands inside this fill, so each repeat of it would work one.",
        "put it before or behind the fill.",
    ),
    "into": (
        "What is all worked into the same stitch can hold neither a fill nor a marker.",
        "write the stitches out: “(k1 yo k1) in 1”.",
    ),
    "turn": (
        "The row turns before its end, so the fill before the turn must say where it stops.",
        "write “to last 5” behind the fill, or “to 1 before gap”: * k1 * to last 5 turn.",
    ),
    "turned": (
        "The work has been turned before this step, so it belongs to the next row.",
        "write the way back as a row of its own.",
    ),
    "anchor": (
        "These words say where a fill ends, but no fill stands before them.",
        "put the stitches that are repeated up to there between stars: * k1 * to last 5.",
    ),
    "no-gap": (
        "No gap lies ahead in this row: a turn leaves one, and the row after the next meets it.",
        "write “to last 5” for so many before the end, or turn in an earlier row.",
    ),
    "markers": (
        f"More than {MAX_MARKERS:,} markers are worked in this row.",
        "mark the places that shape the piece, no others.",
    ),
}


def check(context: Context) -> Iterator[Problem]:
    for group in context.findings("fill-unclear"):
        message, help = _CASES[group[0].detail]
        yield context.problem(group, "the fill cannot be counted", message, help=help)


RULE = Rule(
    name="fill-unclear",
    severity=ERROR,
    title="the fill cannot be counted",
    what="A row may have one fill, or one between each two markers, and a fill's unit must take "
    "at least one stitch. Otherwise there is no saying how often it is repeated.",
    wrong="""pattern "Two fills"
piece swatch flat
  cast on 20
  row: * k1 * p2 * k1 *
  bind off
""",
    right="""pattern "Two fills and a marker"
piece swatch flat
  cast on 20
  row: k10 pm k10
  row: * k1 * p2 sm p2 * k1 *
  bind off
""",
    check=check,
)
