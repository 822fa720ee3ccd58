"""Which counts a piece can have near a width: the nearest, the next smaller, the next larger."""

from __future__ import annotations

from loopwright.check.checked import Checked
from loopwright.check.context import set_text
from loopwright.count.affine import CountSet
from loopwright.count.measure import width_gauge
from loopwright.fit.growth import GrowthLever, lever_for
from loopwright.fit.levers import CastLever, Choice, Lever
from loopwright.fit.targets import Wanted, stated, width_target
from loopwright.model.pattern import Gauge, Piece
from loopwright.record import dataclass, replace


@dataclass(frozen=True, slots=True)
class Fit:
    """One piece in some sizes that have the same answer.

    `asked` is the width asked in mm and `wanted` the same in stitches; `form` is the set of
    counts as the trade writes it (``2n + 4``; None where only one count fits, or the piece hangs
    on the repeats of `motif`). `far` is true where no count lies within half a repeat.
    """

    piece: Piece
    sizes: tuple[int, ...]
    gauge: Gauge
    asked: float
    wanted: float
    form: str | None
    counts: CountSet
    motif: str | None
    nearest: Choice | None
    smaller: Choice | None
    larger: Choice | None
    far: bool


@dataclass(frozen=True, slots=True)
class Together:
    """Pieces that are joined: the counts that all of them take, and the nearest three."""

    pieces: tuple[str, ...]
    size: int
    form: str | None
    nearest: int | None
    smaller: int | None
    larger: int | None


def fits(checked: Checked, widths: Wanted) -> tuple[list[Fit], list[Piece]]:
    """The fits of every piece for the widths asked (mm a size; None: as the source states it).

    Beside them the pieces that cannot be measured, for want of a gauge, a width or a cast-on.
    """
    found: list[Fit] = []
    without: list[Piece] = []
    for walk in checked.walks:
        piece, size = walk.piece, walk.size
        asked = widths[size]
        width = (
            stated(checked.pattern, piece, "width", size)
            if asked is None
            else width_target(checked, walk, asked)
        )
        gauge = width_gauge(checked.pattern, piece)
        if width is None or gauge is None or gauge.over.unit is None or walk.cast_on is None:
            if piece not in without:
                without.append(piece)
            continue
        found.append(_fit(lever_for(checked, piece, size, width), gauge, width))
    return _alike(found), without


def _fit(lever: Lever, gauge: Gauge, width: float) -> Fit:
    nearest = lever.nearest()
    growth = lever.item.name.text if isinstance(lever, GrowthLever) else None
    return Fit(
        lever.piece,
        (lever.size,),
        gauge,
        width,
        lever.wanted,
        set_text(lever.counts) if growth is None and lever.counts.modulus else None,
        lever.counts,
        growth,
        nearest,
        lever.next(nearest.value, False) if nearest is not None else None,
        lever.next(nearest.value, True) if nearest is not None else None,
        nearest is None or lever.is_far(nearest),
    )


def _alike(found: list[Fit]) -> list[Fit]:
    """Sizes with one answer are one fit."""
    out: list[Fit] = []
    for fit in found:
        for at, other in enumerate(out):
            if other.piece is fit.piece and _answer(other) == _answer(fit):
                out[at] = _with_sizes(other, fit.sizes)
                break
        else:
            out.append(fit)
    return out


def _answer(fit: Fit) -> tuple[object, ...]:
    def numbers(choice: Choice | None) -> object:
        return choice and (choice.value, choice.widest, choice.repeats)

    return (
        round(fit.asked, 6),
        fit.form,
        numbers(fit.nearest),
        numbers(fit.smaller),
        numbers(fit.larger),
    )


def _with_sizes(fit: Fit, more: tuple[int, ...]) -> Fit:
    return replace(fit, sizes=(*fit.sizes, *more))


def together(checked: Checked, size: int, width: float) -> Together | None:
    """One count for all pieces of a size that hang on their cast-on; None for fewer than two."""
    counts = CountSet.every(1)
    names: list[str] = []
    wanted = 0.0
    for walk in checked.walks:
        if walk.size != size or walk.cast_on is None:
            continue
        try:
            lever = lever_for(checked, walk.piece, size, width)
        except ValueError:
            continue
        if isinstance(lever, CastLever):
            counts = counts.meet(lever.counts)
            names.append(walk.piece.name.text)
            wanted = wanted or lever.wanted
    if len(names) < 2:
        return None
    nearest = counts.nearest(wanted)
    return Together(
        tuple(names),
        size,
        set_text(counts),
        nearest,
        counts.below(nearest - 1) if nearest is not None else None,
        counts.above(nearest + 1) if nearest is not None else None,
    )
