"""Stitches that wait: on holders, or live on a finished piece, until another line takes them."""

from __future__ import annotations

from loopwright.model.pattern import Piece
from loopwright.notation.source import Span
from loopwright.record import dataclass, field


@dataclass(frozen=True, slots=True)
class Waiting:
    """`count` stitches that a piece has put aside at `span`, after its row `row`.

    `live` where the piece ends with them (``leave live``), so that nothing has to take them.
    """

    name: str
    count: int
    piece: Piece
    row: int
    span: Span
    live: bool


@dataclass(slots=True)
class Holders:
    """What waits while the pieces of one size are walked, by name; and what was taken already."""

    waiting: dict[str, Waiting] = field(default_factory=dict)
    taken: dict[str, Waiting] = field(default_factory=dict)

    def copy(self) -> Holders:
        return Holders(dict(self.waiting), dict(self.taken))

    def put(self, stitches: Waiting) -> Waiting | None:
        """Put stitches aside; gives what hangs under that name already (then nothing changes)."""
        there = self.waiting.get(stitches.name)
        if there is None:
            self.waiting[stitches.name] = stitches
        return there

    def take(self, name: str) -> Waiting | None:
        """Take what waits under a name off its holder; None where nothing does."""
        found = self.waiting.pop(name, None)
        if found is not None:
            self.taken[name] = found
        return found
