"""The command line: arguments in, text out, nothing else."""

from __future__ import annotations

import argparse
import json
import os
import sys
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TextIO

from loopwright import __version__
from loopwright.check.checked import Checked
from loopwright.check.printing import Style, problem_json, problems_text, summary
from loopwright.compile import check_source
from loopwright.files import Unreadable, read_source, write_whole
from loopwright.notation.bounds import MAX_LISTED_ROWS

OK, BAD_PATTERN, BAD_CALL = 0, 1, 2


class _Usage(Exception):
    """A call that is wrong; the text says how."""


class _Parser(argparse.ArgumentParser):
    def error(self, message: str) -> None:  # type: ignore[override]
        raise _Usage(f"{message}\n  try “{self.prog} --help”")


def _say(text: str) -> None:
    """To standard error: everything that is no result."""
    print(text, file=sys.stderr)


def _style(stream: TextIO | None = None) -> Style:
    plain = "NO_COLOR" in os.environ or os.environ.get("TERM") == "dumb"
    return Style(colour=(stream or sys.stderr).isatty() and not plain)


def _report(checked: Checked) -> None:
    """The problems of a file, to standard error."""
    if checked.problems:
        _say(problems_text(checked.problems, checked.source, _style()))


def _status(checked: Sequence[Checked]) -> int:
    return BAD_PATTERN if any(c.has_errors for c in checked) else OK


# --- commands -----------------------------------------------------------------------------------


def _check(args: argparse.Namespace) -> int:
    results: list[Checked] = []
    unread = 0
    for path in args.files:
        try:
            results.append(check_source(read_source(path)))
        except Unreadable as error:
            _say(f"loopwright: {error}")
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
                print(problems_text(checked.problems, checked.source, _style(sys.stdout)))
            print(f"{checked.source.name}: {summary(checked.problems)}")
    return BAD_CALL if unread else _status(results)


def _rows(args: argparse.Namespace) -> int:
    from loopwright.edition.listing import rows_json, rows_table

    checked = check_source(read_source(args.file))
    _report(checked)
    longest = max((walk.rows for walk in checked.walks), default=0)
    if longest > MAX_LISTED_ROWS:
        _say(
            f"loopwright: a piece has {longest:,} rows; rows lists up to {MAX_LISTED_ROWS:,} "
            "(the check above covers them all)"
        )
        return BAD_PATTERN
    parts = rows_json(checked) if args.json else rows_table(checked)
    for part in parts:
        sys.stdout.write(part)
    return _status([checked])


def _build(args: argparse.Namespace) -> int:
    from loopwright.build import BuildOptions, build_editions

    kinds = tuple(kind.strip() for kind in args.to.split(",") if kind.strip())
    known = ("pdf", "html", "text")
    for kind in kinds:
        if kind not in known:
            raise _Usage(f"there is no edition “{kind}”; there are {', '.join(known)}")
    if not kinds:
        raise _Usage(f"--to names no edition; there are {', '.join(known)}")
    checked = check_source(read_source(args.file))
    _report(checked)
    if checked.has_errors:
        _say("loopwright: nothing was written, because the pattern has errors")
        return BAD_PATTERN
    if args.size is not None and args.size not in checked.pattern.sizes:
        raise _Usage(
            f"there is no size “{args.size}”; the pattern has {', '.join(checked.pattern.sizes)}"
        )
    options = BuildOptions(kinds, args.size, args.units, args.paper, args.counts)
    name = "pattern" if args.file == "-" else Path(args.file).stem
    made, failed = build_editions(checked, options, name)
    for suffix, data in made:
        path = Path(args.out) / suffix
        write_whole(path, data)
        print(path)
    for message in failed:
        _say(f"loopwright: {message}")
    return BAD_CALL if failed else OK


def _resize(args: argparse.Namespace) -> int:
    from loopwright.fit.resize import CannotResize, Wish, resize
    from loopwright.fit.table import before_after

    if args.width is None and args.length is None:
        raise _Usage("say what to change: --width 150cm, --length 200cm or both")
    if args.in_place and args.output:
        raise _Usage("--in-place and -o exclude each other")
    if args.in_place and args.file == "-":
        raise _Usage("standard input cannot be changed in place")
    checked = check_source(read_source(args.file))
    _report(checked)
    if checked.has_errors:
        _say("loopwright: nothing was written, because the pattern has errors")
        return BAD_PATTERN
    try:
        wish = Wish.of(checked.pattern, args.width, args.length, args.size)
    except ValueError as error:
        raise _Usage(str(error)) from None
    try:
        result = resize(checked, wish, check_source)
    except CannotResize as error:
        _say(problems_text(error.problems, checked.source, _style()))
        _say("loopwright: nothing was written")
        return BAD_PATTERN
    again = check_source(result.source)
    table = before_after(checked, again)
    if again.has_errors:
        _report(again)
        _say("loopwright: the new sizes do not check, so nothing was written")
        return BAD_PATTERN
    for note in result.notes:
        _say(f"note: {note}")
    if args.in_place or args.output:
        path = Path(args.file if args.in_place else args.output)
        if args.output and path.exists() and args.file != "-" and path.samefile(args.file):
            raise _Usage(f"{path} is the original; use --in-place to change it")
        write_whole(path, result.source.text.encode("utf-8"))
        print(table)
        _say(f"written: {path}")
    else:
        # The new source is the result here, so the table goes where messages go.
        _say(table)
        sys.stdout.write(result.source.text)
    return OK


def _format(args: argparse.Namespace) -> int:
    from loopwright.notation.format import format_source
    from loopwright.notation.parse import parse

    status = OK
    for path in args.files:
        try:
            source = read_source(path)
        except Unreadable as error:
            _say(f"loopwright: {error}")
            status = BAD_CALL
            continue
        parsed = parse(source)
        if parsed.recovered:
            unclear = [p for p in parsed.problems if p.is_error]
            _say(problems_text(unclear, source, _style()))
            _say(f"loopwright: {source.name} was left as it is")
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
            print(f"{source.name}: would be laid out anew")
            status = max(status, BAD_PATTERN)
        elif text != raw and path != "-":
            print(f"{source.name}: laid out anew")
    return status


def _new(args: argparse.Namespace) -> int:
    from loopwright.starter import starter

    path = Path(args.file)
    if not path.suffix:
        path = path.with_suffix(".loop")
    if path.exists() or path.is_symlink():
        raise _Usage(f"{path} is there already, and new never overwrites")
    title = path.stem.replace("-", " ").replace("_", " ").title()
    write_whole(path, starter(str(path), title).encode("utf-8"))
    print(f"{path} is written; check it with: loopwright check {path}")
    return OK


def _explain(args: argparse.Namespace) -> int:
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
        raise _Usage(f"there is no rule “{args.rule}”{hint}")
    sys.stdout.write(explain_text(rule))
    return OK


# --- the parser ---------------------------------------------------------------------------------


def _parser() -> _Parser:
    parser = _Parser(
        prog="loopwright",
        description="Compile a knitting pattern source to a checked stitch model, and from it to "
        "PDF, web page and text.",
        epilog="example: loopwright build examples/skerry-throw.loop",
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    parser.add_argument("--version", action="version", version=f"loopwright {__version__}")
    commands = parser.add_subparsers(dest="command", metavar="COMMAND", parser_class=_Parser)

    def command(
        name: str, run: Callable[[argparse.Namespace], int], help: str, example: str
    ) -> argparse.ArgumentParser:
        made = commands.add_parser(
            name,
            help=help,
            description=help[0].upper() + help[1:] + ".",
            epilog=f"example:\n  {example}",
            formatter_class=argparse.RawDescriptionHelpFormatter,
        )
        made.set_defaults(run=run)
        return made

    new = command(
        "new", _new, "write a small, commented starter source", "loopwright new my-cloth.loop"
    )
    new.add_argument("file", metavar="FILE")

    check = command(
        "check",
        _check,
        "check every rule for every size",
        "loopwright check examples/skerry-throw.loop",
    )
    check.add_argument("files", metavar="FILE", nargs="+", help="a source, or - for standard input")
    check.add_argument("--json", action="store_true", help="print the problems as JSON")

    rows = command(
        "rows",
        _rows,
        "list the count of every row, as the checker walked it",
        "loopwright rows examples/gull-hat.loop",
    )
    rows.add_argument("file", metavar="FILE")
    rows.add_argument("--json", action="store_true", help="print the rows as JSON")

    build = command(
        "build",
        _build,
        "check a source, then make its editions",
        "loopwright build examples/skerry-throw.loop --to pdf --paper letter",
    )
    build.add_argument("file", metavar="FILE")
    build.add_argument(
        "--to",
        default="pdf,html,text",
        metavar="KINDS",
        help="which of pdf, html and text, with commas (default: all)",
    )
    build.add_argument("--out", default="out", metavar="DIR", help="the folder (default: out)")
    build.add_argument("--size", metavar="NAME", help="one size only")
    build.add_argument(
        "--units", choices=("cm", "in"), help="which unit stands first (default: as written)"
    )
    build.add_argument("--paper", choices=("a4", "letter"), default="a4")
    build.add_argument(
        "--counts",
        choices=("changes", "all"),
        default="changes",
        help="stitch counts where they change, or after every row",
    )

    resize = command(
        "resize",
        _resize,
        "find the counts for a new width or length",
        "loopwright resize examples/skerry-throw.loop --width 160cm --size bed -o wide.loop",
    )
    resize.add_argument("file", metavar="FILE")
    resize.add_argument("--width", metavar="WIDTH", help="such as 150cm, 60in or 90/120/150cm")
    resize.add_argument("--length", metavar="LENGTH", help="such as 180cm")
    resize.add_argument("--size", metavar="NAME", help="change this size alone")
    resize.add_argument("-o", dest="output", metavar="NEW", help="write the new source here")
    resize.add_argument("--in-place", action="store_true", help="change the source itself")

    format_ = command(
        "format",
        _format,
        "lay sources out in the one way",
        "loopwright format examples/skerry-throw.loop",
    )
    format_.add_argument("files", metavar="FILE", nargs="+")
    format_.add_argument("--check", action="store_true", help="only tell; exit 1 where it differs")

    explain = command(
        "explain",
        _explain,
        "say what a rule means, with examples",
        "loopwright explain fill-uneven",
    )
    explain.add_argument("rule", metavar="RULE", nargs="?", help="without it: the list of rules")
    return parser


def main(argv: list[str] | None = None) -> int:
    """Run the command line; gives the exit status (0 well, 1 pattern errors, 2 a wrong call)."""
    parser = _parser()
    try:
        args = parser.parse_args(argv)
        if args.command is None:
            parser.print_help(sys.stderr)
            return BAD_CALL
        status: int = args.run(args)
        return status
    except _Usage as error:
        _say(f"loopwright: {error}")
    except Unreadable as error:
        _say(f"loopwright: {error}")
    except BrokenPipeError:
        # The reader of a pipe went away: not an error of ours.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return OK
    except OSError as error:
        where = f" ({error.filename})" if error.filename else ""
        _say(f"loopwright: cannot write: {error.strerror or error}{where}")
    except KeyboardInterrupt:
        _say("loopwright: stopped")
        return 130
    return BAD_CALL


def entry() -> None:
    """The console script."""
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(encoding="utf-8", errors="backslashreplace")
    sys.exit(main())
