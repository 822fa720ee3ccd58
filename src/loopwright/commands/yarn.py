"""`loopwright yarn`: what each strand eats, where each join falls, balls to buy."""

from __future__ import annotations

import argparse
import sys
from typing import TYPE_CHECKING

from loopwright.commands.border import BAD_PATTERN, Usage, report, say, status_of, tell, tell_json
from loopwright.compile import check_source
from loopwright.files import read_source
from loopwright.notation.bounds import MAX_LISTED_ROWS
from loopwright.notation.hidden import in_json, named, visible

if TYPE_CHECKING:
    from loopwright.model.pattern import Pattern
    from loopwright.yarn.report import YarnReport
    from loopwright.yarn.swap import OtherYarn

HELP = "say what each strand eats, where each join falls, and the balls to buy"
EXAMPLE = "loopwright yarn examples/skerry-throw.loop --size lap"


def options(parser: argparse.ArgumentParser) -> None:
    """The options of the command."""
    parser.add_argument("file", metavar="FILE")
    parser.add_argument("--json", action="store_true", help="print the figures as JSON")
    parser.add_argument(
        "--rows", action="store_true", help="each row with what it takes and the running total"
    )
    parser.add_argument(
        "--row", type=_row, metavar="N", help="this row alone, however far up the piece"
    )
    parser.add_argument("--size", metavar="NAME", help="one size only")
    parser.add_argument(
        "--with",
        dest="other",
        metavar="BALL",
        help='balls of another yarn, such as "50 g 120 m, weight 3"',
    )


def _row(text: str) -> int:
    number = int(text) if text.isdigit() else 0
    if number < 1:
        raise argparse.ArgumentTypeError(f"{text} is no row: rows count from 1")
    return number


def run(args: argparse.Namespace) -> int:
    """Run it; gives the exit status."""
    from loopwright.record import replace
    from loopwright.yarn.report import yarn_report
    from loopwright.yarn.swap import read_other
    from loopwright.yarn.table import rows_json, rows_text, yarn_json, yarn_text

    try:
        other = read_other(args.other) if args.other is not None else None
    except ValueError as error:
        raise Usage(named(str(error))) from None
    checked = check_source(read_source(args.file))
    report(checked)
    pattern = checked.pattern
    if args.size is not None and args.size not in pattern.sizes:
        known = ", ".join(pattern.sizes)
        raise Usage(f"there is no size “{named(args.size)}”; the pattern has {known}")
    found = yarn_report(pattern, checked.walks)
    if args.size is not None:
        found = replace(found, sizes=tuple(s for s in found.sizes if s.name == args.size))
    if not found.sizes:
        if checked.has_errors:
            say("loopwright: the yarn cannot be reckoned, because the pattern has errors")
        else:
            say(
                "loopwright: nothing tells how long a loop is: give the pattern a gauge, as in\n"
                "  gauge 20 stitches 28 rows = 10 cm\n"
                "or, better, a weighed swatch and the ball's grams and metres, as in\n"
                "  swatch 40 stitches 56 rows weighs 21 g"
            )
        return BAD_PATTERN
    if other is not None:
        _swap(pattern, found, other, args.json)
        return status_of([checked])
    if args.rows or args.row is not None:
        longest = max((walk.rows for walk in checked.walks), default=0)
        if args.row is None and longest > MAX_LISTED_ROWS:
            say(
                f"loopwright: a piece has {longest:,} rows; --rows lists up to "
                f"{MAX_LISTED_ROWS:,} (--row N shows any one of them)"
            )
            return BAD_PATTERN
        if args.row is not None and args.row > longest:
            raise Usage(f"there is no row {args.row:,}; the longest piece has {longest:,} rows")
        make = rows_json if args.json else rows_text
        for part in make(pattern, found, checked.walks, args.row or 1, args.row):
            sys.stdout.write(in_json(part) if args.json else visible(part))
    elif args.json:
        tell_json(yarn_json(pattern, found))
    else:
        for part in yarn_text(pattern, found):
            tell(part, end="")
    return status_of([checked])


def _swap(pattern: Pattern, found: YarnReport, other: OtherYarn, as_json: bool) -> None:
    from loopwright.yarn.swap import gauge_questions, swaps

    questions = gauge_questions(pattern, other)
    made = swaps(found, other)
    if as_json:
        sizes = [
            {
                "size": swap.size,
                "shades": [
                    {"shade": shade, "metres": round(metres, 1), "balls": balls}
                    for shade, metres, balls in swap.shades
                ],
            }
            for swap in made
        ]
        tell_json({"sizes": sizes, "notes": questions})
        return
    print(f"in balls of {other.grams:g} g and {other.metres:g} m:")
    for swap in made:
        head = f"size {swap.size}: " if len(pattern.sizes) > 1 else ""
        balls = ", ".join(f"{shade} {number}" for shade, _, number in swap.shades)
        tell(f"  {head}{balls}")
    for question in questions:
        tell(question)
