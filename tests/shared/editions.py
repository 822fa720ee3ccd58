"""The examples, each checked once a process, and their editions, each built once.

What a test is given here it must not change, and a test of building itself (that it says the same
again, that it reads a file) builds for itself.
"""

from __future__ import annotations

from functools import cache
from pathlib import Path
from typing import Any

from loopwright.build import BuildOptions, build_editions
from loopwright.compile import Checked, check_source
from loopwright.notation.source import Source

FOLDER = Path(__file__).parents[2] / "examples"
EXAMPLES = tuple(sorted(path.stem for path in FOLDER.glob("*.loop")))


def text_of(name: str) -> str:
    """The source of an example."""
    return (FOLDER / f"{name}.loop").read_text("utf-8")


@cache
def checked_example(name: str) -> Checked:
    """An example after every rule."""
    return check_source(Source.of(f"{name}.loop", text_of(name)))


@cache
def _built(name: str, options: BuildOptions) -> bytes:
    ((_, data),), failed = build_editions(checked_example(name), options, name)
    assert not failed
    return data


def edition(name: str, kind: str, **options: Any) -> bytes:
    """One edition of an example; `options` are those of `BuildOptions`."""
    return _built(name, BuildOptions((kind,), **options))
