"""The examples: each checks clean, lies in the one layout and builds."""

from __future__ import annotations

from pathlib import Path

import pytest

from loopwright.build import BuildOptions, build_editions
from loopwright.compile import check_source
from loopwright.notation.format import format_source
from loopwright.notation.parse import parse
from loopwright.notation.source import Source

FOLDER = Path(__file__).parent.parent / "examples"
EXAMPLES = sorted(FOLDER.glob("*.loop"))


def source(path: Path) -> Source:
    return Source.of(path.name, path.read_text("utf-8"))


def test_there_are_enough() -> None:
    assert len(EXAMPLES) >= 6


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda p: p.stem)
def test_checks_clean(path: Path) -> None:
    assert check_source(source(path)).problems == ()


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda p: p.stem)
def test_is_laid_out(path: Path) -> None:
    assert format_source(parse(source(path))) == path.read_text("utf-8")


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda p: p.stem)
def test_text_edition(path: Path, snapshot: object) -> None:
    """The snapshot holds the source and the whole text."""
    text = path.read_text("utf-8")
    made, failed = build_editions(check_source(source(path)), BuildOptions(("text",)), path.stem)
    assert not failed
    assert f"{text}\n~~~~~~~~\n{made[0][1].decode()}" == snapshot
