"""``make fuzz-long``: minutes of coverage-guided fuzzing, then a small corpus and small finds.

    python tests/fuzz/long.py --minutes 10

Seeds are examples/, examples/wrong/ and tests/fuzz/corpus/. What breaks a property is made small
and written to tests/fuzz/crashes/; the corpus is made anew as the fewest sources that run, beside
the examples, whatever all of them together run. Exit status 1 where something was found.
"""

from __future__ import annotations

import argparse
import hashlib
import re
import shutil
import signal
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterable
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
import fuzz_cover as cover
import fuzz_properties as properties

HERE = Path(__file__).parent
ROOT = HERE.parents[1]
CORPUS = HERE / "corpus"
CRASHES = HERE / "crashes"
MOST_BYTES = 180_000
MOST_FILES = 120  # all of them are replayed by the ordinary tests, in seconds
LONGEST = 6_000


def examples() -> list[str]:
    return [path.read_text("utf-8") for path in sorted((ROOT / "examples").rglob("*.loop"))]


def texts_in(folder: Path) -> list[str]:
    files = sorted(path for path in folder.glob("*") if path.is_file())
    return [path.read_bytes().decode("utf-8", "replace") for path in files]


def fuzz(work: Path, seconds: float, seed: int) -> list[str]:
    """Run the harness until the time is up, anew where a source took it down; gives its log."""
    log: list[str] = []
    end = time.monotonic() + seconds
    while (left := end - time.monotonic()) > 5:
        command = [
            sys.executable, str(HERE / "harness.py"), str(work / "finds"),
            f"-max_total_time={int(left)}", "-timeout=120", "-rss_limit_mb=2048",
            "-report_slow_units=100",
            f"-seed={seed}", f"-artifact_prefix={work}/dead/", "-print_final_stats=1",
            "-reload=0", str(work / "corpus"),
        ]  # fmt: skip
        done = subprocess.run(
            command, capture_output=True, text=True, errors="replace", check=False
        )
        log += done.stderr.splitlines()
        dead = list((work / "dead").iterdir())
        for path in dead:
            path.rename(work / "finds" / f"{path.name.partition('-')[0]}-took-all.loop")
        if done.returncode and not dead:
            print("\n".join(done.stderr.splitlines()[-20:]))
            raise SystemExit(2)
        seed += 1
    return log


def told(log: list[str]) -> str:
    """What libFuzzer said of its run, in one line."""
    cov = [
        (int(m[1]), int(m[2])) for line in log if (m := re.search(r"cov: (\d+) ft: (\d+)", line))
    ]
    begun = next(
        (int(m[1]) for line in log if (m := re.search(r"INITED cov: (\d+)", line))), 0
    )  # fmt: skip
    runs = sum(int(m[1]) for line in log if (m := re.search(r"executed_units: (\d+)", line)))
    return (
        f"{runs:,} sources tried; edges reached: {begun:,} by the seeds, {cov[-1][0]:,} at the end"
    )


def small_finds(finds: Path) -> list[Path]:
    """Each find made small and written to the folder of crashes; what cannot be repeated is kept
    as it is."""
    written = []
    for path in sorted(finds.iterdir()):
        text = path.read_bytes().decode("utf-8", "replace")
        what = "" if "took-all" in path.name else properties.broken(text, properties.everything)
        if what:
            text = cover.shrunk(
                text, lambda t, w=what: properties.broken(t, properties.everything) == w, 600
            )
        CRASHES.mkdir(exist_ok=True)
        target = CRASHES / path.name
        target.write_bytes(text.encode())
        print(f"found: {what or path.name}: {target}")
        written.append(target)
    return written


def minimised(texts: Iterable[str]) -> list[str]:
    """The fewest texts that run, beside the examples, all that they run together."""
    arcs = cover.Arcs("/loopwright/")
    base: set[cover.Arc] = set()
    for text in examples():
        base |= arcs.of(lambda t=text: properties.everything(t))
    items: dict[str, frozenset[cover.Arc]] = {}
    for text in sorted(set(texts), key=len):
        if len(text) > LONGEST or text.encode("utf-8", "replace").decode() != text:
            continue
        started = time.process_time()
        found = arcs.of(lambda t=text: properties.everything(t))
        if found - base and time.process_time() - started < 5:
            items[text] = found
    kept = cover.fewest(items, base, lambda t: len(t.encode()), MOST_BYTES, MOST_FILES)
    whole = base.union(*items.values()) if items else base
    covered = base.union(*(items[text] for text in kept)) if kept else base
    print(
        f"arcs: {len(base):,} by the examples, {len(covered):,} with {len(kept)} of the corpus, "
        f"{len(whole):,} with all {len(items)} that run something new"
    )
    return kept


def write_corpus(texts: list[str]) -> None:
    CORPUS.mkdir(exist_ok=True)
    for old in CORPUS.glob("*.loop"):
        old.unlink()
    for text in texts:
        data = text.encode()
        (CORPUS / f"{hashlib.sha256(data).hexdigest()[:12]}.loop").write_bytes(data)
    size = sum(len(text.encode()) for text in texts)
    print(f"corpus: {len(texts)} sources, {size / 1000:.0f} kB")


def _never_ends(number: int, frame: object) -> None:
    raise properties.Broken("never ends: the time was up")


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    parser.add_argument("--minutes", type=float, default=10.0)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--keep", action="store_true", help="leave the corpus as it is")
    args = parser.parse_args()
    with tempfile.TemporaryDirectory(prefix="loopwright-fuzz-") as name:
        work = Path(name)
        for folder in ("corpus", "finds", "dead"):
            (work / folder).mkdir()
        for number, text in enumerate([*examples(), *texts_in(CORPUS)]):
            (work / "corpus" / f"seed{number}").write_bytes(text.encode())
        print(told(fuzz(work, 60 * args.minutes, args.seed)))
        signal.signal(signal.SIGVTALRM, _never_ends)
        found = small_finds(work / "finds")
        if not args.keep:
            sound = [*texts_in(work / "corpus"), *texts_in(CORPUS)]
            write_corpus(minimised(sound))
        shutil.rmtree(work / "corpus")
    print(f"{len(found)} found" if found else "nothing found")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
