"""``make bench-shelf``: a thousand patterns built in one go, on one and on two workers.

Prints one table: patterns a second, the speed-up of two workers over one, the second run that has
nothing to do (with the proof that no file was written anew), and the memory of the largest process.
Every build is a fresh process; seconds depend on what else the machine
does, ratios of one run less.
"""

from __future__ import annotations

import argparse
import os
import platform
import subprocess
import sys
import tempfile
import time
from dataclasses import dataclass
from pathlib import Path

HERE = Path(__file__).parent
RECORD = ".loopwright-shelf.json"


@dataclass(frozen=True, slots=True)
class Run:
    """One build of a folder: seconds, peak of its largest process in MB, and its last line."""

    seconds: float
    megabytes: float
    said: str


def build(shelf: Path, out: Path, kinds: str, workers: int) -> Run:
    """Build a folder in a fresh process. Raises SystemExit where it fails."""
    command = [sys.executable, "-m", "loopwright", "build", str(shelf), "--to", kinds,
               "--out", str(out), "--jobs", str(workers)]  # fmt: skip
    with tempfile.TemporaryFile() as told:
        started = time.perf_counter()
        child = subprocess.Popen(command, stdout=told, stderr=subprocess.DEVNULL)
        # wait4 knows the largest of the process and of those that it has waited for.
        _, status, usage = os.wait4(child.pid, 0)
        seconds = time.perf_counter() - started
        told.seek(0)
        said = told.read().decode().splitlines()
    if os.waitstatus_to_exitcode(status):
        raise SystemExit("\n".join(["the build failed:", *said[-5:]]))
    scale = 1e6 if sys.platform == "darwin" else 1e3
    return Run(seconds, usage.ru_maxrss / scale, said[-1])


def state_of(out: Path) -> dict[str, tuple[int, int, int]]:
    """Every file below a folder, with what changes where it is written anew."""
    return {
        path.relative_to(out).as_posix(): (stat.st_ino, stat.st_mtime_ns, stat.st_size)
        for path in sorted(out.rglob("*"))
        if path.is_file() and (stat := path.stat())
    }


def measure(shelf: Path, where: Path, kinds: str, number: int) -> None:
    """The lines of the table for some editions."""
    seconds: dict[int, float] = {}
    for workers in (1, 2):
        out = where / f"{kinds}-{workers}"
        first = build(shelf, out, kinds, workers)
        before = state_of(out)
        again = build(shelf, out, kinds, workers)
        kept = "none written" if state_of(out) == before else "FILES WERE WRITTEN"
        expected = f"0 built, {number} unchanged, 0 failed"
        if again.said != expected or not first.said.startswith(f"{number} built"):
            raise SystemExit(f"{first.said!r}, then {again.said!r}")
        seconds[workers] = first.seconds
        ratio = f"{seconds[1] / seconds[2]:.2f} ×" if workers == 2 else ""
        print(
            f"{kinds:<11}{number:>9,}{workers:>9}{first.seconds:>10.1f} s"
            f"{number / first.seconds:>12.1f}{ratio:>10}{again.seconds:>11.2f} s"
            f"{len(before):>8,}  {kept:<14}{first.megabytes:>7.0f} MB",
            flush=True,
        )


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    parser.add_argument("--patterns", type=int, default=1000)
    parser.add_argument("--pdf", type=int, default=60, help="patterns of which PDFs are made")
    args = parser.parse_args()
    with tempfile.TemporaryDirectory(prefix="loopwright-shelf-") as name:
        where = Path(name)
        for folder, number in (("all", args.patterns), ("some", args.pdf)):
            # In a process of its own: this one stays small, since its size counts for its children.
            subprocess.run(
                [sys.executable, str(HERE / "thousand.py"), str(where / folder),
                 "--patterns", str(number)],
                check=True,
            )  # fmt: skip
        load = f", load {os.getloadavg()[0]:.1f}" if hasattr(os, "getloadavg") else ""
        print(
            f"{platform.system()} {platform.machine()}, Python {platform.python_version()}, "
            f"{os.cpu_count()} cores{load}"
        )
        print(
            f"{'editions':<11}{'patterns':>9}{'workers':>9}{'first run':>12}{'a second':>12}"
            f"{'speed-up':>10}{'second run':>13}{'files':>8}  {'':<14}{'largest':>10}"
        )
        measure(where / "all", where / "out", "html,text", args.patterns)
        measure(where / "some", where / "out", "pdf", args.pdf)
    return 0


if __name__ == "__main__":
    sys.exit(main())
