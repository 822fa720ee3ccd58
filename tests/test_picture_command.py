"""`loopwright picture` as it is called, rightly and wrongly."""

from __future__ import annotations

import io
import xml.etree.ElementTree as ET
from pathlib import Path

import pytest
from PIL import Image

from loopwright.cli import main

ROOT = Path(__file__).parent.parent
THROW = str(ROOT / "examples" / "skerry-throw.loop")
SVG = "{http://www.w3.org/2000/svg}"


def test_a_chart_goes_to_standard_output(capfdbinary: pytest.CaptureFixture[bytes]) -> None:
    assert main(["picture", THROW]) == 0
    out, err = capfdbinary.readouterr()
    root = ET.fromstring(out)
    assert root.tag == f"{SVG}svg" and err == b""
    assert "Woven" in {text.text for text in root.iter(f"{SVG}text")}


def test_a_schematic_goes_to_a_file(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "throw.svg"
    assert main(["picture", THROW, "--what", "schematic", "-o", str(path)]) == 0
    assert capsys.readouterr().out == f"{path}\n"
    words = {text.text for text in ET.parse(path).getroot().iter(f"{SVG}text")}
    assert {"lap", "throw", "bed", "90 cm / 35½ in", "190 cm / 74¾ in"} <= words


def test_units_and_size_are_as_asked(tmp_path: Path) -> None:
    path = tmp_path / "throw.svg"
    call = ["picture", THROW, "--what", "schematic", "--units", "in", "--size", "BED", "-o"]
    assert main([*call, str(path)]) == 0
    text = path.read_text("utf-8")
    assert "59 in / 150 cm" in text and "35½ in" not in text


def test_the_cloth_is_a_png_and_is_told_in_words(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "throw.png"
    assert main(["picture", THROW, "--what", "fabric", "-o", str(path)]) == 0
    out, err = capsys.readouterr()
    assert out == f"{path}\n"
    assert err.startswith("The throw of Skerry Throw in size lap")
    assert Image.open(io.BytesIO(path.read_bytes())).format == "PNG"


def test_palettes_come_from_a_file_and_from_the_line(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    palette = tmp_path / "palette.txt"
    palette.write_text("Ember: kelp=#7a2e1d, foam=#f2c14e\n", "utf-8")
    path = tmp_path / "throw.png"
    call = ["picture", THROW, "--what", "fabric", "--palette", str(palette), "--zoom", "8"]
    assert main([*call, "--shades", "kelp=#112233", "-o", str(path)]) == 0
    assert "Side by side in other colours: palette 1, Ember." in capsys.readouterr().err
    palette.write_text("Ember: kelp=#7a2e1d\nWeld: foam=yellow\n", "utf-8")
    assert main([*call, "-o", str(path)]) == 2
    assert "palette.txt, line 2: “yellow” is no colour" in capsys.readouterr().err


@pytest.mark.parametrize(
    ("more", "said"),
    [
        (["--what", "fabric", "-o", "x.svg"], "a fabric is written as .png"),
        (["--what", "chart", "-o", "x.loop"], "a chart is written as .svg"),
        (["--zoom", "9"], "--zoom belongs to --what fabric, not to chart"),
        (["--what", "fabric", "--motif", "woven"], "--motif belongs to --what chart"),
        (["--what", "fabric", "--zoom", "1"], "--zoom takes a number from 2"),
        (["--what", "fabric", "--seed", "-4"], "--seed takes a number from 0"),
        (["--size", "king"], "there is no size “king”; the pattern has lap, throw, bed"),
        (["--motif", "fern"], "there is no motif “fern”; the pattern has woven"),
        (["--what", "schematic", "--piece", "hat"], "there is no piece “hat”; the pattern has"),
        (["--what", "fabric", "--shades", "mint=#0f0"], "there is no shade “mint”"),
        (["--what", "fabric", "--palette", "none.txt"], "there is no file none.txt"),
    ],
)
def test_a_wrong_call_is_told(
    more: list[str],
    said: str,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    monkeypatch.chdir(tmp_path)
    assert main(["picture", THROW, *more]) == 2
    out, err = capsys.readouterr()
    assert said in err and out == ""
    assert not list(tmp_path.iterdir())


def test_a_pattern_with_errors_is_not_drawn(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["picture", str(ROOT / "examples/wrong/fill-uneven.loop")]) == 1
    out, err = capsys.readouterr()
    assert out == "" and "nothing was drawn" in err


@pytest.mark.parametrize(
    ("what", "said"),
    [
        ("chart", "no motif, so there is nothing to chart"),
        ("schematic", "a schematic needs a gauge"),
    ],
)
def test_what_cannot_be_drawn_says_why(
    what: str, said: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "bare.loop"
    path.write_text('pattern "x"\npiece a flat\n  cast on 4\n  row: knit\n  bind off\n', "utf-8")
    assert main(["picture", str(path), "--what", what]) == 2
    assert said in capsys.readouterr().err


GAUGED = 'pattern "x"\n  gauge 20 stitches 28 rows = 10 cm\nmotif m over 2n\n{rows}\npiece p flat\n'


@pytest.mark.parametrize(
    ("rows", "work"),
    [
        ("  row 1: * k1 yo1000000 k1 *\n  row 2: * k1 drop1000000 k1 *", "x2"),
        ("  row 1: (k0) x1000000000 * k1 p1 *\n  row 2: purl", "x2"),
        ("  row 1: * k1 p1 *\n  row 2: purl", "x400000000"),
    ],
)
@pytest.mark.parametrize("what", ["chart", "schematic", "fabric"])
def test_beyond_all_measure_is_answered_at_once(
    rows: str, work: str, what: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "big.loop"
    path.write_text(
        GAUGED.format(rows=rows) + f"  cast on 20\n  work m {work}\n  bind off\n", "utf-8"
    )
    out = tmp_path / f"o{'.png' if what == 'fabric' else '.svg'}"
    status = main(["picture", str(path), "--what", what, "-o", str(out)])
    err = capsys.readouterr().err
    assert (status == 0) == out.exists()
    assert status == 0 or "more than a picture shows" in err or "has no chart" in err
