"""`loopwright explain`: what a rule means."""

from __future__ import annotations

import argparse
import sys

from loopwright.commands.border import OK, Usage
from loopwright.notation.hidden import named

HELP = "say what a rule means, with examples"
EXAMPLE = "loopwright explain fill-uneven"


def options(parser: argparse.ArgumentParser) -> None:
    """The options of the command."""
    parser.add_argument("rule", metavar="RULE", nargs="?", help="without it: the list of rules")


def run(args: argparse.Namespace) -> int:
    """Run it; gives the exit status."""
    from loopwright.check.explain import explain_text, list_text
    from loopwright.check.registry import all_rules, rule_named
    from loopwright.notation.near import nearest

    if args.rule is None:
        sys.stdout.write(list_text())
        return OK
    rule = rule_named(args.rule.lower())
    if rule is None:
        close = nearest(args.rule, [r.name for r in all_rules()])
        hint = f"; did you mean {close}?" if close else "; “loopwright explain” lists them"
        raise Usage(f"there is no rule “{named(args.rule)}”{hint}")
    sys.stdout.write(explain_text(rule))
    return OK
