"""Work in a second process: its result, its failures, and the same pages with and without it."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
START = "import os, signal, threading\nfrom loopwright.commands.alongside import alongside\n"

copied = pytest.mark.skipif(
    sys.platform != "linux" or len(os.sched_getaffinity(0)) < 2,
    reason="a copy is made on Linux, where a second processor is free",
)


def run(script: str) -> str:
    done = subprocess.run(
        [sys.executable, "-c", START + script],
        capture_output=True, encoding="utf-8", timeout=60, check=True,
    )  # fmt: skip
    assert done.stderr == ""
    return done.stdout.strip()


@copied
def test_the_work_is_done_by_another_process_and_nothing_of_it_is_left() -> None:
    assert run(
        "wait = alongside(lambda: (os.getpid(), 'a' * 5_000_000))\n"
        "pid, text = wait()\n"
        "assert pid != os.getpid() and len(text) == 5_000_000\n"
        "try: os.waitpid(-1, os.WNOHANG)\n"
        "except ChildProcessError: print('none left')\n"
        "print(len(os.listdir('/proc/self/fd')))\n"
    ).splitlines() == ["none left", "4"], "the three of every process, and the listing"


@pytest.mark.parametrize(
    "mishap",
    ["raise ValueError", "os.kill(os.getpid(), signal.SIGKILL)", "return object()"],
)
def test_what_comes_to_nothing_in_the_copy_is_done_here(mishap: str) -> None:
    assert run(
        "here = os.getpid()\n"
        "def work():\n"
        f"    if os.getpid() != here: {mishap}\n"
        "    return 'made'\n"
        "print(alongside(work)())\n"
    ) == "made"  # fmt: skip


def test_an_error_of_the_work_is_raised_where_it_is_asked_for() -> None:
    assert run(
        "def work(): raise LookupError('no cloth')\n"
        "wait = alongside(work)\n"
        "try: wait()\n"
        "except LookupError as error: print(error)\n"
    ) == "no cloth"  # fmt: skip


@pytest.mark.parametrize(
    "alone",
    [
        "threading.Thread(target=threading.Event().wait, daemon=True).start()\n",
        "os.sched_getaffinity = lambda _: {0}\n",
        "def fork(): raise OSError('no more processes')\nos.fork = fork\n",
    ],
    ids=["threads", "one processor", "no fork"],
)
def test_where_no_copy_can_be_made_the_work_is_done_here(alone: str) -> None:
    assert run(f"{alone}print(alongside(os.getpid)() == os.getpid())\n") == "True"


@copied
def test_the_editions_are_the_same_on_one_processor_and_on_two(tmp_path: Path) -> None:
    source = ROOT / "examples" / "eider-mitten.loop"
    made: list[dict[str, bytes]] = []
    for processors in ({0}, os.sched_getaffinity(0)):
        folder = tmp_path / str(len(processors))
        subprocess.run(
            [sys.executable, "-c",
             f"import os, sys; os.sched_setaffinity(0, {processors!r})\n"
             "from loopwright.cli import entry\n"
             f"sys.argv[1:] = ['build', {str(source)!r}, '--to', 'pdf,html', '--out', "
             f"{str(folder)!r}]\nentry()"],
            env=os.environ | {"SOURCE_DATE_EPOCH": "1"},
            check=True, capture_output=True, timeout=120,
        )  # fmt: skip
        made.append({path.name: path.read_bytes() for path in folder.iterdir()})
    assert len(made[0]) == 2 and made[0] == made[1]
