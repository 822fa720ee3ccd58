"""`loopwright build`: the editions of a source."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TYPE_CHECKING

from loopwright.check.checked import Checked
from loopwright.check.printing import problems_text
from loopwright.commands.border import BAD_CALL, BAD_PATTERN, OK, Usage, report, say, style
from loopwright.commands.resize import wish_options
from loopwright.compile import check_source
from loopwright.files import read_source, write_whole

if TYPE_CHECKING:
    from loopwright.edition.document import Personal

HELP = "check a source, then make its editions"
EXAMPLE = "loopwright build examples/skerry-throw.loop --to pdf --paper letter"


def options(parser: argparse.ArgumentParser) -> None:
    """The options of the command."""
    parser.add_argument("file", metavar="FILE")
    parser.add_argument(
        "--to",
        default="pdf,html,text",
        metavar="KINDS",
        help="which of pdf, html and text, with commas (default: all)",
    )
    parser.add_argument("--out", default="out", metavar="DIR", help="the folder (default: out)")
    parser.add_argument("--size", metavar="NAME", help="one size only")
    wish_options(parser)
    parser.add_argument(
        "--units", choices=("cm", "in"), help="which unit stands first (default: as written)"
    )
    parser.add_argument("--paper", choices=("a4", "letter"), default="a4")
    parser.add_argument(
        "--counts",
        choices=("changes", "all"),
        default="changes",
        help="stitch counts where they change, or after every row",
    )


def run(args: argparse.Namespace) -> int:
    """Run it; gives the exit status."""
    from loopwright.build import BuildOptions, build_editions

    kinds = tuple(kind.strip() for kind in args.to.split(",") if kind.strip())
    known = ("pdf", "html", "text")
    for kind in kinds:
        if kind not in known:
            raise Usage(f"there is no edition “{kind}”; there are {', '.join(known)}")
    if not kinds:
        raise Usage(f"--to names no edition; there are {', '.join(known)}")
    checked = check_source(read_source(args.file))
    report(checked)
    if checked.has_errors:
        say("loopwright: nothing was written, because the pattern has errors")
        return BAD_PATTERN
    if args.size is not None and args.size not in checked.pattern.sizes:
        raise Usage(
            f"there is no size “{args.size}”; the pattern has {', '.join(checked.pattern.sizes)}"
        )
    name = "pattern" if args.file == "-" else Path(args.file).stem
    personal = None
    if any((args.width, args.length, args.gauge, args.scale)):
        made_to_measure = _personal(args, checked)
        if made_to_measure is None:
            return BAD_PATTERN
        checked, personal = made_to_measure
        name += "-personal"
    options = BuildOptions(kinds, args.size, args.units, args.paper, args.counts, personal)
    made, failed = build_editions(checked, options, name)
    for suffix, data in made:
        path = Path(args.out) / suffix
        write_whole(path, data)
        print(path)
    for message in failed:
        say(f"loopwright: {message}")
    return BAD_CALL if failed else OK


def _personal(args: argparse.Namespace, checked: Checked) -> tuple[Checked, Personal] | None:
    """The pattern at the reader's own measures, and its first page; None where it cannot be."""
    from loopwright.edition.personal import make_personal
    from loopwright.fit.resize import CannotResize, Wish, resize

    try:
        wish = Wish.of(
            checked.pattern,
            args.width,
            args.length,
            args.size,
            gauge=args.gauge,
            scale=args.scale,
        )
        result = resize(checked, wish, check_source)
    except ValueError as error:
        raise Usage(str(error)) from None
    except CannotResize as error:
        say(problems_text(error.problems, checked.source, style()))
        say("loopwright: nothing was written")
        return None
    again = check_source(result.source)
    if again.has_errors:
        report(again)
        say("loopwright: the new sizes do not check, so nothing was written")
        return None
    return again, make_personal(checked, again, wish, result.notes, args.size, args.units)
