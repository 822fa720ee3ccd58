"""A pattern at other measures, for `resize` and `build`: the options, and the way to the result."""

from __future__ import annotations

import argparse
from collections.abc import Callable
from typing import TYPE_CHECKING

from loopwright.check.checked import Checked
from loopwright.commands.border import Usage, report, say, show
from loopwright.compile import check_source
from loopwright.notation.hidden import named
from loopwright.record import dataclass

if TYPE_CHECKING:
    from loopwright.fit.resize import Resized, Wish


@dataclass(frozen=True, slots=True)
class AtMeasures:
    """What was asked for, what came of it, and the new source checked."""

    wish: Wish
    resized: Resized
    checked: Checked


def wish_options(parser: argparse.ArgumentParser) -> None:
    """The measures that may be asked for."""
    parser.add_argument("--width", metavar="WIDTH", help="such as 150cm, 60in or 90/120/150cm")
    parser.add_argument("--length", metavar="LENGTH", help="such as 180cm")
    parser.add_argument(
        "--gauge",
        metavar="GAUGE",
        action="append",
        default=[],
        help='keep the size, at your gauge: "18 stitches 26 rows = 10 cm" (with “in NAME” '
        "behind it for another of the pattern's gauges)",
    )
    parser.add_argument("--scale", metavar="PER CENT", help="width and length, such as 80%%")


def at_measures(
    checked: Checked,
    args: argparse.Namespace,
    wrong: Callable[[Checked], bool],
    add_size: str | None = None,
    only: str | None = None,
) -> AtMeasures | None:
    """The pattern at the measures of a call; None, and why on standard error, if it cannot be.

    `wrong` says whether the new source is of no use. Raises Usage for a wish that is wrong.
    """
    from loopwright.fit.resize import CannotResize, Wish, resize

    try:
        wish = Wish.of(
            checked.pattern,
            args.width,
            args.length,
            args.size,
            gauge=args.gauge,
            scale=args.scale,
            add_size=add_size,
            only=only,
        )
        resized = resize(checked, wish, check_source)
    except ValueError as error:
        raise Usage(named(str(error))) from None
    except CannotResize as error:
        show(error.problems, error.source)
        say("loopwright: nothing was written")
        return None
    again = check_source(resized.source)
    if wrong(again):
        report(again)
        say("loopwright: the new sizes do not check, so nothing was written")
        return None
    return AtMeasures(wish, resized, again)
