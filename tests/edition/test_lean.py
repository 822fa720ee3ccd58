"""A style is read without what can say nothing about the page; and the page stays as it was."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

from loopwright.build import BuildOptions, document_of
from loopwright.compile import check_source
from loopwright.edition import pdf
from loopwright.edition.engine import load_weasyprint, own_style
from loopwright.edition.html import render_html
from loopwright.edition.large import Large, render_large_html
from loopwright.edition.lean import Names, for_page, names_in
from loopwright.edition.pictures import with_pictures
from loopwright.edition.words import make_document
from loopwright.notation.source import Source

EXAMPLES = Path(__file__).parents[2] / "examples"
PAGE = '<html lang="en"><p class="a b" id="one" title="x">text <i>two</i></p></html>'


class Everything(frozenset[str]):
    """Has every name that can be asked for."""

    def __contains__(self, _: object) -> bool:
        return True


ALL = Names(*[Everything()] * 4)


@pytest.mark.parametrize(
    ("rule", "kept"),
    [
        ("p { margin: 0 }", "p"),
        ("P { margin: 0 }", "P"),
        ("q { margin: 0 }", ""),
        ("q, p, .c { margin: 0 }", "p"),
        (".a.b > i { margin: 0 }", ".a.b > i"),
        (".a.c { margin: 0 }", ""),
        (".a .c { margin: 0 }", ""),
        ("#one::before { margin: 0 }", "#one::before"),
        ("#two { margin: 0 }", ""),
        ("p:not(.c) { margin: 0 }", "p:not(.c)"),
        ("p:is(.c, :not(.d, .e)) i { margin: 0 }", "p:is(.c, :not(.d, .e)) i"),
        (":is(q, p) { margin: 0 }", ":is(q, p)"),
        ("[title] { margin: 0 }", "[title]"),
        ('p[title="q, .c"] { margin: 0 }', 'p[title="q, .c"]'),
        ("[hidden] { margin: 0 }", ""),
        ("* { margin: 0 }", "*"),
        (":root { margin: 0 }", ":root"),
        ("tbody { margin: 0 }", "tbody"),
    ],
)
def test_a_rule_stays_where_an_element_can_answer_to_it(rule: str, kept: str) -> None:
    made = for_page(rule, names_in(PAGE))
    assert made == (f"{kept}{{ margin: 0 }}\n" if kept else "")
    assert for_page(rule, ALL).endswith("{ margin: 0 }\n")


def test_rules_within_rules_and_rules_of_pages() -> None:
    css = (
        "@charset 'utf-8';\n/* p { a: b } */ @media print { q { a: b } p { c: d } }\n"
        "@media screen { p { e: f } }\n@media screen and (min-width: 1rem) {\n  i { e: f }\n}\n"
        '@page { margin: 0; @top-left { content: "}" } }\n'
        "@counter-style decimal { a: b }\n@counter-style roman { c: d }\n"
        "@counter-style odd { e: f }\n@font-face { src: x }"
    )
    assert for_page(css, names_in(PAGE), "list-style: roman") == (
        "@charset 'utf-8';\n@media print{p{ c: d }\n}\n"
        '@page{ margin: 0; @top-left { content: "}" } }\n'
        "@counter-style decimal{ a: b }\n@counter-style roman{ c: d }\n@font-face{ src: x }\n"
    )
    with pytest.raises(ValueError, match="brace"):
        for_page("p { a: b", names_in(PAGE))


def pages() -> list[str]:
    made = []
    for name in ("eider-mitten", "gull-hat", "skerry-throw"):
        source = EXAMPLES / f"{name}.loop"
        checked = check_source(Source.of(source.name, source.read_text("utf-8")))
        words = document_of(checked, BuildOptions())
        made.append(render_html(with_pictures(words, checked.pattern, checked.walks)))
    large = make_document(
        checked.pattern, checked.walks, checked.pattern.sizes[0], None, "changes", Large()
    )
    return [*made, render_large_html([large])]


def test_a_page_set_with_its_own_rules_alone_is_the_page_set_with_all(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """All of the page's style and all of WeasyPrint's own, against the rules that are left."""
    load_weasyprint()
    every = pages()
    cloths = [[part.split('"')[0] for part in page.split('src="')[1:]] for page in every]
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "1")
    lean = [pdf.pdf_of(page, "a4", cloth) for page, cloth in zip(every, cloths, strict=True)]
    short = [len(for_page(own_style(), names_in(page), page)) for page in every]
    assert all(0 < length < len(own_style()) / 2 for length in short), "something is left out"
    monkeypatch.setattr(pdf, "names_in", lambda _: ALL)
    monkeypatch.setattr(pdf, "own_style", lambda: "")
    whole = [pdf.pdf_of(page, "a4", cloth) for page, cloth in zip(every, cloths, strict=True)]
    assert lean == whole


PRINT = (
    "import sys\n"
    "page = '<ol type=I><li>a<li>b</ol><table border=1><td>c</table><input value=d>'\n"
    "made = weasyprint.HTML(string=page).write_pdf(presentational_hints=True, pdf_forms=True)\n"
    "sys.stdout.buffer.write(made)\n"
)


@pytest.mark.parametrize(
    "start",
    [
        "from loopwright.edition.engine import load_weasyprint\nweasyprint = load_weasyprint()\n"
        "assert 'matcher' not in vars(weasyprint.html.UA_STYLESHEET)\n"
        "assert not len(weasyprint.html.UA_COUNTER_STYLE)\n",
        # Built otherwise than it was: then nothing is put off.
        "from loopwright.edition import engine\nengine._SHEETS['NEW_STYLESHEET'] = 'NEW'\n"
        "weasyprint = engine.load_weasyprint()\n"
        "assert 'matcher' in vars(weasyprint.html.UA_STYLESHEET)\n",
    ],
    ids=["put off", "at once"],
)
def test_weasyprint_is_whole_for_whoever_else_asks_it(start: str) -> None:
    """The bytes of a page with lists, tables, hints and forms: as by WeasyPrint alone."""
    mine, plain = (
        subprocess.run(
            [sys.executable, "-c", before + PRINT],
            env={"SOURCE_DATE_EPOCH": "1"},
            capture_output=True,
            check=True,
            timeout=60,
        ).stdout
        for before in (start, "import weasyprint\n")
    )
    assert plain.startswith(b"%PDF") and mine == plain
