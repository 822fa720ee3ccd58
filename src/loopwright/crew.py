"""A crew of processes that work a list of jobs: each job's result once, whatever becomes of one.

Every worker has a line of its own to the caller, so that one that dies in the midst of an answer
ends its line and is seen, and holds up no other. What it had is given to a new one.
"""

from __future__ import annotations

import gc
import multiprocessing
import signal
from collections import deque
from collections.abc import Callable, Iterator, Sequence
from contextlib import suppress
from multiprocessing.connection import Connection, Pipe, wait
from multiprocessing.process import BaseProcess
from typing import Any, Generic, TypeVar

Job = TypeVar("Job")
Result = TypeVar("Result")

_AHEAD = 4_000
"""Bytes of a job that may wait in a worker's line while it works: any line holds as many."""

_PATIENCE = 5.0  # seconds in which a worker that is told to end does so


class _Worker(Generic[Job]):
    """One process, its line, and the jobs it has, the first of them in work."""

    def __init__(self, start: Callable[[], None], work: Callable[[Any], Any]) -> None:
        self.line, theirs = Pipe()
        mine = self.line if forks() else None
        self.process: BaseProcess = multiprocessing.Process(
            target=_serve, args=(theirs, mine, start, work), daemon=True
        )
        # A process that just begins cannot answer Ctrl-C: it is held back until it can.
        hold_signals(True)
        try:
            self.process.start()
        finally:
            hold_signals(False)
        theirs.close()  # now only the worker holds it: its end is the end of the line
        self.jobs: deque[Job] = deque()

    def give(self, job: Job) -> bool:
        """Hand over a job; False where the worker is gone."""
        self.jobs.append(job)
        try:
            self.line.send(job)
        except OSError:
            return False
        return True

    def end(self) -> None:
        self.process.terminate()
        self.line.close()
        self.process.join(_PATIENCE)
        if self.process.is_alive():
            self.process.kill()
            self.process.join()


def forks() -> bool:
    """Whether a new process has all that this one has loaded."""
    return multiprocessing.get_start_method() == "fork"


def hold_signals(held: bool) -> None:
    """Keep Ctrl-C and a call to end back, or let them through."""
    if hasattr(signal, "pthread_sigmask"):
        how = signal.SIG_BLOCK if held else signal.SIG_UNBLOCK
        signal.pthread_sigmask(how, (signal.SIGINT, signal.SIGTERM))


def _serve(
    line: Connection,
    other_end: Connection | None,
    start: Callable[[], None],
    work: Callable[[Any], Any],
) -> None:
    """What a worker does: jobs in, results out, until its caller is gone."""
    if other_end is not None:
        other_end.close()  # else this very process would keep its own line open
    # Ctrl-C reaches the whole group; the caller alone answers it.
    signal.signal(signal.SIGINT, signal.SIG_IGN)
    signal.signal(signal.SIGTERM, signal.SIG_DFL)
    hold_signals(False)
    start()
    with suppress(EOFError, OSError):
        while True:
            line.send(work(line.recv()))


def run_crew(
    jobs: Sequence[Job],
    work: Callable[[Job], Result],
    lost: Callable[[Job], Result],
    workers: int,
    start: Callable[[], None],
    size: Callable[[Job], int],
    tries: int = 3,
) -> Iterator[Result]:
    """Give each job to one of `workers` processes; yields its result once, as it comes.

    `start` is called once before a worker's first job: here where processes are forked, else in
    each. A job whose worker dies is begun anew, `tries` times in all; then `lost` says its result.
    `size` is how many bytes a job has. Where the caller stops taking results, the workers are
    ended at once. `work` must not raise.
    """
    waiting = deque(jobs)
    begun: dict[int, int] = {}
    crew: list[_Worker[Job]] = []
    if forks():
        start()
        gc.freeze()  # what is loaded stays shared: no worker's collector writes to it
        start = _nothing
    try:
        while waiting or any(worker.jobs for worker in crew):
            while waiting and len(crew) < workers:
                crew.append(_Worker(start, work))
            for worker in [w for depth in (0, 1) for w in crew if len(w.jobs) == depth]:
                if not waiting or (worker.jobs and size(waiting[0]) > _AHEAD):
                    continue
                worker.give(waiting.popleft())
            busy = {worker.line: worker for worker in crew if worker.jobs}
            for line in wait(list(busy)):
                worker = busy[line]  # type: ignore[index]
                try:
                    result = worker.line.recv()
                except (EOFError, OSError):
                    crew.remove(worker)
                    worker.end()
                    first = worker.jobs.popleft()
                    waiting.extendleft(reversed(worker.jobs))
                    begun[id(first)] = begun.get(id(first), 0) + 1
                    if begun[id(first)] < tries:
                        waiting.append(first)
                    else:
                        yield lost(first)
                    continue
                worker.jobs.popleft()
                yield result
    finally:
        for worker in crew:
            worker.end()


def _nothing() -> None:
    """Nothing is left to load."""
