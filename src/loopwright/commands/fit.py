"""`loopwright fit`: which counts come near a width."""

from __future__ import annotations

import argparse

from loopwright.commands.border import BAD_PATTERN, OK, Usage, read_and_check, say, tell, tell_json
from loopwright.notation.hidden import named

HELP = "list the counts that come near a width"
EXAMPLE = "loopwright fit examples/skerry-throw.loop --width 150cm"


def options(parser: argparse.ArgumentParser) -> None:
    """The options of the command."""
    parser.add_argument("file", metavar="FILE")
    parser.add_argument(
        "--width", metavar="WIDTH", help="such as 150cm, 60in or 90/120/150cm (default: as stated)"
    )
    parser.add_argument("--size", metavar="NAME", help="this size alone")
    parser.add_argument(
        "--together", action="store_true", help="also one count for all pieces, if they are joined"
    )
    parser.add_argument("--json", action="store_true", help="print the counts as JSON")


def run(args: argparse.Namespace) -> int:
    """Run it; gives the exit status."""
    from loopwright.fit.fitting import fit_json, fit_table, together_text
    from loopwright.fit.nearest import fits, together
    from loopwright.fit.wish import one_a_size, size_place

    checked = read_and_check(args.file)
    if checked.has_errors:
        say("loopwright: the counts are not sure, because the pattern has errors")
        return BAD_PATTERN
    names = checked.pattern.sizes
    try:
        place = size_place(names, args.size)
        widths = one_a_size(args.width, "--width", names, args.size)
    except ValueError as error:
        raise Usage(named(str(error))) from None
    found, without = fits(checked, widths)
    if place is not None:
        found = [fit for fit in found if place in fit.sizes]
    if not found:
        gauge = checked.pattern.gauge_for(None)
        if gauge is None:
            say("loopwright: the pattern has no gauge; add “gauge 20 stitches 28 rows = 10 cm”")
        else:
            say("loopwright: no width is stated; give one, as in --width 150cm")
        return BAD_PATTERN
    if args.json:
        tell_json(fit_json(checked, found))
        return OK
    measure = checked.pattern.width
    inches_first = measure is not None and measure.unit in ("in", "yd")
    tell(fit_table(checked, found, inches_first), end="")
    if args.together:
        for size in range(len(names)) if place is None else (place,):
            width = next(fit.asked for fit in found if size in fit.sizes)
            both = together(checked, size, width)
            if both is None:
                say("note: there is only one piece with a cast-on")
                break
            tell(together_text(both, names), end="")
    for piece in without:
        say(f"note: {piece.name.text} has no width of its own, so it is left out")
    return OK
