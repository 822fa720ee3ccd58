"""Many sources at once: each built exactly once, the unchanged ones not at all."""

from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from contextlib import suppress
from pathlib import Path

import pytest

from loopwright import cli, shelf
from loopwright.build import BuildOptions
from loopwright.notation.bounds import MAX_BYTES
from loopwright.shelf import RECORD, Done, Job, build_job, jobs_in, run_in_pool, run_on_scheduler

TEXT = BuildOptions(("text",))


def source(title: str, count: int = 20) -> str:
    return f'pattern "{title}"\npiece cloth flat\n  cast on {count}\n  rows 4: knit\n  bind off\n'


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    here = tmp_path / "shelf"
    (here / "hats").mkdir(parents=True)
    (here / ".hidden").mkdir()
    (here / "one.loop").write_text(source("One"))
    (here / "two.loop").write_text(source("Two"))
    (here / "hats" / "one.loop").write_text(source("Hat One"))
    (here / ".hidden" / "no.loop").write_text(source("No"))
    (here / "note.txt").write_text("not a pattern")
    return here


def build(*args: object) -> int:
    return cli.main(["build", *map(str, args)])


def test_a_folder_is_built_with_all_below_it(
    folder: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out = tmp_path / "out"
    assert build(folder, "--to", "text", "--out", out) == 0
    captured = capsys.readouterr()
    assert captured.out.splitlines()[-1] == "3 built, 0 unchanged, 0 failed"
    assert "[3/3]" in captured.err
    made = sorted(p.relative_to(out).as_posix() for p in out.rglob("*.txt"))
    assert made == ["hats/one.txt", "one.txt", "two.txt"]
    assert "HAT ONE" in (out / "hats" / "one.txt").read_text()


def test_what_is_unchanged_is_skipped_and_what_changed_is_not(
    folder: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out = tmp_path / "out"

    def summary(*more: str) -> str:
        build(folder, "--to", "text", "--out", out, *more)
        return capsys.readouterr().out.splitlines()[-1]

    assert summary() == "3 built, 0 unchanged, 0 failed"
    assert summary() == "0 built, 3 unchanged, 0 failed"
    (folder / "two.loop").write_text(source("Two", 22))
    assert summary() == "1 built, 2 unchanged, 0 failed"
    assert summary("--counts", "all") == "3 built, 0 unchanged, 0 failed"
    (out / "one.txt").write_text("spoilt")
    assert summary("--counts", "all") == "1 built, 2 unchanged, 0 failed"
    (out / RECORD).unlink()
    assert summary("--counts", "all") == "3 built, 0 unchanged, 0 failed"
    (out / RECORD).write_text('{"built": [1, 2')
    assert summary("--counts", "all") == "3 built, 0 unchanged, 0 failed"


def test_a_new_version_builds_anew(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (job, *_) = jobs_in([str(folder)])
    before = job.key(TEXT)
    monkeypatch.setattr(shelf, "__version__", "99")
    assert job.key(TEXT) != before


def test_failures_come_at_the_end_and_the_rest_is_built(
    folder: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (folder / "bad.loop").write_text(source("Bad").replace("rows 4: knit", "row: k21"))
    (folder / "bytes.loop").write_bytes(b"\xff\xfe\x00")
    out = tmp_path / "out"
    assert build(folder, "--to", "text", "--out", out) == 1
    lines = capsys.readouterr().out.splitlines()
    assert "bad.loop: 1 error; line 4: the row works more stitches" in lines[-3]
    assert "bytes.loop: no UTF-8 text" in lines[-2]
    assert lines[-1] == "3 built, 0 unchanged, 2 failed"
    assert not (out / "bad.txt").exists()


def test_two_sources_of_one_name_are_refused(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    for name in ("a", "b"):
        (tmp_path / name).mkdir()
        (tmp_path / name / "hat.loop").write_text(source(name))
    status = build(tmp_path / "a" / "hat.loop", tmp_path / "b" / "hat.loop", "--out", tmp_path)
    assert status == 2
    assert "would both be written as hat" in capsys.readouterr().err


def test_an_empty_folder_and_a_missing_file(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert build(tmp_path, "--out", tmp_path / "o") == 2
    assert "holds no pattern source" in capsys.readouterr().err
    assert build(tmp_path / "x.loop", tmp_path / "y.loop", "--out", tmp_path / "o") == 2


def test_outputs_are_not_written_through_links(
    folder: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out, elsewhere = tmp_path / "out", tmp_path / "elsewhere"
    out.mkdir()
    elsewhere.mkdir()
    (out / "hats").symlink_to(elsewhere)
    assert build(folder, "--to", "text", "--out", out) == 2
    assert "link" in capsys.readouterr().err
    assert list(elsewhere.iterdir()) == []
    (out / "one.txt").unlink(missing_ok=True)
    (out / "one.txt").symlink_to(elsewhere / "target.txt")
    assert build(folder / "one.loop", "--to", "text", "--out", out) == 2
    assert list(elsewhere.iterdir()) == []


def many(number: int) -> list[Job]:
    return [Job(f"{n}.loop", source(f"P{n}", 20 + n).encode(), str(n)) for n in range(number)]


def test_a_pool_gives_each_once() -> None:
    jobs = many(12)
    done = list(run_in_pool(jobs, TEXT, 2))
    assert sorted(d.path for d in done) == sorted(job.path for job in jobs)
    assert all(not d.trouble and len(d.made) == 1 for d in done)
    assert {d.path: d.made for d in done} == {d.path: d.made for d in map(_here, jobs)}


def _here(job: Job) -> Done:
    return build_job(job, TEXT)


def _die_once(job: Job, options: BuildOptions) -> Done:
    """Kills its process the first time it meets the marked job."""
    mark = Path(job.data.decode())
    if job.path == "1.loop" and not mark.exists():
        mark.write_text("")
        os.kill(os.getpid(), signal.SIGKILL)
    return Done(job.path, ((f"{job.stem}.txt", b"x"),), "")


@pytest.mark.skipif(sys.platform == "darwin", reason="the patched worker needs a forked process")
def test_a_killed_worker_loses_nothing(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.setattr(shelf, "build_job", _die_once)
    jobs = [Job(f"{n}.loop", str(tmp_path / "mark").encode(), str(n)) for n in range(6)]
    done = list(run_in_pool(jobs, TEXT, 2))
    assert sorted(d.path for d in done) == [f"{n}.loop" for n in range(6)]
    assert not any(d.trouble for d in done)


def begun(here: Path, out: Path) -> subprocess.Popen[str]:
    """A build of a shelf in a group of its own, with the first pages written."""
    here.mkdir()
    for n in range(1_500):
        (here / f"{n}.loop").write_text(source(f"P{n}", 20 + n))
    # As from a terminal: what a shell runs in the background would hear no interrupt.
    start = (
        "import signal\nsignal.signal(signal.SIGINT, signal.default_int_handler)\n"
        "from loopwright.cli import entry\nentry()\n"
    )
    command = [sys.executable, "-c", start, "build", str(here), "--out", str(out),
               "--to", "text", "--jobs", "2"]  # fmt: skip
    process = subprocess.Popen(
        command, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, start_new_session=True
    )
    deadline = time.monotonic() + 60
    while len(list(out.glob("*.txt"))) < 5 and time.monotonic() < deadline:
        time.sleep(0.02)
    return process


def group_of(leader: int) -> list[int]:
    """The processes of a group that still run."""
    found = []
    for path in Path("/proc").glob("[0-9]*/stat"):
        with suppress(OSError):
            state, _, group = path.read_text().rpartition(")")[2].split()[:3]
            if int(group) == leader and state != "Z":
                found.append(int(path.parent.name))
    return found


@pytest.mark.parametrize(
    ("number", "whole_group"), [(signal.SIGINT, True), (signal.SIGINT, False),
                                (signal.SIGTERM, True), (signal.SIGTERM, False)],
)  # fmt: skip
def test_an_interrupt_stops_cleanly(tmp_path: Path, number: int, whole_group: bool) -> None:
    out = tmp_path / "out"
    process = begun(tmp_path / "shelf", out)
    (os.killpg if whole_group else os.kill)(process.pid, number)
    _, err = process.communicate(timeout=60)
    assert process.returncode == 130
    assert "stopped" in err and "Traceback" not in err
    assert group_of(process.pid) == []
    # What the record names is there, whole; no temporary file is left.
    built = json.loads((out / RECORD).read_text())["built"]
    assert 0 < len(built) < 1_500
    for entry in built.values():
        assert all((out / name).is_file() for name in entry["files"])
    assert [p.name for p in out.iterdir() if p.name.startswith(".") and p.name != RECORD] == []


def test_a_killed_build_leaves_no_workers(tmp_path: Path) -> None:
    process = begun(tmp_path / "shelf", tmp_path / "out")
    os.kill(process.pid, signal.SIGKILL)
    process.communicate(timeout=60)
    deadline = time.monotonic() + 30
    while group_of(process.pid) and time.monotonic() < deadline:
        time.sleep(0.05)
    assert group_of(process.pid) == []


def test_what_cannot_be_read_fails_alone(
    folder: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (folder / "large.loop").write_bytes(b"-" * (MAX_BYTES + 1))
    (folder / "gone.loop").symlink_to(folder / "nowhere")
    os.mkfifo(folder / "pipe.loop")
    assert build(folder, "--to", "text", "--out", tmp_path / "out") == 1
    lines = capsys.readouterr().out.splitlines()
    assert "large.loop: larger than 8 MB" in lines[-2]
    assert lines[-1] == "3 built, 0 unchanged, 1 failed"


def test_a_file_that_is_not_there_is_named(
    folder: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert build(folder / "one.loop", folder / "tow.loop", "--out", tmp_path / "out") == 2
    err = capsys.readouterr().err
    assert "there is no file" in err and "tow.loop" in err and "write" not in err


def _fails_on_one(job: Job, options: BuildOptions) -> Done:
    if job.stem == "two":
        raise KeyError("knot")
    return Done(job.path, ((f"{job.stem}.txt", b"x"),), "")


def test_a_fault_of_the_program_takes_one_pattern_and_not_the_shelf(
    folder: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
) -> None:  # fmt: skip
    monkeypatch.setattr(shelf, "_built", _fails_on_one)
    assert build(folder, "--to", "text", "--out", tmp_path / "out", "--jobs", "1") == 1
    lines = capsys.readouterr().out.splitlines()
    assert lines[-2:] == [
        f"failed: {folder / 'two.loop'}: the program failed on it (KeyError: 'knot')",
        "2 built, 0 unchanged, 1 failed",
    ]


def test_on_a_terminal_there_is_a_bar_and_else_plain_lines(folder: Path, tmp_path: Path) -> None:
    import pty

    mine, theirs = pty.openpty()
    process = subprocess.Popen(
        [sys.executable, "-m", "loopwright", "build", str(folder), "--to", "text", "--out",
         str(tmp_path / "out")],
        stdout=subprocess.PIPE, stderr=theirs, env={**os.environ, "TERM": "xterm", "COLUMNS": "80"},
    )  # fmt: skip
    os.close(theirs)
    shown = b""
    with suppress(OSError):  # the other end is closed
        while part := os.read(mine, 4096):
            shown += part
    out, _ = process.communicate(timeout=60)
    os.close(mine)
    assert process.returncode == 0
    assert b"building" in shown and "━".encode() in shown and b"3/3" in shown
    assert b"[1/3]" not in shown
    assert out.decode().splitlines() == ["3 built, 0 unchanged, 0 failed"]


# --- Dask's scheduler -----------------------------------------------------------------------------


@pytest.fixture
def scheduler() -> Iterator[tuple[str, list[subprocess.Popen[bytes]]]]:
    """A real scheduler on this machine and two worker processes.

    Each is waited for by what it does and not by the clock: the scheduler until it listens, the
    workers until it knows them. The limits only end a wait for what has died.
    """
    pytest.importorskip("distributed")
    from distributed import Client

    processes: list[subprocess.Popen[bytes]] = []

    def start(*words: str) -> subprocess.Popen[bytes]:
        command = [sys.executable, "-m", *words, "--no-dashboard"]
        process = subprocess.Popen(command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        processes.append(process)
        return process

    try:
        port = _scheduler_that_listens(start)
        address = f"tcp://127.0.0.1:{port}"
        for _ in range(2):
            start("distributed.cli.dask_worker", address, "--nthreads", "1", "--no-nanny")
        with Client(address, timeout="120s") as client:
            client.wait_for_workers(2, timeout=240)
        yield address, processes
    finally:
        for process in processes:
            process.kill()
            process.wait()


def _scheduler_that_listens(start: Callable[..., subprocess.Popen[bytes]]) -> int:
    """The port of a scheduler that answers. A port that another has taken meanwhile ends it, and
    the next is tried."""
    import socket

    deadline = time.monotonic() + 240
    while time.monotonic() < deadline:
        port = _free_port()
        process = start(
            "distributed.cli.dask_scheduler", "--host", "127.0.0.1", "--port", str(port)
        )
        while process.poll() is None and time.monotonic() < deadline:
            with suppress(OSError), socket.create_connection(("127.0.0.1", port), timeout=5):
                return port
            time.sleep(0.1)
    raise AssertionError("no scheduler came to listen")


def _free_port() -> int:
    import socket

    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return int(probe.getsockname()[1])


def test_a_scheduler_builds_each_exactly_once_though_a_worker_is_killed(
    scheduler: tuple[str, list[subprocess.Popen[bytes]]],
) -> None:
    address, processes = scheduler
    jobs = many(60)
    seen: list[Done] = []
    for done in run_on_scheduler(jobs, TEXT, address):
        seen.append(done)
        if len(seen) == 5:
            processes[-1].kill()
    assert sorted(d.path for d in seen) == sorted(job.path for job in jobs)
    assert [d.trouble for d in seen if d.trouble] == []
    assert processes[-1].wait(timeout=60) == -signal.SIGKILL


class _Answer:
    """A future whose worker is gone: `result` waits for another, or tells why there is none."""

    status = "lost"

    def __init__(self, job: Job, error: BaseException | None) -> None:
        self.job = job
        self.error = error

    def result(self) -> Done:
        if self.error is not None:
            raise self.error
        return Done(self.job.path, (), "")

    def release(self) -> None:
        pass


def test_a_result_lost_with_its_worker_is_waited_for(monkeypatch: pytest.MonkeyPatch) -> None:
    """A worker may die between the end of a job and the fetching of what it made."""
    distributed = pytest.importorskip("distributed")
    jobs = many(4)
    killed = distributed.KilledWorker("job", None, 3)
    errors = [None, killed, ModuleNotFoundError("no module loopwright"), None]

    class Client:
        loop = None

        def __init__(self, *_: object, **__: object) -> None:
            self.errors = iter(errors)

        def __enter__(self) -> Client:
            return self

        def __exit__(self, *_: object) -> None:
            pass

        def submit(self, _: object, job: Job, *__: object, **___: object) -> _Answer:
            return _Answer(job, next(self.errors))

    monkeypatch.setattr(distributed, "Client", Client)
    monkeypatch.setattr(distributed, "as_completed", lambda futures, loop: iter(futures))
    first, second, third, last = run_on_scheduler(jobs, TEXT, "tcp://somewhere:1")
    assert not first.trouble and not last.trouble
    assert second.trouble == "its workers were stopped again and again" and second.lost
    assert "could not build it (ModuleNotFoundError: no module loopwright)" in third.trouble


def test_no_scheduler_answers(
    folder: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
) -> None:  # fmt: skip
    distributed = pytest.importorskip("distributed")

    class Hasty(distributed.Client):  # type: ignore[misc, name-defined]
        """Gives up after a second and not after ten."""

        def __init__(self, address: str, **words: object) -> None:
            super().__init__(address, **(words | {"timeout": "1s"}))

    monkeypatch.setattr(distributed, "Client", Hasty)
    address = f"tcp://127.0.0.1:{_free_port()}"
    assert build(folder, "--to", "text", "--out", tmp_path, "--scheduler", address) == 2
    assert "no scheduler answers" in capsys.readouterr().err
