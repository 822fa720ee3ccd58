"""The order of work, row by row: which printed line each row of the piece stands in.

Made while a piece is written for one size; with several sizes there is no one order.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from loopwright.count.walk import Worked
from loopwright.edition.document import FollowRow, FollowStep
from loopwright.model.pattern import Motif, Row
from loopwright.record import dataclass, field, replace

Place = tuple[int, int]
"""A line: the place of its section among the sections, its own place in the section."""


@dataclass(slots=True)
class Follower:
    """Collects the steps of one piece. Rows are known by identity: each is one line of a block.

    `round` is whether what comes next is worked in the round.
    """

    steps: list[FollowStep] = field(default_factory=list)
    round: bool = False
    _printed: dict[int, FollowRow] = field(default_factory=dict)
    _kept: list[Row] = field(default_factory=list)

    def printed(self, row: Row, place: Place, motif: Motif | None = None, index: int = 0) -> None:
        """A row now stands in the line at `place`."""
        name = motif.name.key if motif is not None else ""
        self._printed[id(row)] = FollowRow(*place, name, index)
        self._kept.append(row)

    def between(self, place: Place) -> None:
        """A step that works no row."""
        self.steps.append(FollowStep((FollowRow(*place),), counted=False))

    def row(self, row: Row, times: int) -> None:
        """One row, so many times, ticked off at its own line."""
        found = self._rows((row,))
        if found and times:
            self.steps.append(
                FollowStep(found, times, (found[0].section, found[0].line), round=self.round)
            )

    def first(self, rows: Sequence[Row]) -> None:
        """Rows of a motif as they are written out."""
        found = self._rows(rows)
        if found:
            self.steps.append(FollowStep(found, round=self.round))

    def again(self, rows: Sequence[Row], times: int, tick: Place, before: int) -> None:
        """Rows that stand further up, ticked off at the line that sends the maker there."""
        found = self._rows(rows)
        if found and times:
            self.steps.append(FollowStep(found, times, tick, before=before, round=self.round))

    def spread(self, events: Iterable[Worked], tick: Place) -> None:
        """Rows of which some change the count, in the order in which they are worked."""
        for event in events:
            self.round = event.round
            rows = [entry.row for entry in event.chunk.entries]
            self.again(rows, event.chunk.reps, tick, 0)

    def _rows(self, rows: Sequence[Row]) -> tuple[FollowRow, ...]:
        return tuple(self._printed[id(row)] for row in rows if id(row) in self._printed)


def moved(steps: Sequence[FollowStep], sections: int, piece: int) -> list[FollowStep]:
    """The steps of a piece as those of the pattern's piece at `piece`, behind so many sections."""
    return [
        replace(
            step,
            rows=tuple(replace(row, section=row.section + sections) for row in step.rows),
            tick=(step.tick[0] + sections, step.tick[1]) if step.tick is not None else None,
            piece=piece,
        )
        for step in steps
    ]
