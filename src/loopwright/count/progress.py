"""A piece as far as it is worked: what hangs, which row comes next, and what was met on the way."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Protocol

from loopwright.count.live import Live, total
from loopwright.count.measure import height_of_row
from loopwright.count.repeat import Repeater
from loopwright.count.tape import Tape, Tapes
from loopwright.count.waiting import Holders, Waiting
from loopwright.count.walk import Event, Finding, Site, Walk
from loopwright.model.pattern import Motif, Pattern, Piece, Row, Work
from loopwright.notation.source import Span
from loopwright.record import dataclass, field, replace


class Estimate(Protocol):
    """What the yarn room knows, for work that ends when a strand is spent."""

    def repeats(
        self, piece: Piece, size: int, item: Work, trial: Callable[[int], Walk]
    ) -> int | None:
        """The most repeats of `item` that its strand lasts for, to the end of the piece.

        `trial` walks the piece with that many repeats. None where it cannot be said.
        """

    def note(self, walk: Walk) -> None:
        """A piece that is walked to its end."""


Anew = Callable[[int | None, Mapping[Work, int] | None], Walk]
"""Walks the piece once more from its start: with another cast-on count, and with so many repeats
of the lines that end by yarn (see `walker.walk_piece`)."""


@dataclass(slots=True)
class Progress:
    """One piece in one size, between two of its lines.

    `state` is what hangs (None: nothing), `row` the number of the next row, `rs` whether it is a
    right-side row, `height` what is worked so far in millimetres (None: no gauge), `strand` the
    one that was worked with last. `instead` stands in for the written cast-on count.
    """

    pattern: Pattern
    piece: Piece
    size: int
    tapes: Tapes
    repeater: Repeater
    holders: Holders
    estimate: Estimate | None
    instead: int | None
    forced: Mapping[Work, int] | None
    anew: Anew
    events: list[Event] = field(default_factory=list)
    findings: list[Finding] = field(default_factory=list)
    sites: list[Site] = field(default_factory=list)
    state: Live | None = None
    first_cast: int | None = None
    cast_span: Span | None = None
    moved: bool = False  # the count is no longer what was cast on
    unsure: bool = False  # markers are lost: what follows would only repeat the first error
    widest: int = 0
    brought: int = 0  # stitches taken or picked up
    put_aside: int = 0  # stitches held
    row: int = 1
    rs: bool = True
    round: bool = False
    height: float | None = 0.0
    strand: str | None = None
    spent: dict[Work, int] = field(default_factory=dict)
    reached: list[tuple[int, float]] = field(default_factory=list)

    @property
    def live(self) -> Live:
        """What hangs, for a line that is only worked where something does."""
        assert self.state is not None
        return self.state

    @property
    def count(self) -> int:
        """How many stitches hang."""
        return total(self.live).fixed

    def find(self, rule: str, span: Span, detail: str = "", **more: object) -> None:
        """Record a finding; `more` are its further fields."""
        found = Finding(rule, self.size, span, self.piece, detail)
        self.findings.append(replace(found, **more) if more else found)  # type: ignore[arg-type]

    def tape(self, row: Row) -> Tape:
        """The tape of a row in this size."""
        return self.tapes.of(row.body, self.size)

    def advance(self, motif: Motif | None, rows: int) -> None:
        """So many rows are done, of a motif or of none."""
        self.row += rows
        if rows % 2 and not self.round:
            self.rs = not self.rs
        height = height_of_row(self.pattern, motif)
        self.height = None if height is None or self.height is None else self.height + rows * height
        if self.height is not None:
            self.reached.append((self.row - 1, self.height))

    def put(self, stitches: Waiting) -> None:
        """Put stitches aside; a name under which others wait already is a finding."""
        self.put_aside += stitches.count
        there = self.holders.put(stitches)
        if there is not None:
            self.find(
                "holder-full",
                stitches.span,
                "live" if stitches.live else "held",
                numbers=(stitches.count, there.count),
                name=stitches.name,
                other=there.span,
            )

    def take(self, name: str, span: Span) -> int | None:
        """Take what waits under a name; None, and a finding, where nothing does."""
        found = self.holders.take(name)
        if found is not None:
            self.brought += found.count
            return found.count
        gone = self.holders.taken.get(name)
        later = any(p.name.key == name and p is not self.piece for p in self.pattern.pieces)
        self.find(
            "holder-empty",
            span,
            "taken" if gone is not None else "piece" if later else "never",
            name=name,
            numbers=(gone.count if gone is not None else 0,),
            other=gone.span if gone is not None else None,
        )
        return None
