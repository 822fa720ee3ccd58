"""Resize by gauge, scale and the list of sizes; and what is said of it."""

from __future__ import annotations

import json
import re
from functools import lru_cache
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from loopwright.check.checked import Checked
from loopwright.cli import main
from loopwright.compile import check_source
from loopwright.count.walk import Worked
from loopwright.fit.resize import Resized, Wish, resize
from loopwright.fit.stops import CannotResize
from loopwright.notation.source import Source

FOLDER = Path(__file__).parent.parent.parent / "examples"
NAMES = sorted(path.stem for path in FOLDER.glob("*.loop"))
# Shaped by literal counts (held stitches, short rows): the line is named, nothing is written.
LITERAL = {"curlew-crescent", "eider-mitten", "plover-spiral", "rowan-yoke", "sandpiper-sock"}
# Ends by yarn: it has no length that could be scaled.
BY_YARN = {"tideline-wrap"}
TRUE_OF_THE_NEW_SIZE = {
    "yarn-short",  # the balls are those of the size that was
    "needle-short",
    "gauge-odd",  # the gauge that was asked for is unusual for the yarn
    "width-odd-repeat",
    "sizes-disorder",  # one size alone is made wider
}


# The hat has a brim and a crown of wide repeats: its counts may lie off the stated width.
SPREAD_WIDE = {"gull-hat": ("size-off",)}


def refused(name: str, **asked: object) -> None:
    with pytest.raises(CannotResize) as error:
        resized(example(name), **asked)
    for problem in error.value.problems:
        line = checked(example(name)).source.line_column(problem.span.start)[0]
        assert (line > 5 and problem.message and problem.title.endswith("size")) or name in BY_YARN


def is_sound(after: Checked, *more: str) -> None:
    """Right, and nothing is said that a wrong resize would bring about."""
    assert not after.has_errors, after.problems
    assert {p.rule for p in after.problems} <= TRUE_OF_THE_NEW_SIZE | set(more), after.problems


@lru_cache(maxsize=50)
def checked(text: str) -> Checked:
    return check_source(Source.of("test.loop", text))


def example(name: str) -> str:
    return (FOLDER / f"{name}.loop").read_text("utf-8")


def result(text: str, **asked: object) -> Resized:
    before = checked(text)
    return resize(before, Wish.of(before.pattern, **asked), check_source)  # type: ignore[arg-type]


def resized(text: str, **asked: object) -> str:
    return result(text, **asked).source.text


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("gauge", ["18 stitches 26 rows = 10 cm", "26 sts and 38 rows = 4 in"])
def test_any_example_at_another_gauge(name: str, gauge: str) -> None:
    text = example(name)
    if name in LITERAL:
        refused(name, gauge=[gauge])
        return
    before = checked(text)
    new = resized(text, gauge=[gauge])
    after = checked(new)
    is_sound(after, *SPREAD_WIDE.get(name, ()))
    assert resized(new, gauge=[gauge]) == new  # once more changes nothing
    assert [len(line.split("--")) for line in new.splitlines()] == [
        len(line.split("--")) for line in text.splitlines()
    ]
    stitch = after.pattern.gauges[0].over.mm() / after.pattern.gauges[0].stitches
    for old, walk in zip(before.walks, after.walks, strict=True):
        old_stitch = before.pattern.gauges[0].over.mm() / before.pattern.gauges[0].stitches
        # The same finished width, to half a repeat of the widest motif at hand (10 stitches),
        # from the stated measure, which the old count too may have missed by that much.
        assert abs(walk.widest * stitch - old.widest * old_stitch) <= 5 * (stitch + old_stitch)
        if name not in BY_YARN:  # as long as its balls last, at any gauge
            assert walk.height == pytest.approx(old.height, rel=0.12)


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("scale", ["80%", "125 %"])
def test_any_example_scaled(name: str, scale: str) -> None:
    if name in LITERAL | BY_YARN:
        refused(name, scale=scale)
        return
    after = checked(resized(example(name), scale=scale))
    is_sound(after, *SPREAD_WIDE.get(name, ()))
    by = float(scale.rstrip("% ")) / 100
    for old, walk in zip(checked(example(name)).walks, after.walks, strict=True):
        assert walk.widest == pytest.approx(old.widest * by, abs=10)
        assert walk.height == pytest.approx(old.height * by, rel=0.15)


@pytest.mark.parametrize("name", ["skerry-throw", "gull-hat", "curlew-sleeves"])
@given(cm=st.integers(24, 120))
def test_one_size_at_any_width(name: str, cm: int) -> None:
    text = example(name)
    size = checked(text).pattern.sizes[1]
    new = resized(text, width=f"{cm}cm", size=size)
    after = checked(new)
    is_sound(after, "size-off")
    assert resized(new, width=f"{cm}cm", size=size) == new
    others = [(w.cast_on, w.rows) for w in after.walks if w.size != 1]
    assert others == [(w.cast_on, w.rows) for w in checked(text).walks if w.size != 1]


def test_borders_and_ends_are_kept() -> None:
    text = (
        'pattern "Ends"\n  length 40 cm\n  gauge 20 stitches 30 rows = 10 cm\n'
        "motif rib over 4n\n  row 1: * k2 p2 *\n  row 2: * k2 p2 *\n  row 3: knit\n  row 4: purl\n"
        "piece scarf flat\n  cast on 40\n  rows 2: knit\n  work rib x29\n  rows 2: knit\n"
        "  bind off\n"
    )
    new = resized(text, length="60 cm")
    assert "work rib x44" in new  # 180 rows, of which 176 are whole motifs
    assert new.count("rows 2: knit") == 2
    rows = [e.rows for e in checked(new).walks[0].events if isinstance(e, Worked)]
    assert rows == [2, 176, 2]


@given(
    rows=st.integers(20, 60),
    scale=st.integers(40, 250),
)
def test_row_parity_is_kept(rows: int, scale: int) -> None:
    text = (
        'pattern "Parity"\n  gauge 20 stitches 30 rows = 10 cm\npiece scarf flat\n  cast on 40\n'
        f"  rows {rows}: knit\n  bind off\n"
    )
    after = checked(resized(text, scale=f"{scale}%"))
    assert after.walks[0].rows % 2 == rows % 2
    assert abs(after.walks[0].rows - rows * scale / 100) <= 1


def test_the_writers_units_and_fractions_stay() -> None:
    text = example("lantern-blanket").replace("width 28/34 in", "width 28/34½ in  -- kept")
    new = resized(text, width="30.5 in", size="pram")
    assert "width 30½/34½ in  -- kept" in new
    assert "width 76.2/34½" not in new


def test_four_inches_are_not_ten_centimetres() -> None:
    text = example("skerry-throw")
    in_cm = result(text, gauge=["18 stitches 32 rows = 10 cm"])
    in_inches = result(text, gauge=["18 stitches 32 rows = 4 in"])
    assert "gauge 18 stitches 32 rows = 4 in in woven" in in_inches.source.text
    assert any("1.6 %" in note for note in in_inches.notes)
    assert not any("1.6 %" in note for note in in_cm.notes)
    # 150 cm are 270 stitches at 18 to 10 cm, and 265.7 at 18 to 101.6 mm.
    assert checked(in_cm.source.text).walks[2].cast_on == 270
    assert checked(in_inches.source.text).walks[2].cast_on == 266


def test_rows_that_were_not_given_are_said() -> None:
    found = result(example("skerry-throw"), gauge=["18 stitches = 10 cm"])
    assert "gauge 18 stitches 32.4 rows = 10 cm" in found.source.text
    assert any("no rows were given" in note for note in found.notes)


def test_a_size_is_added_to_every_list() -> None:
    text = example("gull-hat")
    new = resized(text, add_size="tall head 60 cm x 30 cm")
    assert 'sizes small, medium, large, "tall head"' in new
    assert "width 44/48/52/60 cm" in new
    assert "(k11/12/13/15 pm) x7 k11/12/13/15" in new
    after = checked(new)
    assert after.problems == ()
    assert [w.cast_on for w in after.walks] == [88, 96, 104, 120]
    smaller = checked(resized(text, add_size="child 40 x 20 cm"))
    assert smaller.pattern.sizes == ("child", "small", "medium", "large")
    assert [w.cast_on for w in smaller.walks] == [80, 88, 96, 104]


def test_one_size_alone() -> None:
    for size, name in enumerate(["small", "medium", "large"]):
        text = example("curlew-sleeves")
        alone = checked(resized(text, only=name))
        assert alone.problems == ()
        assert alone.pattern.sizes == (name,)
        assert "/" not in alone.source.text.split("cast on")[1]
        whole = next(w for w in checked(text).walks if w.size == size)
        assert [(r.start, r.end) for r in alone.walks[0].listed()] == [
            (r.start, r.end) for r in whole.listed()
        ]


def test_claims_are_listed() -> None:
    found = result(example("curlew-sleeves"), width="40cm", size="large")
    assert [(c.line, c.before, c.after) for c in found.claims] == [
        (33, "44/48/52", "44/48/65"),
        (35, "52/56/60", "52/56/76"),
    ]


@pytest.mark.parametrize(
    ("asked", "words"),
    [
        ({"gauge": ["twenty"]}, "is no gauge"),
        ({"gauge": ["20 stitches 28 rows = 10 g"]}, "no length"),
        ({"gauge": ["20 stitches 28 rows = 10 cm in moss"]}, "no gauge in moss"),
        ({"gauge": ["20 sts 28 rows = 10 cm", "20 sts 28 rows = 10 cm in woven"]}, "twice"),
        ({"scale": "big"}, "per cent"),
        ({"scale": "0%"}, "per cent"),
        ({"scale": "80%", "width": "100cm"}, "leave those out"),
        ({"add_size": "crib"}, "is no size"),
        ({"add_size": "lap 80 cm x 90 cm"}, "already"),
        ({"add_size": "crib 80 g x 90 g"}, "width and one length"),
        ({"only": "huge"}, "no size"),
        ({"only": "lap", "size": "bed"}, "leaves no size"),
        ({"only": "lap", "add_size": "crib 80 x 90 cm"}, "exclude"),
    ],
)
def test_wrong_wishes(asked: dict[str, object], words: str) -> None:
    with pytest.raises(ValueError, match=words):
        result(example("skerry-throw"), **asked)


def test_the_diff_and_the_json(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "throw.loop"
    path.write_text(example("skerry-throw"), "utf-8")
    call = ["resize", str(path), "--width", "100cm", "--size", "lap"]
    assert main([*call, "--dry-run"]) == 0
    printed = capsys.readouterr()
    assert "-  cast on 180/240/300 in A by long-tail\n+  cast on 200/240/300" in printed.out
    assert "circular needle" in printed.err and "cast-on tail" in printed.err
    assert path.read_text("utf-8") == example("skerry-throw")
    assert main([*call, "--json"]) == 0
    found = json.loads(capsys.readouterr().out)
    figures = {f["name"]: f for f in found["table"][0]["figures"]}
    assert (figures["stitches"]["before"], figures["stitches"]["after"]) == (180, 200)
    assert figures["width"]["after"] == 1000.0
    yarn = {f["name"] for f in found["table"][1]["figures"]}
    assert {"Kelp", "Kelp, balls", "Foam", "Foam, balls"} <= yarn
    assert found["source"].count("200/240/300") == 1
    assert main([*call, "--dry-run", "--in-place"]) == 2
    assert main(["resize", str(path), "--scale", "big"]) == 2
    assert main([*call, "--in-place"]) == 0
    once = path.read_text("utf-8")
    assert main([*call, "--in-place"]) == 0
    assert path.read_text("utf-8") == once


def test_a_readers_edition(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "hat.loop"
    path.write_text(example("gull-hat"), "utf-8")
    call = ["build", str(path), "--gauge", "18 sts 26 rnds = 10 cm", "--width", "50cm"]
    out = tmp_path / "out"
    assert main([*call, "--size", "medium", "--to", "text,html", "--out", str(out)]) == 0
    assert path.read_text("utf-8") == example("gull-hat")
    text = (out / "hat-personal.txt").read_text("utf-8")
    html = (out / "hat-personal.html").read_text("utf-8")
    for page in (text, re.sub(r"<[^>]*>", "", html.split("<body>")[1])):
        assert "A gauge of 18 stitches and 26 rows = 10 cm" in page
        assert "96" in page and "88" in page and "−8" in page
        assert page.index("You asked for") < page.index("It was made for") < page.index("Change")
    assert 'data-label="This copy"' in html
    assert "Cast on 88 sts" in text
    assert "50 cm / 19¾ in in size medium" in text
    assert main(["build", str(path), "--width", "50", "--out", str(out)]) == 2
    capsys.readouterr()
    assert main(["build", str(path), "--to", "text", "--out", str(out)]) == 0
    assert "Your copy".upper() not in (out / "hat.txt").read_text("utf-8")


@pytest.mark.parametrize(
    ("language", "said"),
    [
        (
            "de",
            (
                "Eine Maschenprobe von 18 Maschen = 4 Zoll.",
                "Eine Breite von 50,5 cm / 20 Zoll.",
                "Maschenprobe: 20 M und 28 Runden = 10 cm / 4 Zoll",
                "medium: Maschen 96, Umfang 48 cm / 19 Zoll",
                "medium: Anschlagfaden",
                "Reihen waren nicht angegeben: es gelten 25,2 Reihen = 4 Zoll",
                "Alle Größen haben jetzt dieselbe Breite",
            ),
        ),
        (
            "fr",
            (
                "Un échantillon de 18 mailles = 4 po.",
                "Une largeur de 50,5 cm / 20 po.",
                "Échantillon : 20 m et 28 tours = 10 cm / 4 po",
                "medium : mailles 96, tour 48 cm / 19 po",
                "Aucun rang n’était indiqué : on compte 25,2 rangs = 4 po",
            ),
        ),
        (
            "es",
            (
                "Una muestra de 18 puntos = 4 in.",
                "Un ancho de 50,5 cm / 20 in.",
                "medium: puntos 96, contorno 48 cm / 19 in",
                "No se indicaron hileras: se toman 25,2 hileras = 4 in",
            ),
        ),
    ],
)
def test_a_readers_edition_is_in_the_language_of_its_pages(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], language: str, said: tuple[str, ...]
) -> None:
    path = tmp_path / "hat.loop"
    path.write_text(example("gull-hat"), "utf-8")
    call = ["build", str(path), "--gauge", "18 sts = 4 in", "--width", "50.5cm", "--to", "text"]
    assert main([*call, "--language", language, "--out", str(tmp_path)]) == 0
    capsys.readouterr()
    page = (tmp_path / "hat-personal.txt").read_text("utf-8").replace("\u00a0", " ")
    mine = page.split(" / The wording")[0]
    for text in said:
        assert text in mine
    english = r"\b(stitches|rows|rounds|gauge|width|length|needles?|yarn|usual|around|new)\b"
    assert not re.search(english, mine, re.IGNORECASE)


def test_a_readers_edition_in_uk_terms(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "hat.loop"
    path.write_text(example("gull-hat"), "utf-8")
    call = ["build", str(path), "--gauge", "18 sts = 4 in", "--to", "text", "--terms", "uk"]
    assert main([*call, "--out", str(tmp_path)]) == 0
    capsys.readouterr()
    page = (tmp_path / "hat-personal.txt").read_text("utf-8")
    assert "A tension of 18 stitches = 4 in." in page and "Tension: 20 sts" in page
    assert not re.search("gauge|stockinette", page, re.IGNORECASE)
