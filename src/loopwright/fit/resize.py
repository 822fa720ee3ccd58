"""New counts for a new width or length, written into the text where the old ones stand."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from loopwright.check.checked import Checked
from loopwright.count.affine import CountSet
from loopwright.count.measure import height_of_row, width_gauge, width_of
from loopwright.count.repeat import Repeater
from loopwright.count.solve import counts_for
from loopwright.count.walk import Walk, Worked, walk_piece
from loopwright.fit.units import parse_quantity
from loopwright.model.pattern import CastOn, Motif, Pattern, Piece, PieceRow, Work
from loopwright.notation.quantity import LENGTH_MM, Quantity
from loopwright.notation.rewrite import apply_edits
from loopwright.notation.source import Source, Span
from loopwright.notation.tree import Count, ForRows, Times, ToLength
from loopwright.problem import ERROR, Edit, Problem

_TRIES = 400
"""Counts tried where only the walk can tell whether one fits."""


class CannotResize(Exception):
    """The pattern cannot be made that size; `problems` say which lines stop it."""

    def __init__(self, problems: list[Problem]) -> None:
        super().__init__(problems[0].message)
        self.problems = problems


@dataclass(frozen=True, slots=True)
class Wish:
    """The measures asked for in millimetres, one for each size; None leaves a size as it is."""

    width: tuple[float | None, ...]
    length: tuple[float | None, ...]
    everywhere: bool

    @staticmethod
    def of(pattern: Pattern, width: str | None, length: str | None, size: str | None) -> Wish:
        """Read the words of a call. Raises ValueError with a sentence for the caller."""
        names = pattern.sizes
        if size is not None and size not in names:
            raise ValueError(f"there is no size “{size}”; the pattern has {', '.join(names)}")
        return Wish(
            _one_a_size(width, "--width", names, size),
            _one_a_size(length, "--length", names, size),
            size is None and len(names) > 1,
        )


def _one_a_size(
    text: str | None, option: str, names: tuple[str, ...], size: str | None
) -> tuple[float | None, ...]:
    if text is None:
        return (None,) * len(names)
    quantity = parse_quantity(text)
    if not quantity.is_length:
        raise ValueError(f"{option} wants a length, and {text} is none")
    values = [quantity.mm(i) for i in range(len(quantity.values))]
    if size is not None:
        if len(values) > 1:
            raise ValueError(f"{option} {text} is a list, but --size names one size")
        return tuple(values[0] if name == size else None for name in names)
    if len(values) == 1:
        return tuple(values * len(names))
    if len(values) != len(names):
        raise ValueError(
            f"{option} {text} has {len(values)} numbers, and the pattern has {len(names)} sizes"
        )
    return tuple(values)


@dataclass(frozen=True, slots=True)
class Resized:
    """The new source and what a reader of the call should know."""

    source: Source
    notes: tuple[str, ...]


def resize(checked: Checked, wish: Wish, check: Callable[[Source], Checked]) -> Resized:
    """Find the new counts and write them in. Raises CannotResize; the result is for the
    caller to check (`check` is only asked for the counts that claims must follow).

    The count for a width is the nearest one that every row and motif of the piece takes, of two
    equally near ones the larger. Rows go by whole motifs.
    """
    worker = _Resizer(checked, wish)
    edits = worker.edits()
    text = apply_edits(checked.source.text, edits)
    source = Source.of(checked.source.name, text)
    # A claim whose row follows from the change is written anew, once the counts stand.
    claims = list(_claims(check(source)))
    if claims:
        source = Source.of(source.name, apply_edits(source.text, claims))
    notes = list(worker.notes)
    if wish.everywhere and len(set(wish.width)) == 1 and wish.width[0] is not None:
        notes.append("all sizes now have the same width; --size NAME changes one alone")
    if wish.everywhere and len(set(wish.length)) == 1 and wish.length[0] is not None:
        notes.append("all sizes now have the same length; --size NAME changes one alone")
    return Resized(source, tuple(notes))


def _claims(checked: Checked) -> Iterator[Edit]:
    """Absolute claims that no longer hold, with the count that does."""
    sizes = len(checked.pattern.sizes)
    wrong = {f.span for w in checked.walks for f in w.findings if f.rule == "claim-wrong"}
    if not wrong:
        return
    ends: dict[Span, dict[int, int]] = {}
    spans: dict[Span, Count] = {}
    for walk in checked.walks:
        for event in walk.events:
            if not isinstance(event, Worked):
                continue
            for entry in event.chunk.entries:
                claim = entry.row.claim
                if claim is None or claim.sign:
                    continue
                place = entry.row.at(claim.span)
                if place in wrong:
                    ends.setdefault(place, {})[walk.size] = entry.end.fixed
                    spans[place] = Count(claim.count.values, entry.row.at(claim.count.span))
    for place, found in ends.items():
        values = [found.get(size, next(iter(found.values()))) for size in range(sizes)]
        yield Edit(spans[place].span, _list(values, len(spans[place].values) > 1))


class _Resizer:
    def __init__(self, checked: Checked, wish: Wish) -> None:
        self.checked = checked
        self.pattern = checked.pattern
        self.wish = wish
        self.sizes = range(len(checked.pattern.sizes))
        self.repeater = Repeater()
        self.problems: list[Problem] = []
        self.notes: list[str] = []

    def edits(self) -> list[Edit]:
        edits: list[Edit] = []
        if any(w is not None for w in self.wish.width):
            edits += self._measure_line(self.pattern.width, self.wish.width)
            for number, piece in enumerate(self.pattern.pieces):
                edits += self._piece_width(piece, number == 0)
        if any(w is not None for w in self.wish.length):
            edits += self._measure_line(self.pattern.length, self.wish.length)
            for number, piece in enumerate(self.pattern.pieces):
                edits += self._piece_length(piece, number == 0)
        if self.problems:
            raise CannotResize(self.problems)
        return edits

    def _walk(self, piece: Piece, size: int) -> Walk:
        return next(w for w in self.checked.walks if w.piece is piece and w.size == size)

    def _stop(self, span: Span, title: str, message: str, help: str = "") -> None:
        self.problems.append(Problem("", ERROR, title, message, span, help=help))

    def _measure_line(
        self, quantity: Quantity | None, wanted: tuple[float | None, ...]
    ) -> list[Edit]:
        """The stated measure, in the writer's own unit."""
        if quantity is None or quantity.unit is None:
            return []
        factor = LENGTH_MM[quantity.unit]
        values = [quantity.at(s) if (w := wanted[s]) is None else w / factor for s in self.sizes]
        text = self.pattern.source.slice(quantity.span)
        unit = text.lstrip("0123456789./¼½¾⅓⅔⅛⅜⅝⅞")
        old = [quantity.at(s) for s in self.sizes]
        if values == old:
            return []
        kept = text[: len(text) - len(unit)].split("/")
        numbers = []
        for size, value in enumerate(values):
            if value == old[size]:
                numbers.append(kept[min(size, len(kept) - 1)])
            else:
                numbers.append(f"{value:.2f}".rstrip("0").rstrip("."))
        if len(set(values)) == 1 and len(quantity.values) == 1:
            numbers = numbers[:1]
        return [Edit(quantity.span, "/".join(numbers) + unit)]

    # --- widths ---------------------------------------------------------------------------------

    def _piece_width(self, piece: Piece, first: bool) -> list[Edit]:
        cast = next((i for i in piece.items if isinstance(i, CastOn)), None)
        gauge = width_gauge(self.pattern, piece)
        if cast is None:
            return []
        if gauge is None or gauge.over.unit is None:
            self._stop(
                cast.span,
                "the width cannot be counted",
                "The pattern has no gauge, so nobody can say how many stitches the width takes.",
                "add a line such as “gauge 20 stitches 28 rows = 10 cm”.",
            )
            return []
        targets = [self._target(piece, size, first) for size in self.sizes]
        own = self._measure_line(piece.width, tuple(targets)) if piece.width is not None else []
        if cast.count is None:
            for size, target in enumerate(targets):
                if target is not None:
                    wanted = target / width_of(gauge, 1)
                    fitting = counts_for(self.pattern, piece, size, self.checked.tapes)
                    self._far(piece, size, fitting.nearest(wanted) or 0, wanted)
            return own
        counts: list[int] = []
        for size in self.sizes:
            target = targets[size]
            old = cast.count.at(size)
            if target is None:
                counts.append(old)
                continue
            walk = self._walk(piece, size)
            wanted = target / width_of(gauge, 1) - (walk.widest - old)
            found = self._nearest(piece, size, wanted, old)
            if found is None:
                return []
            counts.append(found)
            self._far(piece, size, found, wanted)
        if counts == [cast.count.at(size) for size in self.sizes]:
            return own
        return [*own, Edit(cast.count.span, _list(counts, len(cast.count.values) > 1))]

    def _far(self, piece: Piece, size: int, found: int, wanted: float) -> None:
        """Say so where the nearest count is more than half a repeat from the width."""
        counts = counts_for(self.pattern, piece, size, self.checked.tapes)
        if abs(found - wanted) > max(counts.modulus, 2) / 2 + 1e-9:
            where = f" in size {self.pattern.sizes[size]}" if len(self.sizes) > 1 else ""
            self.notes.append(
                f"no count of {piece.name.text} lies within half a repeat of that width{where}: "
                f"the nearest is {found:,} stitches, and the width would take {wanted:.0f}"
            )

    def _target(self, piece: Piece, size: int, first: bool) -> float | None:
        """The new width of a piece: the asked one, or in proportion where it has another now."""
        wanted = self.wish.width[size]
        if wanted is None:
            return None
        gauge = width_gauge(self.pattern, piece)
        walk = self._walk(piece, size)
        stated = self.pattern.width
        if gauge is None or gauge.over.unit is None or stated is None or stated.unit is None:
            return wanted
        now = width_of(gauge, walk.widest)
        whole = stated.mm(size)
        if (piece.width is None and first) or abs(now - whole) <= whole * 0.05:
            return wanted
        return now * wanted / whole

    def _nearest(self, piece: Piece, size: int, wanted: float, old: int) -> int | None:
        counts = counts_for(self.pattern, piece, size, self.checked.tapes)
        for count in _outwards(counts, wanted):
            walk = walk_piece(
                self.pattern,
                piece,
                size,
                self.checked.tapes,
                self.repeater,
                None,
                cast_on=count,
            )
            serious = [f for f in walk.findings if f.rule not in ("claim-wrong", "gauge-missing")]
            if not serious:
                if counts.modulus == 0 and abs(count - wanted) > 0.5:
                    break  # only the old count fits: the piece cannot grow
                return count
        self._cannot_grow(piece, size, old)
        return None

    def _cannot_grow(self, piece: Piece, size: int, old: int) -> None:
        name = piece.name.text
        said: set[Span] = set()
        for span, what in _fixed_lines(self.checked, piece, size):
            if span in said or any(p.span == span for p in self.problems):
                continue
            said.add(span)
            self._stop(
                span,
                f"{name} cannot change its width",
                f"{what}, and nothing says which of its numbers would have to change with "
                f"the width (it is written for the {old:,} stitches of the cast-on).",
                "let a fill between stars take up the stitches that vary.",
            )
        if not said:
            self._stop(
                piece.span,
                f"{name} cannot change its width",
                f"No other count near that width suits all the rows of {name}.",
            )

    # --- lengths ----------------------------------------------------------------------------------

    def _piece_length(self, piece: Piece, first: bool) -> list[Edit]:
        works = [i for i in piece.items if isinstance(i, Work) and i.motif is not None]
        by_length = [
            w for w in works if isinstance(w.amount, ToLength) and w.amount.measure is None
        ]
        own: list[Edit] = []
        targets = [self._long_target(piece, size, first) for size in self.sizes]
        if piece.length is not None:
            own = self._measure_line(piece.length, tuple(targets))
        if by_length:
            return own
        scalable = [w for w in works if isinstance(w.amount, Times | ForRows | ToLength)]
        if not scalable:
            if any(t is not None for t in targets):
                self._stop(
                    piece.span,
                    f"{piece.name.text} cannot change its length",
                    f"{piece.name.text} works no motif so many times or to a length, so nothing "
                    "says which of its rows would have to be worked more often.",
                    "put the rows that vary into a motif: “work NAME x8” or “work NAME to length”.",
                )
            return own
        return own + self._scale(piece, scalable, targets)

    def _long_target(self, piece: Piece, size: int, first: bool) -> float | None:
        wanted = self.wish.length[size]
        stated = self.pattern.length
        walk = self._walk(piece, size)
        if wanted is None or walk.height is None:
            return wanted
        if stated is None or stated.unit is None:
            return wanted
        whole = stated.mm(size)
        if (piece.length is None and first) or abs(walk.height - whole) <= whole * 0.05:
            return wanted
        return walk.height * wanted / whole

    def _scale(self, piece: Piece, works: list[Work], targets: list[float | None]) -> list[Edit]:
        """More or fewer whole motifs, in proportion; the last one takes what is left."""
        new: dict[int, list[float]] = {id(work): [] for work in works}
        for size in self.sizes:
            target = targets[size]
            walk = self._walk(piece, size)
            if target is not None and walk.height is None:
                self._stop(
                    piece.span,
                    "the length cannot be counted",
                    "The pattern has no gauge, so nobody can say how many rows the length takes.",
                    "add a line such as “gauge 20 stitches 28 rows = 10 cm”.",
                )
                return []
            rows = {id(work): _rows_of(walk, work) for work in works}
            heights = {id(work): self._high(work.motif) for work in works}
            together = sum(rows[id(w)] * heights[id(w)] for w in works)
            left = 0.0 if target is None or walk.height is None else target - walk.height
            for work in works:
                one = heights[id(work)] * len(work.motif.rows if work.motif else ())
                now = rows[id(work)] * heights[id(work)]
                share = left * now / together if together else 0.0
                if work is works[-1]:
                    share = left
                by = round(share / one) if one else 0
                left -= by * one
                together -= now
                amount = work.amount
                assert work.motif is not None
                if isinstance(amount, Times):
                    value: float = amount.count.at(size) + by
                elif isinstance(amount, ForRows):
                    value = amount.rows.at(size) + by * len(work.motif.rows)
                else:
                    assert isinstance(amount, ToLength) and amount.measure is not None
                    value = amount.measure.mm(size) + (by * one if target is not None else 0)
                if value < 1:
                    self._stop(
                        amount.span,
                        f"{piece.name.text} cannot be that short",
                        f"Not one repeat of {work.motif.name.text} would be left of this line.",
                    )
                new[id(work)].append(value)
        return [edit for work in works for edit in self._amount_edit(work, new[id(work)])]

    def _high(self, motif: Motif | None) -> float:
        return height_of_row(self.pattern, motif) or 0.0

    def _amount_edit(self, work: Work, values: list[float]) -> list[Edit]:
        amount = work.amount
        if isinstance(amount, ToLength) and amount.measure is not None:
            return self._measure_line(amount.measure, tuple(values))
        count = amount.count if isinstance(amount, Times) else None
        count = amount.rows if isinstance(amount, ForRows) else count
        if count is None or len(values) != len(self.sizes):
            return []
        whole = [int(v) for v in values]
        if whole == [count.at(size) for size in self.sizes]:
            return []
        return [Edit(count.span, _list(whole, len(count.values) > 1))]


def _outwards(counts: CountSet, wanted: float) -> Iterator[int]:
    """Members of a set, nearest first; of two equally near ones the larger."""
    low = counts.below(int(wanted // 1))
    high = counts.above(int(wanted // 1) + 1)
    for _ in range(_TRIES):
        if low is None and high is None:
            return
        if low is None or (high is not None and high - wanted <= wanted - low):
            assert high is not None
            yield high
            high = counts.above(high + 1)
        else:
            yield low
            low = counts.below(low - 1)


def _fixed_lines(checked: Checked, piece: Piece, size: int) -> Iterator[tuple[Span, str]]:
    """The lines of a piece that hold on one count only, with the start of a sentence on each."""
    for item in piece.items:
        if isinstance(item, PieceRow):
            tape = checked.tapes.of(item.row.body, size)
            if not tape.fills:
                yield item.row.place, "This row has no fill"
        elif isinstance(item, Work) and item.motif is not None:
            form = item.motif.form
            if form is not None and form.unit == 0:
                yield form.span, f"The motif {item.motif.name.text} is worked over one count only"
                continue
            for row in item.motif.rows:
                if not checked.tapes.of(row.body, size).fills and row.as_row is None:
                    yield row.place, f"Row {row.number} of {item.motif.name.text} has no fill"


def _rows_of(walk: Walk, work: Work) -> int:
    return sum(e.rows for e in walk.events if isinstance(e, Worked) and e.item is work)


def _list(values: list[int], was_list: bool) -> str:
    """Numbers as the source writes them: a size list stays one."""
    if len(set(values)) == 1 and not was_list:
        return str(values[0])
    return "/".join(map(str, values))
