"""`loopwright resize`: new counts for a new width or length."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path

from loopwright.check.printing import problems_text
from loopwright.commands.border import BAD_PATTERN, OK, Usage, miscounted, report, say, style
from loopwright.compile import check_source
from loopwright.files import read_source, write_whole

HELP = "find the counts for a new width or length"
EXAMPLE = "loopwright resize examples/skerry-throw.loop --width 160cm --size bed -o wide.loop"


def options(parser: argparse.ArgumentParser) -> None:
    """The options of the command."""
    parser.add_argument("file", metavar="FILE")
    parser.add_argument("--width", metavar="WIDTH", help="such as 150cm, 60in or 90/120/150cm")
    parser.add_argument("--length", metavar="LENGTH", help="such as 180cm")
    parser.add_argument("--size", metavar="NAME", help="change this size alone")
    parser.add_argument("-o", dest="output", metavar="NEW", help="write the new source here")
    parser.add_argument("--in-place", action="store_true", help="change the source itself")


def run(args: argparse.Namespace) -> int:
    """Run it; gives the exit status."""
    from loopwright.fit.resize import CannotResize, Wish, resize
    from loopwright.fit.table import before_after

    if args.width is None and args.length is None:
        raise Usage("say what to change: --width 150cm, --length 200cm or both")
    if args.in_place and args.output:
        raise Usage("--in-place and -o exclude each other")
    if args.in_place and args.file == "-":
        raise Usage("standard input cannot be changed in place")
    checked = check_source(read_source(args.file))
    report(checked)
    if miscounted(checked):
        say("loopwright: nothing was written, because the pattern has errors")
        return BAD_PATTERN
    try:
        wish = Wish.of(checked.pattern, args.width, args.length, args.size)
    except ValueError as error:
        raise Usage(str(error)) from None
    try:
        result = resize(checked, wish, check_source)
    except CannotResize as error:
        say(problems_text(error.problems, checked.source, style()))
        say("loopwright: nothing was written")
        return BAD_PATTERN
    again = check_source(result.source)
    table = before_after(checked, again)
    if miscounted(again):
        report(again)
        say("loopwright: the new sizes do not check, so nothing was written")
        return BAD_PATTERN
    if again.has_errors:
        report(again)  # the new counts hold, but the strands need other feeds
    for note in result.notes:
        say(f"note: {note}")
    if args.in_place or args.output:
        path = Path(args.file if args.in_place else args.output)
        if args.output and path.exists() and args.file != "-" and path.samefile(args.file):
            raise Usage(f"{path} is the original; use --in-place to change it")
        write_whole(path, result.source.text.encode("utf-8"))
        print(table)
        say(f"written: {path}")
    else:
        # The new source is the result here, so the table goes where messages go.
        say(table)
        sys.stdout.write(result.source.text)
    return OK
