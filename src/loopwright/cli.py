"""The command line: arguments in, text out, nothing else."""

from __future__ import annotations

import argparse
import atexit
import gc
import importlib
import os
import re
import sys
from collections.abc import Sequence
from typing import Any

from loopwright import __version__
from loopwright.commands import COMMANDS
from loopwright.commands.border import BAD_CALL, OK, Usage, say
from loopwright.files import Unreadable
from loopwright.notation.hidden import named


class _Parser(argparse.ArgumentParser):
    def __init__(self, *args: Any, **words: Any) -> None:
        super().__init__(*args, **words)
        # “-5cm” is a value that is refused with its reason, not an option that nobody knows.
        self._negative_number_matcher = re.compile(r"-\.?\d")

    def error(self, message: str) -> None:  # type: ignore[override]
        raise Usage(f"{named(message)}\n  try “{self.prog} --help”")


class _Help(argparse.RawDescriptionHelpFormatter):
    """Help as wide as the terminal, found without shutil, which is slow to load."""

    def __init__(self, prog: str) -> None:
        super().__init__(prog, width=_columns() - 2)


def _columns() -> int:
    """The width of the terminal, by the same rules as `shutil.get_terminal_size`."""
    told = os.environ.get("COLUMNS", "")
    if told.isdecimal() and int(told) > 0:
        return int(told)
    try:
        return os.get_terminal_size(sys.__stdout__.fileno()).columns or 80  # type: ignore[union-attr]
    except (AttributeError, ValueError, OSError):
        return 80


def _parser(first: str | None) -> _Parser:
    """The parser for a call whose first word is `first`: a command's options are read from its
    module, so only the command that is called is loaded, or all of them where none is."""
    parser = _Parser(
        prog="loopwright",
        description="Compile a knitting pattern source to a checked stitch model, and from it to "
        "PDF, web page and text.",
        epilog="example: loopwright build examples/skerry-throw.loop",
        formatter_class=_Help,
    )
    parser.add_argument("--version", action="version", version=f"loopwright {__version__}")
    commands = parser.add_subparsers(
        dest="command", metavar="COMMAND", parser_class=_Parser, prog="loopwright"
    )
    for name in (first,) if first in COMMANDS else COMMANDS:
        module = importlib.import_module(
            f"loopwright.commands.{'format_' if name == 'format' else name}"
        )
        made = commands.add_parser(
            name,
            help=module.HELP,
            description=module.HELP[0].upper() + module.HELP[1:] + ".",
            epilog=f"example:\n  {module.EXAMPLE}",
            formatter_class=_Help,
        )
        module.options(made)
        made.set_defaults(run=module.run)
    return parser


def main(argv: Sequence[str] | None = None) -> int:
    """Run the command line; gives the exit status (0 well, 1 pattern errors, 2 a wrong call)."""
    words = sys.argv[1:] if argv is None else list(argv)
    parser = _parser(words[0] if words else None)
    try:
        args, unknown = parser.parse_known_args(words)
        if unknown:
            # argparse would send the user to the help of all commands.
            called = f"loopwright {args.command}" if args.command else "loopwright"
            raise Usage(
                f"“{named(' '.join(unknown))}” is no part of a call of {called}\n"
                f"  try “{called} --help”"
            )
        if args.command is None:
            parser.print_help(sys.stderr)
            return BAD_CALL
        status: int = args.run(args)
        return status
    except Usage as error:
        say(f"loopwright: {error}")
    except Unreadable as error:
        say(f"loopwright: {error}")
    except BrokenPipeError:
        # The reader of a pipe went away: not an error of ours.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return OK
    except OSError as error:
        where = f" ({named(str(error.filename))})" if error.filename else ""
        say(f"loopwright: cannot write: {error.strerror or error}{where}")
    except KeyboardInterrupt:
        say("loopwright: stopped")
        return 130
    return BAD_CALL


def entry() -> None:
    """The console script."""
    # Nearly all that a run makes is in use to its end: look for what is not a hundredth as often.
    gc.set_threshold(70_000, 10, 10)
    # No command does any algebra that several processors could share.
    os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(encoding="utf-8", errors="backslashreplace")
    status = main()
    _leave(status)
    sys.exit(status)


def _leave(status: int) -> None:
    """End the process at once, with all said and all files closed.

    Python would first take apart every value of the run, a tenth of the time of a PDF. Comes back
    where there is something left to wait for or something that could not be said.
    """
    if len(sys._current_frames()) > 1:
        return
    try:
        for stream in (sys.stdout, sys.stderr):
            if stream is not None:
                stream.flush()
    except (OSError, ValueError):
        return
    atexit._run_exitfuncs()
    os._exit(status)
