"""The lines that stop a resize."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from loopwright.check.checked import Checked
from loopwright.check.context import listed
from loopwright.count.walk import Bound, Cast, Moved, Said, Walk, Worked
from loopwright.fit.asked import Wish
from loopwright.fit.lengths import parts_of
from loopwright.model.body import Fill, Group, Step
from loopwright.model.pattern import CastOn, Hold, PickUp, Piece
from loopwright.notation.source import Source, Span
from loopwright.notation.tree import Special
from loopwright.problem import ERROR, Problem

_MOST = 6
"""Lines named in one sentence."""


class CannotResize(Exception):
    """The pattern cannot be made that size; `problems` say which lines of `source` stop it.

    The source is the one asked about, or what a new size or gauge has made of it on the way.
    """

    def __init__(self, problems: list[Problem], source: Source) -> None:
        super().__init__(problems[0].message)
        self.problems = problems
        self.source = source


class Stops:
    """Gathers what stops a resize, so that one run names every line."""

    def __init__(self) -> None:
        self.problems: list[Problem] = []

    def add(self, span: Span, title: str, message: str, help: str = "") -> None:
        """A line that stops it; each line once."""
        if all(problem.span != span for problem in self.problems):
            self.problems.append(Problem("", ERROR, title, message, span, help=help))

    def raise_any(self, source: Source) -> None:
        """Raises CannotResize where something was added; its places are in `source`."""
        if self.problems:
            raise CannotResize(self.problems, source)


def stop_at_literal_shapes(checked: Checked, wish: Wish) -> None:
    """Raise CannotResize where a piece is shaped by counts that the writer worked out.

    Stitches held or picked up by number and short rows stand in the source as plain numbers that
    belong together in a way that no form tells; what becomes of them at another width or length
    is the writer's to say. ``hold all`` and what is taken again have no number: they follow the
    width by themselves. Taking one size out of the list changes none of them.
    """
    changes = (wish.gauges, wish.scale, wish.add, *wish.width, *wish.length)
    if not any(change is not None and change != () for change in changes):
        return
    stops = Stops()
    longer = wish.gauges == () and wish.scale is None and wish.add is None
    longer = longer and all(width is None for width in wish.width)
    for piece in checked.pattern.pieces:
        walks = [walk for walk in checked.walks if walk.piece is piece]
        found = literal_lines(checked, walks)
        if not found:
            continue
        (span, what), *more = found
        lines = [checked.source.line_column(other.start)[0] for other, _ in more]
        name = piece.name.text
        also = f", and of line{'s' * (len(lines) > 1)} {_lines(lines)}," if lines else ""
        stops.add(
            span,
            f"{name} cannot change its size",
            f"In “{name}” {what} here. The numbers of this line{also} were worked out for this "
            "size, and nothing says what they would be at another.",
            _longer_by_hand(checked, piece, walks)
            if longer
            else "by hand: find the cast-on with “loopwright fit”, write the new numbers into "
            f"{'these lines' if lines else 'the line'} (for several sizes as in k18/20/22), and "
            "let check hold them together.",
        )
    stops.raise_any(checked.source)


def literal_lines(checked: Checked, walks: Iterable[Walk]) -> list[tuple[Span, str]]:
    """The lines of a piece whose numbers no width can say, in order, each with what it does."""
    found: dict[Span, str] = {}
    for walk in walks:
        stitches = [event for event in walk.events if not isinstance(event, Said)]
        for at, event in enumerate(stitches):
            what = ""
            if isinstance(event, Moved):
                item = event.item
                if isinstance(item, Hold) and item.count is not None:
                    what = "stitches are held"
                elif isinstance(item, PickUp) and (at > 0 or item.edge is not None):
                    what = "stitches are picked up"
                elif isinstance(item, CastOn):
                    what = "more stitches are cast on"
            elif isinstance(event, Worked):
                what = _in_rows(event)
            if what:
                found.setdefault(_place(event), what)
    return sorted(found.items())


def _in_rows(event: Worked) -> str:
    """What the rows of an event do that is literal; empty where they do nothing of the kind."""
    if any(entry.turns for entry in event.chunk.entries):
        return "a short row turns"
    kinds = {kind for entry in event.chunk.entries for kind in _specials(entry.row.body.steps)}
    if "hold" in kinds:
        return "stitches are held"
    return "stitches are picked up" if "pick" in kinds else ""


def _specials(steps: Iterable[Step]) -> Iterator[str]:
    for step in steps:
        if isinstance(step, Special):
            yield step.kind
        elif isinstance(step, Group | Fill):
            yield from _specials(step.steps)


def _place(event: Worked | Moved | Cast | Bound) -> Span:
    return event.item.span


def _longer_by_hand(checked: Checked, piece: Piece, walks: list[Walk]) -> str:
    """Which lines keep their stitches, so that a maker may work them longer by hand."""
    lines = set()
    for walk in walks:
        for part in parts_of(checked, walk):
            events = [e for e in walk.events if isinstance(e, Worked) and e.item is part.item]
            entries = [entry for event in events for entry in event.chunk.entries]
            if all(entry.start == entry.end and not entry.turns for entry in entries):
                lines.add(checked.source.line_column(part.span.start)[0])
    if not lines:
        return "write the rows of the new length by hand, and let check hold them together."
    which = f"line{'s' * (len(lines) > 1)} {_lines(sorted(lines))}"
    return (
        f"by hand: {which} of {piece.name.text} keep{'s' * (len(lines) == 1)} the stitches there "
        "are, so more or fewer rows there change no count; stitches picked up along the side of "
        "such rows then change too."
    )


def _lines(numbers: list[int]) -> str:
    """``44, 46 and 51``; the first few of many."""
    shown = [str(number) for number in numbers[:_MOST]]
    if len(numbers) > _MOST:
        shown.append(f"{len(numbers) - _MOST} more")
    return listed(shown)
