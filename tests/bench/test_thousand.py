"""The shelf of a thousand patterns, with two dozen of them: text only, in this process and two."""

from __future__ import annotations

import os
import sys
from collections import Counter
from pathlib import Path

import pytest

from loopwright import cli, shelf
from loopwright.compile import check_source
from loopwright.notation.source import Source

sys.path.insert(0, str(Path(__file__).parent))
import thousand
from shelves import state_of

NUMBER = 24


@pytest.fixture(scope="module")
def made() -> list[thousand.Made]:
    return list(thousand.patterns(NUMBER))


@pytest.fixture(scope="module")
def sources(made: list[thousand.Made], tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("thousand")
    for one in made:
        (folder / one.name).write_text(one.text, "utf-8")
    return folder


def test_the_patterns_are_right_distinct_and_the_same_for_one_seed(
    made: list[thousand.Made],
) -> None:
    assert made == list(thousand.patterns(NUMBER))
    assert made[:4] != list(thousand.patterns(4, seed=2))
    bodies = {one.text.replace(one.text.split('"')[1], "") for one in made}
    assert len(bodies) == len({one.name for one in made}) == NUMBER
    assert not any(check_source(Source.of("", one.text)).has_errors for one in made)
    # The shapes that are written out keep their counts; all others have other measures.
    assert sum(one.resized for one in made) >= NUMBER // 2


@pytest.mark.parametrize("workers", ["1", "2"])
def test_a_shelf_is_built_once_and_then_not_at_all(
    sources: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str], workers: str
) -> None:
    out = tmp_path / "out"
    here = tmp_path / "here"
    here.mkdir()
    for path in sources.iterdir():
        (here / path.name).write_bytes(path.read_bytes())

    def built(*options: str) -> int:
        """Build the shelf; gives how many were built, and looks that none was built twice."""
        arguments = ["--to", "text", "--out", str(out), "--jobs", workers, *options]
        assert cli.main(["build", str(here), *arguments]) == 0
        said = capsys.readouterr()
        number = int(said.out.splitlines()[-1].split()[0])
        assert said.out == f"{number} built, {NUMBER - number} unchanged, 0 failed\n"
        told = Counter(line.split()[1] for line in said.err.splitlines())
        assert len(told) == number and set(told.values()) <= {1}
        return number

    assert built() == NUMBER
    pages = sorted(out.glob("*.txt"))
    assert [page.stem for page in pages] == sorted(path.stem for path in here.iterdir())
    before = state_of(out)
    assert built() == 0
    assert state_of(out) == before

    # A new time alone is no new source; other words are, and of one pattern only.
    one = here / "0007.loop"
    os.utime(one, (1, 1))
    assert built() == 0 and state_of(out) == before
    one.write_text(one.read_text("utf-8").replace('pattern "', 'pattern "New '), "utf-8")
    assert built() == 1
    changed = {name for name, state in state_of(out).items() if state != before[name]}
    assert changed == {"0007.txt", shelf.RECORD}

    (out / shelf.RECORD).unlink()
    same = {page.name: page.read_bytes() for page in pages}
    assert built() == NUMBER
    assert {page.name: page.read_bytes() for page in pages} == same

    assert built("--counts", "all") == NUMBER
    assert built("--counts", "all") == 0
    assert built() == NUMBER
