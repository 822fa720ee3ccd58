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
from collections.abc import Iterable, Iterator, Sequence
from contextlib import suppress
from dataclasses import asdict, replace
from functools import partial
from pathlib import Path
from typing import Any

from loopwright import __version__
from loopwright.build import BuildOptions, build_editions
from loopwright.compile import check_source
from loopwright.crew import run_crew
from loopwright.files import is_inside, safe_name, write_inside
from loopwright.notation.bounds import MAX_BYTES
from loopwright.notation.source import Source
from loopwright.record import dataclass

RECORD = ".loopwright-shelf.json"
"""What was built from what, in the output folder. It may be deleted at any time."""

_TRIES = 3  # a worker that is killed takes its pattern down; it is not the pattern's fault


@dataclass(frozen=True, slots=True)
class Job:
    """One source to build: its path, its bytes, and what its outputs are called (no suffix).

    `trouble` says why its bytes could not be read, if so.
    """

    path: str
    data: bytes
    stem: str
    trouble: str = ""

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

    Raises ValueError where there is nothing at a path, where a folder holds no source, or where
    two sources would be written under one name. A source that cannot be read is a job that says so.
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
            jobs.append(_read(path, stem))
    return jobs


def _read(path: Path, stem: str) -> Job:
    """A source's bytes, no more of them than a source may have."""
    try:
        with path.open("rb") as file:
            data = file.read(MAX_BYTES + 1)
    except OSError as error:
        return Job(str(path), b"", stem, f"it cannot be read: {error.strerror}")
    if len(data) > MAX_BYTES:
        most = MAX_BYTES // 1_000_000
        return Job(str(path), b"", stem, f"larger than {most} MB, more than any source needs")
    return Job(str(path), data, stem)


def _sources(given: Path) -> Iterator[tuple[Path, str]]:
    """The sources at a path, each with the name of its outputs: the path below the folder."""
    if not given.is_dir():
        if not given.exists():
            raise ValueError(f"there is no file {given}")
        yield given, safe_name(given.stem)
        return
    found = [
        path
        for path in sorted(given.rglob("*.loop"))
        if path.is_file() and not any(p.startswith(".") for p in path.relative_to(given).parts)
    ]
    if not found:
        raise ValueError(f"{given} holds no pattern source (a file ending in .loop)")
    for path in found:
        parts = path.relative_to(given).with_suffix("").parts
        yield path, "/".join(map(safe_name, parts))


# --- the record of what is done -------------------------------------------------------------------


class Record:
    """What stands in the output folder, by the path of its source: the key and the files."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self._entries: dict[str, tuple[str, dict[str, str]]] = {}
        path = folder / RECORD
        if not path.is_file():
            return
        wrong = (OSError, ValueError, TypeError, KeyError, AttributeError, RecursionError)
        with suppress(*wrong):  # whatever stands there: then everything is built anew
            told = json.loads(path.read_text("utf-8"))
            for stem, entry in told["built"].items():
                self._entries[str(stem)] = (str(entry["key"]), dict(entry["files"]))

    def is_fresh(self, job: Job, options: BuildOptions) -> bool:
        """Whether the outputs of a job are there, whole, from this very source and options."""
        key, files = self._entries.get(job.stem, ("", {}))
        if key != job.key(options) or not files:
            return False
        return all(
            is_inside(name) and _digest(self.folder / name) == digest
            for name, digest in files.items()
        )

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
        return hashlib.sha256(path.read_bytes()).hexdigest() if path.is_file() else ""
    except OSError:
        return ""


# --- workers --------------------------------------------------------------------------------------


def build_job(job: Job, options: BuildOptions) -> Done:
    """Check and build one source. Pure but for the fonts; never raises for what it holds."""
    try:
        return _built(job, options)
    except Exception as error:
        # A fault of the program in one pattern is told as that; the shelf goes on without it.
        return Done(job.path, (), f"the program failed on it ({type(error).__name__}: {error})")


def _built(job: Job, options: BuildOptions) -> Done:
    if job.trouble:
        return Done(job.path, (), job.trouble)
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


_FIRST = b"""pattern "First"
  gauge 20 stitches 28 rows = 10 cm
yarn wool: 50 g 100 m
shade grey of wool, colour #808080
strand A feeds grey
motif plain over n
  row 1: * k1 *
  row 2: * p1 *
piece cloth flat
  cast on 8
  work plain x2
  bind off
"""
"""Built before a pool starts, so that its workers begin with all that a pattern needs loaded."""


def warm_up(options: BuildOptions) -> None:
    """Load what the patterns of a shelf need, once."""
    pages = tuple(kind for kind in options.kinds if kind != "pdf")
    _built(Job("first.loop", _FIRST, "first"), replace(options, kinds=("html", *pages)))
    if "pdf" in options.kinds:
        # Loaded, but no page is set here: that may start threads, which no fork takes along.
        from loopwright.edition.engine import NativeLibrariesMissing, load_weasyprint

        with suppress(NativeLibrariesMissing):
            load_weasyprint()


def run_here(jobs: Sequence[Job], options: BuildOptions) -> Iterator[Done]:
    """Build in this process, one after the other."""
    for job in jobs:
        yield build_job(job, options)


def run_in_pool(jobs: Sequence[Job], options: BuildOptions, workers: int) -> Iterator[Done]:
    """Build in `workers` processes; gives each job's result once, as it comes.

    A worker that is killed takes its pattern down; it is not the pattern's fault, and another
    builds it, a few times. Where the caller stops taking results, the workers are stopped at once.
    """
    yield from run_crew(
        jobs,
        partial(_build_with, options),
        _lost,
        workers,
        partial(warm_up, options),
        lambda job: len(job.data),
        _TRIES,
    )


def _build_with(options: BuildOptions, job: Job) -> Done:
    return build_job(job, options)


def _lost(job: Job) -> Done:
    return Done(job.path, (), "the process that built it was stopped", lost=True)


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
            try:
                # Where the worker died with its result in hand, this waits for it to be made anew.
                done = future.result()
            except (distributed.KilledWorker, distributed.CancelledError):
                done = Done(job.path, (), "its workers were stopped again and again", lost=True)
            except Exception as error:
                # Such as a worker without this package.
                why = f"its worker could not build it ({type(error).__name__}: {error})"
                done = Done(job.path, (), why, lost=True)
            yield done
            future.release()


def workers_of(wanted: int | None) -> int:
    """How many processes to use: as many as asked for, else one for each core."""
    if wanted:
        return wanted
    if hasattr(os, "sched_getaffinity"):  # what this process may use; not on macOS
        return len(os.sched_getaffinity(0))
    return os.cpu_count() or 1
