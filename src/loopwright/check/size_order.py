"""Every size list of a file, and which size is bigger than which."""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import pairwise

from loopwright.check.context import Context
from loopwright.model.pattern import CastOn, Pattern, PieceRow, Row, Work
from loopwright.notation.quantity import Quantity, read_number
from loopwright.notation.source import Span
from loopwright.notation.tree import ForRows, Times, ToLength, UntilSpent, UntilStitches
from loopwright.record import dataclass

_LIST = re.compile(r"[\d.¼½¾⅓⅔⅛⅜⅝⅞]+(?:/[\d.¼½¾⅓⅔⅛⅜⅝⅞]+)+")

GROWS = "grows"
"""A number that is bigger in a bigger size, such as a cast-on."""

EITHER = "either"
"""A number that may as well go down, such as the stitches of one step within a row."""

SHRINKS_TOO = "shrinks too"
"""A number that says nothing about the size, such as the rows kept in hand."""


@dataclass(frozen=True, slots=True)
class SizeList:
    """A size list as written: its numbers, of what kind it is, and its place."""

    values: tuple[float, ...]
    kind: str
    what: str
    span: Span

    def disorder(self, order: tuple[int, ...]) -> tuple[int, int] | None:
        """A smaller and a bigger size (places in `sizes`) whose numbers stand the other way."""
        ranked = [self.values[i] for i in order]
        if self.kind == SHRINKS_TOO:
            return None
        if self.kind == EITHER and all(a >= b for a, b in pairwise(ranked)):
            return None
        for at in range(1, len(ranked)):
            if ranked[at] < ranked[at - 1]:
                return order[at - 1], order[at]
        return None


def size_lists(pattern: Pattern) -> Iterator[SizeList]:
    """The size lists that have a number for each size, in file order."""
    known = dict(_known(pattern))
    sizes = len(pattern.sizes)
    seen: set[Span] = set()
    for length, span in sorted(pattern.size_lists, key=lambda item: item[1]):
        match = _LIST.search(pattern.source.slice(span))
        if length != sizes or match is None or span in seen:
            continue
        seen.add(span)
        parts = match.group().split("/")
        try:
            values = tuple(read_number(part) for part in parts)
        except ValueError:
            continue
        if len(values) == sizes:
            kind, what = known.get(span.start, (EITHER, "number"))
            yield SizeList(values, kind, what, span)


def _known(pattern: Pattern) -> Iterator[tuple[int, tuple[str, str]]]:
    """By the place where it starts, what a size list outside of the bodies counts."""
    for measures in (pattern, *pattern.pieces):
        for what in ("width", "length"):
            measure: Quantity | None = getattr(measures, what)
            if measure is not None:
                yield measure.span.start, (GROWS, what)
    for strand in pattern.strands:
        for feed in strand.feeds:
            if feed.balls is not None:
                yield feed.balls.span.start, (EITHER, "number of balls")
            if feed.amount is not None:
                yield feed.amount.span.start, (EITHER, "amount of yarn")
    for motif in pattern.motifs:
        for row in motif.rows:
            yield from _claim(row)
    for piece in pattern.pieces:
        for item in piece.items:
            if isinstance(item, CastOn) and item.count is not None:
                yield item.count.span.start, (GROWS, "cast-on")
            elif isinstance(item, PieceRow):
                yield from _claim(item.row)
                if item.times is not None:
                    yield item.times.span.start, (GROWS, "number of rows")
            elif isinstance(item, Work):
                yield from _amount(item)


def _claim(row: Row) -> Iterator[tuple[int, tuple[str, str]]]:
    if row.claim is not None:
        # "=> -4/-6" takes away; a count that is claimed grows with the size.
        kind = EITHER if row.claim.sign else GROWS
        yield row.at(row.claim.count.span).start, (kind, "count after the row")


def _amount(item: Work) -> Iterator[tuple[int, tuple[str, str]]]:
    amount = item.amount
    if isinstance(amount, Times):
        yield amount.count.span.start, (GROWS, "number of repeats")
    elif isinstance(amount, ForRows):
        yield amount.rows.span.start, (GROWS, "number of rows")
    elif isinstance(amount, ToLength):
        if amount.measure is not None:
            yield amount.measure.span.start, (GROWS, "length")
        for off in (amount.rows_off, amount.measure_off):
            if off is not None:
                yield off.span.start, (SHRINKS_TOO, "length left")
    elif isinstance(amount, UntilStitches):
        yield amount.count.span.start, (EITHER, "count worked to")
    elif isinstance(amount, UntilSpent) and amount.keep is not None:
        yield amount.keep.span.start, (SHRINKS_TOO, "rows kept")


def order_of_sizes(context: Context, lists: list[SizeList]) -> tuple[tuple[int, ...], str]:
    """The sizes from the smallest to the biggest, and by what: ``sizes``, ``width``, ``length``.

    The stated widths and the stated lengths may each say it, and so does the order of the
    ``sizes`` line. The one that fewest lists contradict is taken; of equals the ``sizes`` line.
    """
    pattern = context.pattern
    count = len(context.sizes)
    orders: dict[tuple[int, ...], str] = {tuple(range(count)): "sizes"}
    for what in ("width", "length"):
        measure: Quantity | None = getattr(pattern, what)
        if measure is None and pattern.pieces:
            measure = getattr(pattern.pieces[0], what)
        if measure is not None and len(measure.values) == count:
            # Sizes of the same width stay in the order of their line.
            values = measure.values
            orders.setdefault(tuple(sorted(range(count), key=lambda i: values[i])), what)
    best = min(orders, key=lambda order: sum(one.disorder(order) is not None for one in lists))
    return best, orders[best]
