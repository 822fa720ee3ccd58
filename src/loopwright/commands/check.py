"""`loopwright check`: every rule, for every size."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path
from typing import TextIO

from loopwright.check.checked import Checked
from loopwright.check.printing import problem_json, summary
from loopwright.commands.border import BAD_CALL, Usage, say, show, status_of, tell, tell_json
from loopwright.compile import check_source
from loopwright.files import Unreadable, read_source, read_text, write_whole
from loopwright.notation.hidden import named

HELP = "check every rule for every size"
EXAMPLE = "loopwright check examples/skerry-throw.loop"


def options(parser: argparse.ArgumentParser) -> None:
    """The options of the command."""
    parser.add_argument(
        "files", metavar="FILE", nargs="+", help="a source, or - for standard input"
    )
    parser.add_argument("--json", action="store_true", help="print the problems as JSON")
    parser.add_argument(
        "--fix",
        action="store_true",
        help="mend what has only one right change, show it, and check again "
        "(with -, the mended source goes to standard output)",
    )
    parser.add_argument(
        "--dry-run", action="store_true", help="with --fix: only show, and leave the file"
    )


def run(args: argparse.Namespace) -> int:
    """Run it; gives the exit status."""
    if args.dry_run and not args.fix:
        raise Usage("--dry-run goes with --fix: it shows what --fix would change")
    to_output = args.fix and not args.dry_run and "-" in args.files
    if to_output and args.json:
        raise Usage("with --fix and -, the mended source goes to standard output, not JSON")
    if args.fix and args.files.count("-") > 1:
        raise Usage("standard input can be read only once")
    # What is no result goes to standard error: the diff beside JSON, all words beside a source.
    shown = sys.stderr if to_output or args.json else sys.stdout
    results: list[Checked] = []
    unread = 0
    for path in args.files:
        try:
            if args.fix:
                results.append(_fix(path, args.dry_run, shown))
            else:
                results.append(check_source(read_source(path)))
        except Unreadable as error:
            say(f"loopwright: {error}")
            unread += 1
    if args.json:
        files = [
            {
                "file": c.source.name,
                "problems": [problem_json(problem, c.source) for problem in c.problems],
            }
            for c in results
        ]
        tell_json({"files": files})
    else:
        for checked in results:
            if checked.problems:
                show(checked.problems, checked.source, shown)
            tell(f"{named(checked.source.name)}: {summary(checked.problems)}", shown)
    return BAD_CALL if unread else status_of(results)


def _fix(path: str, dry_run: bool, shown: TextIO) -> Checked:
    """Mend one file, show its changes, write it; gives what is there now, after every rule.

    Raises `Unreadable`, also where it cannot be written.
    """
    from loopwright.check.fixing import diff_of, fix_text

    name, text = read_text(path)
    fixed = fix_text(name, text, check_source)
    if fixed.changes:
        tell(diff_of(named(name), text, fixed.text), shown, end="")
        for change in fixed.changes:
            tell(f"{named(name)}:{change.line}: {change.title} ({change.rule})", shown)
    if dry_run:
        if fixed.changes:
            tell(f"{named(name)}: left as it is; then {summary(fixed.checked.problems)}\n", shown)
        return fixed.before
    if path == "-":
        # As bytes, so that no line end is changed on its way.
        sys.stdout.flush()
        sys.stdout.buffer.write(fixed.text.encode("utf-8"))
        sys.stdout.buffer.flush()
    elif fixed.changes:
        try:
            write_whole(Path(path), fixed.text.encode("utf-8"))
        except OSError as error:
            raise Unreadable(
                f"{named(path)} cannot be written: {error.strerror or error}"
            ) from None
    if fixed.changes:
        print(file=shown)
    return fixed.checked
