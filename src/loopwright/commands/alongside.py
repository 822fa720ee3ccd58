"""Work that a second process does while this one goes on: for a command that ends with its result.

A library that is imported elsewhere never starts a process of its own accord, so this belongs to
the command line.
"""

from __future__ import annotations

import marshal
import os
import signal
import sys
from collections.abc import Callable
from typing import Any, TypeVar

_Made = TypeVar("_Made")


def alongside(work: Callable[[], _Made]) -> Callable[[], _Made]:
    """Start `work` in a copy of this process; what is given back waits for its result.

    The result is of the plain types that `marshal` writes. Where no copy can be made (another
    system than Linux, one processor, a second thread whose locks the copy would hold for good), or
    the copy comes to nothing, the work is done here, when it is asked for: so an error of the work
    is raised here as well.
    """
    if not _can_be_copied():
        return work
    try:
        reader, writer = os.pipe()
        child = os.fork()
    except OSError:
        return work
    if child == 0:
        os.close(reader)
        _work_and_leave(work, writer)
    os.close(writer)

    def wait() -> _Made:
        with open(reader, "rb") as pipe:
            data = pipe.read()
        _, status = os.waitpid(child, 0)
        made: _Made = marshal.loads(data) if status == 0 else work()
        return made

    return wait


def _can_be_copied() -> bool:
    if sys.platform != "linux" or len(sys._current_frames()) > 1:
        return False
    return len(os.sched_getaffinity(0)) > 1


def _work_and_leave(work: Callable[[], Any], writer: int) -> None:
    """In the copy: the work, its result into the pipe, and the end, with nothing said or tidied."""
    status = 1
    try:
        # The parent says that it was stopped, and its copy nothing.
        signal.signal(signal.SIGINT, signal.SIG_DFL)
        with open(writer, "wb") as pipe:
            pipe.write(marshal.dumps(work()))
        status = 0
    finally:
        os._exit(status)
