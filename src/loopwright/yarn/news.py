"""All that the rules want to know of the yarn, gathered."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from loopwright.check.yarn_news import CloseNews, PoolNews, TwiceNews, YarnNews
from loopwright.count.repeat import Repeater
from loopwright.count.tape import Tapes
from loopwright.count.walk import Walk
from loopwright.model.pattern import Pattern
from loopwright.yarn.colour import sights
from loopwright.yarn.holds import meetings, touching
from loopwright.yarn.report import YarnReport, yarn_report
from loopwright.yarn.short import shorts
from loopwright.yarn.stripes import stripe_falls


def yarn_news(
    pattern: Pattern, walks: Sequence[Walk], tapes: Tapes, repeater: Repeater
) -> YarnNews:
    """What the rules want to know. Empty where the pattern feeds no strand."""
    if not any(strand.feeds for strand in pattern.strands):
        return YarnNews()
    report = yarn_report(pattern, walks)
    return YarnNews(
        tuple(shorts(pattern, report, walks, tapes, repeater)),
        tuple(_twice(pattern, report)),
        tuple(_pools(pattern, report)),
        tuple(_close(pattern, report)),
    )


def _twice(pattern: Pattern, report: YarnReport) -> Iterator[TwiceNews]:
    for size in report.sizes:
        for meeting in meetings(size):
            one, other = meeting.one, meeting.other
            if one.shade == other.shade:
                shade = pattern.shade(one.shade)
                yield TwiceNews(
                    size.size,
                    one.strand,
                    other.strand,
                    shade.name.text if shade is not None else one.shade,
                    pattern.pieces[one.piece].name.text,
                    meeting.first,
                    meeting.last,
                    other.feed.span,
                    one.feed.span,
                )


def _pools(pattern: Pattern, report: YarnReport) -> Iterator[PoolNews]:
    for size in report.sizes:
        for fall in stripe_falls(pattern, size):
            strand = pattern.strand(fall.strand or "")
            if fall.pools is None or strand is None:
                continue
            times, rows = fall.pools
            yield PoolNews(
                size.size,
                strand.name.text,
                fall.shade.name.text,
                fall.shade.span,
                fall.repeat,
                fall.rows,
                fall.stitches,
                times,
                rows,
            )


def _close(pattern: Pattern, report: YarnReport) -> Iterator[CloseNews]:
    seen: set[frozenset[str]] = set()
    for size in report.sizes:
        for a, b in touching(size):
            pair = frozenset((a.shade.key, b.shade.key))
            one, other = pattern.shade(a.shade.key), pattern.shade(b.shade.key)
            if len(pair) < 2 or pair in seen or one is None or other is None:
                continue
            seen.add(pair)
            if one.stripes or other.stripes or not one.colours or not other.colours:
                continue
            close = [s for s in sights(one.colours[0], other.colours[0]) if s.close]
            if close:
                yield CloseNews(
                    one.name.text,
                    other.name.text,
                    tuple(sight.vision for sight in close),
                    min(sight.ratio for sight in close),
                    other.span,
                    one.span,
                )
