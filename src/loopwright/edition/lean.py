"""A style sheet without what can say nothing about a page: a reader of CSS takes a good while over
each rule, and as long over one that no element answers to.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from loopwright.record import dataclass

_COMMENT = re.compile(r"/\*.*?\*/", re.S)
_STRING = re.compile(r'"[^"\n]*"')
_BRACE = re.compile(r'"[^"\n]*"|[{}]')
_SCREEN = re.compile(r"@media\s+screen\b")
_TAG = re.compile(r"<([a-zA-Z][\w-]*)")
_CLASS = re.compile(r'\sclass="([^"]*)"')
_ID = re.compile(r'\sid="([^"]*)"')
_ATTRIBUTE = re.compile(r'\s([a-zA-Z][\w:-]*)(?==")|\s(hidden|disabled|checked)\b')
_WANTS = re.compile(
    r"\.(?P<klass>[\w-]+)|#(?P<id>[\w-]+)|\[\s*(?P<attribute>[\w-]+)[^\]]*\]"
    r"|::?[\w-]+|(?P<tag>[a-zA-Z][\w-]*)"
)
_PARENTHESES = re.compile(r"\([^()]*\)")
_IMPLIED = frozenset({"html", "head", "body", "tbody", "colgroup"})
"""What a reader of HTML puts in where a page leaves it out."""
_USUAL_COUNTERS = frozenset({"decimal", "disc", "circle", "square"})
"""Those that are fallen back to, and those of lists that name none."""


@dataclass(frozen=True, slots=True)
class Names:
    """What a selector can ask for: the elements, classes, ids and attributes of a page."""

    tags: frozenset[str]
    classes: frozenset[str]
    ids: frozenset[str]
    attributes: frozenset[str]


def names_in(page: str) -> Names:
    """The names in a page of our own templates: each tag and attribute as they write it."""
    return Names(
        frozenset(name.lower() for name in _TAG.findall(page)) | _IMPLIED,
        frozenset(name for names in _CLASS.findall(page) for name in names.split()),
        frozenset(_ID.findall(page)),
        frozenset(one or other for one, other in _ATTRIBUTE.findall(page)) | {"class", "id"},
    )


def for_page(css: str, names: Names, counters: str = "") -> str:
    """A style without the rules for screens alone and those that no element of a page answers to.

    A counter style stays where it is a usual one or occurs in `counters`. Raises ValueError where
    a brace is not closed.
    """
    return "".join(_kept(_COMMENT.sub("", css), names, counters))


def _kept(css: str, names: Names, counters: str) -> Iterator[str]:
    for prelude, body in _rules(css):
        if body is None:
            yield prelude
        elif prelude.startswith("@media"):
            if not _SCREEN.match(prelude):
                yield f"{prelude}{{{''.join(_kept(body, names, counters))}}}\n"
        elif prelude.startswith("@counter-style"):
            name = prelude.split()[-1]
            if name in _USUAL_COUNTERS or name in counters:
                yield f"{prelude}{{{body}}}\n"
        elif prelude.startswith("@"):
            yield f"{prelude}{{{body}}}\n"
        elif met := [each for each in _selectors(prelude) if _can_be_met(each, names)]:
            yield f"{','.join(met)}{{{body}}}\n"


def _rules(css: str) -> Iterator[tuple[str, str | None]]:
    """Each rule as what stands before its braces and in them; a statement has no braces."""
    done, start, depth, prelude = 0, 0, 0, ""
    for brace in _BRACE.finditer(css):
        if brace[0] == "{":
            if depth == 0:
                *statements, prelude = css[done : brace.start()].split(";")
                yield from ((f"{each.strip()};\n", None) for each in statements)
                prelude, start = prelude.strip(), brace.end()
            depth += 1
        elif brace[0] == "}":
            depth -= 1
            if depth == 0:
                yield prelude, css[start : brace.start()]
                done = brace.end()
    if depth:
        raise ValueError("the style sheet has a brace that is not closed")
    if rest := css[done:].strip():
        yield f"{rest}\n", None


def _selectors(prelude: str) -> list[str]:
    """The selectors of a list, parted at the commas outside of parentheses."""
    found, depth = [""], 0
    for letter in prelude:
        depth += (letter in "([") - (letter in ")]")
        if letter == "," and not depth:
            found.append("")
        else:
            found[-1] += letter
    return [each.strip() for each in found]


def _can_be_met(selector: str, names: Names) -> bool:
    """Whether the page has each thing that a selector asks for; what stands in parentheses, which
    may ask for one thing or another or for none, is taken as met."""
    bare = _STRING.sub("", selector)
    while bare != (bare := _PARENTHESES.sub("", bare)):
        pass
    for want in _WANTS.finditer(bare):
        if want["klass"]:
            met = want["klass"] in names.classes
        elif want["id"]:
            met = want["id"] in names.ids
        elif want["attribute"]:
            met = want["attribute"] in names.attributes
        elif want["tag"]:
            met = want["tag"].lower() in names.tags
        else:
            continue
        if not met:
            return False
    return True
