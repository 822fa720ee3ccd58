"""yarn-short: the balls of a strand do not last."""

from __future__ import annotations

from collections.abc import Iterator

from loopwright.check.context import Context, count_of, in_size, listed
from loopwright.check.rule import Rule
from loopwright.check.yarn_news import ShortNews
from loopwright.notation.source import Span
from loopwright.problem import ADVICE, WARNING, Problem


def check(context: Context) -> Iterator[Problem]:
    groups: dict[tuple[Span, bool], list[ShortNews]] = {}
    for news in context.yarn.shorts:
        groups.setdefault((news.span, news.certain), []).append(news)
    for (span, certain), group in groups.items():
        first = group[0]
        worst = max(group, key=lambda news: news.missing)
        places = listed(_place(context, news) for news in group)
        range_ = f"± {first.spread * 100:.0f} %, from the {_GROUND[first.ground]}"
        if certain:
            title = f"strand {first.strand} runs out"
            message = (
                f"The last ball of {first.shade}, that strand {first.strand} feeds on, ends "
                f"{places}. ({range_})"
            )
        else:
            title = f"strand {first.strand} may run out"
            message = (
                f"By the middle figure the balls of strand {first.strand} last, but at the upper "
                f"end of the range ({range_}) the last ball of {first.shade} ends {places}."
            )
        yield Problem(
            "yarn-short",
            WARNING if certain else ADVICE,
            title,
            message,
            span,
            help=_help(context, worst),
            sizes=context.size_names(news.size for news in group),
        )


_GROUND = {"swatch": "weighed swatch", "geometry": "gauge alone: a weighed swatch narrows it"}


def _place(context: Context, news: ShortNews) -> str:
    size = in_size(context, news.size)
    if news.where == "cast-on":
        where = f"in the cast-on of {news.piece}"
    elif news.where == "picking up":
        where = f"where stitches of {news.piece} are picked up"
    elif news.where == "bind-off":
        where = f"in the bind-off of {news.piece}, after {news.stitch:,} of {news.of:,} stitches"
    elif news.where == "row" and news.row is not None:
        where = (
            f"in row {news.row:,} of {news.piece}, after {news.stitch:,} of {news.of:,} stitches"
        )
    else:
        where = f"at the end of {news.piece}"
    return f"{where}{size}: {_metres(news.missing)} are missing"


def _metres(metres: float) -> str:
    return f"{metres:,.0f} m" if metres >= 10 else f"{max(metres, 0.1):.1f} m"


def _help(context: Context, news: ShortNews) -> str:
    ways: list[str] = []
    if news.balls is not None:
        ways.append(f"feed it {count_of(news.balls, 'ball')} more of {news.shade}")
    if news.rows:
        of = f" of {news.motif}" if news.motif else ""
        ways.append(f"work {count_of(news.rows, 'row')} fewer{of}")
    if news.stitches:
        ways.append(f"cast on {count_of(news.stitches, 'stitch')} fewer ({news.cast_on:,} in all)")
    if not ways:
        return "feed the strand more yarn."
    return listed(ways, "or") + in_size(context, news.size) + "."


RULE = Rule(
    name="yarn-short",
    severity=WARNING,
    title="the balls of a strand do not last",
    what="The yarn of every row, edge, end and join is reckoned and held against the balls that a "
    "strand feeds on. It is a warning where they do not last at the middle figure, and advice "
    "where they do not last only at the upper end of its range: 5 % above the figure of a weighed "
    "swatch, 15 % above that of a gauge alone. Fewer rows or stitches are named as a way out only "
    "where two thirds of them at least are left.",
    wrong="""pattern "Too little"
  gauge 20 stitches 28 rows = 10 cm in stockinette
yarn wool "Worsted": 50 g 100 m
shade kelp "Kelp" of wool
strand A feeds kelp
motif plain over n
  row 1: knit
  row 2: purl
piece scarf flat
  cast on 40
  work plain x100
  bind off
""",
    right="""pattern "Enough"
  gauge 20 stitches 28 rows = 10 cm in stockinette
yarn wool "Worsted": 50 g 100 m
shade kelp "Kelp" of wool
strand A feeds kelp x2
motif plain over n
  row 1: knit
  row 2: purl
piece scarf flat
  cast on 40
  work plain x90
  bind off
""",
    check=check,
)
