"""A stranger's words stay words wherever they go: pages, pictures, lists, errata, JSON.

The source has a hostile text in every place of the language where a text may stand; what comes of
it is held against what comes of the same source with plain words.
"""

from __future__ import annotations

import json
import re
import sys
from html.parser import HTMLParser
from pathlib import Path
from xml.etree import ElementTree

import pytest

from loopwright import cli

sys.path.insert(0, str(Path(__file__).parent))
import hostile

EVIL = hostile.EVIL
Capture = pytest.CaptureFixture[str]


class Page(HTMLParser):
    """The elements of a page, each with its attributes' names, its text, and what they hold."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.shape: set[tuple[str, tuple[str, ...]]] = set()
        self.values: list[str] = []
        self.text = ""
        self.feed(page)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.shape.add((tag, tuple(sorted(name for name, _ in attrs))))
        self.values += [value or "" for name, value in attrs if name in ("href", "src", "style")]

    def handle_data(self, data: str) -> None:
        self.text += data


@pytest.fixture
def files(tmp_path: Path) -> tuple[Path, Path]:
    """The plain source and the hostile one, alike in all but their words."""
    plain, evil = tmp_path / "plain.loop", tmp_path / "evil.loop"
    plain.write_text(hostile.source(hostile.PLAIN), "utf-8")
    evil.write_text(hostile.source(hostile.HOSTILE), "utf-8")
    return plain, evil


def run(capsys: Capture, *words: object, status: int = 0) -> str:
    """What a call prints to standard output."""
    capsys.readouterr()
    assert cli.main([str(word) for word in words]) == status, capsys.readouterr().err
    return capsys.readouterr().out


def one_line(text: str) -> str:
    return " ".join(text.split())


def clean_pages(evil: str, plain: str) -> None:
    """A hostile page has the elements of the plain one, and addresses of no other kind."""
    page, other = Page(evil), Page(plain)
    assert page.shape - {("wbr", ())} == other.shape - {("wbr", ())}
    assert {v[:5] for v in page.values} == {v[:5] for v in other.values}
    assert EVIL[:60] in one_line(page.text)
    for data in re.findall(r'(?s)<script type="[^"]*json"[^>]*>(.*?)</script>', evil):
        assert not set("<>&") & set(data)
        json.loads(data)


# --- the places themselves ------------------------------------------------------------------------


def test_every_place_for_a_text_has_a_case() -> None:
    assert hostile.places_of("STRING") == set(hostile.WRITTEN)


def test_the_words_of_all_places_are_in_the_source() -> None:
    text = hostile.source(hostile.texts("@"))
    assert all(f"{place} @" in text for place in hostile.WRITTEN.values())


def test_words_without_quotes_hold_letters_digits_and_little_else() -> None:
    found = hostile.terminals()
    for name in hostile.WORDS:
        word = re.compile(found[name], re.IGNORECASE)
        taken = {c for c in map(chr, range(0x300)) if word.fullmatch(f"a{c}b")}
        assert {c for c in taken if not c.isalnum()} <= set("_-.+&"), name
    quoted = re.compile(found["STRING"])
    assert not quoted.fullmatch('"a"b"') and not quoted.fullmatch('"a\nb"')


# --- editions -------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "options",
    [(), ("--large",), ("--language", "de"), ("--terms", "uk", "--counts", "all", "--units", "in"),
     ("--gauge", "18 stitches 26 rows = 10 cm"), ("--width", "45cm", "--length", "50cm"),
     ("--scale", "120%", "--large"), ("--gauge", "18 stitches 26 rows = 10 cm", "--size", "other")],
    ids=" ".join,
)  # fmt: skip
def test_every_edition_and_copy(
    files: tuple[Path, Path], tmp_path: Path, capsys: Capture, options: tuple[str, ...]
) -> None:
    kinds = "html,text" if "--language" in options else "html,text,spoken,lesson"
    for path in files:
        run(capsys, "build", path, "--to", kinds, "--out", tmp_path / "out", *options)
    made = {path.name: path.read_text("utf-8") for path in (tmp_path / "out").iterdir()}
    evil = {name: text for name, text in made.items() if name.startswith("evil")}
    assert len(evil) * 2 == len(made) == 2 * (kinds.count(",") + 1)
    for name, text in evil.items():
        if name.endswith(".html"):
            clean_pages(text, made[name.replace("evil", "plain")])
        else:
            assert EVIL.casefold()[:60] in one_line(text).casefold(), name
        assert " 49 " not in text and "\x1b" not in text


def test_no_place_is_lost_on_the_page(
    files: tuple[Path, Path], tmp_path: Path, capsys: Capture
) -> None:
    run(capsys, "build", files[1], "--to", "text,html", "--out", tmp_path / "out")
    page = Page((tmp_path / "out" / "evil.html").read_text("utf-8")).text
    text = (tmp_path / "out" / "evil.txt").read_text("utf-8")
    for place in hostile.WRITTEN.values():
        assert hostile.HOSTILE[place].casefold()[:50] in one_line(text).casefold(), place
        assert hostile.HOSTILE[place][:50] in one_line(page), place


def test_errata_of_two_hostile_patterns(
    files: tuple[Path, Path], tmp_path: Path, capsys: Capture
) -> None:
    older = tmp_path / "older.loop"
    told = hostile.texts(EVIL.replace("7*7", "8*8"))
    older.write_text(hostile.source(told, rows=6), "utf-8")
    words = run(capsys, "compare", older, files[1])
    assert "{{ 8*8 }} {% include 'x' %}" in words and "{{ 7*7 }} {% include 'x' %}" in words
    changes = json.loads(run(capsys, "compare", older, files[1], "--json"))["changes"]
    assert any(told["title"] in c["was"] and EVIL in c["is"] for c in changes)
    for source, since in ((files[1], older), (files[0], older)):
        run(capsys, "build", source, "--to", "html,text", "--out", tmp_path, "--since", since)
    evil, plain = ((tmp_path / f"{name}.html").read_text("utf-8") for name in ("evil", "plain"))
    clean_pages(evil, plain)
    assert "{{ 8*8 }}" in Page(evil).text
    assert "64" not in re.findall(r"\btitle (\S+)", (tmp_path / "evil.txt").read_text("utf-8"))


# --- pictures -------------------------------------------------------------------------------------


@pytest.mark.parametrize("what", ["chart", "schematic"])
def test_a_drawing_has_no_more_than_the_plain_one(
    files: tuple[Path, Path], capsys: Capture, what: str
) -> None:
    shapes = []
    for path in files:
        svg = run(capsys, "picture", path, "--what", what)
        root = ElementTree.fromstring(svg)
        shapes.append({(e.tag, tuple(sorted(e.attrib))) for e in root.iter()})
        names = {name for e in root.iter() for name in e.attrib}
        assert not any(name.startswith("on") or name.endswith("href") for name in names)
    assert shapes[0] == shapes[1]
    words = " ".join(root.itertext())
    assert EVIL in words


def test_the_cloth_is_the_same_picture(files: tuple[Path, Path], tmp_path: Path) -> None:
    for path in files:
        words = ["picture", path, "--what", "fabric", "-o", path.with_suffix(".png")]
        assert cli.main([str(word) for word in words]) == 0
    plain, evil = (chunks(path.with_suffix(".png").read_bytes()) for path in files)
    assert plain.keys() == evil.keys()
    assert {k: v for k, v in plain.items() if k != b"iTXt"} == {
        k: v for k, v in evil.items() if k != b"iTXt"
    }
    assert EVIL.encode() in evil[b"iTXt"]


def chunks(png: bytes) -> dict[bytes, bytes]:
    """The chunks of a PNG by their kind: each a length, a kind, the data and a checksum."""
    found: dict[bytes, bytes] = {}
    at = 8
    while at < len(png):
        length = int.from_bytes(png[at : at + 4])
        kind = png[at + 4 : at + 8]
        found[kind] = found.get(kind, b"") + png[at + 8 : at + 8 + length]
        at += length + 12
    return found


def test_a_palette_of_hostile_names(
    files: tuple[Path, Path], tmp_path: Path, capsys: Capture
) -> None:
    palette = tmp_path / "tries.txt"
    palette.write_text(
        f"{re.sub('[:=]|--', ' ', EVIL)}: kelp=#7a2e1d\nPlain: kelp=#2f5d62\n", "utf-8"
    )
    png = tmp_path / "tries.png"
    run(capsys, "picture", files[1], "--what", "fabric", "--palette", palette, "-o", png)
    assert b"{{ 7*7 }} {% include 'x' %}" in chunks(png.read_bytes())[b"iTXt"]
    palette.write_text("Turned \u202e\x07 over: kelp=#7a2e1d\nPlain:\n", "utf-8")
    run(capsys, "picture", files[1], "--what", "fabric", "--palette", palette, "-o", png)
    said = chunks(png.read_bytes())[b"iTXt"].decode("utf-8", "replace")
    assert "\u202e" not in said and "\x07" not in said and r"\u202e\x07 over" in said
    palette.write_text("Bad\x1b[31m: kelp=\x1b]0;owned\x07\n", "utf-8")
    call = ["picture", str(files[1]), "--what", "fabric", "--palette", str(palette), "-o", str(png)]
    assert cli.main(call) == 2
    said = capsys.readouterr().err
    assert "\x1b" not in said and "\x07" not in said


# --- lists and JSON -------------------------------------------------------------------------------

LISTS = ("check", "rows", "yarn", "plan", "fit")


@pytest.mark.parametrize("command", LISTS)
def test_lists_hold_the_words_as_they_are(
    files: tuple[Path, Path], capsys: Capture, command: str
) -> None:
    more = ("--size", hostile.HOSTILE["size"]) if command == "plan" else ()
    told = run(capsys, command, files[1], *more)
    if command != "check":
        assert EVIL in told
    assert "\x1b" not in told


@pytest.mark.parametrize("command", LISTS)
def test_json_is_json_with_any_words(
    files: tuple[Path, Path], capsys: Capture, command: str
) -> None:
    more = ("--size", hostile.HOSTILE["size"]) if command == "plan" else ()
    told = json.loads(run(capsys, command, files[1], *more, "--json"))
    other = hostile.PLAIN["size"]
    more = ("--size", other) if command == "plan" else ()
    plain = json.dumps(json.loads(run(capsys, command, files[0], *more, "--json")))
    for place, text in hostile.PLAIN.items():
        plain = plain.replace(text, json.dumps(hostile.HOSTILE[place])[1:-1])
    plain = plain.replace(str(files[0]), str(files[1]))
    assert told == json.loads(plain)


def test_a_resized_source_keeps_the_words(files: tuple[Path, Path], capsys: Capture) -> None:
    told = run(capsys, "resize", files[1], "--width", "40/50cm")
    lines = hostile.source(hostile.HOSTILE).splitlines()
    assert [line for line in lines if EVIL in line] == [
        line for line in told.splitlines() if EVIL in line
    ]
    figures = json.loads(run(capsys, "resize", files[1], "--width", "40/50cm", "--json"))
    assert figures["source"] == told


def test_format_keeps_the_words(files: tuple[Path, Path], capsys: Capture) -> None:
    before = files[1].read_text("utf-8")
    run(capsys, "format", files[1])
    after = files[1].read_text("utf-8")
    for text in hostile.HOSTILE.values():
        assert before.count(text) == after.count(text) >= 1
