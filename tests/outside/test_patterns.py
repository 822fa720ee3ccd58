"""Right patterns of the trade, against the compiler.

Each source in `patterns` stands beside a file of what was worked out by hand: the cast-on, the
count after every row, and the multiple as stitch dictionaries print it. `bruteforce` knits each
of them stitch by stitch besides, so that the figures are held from two sides.
"""

from __future__ import annotations

import json
import re
import sys
import tomllib
from pathlib import Path
from typing import Any

import pytest

from loopwright.cli import main
from loopwright.compile import check_source
from loopwright.notation.source import Source

HERE = Path(__file__).parent
sys.path.insert(0, str(HERE))
import bruteforce  # noqa: E402

PATTERNS = sorted((HERE / "patterns").rglob("*.loop"))
each_pattern = pytest.mark.parametrize("path", PATTERNS, ids=lambda p: f"{p.parent.name}-{p.stem}")

# The words that only pieces with several stretches on the needle need.
_MARKERS = re.compile(r"\b(pm|sm|rm)\b")


def _said(path: Path) -> dict[str, Any]:
    return tomllib.loads(path.with_suffix(".toml").read_text(encoding="utf-8"))


def _text(path: Path) -> str:
    return path.read_text(encoding="utf-8")


def _rows(path: Path, capsys: pytest.CaptureFixture[str]) -> list[dict[str, Any]]:
    """The one piece of each size, as ``rows --json`` gives it."""
    assert main(["rows", "--json", str(path)]) == 0
    sizes = json.loads(capsys.readouterr().out)["sizes"]
    assert all(len(size["pieces"]) == 1 for size in sizes)
    return [size["pieces"][0] for size in sizes]


# --- the corpus itself ----------------------------------------------------------------------------


def test_every_source_has_its_figures() -> None:
    sources = {p.with_suffix("") for p in PATTERNS}
    assert sources == {p.with_suffix("") for p in (HERE / "patterns").rglob("*.toml")}


def test_the_corpus_is_wide_enough() -> None:
    core = [p for p in PATTERNS if p.parent.name == "core"]
    assert len(PATTERNS) >= 42
    assert len(core) >= 28
    assert not [p.name for p in core if _MARKERS.search(_text(p))]


@each_pattern
def test_the_figures_hold_stitch_by_stitch(path: Path) -> None:
    said = _said(path)
    knitted = bruteforce.knit_file(_text(path))
    assert knitted.cast_on == said["cast_on"]
    assert knitted.counts == said["counts"]
    assert knitted.counts[-1] == said["ends_with"]
    assert said["source"]


# --- the compiler ---------------------------------------------------------------------------------


@each_pattern
def test_a_right_pattern_has_no_error(path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    status = main(["check", "--json", str(path)])
    (file,) = json.loads(capsys.readouterr().out)["files"]
    assert [p for p in file["problems"] if p["severity"] == "error"] == []
    assert status == 0


@each_pattern
def test_rows_are_counted_as_by_hand(path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    said = _said(path)
    rows = _rows(path, capsys)[0]["rows"]
    assert [row["end"] for row in rows] == said["counts"]
    assert [row["start"] for row in rows] == [said["cast_on"], *said["counts"][:-1]]
    assert [row["row"] for row in rows] == list(range(1, len(rows) + 1))


@each_pattern
def test_every_size_is_counted_as_knitted(path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    for size, piece in enumerate(_rows(path, capsys)):
        knitted = bruteforce.knit_file(_text(path), size)
        assert piece["rows"][0]["start"] == knitted.cast_on
        assert [row["end"] for row in piece["rows"]] == knitted.counts
        sides = ["rs" if right else "ws" for right in knitted.right_sides]
        assert [row["side"] for row in piece["rows"]] == sides


@each_pattern
def test_the_multiple_is_the_printed_one(path: Path) -> None:
    said = _said(path)
    pattern = check_source(Source.of(path.name, _text(path))).pattern
    forms = {m.name.key: m.form for m in pattern.motifs}
    if "multiple" not in said:
        # Only where everything hangs on markers, or no motif is worked at all.
        assert all(form is None for form in forms.values())
        return
    form = forms[said["motif"]]
    assert form is not None
    assert (form.unit, form.fixed) == bruteforce.parse_form(said["multiple"])


@each_pattern
def test_a_cast_on_near_by_fits_only_where_it_can_be_knitted(
    path: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Three stitches either way: the compiler refuses exactly what cannot be worked."""
    text = _text(path)
    if "cast on for width" in text:
        pytest.skip("the compiler chooses the count")
    right = _said(path)["cast_on"]
    wrong: list[str] = []
    for other in range(-3, 4):
        changed = re.sub(r"(?m)^(  cast on )\d+", rf"\g<1>{right + other}", text)
        try:
            bruteforce.knit_file(changed)
            can = True
        except bruteforce.CannotWork:
            can = False
        copy = tmp_path / "changed.loop"
        copy.write_text(changed, encoding="utf-8")
        status = main(["check", str(copy)])
        capsys.readouterr()
        if status != (0 if can else 1):
            wrong.append(f"{other:+}: knitted {can}, status {status}")
    assert wrong == []
