"""What a resize is asked for, read from the words of a call."""

from __future__ import annotations

import re
from collections.abc import Sequence

from loopwright.fit.gauges import GaugeWish, gauge_of, read_gauge
from loopwright.fit.targets import Wanted
from loopwright.fit.units import parse_quantity
from loopwright.fit.wish import one_a_size, size_place
from loopwright.model.pattern import Pattern
from loopwright.record import dataclass

_ADD = re.compile(r"\s*(.+?)\s+([\d.¼½¾⅓⅔⅛⅜⅝⅞]+)\s*([a-z]*)\s*[x×]\s*(.+?)\s*", re.IGNORECASE)
_SCALE = re.compile(r"\s*(\d+(?:\.\d+)?)\s*%\s*")
_MOST = 10_000.0  # per cent


@dataclass(frozen=True, slots=True)
class AddSize:
    """A size to be added: its name, width and length in mm."""

    name: str
    width: float
    length: float


@dataclass(frozen=True, slots=True)
class Wish:
    """Measures asked for in mm, one for each size (None leaves a size as it is), and the rest.

    `scale` is a factor, `add` a new size, `only` the one size to keep, `size` the one to change;
    `everywhere` is true where one measure was given for several sizes.
    """

    width: Wanted
    length: Wanted
    everywhere: bool
    gauges: tuple[GaugeWish, ...] = ()
    scale: float | None = None
    add: AddSize | None = None
    only: str | None = None
    size: str | None = None

    @staticmethod
    def of(
        pattern: Pattern,
        width: str | None = None,
        length: str | None = None,
        size: str | None = None,
        *,
        gauge: Sequence[str] = (),
        scale: str | None = None,
        add_size: str | None = None,
        only: str | None = None,
    ) -> Wish:
        """Read the words of a call. Raises ValueError with a sentence for the caller."""
        names = pattern.sizes
        size_place(names, size)
        size_place(names, only)
        if only is not None and size is not None and only != size:
            raise ValueError(f"--only {only} leaves no size {size} to change")
        if only is not None and add_size is not None:
            raise ValueError("--only and --add-size exclude each other")
        if add_size is not None and (width or length or scale or gauge):
            raise ValueError("--add-size gives its own width and length; ask for the rest apart")
        if scale is not None and (width or length):
            raise ValueError("--scale goes for width and length alike; leave those out")
        gauges = tuple(read_gauge(text) for text in gauge)
        for one in gauges:
            gauge_of(pattern, one)
        if len({id(gauge_of(pattern, one)) for one in gauges}) < len(gauges):
            raise ValueError("one gauge of the pattern is given twice")
        chosen = size if size is not None else only
        return Wish(
            one_a_size(width, "--width", names, chosen),
            one_a_size(length, "--length", names, chosen),
            chosen is None and len(names) > 1,
            gauges,
            read_scale(scale),
            read_size(add_size),
            only,
            size,
        )


def read_scale(text: str | None) -> float | None:
    """``80%`` as 0.8. Raises ValueError with a sentence."""
    if text is None:
        return None
    match = _SCALE.fullmatch(text)
    if match is None or not 0 < float(match[1]) <= _MOST:
        raise ValueError(f"“{text[:40]}” is no scale: write it in per cent, as in --scale 80%")
    return float(match[1]) / 100.0


def read_size(text: str | None) -> AddSize | None:
    """``crib 75 cm x 100 cm`` (or ``crib 75 x 100 cm``). Raises ValueError with a sentence."""
    if text is None:
        return None
    match = _ADD.fullmatch(text) if len(text) <= 200 else None
    if match is None:
        raise ValueError(
            f"“{text[:40]}” is no size: write a name, a width and a length, as in "
            '--add-size "crib 75 cm x 100 cm"'
        )
    length = parse_quantity(match[4])
    width = parse_quantity(f"{match[2]} {match[3] or length.unit}")
    for quantity in (width, length):
        if not quantity.is_length or len(quantity.values) > 1:
            raise ValueError("--add-size wants one width and one length")
    name = match[1].strip().strip('"')
    if '"' in name or not name.isprintable() or len(name) > 60:
        raise ValueError("the name of a size is a few plain words")
    return AddSize(name, width.mm(), length.mm())
