"""The process that `long.py` starts: libFuzzer's loop over the properties, by way of atheris.

    python harness.py FINDS [libFuzzer's options] CORPUS…

A source that breaks a property is written to the folder FINDS and the run goes on: only one that
takes the process down (no memory, no end) stops it, and `long.py` starts it anew.
"""

from __future__ import annotations

import importlib
import pkgutil
import random
import resource
import signal
import sys
import zlib
from pathlib import Path

import atheris

HERE = Path(__file__).parent
sys.path.insert(0, str(HERE))
_LEFT_OUT = ("loopwright.__main__", "loopwright.edition.pdf", "loopwright.commands.shelf")

with atheris.instrument_imports(include=["loopwright"]):
    import loopwright

    for module in pkgutil.walk_packages(loopwright.__path__, "loopwright."):
        if not module.name.startswith(_LEFT_OUT):
            importlib.import_module(module.name)
    import fuzz_properties as properties
    import fuzz_slips as slips

ROOT = HERE.parents[1]
POOL = [path.read_text("utf-8") for path in sorted((ROOT / "examples").rglob("*.loop"))]
LONGEST = 6_000  # bytes of a source
PATIENCE = 4.0  # times the stated seconds: the counted code is slower, and the machine is shared
SWOLLEN = 24_000  # kilobytes by which one source may raise the peak before its memory is counted


class Harness:
    """One source at a time; keeps the smallest source for each thing that breaks."""

    def __init__(self, finds: Path) -> None:
        self.finds = finds
        self.smallest: dict[str, int] = {}
        self.tried = 0

    def one(self, data: bytes) -> None:
        text = data.decode("utf-8", "replace")
        thorough = zlib.crc32(data) % 4 == 0
        peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
        seconds = PATIENCE * (properties.SECONDS + properties.SECONDS_A_KILOBYTE * len(text) / 1000)
        signal.setitimer(signal.ITIMER_VIRTUAL, 3 * seconds)
        what = properties.broken(text, lambda t: properties.everything(t, thorough))
        signal.setitimer(signal.ITIMER_VIRTUAL, 0)
        grown = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss - peak
        if not what and grown > SWOLLEN and self.tried > 300:
            what = properties.broken(text, properties.memory_holds)
        self.tried += 1
        if what and len(text) < self.smallest.get(what, 10**9):
            self.smallest[what] = len(text)
            name = "".join(c if c.isalnum() or c in ".-" else "-" for c in what)[:80]
            (self.finds / f"{name}.loop").write_bytes(text.encode())


def mutated(data: bytes, longest: int, seed: int) -> bytes:
    """Mostly changed word by word; now and then byte by byte, as libFuzzer would."""
    dice = random.Random(seed)
    if dice.random() < 0.08:
        return bytes(atheris.Mutate(data, min(len(data) + 64, longest)))
    text = slips.slip(data.decode("utf-8", "replace"), dice, POOL)
    return text.encode("utf-8", "replace")[:longest]


def _never_ends(number: int, frame: object) -> None:
    raise properties.Broken("never ends: the time was up")


def main() -> None:
    """Run libFuzzer; it ends the process."""
    finds = Path(sys.argv.pop(1))
    properties.PATIENCE = PATIENCE
    signal.signal(signal.SIGVTALRM, _never_ends)
    # What is loaded at first use is loaded now, so that no source is taken to be slow for it.
    properties.broken(POOL[0], properties.everything)
    harness = Harness(finds)
    atheris.Setup([*sys.argv, f"-max_len={LONGEST}"], harness.one, custom_mutator=mutated)
    atheris.Fuzz()


if __name__ == "__main__":
    main()
