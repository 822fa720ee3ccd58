"""`loopwright check`: every rule, for every size."""

from __future__ import annotations

import argparse
import json
import sys

from loopwright.check.checked import Checked
from loopwright.check.printing import problem_json, problems_text, summary
from loopwright.commands.border import BAD_CALL, say, status_of, style
from loopwright.compile import check_source
from loopwright.files import Unreadable, read_source

HELP = "check every rule for every size"
EXAMPLE = "loopwright check examples/skerry-throw.loop"


def options(parser: argparse.ArgumentParser) -> None:
    """The options of the command."""
    parser.add_argument(
        "files", metavar="FILE", nargs="+", help="a source, or - for standard input"
    )
    parser.add_argument("--json", action="store_true", help="print the problems as JSON")


def run(args: argparse.Namespace) -> int:
    """Run it; gives the exit status."""
    results: list[Checked] = []
    unread = 0
    for path in args.files:
        try:
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
        print(json.dumps({"files": files}, ensure_ascii=False, indent=2))
    else:
        for checked in results:
            if checked.problems:
                print(problems_text(checked.problems, checked.source, style(sys.stdout)))
            print(f"{checked.source.name}: {summary(checked.problems)}")
    return BAD_CALL if unread else status_of(results)
