"""A shelf of patterns: many sources built, each exactly once, the unchanged ones not at all.

The work list is a value. Workers (in this process, in a pool of processes, or on other machines)
take a source's bytes and give back the bytes of its editions; only the caller writes them, whole,
so that a worker that dies midway leaves nothing half done.
"""

from __future__ import annotations

import hashlib
import json
import logging
import os
import signal
from collections.abc import Iterable, Iterator, Sequence
from concurrent.futures import ProcessPoolExecutor, as_completed
from concurrent.futures.process import BrokenProcessPool
from contextlib import suppress
from dataclasses import asdict
from pathlib import Path
from typing import Any

from loopwright import __version__
from loopwright.build import BuildOptions, build_editions
from loopwright.compile import check_source
from loopwright.files import write_inside
from loopwright.notation.source import Source
from loopwright.record import dataclass

RECORD = ".loopwright-shelf.json"
"""What was built from what, in the output folder. It may be deleted at any time."""

_TRIES = 3  # a worker that is killed takes its pattern down; it is not the pattern's fault


@dataclass(frozen=True, slots=True)
class Job:
    """One source to build: its path, its bytes, and what its outputs are called (no suffix)."""

    path: str
    data: bytes
    stem: str

    def key(self, options: BuildOptions) -> str:
        """What the outputs depend on: source, options and program version, as one hash."""
        told = json.dumps([__version__, self.stem, asdict(options)], sort_keys=True)
        return hashlib.sha256(told.encode() + b"\0" + self.data).hexdigest()


@dataclass(frozen=True, slots=True)
class Done:
    """What became of a job: the editions as names and bytes, or why there are none.

    `trouble` is empty where all is well; `lost` where the worker died and not the pattern failed.
    """

    path: str
    made: tuple[tuple[str, bytes], ...]
    trouble: str
    lost: bool = False


def jobs_in(paths: Sequence[str]) -> list[Job]:
    """The sources of files and folders (with all below them), in order, each once.

    Raises OSError where a path cannot be read, and ValueError where a folder holds no source or
    two sources would be written under one name.
    """
    jobs: list[Job] = []
    seen: set[Path] = set()
    names: dict[str, str] = {}
    for given in paths:
        for path, stem in _sources(Path(given)):
            real = path.resolve()
            if real in seen:
                continue
            seen.add(real)
            other = names.setdefault(stem.casefold(), str(path))
            if other != str(path):
                raise ValueError(f"{other} and {path} would both be written as {stem}")
            jobs.append(Job(str(path), path.read_bytes(), stem))
    return jobs


def _sources(given: Path) -> Iterator[tuple[Path, str]]:
    """The sources at a path, each with the name of its outputs: the path below the folder."""
    if not given.is_dir():
        yield given, given.stem
        return
    found = [
        path
        for path in sorted(given.rglob("*.loop"))
        if path.is_file() and not any(p.startswith(".") for p in path.relative_to(given).parts)
    ]
    if not found:
        raise ValueError(f"{given} holds no pattern source (a file ending in .loop)")
    for path in found:
        yield path, path.relative_to(given).with_suffix("").as_posix()


# --- the record of what is done -------------------------------------------------------------------


class Record:
    """What stands in the output folder, by the path of its source: the key and the files."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self._entries: dict[str, tuple[str, dict[str, str]]] = {}
        with suppress(OSError, ValueError, TypeError, KeyError, AttributeError):
            told = json.loads((folder / RECORD).read_text("utf-8"))
            for stem, entry in told["built"].items():
                self._entries[str(stem)] = (str(entry["key"]), dict(entry["files"]))

    def is_fresh(self, job: Job, options: BuildOptions) -> bool:
        """Whether the outputs of a job are there, whole, from this very source and options."""
        key, files = self._entries.get(job.stem, ("", {}))
        if key != job.key(options) or not files:
            return False
        return all(_digest(self.folder / name) == digest for name, digest in files.items())

    def note(self, job: Job, options: BuildOptions, made: Iterable[tuple[str, bytes]]) -> None:
        files = {name: hashlib.sha256(data).hexdigest() for name, data in made}
        self._entries[job.stem] = (job.key(options), files)

    def save(self) -> None:
        """Write the record whole. Raises OSError."""
        built = {stem: {"key": k, "files": f} for stem, (k, f) in sorted(self._entries.items())}
        text = json.dumps({"built": built}, indent=1, sort_keys=True)
        write_inside(self.folder, RECORD, text.encode())


def _digest(path: Path) -> str:
    try:
        return hashlib.sha256(path.read_bytes()).hexdigest()
    except OSError:
        return ""


# --- workers --------------------------------------------------------------------------------------


def build_job(job: Job, options: BuildOptions) -> Done:
    """Check and build one source. Pure but for the fonts; never raises for what it holds."""
    try:
        text = job.data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        return Done(job.path, (), f"no UTF-8 text (byte {error.start + 1:,} cannot be read)")
    checked = check_source(Source.of(job.path, text))
    if checked.has_errors:
        errors = [problem for problem in checked.problems if problem.is_error]
        line, _ = checked.source.line_column(errors[0].span.start)
        count = f"{len(errors)} error{'s' if len(errors) > 1 else ''}"
        return Done(job.path, (), f"{count}; line {line}: {errors[0].title} ({errors[0].rule})")
    sizes = checked.pattern.sizes
    if options.size is not None and options.size not in sizes:
        return Done(job.path, (), f"there is no size “{options.size}”; it has {', '.join(sizes)}")
    try:
        made, failed = build_editions(checked, options, job.stem)
    except (ValueError, OSError, RecursionError, MemoryError) as error:
        return Done(job.path, (), str(error) or type(error).__name__)
    return Done(job.path, tuple(made), "; ".join(failed))


def warm_up(kinds: Sequence[str]) -> None:
    """Load what a worker of a pool needs once, before its first pattern."""
    # Ctrl-C reaches the whole group; the caller alone answers it.
    signal.signal(signal.SIGINT, signal.SIG_IGN)
    if "pdf" in kinds:
        from loopwright.edition.pdf import NativeLibrariesMissing, load_weasyprint

        with suppress(NativeLibrariesMissing):
            load_weasyprint()


def run_here(jobs: Sequence[Job], options: BuildOptions) -> Iterator[Done]:
    """Build in this process, one after the other."""
    for job in jobs:
        yield build_job(job, options)


def run_in_pool(jobs: Sequence[Job], options: BuildOptions, workers: int) -> Iterator[Done]:
    """Build in `workers` processes; gives each job's result once, as it comes.

    A worker that is killed breaks its pool: what it was doing is given to a new one, a few times.
    """
    waiting = {job.path: job for job in jobs}
    for _ in range(_TRIES):
        pool = ProcessPoolExecutor(workers, initializer=warm_up, initargs=(options.kinds,))
        try:
            # Nothing keeps a future behind its result: a shelf's pages would fill the memory.
            for future in as_completed(
                [pool.submit(build_job, job, options) for job in waiting.values()]
            ):
                done = future.result()
                del waiting[done.path]
                yield done
        except BrokenProcessPool:
            continue
        finally:
            pool.shutdown(wait=False, cancel_futures=True)
        return
    for path in waiting:
        yield Done(path, (), "the process that built it was stopped", lost=True)


def run_on_scheduler(jobs: Sequence[Job], options: BuildOptions, address: str) -> Iterator[Done]:
    """Build on the workers of a Dask scheduler at `address` (``tcp://host:8786``).

    A worker that dies is the scheduler's matter: it gives the job to another. Raises ImportError
    where the extra ``loopwright[shelf]`` is not installed, OSError where nobody answers.
    """
    import distributed

    logging.getLogger("distributed").setLevel(logging.CRITICAL)
    connect: Any = distributed.Client
    completed: Any = distributed.as_completed
    with connect(address, timeout="10s", set_as_default=False) as client:
        futures = {
            # A failed worker may take its job down a few times; the result is never kept twice.
            client.submit(build_job, job, options, pure=False, retries=_TRIES): job
            for job in jobs
        }
        for future in completed(list(futures), loop=client.loop):
            job = futures[future]
            if future.status == "finished":
                yield future.result()
            else:
                yield Done(job.path, (), "its workers were stopped again and again", lost=True)
            future.release()


def workers_of(wanted: int | None) -> int:
    """How many processes to use: as many as asked for, else one for each core."""
    if wanted:
        return wanted
    if hasattr(os, "sched_getaffinity"):  # what this process may use; not on macOS
        return len(os.sched_getaffinity(0))
    return os.cpu_count() or 1
