"""Every clean source, one token changed at a time: what of it is reported?

``python tests/mutation/run.py`` takes them all and prints the figures, ``--sample`` the part that
`test_mutation` takes; ``--update`` writes `baseline.json` anew. `judge` says what the figures mean.

The baseline holds, for each source, how many changes that leave every row workable are reported
all the same, so that the figure cannot fall unseen. A source that is new or has changed since is
not held to it until the baseline is made anew.
"""

from __future__ import annotations

import argparse
import hashlib
import json
import random
import sys
from collections import Counter
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

sys.path.insert(0, str(Path(__file__).parent))
from judge import OTHER, SAME, STUCK, Verdict, judge, knit
from mutate import Mutation, mutations

from loopwright.compile import check_source
from loopwright.notation.source import Source

ROOT = Path(__file__).parents[2]
BASELINE = Path(__file__).with_name("baseline.json")
SEED, EACH = 1, 12
_WRONG = ("missed", "misplaced", "false_alarms", "miscounted", "guessed", "skipped")


BEYOND = {
    "curlew-crescent", "curlew-sleeves", "eider-mitten", "plover-spiral", "rowan-yoke",
    "sandpiper-sock", "tideline-wrap",
}  # fmt: skip
"""Examples with short rows, holders, spreading or an end by yarn: `bruteforce` cannot work them."""


def sources() -> list[Path]:
    """The clean examples that `bruteforce` can work, and the right patterns of the trade."""
    examples = sorted((ROOT / "examples").glob("*.loop"))
    return [path for path in examples if path.stem not in BEYOND] + sorted(
        (ROOT / "tests" / "outside" / "patterns").rglob("*.loop")
    )


@dataclass(slots=True)
class Figures:
    """What came out. `missed` are stuck changes that are not reported, `misplaced` those that are
    reported at no right line."""

    tried: Counter[str] = field(default_factory=Counter)
    reported: Counter[str] = field(default_factory=Counter)
    by_kind: Counter[tuple[str, str]] = field(default_factory=Counter)
    found_by_kind: Counter[tuple[str, str]] = field(default_factory=Counter)
    missed: list[str] = field(default_factory=list)
    misplaced: list[str] = field(default_factory=list)
    false_alarms: list[str] = field(default_factory=list)
    miscounted: list[str] = field(default_factory=list)
    guessed: list[str] = field(default_factory=list)
    skipped: list[str] = field(default_factory=list)

    def add(self, path: Path, mutation: Mutation, verdict: Verdict) -> None:
        kind = verdict.kind
        self.tried[kind] += 1
        self.by_kind[kind, mutation.kind] += 1
        said = f"{path.stem}: {mutation}"
        if verdict.reported:
            self.reported[kind] += 1
            self.found_by_kind[kind, mutation.kind] += 1
        if kind == STUCK and not verdict.reported:
            self.missed.append(f"{said}: {verdict.why}")
        elif kind == STUCK and not verdict.placed:
            self.misplaced.append(f"{said}: {verdict.why}; {verdict.rules} at {verdict.lines}")
        if verdict.false_alarm:
            self.false_alarms.append(f"{said}: {verdict.false_alarm}")
        if verdict.counts_differ:
            self.miscounted.append(said)
        if verdict.guessed:
            self.guessed.append(said)

    @property
    def wrong(self) -> list[str]:
        """What may never be: the checker and the knitter at odds."""
        return [line for name in _WRONG for line in getattr(self, name)]

    def join(self, other: Figures) -> None:
        self.tried += other.tried
        self.reported += other.reported
        self.by_kind += other.by_kind
        self.found_by_kind += other.found_by_kind
        self.missed += other.missed
        self.misplaced += other.misplaced
        self.false_alarms += other.false_alarms
        self.miscounted += other.miscounted
        self.guessed += other.guessed
        self.skipped += other.skipped

    def share(self, kind: str) -> float:
        """How many of a hundred are reported."""
        return 100 * self.reported[kind] / self.tried[kind] if self.tried[kind] else 100.0

    def text(self) -> str:
        out = [f"{sum(self.tried.values()):,} changes of one token"]
        for kind, what in (
            (STUCK, "a row can no longer be worked"),
            (OTHER, "another pattern, right in itself"),
            (SAME, "no count is altered"),
        ):
            out.append(
                f"  {what}: {self.tried[kind]:,}, of them reported {self.reported[kind]:,}"
                f" ({self.share(kind):.2f} %)"
            )
            for (which, how), count in sorted(self.by_kind.items()):
                if which == kind:
                    found = self.found_by_kind[which, how]
                    out.append(f"      {how}: {found:,} of {count:,}")
        for name in _WRONG:
            lines = getattr(self, name)
            out.append(f"  {name.replace('_', ' ')}: {len(lines):,}")
            out += [f"      {line}" for line in lines[:40]]
        return "\n".join(out)


def run_source(path: Path, chosen: frozenset[int] | None) -> Figures:
    """All the changes of one source, or the chosen ones (by their place in the list)."""
    figures = Figures()
    text = path.read_text("utf-8")
    sizes = len(check_source(Source.of(path.name, text)).pattern.sizes)
    whole = knit(text, sizes)
    if whole.stuck:
        figures.skipped.append(f"{path.stem}: {whole.why}")
        return figures
    for number, mutation in enumerate(mutations(text)):
        if chosen is None or number in chosen:
            figures.add(path, mutation, judge(mutation, whole, sizes))
    return figures


def digest(path: Path) -> str:
    """What tells whether a source, or the way it is changed, is still that of the baseline."""
    text = path.read_text("utf-8") + Path(__file__).with_name("mutate.py").read_text("utf-8")
    return hashlib.sha256(text.encode()).hexdigest()[:12]


def sample_of(path: Path) -> frozenset[int]:
    """The seeded part of a source's changes; it does not hang on the other sources."""
    count = sum(1 for _ in mutations(path.read_text("utf-8")))
    chosen = random.Random(f"{SEED}:{path.stem}").sample(range(count), min(EACH, count))
    return frozenset(chosen)


def baseline() -> dict[str, dict[str, dict[str, Any]]]:
    """Under ``whole`` and ``sample``: each source's digest and its reported and tried changes."""
    found: dict[str, dict[str, dict[str, Any]]] = json.loads(BASELINE.read_text("utf-8"))
    return found


def fallen(path: Path, figures: Figures, mode: str) -> list[str]:
    """Where fewer changes of a source are reported than the baseline holds."""
    kept = baseline().get(mode, {}).get(path.stem)
    if kept is None or kept["digest"] != digest(path):
        return []
    return [
        f"{path.stem}: {figures.reported[kind]} of {figures.tried[kind]} reported, not {kept[kind]}"
        for kind in (OTHER, SAME)
        if figures.tried[kind] == kept[kind][1] and figures.reported[kind] < kept[kind][0]
    ]


def write_baseline(found: dict[str, dict[str, Figures]]) -> None:
    """Write the baseline of both modes, a source a line."""
    modes = []
    for mode, by_source in found.items():
        lines = [
            f"    {json.dumps(path.stem)}: "
            + json.dumps(
                {"digest": digest(path)}
                | {kind: [f.reported[kind], f.tried[kind]] for kind in (OTHER, SAME)}
            )
            for path in sources()
            if (f := by_source.get(path.stem)) is not None
        ]
        modes.append(f'  "{mode}": {{\n' + ",\n".join(lines) + "\n  }")
    BASELINE.write_text("{\n" + ",\n".join(modes) + "\n}\n", "utf-8")


def run(mode: str, processes: int) -> dict[str, Figures]:
    """The figures of every source, by its stem."""
    paths = sources()
    chosen = [sample_of(path) if mode == "sample" else None for path in paths]
    with ProcessPoolExecutor(processes) as pool:
        return dict(zip((p.stem for p in paths), pool.map(run_source, paths, chosen), strict=True))


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--sample", action="store_true", help="take the seeded part only")
    parser.add_argument("--processes", type=int, default=2)
    parser.add_argument("--update", action="store_true", help="write the baseline anew")
    args = parser.parse_args()
    mode = "sample" if args.sample else "whole"
    found = run(mode, args.processes)
    figures = Figures()
    for one in found.values():
        figures.join(one)
    print(figures.text())
    if args.update:
        write_baseline({mode: found} | ({"sample": run("sample", 2)} if mode == "whole" else {}))
        return 0
    if mode not in baseline():
        print("  there is no baseline of the whole: make one by --update")
    less = [line for path in sources() for line in fallen(path, found[path.stem], mode)]
    print(f"  fallen below the baseline: {len(less)}", *less, sep="\n      ")
    return 1 if figures.wrong or less else 0


if __name__ == "__main__":
    sys.exit(main())
