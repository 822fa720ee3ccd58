"""Figures of yarn in words and in tables, for the command line and the editions."""

from __future__ import annotations

from loopwright.yarn.joins import Join
from loopwright.yarn.ledger import Spot
from loopwright.yarn.loop import Loop
from loopwright.yarn.report import StrandYarn

GROUNDS = {
    "swatch": "a weighed swatch",
    "geometry": "the gauge, by the geometry of plain knit",
}


def metres(value: float) -> str:
    """``812 m``; tenths below ten."""
    return f"{value:,.0f} m" if value >= 9.95 else f"{value:.1f} m"


def grams(value: float) -> str:
    """``49 g``; tenths below ten."""
    return f"{value:,.0f} g" if value >= 9.95 else f"{value:.1f} g"


def between(value: float, spread: float, unit: str) -> str:
    """A figure with its range: ``644 m (547 to 740 m)``."""
    show = metres if unit == "m" else grams
    low = show(value * (1 - spread)).removesuffix(f" {unit}")
    return f"{show(value)} ({low} to {show(value * (1 + spread))})"


def loop_text(loop: Loop) -> str:
    """``a loop of 21.4 mm ± 15 %, from the gauge, by the geometry of plain knit``."""
    return (
        f"a loop of {loop.metres * 1000:.1f} mm ± {loop.spread * 100:.0f} %, "
        f"from {GROUNDS[loop.ground]}"
    )


def spot_text(spot: Spot) -> str:
    """``in row 38, after 112 of 180 stitches``."""
    if spot.where == "cast-on":
        return f"in the cast-on, after {spot.stitch:,} of {spot.stitches:,} stitches"
    if spot.where == "picking up":
        return f"while picking up, after {spot.stitch:,} of {spot.stitches:,} stitches"
    if spot.where == "bind-off":
        return f"in the bind-off, after {spot.stitch:,} of {spot.stitches:,} stitches"
    row = _row(spot)
    if spot.where == "end":
        return f"at the end that is woven in, after {row}"
    if spot.stitch == 0:
        return f"at the start of {row}"
    return f"in {row}, after {spot.stitch:,} of {spot.stitches:,} stitches"


def _row(spot: Spot) -> str:
    """``row 38``, or ``round 38`` where it is one."""
    return f"{'round' if spot.round else 'row'} {spot.row:,}"


def join_text(join: Join) -> str:
    """Where a join falls and by which weight a maker steers to it."""
    low, high = join.earliest, join.latest
    if low is not None and high is not None:
        rows = "rounds" if low.round and high.round else "rows"
        where = f" ({rows} {low.row:,} to {high.row:,} within the range)"
    elif low is not None:
        where = f" (from {_row(low)} on, within the range)"
    else:
        where = ""
    text = f"{spot_text(join.spot)}{where}"
    if join.row_grams is not None and join.left_grams is not None and join.leaves_some:
        text += (
            f"; {grams(join.row_grams)} are left when "
            f"{'round' if join.round_before else 'row'} {max(join.spot.row - 1, 0):,} is done, "
            f"put the ball by at {grams(join.left_grams)}"
        )
    return text


def strand_label(strand: StrandYarn) -> str:
    """``A``, or a dash where no strand is named."""
    return strand.name or "–"
