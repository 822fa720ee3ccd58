"""The catalogues: complete, in step with the code, and said to be unchecked where they are."""

from __future__ import annotations

import ast
import re
import sys
from collections.abc import Callable
from dataclasses import replace
from functools import cache
from pathlib import Path
from typing import Any

import pytest
from babel.messages.catalog import Message
from babel.messages.pofile import read_po

from loopwright.build import BuildOptions, build_editions
from loopwright.compile import Checked, check_source
from loopwright.edition import catalogue as words
from loopwright.edition.abbreviations import MODIFIERS, bare
from loopwright.edition.aloud import BROKEN, ENGLISH_ALOUD, SIDES, UNITS, aloud
from loopwright.edition.catalogue import FAMILIES, Catalogue
from loopwright.edition.cautions import LOCAL_RULES, SLEEP_ADVICE
from loopwright.edition.chart_words import CHART_WORDS, meaning
from loopwright.edition.language import FOLDER, LANGUAGES, OWN_WORDS, UNCHECKED, catalogue
from loopwright.edition.large import FEATURES_PAGE, FEATURES_TEXT
from loopwright.edition.lesson import make_lesson, render_lesson
from loopwright.edition.personal import FIGURES
from loopwright.edition.pictures import SCHEMATIC_WORDS, with_pictures
from loopwright.edition.render import HEADINGS
from loopwright.edition.skills import SKILLS
from loopwright.edition.spoken import CROSSINGS, WHOLE, Spoken, render_spoken
from loopwright.edition.text import render_text
from loopwright.edition.voice import Voice
from loopwright.edition.words import make_document
from loopwright.facts.tables import table
from loopwright.facts.words import uk_terms
from loopwright.model.stitch import trade_stitches
from loopwright.notation.source import Source
from loopwright.picture.chart import LEFT_WORDS

sys.path.insert(0, str(Path(__file__).parent))
from messages import messages_of

ROOT = Path(__file__).parents[2]
PACKAGE = ROOT / "src/loopwright"
EDITION = PACKAGE / "edition"
EXAMPLES = sorted((ROOT / "examples").glob("*.loop"))
OTHERS = [language for language in LANGUAGES if language != "en"]
Pairs = set[tuple[str, str]]
SPOKEN = ("spoken.py", "aloud.py")
"""What is said only aloud, in the context of that name."""


def asked_by(*paths: Path) -> tuple[set[str], Pairs]:
    """The messages, and the pairs of one and more, that modules ask for."""
    singles: set[str] = set()
    pairs: Pairs = set()
    for path in paths:
        one, two = messages_of(ast.parse(path.read_text("utf-8")))
        singles |= one
        pairs |= two
    return singles, pairs


@cache
def wanted() -> tuple[set[str], Pairs]:
    """What pages in print and the teaching sheet ask for."""
    paths = [path for path in EDITION.glob("*.py") if path.name not in SPOKEN]
    rooms = ("picture/*.py", "fit/*.py", "yarn/notes.py")
    found, pairs = asked_by(*paths, *(path for room in rooms for path in PACKAGE.glob(room)))
    found |= set(HEADINGS.values()) | set(FAMILIES)
    found |= {UNCHECKED, OWN_WORDS, SLEEP_ADVICE, LOCAL_RULES, FEATURES_PAGE, FEATURES_TEXT}
    found |= {row["caution"] for row in table("safety_cautions")}
    found |= set(SKILLS.values()) | set(SCHEMATIC_WORDS) | set(CHART_WORDS)
    found |= set(LEFT_WORDS) | set(FIGURES)
    tables = ("fibre_care", "care", "fibres")
    return found | {row["line"] for name in tables for row in table(name)}, pairs


@cache
def wanted_aloud() -> tuple[set[str], Pairs]:
    """What the spoken edition asks for beside them."""
    found, pairs = asked_by(*(EDITION / name for name in SPOKEN))
    found |= set(MODIFIERS.values()) | set(SIDES.values()) | set(CROSSINGS.values())
    found |= {alone for _, alone in BROKEN}
    pairs |= {*WHOLE, *UNITS.values(), *((many, many) for many, _ in BROKEN)}
    return found, pairs | {(row["one"], row["many"]) for row in table("spoken")}


@cache
def entries(name: str) -> list[Message]:
    with (FOLDER / f"{name}.po").open("rb") as file:
        return [entry for entry in read_po(file, abort_invalid=True) if entry.id]


def there(language: str, context: str | None) -> tuple[set[str], Pairs]:
    found = [entry for entry in entries(language) if entry.context == context]
    pairs = {(e.id[0], e.id[1]) for e in found if e.pluralizable}
    return {str(entry.id) for entry in found if not entry.pluralizable}, pairs


def test_the_messages_of_the_code_are_found() -> None:
    code = (
        'FOUR = "four"\ndef f():\n message = "one"\n self.t(message)\n'
        ' self.t("two" if x else "three", n=1)\n say(FOUR)\n'
        ' one, many = "a", "b"\n self.n(one, many, 1)\n self.several("c", values)\n'
    )
    singles = {"one", "two", "three", "four"}
    assert messages_of(ast.parse(code)) == (singles, {("a", "b"), ("c", "c")})
    printed, aloud = wanted(), wanted_aloud()
    assert "Rep {rows} {first}–{last}{more}{tail}." in printed[0]
    assert ("knit 1", "knit {n}") in aloud[1]
    assert len(printed[0]) > 300 and len(aloud[0]) > 50 and len(aloud[1]) > 50


@pytest.mark.parametrize("language", OTHERS)
def test_every_message_of_the_code_is_there_and_no_other(language: str) -> None:
    for mine, code in zip(there(language, None), wanted(), strict=True):
        assert code - mine == set()
        assert mine - code == set()


@pytest.mark.parametrize("language", OTHERS)
def test_every_message_that_is_said_aloud_is_there_and_no_other(language: str) -> None:
    in_print, mine, code = there(language, None), there(language, "spoken"), wanted_aloud()
    # What print has too may be said otherwise, but need not.
    assert code[0] - mine[0] - in_print[0] == set()
    assert mine[0] - code[0] - wanted()[0] == set()
    assert code[1] == mine[1]
    assert set(ENGLISH_ALOUD) <= wanted()[0]


@pytest.mark.parametrize("language", OTHERS)
def test_both_forms_of_a_plural_are_there(language: str) -> None:
    for entry in entries(language):
        if entry.pluralizable:
            assert len(entry.string) == 2 and all(entry.string), entry.id


def test_none_is_said_as_each_language_says_it() -> None:
    said = {
        language: [
            catalogue(language).many("{n} stitch.", "{n} stitches.", number) for number in (0, 1, 2)
        ]
        for language in LANGUAGES
    }
    assert said == {
        "en": ["0 stitches.", "1 stitch.", "2 stitches."],
        "de": ["0 Maschen.", "1 Masche.", "2 Maschen."],
        "fr": ["0 maille.", "1 maille.", "2 mailles."],
        "es": ["0 puntos.", "1 punto.", "2 puntos."],
    }


@pytest.mark.parametrize("language", OTHERS)
def test_every_stitch_and_term_is_there(language: str) -> None:
    said = {(entry.context, str(entry.id)) for entry in entries(language)}
    terms = {"st", "sts", "rep", "rnd", "rnds", "RS", "WS", "foll"}
    used = set()
    for path in EDITION.glob("*.py"):
        used |= set(re.findall(r'used\.term\("(\w+)"\)', path.read_text("utf-8")))
    assert used <= terms
    for word in {*trade_stitches(), *MODIFIERS, *terms}:
        assert ("short", word) in said, word
        assert ("long", word) in said, word
    assert {("short", "ktog"), ("short", "ptog")} <= said
    names = {*words.FABRICS, *words.METHODS, *words.LEVELS, *words.NEEDLE_KINDS, *words.EDGES}
    names |= {f"weight {number}" for number in range(8)}
    assert {name.casefold() for name in names} == {
        name.casefold() for context, name in said if context == "name"
    }


@pytest.mark.parametrize("language", [*OTHERS, "en_GB"])
def test_no_entry_is_fuzzy_empty_or_without_a_source(language: str) -> None:
    for entry in entries(language):
        strings = entry.string if entry.pluralizable else [str(entry.string)]
        assert all(text.strip() for text in strings), entry.id
        assert not entry.fuzzy, entry.id
        assert entry.user_comments and len(entry.user_comments[0]) > 8, entry.id


@pytest.mark.parametrize("language", [*OTHERS, "en_GB"])
def test_a_translation_asks_for_nothing_that_is_not_given(language: str) -> None:
    for entry in entries(language):
        plural = bool(entry.pluralizable)
        ids = list(entry.id) if plural else [str(entry.id)] * 2
        strings = list(entry.string) if plural else [str(entry.string)] * 2
        given = set(re.findall(r"{(\w+)}", " ".join(ids)))
        if "sts" in given:
            given |= {"n", "st"}  # `Voice.amount` gives them beside it
        if given & {"row", "rows"}:
            given |= {"unit", "rows"}  # as `Voice.rows` and `_every` in spreading do
        if "nth" in given:
            given.add("n")
        if entry.context == "short":
            given = {"n", "a"} if entry.id in ("ktog", "ptog") else {"n"}
        for number, text in enumerate(strings):
            asked = set(re.findall(r"{(\w+)}", text))
            assert asked <= given, entry.id
            # Of one there need be no figure: the next stitch.
            if entry.context in (None, "spoken") and (number or not plural):
                if "{n}" in ids[number]:
                    assert asked & {"n", "sts"}, f"the number is lost: {entry.id}"
            for part in ("first", "last", "strand", "name", "why", "length", "times", "steps"):
                if f"{{{part}}}" in ids[number]:
                    assert part in asked, f"{part} is lost: {entry.id}"


class Missing(dict[str, Any]):
    """Messages that note what was asked for in vain."""

    def __init__(self, there: dict[str, Any]) -> None:
        super().__init__(there)
        self.asked: set[str] = set()

    def get(self, key: str, default: Any = None) -> Any:
        if key not in self:
            self.asked.add(key)
        return super().get(key, default)


@cache
def checked_of(text: str) -> Checked:
    checked = check_source(Source.of("test.loop", text))
    assert not checked.has_errors, checked.problems
    return checked


def page(text: str, known: Catalogue, **options: str) -> str:
    checked = checked_of(text)
    return render_text(make_document(checked.pattern, checked.walks, voice=Voice(known), **options))


def spoken(text: str, known: Catalogue) -> str:
    checked = checked_of(text)
    size = checked.pattern.sizes[-1]
    return render_spoken([make_document(checked.pattern, checked.walks, size, voice=Spoken(known))])


def lesson(text: str, known: Catalogue) -> str:
    checked = checked_of(text)
    size = len(checked.pattern.sizes) - 1
    name = checked.pattern.sizes[size]
    document = make_document(checked.pattern, checked.walks, name, voice=Voice(known))
    return render_lesson(
        (make_lesson(checked.pattern, checked.walks, size, document, Voice(known)),)
    )


KINDS: dict[str, Callable[[str, Catalogue], str]] = {
    "page": page,
    "spoken": spoken,
    "lesson": lesson,
}


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("language", OTHERS)
def test_no_edition_asks_for_a_message_in_vain(language: str, kind: str) -> None:
    known = catalogue(language)
    if kind == "spoken":
        known = aloud(known)
    messages, plurals = Missing(dict(known.messages)), Missing(dict(known.plurals))
    noting = replace(known, messages=messages, plurals=plurals)
    for path in EXAMPLES:
        KINDS[kind](path.read_text("utf-8"), noting)
    for text in (BARE, MANY):
        KINDS[kind](text, noting)
    assert messages.asked == set()
    assert plurals.asked == set()


@pytest.mark.parametrize("language", OTHERS)
def test_no_schematic_asks_for_a_message_in_vain(
    language: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("loopwright.edition.pictures.cloth_picture", lambda *_: None)
    known = catalogue(language)
    messages = Missing(dict(known.messages))
    seen = 0
    for path in EXAMPLES:
        checked = checked_of(path.read_text("utf-8"))
        voice = Voice(replace(known, messages=messages))
        document = make_document(checked.pattern, checked.walks, voice=voice)
        drawn = with_pictures(document, checked.pattern, checked.walks)
        for schematic in drawn.schematics:
            seen += 1
            cells = [cell for row in schematic.measures.rows for cell in row[1:]]
            assert not any(re.search(r"\d\.\d", cell) for cell in cells)
    assert seen > 10
    assert messages.asked == set()


def test_english_keys_say_what_the_table_of_symbols_says() -> None:
    us, uk = catalogue("en"), catalogue("en", "uk")
    rows = table("chart_symbols")
    told = {text for row in rows for text in (row["rs"], row["ws"])}
    assert {meaning(text, us) for text in told} == told
    assert meaning("bind off", uk) == "cast off"


@pytest.mark.parametrize("language", OTHERS)
def test_no_key_of_a_chart_is_left_in_english(language: str) -> None:
    known = catalogue(language)
    for row in table("chart_symbols"):
        for text in filter(None, (row["rs"], row["ws"])):
            found = meaning(text, known)
            assert found and "{" not in found
            # A few abbreviations are written alike in two languages; words never are.
            assert found != text or len(text) <= 5, text
    # A pattern's own stitch, and a group worked into one, stay as the writer has them.
    assert meaning("MB", known) == "MB"
    assert meaning("(k1, yo, k1) in the next stitch", known) == "(k1, yo, k1) in the next stitch"
    family = {"de": "5 re zus", "fr": "5 m ens end", "es": "5 pjd"}
    assert meaning("k5tog", known) == family[language]


def test_a_chart_s_notes_and_parts_are_in_the_language_of_the_page() -> None:
    sock = checked_of((ROOT / "examples/sandpiper-sock.loop").read_text("utf-8"))
    ((_, page),) = build_editions(sock, BuildOptions(kinds=("html",), language="de"), "p")[0]
    text = page.decode("utf-8")
    assert "Alle 5 Male, die diese Reihen gestrickt werden" in text
    assert "die Masche wartet auf der Nadel" in text and ">2 re zus</td>" in text
    wide = 'pattern "P"\n  gauge 20 stitches 28 rows = 10 cm\nmotif m over 50\n'
    rows = "".join(f"  row {at}: k{at % 40 + 1} p{49 - at % 40}\n" for at in range(1, 61))
    piece = "piece p flat\n  cast on 50\n  work m x1\n  bind off\n"
    ((_, page),) = build_editions(
        checked_of(wide + rows + piece), BuildOptions(kinds=("html",), language="fr"), "p"
    )[0]
    assert "à partir de la droite</p>" in page.decode("utf-8")
    assert "Rangs 1–" in page.decode("utf-8")


BARE = """pattern "Q"
  level easy
  sizes s, l
  width 20/30 cm
  gauge 20.5 stitches 28 rows = 10 cm in stockinette on 4.5 mm after blocking
  needle circular 4.5 mm 80 cm
yarn w "W": 50 g 100 m, weight 4
shade r "R" of w
strand A feeds r x2
strand B feeds r
motif m over 2n + 2
  row 1 in A: k1 * k2tog yo * k1
  every ws row: purl
  row 3 in B: k1 * k1 sl1 wyif * k1
piece p flat
  cast on 40/60 in A by long-tail
  rows 2 in A: knit
  work m x3
  rows 2 in B: knit
  row in A: k2 (k1 p1) x3 k2tog2 c4f * k1 *
  row in A: (p1 yo p1) in 1 * p1 *
  row in A: kfb ssk * p2 * sk2p tbl
  rows 2 in A: knit
  bind off in A by stretchy
"""
MANY = """pattern "Q"
motif grow
  row 1: k2 yo * k1 * yo k2 => +2
  row 2: p2 yo * p1 k1 * yo p2 => +2
piece p flat
  cast on 60
  row: k1 tbl p1 tbl sl1 wyif sl1 wyib sl1 kwise sl1 pwise k2tog tbl p2tog tbl yo2 m1 m1l * k1 *
  row: c4f c4b rt lt k1b cdd s2kp sssk skp ssp pfb lli rli m1r m1p * p1 *
  row: (k1 p1) x2 k2tog3 sk2p3 kfb2 * p1 *
  row: bo2 drop1 co2 k5 * k1 *
  row: sl1 wyif kwise k3tog tbl ssk2 p3tog * k2 p1 k1 *
  row: k5 w&t
  row: p5
  row: k2 pm * k1 * pm k2 yo
  row: k3 rm * k1 * rm k2
  row: purl
  work grow x3
  bind off by gathering
"""
"""One of nearly every stitch."""

ENGLISH_WORDS = re.compile(
    r"\b(rows?|rnds?|sts?|rep|last|next|times|twice|knit|purl|cast|bind|needles?|ball|balls|with|"
    r"size|width|length|easy|Medium|stockinette|takes|makes|together|yarn|long-tail|stretchy|to)\b",
    re.IGNORECASE,
)


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("language", OTHERS)
def test_no_english_word_is_left(language: str, kind: str) -> None:
    text = KINDS[kind](BARE, catalogue(language))
    # The two notices stand in English too, after their slash.
    text = "\n".join(
        line.split(" / The wording")[0].split(" / Title,")[0] for line in text.split("\n")
    )
    left = ENGLISH_WORDS.findall(text)
    # Spanish writes rep too.
    assert [word for word in left if language != "es" or word.lower() != "rep"] == []
    assert "4,5 mm" in text or (kind == "spoken" and "4,5 " in text)
    assert ("20,5 " in text) == (kind != "lesson")


@pytest.mark.parametrize("language", OTHERS)
def test_no_abbreviation_is_said_aloud(language: str) -> None:
    known = catalogue(language)
    short = {bare(text) for text in known.short.values()} - {bare(w) for w in known.long.values()}
    # Words that stand in full in print already.
    short -= {known.messages[name] for name in ("row", "rows", "rnd", "rnds")}
    short -= {known.short[word] for word in ("turn",)}
    assert len(short) > 30
    for text in (BARE, MANY):
        said = spoken(text, known)
        said = said.partition("\nP.\n")[2]
        assert said
        for word in short:
            found = re.findall(rf"(?<![\w’]){re.escape(word)}(?![\w’])", said)
            assert not found, f"{word}: {said}"
        assert not re.search(r"[*×]", said)


@pytest.mark.parametrize("language", OTHERS)
def test_a_page_says_in_both_languages_that_its_words_are_unchecked(language: str) -> None:
    kinds = ("html", "text", "spoken", "lesson")
    made, failed = build_editions(checked_of(BARE), BuildOptions(kinds, language=language), "q")
    assert not failed
    for _, data in made:
        text = data.decode()
        assert "has not been checked by a native knitter" in text
        assert (
            catalogue(language).text(
                "The wording in this language has not been checked by a native knitter yet."
            )
            in text
        )
    assert f'<html lang="{language}"' in made[0][1].decode()


def test_the_pdf_is_in_the_language_of_its_words() -> None:
    import io

    import pikepdf

    for options, tag in (
        (BuildOptions(("pdf",), language="de"), "de"),
        (BuildOptions(("pdf",), terms="uk"), "en-GB"),
        (BuildOptions(("pdf",)), "en"),
    ):
        made, failed = build_editions(checked_of(BARE), options, "q")
        if failed:
            pytest.skip(failed[0])
        with pikepdf.open(io.BytesIO(made[0][1])) as pdf:
            assert str(pdf.Root.Lang) == tag


def test_uk_terms() -> None:
    text = page(BARE, catalogue("en", "uk"))
    assert "TENSION" in text
    assert "in stocking stitch" in text
    assert "(Aran)" in text
    assert "cast off all sts" in text
    assert not re.search(r"bind off|gauge|stockinette|native", text, re.IGNORECASE)
    american = page(BARE, catalogue())
    assert "GAUGE" in american
    assert "in stockinette" in american


def test_uk_terms_are_those_of_the_table() -> None:
    uk = catalogue("en", "uk")
    said = {*uk.messages.values(), *uk.short.values(), *uk.names.values()}
    for us, word in uk_terms().items():
        wanted = ["yfwd", "yon", "yrn", "yfrn"] if us == "yarn over" else [word]
        for one in wanted:
            assert any(one.casefold() in text.casefold() for text in said), one


@pytest.mark.parametrize(
    ("body", "said"),
    [
        ("k2 yo k18", "K2, yfwd, k18"),
        ("k2 yo p18", "K2, yfrn, p18"),
        ("p2 yo k18", "P2, yon, k18"),
        ("p2 yo p18", "P2, yrn, p18"),
        ("yo p20", "Yrn, p20"),
        ("k20 yo", "K20, yfwd"),
        ("k2 pm yo pm p18", "K2, pm, yfrn, pm, p18"),
        ("k2 * yo p2tog * k2", "K2, *yo, p2tog; rep from * to last 2 sts, k2"),
        ("p2 * yo p2tog * k2", "P2, *yrn, p2tog; rep from * to last 2 sts, k2"),
        ("k2 (k2tog yo) x8 k2", "K2, (k2tog, yfwd) 8 times, k2"),
        ("k2 (k2tog yo) x8 p2", "K2, (k2tog, yo) 8 times, p2"),
        ("k2 sl1 wyif yo k17", "K2, sl1 wyif, yon, k17"),
        ("k4 yo2 p2tog p14", "K4, yfrn twice, p2tog, p14"),
    ],
)
def test_a_yarn_over_by_its_place(body: str, said: str) -> None:
    text = page(
        f'pattern "Q"\npiece p flat\n  cast on 20\n  row: {body}\n  bind off\n',
        catalogue("en", "uk"),
    )
    assert f"Row 1 (RS): {said}." in text


@pytest.mark.parametrize(("language", "terms"), [("xx", "us"), ("en", "au"), ("de", "uk")])
def test_what_is_not_there_is_refused(language: str, terms: str) -> None:
    with pytest.raises(ValueError):
        catalogue(language, terms)
