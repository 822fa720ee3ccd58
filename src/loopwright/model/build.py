"""From the tree to the pattern: blocks, names and stitch words put together."""

from __future__ import annotations

from typing import Any

from loopwright.facts.amounts import join_way, join_ways
from loopwright.facts.care import care_named, care_words
from loopwright.model.body import Body, Evenly, Fill, Group, Step, Stitches
from loopwright.model.free import Free
from loopwright.model.pattern import (
    BeginRound,
    BindOff,
    CastOn,
    Edge,
    Hold,
    Item,
    JoinRound,
    LeaveLive,
    LeaveRound,
    Motif,
    Pattern,
    PickUp,
    Piece,
    PieceRow,
    Reference,
    Remark,
    Row,
    RowClash,
    RowGap,
    Shade,
    Spread,
    Strand,
    Take,
    UnknownWord,
    Work,
    Yarn,
)
from loopwright.model.stitch import Dictionary, Stitch, is_purled
from loopwright.notation import tree
from loopwright.notation.bounds import MAX_MOTIF_ROWS, MAX_SIZES
from loopwright.notation.near import nearest
from loopwright.notation.parse import Parsed
from loopwright.notation.source import Span
from loopwright.problem import ERROR, Label, Problem
from loopwright.record import dataclass, field

_UNKNOWN = Stitch("?", 1, 1, "unknown", "?", "unknown", 1.0, "")
_NOT_A_ROW = Body((), None, Span(0, 0), True)

_PATTERN_LINES = (
    tree.LevelLine,
    tree.CareLine,
    tree.SizesLine,
    tree.GaugeLine,
    tree.SwatchLine,
    tree.NeedleLine,
    tree.BoundLine,
    tree.JoinByLine,
)
_MOVES = (
    tree.JoinLine,
    tree.HoldLine,
    tree.TakeLine,
    tree.PickLine,
    tree.LeaveLine,
    tree.BeginLine,
)
_LINE_NAMES: dict[type, str] = {
    tree.LevelLine: "level",
    tree.CareLine: "care",
    tree.SizesLine: "sizes",
    tree.GaugeLine: "gauge",
    tree.SwatchLine: "swatch",
    tree.NeedleLine: "needle",
    tree.BoundLine: "bound",
    tree.JoinByLine: "join by",
    tree.EdgeLine: "edge",
    tree.RowLine: "row",
    tree.CastOnLine: "cast on",
    tree.BindOffLine: "bind off",
    tree.WorkLine: "work",
    tree.JoinLine: "join",
    tree.HoldLine: "hold",
    tree.TakeLine: "take",
    tree.PickLine: "pick up",
    tree.LeaveLine: "leave",
    tree.BeginLine: "begin",
    tree.SpreadLine: "spread",
}


_End = tuple[tree.Body, int] | tree.AsRow
_Followed = dict[int, _End]


@dataclass(frozen=True, slots=True)
class Built:
    """The pattern and what was found wrong while it was put together."""

    pattern: Pattern
    problems: tuple[Problem, ...]


@dataclass(slots=True)
class _Open:
    """A motif or piece whose lines are being gathered."""

    line: Any
    lines: list[tree.Placed] = field(default_factory=list)


def build(parsed: Parsed) -> Built:
    """Put a parsed source together. Pure; every problem found is returned."""
    builder = _Builder(parsed)
    pattern = builder.run()
    return Built(pattern, tuple(builder.problems))


class _Builder:
    def __init__(self, parsed: Parsed) -> None:
        self.parsed = parsed
        self.problems: list[Problem] = []
        self.references: list[Reference] = []
        self.unknown: dict[UnknownWord, None] = {}  # in order, each once
        self.clashes: list[RowClash] = []
        self.gaps: list[RowGap] = []
        self.bodies: dict[int, Body] = {}
        self.stitches: dict[int, Stitches] = {}  # by the word's id: equal lines share words
        self.unknown_in: dict[int, tuple[tuple[str, Span], ...]] = {}
        self.dictionary = Dictionary({})

    # --- blocks -------------------------------------------------------------

    def run(self) -> Pattern:
        heads: list[tree.PatternLine] = []
        in_pattern: list[tree.Placed] = []
        blocks: list[_Open] = []
        singles: list[Any] = []
        where: str | None = None
        for placed in self.parsed.lines:
            node = placed.statement
            if isinstance(node, tree.PatternLine):
                heads.append(node)
                where = "pattern"
            elif isinstance(node, tree.MotifLine | tree.PieceLine):
                blocks.append(_Open(node))
                where = "motif" if isinstance(node, tree.MotifLine) else "piece"
            elif isinstance(
                node, tree.YarnLine | tree.ShadeLine | tree.StrandLine | tree.StitchLine
            ):
                singles.append(node)
                where = "single"
            elif self._fits(node, where):
                if where == "pattern":
                    in_pattern.append(placed)
                else:
                    blocks[-1].lines.append(placed)
            else:
                self._out_of_place(placed, where)
        self._check_heads(heads)
        stitches = self._stitches([s for s in singles if isinstance(s, tree.StitchLine)])
        self.dictionary = Dictionary({s.word: s for s in stitches})
        motifs = tuple(
            self._motif(block.line, block.lines)
            for block in blocks
            if isinstance(block.line, tree.MotifLine)
        )
        by_name: dict[str, Motif] = {}
        for motif in motifs:
            by_name.setdefault(motif.name.key, motif)
        pieces = tuple(
            self._piece(block.line, block.lines, by_name)
            for block in blocks
            if isinstance(block.line, tree.PieceLine)
        )
        return self._pattern(heads, in_pattern, singles, stitches, motifs, pieces)

    def _fits(self, node: tree.Statement, where: str | None) -> bool:
        if where == "pattern":
            if isinstance(node, tree.TextLine):
                return node.kind != "section"
            return isinstance(node, (*_PATTERN_LINES, tree.MeasureLine))
        if where == "motif":
            return isinstance(node, tree.EdgeLine | tree.RowLine)
        if where == "piece":
            if isinstance(node, tree.TextLine):
                return node.kind in ("note", "section")
            if isinstance(node, tree.RowLine):
                return node.every is None
            return isinstance(
                node,
                tree.EdgeLine
                | tree.MeasureLine
                | tree.CastOnLine
                | tree.BindOffLine
                | tree.WorkLine
                | tree.JoinLine
                | tree.HoldLine
                | tree.TakeLine
                | tree.PickLine
                | tree.LeaveLine
                | tree.BeginLine
                | tree.SpreadLine,
            )
        return False

    def _out_of_place(self, placed: tree.Placed, where: str | None) -> None:
        node = placed.statement
        if isinstance(node, tree.TextLine | tree.MeasureLine):
            word = node.kind
        else:
            word = _LINE_NAMES.get(type(node), "this")
        span = node.span
        if isinstance(node, tree.RowLine):
            span = span.shifted(placed.base)
            word = "every" if node.every else word
        home = {
            "section": "a piece",
            "edge": "a motif or a piece",
            "row": "a motif or a piece",
            "every": "a motif",
            "cast on": "a piece",
            "bind off": "a piece",
            "work": "a piece",
            "join": "a piece",
            "hold": "a piece",
            "take": "a piece",
            "pick up": "a piece",
            "leave": "a piece",
            "begin": "a piece",
            "spread": "a piece",
            "note": "the pattern or a piece",
            "width": "the pattern or a piece",
            "length": "the pattern or a piece",
        }.get(word, "the pattern")
        here = {
            None: "before any opening line",
            "single": "behind a one-line entry, which ends the block before it",
        }.get(where, f"in a {where}")
        self._error(
            "out-of-place",
            f"“{word}” stands in the wrong block",
            f"The word “{word}” begins a line of {home}; this one stands {here}. A block "
            "runs from its opening line (pattern, motif, piece) to the next opening line.",
            span,
            f"move it under the opening line of {home}.",
        )

    def _error(
        self,
        rule: str,
        title: str,
        message: str,
        span: Span,
        help: str = "",
        labels: tuple[Label, ...] = (),
    ) -> None:
        self.problems.append(Problem(rule, ERROR, title, message, span, labels, help))

    def _check_heads(self, heads: list[tree.PatternLine]) -> None:
        if not heads and not self.parsed.recovered:
            end = self.parsed.lines[0].statement.span if self.parsed.lines else Span(0, 0)
            if self.parsed.lines and isinstance(self.parsed.lines[0].statement, tree.RowLine):
                end = end.shifted(self.parsed.lines[0].base)
            self._error(
                "one-pattern",
                "the file names no pattern",
                "A source holds exactly one pattern, and this one has no “pattern” line.",
                end,
                'begin the file with pattern "Title of the pattern".',
            )
        for extra in heads[1:]:
            self._error(
                "one-pattern",
                "the file names a second pattern",
                "A source holds exactly one pattern.",
                extra.span,
                "put the second pattern into a file of its own.",
                (Label(heads[0].span, "the first is here"),),
            )

    # --- single lines -------------------------------------------------------------

    def _stitches(self, lines: list[tree.StitchLine]) -> tuple[Stitch, ...]:
        self._twice("stitch", [line.name for line in lines])
        made: list[Stitch] = []
        for line in lines:
            if line.takes is None or line.makes is None:
                self._error(
                    "line-unclear",
                    "the stitch does not say what it takes and makes",
                    f"“{line.name.text}” needs both: how many stitches it takes from the left "
                    "needle and how many it makes on the right one.",
                    line.span,
                    'write stitch mb "make bobble": takes 1, makes 1, "how it is worked".',
                )
            takes = line.takes.values[0] if line.takes else 1
            makes = line.makes.values[0] if line.makes else 1
            text = line.text.text if line.text else line.name.text
            how = f"{text}: {line.how.text}" if line.how else text
            yarn = line.eats if line.eats is not None else float(max(takes, makes, 1))
            made.append(
                Stitch(
                    line.name.key,
                    takes,
                    makes,
                    "own",
                    line.name.text,
                    how,
                    yarn,
                    "declared in the pattern",
                    line.span,
                )
            )
        return tuple(made)

    def _twice(self, kind: str, names: list[tree.Name]) -> None:
        seen: dict[str, tree.Name] = {}
        for name in names:
            first = seen.setdefault(name.key, name)
            if first is not name:
                self._error(
                    "name-twice",
                    f"two {kind}s have the name “{name.text}”",
                    f"Each {kind} needs a name of its own; the first one counts.",
                    name.span,
                    "give one of them another name.",
                    (Label(first.span, "the first is here"),),
                )

    def _yarn(self, line: tree.YarnLine) -> Yarn:
        grams = next((q.grams() for q in line.quantities if q.is_weight), None)
        metres = next((q.metres() for q in line.quantities if q.is_length), None)
        return Yarn(
            line.name,
            line.text,
            grams,
            metres,
            line.weight.values[0] if line.weight else None,
            line.fibre,
            line.span,
        )

    def _refer(self, kind: str, name: tree.Name) -> None:
        self.references.append(Reference(kind, name))

    # --- bodies -------------------------------------------------------------

    def _body(self, body: tree.Body, base: int) -> Body:
        """The looked-up body; equal lines share one. Unknown words are noted at each place."""
        found = self.bodies.get(id(body))
        if found is None:
            found = self._look_up(body)
            self.bodies[id(body)] = found
        for text, span in self.unknown_in.get(id(body), ()):
            self.unknown[UnknownWord(text, span.shifted(base))] = None
        return found

    def _look_up(self, body: tree.Body) -> Body:
        if isinstance(body, tree.Whole):
            letter = "k" if body.word == "knit" else "p"
            found = self.dictionary.find(letter)
            assert found is not None
            one = Stitches(found.stitch, (1,), (), body.span)
            return Body((Fill((one,), body.span),), letter, body.span, False)
        if isinstance(body, tree.AsRow):  # resolved by the block, which knows its rows
            return _NOT_A_ROW
        unknown: list[tuple[str, Span]] = []
        steps = tuple(self._step(step, unknown) for step in body.steps)
        if unknown:
            self.unknown_in[id(body)] = tuple(unknown)
        return Body(steps, None, body.span, bool(unknown))

    def _step(self, node: tree.Node, unknown: list[tuple[str, Span]]) -> Step:
        if isinstance(node, tree.Word):
            known = self.stitches.get(id(node))
            if known is not None:
                return known
            found = self.dictionary.find(node.text)
            if found is None:
                unknown.append((node.text, Span(node.span.start, node.span.start + len(node.text))))
                return Stitches(_UNKNOWN, (1,), node.modifiers, node.span)
            made = Stitches(found.stitch, found.count, node.modifiers, node.span)
            self.stitches[id(node)] = made
            return made
        if isinstance(node, tree.Special):
            return node
        if isinstance(node, tree.EvenlyOf):
            return self._evenly(node, unknown)
        steps = tuple(self._step(step, unknown) for step in node.steps)
        if isinstance(node, tree.FillOf):
            return Fill(steps, node.span)
        return Group(steps, node.times, node.into, node.span)

    def _evenly(self, node: tree.EvenlyOf, unknown: list[tuple[str, Span]]) -> Evenly:
        one = self._step(node.word, unknown)
        assert isinstance(one, Stitches)
        # The stitches between are purled where the change itself is a purl, else knit.
        found = self.dictionary.find("p" if is_purled(one.stitch) else "k")
        assert found is not None
        plain = Stitches(found.stitch, (1,), (), node.word.span)
        if one.stitch.kind == "marker":
            self._error(
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

    # --- motifs -------------------------------------------------------------

    def _edge(self, lines: list[tree.Placed]) -> Edge | None:
        edges = [p.statement for p in lines if isinstance(p.statement, tree.EdgeLine)]
        return Edge(edges[0].count, edges[0].kind.key, edges[0].span) if edges else None

    def _motif(self, head: tree.MotifLine, lines: list[tree.Placed]) -> Motif:
        given: dict[int, tree.Placed] = {}
        free = Free()
        every: list[tree.Placed] = []
        clashes: list[tuple[int, Span, Span]] = []
        for placed in lines:
            node = placed.statement
            if not isinstance(node, tree.RowLine):
                continue
            if node.strand:
                self._refer("strand", _shift_name(node.strand, placed.base))
            if node.every is not None:
                every.append(placed)
                continue
            if not node.numbers:
                self._error(
                    "line-unclear",
                    "the row has no number",
                    "Inside a motif every row says which one it is.",
                    node.span.shifted(placed.base),
                    "write “row 1: …”, or “every ws row: …”.",
                )
                continue
            for part in node.numbers:
                low, high = part.first.values[0], part.last.values[0]
                if high > MAX_MOTIF_ROWS or low < 1 or high < low:
                    self._bad_numbers(part, placed.base, low, high)
                    continue
                number = free.at_or_above(low)
                taken = low if number > low else None
                while number <= high:
                    given[number] = placed
                    after = number + 1
                    number = free.take(number)
                    if taken is None and after < number and after <= high:
                        taken = after
                if taken is not None:
                    old = given[taken]
                    clashes.append(
                        (
                            taken,
                            node.span.shifted(placed.base),
                            old.statement.span.shifted(old.base),
                        )
                    )
        in_round = head.in_round or any(
            isinstance(p.statement, tree.RowLine) and p.statement.round for p in lines
        )
        last = self._last_row(given, every, head.starts_ws)
        chosen: dict[int, tree.Placed] = dict(given)
        for number in range(1, last + 1):
            if number not in chosen:
                line = _every_for(number, every, head.starts_ws)
                if line is not None:
                    chosen[number] = line
        missing = tuple(n for n in range(1, last + 1) if n not in chosen)
        nameless = any(
            isinstance(p.statement, tree.RowLine)
            and not p.statement.numbers
            and p.statement.every is None
            for p in lines
        )
        if missing and not nameless:
            self.gaps.append(RowGap(head.name, missing, last, head.span))
        followed: _Followed = {}
        rows = tuple(self._motif_row(n, chosen, head, followed) for n in sorted(chosen))
        if not any(isinstance(p.statement, tree.RowLine) for p in lines):
            self._error(
                "row-missing",
                f"the motif “{head.name.text}” has no rows",
                "A motif is made of its rows, and none stands under this line.",
                head.span,
                "write “row 1: …” under it.",
            )
        motif = Motif(
            head.name, head.form, head.starts_ws, in_round, self._edge(lines), rows, head.span
        )
        self.clashes += [RowClash(motif, n, again, first) for n, again, first in clashes]
        return motif

    def _bad_numbers(self, part: tree.RowSpan, base: int, low: int, high: int) -> None:
        span = part.span.shifted(base)
        if high > MAX_MOTIF_ROWS:
            self._error(
                "number-too-big",
                "the motif has too many rows",
                f"Row {high:,} is asked for; a motif may have {MAX_MOTIF_ROWS:,} rows.",
                span,
                "let the piece repeat a shorter motif: “work NAME x8”.",
            )
        else:
            self._error(
                "line-unclear",
                "these row numbers cannot be",
                f"Rows are counted from 1 upwards, and this says {low} to {high}.",
                span,
            )

    def _last_row(
        self, given: dict[int, tree.Placed], every: list[tree.Placed], starts_ws: bool
    ) -> int:
        last = max(given, default=0)
        if last == 0:
            wanted = [n for n in (1, 2) if _every_for(n, every, starts_ws)]
            alone = all(getattr(p.statement, "every", None) == "all" for p in every)
            return min(len(wanted), 1) if alone else max(wanted, default=0)
        # An every-line also closes the motif: rows 1, 3, 5 and every ws row make six rows.
        if last % 2 == 1:
            line = _every_for(last + 1, every, starts_ws)
            node = line.statement if line is not None else None
            if isinstance(node, tree.RowLine) and node.every != "all":
                return last + 1
        return last

    def _followed(self, number: int, chosen: dict[int, tree.Placed], known: _Followed) -> _End:
        """The body at the end of a chain of ``as row`` with the base of its line, or the link
        that leads nowhere (no such row, or one of the chain again). `known` keeps the ends, so
        that each row of a motif is passed once."""
        path: list[int] = []
        place: dict[int, int] = {}
        at = number
        while at not in known:
            node = chosen[at].statement
            assert isinstance(node, tree.RowLine)
            body = node.body
            if not isinstance(body, tree.AsRow):
                known[at] = (body, chosen[at].base)
            elif body.number not in chosen:
                known[at] = body
            elif body.number in place or body.number == at:
                path.append(at)
                ring = path[place.get(body.number, len(path) - 1) :]
                for one, before in zip(ring, [*ring[-1:], *ring[:-1]], strict=True):
                    link = chosen[before].statement
                    assert isinstance(link, tree.RowLine) and isinstance(link.body, tree.AsRow)
                    known[one] = link.body
                at = ring[0]
            else:
                place[at] = len(path)
                path.append(at)
                at = body.number
        for one in path:
            known.setdefault(one, known[at])
        return known[number]

    def _motif_row(
        self,
        number: int,
        chosen: dict[int, tree.Placed],
        head: tree.MotifLine,
        followed: _Followed,
    ) -> Row:
        placed = chosen[number]
        node = placed.statement
        assert isinstance(node, tree.RowLine)
        body, body_base, as_row = node.body, placed.base, None
        if isinstance(body, tree.AsRow):
            as_row = body.number
            found = self._followed(number, chosen, followed)
            if isinstance(found, tree.AsRow):
                self._no_such_row(found, placed.base, head.name.text)
                return self._row(number, placed, _NOT_A_ROW, placed.base, as_row)
            body, body_base = found
        words = self._body(body, placed.base) if as_row is None else self._body(body, body_base)
        return self._row(number, placed, words, body_base, as_row)

    def _no_such_row(self, body: tree.AsRow, base: int, name: str) -> None:
        self._error(
            "unknown-name",
            f"there is no row {body.number} to follow",
            f"“{name}” gives no row {body.number} with stitches of its own that this row could "
            "be worked as.",
            body.span.shifted(base),
            "name a row of the same block, or write the stitches out.",
        )

    def _row(
        self, number: int, placed: tree.Placed, body: Body, body_base: int, as_row: int | None
    ) -> Row:
        node = placed.statement
        assert isinstance(node, tree.RowLine)
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

    # --- pieces -------------------------------------------------------------

    def _piece(
        self, head: tree.PieceLine, lines: list[tree.Placed], motifs: dict[str, Motif]
    ) -> Piece:
        items: list[Item] = []
        measures: dict[str, Any] = {}
        numbered: dict[int, tuple[Body, int]] = {}
        at: int | None = 1  # the running row number, while it is the same in every size
        for placed in lines:
            node = placed.statement
            if isinstance(node, tree.MeasureLine):
                measures.setdefault(node.kind, node.quantity)
            elif isinstance(node, tree.RowLine):
                item, at = self._piece_row(placed, node, numbered, at, head.name.text)
                if item is not None:
                    items.append(item)
            elif isinstance(node, tree.WorkLine):
                self._refer("motif", node.motif)
                if isinstance(node.amount, tree.UntilSpent):
                    self._refer("strand", node.amount.strand)
                motif = motifs.get(node.motif.key)
                items.append(Work(node.motif, motif, node.amount, node.span, placed.line))
                at = None
            elif isinstance(node, tree.CastOnLine | tree.BindOffLine):
                if node.strand:
                    self._refer("strand", node.strand)
                if isinstance(node, tree.CastOnLine):
                    items.append(CastOn(node.count, node.strand, node.method, node.span, node.more))
                else:
                    items.append(BindOff(node.strand, node.method, node.span))
            elif isinstance(node, tree.SpreadLine):
                self._refer("motif", node.change)
                self._refer("motif", node.plain)
                items.append(
                    Spread(
                        node.change,
                        motifs.get(node.change.key),
                        node.times,
                        node.plain,
                        motifs.get(node.plain.key),
                        node.over,
                        node.span,
                        placed.line,
                    )
                )
                at = None
            elif isinstance(node, tree.TextLine):
                items.append(Remark(node.kind, node.text, node.span))
            elif isinstance(node, _MOVES):
                items.append(self._move(node))
        return Piece(
            head.name,
            head.in_round,
            head.starts_ws,
            self._edge(lines),
            measures.get("width"),
            measures.get("length"),
            tuple(items),
            head.span,
        )

    def _move(self, node: Any) -> Item:
        """A line that moves stitches between needle, holders and pieces."""
        if isinstance(node, tree.HoldLine):
            return Hold(node.count, node.name, node.span)
        if isinstance(node, tree.TakeLine):
            return Take(node.names, False, node.span)
        if isinstance(node, tree.PickLine):
            if node.strand:
                self._refer("strand", node.strand)
            return PickUp(node.count, node.strand, node.edge, node.span)
        if isinstance(node, tree.LeaveLine):
            return LeaveLive(node.text, node.span) if node.live else LeaveRound(node.span)
        if isinstance(node, tree.BeginLine):
            return BeginRound(node.count, node.span)
        if node.names:
            return Take(node.names, True, node.span)
        return JoinRound(node.span)

    def _piece_row(
        self,
        placed: tree.Placed,
        node: tree.RowLine,
        numbered: dict[int, tuple[Body, int]],
        at: int | None,
        name: str,
    ) -> tuple[PieceRow | None, int | None]:
        if node.strand:
            self._refer("strand", _shift_name(node.strand, placed.base))
        times, first, last = _how_often(node, placed.base)
        body_base, as_row = placed.base, None
        if isinstance(node.body, tree.AsRow):
            as_row = node.body.number
            target = numbered.get(as_row)
            if target is None:
                self._no_such_row(node.body, placed.base, name)
                body = _NOT_A_ROW
            else:
                body, body_base = target
        else:
            body = self._body(node.body, placed.base)
        row = self._row(0, placed, body, body_base, as_row)
        if first is not None:
            at = first.values[0]
        if at is not None:
            numbered.setdefault(at, (body, body_base))
            if times is not None:
                same = len(set(times.values)) == 1
                at = at + times.values[0] if same else None
            elif last is not None:
                at = last.values[0] + 1
        return PieceRow(row, times, first, last, row.place), at

    # --- the whole -------------------------------------------------------------

    def _pattern(
        self,
        heads: list[tree.PatternLine],
        in_pattern: list[tree.Placed],
        singles: list[Any],
        stitches: tuple[Stitch, ...],
        motifs: tuple[Motif, ...],
        pieces: tuple[Piece, ...],
    ) -> Pattern:
        texts: dict[str, list[tree.Text]] = {}
        once: dict[str, Any] = {}
        gauges: list[tree.GaugeLine] = []
        swatches: list[tree.SwatchLine] = []
        needles: list[tree.NeedleLine] = []
        for placed in in_pattern:
            node = placed.statement
            if isinstance(node, tree.TextLine):
                texts.setdefault(node.kind, []).append(node.text)
            elif isinstance(node, tree.MeasureLine):
                self._once(once, node.kind, node.quantity, node.span)
            elif isinstance(node, tree.LevelLine):
                self._level(node)
                self._once(once, "level", node.level, node.span)
            elif isinstance(node, tree.CareLine):
                self._care(node)
                self._once(once, "care", node, node.span)
            elif isinstance(node, tree.SizesLine):
                self._sizes(node)
                self._once(once, "sizes", node.names, node.span)
            elif isinstance(node, tree.GaugeLine):
                gauges.append(node)
            elif isinstance(node, tree.SwatchLine):
                swatches.append(node)
            elif isinstance(node, tree.NeedleLine):
                needles.append(node)
            elif isinstance(node, tree.BoundLine):
                self._once(once, f"bound {node.kind.key}", node, node.span)
            elif isinstance(node, tree.JoinByLine):
                self._join(node)
                self._once(once, "join by", node, node.span)
        yarns = tuple(self._yarn(s) for s in singles if isinstance(s, tree.YarnLine))
        shades = tuple(
            Shade(s.name, s.text, s.yarn, s.colour, s.stripes, s.span)
            for s in singles
            if isinstance(s, tree.ShadeLine)
        )
        strands = tuple(
            Strand(s.name, s.feeds, s.span) for s in singles if isinstance(s, tree.StrandLine)
        )
        for shade in shades:
            self._refer("yarn", shade.yarn)
        for strand in strands:
            for feed in strand.feeds:
                self._refer("shade", feed.shade)
        self._twice("yarn", [y.name for y in yarns])
        self._twice("shade", [s.name for s in shades])
        self._twice("strand", [s.name for s in strands])
        self._twice("motif", [m.name for m in motifs])
        self._twice("piece", [p.name for p in pieces])
        end = len(self.parsed.source.text)
        return Pattern(
            self.parsed.source,
            heads[0].title if heads else None,
            _first(texts.get("designer")),
            _first(texts.get("summary")),
            once.get("level"),
            once.get("sizes", ()),
            once.get("width"),
            once.get("length"),
            tuple(gauges),
            tuple(swatches),
            tuple(needles),
            tuple(texts.get("notion", ())),
            tuple(texts.get("note", ())),
            yarns,
            shades,
            strands,
            stitches,
            motifs,
            pieces,
            tuple(self.references),
            tuple(self.unknown),
            tuple(self.clashes),
            tuple(self.gaps),
            self.parsed.size_lists,
            heads[0].span if heads else Span(0, min(end, 1)),
            bounds=tuple(v for kind, v in once.items() if kind.startswith("bound ")),
            join=once.get("join by"),
            care=once.get("care"),
        )

    def _once(self, once: dict[str, Any], kind: str, value: Any, span: Span) -> None:
        if kind in once:
            self._error(
                "name-twice",
                f"“{kind}” is given twice",
                f"A pattern has one “{kind}” line; the first one counts.",
                span,
                "delete one of the two.",
            )
        else:
            once[kind] = value

    def _join(self, node: tree.JoinByLine) -> None:
        if join_way(node.method.text) is None:
            known = [way.name for way in join_ways()]
            self._error(
                "unknown-name",
                f"there is no join “{node.method.text}”",
                f"Balls are joined by {', '.join(known[:-1])} or {known[-1]}.",
                node.method.span,
                "choose one of them; “tail 18 in” behind it changes how long the ends are.",
            )

    def _care(self, node: tree.CareLine) -> None:
        said: dict[str, tree.Text] = {}
        for part in node.parts:
            found = care_named(part.text)
            if found is None:
                near = nearest(part.text, care_words())
                mine = set(part.text.casefold().split())
                akin = ", ".join(p for p in care_words() if mine & set(p.split()))
                self._error(
                    "unknown-name",
                    f"there is no care “{part.text}”",
                    f"The words for it are: {akin}."
                    if akin
                    else "Each part of the line is a phrase such as “hand wash”, “no bleach”, "
                    "“dry flat”, “iron low” or “no dry cleaning”.",
                    part.span,
                    f"did you mean “{near}”?" if near else "choose among these.",
                )
            elif found.of in said:
                self._error(
                    "name-twice",
                    f"the care says two things of {found.of}",
                    f"“{said[found.of].text}” and “{part.text}” cannot both be followed.",
                    part.span,
                    "keep the gentler of the two.",
                )
            else:
                said[found.of] = part

    def _level(self, node: tree.LevelLine) -> None:
        levels = ("basic", "easy", "intermediate", "complex")
        if node.level.key not in levels:
            self._error(
                "unknown-name",
                f"there is no level “{node.level.text}”",
                "The trade has four levels: basic, easy, intermediate and complex.",
                node.level.span,
                "choose one of the four.",
            )

    def _sizes(self, node: tree.SizesLine) -> None:
        self._twice("size", list(node.names))
        if len(node.names) > MAX_SIZES:
            self._error(
                "number-too-big",
                "the pattern has too many sizes",
                f"{len(node.names)} sizes are named; a pattern may have {MAX_SIZES}.",
                node.span,
                "split the sizes over two files.",
            )


def _first(texts: list[tree.Text] | None) -> tree.Text | None:
    return texts[0] if texts else None


def _shift_name(name: tree.Name, base: int) -> tree.Name:
    return tree.Name(name.text, name.span.shifted(base))


def _every_for(number: int, every: list[tree.Placed], starts_ws: bool) -> tree.Placed | None:
    """The every-line that gives a row: the narrower one where an ``every row`` stands beside."""
    odd = number % 2 == 1
    fits = {"all", "odd" if odd else "even", "rs" if odd != starts_ws else "ws"}
    found: tree.Placed | None = None
    for placed in every:
        node = placed.statement
        if isinstance(node, tree.RowLine) and node.every in fits:
            if node.every != "all":
                return placed
            found = found or placed
    return found


def _how_often(
    node: tree.RowLine, base: int
) -> tuple[tree.Count | None, tree.Count | None, tree.Count | None]:
    """What the numbers of a piece's row line say: how many times, or the first and last row."""
    if not node.numbers:
        return tree.Count((1,), node.span.shifted(base)), None, None
    first, last = node.numbers[0], node.numbers[-1]
    plain = len(node.numbers) == 1 and first.first is first.last
    shifted = tree.Count(first.first.values, first.first.span.shifted(base))
    if plain and node.plural:
        return shifted, None, None
    return None, shifted, tree.Count(last.last.values, last.last.span.shifted(base))
