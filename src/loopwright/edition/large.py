"""The large-print edition: one size at a time, one column, repeats given as numbers of times.

Its features are those that low-vision knitters ask for (published checklists; see
`FEATURES_PAGE`, which the edition prints about itself). What is worked is the same document, said
in a voice without asterisks and without rows that stand for others.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache
from typing import TYPE_CHECKING

from loopwright.edition.render import clean, environment, headings, template_folder
from loopwright.edition.step_words import Unit
from loopwright.edition.voice import Voice
from loopwright.record import dataclass

if TYPE_CHECKING:
    from markupsafe import Markup

    from loopwright.edition.document import Document, Section

FEATURES_PAGE = (
    "About these pages: letters without serifs of 22 to 24 points, black on white, in one column, "
    "aligned at the left, bold and never italic; one size at a time; repeats given as a number of "
    "times; no chart and no colour is needed; nothing at the foot but the page number. They have "
    "not been tried by readers with low vision yet."
)
FEATURES_TEXT = (
    "About this text: one column, one instruction a line, no table; one size at a time; repeats "
    "given as a number of times; no chart is needed. It has not been tried by readers with low "
    "vision yet."
)


class Large(Voice):
    """The printed words without an asterisk, and with every row written where it is worked."""

    written_out = True

    def fill(self, unit: Unit) -> str:
        if unit.only is not None:
            return super().fill(unit)
        steps = f"({', '.join(unit.units)})"
        if unit.often is not None:
            return self.t("work {steps} {times}", steps=steps, times=self.times((unit.often,)))
        return self.t("work {steps} again and again to {end}", steps=steps, end=self.end(unit))


@dataclass(frozen=True, slots=True)
class Block:
    """A piece of the page: `kind` is ``heading`` (of a `level` from 1), ``text`` or ``row``.

    A row has a `label` before its `text`; `anchor` names a heading that something points to.
    """

    kind: str
    text: str
    label: str = ""
    level: int = 0
    anchor: str = ""


def blocks_of(documents: Sequence[Document], features: str) -> tuple[Block, ...]:
    """The edition from its first line to its last: what all sizes share, then each size."""
    first = documents[0]
    heading = headings(first.catalogue)
    several = len(documents) > 1
    out = [Block("heading", first.title, level=1)]
    if first.designer:
        out.append(Block("text", f"{heading['by']} {first.designer}"))
    out += [Block("text", first.summary)] if first.summary else []
    if first.level:
        out.append(Block("text", f"{heading['level']}{heading['colon']} {first.level}"))
    if several:
        out.append(Block("heading", heading["contents"], level=2))
        out += [
            Block("link", _size(doc), anchor=f"size-{number}")
            for number, doc in enumerate(documents, 1)
        ]
    # Behind the contents, so that those stand on the first page.
    out += [Block("text", notice) for notice in first.notices]
    out.append(Block("text", first.catalogue.text(features)))
    for number, doc in enumerate(documents, 1):
        if several:
            out.append(Block("heading", _size(doc), level=2, anchor=f"size-{number}"))
        elif doc.sizes:
            out.append(Block("text", _size(doc)))
        out += _of_a_size(doc, 3 if several else 2, heading)
    return tuple(out)


def _size(doc: Document) -> str:
    colon = doc.catalogue.text(":")
    return f"{doc.catalogue.text('Size')}{colon} {', '.join(doc.sizes)}"


def _of_a_size(doc: Document, level: int, heading: dict[str, str]) -> list[Block]:
    colon = heading["colon"]
    out: list[Block] = []

    def part(name: str, lines: Sequence[str]) -> None:
        if lines:
            out.append(Block("heading", heading[name], level=level))
            out.extend(Block("text", line) for line in lines)

    if doc.finished is not None:
        head = doc.finished.head[1:]
        many = len(doc.finished.rows) > 1
        part(
            "finished",
            [
                f"{row[0] + ', ' if many else ''}{name}{colon} {cell}"
                for row in doc.finished.rows
                for name, cell in zip(head, row[1:], strict=True)
            ],
        )
    part("gauge", doc.gauge)
    part("needles", doc.needles)
    shades = []
    for shade in doc.shades:
        strand = f"{heading['strand']} {shade.strand}" if shade.strand else ""
        needed = f"{heading['needed']}{colon} {shade.needed}" if shade.needed else ""
        facts = "; ".join(
            fact for fact in (shade.yarn, strand, shade.amount, needed, shade.weighs) if fact
        )
        shades.append(f"{shade.name}{colon} {facts}" if facts else shade.name)
    part("yarn", (*doc.yarns, *shades))
    part("substitution", doc.substitution)
    part("notions", doc.notions)
    part("cautions", doc.cautions)
    part("notes", doc.notes)
    part("care", doc.care)
    part("skills", doc.skills)
    if doc.abbreviations:
        out.append(Block("heading", heading["abbreviations"], level=level))
        out += [
            Block(
                "row",
                f"{a.meaning} ({a.stitches})" if a.stitches else a.meaning,
                f"{a.short}{colon}",
            )
            for a in doc.abbreviations
        ]
    for section in doc.sections:
        out += _section(section, level)
    return out


def _section(section: Section, level: int) -> list[Block]:
    out = []
    if section.heading:
        out.append(Block("heading", section.heading, level=level + (section.level > 2)))
    for line in section.lines:
        text = " ".join(part for part in (line.text, line.count) if part)
        out.append(Block("row" if line.label else "text", text, line.label))
    return out


@cache
def _style() -> Markup:
    from markupsafe import Markup

    return Markup((template_folder() / "large.css").read_text(encoding="utf-8"))


def render_large_html(documents: Sequence[Document]) -> str:
    """The large-print page; the PDF is the same page set on paper. One document a size."""
    documents = [clean(doc) for doc in documents]
    template = environment().get_template("large.html")
    blocks = blocks_of(documents, FEATURES_PAGE)
    return template.render(doc=documents[0], blocks=blocks, css=_style())


def render_large_text(documents: Sequence[Document]) -> str:
    """The same in plain text: each instruction a line of its own, an empty line between them."""
    out = []
    for block in blocks_of([clean(doc) for doc in documents], FEATURES_TEXT):
        text = f"{block.label} {block.text}" if block.label else block.text
        out.append(text.upper() if block.kind == "heading" and block.level < 3 else text)
    return "\n\n".join(line for line in out if line) + "\n"
