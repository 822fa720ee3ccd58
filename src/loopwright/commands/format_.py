"""`loopwright format`: the one layout of a source."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path

from loopwright.commands.border import BAD_CALL, BAD_PATTERN, OK, say, show, tell
from loopwright.files import Unreadable, read_source, write_whole
from loopwright.notation.hidden import named

HELP = "lay sources out in the one way"
EXAMPLE = "loopwright format examples/skerry-throw.loop"


def options(parser: argparse.ArgumentParser) -> None:
    """The options of the command."""
    parser.add_argument("files", metavar="FILE", nargs="+")
    parser.add_argument("--check", action="store_true", help="only tell; exit 1 where it differs")


def run(args: argparse.Namespace) -> int:
    """Run it; gives the exit status."""
    from loopwright.notation.format import format_source
    from loopwright.notation.parse import parse

    status = OK
    for path in args.files:
        try:
            source = read_source(path)
        except Unreadable as error:
            say(f"loopwright: {error}")
            status = BAD_CALL
            continue
        parsed = parse(source)
        if parsed.recovered:
            unclear = [p for p in parsed.problems if p.is_error]
            show(unclear, source)
            say(f"loopwright: {named(source.name)} was left as it is")
            status = max(status, BAD_PATTERN)
            continue
        text = format_source(parsed)
        raw = source.text if path == "-" else Path(path).read_bytes().decode("utf-8")
        if path == "-":
            if not args.check:
                sys.stdout.write(text)
        elif text != raw and not args.check:
            write_whole(Path(path), text.encode("utf-8"))
        if text != raw and args.check:
            tell(f"{named(source.name)}: would be laid out anew")
            status = max(status, BAD_PATTERN)
        elif text != raw and path != "-":
            tell(f"{named(source.name)}: laid out anew")
    return status
