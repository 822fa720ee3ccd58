"""Right garments of the trade, against the compiler.

Each source in `garments` stands beside the figures that were worked out by hand: for every piece
and size the count after every row, as runs (`[count, rows]`, or `[first, last, step, rows]` for
counts that step evenly, each kept for so many rows; a table repeats its runs).
`bruteforce_pieces` knits each besides.
"""

from __future__ import annotations

import sys
import tomllib
from pathlib import Path
from typing import Any

import pytest

from loopwright.compile import check_source
from loopwright.notation.source import Source

HERE = Path(__file__).parent
sys.path.insert(0, str(HERE))
import bruteforce_pieces  # noqa: E402

GARMENTS = sorted((HERE / "garments").glob("*.loop"))
each_garment = pytest.mark.parametrize("path", GARMENTS, ids=lambda p: p.stem)


def _said(path: Path) -> dict[str, Any]:
    return tomllib.loads(path.with_suffix(".toml").read_text(encoding="utf-8"))


def _text(path: Path) -> str:
    return path.read_text(encoding="utf-8")


def _unrolled(runs: list[Any]) -> list[int]:
    counts: list[int] = []
    for run in runs:
        if isinstance(run, dict):
            counts += _unrolled(run["runs"]) * run["times"]
        elif len(run) == 2:
            counts += [run[0]] * run[1]
        else:
            first, last, step, rows = run
            assert (last - first) % step == 0
            for count in range(first, last + (1 if step > 0 else -1), step):
                counts += [count] * rows
    return counts


def figures(path: Path) -> list[dict[str, list[int]]]:
    """For each size the counts of each piece, as entered by hand."""
    pieces = _said(path)["counts"]
    sizes = max(len(runs) for runs in pieces.values())
    # A piece that is the same in every size is entered once.
    return [
        {name: _unrolled(runs[size] if len(runs) > 1 else runs[0]) for name, runs in pieces.items()}
        for size in range(sizes)
    ]


def test_every_garment_has_its_figures_and_source() -> None:
    assert len(GARMENTS) >= 25
    for path in GARMENTS:
        assert _said(path)["source"]
    sources = {p.with_suffix("") for p in GARMENTS}
    assert sources == {p.with_suffix("") for p in (HERE / "garments").glob("*.toml")}


@each_garment
def test_the_figures_hold_stitch_by_stitch(path: Path) -> None:
    for size, pieces in enumerate(figures(path)):
        knitted = bruteforce_pieces.knit_pieces(_text(path), size)
        assert {name: piece.counts for name, piece in knitted.items()} == pieces


@each_garment
def test_a_right_garment_passes_every_rule_in_silence(path: Path) -> None:
    checked = check_source(Source.of(path.name, _text(path)))
    assert [(p.rule, p.message) for p in checked.problems] == []


@each_garment
def test_rows_are_counted_as_by_hand(path: Path) -> None:
    checked = check_source(Source.of(path.name, _text(path)))
    by_hand = figures(path)
    assert len(by_hand) == max(walk.size for walk in checked.walks) + 1
    for walk in checked.walks:
        rows = list(walk.listed())
        assert [row.end for row in rows] == by_hand[walk.size][walk.piece.name.key]
        assert [row.row for row in rows] == list(range(1, len(rows) + 1))


@each_garment
def test_every_size_is_worked_on_the_sides_as_knitted(path: Path) -> None:
    checked = check_source(Source.of(path.name, _text(path)))
    for walk in checked.walks:
        knitted = bruteforce_pieces.knit_pieces(_text(path), walk.size)[walk.piece.name.key]
        assert [row.side == "rs" for row in walk.listed()] == knitted.right_sides
