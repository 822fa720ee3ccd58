"""Whatever bytes are handed in: a clear message, status 1 or 2, no traceback, nothing written.

The aim is an answer in a second; the limit here only catches what hangs, on any machine. Most run
in a forked child, which spares each the start of Python; `run_anew` starts one.
"""

# A source is built by a function, so that no test pays for the others' megabytes.
# ruff: noqa: PLW0108

from __future__ import annotations

import os
import random
import signal
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest
from shared.child import run_in_child

from loopwright import cli

LIMIT = 12.0  # seconds of processor time, for a whole process on a slow machine


def run(*args: str, cwd: Path, stdin: bytes = b"") -> tuple[int, str, str]:
    """`loopwright` in a forked child: status, standard output, standard error."""
    status, out, err = run_in_child(*args, cwd=cwd, stdin=stdin, limit=LIMIT)
    assert status >= 0, f"killed by signal {-status}: it takes too long"
    return status, out.decode(), err.decode()


def run_anew(*args: str, cwd: Path, stdin: bytes = b"") -> tuple[int, str, str]:
    """The same by a Python that starts anew."""
    done = subprocess.run(
        [sys.executable, "-m", "loopwright", *args],
        cwd=cwd,
        input=stdin,
        capture_output=True,
        timeout=120,
        env={**os.environ, "PYTHONUTF8": "1", "PYTHONDONTWRITEBYTECODE": "1"},
        check=False,
    )
    return done.returncode, done.stdout.decode(), done.stderr.decode()


Run = Callable[..., tuple[int, str, str]]


def refused(data: bytes, tmp_path: Path, *command: str, run: Run = run) -> str:
    """The message with which a file is refused; all that must hold for every bad file."""
    path = tmp_path / "cloth.loop"
    path.write_bytes(data)
    status, out, err = run(*(command or ("check",)), "cloth.loop", cwd=tmp_path)
    text = out + err
    assert status in (1, 2), text[:2000]
    assert "Traceback" not in text and "Error" not in text, text[-2000:]
    assert [item.name for item in tmp_path.iterdir()] == ["cloth.loop"]
    assert path.read_bytes() == data
    assert len(text) < 200_000
    assert max(map(len, text.splitlines())) <= 400, "no screen can show such a line"
    return text


def noise(count: int, seed: int, low: int = 0, high: int = 255) -> bytes:
    return random.Random(seed).randbytes(count) if low == 0 and high == 255 else bytes(
        low + byte % (high - low + 1) for byte in random.Random(seed).randbytes(count)
    )  # fmt: skip


def piece(row: str, before: str = "", cast_on: str = "20") -> bytes:
    return (
        f'pattern "Cloth"\n{before}piece cloth flat\n  cast on {cast_on}\n  {row}\n  bind off\n'
    ).encode()


# --- what is no text at all ------------------------------------------------------------------


def test_bytes_that_are_no_text(tmp_path: Path) -> None:
    for way in (run, run_anew):
        assert "UTF-8" in refused(b'pattern "Cloth"\n\xff\xfe', tmp_path, run=way)
    assert "UTF-8" in refused('pattern "Käse"'.encode("latin-1"), tmp_path)


def test_utf_16(tmp_path: Path) -> None:
    assert "UTF-8" in refused('pattern "Cloth"\n'.encode("utf-16"), tmp_path)


def test_ten_megabytes_of_noise(tmp_path: Path) -> None:
    assert "larger than 8 MB" in refused(noise(10_000_000, 1), tmp_path)


def test_one_megabyte_of_noise(tmp_path: Path) -> None:
    assert "UTF-8" in refused(noise(1_000_000, 2), tmp_path)


def test_empty(tmp_path: Path) -> None:
    assert "names no pattern" in refused(b"", tmp_path)
    assert "names no pattern" in refused(b"\n\n  \n", tmp_path)
    assert "names no pattern" in refused(b"\xef\xbb\xbf", tmp_path)


def test_missing_and_folder(tmp_path: Path) -> None:
    status, out, err = run("check", "no.loop", cwd=tmp_path)
    assert (status, out) == (2, "") and "there is no file no.loop" in err
    status, out, err = run("check", ".", cwd=tmp_path)
    assert (status, out) == (2, "") and "is a folder" in err
    status, out, err = run("check", "a\nb.loop", cwd=tmp_path)
    assert status == 2 and "Traceback" not in err
    status, out, err = run("check", "", cwd=tmp_path)
    assert status == 2 and "Traceback" not in err
    assert not list(tmp_path.iterdir())


def test_no_permission(tmp_path: Path) -> None:
    path = tmp_path / "cloth.loop"
    path.write_text('pattern "Cloth"\n')
    path.chmod(0)
    if os.access(path, os.R_OK):
        pytest.skip("this user may read everything")
    status, out, err = run("check", "cloth.loop", cwd=tmp_path)
    assert (status, out) == (2, "") and "cannot be read" in err


@pytest.mark.parametrize("name", ["rows", "format"])
def test_the_other_readers_refuse_too(name: str, tmp_path: Path) -> None:
    refused(b"\xff\xfe", tmp_path, name)
    refused(b'pattern "Cloth"\n\x00\x00\n', tmp_path, name)
    refused(b"(" * 15_000, tmp_path, name)


def test_bad_standard_input(tmp_path: Path) -> None:
    for data in (b"\xff\xfe", noise(10_000_000, 3), b"\x00" * 1000, b""):
        status, out, err = run_anew("check", "-", cwd=tmp_path, stdin=data)
        assert status in (1, 2) and "Traceback" not in out + err
        assert "standard input" in out + err
    assert not list(tmp_path.iterdir())


# --- text that is no pattern -----------------------------------------------------------------

RIB = "motif rib over 2n\n  rows 1, 3: * k1 p1 *\n  rows 2, 4: * p1 k1 *\n"
DIGITS = "9" * 5000
HEAD = 'pattern "Cloth"\n'

SOURCES: dict[str, Callable[[], bytes]] = {
    "noise in lines": lambda: b"\n".join(noise(70, seed, 32, 126) for seed in range(98_000)),
    "noise in one line": lambda: noise(7_000_000, 5, 32, 126),
    "noise of letters": lambda: ("ⓐ☂é\n" * 700_000).encode(),
    "noise that looks like rows": lambda: b"".join(
        b"row: " + bytes(b"kp*()12xyo, "[byte % 12] for byte in noise(70, seed)) + b"\n"
        for seed in range(90_000)
    ),
    "nul bytes": lambda: HEAD.encode() + b"piece a flat\n  cast on 20\x00\n" + b"\x00" * 3000,
    "bidi marks": lambda: piece("row: k10 \u202ek10 \u2066k1\u2069"),
    "deep nest": lambda: piece("row: " + "(" * 100_000),
    "deep nest that closes": lambda: piece("row: " + "(" * 9_000 + "k1" + ")" * 9_000),
    "deep nest of groups": lambda: piece("row: " + "(k1 " * 4_000 + ") x2" * 3_000),
    "a repeat of 10^12": lambda: piece("row: (k1 p1) x1000000000000"),
    "a repeat of 10^9, inside another": lambda: piece("row: ((k1) x1000000000) x1000000000"),
    "a fill of no repeats, repeated": lambda: piece("row: ((* k1 *) x0) x1000000000"),
    "a marker of no repeats, repeated": lambda: piece("row: k10 ((pm) x0) x1000000000 k9"),
    "markers in repeats in repeats": lambda: piece("row: " + "(" * 15 + "pm" + ") x64" * 15),
    "a motif worked 10^9 times": lambda: piece("work rib x1000000000", RIB),
    "a motif worked for 10^10 rows": lambda: piece("work rib for 10000000000 rows", RIB),
    "cast on 10^18": lambda: piece("row: knit", cast_on="1" + "0" * 18),
    "5,000 digits in a word": lambda: piece(f"row: k{DIGITS}"),
    "5,000 digits together": lambda: piece(f"row: k{DIGITS}tog"),
    "5,000 digits in a cable": lambda: piece(f"row: c{DIGITS}f"),
    "5,000 digits cast on": lambda: piece("row: knit", cast_on=DIGITS),
    "5,000 digits before n": lambda: piece("work m x1", f"motif m over {DIGITS}n\n  row 1: knit\n"),
    "5,000 digits of a row": lambda: piece("work m x1", f"motif m\n  row {DIGITS}: knit\n"),
    "5,000 digits to follow": lambda: piece(f"row: as row {DIGITS}"),
    "5,000 digits of x": lambda: piece(f"row: k1 x{DIGITS}"),
    "5,000 digits of yarn": lambda: piece("row: knit", f"yarn a: {DIGITS} g {DIGITS}.5 m\n"),
    "5,000 digits claimed": lambda: piece(f"row: knit => {DIGITS}"),
    "a size list of 9,000": lambda: piece("row: k" + "1/" * 9_000 + "1"),
    "a size list that breaks off": lambda: piece("row: k" + "1/" * 9_000 + "x"),
    "a word of 19,000 letters": lambda: piece("row: " + "k" * 19_000),
    "6,000 unknown words": lambda: piece("row: " + "qz " * 6_000),
    "unknown words in 20,000 lines": lambda: piece(
        "\n".join(f"row: zz{n} k1" for n in range(20_000))
    ),
    "a name of 19,000 letters": lambda: piece("work " + "r" * 19_000 + " x2"),
    "unknown names in 20,000 lines": lambda: piece(
        "\n".join(f"work m{n} x2" for n in range(20_000))
    ),
    "quotes": lambda: piece("note " + '"' * 19_000),
    "quotes and dashes": lambda: piece('"--' * 6_500),
    "3,000 sizes": lambda: piece(
        "row: knit", "  sizes " + ", ".join(f"s{n}" for n in range(3000)) + "\n"
    ),
    "a width for fills of many units": lambda: piece(
        "\n".join(f"row: * k{n} *" for n in range(2, 1500)),
        "  width 50 cm\n  gauge 20 stitches 30 rows = 10 cm\n",
        "for width",
    ),
    "bad rows without end": lambda: piece("row: k21\n" * 20_000),
    "one name 20,000 times": lambda: piece("row: knit", "yarn a: 50 g\n" * 20_000),
    "ranges of rows that clash": lambda: piece(
        "work m x1", "motif m\n" + "  rows 1-200000: k20\n" * 200
    ),
    "motifs of a wrong form": lambda: piece(
        "\n".join(f"work m{n} x2" for n in range(2000)),
        "".join(f"motif m{n} over 2n\n  row 1: * k2 p1 *\n" for n in range(2000)),
    ),
    # Long lines that cannot be read, many of them.
    "long rows": lambda: (HEAD + ("row: " + "k1 " * 6_000 + "@\n") * 120).encode(),
    "long rows of digits": lambda: (HEAD + ("row 1" + " 1" * 9_000 + "@\n") * 120).encode(),
    "long rows of dashes": lambda: (HEAD + ("row 1" + " - 1" * 4_000 + "@\n") * 120).encode(),
    "long rows of brackets": lambda: (HEAD + ("row: " + "[k1] " * 3_500 + "@\n") * 120).encode(),
    "long rows of rep": lambda: (HEAD + ("row: " + "; rep  " * 2_500 + "\n") * 120).encode(),
    "long rows of to": lambda: (HEAD + ("row: " + "to " * 6_000 + "@\n") * 120).encode(),
    "long rows of k": lambda: (HEAD + ("row: " + "k " * 9_000 + "@\n") * 120).encode(),
    "long widths": lambda: (HEAD + ("width " + "1 " * 9_000 + "cm\n") * 120).encode(),
    "a long number": lambda: (HEAD + "gauge " + "1" * 19_000 + "@\n").encode(),
    "long lines of spaces": lambda: (HEAD + ("row: k1" + " " * 19_000 + "@\n") * 120).encode(),
}


@pytest.mark.parametrize("name", SOURCES)
def test_bad_source(name: str, tmp_path: Path) -> None:
    refused(SOURCES[name](), tmp_path)


# --- large and right -------------------------------------------------------------------------

LARGE: dict[str, Callable[[], bytes]] = {
    "CRLF": lambda: piece("rows 4: knit").replace(b"\n", b"\r\n"),
    "CR": lambda: piece("rows 4: knit").replace(b"\n", b"\r"),
    "a byte-order mark": lambda: b"\xef\xbb\xbf" + piece("rows 4: knit"),
    "tabs": lambda: piece("rows 4: knit").replace(b"  ", b"\t"),
    "a wide cast-on": lambda: piece("work rib x1000000", RIB, "10000000"),
    "a motif worked 10^8 times": lambda: piece("work rib x100000000", RIB),
    "many rows": lambda: piece("row: k20\n" * 100_000),
    "10,000 unlike rows": lambda: piece(
        "\n".join(f"row: k{n} * k1 *" for n in range(10_000)), cast_on="200000"
    ),
    "7 MB of comments": lambda: piece("row: knit", ("-- " + "a" * 70 + "\n") * 95_000),
    "a motif of 200,000 rows": lambda: piece("work m x2", "motif m\n  rows 1-200000: k20\n"),
    "rows as rows before": lambda: piece(
        "work m x2",
        "motif m\n  row 1: k20\n" + "".join(f"  row {n}: as row {n - 1}\n" for n in range(2, 3001)),
    ),
    "many motifs": lambda: piece(
        "\n".join(f"work m{n} x2" for n in range(3000)),
        "".join(f"motif m{n} over 2n\n  rows 1-2: * k1 p1 *\n" for n in range(3000)),
    ),
    "many markers": lambda: piece(
        "row: (k1 pm) x999 k1\n  work m x100000", "motif m\n  row 1: (* k1 * yo sm) x999 k1\n"
        "  row 2: purl\n", "1000"
    ).replace(b"flat", b"round").replace(b"row", b"round"),
}  # fmt: skip


@pytest.mark.parametrize("name", LARGE)
def test_large_and_right(name: str, tmp_path: Path) -> None:
    path = tmp_path / "cloth.loop"
    path.write_bytes(LARGE[name]())
    status, out, err = run("check", "cloth.loop", cwd=tmp_path)
    assert (status, out, err) == (0, "cloth.loop: no problems\n", "")


def test_what_takes_too_long_is_seen(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The limit holds: of a command that never ends, and of one that breaks."""

    def endless() -> None:
        while True:
            pass

    monkeypatch.setattr(cli, "entry", endless)
    assert run_in_child("check", cwd=tmp_path, limit=0.1)[0] == -signal.SIGPROF
    monkeypatch.setattr(cli, "entry", lambda: 1 // 0)
    status, _, err = run_in_child("check", cwd=tmp_path, limit=1)
    assert status == 1 and b"Traceback" in err


def test_rows_of_a_very_long_piece_are_not_listed(tmp_path: Path) -> None:
    text = refused(piece("work rib x100000000", RIB), tmp_path, "rows")
    assert "400,000,000 rows" in text and "1,000,000" in text
