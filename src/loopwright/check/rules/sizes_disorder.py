"""sizes-disorder: a bigger size with a smaller number."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context
from loopwright.check.rule import Rule
from loopwright.check.size_order import EITHER, order_of_sizes, size_lists
from loopwright.problem import WARNING, Problem

_COUNTS = ("cast-on", "number", "count after the row")


def check(context: Context) -> Iterator[Problem]:
    if len(context.sizes) < 2:
        return
    lists = list(size_lists(context.pattern))
    order, by = order_of_sizes(context, lists)
    # Where a size does not count out, that says which of its numbers is wrong.
    failing = any(not walk.sound for walk in context.walks)
    for one in lists:
        if failing and one.what in _COUNTS:
            continue
        pair = one.disorder(order)
        if pair is None:
            continue
        small, big = (context.sizes[i] for i in pair)
        low, high = (_number(one.values[i]) for i in pair)
        ground = {
            "sizes": "by the order of the sizes",
            "width": "by the stated widths",
            "length": "by the stated lengths",
        }[by]
        mixed = " while other sizes go up" if one.kind == EITHER else ""
        yield Problem(
            "sizes-disorder",
            WARNING,
            "a bigger size has a smaller number",
            f"The {one.what} goes from {low} in size {small} down to {high} in size {big}{mixed}, "
            f"though {big} is the bigger one {ground}.",
            one.span,
            (),
            "look whether two numbers changed places or a digit is wrong: "
            f"{', '.join(f'{context.sizes[i]} {_number(one.values[i])}' for i in order)}.",
            (small, big) if len(context.sizes) > 2 else (),
        )


def _number(value: float) -> str:
    return f"{value:,.0f}" if value == int(value) else f"{value:g}"


RULE = Rule(
    name="sizes-disorder",
    severity=WARNING,
    title="a bigger size has a smaller number",
    what="Cast-ons, measures, rows, repeats and claimed counts grow with the size, so a number "
    "that falls from a size to the next bigger one is mostly a slip of the keys. Which size is "
    "bigger is told by the order of `sizes`, or by the stated widths or lengths where they "
    "contradict fewer lists. Where numbers may rightly go down (stitches and groups within a row, "
    "balls of a shade, `=> -4`, `until 10/8 stitches`) a list that goes down or stays all the way "
    "is left alone and only a mixed one is reported; what is kept or left (`keep 3/2 rows`, `to "
    "length - 4/6 rows`) is never reported.",
    wrong="""pattern "Muddled sizes"
  sizes small, middle, large
piece swatch flat
  cast on 20/42/24
  rows 8: knit
  bind off
""",
    right="""pattern "Sizes in order"
  sizes small, middle, large
piece swatch flat
  cast on 20/22/24
  rows 8: knit
  bind off
""",
    check=check,
)
