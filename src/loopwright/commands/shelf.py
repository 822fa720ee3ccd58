"""Many sources at once, for `loopwright build`: progress, what was skipped, and a summary."""

from __future__ import annotations

import signal
import sys
import threading
import time
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from typing import Protocol

from loopwright.build import BuildOptions
from loopwright.commands.border import BAD_CALL, BAD_PATTERN, OK, Usage, say, tell
from loopwright.files import write_inside
from loopwright.notation.hidden import named
from loopwright.shelf import (
    Done,
    Job,
    Record,
    jobs_in,
    run_here,
    run_in_pool,
    run_on_scheduler,
    workers_of,
)

_SAVED_EVERY = 10.0
"""Seconds after which what is done is noted, so that a process that is killed loses little."""


class Progress(Protocol):
    """What is told while the work goes on."""

    def one(self, path: str, trouble: str) -> None:
        """A source is done; `trouble` is empty where all is well."""


def build_shelf(
    paths: Sequence[str],
    options: BuildOptions,
    out: str,
    workers: int | None,
    scheduler: str | None,
) -> int:
    """Build every source below some paths into a folder; gives the exit status."""
    folder = Path(out)
    try:
        jobs = jobs_in(paths)
    except ValueError as error:
        raise Usage(named(str(error))) from None
    record = Record(folder)
    todo = [job for job in jobs if not record.is_fresh(job, options)]
    by_path = {job.path: job for job in todo}
    failures: list[Done] = []
    built = 0
    saved = time.monotonic()
    try:
        with _stopped_by_term(), _progress(len(todo)) as progress:
            for done in _results(todo, options, workers, scheduler):
                for name, data in done.made:
                    write_inside(folder, name, data)
                if done.trouble:
                    failures.append(done)
                else:
                    built += 1
                    record.note(by_path[done.path], options, done.made)
                if time.monotonic() - saved > _SAVED_EVERY:
                    record.save()
                    saved = time.monotonic()
                progress.one(done.path, done.trouble)
    finally:
        # What is done stays done, whatever stops the rest.
        if built:
            record.save()
    for failure in sorted(failures, key=lambda done: done.path):
        tell(f"failed: {named(failure.path)}: {named(failure.trouble)}")
    print(f"{built} built, {len(jobs) - len(todo)} unchanged, {len(failures)} failed")
    if any(failure.lost for failure in failures):
        return BAD_CALL
    return BAD_PATTERN if failures else OK


def _results(
    jobs: list[Job], options: BuildOptions, workers: int | None, scheduler: str | None
) -> Iterator[Done]:
    if scheduler is not None:
        try:
            yield from run_on_scheduler(jobs, options, scheduler)
        except ImportError:
            raise Usage(
                "--scheduler needs Dask's distributed scheduler: pip install 'loopwright[shelf]'"
            ) from None
        except OSError as error:
            raise Usage(f"no scheduler answers at {named(scheduler)}: {error}") from None
        return
    number = min(workers_of(workers), len(jobs))
    yield from run_here(jobs, options) if number < 2 else run_in_pool(jobs, options, number)


def _stop(number: int, frame: object) -> None:
    raise KeyboardInterrupt


@contextmanager
def _stopped_by_term() -> Iterator[None]:
    """A call to end the process is answered as Ctrl-C is: what is done is noted first."""
    if threading.current_thread() is not threading.main_thread():
        yield
        return
    before = signal.signal(signal.SIGTERM, _stop)
    try:
        yield
    finally:
        signal.signal(signal.SIGTERM, before)


class _Lines:
    """Plain lines, where no terminal shows a bar."""

    def __init__(self, total: int) -> None:
        self.total = total
        self.done = 0

    def one(self, path: str, trouble: str) -> None:
        self.done += 1
        say(f"[{self.done}/{self.total}] {named(path)}{': failed' if trouble else ''}")


@contextmanager
def _progress(total: int) -> Iterator[Progress]:
    if not sys.stderr.isatty() or total == 0:
        yield _Lines(total)
        return
    from rich.console import Console
    from rich.progress import BarColumn, MofNCompleteColumn, TextColumn, TimeRemainingColumn
    from rich.progress import Progress as Bar

    columns = (TextColumn("building"), BarColumn(), MofNCompleteColumn(), TimeRemainingColumn())
    with Bar(*columns, console=Console(stderr=True), transient=True) as bar:
        task = bar.add_task("building", total=total)

        class Shown:
            def one(self, path: str, trouble: str) -> None:
                bar.advance(task)

        yield Shown()
