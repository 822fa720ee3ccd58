"""The pattern's own lines: its texts, sizes, measures, gauges, needles, level and care."""

from __future__ import annotations

from typing import Any

from loopwright.facts.amounts import join_way, join_ways
from loopwright.facts.care import care_named, care_words
from loopwright.model.notebook import Notebook
from loopwright.notation import tree
from loopwright.notation.bounds import MAX_SIZES
from loopwright.notation.near import nearest
from loopwright.notation.source import Span
from loopwright.record import dataclass, field

_LEVELS = ("basic", "easy", "intermediate", "complex")


@dataclass(slots=True)
class Header:
    """What the pattern's lines say. `texts` are those of each kind of text line, in order;
    `once` what stands once in a pattern, by the first words of its line."""

    texts: dict[str, list[tree.Text]] = field(default_factory=dict)
    once: dict[str, Any] = field(default_factory=dict)
    gauges: list[tree.GaugeLine] = field(default_factory=list)
    swatches: list[tree.SwatchLine] = field(default_factory=list)
    needles: list[tree.NeedleLine] = field(default_factory=list)

    @property
    def bounds(self) -> tuple[tree.BoundLine, ...]:
        """What the file says is borne."""
        return tuple(v for kind, v in self.once.items() if kind.startswith("bound "))

    def all(self, kind: str) -> tuple[tree.Text, ...]:
        """The texts of a kind."""
        return tuple(self.texts.get(kind, ()))

    def first(self, kind: str) -> tree.Text | None:
        """The first text of a kind."""
        texts = self.texts.get(kind)
        return texts[0] if texts else None


def header_of(lines: list[tree.Placed], notes: Notebook) -> Header:
    """What the lines of the pattern block say; what stands twice, or is not known, is noted."""
    header = Header()
    for placed in lines:
        node = placed.statement
        if isinstance(node, tree.TextLine):
            header.texts.setdefault(node.kind, []).append(node.text)
        elif isinstance(node, tree.MeasureLine):
            _once(header, node.kind, node.quantity, node.span, notes)
        elif isinstance(node, tree.LevelLine):
            _check_level(node, notes)
            _once(header, "level", node.level, node.span, notes)
        elif isinstance(node, tree.CareLine):
            _check_care(node, notes)
            _once(header, "care", node, node.span, notes)
        elif isinstance(node, tree.SizesLine):
            _check_sizes(node, notes)
            _once(header, "sizes", node.names, node.span, notes)
        elif isinstance(node, tree.GaugeLine):
            header.gauges.append(node)
        elif isinstance(node, tree.SwatchLine):
            header.swatches.append(node)
        elif isinstance(node, tree.NeedleLine):
            header.needles.append(node)
        elif isinstance(node, tree.BoundLine):
            _once(header, f"bound {node.kind.key}", node, node.span, notes)
        elif isinstance(node, tree.JoinByLine):
            _check_join(node, notes)
            _once(header, "join by", node, node.span, notes)
    return header


def _once(header: Header, kind: str, value: Any, span: Span, notes: Notebook) -> None:
    if kind in header.once:
        notes.error(
            "name-twice",
            f"“{kind}” is given twice",
            f"A pattern has one “{kind}” line; the first one counts.",
            span,
            "delete one of the two.",
        )
    else:
        header.once[kind] = value


def _check_join(node: tree.JoinByLine, notes: Notebook) -> None:
    if join_way(node.method.text) is None:
        known = [way.name for way in join_ways()]
        notes.error(
            "unknown-name",
            f"there is no join “{node.method.text}”",
            f"Balls are joined by {', '.join(known[:-1])} or {known[-1]}.",
            node.method.span,
            "choose one of them; “tail 18 in” behind it changes how long the ends are.",
        )


def _check_care(node: tree.CareLine, notes: Notebook) -> None:
    said: dict[str, tree.Text] = {}
    for part in node.parts:
        found = care_named(part.text)
        if found is None:
            _unknown_care(part, notes)
        elif found.of in said:
            notes.error(
                "name-twice",
                f"the care says two things of {found.of}",
                f"“{said[found.of].text}” and “{part.text}” cannot both be followed.",
                part.span,
                "keep the gentler of the two.",
            )
        else:
            said[found.of] = part


def _unknown_care(part: tree.Text, notes: Notebook) -> None:
    near = nearest(part.text, care_words())
    mine = set(part.text.casefold().split())
    akin = ", ".join(p for p in care_words() if mine & set(p.split()))
    notes.error(
        "unknown-name",
        f"there is no care “{part.text}”",
        f"The words for it are: {akin}."
        if akin
        else "Each part of the line is a phrase such as “hand wash”, “no bleach”, "
        "“dry flat”, “iron low” or “no dry cleaning”.",
        part.span,
        f"did you mean “{near}”?" if near else "choose among these.",
    )


def _check_level(node: tree.LevelLine, notes: Notebook) -> None:
    if node.level.key not in _LEVELS:
        notes.error(
            "unknown-name",
            f"there is no level “{node.level.text}”",
            "The trade has four levels: basic, easy, intermediate and complex.",
            node.level.span,
            "choose one of the four.",
        )


def _check_sizes(node: tree.SizesLine, notes: Notebook) -> None:
    notes.twice("size", node.names)
    if len(node.names) > MAX_SIZES:
        notes.error(
            "number-too-big",
            "the pattern has too many sizes",
            f"{len(node.names)} sizes are named; a pattern may have {MAX_SIZES}.",
            node.span,
            "split the sizes over two files.",
        )
