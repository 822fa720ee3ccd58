"""The corpus of the long fuzzing (``make fuzz-long``) and its crashes, replayed; and its tools."""

from __future__ import annotations

import random
import sys
from pathlib import Path

import pytest

sys.path.insert(0, str(Path(__file__).parent))
import fuzz_cover as cover
import fuzz_properties as properties
from fuzz_slips import slip

HERE = Path(__file__).parent
CORPUS = sorted((HERE / "corpus").glob("*.loop"))
CRASHES = sorted((HERE / "crashes").glob("*.loop"))


@pytest.mark.parametrize("path", [*CORPUS, *CRASHES], ids=lambda path: path.stem)
def test_every_property_holds(path: Path) -> None:
    properties.everything(path.read_bytes().decode("utf-8", "replace"))


def test_the_corpus_is_there_and_small() -> None:
    assert len(CORPUS) > 50
    assert sum(path.stat().st_size for path in CORPUS) < 200_000


def test_a_cover_is_small_and_whole() -> None:
    items = {
        "all": frozenset(range(10)),
        "low": frozenset(range(5)),
        "more": frozenset({10, 11}),
        "base": frozenset({99}),
    }
    assert sorted(cover.fewest(items, base={99})) == ["all", "more"]
    assert cover.fewest(items, base={99}, number=1) == ["all"]
    assert cover.fewest(items, base={99}, size=lambda item: 50, most=60) == ["all"]


def test_arcs_tell_one_path_from_another() -> None:
    arcs = cover.Arcs("fuzz_slips")
    number = arcs.of(lambda: slip("row 3: k4", random.Random(2), []))
    assert number and number == arcs.of(lambda: slip("row 3: k4", random.Random(2), []))
    paths = {arcs.of(lambda n=n: slip("row 3: k4", random.Random(n), [])) for n in range(20)}
    assert len(paths) > 5


def test_a_find_is_made_small() -> None:
    text = 'pattern "T"\nmotif m over 2n\n  row 1: * k1 yo k2tog *\n  row 2: purl\npiece p flat\n'
    small = cover.shrunk(text, lambda t: "yo" in t and "motif" in t)
    assert len(small) < 20 and "yo" in small and "motif" in small


@pytest.mark.parametrize(
    ("raised", "name"),
    [
        (properties.Broken("too slow: 3 / 2"), "too slow"),
        (ZeroDivisionError("by zero"), "ZeroDivisionError in ?"),
        (RecursionError(), "RecursionError"),
    ],
)
def test_what_breaks_has_a_name(raised: Exception, name: str) -> None:
    def prove(text: str) -> None:
        raise raised

    assert properties.broken("", prove) == name
    assert properties.broken("", len) == ""


def test_the_harness_sees_a_property_that_does_not_hold(monkeypatch: pytest.MonkeyPatch) -> None:
    """The properties can fail: with a layout that drops a line, or a check that never speaks."""
    text = 'pattern "T"\npiece p flat\n  cast on 9\n  row: k8\n  bind off\n'
    assert properties.broken(text, properties.everything) == ""
    whole = properties.format_source
    monkeypatch.setattr(
        properties, "format_source", lambda parsed: whole(parsed).replace("  row: k8\n", "")
    )
    assert properties.broken(text, properties.everything) == "the layout has other lines"


def test_slips_are_the_same_for_one_dice() -> None:
    pool = [path.read_text("utf-8") for path in CORPUS[:5]]
    text = 'pattern "T"\npiece p flat\n  cast on 9\n  row: k9\n  bind off\n'
    made = [slip(text, random.Random(n), pool) for n in range(50)]
    assert made == [slip(text, random.Random(n), pool) for n in range(50)]
    assert len(set(made)) > 40
