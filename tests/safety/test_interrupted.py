"""Work that is cut off: what was there before stays whole, or is replaced whole.

Each command runs in a forked child, which is killed (SIGKILL, which nothing can answer) at fifty
moments spread over the time that the whole command takes.
"""

from __future__ import annotations

import os
import random
import re
import signal
import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path

import pytest

from loopwright import cli

EXAMPLE = Path(__file__).parents[2] / "examples" / "skerry-throw.loop"
MOMENTS = 50

pytestmark = pytest.mark.skipif(not hasattr(os, "fork"), reason="needs fork")


def in_child(work: Callable[[], int]) -> int:
    """Start `work` in a forked child with no output; gives its process id."""
    child = os.fork()
    if child:
        return child
    silent = os.open(os.devnull, os.O_WRONLY)
    os.dup2(silent, 1)
    os.dup2(silent, 2)
    status = 70
    try:
        status = work()
    finally:
        os._exit(status)


def finished(child: int) -> int:
    _, status = os.waitpid(child, 0)
    return os.waitstatus_to_exitcode(status)


def killed_at_every_moment(
    prepare: Callable[[], None], work: Callable[[], int], whole: Callable[[], None]
) -> None:
    """Kill `work` at random moments of its course; `whole` looks at what is left each time."""
    prepare()
    work()  # what it loads is there before the children are forked
    prepare()
    started = time.perf_counter()
    assert finished(in_child(work)) == 0
    length = time.perf_counter() - started
    dice = random.Random(20)
    cut = 0
    for _ in range(MOMENTS):
        prepare()
        child = in_child(work)
        time.sleep(dice.uniform(0, length * 1.05))
        os.kill(child, signal.SIGKILL)
        cut += finished(child) == -signal.SIGKILL
        whole()
    assert cut > MOMENTS // 4, "the command was hardly ever cut off"


MESSY = EXAMPLE.read_text("utf-8").replace("  rows 2 in A: knit", "rows   2 in A:knit")


SMALL = """pattern "Cloth"
  sizes small, large
  width 20/30 cm
  gauge 20 stitches 28 rows = 10 cm
motif rib over 4n
  row 1: * k2 p2 *
  row 2: * k2 p2 *
piece cloth flat
  cast on 40/60
  work rib x20
  bind off
"""
"""Its pages take a small part of the time of a long pattern's, so that more of the moments at which
it is cut off lie where it writes."""


def one_of(path: Path, *texts: str) -> None:
    assert path.read_text("utf-8") in texts


def test_format_is_cut_off(tmp_path: Path) -> None:
    path = tmp_path / "throw.loop"
    killed_at_every_moment(
        lambda: path.write_text(MESSY, "utf-8") and None,
        lambda: cli.main(["format", str(path)]),
        lambda: one_of(path, MESSY, EXAMPLE.read_text("utf-8")),
    )


def test_resize_in_place_is_cut_off(tmp_path: Path) -> None:
    path = tmp_path / "throw.loop"
    before = SMALL
    path.write_text(before, "utf-8")
    arguments = ["resize", str(path), "--width", "25/35cm", "--in-place"]
    assert finished(in_child(lambda: cli.main(arguments))) == 0
    after = path.read_text("utf-8")
    assert after != before
    killed_at_every_moment(
        lambda: path.write_text(before, "utf-8") and None,
        lambda: cli.main(arguments),
        lambda: one_of(path, before, after),
    )


def test_build_is_cut_off(tmp_path: Path) -> None:
    path, out = tmp_path / "cloth.loop", tmp_path / "out"
    path.write_text(SMALL, "utf-8")
    arguments = ["build", str(path), "--to", "text,html,spoken", "--out", str(out)]
    assert finished(in_child(lambda: cli.main(arguments))) == 0
    good = {path.name: path.read_bytes() for path in out.iterdir()}
    assert len(good) == 3

    def earlier() -> None:
        for name in good:
            (out / name).write_bytes(b"an earlier edition")

    def whole() -> None:
        for name, data in good.items():
            assert (out / name).read_bytes() in (b"an earlier edition", data)

    killed_at_every_moment(earlier, lambda: cli.main(arguments), whole)


@pytest.mark.parametrize("command", ["build", "format", "resize", "check", "new", "picture"])
def test_a_full_disk(command: str, tmp_path: Path) -> None:
    """A limit on the size of a file stands for the full disk: the write fails midway."""
    path, out = tmp_path / "throw.loop", tmp_path / "out"
    path.write_text(MESSY, "utf-8")
    out.mkdir()
    (out / "throw.txt").write_text("an earlier edition")
    arguments = {
        "build": [str(path), "--to", "text", "--out", str(out)],
        "format": [str(path)],
        "resize": [str(path), "--width", "100/130/160cm", "--in-place"],
        "check": ["--fix", str(path)],
        "new": [str(out / "new.loop")],
        "picture": [str(path), "-o", str(out / "throw.svg")],
    }[command]
    messy = MESSY
    if command == "check":
        rows = "  row: knit => 12\n" * 30 + "  row: k1 yo * k1 * yo k1 => 15\n"
        messy = f'pattern "Cloth"\npiece cloth flat\n  cast on 12\n{rows}  bind off\n'
        path.write_text(messy, "utf-8")
    script = (
        "import resource, signal, sys\n"
        "from loopwright import cli\n"
        "signal.signal(signal.SIGXFSZ, signal.SIG_IGN)\n"
        "resource.setrlimit(resource.RLIMIT_FSIZE, (300, 300))\n"
        "sys.exit(cli.main(sys.argv[1:]))\n"
    )
    done = subprocess.run(
        [sys.executable, "-c", script, command, *arguments],
        capture_output=True, text=True, timeout=60, check=False,
    )  # fmt: skip
    assert done.returncode == 2, done.stderr
    assert re.search(r"cannot (write|be written): File too large", done.stderr)
    assert "Traceback" not in done.stderr
    assert path.read_text("utf-8") == messy
    assert (out / "throw.txt").read_text() == "an earlier edition"
    assert sorted(p.name for p in out.iterdir()) == ["throw.txt"]
    assert sorted(p.name for p in tmp_path.iterdir()) == ["out", "throw.loop"]


def test_two_builds_at_once(tmp_path: Path) -> None:
    out = tmp_path / "out"
    arguments = ["build", str(EXAMPLE), "--to", "text,html", "--out", str(out)]
    children = [in_child(lambda: cli.main(arguments)) for _ in range(4)]
    assert [finished(child) for child in children] == [0, 0, 0, 0]
    both = {path.name: path.read_bytes() for path in out.iterdir()}
    assert sorted(both) == ["skerry-throw.html", "skerry-throw.txt"]
    assert finished(in_child(lambda: cli.main(arguments))) == 0
    assert {path.name: path.read_bytes() for path in out.iterdir()} == both


@pytest.mark.skipif(os.geteuid() == 0, reason="root may write anywhere")
def test_a_folder_that_may_not_be_written(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out = tmp_path / "out"
    out.mkdir(mode=0o500)
    assert cli.main(["build", str(EXAMPLE), "--to", "text", "--out", str(out)]) == 2
    assert "cannot write: Permission denied" in capsys.readouterr().err


def test_check_fix_is_cut_off(tmp_path: Path) -> None:
    path = tmp_path / "throw.loop"
    rows = "".join(f"  row: k{n} yo * k1 * yo k{n} => {12 + 2 * n}\n" for n in range(1, 6))
    right = f'pattern "Cloth"\npiece cloth flat\n  cast on 12\n{rows}  bind off\n'
    before = right.replace("=> 14", "=> 15").replace("=> 20", "=> 21")
    path.write_text(before, "utf-8")
    arguments = ["check", "--fix", str(path)]
    finished(in_child(lambda: cli.main(arguments)))
    after = path.read_text("utf-8")
    assert after == right
    assert finished(in_child(lambda: cli.main(arguments))) == 0
    assert path.read_text("utf-8") == after
    killed_at_every_moment(
        lambda: path.write_text(before, "utf-8") and None,
        lambda: cli.main(arguments),
        lambda: one_of(path, before, after),
    )
