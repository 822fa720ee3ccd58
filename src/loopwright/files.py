"""Reading sources and writing results: the only places that touch the disk, with `cli`."""

from __future__ import annotations

import os
import re
import sys
from pathlib import Path

from loopwright.notation.bounds import MAX_BYTES
from loopwright.notation.hidden import named, visible
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
                raise Unreadable(
                    f"{named(path)} is a folder; name a pattern source in it (a .loop file)"
                )
            with where.open("rb") as file:
                data = file.read(MAX_BYTES + 1)
    except FileNotFoundError:
        raise Unreadable(f"there is no file {named(path)}") from None
    except (OSError, ValueError) as error:
        reason = error.strerror if isinstance(error, OSError) else str(error)
        raise Unreadable(f"{named(path)} cannot be read: {reason}") from None
    if len(data) > MAX_BYTES:
        raise Unreadable(
            f"{named(name)} is larger than {MAX_BYTES // 1_000_000} MB, more than any pattern "
            "source needs"
        )
    return name, data


def _decoded(name: str, data: bytes) -> str:
    try:
        return data.decode("utf-8")
    except UnicodeDecodeError as error:
        raise Unreadable(
            f"{named(name)} is no UTF-8 text (byte {error.start + 1:,} cannot be read); save it as "
            "UTF-8"
        ) from None


def write_whole(path: Path, data: bytes) -> None:
    """Write a file so that it is there whole or not at all: a temporary name, then a move.

    Keeps the mode of a file that is replaced. Raises OSError.
    """
    if "\0" in str(path):
        raise OutOfPlace(None, "no system has a file whose name holds a null")
    path.parent.mkdir(parents=True, exist_ok=True)
    real = Path(os.path.realpath(path)) if path.is_symlink() else path
    # Named before it is made: an interrupt while it is being made finds it too.
    temporary = real.parent / f".{real.name[:40]}.{os.urandom(8).hex()}"
    try:
        with temporary.open("xb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
        if real.exists():
            temporary.chmod(real.stat().st_mode & 0o777)
        temporary.replace(real)
    except FileExistsError:
        raise  # the file of that name is not ours
    except BaseException:
        temporary.unlink(missing_ok=True)
        raise


_UNSAFE = re.compile(r'[<>:"|?*\\\x00-\x1f\x7f-\x9f\ud800-\udfff]')
_DEVICE = re.compile(r"^(con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³])(?= *(?:\.|$))", re.IGNORECASE)
_LONGEST_NAME = 180
"""Bytes of an output's name before its kind (255 are usual): a kind adds up to some thirty."""


def safe_name(stem: str) -> str:
    """What outputs are called that come of a source of this name: a name that any system can
    hold and no command takes for an option.

    Characters that cannot stand in names elsewhere become ``_``, as do a leading dash or dot and
    blanks or dots at the end; what cannot be seen is named by its number, and a device's name
    (Windows) gets a ``_`` behind it. A name that is too long is cut, with a mark of the whole in
    it. Any other stays as it is.
    """
    name = _UNSAFE.sub("_", visible(_UNSAFE.sub("_", stem)))
    name = re.sub(r"^[-.]|[ .]+$", "_", name) or "_"
    name = _DEVICE.sub(r"\1_", name)
    data = name.encode("utf-8")
    if len(data) > _LONGEST_NAME:
        import hashlib

        mark = hashlib.sha256(stem.encode("utf-8", "surrogatepass")).hexdigest()[:8]
        name = f"{data[: _LONGEST_NAME - 9].decode('utf-8', 'ignore')}-{mark}"
    return name


class OutOfPlace(OSError):
    """An output that would land outside its folder; the text says where."""


def is_inside(name: str) -> bool:
    """Whether a relative name of a file stays in the folder that it is put behind."""
    path = Path(name)
    inside = bool(path.parts) and not path.is_absolute() and ".." not in path.parts
    return inside and "\0" not in name


def write_inside(folder: Path, name: str, data: bytes) -> Path:
    """Write an output into a folder, and nowhere else. Gives its path; raises OSError.

    `name` may hold subfolders. A link on the way is refused: it could lead out of the folder.
    """
    parts = Path(name).parts
    if not is_inside(name):
        raise OutOfPlace(None, f"“{named(name)}” would lie outside the output folder")
    path = folder
    for part in parts:
        path = path / part
        if path.is_symlink():
            raise OutOfPlace(None, "it is a link, and outputs are not written through links", path)
    write_whole(path, data)
    return path
