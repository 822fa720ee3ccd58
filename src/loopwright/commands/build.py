"""`loopwright build`: the editions of a source."""

from __future__ import annotations

import argparse
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from loopwright.check.checked import Checked
from loopwright.commands.alongside import alongside
from loopwright.commands.border import BAD_CALL, BAD_PATTERN, OK, Usage, report, say, tell
from loopwright.commands.measures import at_measures, wish_options
from loopwright.compile import check_source
from loopwright.files import read_source, safe_name, write_inside
from loopwright.notation.hidden import named
from loopwright.record import replace

if TYPE_CHECKING:
    from loopwright.build import BuildOptions
    from loopwright.edition.document import ClothPicture, Personal
    from loopwright.edition.errata import Change

HELP = "check a source, then make its editions"
EXAMPLE = "loopwright build examples/skerry-throw.loop --to pdf --paper letter"


def options(parser: argparse.ArgumentParser) -> None:
    """The options of the command."""
    parser.add_argument(
        "files",
        metavar="FILE",
        nargs="+",
        help="a source, - for standard input, or several sources and folders of sources",
    )
    parser.add_argument(
        "--to",
        default="pdf,html,text",
        metavar="KINDS",
        help="which of pdf, html, text, spoken (for reading aloud) and lesson (a teaching sheet), "
        "with commas (default: pdf,html,text)",
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
    parser.add_argument(
        "--terms", choices=("us", "uk"), default="us", help="US or UK knitting terms (default: us)"
    )
    parser.add_argument(
        "--language",
        choices=("en", "de", "fr", "es"),
        default="en",
        help="the language of every edition (de, fr, es: not yet checked by a native knitter)",
    )
    parser.add_argument(
        "--large",
        action="store_true",
        help="the pages in large print: one column, one size at a time (NAME-large.pdf …)",
    )
    parser.add_argument(
        "--since", metavar="OLD", help="list on the last page what changed since that source"
    )
    parser.add_argument(
        "--jobs",
        type=_at_least_one,
        metavar="N",
        help="processes for many sources (default: one a core)",
    )
    parser.add_argument(
        "--scheduler", metavar="ADDRESS", help="build on a Dask scheduler, such as tcp://host:8786"
    )


def _changes(path: str, new: Checked, options: BuildOptions) -> tuple[Change, ...]:
    """What changed since the source at `path`. Raises Usage where it cannot be compared."""
    from loopwright.edition.errata import Version, errata

    old = check_source(read_source(path))
    if old.has_errors:
        raise Usage(f"{named(path)} has errors, so it cannot be what was printed")
    before, after = Version(old.pattern, old.walks), Version(new.pattern, new.walks)
    return errata(before, after, options.units, options.words)


def _at_least_one(text: str) -> int:
    number = int(text)
    if number < 1:
        raise ValueError(text)
    return number


def run(args: argparse.Namespace) -> int:
    """Run it; gives the exit status."""
    from loopwright.build import KINDS, BuildOptions, build_editions

    kinds = tuple(kind.strip() for kind in args.to.split(",") if kind.strip())
    for kind in kinds:
        if kind not in KINDS:
            raise Usage(f"there is no edition “{named(kind)}”; there are {', '.join(KINDS)}")
    if not kinds:
        raise Usage(f"--to names no edition; there are {', '.join(KINDS)}")
    if args.language != "en" and args.terms == "uk":
        raise Usage("--terms uk are English words: they do not go with another --language")
    options = BuildOptions(
        kinds,
        args.size,
        args.units,
        args.paper,
        args.counts,
        terms=args.terms,
        language=args.language,
        large=args.large,
    )
    if "" in args.files:
        raise Usage("the name of a source is empty; . is the folder you are in")
    if len(args.files) > 1 or Path(args.files[0]).is_dir():
        from loopwright.commands.shelf import build_shelf

        if args.since is not None:
            raise Usage("--since belongs to one source, not to a shelf of them")
        if _is_personal(args):
            raise Usage("a copy to a reader's measures is made of one source at a time")
        return build_shelf(args.files, options, args.out, args.jobs, args.scheduler)
    file = args.files[0]
    checked = check_source(read_source(file))
    report(checked)
    if checked.has_errors:
        say("loopwright: nothing was written, because the pattern has errors")
        return BAD_PATTERN
    if args.size is not None and args.size not in checked.pattern.sizes:
        raise Usage(
            f"there is no size “{named(args.size)}”; the pattern has "
            f"{', '.join(checked.pattern.sizes)}"
        )
    if args.since is not None:
        options = replace(options, changes=_changes(args.since, checked, options))
    name = "pattern" if file == "-" else safe_name(Path(file).stem)
    if _is_personal(args):
        made_to_measure = _personal(args, checked, options)
        if made_to_measure is None:
            return BAD_PATTERN
        checked, personal = made_to_measure
        options = replace(options, personal=personal)
        name += "-personal"
    made, failed = build_editions(checked, options, name, _cloth(checked, options))
    for suffix, data in made:
        tell(named(str(write_inside(Path(args.out), suffix, data))))
    for message in failed:
        say(f"loopwright: {message}")
    return BAD_CALL if failed else OK


def _cloth(checked: Checked, options: BuildOptions) -> Callable[[], ClothPicture | None] | None:
    """The picture of the cloth, drawn by a second process while this one makes the words."""
    from loopwright.build import cloth_of, has_cloth
    from loopwright.edition.document import ClothPicture

    if not has_cloth(options):
        return None

    def draw() -> tuple[str, int, int, str] | None:
        made = cloth_of(checked, options)
        return None if made is None else (made.src, made.width, made.height, made.words)

    wait = alongside(draw)

    def give() -> ClothPicture | None:
        drawn = wait()
        return None if drawn is None else ClothPicture(*drawn)

    return give


def _is_personal(args: argparse.Namespace) -> bool:
    """Whether a reader's own measures are asked for."""
    return any((args.width, args.length, args.gauge, args.scale))


def _personal(
    args: argparse.Namespace, checked: Checked, options: BuildOptions
) -> tuple[Checked, Personal] | None:
    """The pattern at the reader's own measures, and its first page; None where it cannot be."""
    from loopwright.edition.personal import make_personal

    made = at_measures(checked, args, lambda again: again.has_errors)
    if made is None:
        return None
    again, notes = made.checked, made.resized.notes
    words = options.words
    return again, make_personal(checked, again, made.wish, notes, args.size, args.units, words)
