"""The lines that stop a resize."""

from __future__ import annotations

from loopwright.check.checked import Checked
from loopwright.count.walk import Moved, Said, Worked
from loopwright.fit.asked import Wish
from loopwright.notation.source import Span
from loopwright.problem import ERROR, Problem


class CannotResize(Exception):
    """The pattern cannot be made that size; `problems` say which lines stop it."""

    def __init__(self, problems: list[Problem]) -> None:
        super().__init__(problems[0].message)
        self.problems = problems


class Stops:
    """Gathers what stops a resize, so that one run names every line."""

    def __init__(self) -> None:
        self.problems: list[Problem] = []

    def add(self, span: Span, title: str, message: str, help: str = "") -> None:
        """A line that stops it; each line once."""
        if all(problem.span != span for problem in self.problems):
            self.problems.append(Problem("", ERROR, title, message, span, help=help))

    def raise_any(self) -> None:
        """Raises CannotResize where something was added."""
        if self.problems:
            raise CannotResize(self.problems)


def stop_at_literal_shapes(checked: Checked, wish: Wish) -> None:
    """Raise CannotResize where a piece is shaped by counts that the writer worked out.

    Held stitches, stitches picked up and short rows stand in the source as plain numbers that
    belong together in a way that no form tells; what becomes of them at another width or length
    is the writer's to say. Taking one size out of the list changes none of them.
    """
    changes = (wish.gauges, wish.scale, wish.add, *wish.width, *wish.length)
    if not any(change is not None and change != () for change in changes):
        return
    stops = Stops()
    for walk in checked.walks:
        stitches = [event for event in walk.events if not isinstance(event, Said)]
        for at, event in enumerate(stitches):
            if isinstance(event, Moved) and at > 0:
                what = "stitches are held, taken or picked up"
                span = event.item.span
            elif isinstance(event, Worked) and any(e.turns for e in event.chunk.entries):
                what, span = "a short row turns", event.item.span
            else:
                continue
            name = walk.piece.name.text
            stops.add(
                span,
                f"{name} cannot change its size",
                f"In “{name}” {what} here, at counts that were worked out for this size; nothing "
                "says what they would be at another.",
                "write the numbers of the new size by hand, and let check hold them together; or "
                "add them as a size of their own.",
            )
            break
    stops.raise_any()
