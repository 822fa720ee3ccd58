"""A stranger's words stay words in every edition and in every language."""

from __future__ import annotations

from html.parser import HTMLParser
from pathlib import Path

import pytest

from loopwright.build import BuildOptions, build_editions
from loopwright.compile import check_source
from loopwright.edition.language import LANGUAGES
from loopwright.notation.source import Source

THROW = Path(__file__).parents[2].joinpath("examples/skerry-throw.loop").read_text("utf-8")
EVIL = (
    "{{ 7*7 }} {% include 'x' %} </script></style></title><script>x()</script><img src=x "
    "onerror=x()> ]]> --> ' & url(http://x.invalid/) file:///etc/passwd javascript:x()"
)
KINDS = ("html", "text", "spoken", "lesson")


def source() -> str:
    text = THROW
    for old in ("Skerry Throw", "Marit Solheim", "Worsted wool", "Kelp", "Foam", "Finishing"):
        assert f'"{old}"' in text
        text = text.replace(f'"{old}"', f'"{EVIL}"')
    for old in ("Carry the", "Weave in", "A woven-look", "Blunt"):
        assert f'"{old}' in text
        text = text.replace(f'"{old}', f'"{EVIL} {old}')
    return text


class Elements(HTMLParser):
    """The elements of a page with their attributes' names, and its text."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.found: set[str] = set()
        self.attributes: set[str] = set()
        self.text: list[str] = []
        self.feed(page)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.found.add(tag)
        self.attributes.update(name for name, _ in attrs)

    def handle_data(self, data: str) -> None:
        self.text.append(data)


def made(text: str, options: BuildOptions) -> dict[str, str]:
    checked = check_source(Source.of("evil.loop", text))
    assert not checked.has_errors, checked.problems
    files, failed = build_editions(checked, options, "evil")
    assert not failed
    return {name: data.decode("utf-8") for name, data in files}


@pytest.mark.parametrize("large", [False, True])
@pytest.mark.parametrize("language", LANGUAGES)
def test_text_stays_text(language: str, large: bool) -> None:
    kinds = KINDS if language == "en" else KINDS[:2]
    files = made(source(), BuildOptions(kinds, language=language, large=large))
    plain = made(THROW, BuildOptions(kinds, language=language, large=large))
    assert len(files) == len(kinds)
    for name, text in files.items():
        if not name.endswith(".html"):
            assert "{{ 7*7 }} {% include 'x' %} </script>" in " ".join(text.split())
            continue
        page, clean = Elements(text), Elements(plain[name])
        # The same elements and attributes as of a page without such words: it has added none.
        assert page.found - {"wbr"} == clean.found - {"wbr"}  # long words may be broken
        assert page.attributes == clean.attributes
        assert "onerror" not in page.attributes
        assert "{{ 7*7 }} {% include 'x' %} </script>" in " ".join(page.text)
