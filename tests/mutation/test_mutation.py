"""A seeded part of the changes that `run.py` makes of every clean source (`make mutation`: all)."""

from __future__ import annotations

import sys
from pathlib import Path

import pytest

sys.path.insert(0, str(Path(__file__).parent))
import run
from judge import STUCK
from mutate import KINDS, mutations


@pytest.mark.parametrize("path", run.sources(), ids=lambda p: p.stem)
def test_what_alters_a_count_is_reported_at_its_line(path: Path) -> None:
    figures = run.run_source(path, run.sample_of(path))
    assert figures.wrong == []
    assert figures.reported[STUCK] == figures.tried[STUCK]
    assert run.fallen(path, figures, "sample") == []


def test_the_sample_is_no_empty_one() -> None:
    """Over all sources every kind of change is among those taken."""
    seen: set[str] = set()
    for path in run.sources():
        chosen = run.sample_of(path)
        assert len(chosen) == run.EACH
        every = enumerate(mutations(path.read_text("utf-8")))
        seen |= {mutation.kind for number, mutation in every if number in chosen}
    assert seen == set(KINDS)


def test_the_baseline_holds_sources_of_today() -> None:
    """At least half of the sources, so that the figure is held by something."""
    kept = run.baseline()["sample"]
    same = [p for p in run.sources() if kept.get(p.stem, {}).get("digest") == run.digest(p)]
    assert len(same) * 2 >= len(run.sources())


def test_mutations_by_hand() -> None:
    text = (
        "strand A feeds x\nstrand B feeds x\nmotif m over 2n\n  row 3 in A: k2 sl1 wyif (p1) x2\n"
    )
    made = {(m.kind, m.before, m.after): m.text.split("\n")[m.line - 1] for m in mutations(text)}
    row = "  row 3 in A: k2 sl1 wyif (p1) x2"
    assert made["drop", "k2", ""] == row.replace("k2", "")
    assert made["double", "sl1", "sl1 sl1"] == row.replace("sl1", "sl1 sl1")
    assert made["count", "x2", "x3"] == row.replace("x2", "x3")
    assert made["count", "2n", "3n"] == "motif m over 3n"
    assert made["swap k and p", "p1", "k1"] == row.replace("p1", "k1")
    assert made["modifier", "wyif", "wyib"] == row.replace("wyif", "wyib")
    assert made["strand", "A", "B"] == row.replace("A", "B")
    assert made["row number", "3", "4"] == row.replace("3", "4")
