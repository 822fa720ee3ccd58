"""A crew of processes: each job's result once, whatever becomes of a worker."""

from __future__ import annotations

import multiprocessing
import os
import signal
import sys
import time
from multiprocessing.connection import Connection
from pathlib import Path

import pytest

from loopwright import crew
from loopwright.crew import run_crew

pytestmark = pytest.mark.skipif(sys.platform == "darwin", reason="the jobs are functions of a test")


def nothing() -> None:
    pass


def twice(job: tuple[int, str]) -> int:
    return 2 * job[0]


def lost(job: tuple[int, str]) -> int:
    return -job[0]


def size(job: tuple[int, str]) -> int:
    return len(job[1])


def worked(jobs, work, workers=2, tries=3):  # type: ignore[no-untyped-def]
    return sorted(run_crew(jobs, work, lost, workers, nothing, size, tries))


@pytest.mark.parametrize("length", [1, 3_000, 5_000, 1_000_000])
@pytest.mark.parametrize("workers", [1, 2, 5])
def test_each_once(length: int, workers: int) -> None:
    jobs = [(n, "x" * length) for n in range(1, 14)]
    assert worked(jobs, twice, workers) == [2 * n for n, _ in jobs]


def large_answer(job: tuple[int, str]) -> bytes:
    return bytes(3_000_000 + job[0])


def test_large_answers_to_small_jobs_do_not_meet_in_the_line() -> None:
    """A caller that hands out while a worker answers must not wait for it and it for him."""
    made = list(run_crew([(n, "x") for n in range(20)], large_answer, lost, 2, nothing, size))  # type: ignore[type-var]
    assert sorted(map(len, made)) == [3_000_000 + n for n in range(20)]  # type: ignore[arg-type]


def dies_midway(line: Connection, other_end: Connection, *_: object) -> None:
    """A worker that dies at the third job, the first time, with half an answer in its line."""
    crew.hold_signals(False)
    other_end.close()
    while True:
        number, mark = line.recv()
        if number == 3 and not Path(mark).exists():
            Path(mark).write_text("")
            os.write(line.fileno(), (5_000).to_bytes(4, "big") + b"half")
            os.kill(os.getpid(), signal.SIGKILL)
        line.send(2 * number)


@pytest.mark.skipif(not crew.forks(), reason="the patched worker needs a forked process")
def test_a_worker_that_dies_in_the_midst_of_an_answer(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(crew, "_serve", dies_midway)
    mark = tmp_path / "mark"
    assert worked([(n, str(mark)) for n in range(1, 9)], twice) == [2 * n for n in range(1, 9)]
    assert mark.exists()


def always_dies(job: tuple[int, str]) -> int:
    if job[0] == 3:
        os._exit(1)
    return 2 * job[0]


def test_what_takes_every_worker_down_is_lost_and_the_rest_is_not() -> None:
    jobs = [(n, "") for n in range(1, 9)]
    assert worked(jobs, always_dies) == sorted([-3] + [2 * n for n in range(1, 9) if n != 3])


def sleeps(job: tuple[int, str]) -> int:
    time.sleep(job[0])
    return job[0]


def test_who_stops_taking_results_stops_the_workers() -> None:
    before = set(multiprocessing.active_children())
    results = run_crew([(0, ""), (60, ""), (61, "")], sleeps, lost, 2, nothing, size)
    assert next(results) == 0
    started = time.monotonic()
    results.close()  # type: ignore[attr-defined]
    assert time.monotonic() - started < 10
    assert set(multiprocessing.active_children()) <= before


def test_nothing_to_do() -> None:
    assert worked([], twice) == []
