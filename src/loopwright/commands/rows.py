"""`loopwright rows`: the count of every row."""

from __future__ import annotations

import argparse
import sys

from loopwright.commands.border import BAD_PATTERN, report, say, status_of
from loopwright.compile import check_source
from loopwright.files import read_source
from loopwright.notation.bounds import MAX_LISTED_ROWS
from loopwright.notation.hidden import in_json, visible

HELP = "list the count of every row, as the checker walked it"
EXAMPLE = "loopwright rows examples/gull-hat.loop"


def options(parser: argparse.ArgumentParser) -> None:
    """The options of the command."""
    parser.add_argument("file", metavar="FILE")
    parser.add_argument("--json", action="store_true", help="print the rows as JSON")


def run(args: argparse.Namespace) -> int:
    """Run it; gives the exit status."""
    from loopwright.edition.listing import rows_json, rows_table

    checked = check_source(read_source(args.file))
    report(checked)
    longest = max((walk.rows for walk in checked.walks), default=0)
    if longest > MAX_LISTED_ROWS:
        say(
            f"loopwright: a piece has {longest:,} rows; rows lists up to {MAX_LISTED_ROWS:,} "
            "(the check above covers them all)"
        )
        return BAD_PATTERN
    parts = rows_json(checked) if args.json else rows_table(checked)
    for part in parts:
        sys.stdout.write(in_json(part) if args.json else visible(part))
    return status_of([checked])
