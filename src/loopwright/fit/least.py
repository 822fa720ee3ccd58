"""Widths that cannot be: narrower than one repeat with its edges, or past the largest number."""

from __future__ import annotations

from loopwright.check.context import count_of, listed
from loopwright.fit.growth import GrowthLever
from loopwright.fit.levers import Choice, Lever
from loopwright.fit.stops import Stops
from loopwright.fit.targets import Wanted
from loopwright.fit.units import at_least, both, cm
from loopwright.model.pattern import Pattern, Piece
from loopwright.notation.bounds import MAX_NUMBER
from loopwright.record import dataclass, field


@dataclass(frozen=True, slots=True)
class _Narrow:
    """A size that was asked to be narrower than it can be.

    `asked` is the width meant for the piece and `least` the narrowest it can have, `whole` the
    least that may be asked for the pattern, all in mm; `stitches` hang at `least`.
    """

    size: int
    asked: float
    least: float
    stitches: int
    whole: float


@dataclass(slots=True)
class TooNarrow:
    """Gathers the sizes of one piece that cannot be so narrow, so that one message names all.

    `wish` is the width asked for the pattern in each size; a piece may have its own in proportion.
    """

    piece: Piece
    wish: Wanted
    _found: list[_Narrow] = field(default_factory=list)
    _motif: str = ""

    def takes(self, lever: Lever, found: Choice, asked: float) -> bool:
        """Whether the width asked (mm) has fewer stitches than the piece can be worked over.

        `found` is the count nearest to it. A width is as good as the count it rounds to.
        """
        if found.widest - lever.wanted <= 0.5 + 1e-9 or lever.next(found.value, False) is not None:
            return False
        wish = self.wish[lever.size]
        whole = found.width if wish is None else found.width * wish / asked
        self._found.append(_Narrow(lever.size, asked, found.width, found.widest, whole))
        if isinstance(lever, GrowthLever):
            self._motif = lever.item.name.text
        return True

    def tell(self, pattern: Pattern, stops: Stops) -> None:
        """One problem for the piece, with the least width of each size concerned."""
        if not self._found:
            return
        name = self.piece.name.text
        why = f"{self._motif} worked once" if self._motif else "one repeat with its edges"
        across = "around" if self.piece.in_round else "wide"
        said, least = [], []
        for names, one in self._alike(pattern):
            own = abs(one.whole - one.least) < 0.05
            said.append(
                f"{f'In {names} {name}' if names else name} takes "
                f"{count_of(one.stitches, 'stitch')} or more ({why}), {at_least(one.least)} "
                f"{across}; {'' if own else 'its share of '}the width asked for is "
                f"{both(one.asked)}."
            )
            least.append(f"{at_least(one.whole)} or more{f' for {names}' if names else ''}")
        stops.add(
            self.piece.span,
            f"{name} cannot be so narrow",
            " ".join(said),
            f"ask for {listed(least)}.",
        )

    def _alike(self, pattern: Pattern) -> list[tuple[str, _Narrow]]:
        """Sizes with the same figures together, by their names (empty for a pattern of one)."""
        groups: dict[tuple[float, ...], list[_Narrow]] = {}
        for one in self._found:
            key = (one.asked, one.least, one.stitches, one.whole)
            groups.setdefault(key, []).append(one)
        out = []
        for group in groups.values():
            names = [pattern.sizes[one.size] for one in group]
            said = f"size{'s' * (len(names) > 1)} {listed(names)}"
            if len(names) == len(pattern.sizes):
                said = "every size" if len(names) > 1 else ""
            out.append((said, group[0]))
        return out


def is_too_wide(lever: Lever, asked: float, stops: Stops) -> bool:
    """Whether a width (mm) takes more stitches than any number may be; says so."""
    if lever.wanted <= MAX_NUMBER:
        return False
    name = lever.piece.name.text
    stops.add(
        lever.piece.span,
        f"{name} cannot be so wide",
        f"{both(asked)} would take {lever.wanted:,.0f} stitches at the gauge, and a number may be "
        f"{MAX_NUMBER:,} at most.",
        f"{name} can have {cm(asked * MAX_NUMBER / lever.wanted)} at most.",
    )
    return True
