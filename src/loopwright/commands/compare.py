"""`loopwright compare`: what changed between two versions of a pattern."""

from __future__ import annotations

import argparse

from loopwright.commands.border import BAD_PATTERN, OK, read_and_check, say, tell, tell_json

HELP = "list what changed between two versions, in the words of the pattern"
EXAMPLE = "loopwright compare printed.loop mended.loop"


def options(parser: argparse.ArgumentParser) -> None:
    """The options of the command."""
    parser.add_argument("old", metavar="OLD", help="the source as it was printed")
    parser.add_argument("new", metavar="NEW", help="the source as it is")
    parser.add_argument("--units", choices=("cm", "in"), help="which unit stands first")
    parser.add_argument("--json", action="store_true", help="print the changes as JSON")


def run(args: argparse.Namespace) -> int:
    """Run it; gives the exit status."""
    from loopwright.edition.errata import Version, errata

    old, new = read_and_check(args.old), read_and_check(args.new)
    if old.has_errors or new.has_errors:
        say("loopwright: only patterns without errors can be compared")
        return BAD_PATTERN
    changes = errata(Version(old.pattern, old.walks), Version(new.pattern, new.walks), args.units)
    if args.json:
        told = [
            {"where": c.where, "was": c.was, "is": c.now, "sizes": list(c.sizes)} for c in changes
        ]
        tell_json({"changes": told})
    else:
        for change in changes:
            tell(str(change))
        if not changes:
            print("nothing that is printed has changed")
    return OK
