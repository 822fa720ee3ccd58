"""The command line in a forked child: a process of its own, without the start of one."""

from __future__ import annotations

import atexit
import os
import resource
import signal
import sys
import tempfile
import traceback
from pathlib import Path

from loopwright import cli

WAITING = 120  # seconds by the clock, for what waits for ever


def run_in_child(
    *args: str, cwd: Path, stdin: bytes = b"", limit: float
) -> tuple[int, bytes, bytes]:
    """`loopwright` with these words in `cwd`: status, standard output and standard error.

    As the console script runs, but for Python's own start and the loading of what is loaded here.
    What takes more than `limit` seconds of processor time is killed, and its status is then that
    signal's, below nought; so does what waits, after `WAITING` seconds.
    """
    with tempfile.TemporaryFile() as given, _file() as out, _file() as err:
        given.write(stdin)
        given.seek(0)
        child = os.fork()
        if child == 0:
            status = 70
            try:
                _prepare(given.fileno(), out.fileno(), err.fileno(), cwd, limit)
                sys.argv = ["loopwright", *args]
                status = _status()
            finally:
                os._exit(status)
        _, ended = os.waitpid(child, 0)
        return os.waitstatus_to_exitcode(ended), _all_of(out), _all_of(err)


def _file() -> tempfile._TemporaryFileWrapper[bytes]:
    return tempfile.TemporaryFile()  # type: ignore[return-value]


def _all_of(file: tempfile._TemporaryFileWrapper[bytes]) -> bytes:
    file.seek(0)
    return file.read()


def _prepare(given: int, out: int, err: int, cwd: Path, limit: float) -> None:
    """The streams, the folder and the limits of a process of its own; what is to be done at the
    end of the process it was copied from, which may remove its folders, is not done here."""
    atexit._clear()
    for mine, theirs in enumerate((given, out, err)):
        os.dup2(theirs, mine)
    sys.stdin = open(0, encoding="utf-8", closefd=False)  # noqa: SIM115
    sys.stdout = open(1, "w", encoding="utf-8", closefd=False)  # noqa: SIM115
    sys.stderr = open(2, "w", encoding="utf-8", closefd=False)  # noqa: SIM115
    os.chdir(cwd)
    for number in (signal.SIGINT, signal.SIGALRM, signal.SIGPROF):
        signal.signal(number, signal.SIG_DFL)
    signal.setitimer(signal.ITIMER_PROF, limit)
    signal.alarm(WAITING)
    resource.setrlimit(resource.RLIMIT_CORE, (0, 0))


def _status() -> int:
    """Run the console script; gives the status that Python would end with."""
    try:
        cli.entry()
    except SystemExit as end:
        return end.code if isinstance(end.code, int) else int(end.code is not None)
    except BaseException:
        traceback.print_exc()
        return 1
    finally:
        sys.stdout.flush()
        sys.stderr.flush()
    return 0
