"""Row lines: their stitch words looked up, and the rows of the pattern made of them."""

from __future__ import annotations

from loopwright.model.body import Body, Evenly, Fill, Group, Step, Stitches
from loopwright.model.notebook import Notebook
from loopwright.model.pattern import Row, UnknownWord
from loopwright.model.stitch import Dictionary, Stitch, is_purled
from loopwright.notation import tree
from loopwright.notation.source import Span

_UNKNOWN = Stitch("?", 1, 1, "unknown", "?", "unknown", 1.0, "")

NOT_A_ROW = Body((), None, Span(0, 0), True)
"""The body of a row that is to be worked as a row there is not."""


class Bodies:
    """Looks bodies up, each once: equal lines share one, and one word."""

    def __init__(self, dictionary: Dictionary, notes: Notebook) -> None:
        self._dictionary = dictionary
        self._notes = notes
        self._known: dict[int, Body] = {}  # by the id of the body as parsed
        self._stitches: dict[int, Stitches] = {}  # by the word's id: equal lines share words
        self._unknown_in: dict[int, tuple[tuple[str, Span], ...]] = {}

    def of(self, body: tree.Body, base: int) -> Body:
        """The looked-up body of a line that begins at `base`; its unknown words are noted there."""
        found = self._known.get(id(body))
        if found is None:
            found = self._known[id(body)] = self._look_up(body)
        for text, span in self._unknown_in.get(id(body), ()):
            self._notes.unknown[UnknownWord(text, span.shifted(base))] = None
        return found

    def _look_up(self, body: tree.Body) -> Body:
        if isinstance(body, tree.Whole):
            letter = "k" if body.word == "knit" else "p"
            found = self._dictionary.find(letter)
            assert found is not None
            one = Stitches(found.stitch, (1,), (), body.span)
            return Body((Fill((one,), body.span),), letter, body.span, False)
        if isinstance(body, tree.AsRow):  # resolved by the block, which knows its rows
            return NOT_A_ROW
        unknown: list[tuple[str, Span]] = []
        steps = tuple(self._step(step, unknown) for step in body.steps)
        if unknown:
            self._unknown_in[id(body)] = tuple(unknown)
        return Body(steps, None, body.span, bool(unknown))

    def _step(self, node: tree.Node, unknown: list[tuple[str, Span]]) -> Step:
        if isinstance(node, tree.Word):
            return self._word(node, unknown)
        if isinstance(node, tree.Special):
            return node
        if isinstance(node, tree.EvenlyOf):
            return self._evenly(node, unknown)
        steps = tuple(self._step(step, unknown) for step in node.steps)
        if isinstance(node, tree.FillOf):
            return Fill(steps, node.span)
        return Group(steps, node.times, node.into, node.span)

    def _word(self, node: tree.Word, unknown: list[tuple[str, Span]]) -> Stitches:
        known = self._stitches.get(id(node))
        if known is not None:
            return known
        found = self._dictionary.find(node.text)
        if found is None:
            unknown.append((node.text, Span(node.span.start, node.span.start + len(node.text))))
            return Stitches(_UNKNOWN, (1,), node.modifiers, node.span)
        made = Stitches(found.stitch, found.count, node.modifiers, node.span)
        self._stitches[id(node)] = made
        return made

    def _evenly(self, node: tree.EvenlyOf, unknown: list[tuple[str, Span]]) -> Evenly:
        one = self._word(node.word, unknown)
        # The stitches between are purled where the change itself is a purl, else knit.
        found = self._dictionary.find("p" if is_purled(one.stitch) else "k")
        assert found is not None
        plain = Stitches(found.stitch, (1,), (), node.word.span)
        if one.stitch.kind == "marker":
            self._notes.error(
                "line-unclear",
                "markers cannot be spread",
                "What is spread is a stitch that makes more or fewer: an increase or a decrease.",
                node.span,
                "write the stitches between the markers out: (k11 pm) x7 k11.",
            )
        sizes = range(max(len(one.count), len(node.count.values)))
        times = tuple(node.count.at(size) * one.number(size) for size in sizes)
        change = Stitches(one.stitch, times, one.modifiers, node.span)
        steps = (Fill((plain,), node.span), change)
        return Evenly(steps, None, None, node.span, plain, change)


def row_of(
    number: int,
    placed: tree.Placed,
    node: tree.RowLine,
    body: Body,
    body_base: int,
    as_row: int | None,
) -> Row:
    """The row of a line: `node` stands at `placed`, its body on the line that begins at
    `body_base` (another one where it is worked `as_row`)."""
    return Row(
        number,
        node.round,
        node.strand,
        body,
        node.claim,
        placed.base,
        body_base,
        placed.line,
        as_row,
        node.every,
        node.span,
    )


def refer_to_strand(node: tree.RowLine, base: int, notes: Notebook) -> None:
    """Note the strand that a row line names, at its place in the file."""
    if node.strand:
        notes.refer("strand", tree.Name(node.strand.text, node.strand.span.shifted(base)))


def no_such_row(body: tree.AsRow, base: int, name: str, notes: Notebook) -> None:
    """Note that a block, by its `name`, has no row to be worked as."""
    notes.error(
        "unknown-name",
        f"there is no row {body.number} to follow",
        f"“{name}” gives no row {body.number} with stitches of its own that this row could "
        "be worked as.",
        body.span.shifted(base),
        "name a row of the same block, or write the stitches out.",
    )
