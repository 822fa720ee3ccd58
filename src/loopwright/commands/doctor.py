"""`loopwright doctor`: what this machine has, and what is missing."""

from __future__ import annotations

import argparse
import importlib
import platform
import sys
from collections.abc import Iterator

from loopwright import __version__
from loopwright.commands.border import BAD_CALL, OK
from loopwright.record import dataclass

HELP = "say what this machine has and what is missing, with the line that installs it"
EXAMPLE = "loopwright doctor"

_PACKAGES = ("lark", "jinja2", "pint", "weasyprint", "numpy", "pillow", "rich", "babel")


@dataclass(frozen=True, slots=True)
class Finding:
    """One thing looked at: `fine` or not, what was found, and what installs it (or empty)."""

    name: str
    fine: bool
    found: str
    install: str = ""


def options(parser: argparse.ArgumentParser) -> None:
    """It has none."""


def run(args: argparse.Namespace) -> int:
    """Run it; gives the exit status: 0 where nothing is missing."""
    fine = True
    for finding in examine():
        fine = fine and finding.fine
        mark = "ok     " if finding.fine else "MISSING"
        print(f"{mark}  {finding.name:<18} {finding.found}")
        if finding.install:
            print(f"{'':9}{'':<18} install it with: {finding.install}")
    print("everything is there" if fine else "what is missing keeps some editions from being made")
    return OK if fine else BAD_CALL


def examine() -> Iterator[Finding]:
    """Look at everything the editions need."""
    yield Finding("loopwright", True, __version__)
    yield Finding("python", sys.version_info >= (3, 11), platform.python_version())
    yield Finding("system", True, f"{platform.system()} {platform.machine()}")
    for name in _PACKAGES:
        yield _package(name)
    yield _native()
    yield _fonts()
    yield Finding("cache", True, "none is used: tables and templates come ready with the package")
    yield _scheduler()


def _package(name: str) -> Finding:
    from importlib.metadata import PackageNotFoundError, version  # slow to load: only here

    try:
        return Finding(name, True, version(name))
    except PackageNotFoundError:
        return Finding(name, False, "not installed", f"pip install {name}")


def _scheduler() -> Finding:
    """Dask's scheduler, which only a shelf on several machines asks for."""
    found = _package("distributed")
    if found.fine:
        return found
    needed = "not installed; only build --scheduler needs it"
    return Finding("distributed", True, needed, "pip install 'loopwright[shelf]'")


def _native() -> Finding:
    """The libraries under the PDF, loaded as the PDF edition loads them."""
    from loopwright.edition.engine import (
        NativeLibrariesMissing,
        install_command,
        load_weasyprint,
    )

    try:
        load_weasyprint()
        pango = importlib.import_module("weasyprint.text.ffi").pango
    except NativeLibrariesMissing:
        return Finding("pango", False, "not found; no PDF can be made", install_command())
    except ImportError as error:
        return Finding("pango", False, str(error), "pip install weasyprint")
    number = int(pango.pango_version())
    return Finding("pango", True, f"{number // 10000}.{number // 100 % 100}.{number % 100}")


def _fonts() -> Finding:
    """The fonts that come with the package."""
    from loopwright.edition.pdf import bundled_fonts

    files = bundled_fonts()
    missing = [path.name for path in files if not path.is_file()]
    if missing:
        return Finding(
            "fonts", False, f"lost: {', '.join(missing)}", "pip install loopwright again"
        )
    return Finding("fonts", True, f"{len(files)} bundled")
