"""The teaching sheet: first places, totals reckoned by hand, tools only where used, pitfalls."""

from __future__ import annotations

from pathlib import Path

import pytest

from loopwright.build import BuildOptions, build_editions
from loopwright.compile import check_source
from loopwright.notation.source import Source

EXAMPLES = Path(__file__).parents[2] / "examples"


def sheet(text: str, **options: str) -> str:
    checked = check_source(Source.of("test.loop", text))
    assert not checked.has_errors, checked.problems
    made, failed = build_editions(checked, BuildOptions(("lesson",), **options), "test")  # type: ignore[arg-type]
    assert not failed
    assert made[0][0] == "test-lesson.txt"
    return made[0][1].decode()


def techniques(text: str) -> dict[str, tuple[str, int]]:
    """By the first word of each: where it is shown, and how often it is worked."""
    found = {}
    for line in text.splitlines():
        if ". Show it: " in line:
            name, _, rest = line.partition(". Show it: ")
            where, _, often = rest.partition(". Worked ")
            number = "1" if often == "once." else often.removesuffix(" times.").replace(",", "")
            found[name.split(". ", 1)[1].split(":")[0]] = (where, int(number))
    return found


def cloth(*lines: str, head: str = "", cast: str = "20", kind: str = "flat") -> str:
    body = "".join(f"  {line}\n" for line in lines)
    return f'pattern "P"\n{head}piece cloth {kind}\n  cast on {cast}\n{body}  bind off\n'


def test_totals_of_the_throw_reckoned_by_hand() -> None:
    text = sheet((EXAMPLES / "skerry-throw.loop").read_text("utf-8"), size="lap")
    found = techniques(text)
    # 98 repeats of four rows over 180 stitches, and four rows knit.
    assert found["k"] == ("Row 1 (RS)", 4 * 180 + 98 * (2 * (4 + 88) + 2 * 4))
    assert found["p"] == ("Row 4 (WS)", 98 * 2 * 176)
    assert found["sl wyif"] == ("Row 3 (RS)", 98 * 2 * 88)
    assert found["changing from one strand to another"] == ("Row 3 (RS)", 98 * 2)
    assert next(iter(found)) == "casting on, long-tail"
    assert "Row 5 (RS): its repeat is shifted against that of row 3" in text
    assert "Row 3 (RS): strand B takes over at the right edge" in text


def test_a_growing_motif_adds_up() -> None:
    source = cloth("work m x4", head="motif m\n  row 1: k1 yo * k1 * yo k1 => +2\n  row 2: purl\n")
    text = sheet(source)
    found = techniques(text)
    assert found["yo"] == ("Row 1 (RS)", 8)
    assert found["k"][1] == 20 + 22 + 24 + 26
    assert found["p"][1] == 22 + 24 + 26 + 28
    assert "Row 1 (RS): count: 20 before, 22 after (2 more); the same change in each of 4" in text
    assert "Row 1 (RS): stop and count: 22 sts after this row." in text


def test_a_fill_that_is_empty_at_first_is_shown_where_it_is_worked() -> None:
    source = cloth(
        "work m x3", cast="4", head="motif m\n  row 1: k2 yo * p1 * yo k2\n  row 2: knit\n"
    )
    found = techniques(sheet(source))
    assert found["p"] == ("Row 3 (RS)", 2 + 4)


def test_a_repeat_is_never_unrolled() -> None:
    source = cloth("work m x100000000", head="motif m\n  row 1: * k1 p1 *\n  row 2: purl\n")
    found = techniques(sheet(source))
    assert found["k"] == ("Row 1 (RS)", 10 * 100_000_000)
    assert found["p"] == ("Row 1 (RS)", 30 * 100_000_000)


def test_strands_that_come_back_at_the_start_of_a_repeat() -> None:
    head = (
        "yarn w: 50 g 100 m\nshade r of w\nshade g of w\nstrand A feeds r\nstrand B feeds g\n"
        "motif m\n  row 1 in A: knit\n  row 2 in A: knit\n  row 3 in B: knit\n  row 4 in B: knit\n"
    )
    text = sheet(cloth("work m x3", head=head, cast="20 in A"))
    # To B three times, back to A twice.
    assert techniques(text)["changing from one strand to another"] == ("Row 3 (RS)", 5)
    assert list(techniques(text))[:3] == [
        "casting on",
        "k",
        "changing from one strand to another",
    ]
    assert "Row 5 (RS): strand A takes over" in text
    assert "Row 1 (RS): strand" not in text


@pytest.mark.parametrize(
    ("line", "tool"),
    [
        ("row: k5 pm k15", "Stitch markers"),
        ("row: c4f * k1 *", "Cable needle"),
        ("row: rt * k1 *", ""),
        ("row: knit", ""),
    ],
)
def test_tools_are_listed_only_where_they_are_used(line: str, tool: str) -> None:
    lines = [line] if "pm" not in line else [line, "row: k15 rm k5"]
    text = sheet(cloth(*lines))
    ready = text.split("Techniques")[0]
    for name in ("Stitch markers", "Cable needle", "Stitch holder or waste yarn"):
        assert (name in ready) == (name == tool)
    for name in ("Tape measure", "Scissors", "Tapestry needle"):
        assert ready.count(name) == 1


def test_what_the_pattern_lists_is_not_listed_again() -> None:
    text = sheet(cloth("row: knit", head='  notion "Blunt tapestry needle"\n'))
    assert text.lower().count("tapestry needle") == 1


def test_short_rows_and_sides() -> None:
    text = sheet((EXAMPLES / "sandpiper-sock.loop").read_text("utf-8"))
    assert "Row 93 (RS): a short row" in text
    assert "Row 61 (RS): from here the work is turned after every row." in text
    assert "Rnd 107: from here the right side faces in every round." in text
    assert techniques(text)["picking up stitches along an edge"] == ("Rnd 107", 32)


def test_plain_cloth_has_nothing_that_stands_out() -> None:
    text = sheet(cloth("rows 4: knit"))
    assert text.endswith("Nothing stands out.\n")


def test_each_size_in_its_turn_and_uk_words() -> None:
    source = cloth("row: k2 yo * k1 *", head="  sizes s, l\n", cast="10/20")
    text = sheet(source, terms="uk")
    assert text.index("SIZE S") < text.index("SIZE L")
    assert "casting off" in text
    assert "binding off" not in text


def test_a_round_is_called_a_round() -> None:
    source = cloth("round: k1 yo * k1 * => 21", kind="round")
    assert "Rnd 1: stop and count: 21 sts after this round." in sheet(source)


@pytest.mark.parametrize(
    ("language", "many", "once"),
    [
        ("de", "1. Anschlagen, Kreuzanschlag. Zeigen: am Anfang. Kommt 1.200-mal vor.",
         "Kommt einmal vor."),
        ("fr", "1. monter les mailles, montage à deux fils. À montrer : au début. Se fait 1 200 "
         "fois.", "Se fait une fois."),
        ("es", "1. montar puntos, montaje largo. Mostrar: al principio. Se hace 1200 veces.",
         "Se hace una vez."),
    ],
)  # fmt: skip
def test_numbers_as_the_language_writes_them(language: str, many: str, once: str) -> None:
    source = cloth("row: k2tog * k1 *", cast="1200 by long-tail")
    text = sheet(source, language=language)
    assert many in text
    assert once in text


def abbreviations(text: str) -> dict[str, str]:
    """What the sheet lists under its own heading."""
    if "Abbreviations\n" not in text:
        return {}
    part = text.split("Abbreviations\n")[1].split("\n\n", maxsplit=1)[0]
    return dict(line.split(": ", 1) for line in part.splitlines()[1:])


def test_a_sheet_lists_the_abbreviations_that_it_uses_and_no_other() -> None:
    flat = cloth("work m x4", head="motif m\n  row 1: k1 yo * k1 * yo k1 => +2\n  row 2: purl\n")
    assert abbreviations(sheet(flat)) == {
        "RS": "right side",
        "sts": "stitches",
        "WS": "wrong side",
    }
    # Told from the right-side rows alone: nothing on this sheet says WS or sts.
    assert abbreviations(sheet(cloth("row: k1 * p1 *"))) == {"RS": "right side"}
    ring = sheet(cloth("rounds 3: k1 * p1 *", kind="round"))
    assert "Rnd 1" in ring
    assert abbreviations(ring) == {"rnd": "round"}


@pytest.mark.parametrize(
    ("language", "line"),
    [("de", "M: Maschen"), ("fr", "m : mailles"), ("es", "p: puntos")],
)
def test_a_sheet_lists_them_in_its_language(language: str, line: str) -> None:
    head = "motif m\n  row 1: k1 yo * k1 * yo k1 => +2\n  row 2: purl\n"
    text = sheet(cloth("work m x4", head=head), language=language)
    assert line in text.splitlines()
