"""`loopwright new`: a small, commented starter source."""

from __future__ import annotations

import argparse
from pathlib import Path

from loopwright.commands.border import OK, Usage, tell
from loopwright.files import write_whole
from loopwright.notation.hidden import named
from loopwright.notation.names import as_words

HELP = "write a small, commented starter source"
EXAMPLE = "loopwright new my-cloth.loop"


def options(parser: argparse.ArgumentParser) -> None:
    """The options of the command."""
    parser.add_argument("file", metavar="FILE")


def run(args: argparse.Namespace) -> int:
    """Run it; gives the exit status."""
    from loopwright.starter import starter

    path = Path(args.file)
    if not path.name:
        raise Usage("name the new file, as in my-cloth.loop")
    if not path.suffix:
        path = path.with_suffix(".loop")
    if path.exists() or path.is_symlink():
        raise Usage(f"{named(str(path))} is there already, and new never overwrites")
    name = named(str(path))
    title = named(as_words(path.stem).title())
    write_whole(path, starter(name, title).encode("utf-8"))
    tell(f"{name} is written; check it with: loopwright check {name}")
    return OK
