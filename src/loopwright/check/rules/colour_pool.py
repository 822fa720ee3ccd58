"""colour-pool: the stripes of a yarn fall in step with the rows."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, count_of, in_size
from loopwright.check.rule import Rule
from loopwright.check.yarn_news import PoolNews
from loopwright.notation.source import Span
from loopwright.problem import ADVICE, Problem


def check(context: Context) -> Iterator[Problem]:
    groups: dict[tuple[Span, str], list[PoolNews]] = {}
    for news in context.yarn.pools:
        groups.setdefault((news.span, news.strand), []).append(news)
    for (span, _), group in groups.items():
        first = group[0]
        way = "every row" if first.span_rows == 1 else f"every {first.span_rows} rows"
        repeats = "repeat" if first.times == 1 else "repeats"
        yield Problem(
            "colour-pool",
            ADVICE,
            f"the colours of {first.shade} will pool",
            f"One repeat of {first.repeat:g} m is {first.rows:.2f} rows of "
            f"{count_of(first.stitches, 'stitch')}{in_size(context, first.size)}: "
            f"{first.times} {repeats} to {way}, so each colour comes back to its own place and "
            "the colours stand in pools instead of stripes.",
            span,
            help="if that is not wanted, change the width by a few stitches, or take turns with "
            "another ball.",
            sizes=context.size_names(news.size for news in group),
        )


RULE = Rule(
    name="colour-pool",
    severity=ADVICE,
    title="the stripes of a yarn fall in step with the rows",
    what="A self-striping yarn changes colour by the metre. Where a whole number of its repeats is "
    "as long as the way there and back (in the round: the way round), every colour meets itself in "
    "the row above, and instead of stripes there are pools and columns. A shift of less than 4 % "
    "of a repeat still looks so. Some wish for it; then this is as it should be.",
    wrong="""pattern "Pools"
  gauge 20 stitches 40 rows = 10 cm in garter
yarn wool "Worsted": 100 g 200 m
shade tide "Tide" of wool, stripes #2f5d62 1 m, #c9a66b 0.7 m
strand A feeds tide x2
piece scarf flat
  cast on 42
  rows 200: knit
  bind off
""",
    right="""pattern "Stripes"
  gauge 20 stitches 40 rows = 10 cm in garter
yarn wool "Worsted": 100 g 200 m
shade tide "Tide" of wool, stripes #2f5d62 4 m, #c9a66b 5 m
strand A feeds tide x2
piece scarf flat
  cast on 42
  rows 200: knit
  bind off
""",
    check=check,
)
