"""A new gauge: read from the words of a call, written into the file's own line."""

from __future__ import annotations

import re

from loopwright.facts.yarns import yarn_weights
from loopwright.fit.note import Figures, Note, YarnName
from loopwright.fit.slots import measure_text
from loopwright.fit.units import fraction, parse_quantity
from loopwright.model.pattern import Gauge, Pattern
from loopwright.notation.quantity import LENGTH_MM
from loopwright.notation.source import Source, Span
from loopwright.problem import Edit
from loopwright.record import dataclass

_N = r"([\d.]+[¼½¾⅓⅔⅛⅜⅝⅞]?|[¼½¾⅓⅔⅛⅜⅝⅞])"
_STITCHES = r"(?:stitches|stitch|sts|st)\b\.?"
_ROWS = r"(?:rows?|rounds?|rnds?)\b\.?"
_WISH = re.compile(
    rf"\s*{_N}\s*{_STITCHES}(?:\s*(?:and|x|×|,|by)?\s*{_N}\s*{_ROWS})?"
    r"\s*(?:=|to|over|per|in)\s*(.+?)(?:\s+in\s+([^\W\d][\w-]*))?\s*",
    re.IGNORECASE,
)
_LINE = re.compile(rf"gauge\s+{_N}\s*{_STITCHES}\s*{_N}\s*{_ROWS}\s*=\s*({_N}\s*[a-z]+)", re.I)


@dataclass(frozen=True, slots=True)
class GaugeWish:
    """A gauge asked for: `rows` None where only stitches were given, `fabric` None for the first.

    `over` is the length in mm, `text` how it was typed (``10 cm``).
    """

    stitches: float
    rows: float | None
    over: float
    text: str
    fabric: str | None


def read_gauge(text: str) -> GaugeWish:
    """Read ``18 stitches 26 rows = 10 cm in garter``. Raises ValueError with a sentence."""
    example = 'write --gauge "18 stitches 26 rows = 10 cm"'
    match = _WISH.fullmatch(text)
    if match is None or len(text) > 200:
        raise ValueError(f"“{text[:60]}” is no gauge: {example}")
    stitches = fraction(match[1])
    rows = fraction(match[2]) if match[2] else None
    over = parse_quantity(match[3])
    if not over.is_length or len(over.values) > 1:
        raise ValueError(f"“{match[3]}” is no length: {example}")
    if stitches <= 0 or rows == 0:
        raise ValueError(f"a gauge of nothing measures nothing: {example}")
    shown = f"{measure_text(over.at(0))} {over.unit}"
    return GaugeWish(stitches, rows, over.mm(), shown, match[4])


def gauge_of(pattern: Pattern, wish: GaugeWish) -> Gauge:
    """The file's gauge that a wish means. Raises ValueError where there is none."""
    if not pattern.gauges:
        raise ValueError("the pattern has no gauge line, so its counts cannot be carried over")
    if wish.fabric is None:
        return pattern.gauges[0]
    for gauge in pattern.gauges:
        if gauge.fabric is not None and gauge.fabric.key == wish.fabric.casefold():
            return gauge
    known = [g.fabric.text for g in pattern.gauges if g.fabric is not None]
    raise ValueError(
        f"the pattern has no gauge in {wish.fabric}"
        + (f"; it has one in {', '.join(known)}" if known else "")
    )


def gauge_edits(source: Source, gauge: Gauge, wish: GaugeWish) -> tuple[list[Edit], list[Note]]:
    """The gauge line with the new numbers, and what should be said of it."""
    match = _LINE.match(source.slice(gauge.span))
    if match is None or gauge.over.unit is None:
        raise ValueError("the gauge line of the pattern cannot be changed")
    notes: list[Note] = []
    rows = wish.rows
    if rows is None:
        finer = (wish.stitches / wish.over) / (gauge.stitches / gauge.over.mm())
        rows = round(gauge.rows * finer * wish.over / gauge.over.mm(), 1)
        notes.append(
            Note(
                "no rows were given: {rows} rows = {over} are taken, in proportion to the "
                "stitches; count them on your swatch",
                rows=Figures(f"{rows:g}"),
                over=Figures(wish.text),
            )
        )
    base = gauge.span.start

    def place(group: int) -> Span:
        return Span(base + match.start(group), base + match.end(group))

    edits = []
    if abs(wish.stitches - gauge.stitches) > 1e-9:
        edits.append(Edit(place(1), measure_text(wish.stitches)))
    if abs(rows - gauge.rows) > 1e-9:
        edits.append(Edit(place(2), measure_text(rows)))
    if abs(wish.over - gauge.over.mm()) > 1e-6:
        edits.append(Edit(place(3), wish.text))
        if {round(wish.over, 1), round(gauge.over.mm(), 1)} == {100.0, 101.6}:
            notes.append(
                Note(
                    "your gauge is over {yours} and the pattern's over {its}: 4 in are 1.6 % more "
                    "than 10 cm, and each is counted as it stands",
                    yours=Figures(wish.text),
                    its=Figures(f"{measure_text(gauge.over.at(0))} {gauge.over.unit}"),
                )
            )
    return edits, notes


def needle_advice(gauge: Gauge) -> Note | None:
    """Which needles are usual for a gauge, by the standard yarn weights; None off their ends.

    Source: the standard yarn weight system of the craft-yarn trade body (stockinette over 4 in).
    """
    if gauge.over.unit not in LENGTH_MM:
        return None
    stitches = gauge.stitches / gauge.over.mm() * 101.6
    found = [w for w in yarn_weights() if w.usual_stitches(round(stitches))]
    if not found:
        return None
    lows = [w.needle_min_mm for w in found if w.needle_min_mm is not None]
    highs = [w.needle_max_mm for w in found if w.needle_max_mm is not None]
    if len(lows) < len(found):
        return None
    weights: Note | None = None
    for one in found:
        name = YarnName.of(one.name, one.category)
        weight = Note("weight {n} ({name})", n=one.category, name=name)
        weights = weight if weights is None else Note("{one} or {other}", one=weights, other=weight)
    if len(highs) < len(found):
        needles = Note("{size} and more", size=Figures(f"{min(lows):g} mm"))
    else:
        least, most = Figures(f"{min(lows):g}"), Figures(f"{max(highs):g} mm")
        needles = Note("{least} to {most}", least=least, most=most)
    return Note(
        "{n} stitches to {over} are usual for yarn of {weights} on needles of {needles}; the "
        "needle is the one your swatch was knit on",
        n=Figures(f"{gauge.stitches:g}"),
        over=Figures(f"{measure_text(gauge.over.at(0))} {gauge.over.unit}"),
        weights=weights,
        needles=needles,
    )
