"""Reading sources and writing results: the only places that touch the disk, with `cli`."""

from __future__ import annotations

import os
import sys
from pathlib import Path

from loopwright.notation.bounds import MAX_BYTES
from loopwright.notation.source import Source

_MARK = "\ufeff"


class Unreadable(Exception):
    """A source that cannot be read at all; the text says why, in one line."""


def read_source(path: str) -> Source:
    """Read a source file, or standard input for ``-``. Raises Unreadable."""
    name, data = _read(path)
    return Source.of(name, _decoded(name, data).removeprefix(_MARK))


def read_text(path: str) -> tuple[str, str]:
    """The name for messages and the text as it lies in the file, for edits that keep the rest.

    Line ends and a byte-order mark are still in it. Raises Unreadable.
    """
    name, data = _read(path)
    return name, _decoded(name, data)


def _read(path: str) -> tuple[str, bytes]:
    name = "standard input" if path == "-" else path
    try:
        if path == "-":
            data = sys.stdin.buffer.read(MAX_BYTES + 1)
        else:
            where = Path(path)
            if where.is_dir():
                raise Unreadable(f"{path} is a folder; name a pattern source in it (a .loop file)")
            with where.open("rb") as file:
                data = file.read(MAX_BYTES + 1)
    except FileNotFoundError:
        raise Unreadable(f"there is no file {path}") from None
    except (OSError, ValueError) as error:
        reason = error.strerror if isinstance(error, OSError) else str(error)
        raise Unreadable(f"{path} cannot be read: {reason}") from None
    if len(data) > MAX_BYTES:
        raise Unreadable(
            f"{name} is larger than {MAX_BYTES // 1_000_000} MB, more than any pattern source needs"
        )
    return name, data


def _decoded(name: str, data: bytes) -> str:
    try:
        return data.decode("utf-8")
    except UnicodeDecodeError as error:
        raise Unreadable(
            f"{name} is no UTF-8 text (byte {error.start + 1:,} cannot be read); save it as UTF-8"
        ) from None


def write_whole(path: Path, data: bytes) -> None:
    """Write a file so that it is there whole or not at all: a temporary name, then a move.

    Keeps the mode of a file that is replaced. Raises OSError.
    """
    import tempfile

    path.parent.mkdir(parents=True, exist_ok=True)
    real = Path(os.path.realpath(path)) if path.is_symlink() else path
    handle, temporary = tempfile.mkstemp(prefix=f".{real.name[:40]}.", dir=real.parent)
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
        if real.exists():
            os.chmod(temporary, real.stat().st_mode & 0o777)
        else:
            mask = os.umask(0)
            os.umask(mask)
            os.chmod(temporary, 0o666 & ~mask)
        os.replace(temporary, real)
    except BaseException:
        Path(temporary).unlink(missing_ok=True)
        raise


class OutOfPlace(OSError):
    """An output that would land outside its folder; the text says where."""


def write_inside(folder: Path, name: str, data: bytes) -> Path:
    """Write an output into a folder, and nowhere else. Gives its path; raises OSError.

    `name` may hold subfolders. A link on the way is refused: it could lead out of the folder.
    """
    parts = Path(name).parts
    if not parts or Path(name).is_absolute() or ".." in parts or "\0" in name:
        raise OutOfPlace(None, f"“{name}” would lie outside the output folder")
    path = folder
    for part in parts:
        path = path / part
        if path.is_symlink():
            raise OutOfPlace(None, "it is a link, and outputs are not written through links", path)
    write_whole(path, data)
    return path
