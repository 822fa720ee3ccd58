"""How much yarn one plain loop takes, from a weighed swatch or from the gauge."""

from __future__ import annotations

from math import sqrt

from loopwright.facts.amounts import estimate
from loopwright.model.pattern import Gauge, Motif, Pattern, PieceRow, Swatch, Work, Yarn
from loopwright.record import dataclass
from loopwright.yarn.fabric import (
    Fabric,
    fabric_named,
    fabric_of_motif,
    fabric_of_rows,
    plain,
)


@dataclass(frozen=True, slots=True)
class Loop:
    """The length of a plain loop in metres, with what it was found from.

    `ground` is ``swatch`` or ``geometry``, `spread` the range as a share of the figure on each
    side, `fabric` the fabric whose gauge or swatch it is.
    """

    metres: float
    ground: str
    spread: float
    fabric: str


def munden_loop(gauge: Gauge, ks: float, worked: float = 1.0) -> float:
    """The loop length in metres by the plain-knit geometry of Munden: l = sqrt(ks / S).

    S is the density of loops at the gauge, in loops per square metre: stitches times rows, less
    those that are slipped (`worked` is the share that makes a loop). `ks` is dimensionless.
    Source: D. L. Munden, J. Text. Inst. 50 (1959), T448–T471.
    """
    side = gauge.over.metres()
    density = (gauge.stitches / side) * (gauge.rows / side) * worked
    return sqrt(ks / density)


class Loops:
    """The loop lengths of a pattern, by yarn and by the fabric that is worked.

    A weighed swatch comes first (± 5 %), then the geometry of the motif's own gauge, or of the
    file's first (± 15 %). Never a yarn category.
    """

    def __init__(self, pattern: Pattern) -> None:
        self._pattern = pattern
        self._memo: dict[tuple[int, str, int], Loop | None] = {}

    def of(self, yarn: Yarn | None, motif: Motif | None, size: int) -> Loop | None:
        """The plain loop of a yarn where `motif` (None: plain lines of a piece) is worked."""
        key = (id(yarn), motif.name.key if motif is not None else "", size)
        if key not in self._memo:
            self._memo[key] = self._swatched(yarn, size) or self._measured(motif, size)
        return self._memo[key]

    def _swatched(self, yarn: Yarn | None, size: int) -> Loop | None:
        if yarn is None or not yarn.grams or not yarn.metres:
            return None
        for swatch in self._pattern.swatches:
            if swatch.weight is None or swatch.weight.unit is None:
                continue
            fabric = self._of_swatch(swatch, size)
            loops = swatch.stitches * swatch.rows * fabric.eaten
            if loops > 0:
                metres = swatch.weight.grams() * yarn.metres / yarn.grams
                return Loop(metres / loops, "swatch", estimate("range from a swatch"), fabric.name)
        return None

    def _measured(self, motif: Motif | None, size: int) -> Loop | None:
        gauge = self._pattern.gauge_for(motif.name.text if motif is not None else None)
        if gauge is None or gauge.over.unit is None or gauge.stitches <= 0 or gauge.rows <= 0:
            return None
        fabric = self._of_gauge(gauge, size)
        metres = munden_loop(gauge, fabric.ks, fabric.worked)
        return Loop(metres, "geometry", estimate("range from geometry"), fabric.name)

    def _of_swatch(self, swatch: Swatch, size: int) -> Fabric:
        if swatch.fabric is not None:
            return self._named(swatch.fabric.text, size) or plain()
        gauge = self._pattern.gauge_for(None)
        return self._of_gauge(gauge, size) if gauge is not None else self._main(size)

    def _of_gauge(self, gauge: Gauge, size: int) -> Fabric:
        if gauge.fabric is not None:
            return self._named(gauge.fabric.text, size) or plain()
        return self._main(size)

    def _named(self, name: str, size: int) -> Fabric | None:
        key = name.casefold()
        motif = next((m for m in self._pattern.motifs if m.name.key == key), None)
        if motif is not None and motif.rows:
            return fabric_of_motif(motif, size)
        return fabric_named(name)

    def _main(self, size: int) -> Fabric:
        """A gauge that names no fabric is taken to be that of the first motif or row worked."""
        items = [item for piece in self._pattern.pieces for item in piece.items]
        for item in items:
            if isinstance(item, Work) and item.motif is not None and item.motif.rows:
                return fabric_of_motif(item.motif, size)
        for piece in self._pattern.pieces:
            for item in piece.items:
                if isinstance(item, PieceRow):
                    row = item.row
                    rows = (row, row)
                    rs = not piece.starts_ws
                    return fabric_of_rows(rows, size, 0, rs, piece.in_round or row.round)
        return plain()
