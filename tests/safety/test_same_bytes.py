"""The same source gives the same bytes: in another process, zone, language, folder, any day."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

EXAMPLE = Path(__file__).parents[2] / "examples" / "skerry-throw.loop"
KINDS = "pdf,html,text,spoken"
PLACES = (
    {"TZ": "UTC", "LC_ALL": "C.UTF-8", "PYTHONHASHSEED": "1", "folder": "here"},
    {"TZ": "Pacific/Auckland", "LC_ALL": "tr_TR.UTF-8", "PYTHONHASHSEED": "77", "folder": "là-bas"},
    {"TZ": "America/St_Johns", "LC_ALL": "C", "PYTHONHASHSEED": "random", "folder": "a b/c",
     "SOURCE_DATE_EPOCH": "86400"},
)  # fmt: skip


def built(tmp_path: Path, place: dict[str, str]) -> dict[str, bytes]:
    """The editions as a process of its own makes them, in a folder and a zone of its own."""
    here = tmp_path / place["folder"]
    here.mkdir(parents=True)
    shutil.copy(EXAMPLE, here)
    env = {**os.environ, **{k: v for k, v in place.items() if k != "folder"}}
    command = [sys.executable, "-m", "loopwright", "build", EXAMPLE.name, "--to", KINDS]
    done = subprocess.run(command, cwd=here, env=env, capture_output=True, check=False, timeout=120)
    assert done.returncode == 0, done.stderr.decode()
    return {path.name: path.read_bytes() for path in sorted((here / "out").iterdir())}


@pytest.fixture(scope="module")
def first(tmp_path_factory: pytest.TempPathFactory) -> dict[str, bytes]:
    return built(tmp_path_factory.mktemp("first"), PLACES[0])


@pytest.mark.parametrize("place", PLACES[1:], ids=lambda p: p["TZ"])
def test_the_same_bytes_everywhere(
    first: dict[str, bytes], place: dict[str, str], tmp_path: Path
) -> None:
    assert len(first) == 4
    other = built(tmp_path, place)
    assert sorted(other) == sorted(first)
    for name, data in first.items():
        assert other[name] == data, name
