"""What the yarn room tells the rules: facts in numbers, of which the rules make problems."""

from __future__ import annotations

from loopwright.notation.source import Span
from loopwright.record import dataclass


@dataclass(frozen=True, slots=True)
class ShortNews:
    """The balls of a strand do not last in one size.

    `certain` where they do not at the middle figure; else only at the upper end of its range
    (`spread`). `missing` is in metres. The last ball of `shade` ends in row `row` of `piece`
    after `stitch` of `stitches`; `row` is None where the place is not known. The remedies:
    `balls` more of the shade (None: its ball is not known), `rows` fewer of `motif`, `stitches`
    fewer to cast on (to `cast_on`); 0 where that does not mend it.
    """

    size: int
    strand: str
    shade: str
    span: Span
    certain: bool
    spread: float
    ground: str
    missing: float
    piece: str
    row: int | None
    where: str
    stitch: int
    of: int
    balls: int | None
    rows: int
    motif: str
    stitches: int
    cast_on: int


@dataclass(frozen=True, slots=True)
class TwiceNews:
    """Two strands hold the same shade from row `first` to row `last` of a piece."""

    size: int
    one: str
    other: str
    shade: str
    piece: str
    first: int
    last: int
    span: Span
    label: Span


@dataclass(frozen=True, slots=True)
class PoolNews:
    """The stripes of a shade fall in step with the rows.

    One repeat of `repeat` metres is `rows` rows of `stitches` stitches; `times` repeats are
    `span_rows` rows nearly exactly.
    """

    size: int
    strand: str
    shade: str
    span: Span
    repeat: float
    rows: float
    stitches: int
    times: int
    span_rows: int


@dataclass(frozen=True, slots=True)
class CloseNews:
    """Two shades that touch are hard to tell apart in some kinds of vision (names), with the
    least contrast ratio there."""

    one: str
    other: str
    visions: tuple[str, ...]
    ratio: float
    span: Span
    label: Span


@dataclass(frozen=True, slots=True)
class YarnNews:
    """All of it."""

    shorts: tuple[ShortNews, ...] = ()
    twice: tuple[TwiceNews, ...] = ()
    pools: tuple[PoolNews, ...] = ()
    close: tuple[CloseNews, ...] = ()


NO_NEWS = YarnNews()
