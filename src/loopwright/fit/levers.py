"""What a piece's width hangs on, and which widths it can have.

Most pieces hang on their cast-on: the counts that every motif, fill, edge, panel and marker of the
piece take are a set of congruences and bounds, solved exactly. A piece that begins small and grows
(a shawl from its neck) hangs on how often its growing motif is worked. Each proposed number is
walked with everything that follows from it before it is offered.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from fractions import Fraction
from functools import cached_property
from math import floor, gcd, lcm

from loopwright.check.checked import Checked
from loopwright.count.affine import CountSet
from loopwright.count.live import total
from loopwright.count.measure import width_gauge, width_of
from loopwright.count.repeat import Repeater
from loopwright.count.solve import counts_for
from loopwright.count.tape import Tape, Tapes
from loopwright.count.walk import Walk, Worked
from loopwright.count.walker import walk_piece
from loopwright.count.widths import piece_width, widest_of
from loopwright.fit.loose import Even, Loose, even_row, loose_row
from loopwright.fit.slots import Sheet
from loopwright.model.body import Body
from loopwright.model.build import build
from loopwright.model.pattern import CastOn, Pattern, Piece, PieceRow, Spread, Work
from loopwright.notation.parse import parse
from loopwright.notation.rewrite import apply_edits
from loopwright.notation.source import Source
from loopwright.notation.tree import Times, UntilStitches
from loopwright.record import dataclass

TRIES = 200
"""Numbers walked, each side of the width, where the congruences alone do not decide."""

NO_MATTER = ("claim-wrong", "gauge-missing", "length-unreached")
"""Findings of a walk that another count neither makes nor mends (claims follow later)."""


@dataclass(frozen=True, slots=True)
class Choice:
    """A number a piece can have: its cast-on, its widest row, the width in mm, what to write.

    `repeats` is how often the growing motif is worked, where the width hangs on that.
    """

    value: int
    cast_on: int
    widest: int
    width: float
    sheet: Sheet
    repeats: int | None = None


class _Relaxed:
    """Tapes that stop the solver at rows whose numbers follow the width."""

    def __init__(self, tapes: Tapes, loose: Iterable[Body]) -> None:
        self._tapes = tapes
        self._loose = {id(body) for body in loose}

    def of(self, body: Body, size: int) -> Tape:
        if id(body) in self._loose:
            return Tape((), True, False, None, True)
        return self._tapes.of(body, size)


class Lever:
    """The number that the width of one piece in one size hangs on.

    `wanted` is the width asked for in stitches of the widest row, `unit` how many stitches lie
    between two numbers that fit (0: only one does).
    """

    def __init__(self, checked: Checked, piece: Piece, size: int, width: float) -> None:
        self.checked = checked
        self.pattern: Pattern = checked.pattern
        self.piece = piece
        self.size = size
        self.walk: Walk = next(w for w in checked.walks if w.piece is piece and w.size == size)
        gauge = width_gauge(self.pattern, piece)
        if gauge is None or gauge.over.unit is None:
            raise ValueError("the piece has no gauge")
        self.wanted = width / width_of(gauge, 1)
        self.widest_now = widest_of(self.pattern, self.walk)
        self.cast = next((i for i in piece.items if isinstance(i, CastOn)), None)
        self._made: dict[tuple[int, bool], Choice | None] = {}
        self._repeater = Repeater()

    # --- to be said by each kind ---------------------------------------------------------------

    @property
    def counts(self) -> CountSet:
        """The numbers that fit, as far as congruences and bounds can tell."""
        raise NotImplementedError

    @property
    def aim(self) -> float:
        """The number that would give the width exactly."""
        raise NotImplementedError

    def _write(self, value: int, exact: bool) -> Sheet | None:
        raise NotImplementedError

    def _choice(self, value: int, walk: Walk, sheet: Sheet) -> Choice:
        widest = widest_of(self.pattern, walk)
        width = piece_width(self.pattern, walk) or 0.0
        return Choice(value, walk.cast_on or 0, widest, width, sheet)

    # --- shared ----------------------------------------------------------------------------------

    @property
    def unit(self) -> int:
        return self.counts.modulus

    def make(self, value: int, exact: bool = False) -> Choice | None:
        """The piece with that number, walked; None where a row then does not fit.

        With `exact` what grows later is shaped to the very width, else in proportion.
        """
        key = (value, exact)
        if key not in self._made:
            self._made[key] = self._try(value, exact)
        return self._made[key]

    def _try(self, value: int, exact: bool) -> Choice | None:
        sheet = self._write(value, exact)
        if sheet is None:
            return None
        edits = sheet.edits()
        if not edits:
            walk = self._walk(self.pattern, self.piece, value)
            return None if walk is None else self._choice(value, walk, sheet)
        text = apply_edits(self.checked.source.text, edits)
        pattern = build(parse(Source.of(self.checked.source.name, text))).pattern
        place = self.pattern.pieces.index(self.piece)
        walk = self._walk(pattern, pattern.pieces[place], value)
        return None if walk is None else self._choice(value, walk, sheet)

    def _walk(self, pattern: Pattern, piece: Piece, cast_on: int | None) -> Walk | None:
        tapes = self.checked.tapes if pattern is self.pattern else Tapes()
        repeater = self._repeater if pattern is self.pattern else Repeater()
        walk = walk_piece(pattern, piece, self.size, tapes, repeater, None, cast_on)
        return None if any(f.rule not in NO_MATTER for f in walk.findings) else walk

    def nearest(self) -> Choice | None:
        """The number nearest to the width; of two equally near ones the larger."""
        for value in outwards(self.counts, self.aim):
            found = self.make(value, True)
            if found is not None:
                return found
        return None

    def next(self, value: int, larger: bool) -> Choice | None:
        """The next number that fits, above or below one."""
        at: int | None = value
        for _ in range(TRIES):
            assert at is not None
            at = self.counts.above(at + 1) if larger else self.counts.below(at - 1)
            if at is None:
                return None
            found = self.make(at)
            if found is not None:
                return found
        return None

    def is_far(self, choice: Choice) -> bool:
        """Whether the nearest lies more than half a repeat from the width asked."""
        return abs(choice.widest - self.wanted) > max(self.unit, 2) / 2 + 1e-9


class CastLever(Lever):
    """The width hangs on the cast-on; rows written out and spread changes follow it."""

    @cached_property
    def loose(self) -> list[tuple[int, Loose]]:
        """The rows written out for one count, with the place of their line in the piece."""
        found = []
        for index, item in enumerate(self.piece.items):
            if isinstance(item, PieceRow):
                tape = self.checked.tapes.of(item.row.body, self.size)
                row = loose_row(self.checked.source, item.row, tape, self.size)
                if row is not None and self._start(index) is not None:
                    found.append((index, row))
        return found

    @cached_property
    def evens(self) -> dict[int, Even]:
        """The rows that spread changes over their stitches, by the place of their line."""
        found = {}
        for index, item in enumerate(self.piece.items):
            if isinstance(item, PieceRow):
                even = even_row(self.checked.source, item.row, self.size)
                if even is not None:
                    found[index] = even
        return found

    @cached_property
    def spreads(self) -> list[tuple[int, Spread]]:
        return [(i, item) for i, item in enumerate(self.piece.items) if isinstance(item, Spread)]

    def _start(self, index: int) -> int | None:
        """The stitches that hang before a line of the piece, as it is now."""
        for event in self.walk.events:
            if isinstance(event, Worked) and event.index == index:
                return event.chunk.entries[0].start.fixed
        return None

    def _end(self, index: int) -> int | None:
        ends = [
            total(e.chunk.after).fixed
            for e in self.walk.events
            if isinstance(e, Worked) and e.index == index
        ]
        return ends[-1] if ends else None

    @property
    def _grows(self) -> bool:
        """Whether spread changes make the widest row."""
        return any(self._end(i) == self.widest_now for i, _ in self.spreads) and (
            self.widest_now > (self.walk.cast_on or 0)
        )

    @cached_property
    def _free(self) -> set[int]:
        """The lines behind which the count is no longer the cast-on and so many stitches."""
        return {*self.evens, *(index for index, _ in self.spreads)}

    @cached_property
    def counts(self) -> CountSet:
        now = self.walk.cast_on or 0
        bodies = [row.row.body for _, row in self.loose]
        bodies += [even.row.body for even in self.evens.values()]
        bodies += [s.motif.rows[0].body for _, s in self.spreads if s.motif and s.motif.rows]
        relaxed = _Relaxed(self.checked.tapes, bodies)
        found = counts_for(self.piece, self.size, relaxed)
        first = min(self._free, default=len(self.piece.items))
        for index, row in self.loose:
            start = self._start(index)
            if index < first and start is not None:
                common = gcd(*(part.often for part in row.parts))
                offset = Fraction(start - now - row.fixed)
                found = found.congruent(Fraction(1), offset, common)
        for index, item in enumerate(self.piece.items[:first]):
            form = item.motif.form if isinstance(item, Work) and item.motif else None
            start = self._start(index)
            if form is not None and form.unit and start is not None:
                found = found.congruent(Fraction(1), Fraction(start - now - form.fixed), form.unit)
        return found

    @property
    def aim(self) -> float:
        now = self.walk.cast_on or 0
        if self._grows:
            return now * self.wanted / self.widest_now
        return self.wanted - (self.widest_now - now)

    def nearest(self) -> Choice | None:
        """The number nearest to the width; a shaped piece that is as near as it can be stays."""
        off = self.wanted - self.widest_now
        if self._grows and -self._grain / 2 <= off < self._grain / 2:
            return self.make(self.walk.cast_on or 0)
        return super().nearest()

    @property
    def _grain(self) -> int:
        """By how many stitches the widest row of a piece that grows can differ at the least."""
        grain = 1
        for index, item in self.spreads:
            if self._end(index) == self.widest_now and item.motif is not None:
                tape = self.checked.tapes.of(item.motif.rows[0].body, self.size)
                grain = lcm(grain, abs(tape.fixed_makes - tape.fixed_takes) or 1)
                for _, unit, _ in self._forms_after(index):
                    grain = lcm(grain, unit)
        return grain

    def _forms_after(self, index: int) -> Iterator[tuple[int, int, int]]:
        """The forms that the end of a line must suit: (stitches since, unit, fixed)."""
        end = self._end(index)
        for later, item in enumerate(self.piece.items):
            if later <= index:
                continue
            if later in self._free or end is None:
                return
            form = item.motif.form if isinstance(item, Work) and item.motif else None
            start = self._start(later)
            if form is not None and form.unit and start is not None:
                yield start - end, form.unit, form.fixed

    def _number(self, index: int, start: int, by: int, target: float) -> int:
        """The number of changes nearest to `target` whose end suits the forms that follow."""
        forms = list(self._forms_after(index))
        reach = lcm(*(unit for _, unit, _ in forms)) if forms else 1
        low = max(floor(target + 0.5), 1)
        for number in sorted(
            range(max(low - reach, 1), low + reach + 1), key=lambda n: (abs(n - target), -n)
        ):
            end = start + number * by
            if all((end + since - fixed) % unit == 0 for since, unit, fixed in forms):
                return number
        return low

    def _write(self, value: int, exact: bool) -> Sheet | None:
        sheet = Sheet(len(self.pattern.sizes))
        now = self.walk.cast_on or 0
        # What the shaping leads to goes with the width asked, or with the cast-on.
        ratio = self.wanted / self.widest_now if exact and self._grows else value / max(now, 1)
        if value == now and ratio == 1:
            return sheet
        if self.cast is not None and self.cast.count is not None:
            sheet.put_count(self.cast.count, self.size, value)
        moved = value - now  # how much the count before the next line differs from what it was
        by_index = dict(self.loose)
        for index, item in enumerate(self.piece.items):
            start = self._start(index)
            if start is None:
                continue
            if index in by_index and moved:
                row = by_index[index]
                numbers = row.share(start + moved)
                if numbers is None:
                    return None
                for part, number in zip(row.parts, numbers, strict=True):
                    for span in part.spans:
                        sheet.put(span, part.values, self.size, number)
            elif index in self.evens:
                even = self.evens[index]
                if even.now:
                    since = (self._end(index) or 0) - start - even.now * even.by
                    number = self._number(index, start + moved + since, even.by, even.now * ratio)
                    sheet.put(even.span, even.values, self.size, number)
                    moved += (number - even.now) * even.by
            elif isinstance(item, Spread):
                end = self._spread(sheet, index, item, start + moved, ratio)
                if end is None:
                    return None
                moved = end - (self._end(index) or 0)
            elif isinstance(item, Work) and isinstance(item.amount, UntilStitches):
                moved = 0
        return sheet

    def _spread(
        self, sheet: Sheet, index: int, item: Spread, start: int, ratio: float
    ) -> int | None:
        """New changes for a spread line, so that it ends in proportion; gives its new end."""
        before, after = self._start(index), self._end(index)
        if before is None or after is None or item.motif is None:
            return None
        times = item.times
        tape = self.checked.tapes.of(item.motif.rows[0].body, self.size)
        by = tape.fixed_makes - tape.fixed_takes
        if by == 0 or any(op.makes != op.takes for op in tape.fills):
            return start + after - before
        if before == after:
            return start  # no change in this size
        changes = self._number(index, start, by, (after * ratio - start) / by)
        if isinstance(times, Times):
            sheet.put_count(times.count, self.size, changes)
        else:
            sheet.put_count(times.count, self.size, start + changes * by)
        return start + changes * by


def outwards(counts: CountSet, wanted: float) -> Iterator[int]:
    """Members of a set, nearest first; of two equally near ones the larger."""
    exact = Fraction(wanted).limit_denominator(10**9)
    start = floor(exact)
    low = counts.below(start)
    high = counts.above(start + 1)
    for _ in range(2 * TRIES):
        if low is None and high is None:
            return
        if low is None or (high is not None and high - exact <= exact - low):
            assert high is not None
            yield high
            high = counts.above(high + 1)
        else:
            yield low
            low = counts.below(low - 1)
