"""`loopwright resize`: new counts for a new width, length, gauge or size."""

from __future__ import annotations

import argparse
import difflib
import sys
from pathlib import Path

from loopwright.commands.border import (
    BAD_PATTERN,
    OK,
    Usage,
    miscounted,
    report,
    say,
    tell,
    tell_json,
)
from loopwright.commands.measures import at_measures, wish_options
from loopwright.compile import check_source
from loopwright.files import read_source, write_whole
from loopwright.notation.hidden import named

HELP = "find the counts for a new width, length, gauge or size"
EXAMPLE = (
    "loopwright resize examples/skerry-throw.loop --width 160cm --size bed -o wide.loop\n"
    '  loopwright resize examples/gull-hat.loop --gauge "18 stitches 26 rows = 10 cm" --dry-run'
)


def options(parser: argparse.ArgumentParser) -> None:
    """The options of the command."""
    parser.add_argument("file", metavar="FILE")
    wish_options(parser)
    parser.add_argument("--size", metavar="NAME", help="change this size alone")
    parser.add_argument(
        "--add-size", metavar="SIZE", help='a new size, such as "crib 75 cm x 100 cm"'
    )
    parser.add_argument("--only", metavar="NAME", help="make a file of this one size")
    parser.add_argument("-o", dest="output", metavar="NEW", help="write the new source here")
    parser.add_argument("--in-place", action="store_true", help="change the source itself")
    parser.add_argument("--dry-run", action="store_true", help="only print what would change")
    parser.add_argument("--json", action="store_true", help="print the table as JSON")


def run(args: argparse.Namespace) -> int:
    """Run it; gives the exit status."""
    from loopwright.fit.table import before_after, table_json

    asked = (args.width, args.length, args.scale, args.add_size, args.only, *args.gauge)
    if all(one is None for one in asked):
        raise Usage(
            "say what to change: --width 150cm, --length 200cm, --gauge, --scale 80%, --add-size "
            "or --only"
        )
    _check_targets(args)
    checked = check_source(read_source(args.file))
    report(checked)
    if miscounted(checked):
        say("loopwright: nothing was written, because the pattern has errors")
        return BAD_PATTERN
    made = at_measures(checked, args, miscounted, args.add_size, args.only)
    if made is None:
        return BAD_PATTERN
    result, again = made.resized, made.checked
    if again.has_errors:
        report(again)  # the new counts hold, but the strands need other feeds
    for note in result.notes:
        say(f"note: {note}")
    for claim in result.claims:
        say(f"note: line {claim.line}: the claim {claim.before} is {claim.after} now")
    table = before_after(checked, again)
    path = _target(args)
    if path is not None:
        write_whole(path, result.source.text.encode("utf-8"))
    if args.json:
        figures = {
            "file": checked.source.name,
            "table": table_json(checked, again),
            "claims": [
                {"line": c.line, "before": c.before, "after": c.after} for c in result.claims
            ],
            "notes": list(result.notes),
            "source": result.source.text,
        }
        tell_json(figures)
    elif args.dry_run:
        say(table)
        name = named(checked.source.name)
        tell(_diff(checked.source.text, result.source.text, name), end="")
    elif path is not None:
        tell(table)
    else:
        # The new source is the result here, so the table goes where messages go.
        say(table)
        sys.stdout.write(result.source.text)
    if path is not None:
        say(f"written: {named(str(path))}")
    return OK


def _check_targets(args: argparse.Namespace) -> None:
    if args.in_place and args.output:
        raise Usage("--in-place and -o exclude each other")
    if args.dry_run and (args.in_place or args.output):
        raise Usage("--dry-run writes nothing; leave -o and --in-place out")
    if args.in_place and args.file == "-":
        raise Usage("standard input cannot be changed in place")


def _target(args: argparse.Namespace) -> Path | None:
    """Where the new source goes; None for standard output."""
    if not (args.in_place or args.output):
        return None
    path = Path(args.file if args.in_place else args.output)
    if args.output and path.exists() and args.file != "-" and path.samefile(args.file):
        raise Usage(f"{named(str(path))} is the original; use --in-place to change it")
    return path


def _diff(before: str, after: str, name: str) -> str:
    lines = difflib.unified_diff(
        before.splitlines(keepends=True),
        after.splitlines(keepends=True),
        f"{name} (as it is)",
        f"{name} (resized)",
    )
    return "".join(line if line.endswith("\n") else f"{line}\n" for line in lines)
