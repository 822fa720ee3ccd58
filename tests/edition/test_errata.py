"""What changed between two versions, in the words of the pattern."""

from __future__ import annotations

from pathlib import Path

import pytest

from loopwright import cli
from loopwright.compile import check_source
from loopwright.edition.errata import Version, errata
from loopwright.edition.language import catalogue
from loopwright.notation.source import Source

OLD = """pattern "Reed"
  sizes small, large
  notion "Two buttons"
motif rib over 4n + 2
  row 1: k2 * p2 k2 *
  row 2: p2 * k2 p2 *
piece cloth flat
  cast on 22/30
  work rib x8
  rows 2: knit
  bind off
"""


def changes(new: str, old: str = OLD) -> list[str]:
    def version(text: str) -> Version:
        checked = check_source(Source.of("test.loop", text))
        assert not checked.has_errors, checked.problems
        return Version(checked.pattern, checked.walks)

    return [str(change) for change in errata(version(old), version(new))]


def test_nothing() -> None:
    assert changes(OLD) == []
    # What prints the same is no change.
    assert changes(OLD.replace("rows 2: knit", "row: knit\n  row: knit  -- twice")) == []


def test_a_row() -> None:
    assert changes(OLD.replace("k2 * p2 k2 *", "k2 * p1 k1 p1 k1 *")) == [
        "Cloth, Row 1 (RS): was: K2, *p2, k2; rep from * to end. "
        "Is: K2, *p1, k1, p1, k1; rep from * to end."
    ]


def test_a_count_of_one_size() -> None:
    assert changes(OLD.replace("22/30", "22/34")) == [
        "Cloth (size large): was: Cast on 22 (30) sts. Is: Cast on 22 (34) sts."
    ]


def test_repeats_and_row_numbers() -> None:
    assert changes(OLD.replace("x8", "x9")) == [
        "Cloth: was: Rep Rows 1–2 seven more times. Is: Rep Rows 1–2 eight more times.",
        "Cloth, Rows 17–18: was: Rows 17–18. Is: Rows 19–20.",
    ]


def test_what_is_new_and_what_is_left_out() -> None:
    new = OLD.replace('  notion "Two buttons"\n', "").replace("rows 2: knit", 'note "Block it."')
    found = changes(new)
    assert "Notions: left out, was: Two buttons" in found
    assert any(text == "Cloth: new: Block it." or "Is: Block it." in text for text in found)


def test_a_shade_s_strand_is_in_the_language_of_the_list() -> None:
    head = (
        'pattern "Reed"\n  gauge 20 stitches 28 rows = 10 cm\nyarn w: 50 g 100 m\n'
        "shade a of w\nshade b of w\nstrand A feeds a x{n}\nstrand B feeds b\n"
        "piece cloth flat\n  cast on 22 in A\n  rows 8 in A: knit\n  rows 2 in B: knit\n"
        "  bind off in B\n"
    )
    old, new = (check_source(Source.of("test.loop", head.format(n=n))) for n in (1, 2))
    found = errata(
        Version(old.pattern, old.walks), Version(new.pattern, new.walks), None, catalogue("de")
    )
    told = [change.said(catalogue("de")) for change in found]
    assert any("1 Knäuel, Faden A" in text and "2 Knäuel, Faden A" in text for text in told), told
    assert not any("strand" in text for text in told)


def test_the_commands(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    old, new = tmp_path / "old.loop", tmp_path / "new.loop"
    old.write_text(OLD)
    new.write_text(OLD.replace("22/30", "22/34"))
    assert cli.main(["compare", str(old), str(new)]) == 0
    assert "(size large)" in capsys.readouterr().out
    assert cli.main(["compare", str(old), str(old)]) == 0
    assert capsys.readouterr().out == "nothing that is printed has changed\n"
    out = tmp_path / "out"
    command = ["build", str(new), "--since", str(old), "--to", "text", "--out", str(out)]
    assert cli.main(command) == 0
    text = (out / "new.txt").read_text()
    assert text.index("CHANGES SINCE THE LAST PRINT") > text.index("Bind off")
    assert "Cast on 22 (34) sts." in text.split("CHANGES SINCE")[1]
    new.write_text("nonsense")
    assert cli.main(["compare", str(old), str(new)]) == 1
