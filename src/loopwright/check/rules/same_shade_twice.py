"""same-shade-twice: two strands hold the same shade at once."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, in_size
from loopwright.check.rule import Rule
from loopwright.check.yarn_news import TwiceNews
from loopwright.notation.source import Span
from loopwright.problem import WARNING, Label, Problem


def check(context: Context) -> Iterator[Problem]:
    groups: dict[tuple[Span, Span], list[TwiceNews]] = {}
    for news in context.yarn.twice:
        groups.setdefault((news.span, news.label), []).append(news)
    for (span, label), group in groups.items():
        first = group[0]
        rows = (
            f"row {first.first:,}"
            if first.first == first.last
            else f"rows {max(first.first, 1):,} to {first.last:,}"
        )
        yield Problem(
            "same-shade-twice",
            WARNING,
            f"both strands hold {first.shade} at once",
            f"Strands {first.one} and {first.other} both hold {first.shade} in {rows} of "
            f"{first.piece}{in_size(context, first.size)}, so there one cannot be told from the "
            "other.",
            span,
            (Label(label, f"strand {first.one} holds it here"),),
            "change the order of the feeds, or let another shade go between.",
            context.size_names(news.size for news in group),
        )


RULE = Rule(
    name="same-shade-twice",
    severity=WARNING,
    title="two strands hold the same shade at once",
    what="Where two strands take turns, each is to show against the other. The joins of both are "
    "reckoned row by row; here there are rows in which both hold the same shade, so that their "
    "turns vanish.",
    wrong="""pattern "One colour for a while"
  gauge 20 stitches 36 rows = 10 cm in stripe
yarn wool "Worsted": 50 g 100 m
shade kelp "Kelp" of wool, colour #2f5d62
shade foam "Foam" of wool, colour #dfe8e6
strand A feeds half kelp, foam
strand B feeds foam x2
motif stripe over n
  rows 1, 2 in A: knit
  rows 3, 4 in B: knit
piece scarf flat
  cast on 30 in A
  work stripe x40
  bind off in A
""",
    right="""pattern "Always two"
  gauge 20 stitches 36 rows = 10 cm in stripe
yarn wool "Worsted": 50 g 100 m
shade kelp "Kelp" of wool, colour #2f5d62
shade foam "Foam" of wool, colour #dfe8e6
strand A feeds kelp x2
strand B feeds foam x2
motif stripe over n
  rows 1, 2 in A: knit
  rows 3, 4 in B: knit
piece scarf flat
  cast on 30 in A
  work stripe x40
  bind off in A
""",
    check=check,
)
