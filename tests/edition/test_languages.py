"""The catalogues: complete, in step with the code, and said to be unchecked where they are."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from babel.messages.catalog import Message
from babel.messages.pofile import read_po

from loopwright.build import BuildOptions, build_editions
from loopwright.compile import Checked, check_source
from loopwright.edition import catalogue as words
from loopwright.edition.catalogue import FAMILIES, Catalogue
from loopwright.edition.cautions import LOCAL_RULES, SLEEP_ADVICE
from loopwright.edition.language import FOLDER, LANGUAGES, OWN_WORDS, UNCHECKED, catalogue
from loopwright.edition.large import FEATURES_PAGE, FEATURES_TEXT
from loopwright.edition.render import HEADINGS
from loopwright.edition.skills import SKILLS
from loopwright.edition.text import render_text
from loopwright.edition.voice import MODIFIERS, Voice
from loopwright.edition.words import make_document
from loopwright.facts.tables import table
from loopwright.facts.words import uk_terms
from loopwright.model.stitch import trade_stitches
from loopwright.notation.source import Source

ROOT = Path(__file__).parents[2]
EDITION = ROOT / "src/loopwright/edition"
EXAMPLES = sorted((ROOT / "examples").glob("*.loop"))
OTHERS = [language for language in LANGUAGES if language != "en"]
SPEAKS_ENGLISH = {"spoken.py", "lesson.py", "pitfalls.py"}
"""Editions that are in English only, as the command line says."""


def strings(node: ast.expr, constants: dict[str, str]) -> Iterator[str]:
    """The string, or both strings of a choice, that an argument is."""
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        yield node.value
    elif isinstance(node, ast.IfExp):
        yield from strings(node.body, constants)
        yield from strings(node.orelse, constants)
    elif isinstance(node, ast.Name) and node.id in constants:
        yield constants[node.id]


def messages_of(tree: ast.Module) -> set[str]:
    """Every message that a module passes to its catalogue."""
    constants = {
        target.id: node.value.value
        for node in tree.body
        if isinstance(node, ast.Assign)
        for target in node.targets
        if isinstance(target, ast.Name)
        and isinstance(node.value, ast.Constant)
        and isinstance(node.value.value, str)
    }
    found: set[str] = set()
    for node in ast.walk(tree):
        if isinstance(node, ast.Call) and node.args:
            called = node.func
            name = called.attr if isinstance(called, ast.Attribute) else getattr(called, "id", "")
            if name in ("t", "say", "text"):
                found.update(strings(node.args[0], constants))
        elif isinstance(node, ast.Assign) and isinstance(node.targets[0], ast.Name):
            if node.targets[0].id == "message":
                found.update(strings(node.value, constants))
    return found


def wanted() -> set[str]:
    found = set(HEADINGS.values()) | set(FAMILIES)
    for path in [*EDITION.glob("*.py"), EDITION.parent / "yarn/notes.py"]:
        if path.name not in SPEAKS_ENGLISH:
            found |= messages_of(ast.parse(path.read_text("utf-8")))
    found |= {UNCHECKED, OWN_WORDS, SLEEP_ADVICE, LOCAL_RULES, FEATURES_PAGE, FEATURES_TEXT}
    found |= {row["caution"] for row in table("safety_cautions")}
    found |= set(SKILLS.values())
    tables = ("fibre_care", "care", "fibres")
    return found | {row["line"] for name in tables for row in table(name)}


def entries(name: str) -> list[Message]:
    with (FOLDER / f"{name}.po").open("rb") as file:
        return [entry for entry in read_po(file, abort_invalid=True) if entry.id]


def test_the_messages_of_the_code_are_found() -> None:
    code = 'message = "one"\nself.t(message)\nself.t("two" if x else "three", n=1)\nsay(FOUR)\n'
    assert messages_of(ast.parse('FOUR = "four"\n' + code)) == {"one", "two", "three", "four"}
    assert "Rep {rows}{more}{tail}." in wanted()
    assert len(wanted()) > 100


@pytest.mark.parametrize("language", OTHERS)
def test_every_message_of_the_code_is_there_and_no_other(language: str) -> None:
    there = {str(entry.id) for entry in entries(language) if not entry.context}
    assert wanted() - there == set()
    assert there - wanted() == set()


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
        assert str(entry.string).strip(), entry.id
        assert not entry.fuzzy, entry.id
        assert entry.user_comments and len(entry.user_comments[0]) > 8, entry.id


@pytest.mark.parametrize("language", [*OTHERS, "en_GB"])
def test_a_translation_asks_for_nothing_that_is_not_given(language: str) -> None:
    for entry in entries(language):
        given = set(re.findall(r"{(\w+)}", str(entry.id)))
        if "sts" in given:
            given |= {"n", "st"}  # `Voice.amount` gives them beside it
        if entry.context == "short":
            given = {"n", "a"} if entry.id in ("ktog", "ptog") else {"n"}
        asked = set(re.findall(r"{(\w+)}", str(entry.string)))
        assert asked <= given, entry.id
        if not entry.context and "{n}" in str(entry.id):
            assert asked & {"n", "sts"}, f"the number is lost: {entry.id}"
        for part in ("first", "last", "strand", "name", "why", "length"):
            if f"{{{part}}}" in str(entry.id):
                assert part in asked, f"{part} is lost: {entry.id}"


class Missing(dict[str, str]):
    """Messages that note what was asked for in vain."""

    def __init__(self, there: dict[str, str]) -> None:
        super().__init__(there)
        self.asked: set[str] = set()

    def get(self, key: str, default: str | None = None) -> str | None:  # type: ignore[override]
        if key not in self:
            self.asked.add(key)
        return super().get(key, default)


def checked_of(text: str) -> Checked:
    checked = check_source(Source.of("test.loop", text))
    assert not checked.has_errors, checked.problems
    return checked


def page(text: str, known: Catalogue, **options: str) -> str:
    checked = checked_of(text)
    return render_text(make_document(checked.pattern, checked.walks, voice=Voice(known), **options))


@pytest.mark.parametrize("language", OTHERS)
def test_no_page_asks_for_a_message_in_vain(language: str) -> None:
    known = catalogue(language)
    missing = Missing(dict(known.messages))
    for path in EXAMPLES:
        page(path.read_text("utf-8"), replace(known, messages=missing))
    assert missing.asked == set()


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
ENGLISH_WORDS = re.compile(
    r"\b(rows?|rnds?|sts?|rep|last|next|times|twice|knit|purl|cast|bind|needles?|ball|balls|with|"
    r"size|width|length|easy|Medium|stockinette|takes|makes|together|yarn|long-tail|stretchy|to)\b",
    re.IGNORECASE,
)


@pytest.mark.parametrize("language", OTHERS)
def test_no_english_word_is_left(language: str) -> None:
    text = page(BARE, catalogue(language))
    # The two notices stand in English too, after their slash.
    text = "\n".join(
        line.split(" / The wording")[0].split(" / Title,")[0] for line in text.split("\n")
    )
    left = ENGLISH_WORDS.findall(text)
    # Spanish writes rep too.
    assert [word for word in left if language != "es" or word.lower() != "rep"] == []
    assert "4,5 mm" in text
    assert "20,5 " in text


@pytest.mark.parametrize("language", OTHERS)
def test_a_page_says_in_both_languages_that_its_words_are_unchecked(language: str) -> None:
    made, failed = build_editions(
        checked_of(BARE), BuildOptions(("html", "text"), language=language), "q"
    )
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
