"""Turns what the parser reduces into tree nodes, while it parses."""

from __future__ import annotations

import re
from typing import Any

from loopwright.notation import tree
from loopwright.notation.bounds import MAX_NAME, MAX_NUMBER
from loopwright.notation.lalr import Token
from loopwright.notation.quantity import UNIT_WORDS, Quantity, read_number
from loopwright.notation.source import Span
from loopwright.problem import ERROR, Problem

_LONG_NUMBER = re.compile(r"\d{11}|[2-9]\d{9}|1[0-9]{9}(?<!1000000000)")
_TOO_BIG = f"Loopwright counts up to {MAX_NUMBER:,}."


class _Part:
    """A labelled part of a line (``starts ws``, ``weighs 11 g``) on its way to its statement."""

    __slots__ = ("kind", "span", "value")

    def __init__(self, kind: str, value: Any, span: Span) -> None:
        self.kind = kind
        self.value = value
        self.span = span


class Shaper:
    """The parser's callbacks.

    `original` is the line as written (the parser sees it lowered), `base` is added to every
    span, `problems` collects what is wrong with a value whose line is well formed, and
    `size_lists` how many numbers each size list has.
    """

    def __init__(self) -> None:
        self.original = ""
        self.base = 0
        self.problems: list[Problem] = []
        self.size_lists: list[tuple[int, Span]] = []

    # --- small parts -------------------------------------------------------------

    def _span(self, first: Any, last: Any = None) -> Span:
        last = first if last is None else last
        return Span(
            first.start_pos + self.base if type(first) is Token else first.span.start,
            last.end_pos + self.base if type(last) is Token else last.span.end,
        )

    def _spelled(self, token: Token) -> str:
        return self.original[token.start_pos : token.end_pos]

    def _name(self, token: Token) -> tree.Name:
        name = tree.Name(self._spelled(token), self._span(token))
        if len(name.text) > MAX_NAME:
            self._slip(
                "number-too-big",
                "the name is too long",
                f"This name has {len(name.text)} characters; a name may have {MAX_NAME}.",
                name.span,
                "use a short name and put the long one in double quotes.",
            )
        return name

    def _text(self, token: Token) -> tree.Text:
        return tree.Text(self._spelled(token)[1:-1], self._span(token))

    def _slip(self, rule: str, title: str, message: str, span: Span, help: str = "") -> None:
        self.problems.append(Problem(rule, ERROR, title, message, span, help=help))

    def _floats(self, token: Token) -> tuple[float, ...]:
        values = tuple(read_number(part) for part in token.split("/"))
        if len(values) > 1:
            self.size_lists.append((len(values), self._span(token)))
        if max(values) > MAX_NUMBER:
            self._slip(
                "number-too-big",
                "the number is too big",
                f"{self._spelled(token)} is more than any knitting needs. {_TOO_BIG}",
                self._span(token),
            )
            return tuple(min(value, float(MAX_NUMBER)) for value in values)
        return values

    def _one(self, token: Token) -> float:
        values = self._floats(token)
        if len(values) > 1:
            self._slip(
                "line-unclear",
                "one number is wanted here",
                f"{self._spelled(token)} is a size list, but this number is the same for every "
                "size.",
                self._span(token),
            )
        return values[0]

    def _count(self, token: Token) -> tree.Count:
        if len(token) < 10 and token.isdecimal():
            return tree.Count((int(token),), self._span(token))
        values = self._floats(token)
        if any(value != int(value) for value in values):
            self._slip(
                "line-unclear",
                "a whole number is wanted here",
                f"{self._spelled(token)} is not a whole number, and stitches, rows and repeats "
                "come whole.",
                self._span(token),
            )
        return tree.Count(tuple(int(value) for value in values), self._span(token))

    def quantity(self, number: Token, unit: Token | None = None) -> Quantity:
        word = UNIT_WORDS[unit] if unit is not None else None
        return Quantity(self._floats(number), word, self._span(number, unit or number))

    def _missing(self, quantity: Quantity, units: str, example: str) -> None:
        if quantity.unit is None:
            text = self.original[quantity.span.start - self.base : quantity.span.end - self.base]
            self._slip(
                "unit-missing",
                "the unit is missing",
                f"{text} could be centimetres, inches or something else: a quantity carries its "
                f"unit ({units}).",
                quantity.span,
                f"write {text} {example.rsplit(maxsplit=1)[-1]}, or another of these units.",
            )

    def _length(self, quantity: Quantity) -> Quantity:
        self._missing(quantity, "cm, mm, in, m or yd", "90 cm")
        if quantity.unit is not None and not quantity.is_length:
            self._slip(
                "unit-missing",
                "a length is wanted here",
                f"This is a weight ({quantity.unit}), and the line speaks of a length.",
                quantity.span,
                "give it in cm, mm, in, m or yd.",
            )
            return Quantity(quantity.values, None, quantity.span)
        return quantity

    def _weight(self, quantity: Quantity) -> Quantity:
        self._missing(quantity, "g or oz", "50 g")
        if quantity.unit is not None and not quantity.is_weight:
            self._slip(
                "unit-missing",
                "a weight is wanted here",
                f"This is a length ({quantity.unit}), and the line speaks of a weight.",
                quantity.span,
                "give it in g or oz.",
            )
            return Quantity(quantity.values, None, quantity.span)
        return quantity

    def in_name(self, name: Token) -> tree.Name:
        return self._name(name)

    # --- the pattern -------------------------------------------------------------

    def pattern_line(self, word: Token, title: Token) -> tree.PatternLine:
        return tree.PatternLine(self._text(title), self._span(word, title))

    def text_line(self, word: Token, text: Token) -> tree.TextLine:
        return tree.TextLine(str(word), self._text(text), self._span(word, text))

    def level_line(self, word: Token, name: Token) -> tree.LevelLine:
        return tree.LevelLine(self._name(name), self._span(word, name))

    def care_part(self, *words: Token) -> tree.Text:
        written = self.original[words[0].start_pos : words[-1].end_pos]
        return tree.Text(written, self._span(words[0], words[-1]))

    def care_line(self, word: Token, *parts: tree.Text) -> tree.CareLine:
        return tree.CareLine(parts, self._span(word, parts[-1]))

    def size_name(self, token: Token) -> tree.Name:
        spelled = self._spelled(token)
        return tree.Name(spelled.strip('"'), self._span(token))

    def sizes_line(self, word: Token, *names: tree.Name) -> tree.SizesLine:
        return tree.SizesLine(names, self._span(word, names[-1]))

    def measure_line(self, word: Token, quantity: Quantity) -> tree.MeasureLine:
        return tree.MeasureLine(str(word), self._length(quantity), self._span(word, quantity))

    def on_needle(self, word: Token, quantity: Quantity) -> _Part:
        return _Part("needle", self._length(quantity), self._span(word, quantity))

    def worked(self, word: Token) -> _Part:
        return _Part("worked", "round" if word.type == "ROUND" else "flat", self._span(word))

    def blocking(self, when: Token, word: Token) -> _Part:
        return _Part("blocking", str(when), self._span(when, word))

    def gauge_line(
        self, word: Token, stitches: Token, rows: Token, over: Quantity, *parts: Any
    ) -> tree.GaugeLine:
        found: dict[str, Any] = {}
        end: Any = over
        for part in parts:
            end = part
            if isinstance(part, tree.Name):
                found["fabric"] = part
            else:
                found[part.kind] = part.value
        counted = self._one(stitches), self._one(rows)
        return tree.GaugeLine(
            *counted,
            self._gauged(counted, (stitches, rows), self._length(over)),
            found.get("fabric"),
            found.get("needle"),
            found.get("worked"),
            found.get("blocking"),
            self._span(word, end),
        )

    def _gauged(
        self, counted: tuple[float, float], tokens: tuple[Token, Token], over: Quantity
    ) -> Quantity:
        """The length a gauge is counted over; without a unit where the gauge says nothing."""
        sound = True
        for number, token, what in zip(counted, tokens, ("stitches", "rows"), strict=True):
            if number <= 0:
                sound = self._of_nothing(
                    f"a gauge of {self._spelled(token)} {what}", self._span(token)
                )
        if len(over.values) > 1:
            sound = False
            self._slip(
                "line-unclear",
                "one length is wanted here",
                "A gauge is counted over one length, which is the same for every size.",
                over.span,
                "give the one length, as in = 10 cm.",
            )
        elif over.values[0] <= 0:
            text = self.original[over.span.start - self.base : over.span.end - self.base]
            sound = self._of_nothing(f"a length of {text}", over.span)
        return over if sound else Quantity(over.values[:1], None, over.span)

    def _of_nothing(self, what: str, span: Span) -> bool:
        self._slip(
            "line-unclear",
            "a gauge of nothing",
            f"No measure can be reckoned from {what}.",
            span,
            "count the stitches and rows of a swatch: gauge 20 stitches 28 rows = 10 cm.",
        )
        return False

    def weighs(self, word: Token, quantity: Quantity) -> _Part:
        return _Part("weighs", self._weight(quantity), self._span(word, quantity))

    def measures(self, word: Token, width: Token, _x: Token, height: Quantity) -> _Part:
        high = self._length(height)
        wide = Quantity(self._floats(width), high.unit, self._span(width))
        return _Part("measures", (wide, high), self._span(word, height))

    def swatch_line(self, word: Token, stitches: Token, rows: Token, *parts: Any) -> Any:
        found: dict[str, Any] = {}
        end: Any = rows
        for part in parts:
            end = part
            if isinstance(part, tree.Name):
                found["fabric"] = part
            else:
                found[part.kind] = part.value
        wide, high = found.get("measures", (None, None))
        return tree.SwatchLine(
            self._count(stitches).values[0],
            self._count(rows).values[0],
            found.get("weighs"),
            wide,
            high,
            found.get("fabric"),
            self._span(word, end),
        )

    def needle_line(self, word: Token, *rest: Any) -> tree.NeedleLine:
        kind = self._name(rest[0]) if isinstance(rest[0], Token) else None
        quantities = [self._length(part) for part in rest if isinstance(part, Quantity)]
        return tree.NeedleLine(
            kind,
            quantities[0],
            quantities[1] if len(quantities) > 1 else None,
            self._span(word, quantities[-1]),
        )

    def bound_rows(self, word: Token, kind: Token, number: Token) -> tree.BoundLine:
        return self._bound(word, kind, number, "rows")

    def bound_stitches(self, word: Token, kind: Token, number: Token) -> tree.BoundLine:
        return self._bound(word, kind, number, "stitches")

    def _bound(self, word: Token, kind: Token, number: Token, unit: str) -> tree.BoundLine:
        name = self._name(kind)
        wanted = tree.BOUND_UNITS.get(name.key)
        if wanted is None:
            self._slip(
                "unknown-name",
                f"there is no bound “{name.text}”",
                "A bound is of a slip (rows on end), of a carry (rows up the edge) or of a float "
                "(stitches passed).",
                name.span,
                "write bound slip 4 rows, bound carry 10 rows or bound float 5 stitches.",
            )
        elif wanted != unit:
            self._slip(
                "line-unclear",
                f"this bound counts {wanted}",
                f"A {name.text} is measured in {wanted}, and the line says {unit}.",
                self._span(number),
                f"write bound {name.text} {number} {wanted}.",
            )
        value = self._one(number)
        if value != int(value):
            self._count(number)  # says that it must be whole
        return tree.BoundLine(name, int(value), self._span(word, number))

    # --- materials -------------------------------------------------------------

    def weight(self, word: Token, number: Token) -> _Part:
        return _Part("weight", self._count(number), self._span(word, number))

    def fibre(self, word: Token, text: Token) -> _Part:
        return _Part("fibre", self._text(text), self._span(word, text))

    def yarn_line(self, word: Token, name: Token, *rest: Any) -> tree.YarnLine:
        text = self._text(rest[0]) if isinstance(rest[0], Token) else None
        quantities = tuple(part for part in rest if isinstance(part, Quantity))
        for quantity in quantities:
            self._missing(quantity, "g or oz, and m or yd", "100 g")
        found = {part.kind: part.value for part in rest if isinstance(part, _Part)}
        return tree.YarnLine(
            self._name(name),
            text,
            quantities,
            found.get("weight"),
            found.get("fibre"),
            self._span(word, rest[-1]),
        )

    def stripe(self, colour: Token, length: Quantity) -> tree.Stripe:
        return tree.Stripe(str(colour), self._length(length), self._span(colour, length))

    def colour(self, code: Token) -> _Part:
        return _Part("colour", str(code), self._span(code))

    def stripes(self, word: Token, *stripes: tree.Stripe) -> _Part:
        return _Part("stripes", stripes, self._span(word, stripes[-1]))

    def shade_line(self, word: Token, name: Token, *rest: Any) -> tree.ShadeLine:
        tokens = [part for part in rest if isinstance(part, Token)]
        text = self._text(tokens[0]) if tokens[0].type == "STRING" else None
        part = rest[-1] if isinstance(rest[-1], _Part) else None
        return tree.ShadeLine(
            self._name(name),
            text,
            self._name(tokens[-1]),
            part.value if part is not None and part.kind == "colour" else None,
            part.value if part is not None and part.kind == "stripes" else (),
            self._span(word, rest[-1]),
        )

    def feed(self, *parts: Any) -> tree.Feed:
        rest = list(parts)
        half, amount = False, None
        first = rest[0]
        if isinstance(first, Quantity):
            amount = rest.pop(0)
            self._missing(amount, "g, oz, m or yd", "30 g")
        elif first.type == "HALF":
            half = True
            rest.pop(0)
        balls = self._count(rest[-1]) if len(rest) > 1 else None
        return tree.Feed(self._name(rest[0]), half, amount, balls, self._span(first, parts[-1]))

    def strand_line(self, word: Token, name: Token, *rest: Any) -> tree.StrandLine:
        feeds = tuple(part for part in rest if isinstance(part, tree.Feed))
        return tree.StrandLine(
            self._name(name), feeds, self._span(word, rest[-1] if rest else name)
        )

    def takes(self, word: Token, number: Token) -> _Part:
        return _Part("takes", self._count(number), self._span(word, number))

    def makes(self, word: Token, number: Token) -> _Part:
        return _Part("makes", self._count(number), self._span(word, number))

    def eats(self, word: Token, number: Token) -> _Part:
        return _Part("eats", self._one(number), self._span(word, number))

    def how(self, text: Token) -> _Part:
        return _Part("how", self._text(text), self._span(text))

    def stitch_line(self, word: Token, name: Token, *rest: Any) -> tree.StitchLine:
        text = self._text(rest[0]) if isinstance(rest[0], Token) else None
        found = {part.kind: part.value for part in rest if isinstance(part, _Part)}
        return tree.StitchLine(
            self._name(name),
            text,
            found.get("takes"),
            found.get("makes"),
            found.get("eats"),
            found.get("how"),
            self._span(word, rest[-1]),
        )

    # --- motifs and rows -------------------------------------------------------------

    def starts(self, word: Token, side: Token) -> _Part:
        return _Part("starts", str(side), self._span(word, side))

    def in_round(self, word: Token) -> _Part:
        return _Part("round", True, self._span(word))

    def in_flat(self, word: Token) -> _Part:
        return _Part("flat", True, self._span(word))

    def form(self, first: Token, *rest: Token) -> tree.Form:
        span = self._span(first, rest[-1] if rest else None)
        if first.type == "NUMBER":
            return tree.Form(0, self._count(first).values[0], span)
        digits = first[:-1]
        unit = int(digits[:12]) if digits else 1
        if unit > MAX_NUMBER:
            self._slip("number-too-big", "the number is too big", _TOO_BIG, span)
            unit = MAX_NUMBER
        fixed = 0
        if rest:
            fixed = self._count(rest[1]).values[0]
            if rest[0] != "+":
                fixed = -fixed
        if unit == 0:
            self._slip(
                "line-unclear",
                "the form has no n",
                "0n is nothing, however large n is.",
                span,
                "write the unit before n, as in 2n + 4, or one number for a motif of one count.",
            )
        return tree.Form(unit, fixed, span)

    def motif_line(self, word: Token, name: Token, *rest: Any) -> tree.MotifLine:
        form = next((part for part in rest if isinstance(part, tree.Form)), None)
        found = {part.kind: part.value for part in rest if isinstance(part, _Part)}
        return tree.MotifLine(
            self._name(name),
            form,
            found.get("starts") == "ws",
            "round" in found,
            self._span(word, rest[-1] if rest else name),
        )

    def edge_line(self, word: Token, number: Token, kind: Token) -> tree.EdgeLine:
        return tree.EdgeLine(self._count(number), self._name(kind), self._span(word, kind))

    def row_span(self, first: Token, *rest: Token) -> tree.RowSpan:
        low = self._count(first)
        return tree.RowSpan(
            low,
            self._count(rest[-1]) if rest else low,
            self._span(first, rest[-1] if rest else None),
        )

    def row_numbers(self, *spans: tree.RowSpan) -> tuple[tree.RowSpan, ...]:
        return spans

    def claim(self, arrow: Token, *rest: Token) -> tree.Claim:
        sign = ""
        if len(rest) > 1:
            sign = "+" if rest[0] == "+" else "-"
        return tree.Claim(sign, self._count(rest[-1]), self._span(arrow, rest[-1]))

    def _row(self, word: Token, every: str | None, first: Token, parts: tuple[Any, ...]) -> Any:
        numbers: tuple[tree.RowSpan, ...] = ()
        strand: tree.Name | None = None
        claim: tree.Claim | None = None
        body: Any = None
        for part in parts:
            if isinstance(part, tuple):
                numbers = part
            elif isinstance(part, tree.Name):
                strand = part
            elif isinstance(part, tree.Claim):
                claim = part
            else:
                body = part
        return tree.RowLine(
            word.endswith("s"),
            word.type == "ROUND",
            every,
            numbers,
            strand,
            body,
            claim,
            self._span(first, claim or body),
        )

    def row_line(self, word: Token, *parts: Any) -> tree.RowLine:
        row: tree.RowLine = self._row(word, None, word, parts)
        return row

    def every_line(self, first: Token, *rest: Any) -> tree.RowLine:
        parts = list(rest)
        every = "all"
        if parts[0].type in ("SIDE", "EVEN", "ODD"):
            every = str(parts.pop(0))
        row: tree.RowLine = self._row(parts[0], every, first, tuple(parts[1:]))
        return row

    def whole(self, word: Token) -> tree.Whole:
        return tree.Whole(str(word), self._span(word))

    def as_row(self, word: Token, _row: Token, number: Token) -> tree.AsRow:
        return tree.AsRow(self._count(number).values[0], self._span(word, number))

    def steps(self, *steps: tree.Node) -> tree.Steps:
        return tree.Steps(steps, self._span(steps[0], steps[-1]))

    plain = steps

    def word(self, word: Token, *modifiers: Token) -> tree.Word:
        if not modifiers and word.node is not None:
            kept: tree.Word = word.node
            return kept
        if _LONG_NUMBER.search(word):
            self._slip(
                "number-too-big",
                "the number is too big",
                f"A count in this word is more than any knitting needs. {_TOO_BIG}",
                self._span(word),
            )
            return tree.Word("k", (), self._span(word))
        if "/" in word:
            self.size_lists.append((word.count("/") + 1, self._span(word)))
        elif not modifiers:
            word.node = made = tree.Word(str(word), (), self._span(word))
            return made
        return tree.Word(
            str(word),
            tuple(map(str, modifiers)),
            self._span(word, modifiers[-1] if modifiers else None),
        )

    def times(self, _x: Token, number: Token) -> _Part:
        return _Part("times", self._count(number), self._span(_x, number))

    def into(self, number: Token) -> _Part:
        return _Part("into", self._count(number), self._span(number))

    def group(self, left: Token, inner: tree.Steps, right: Token, *tail: _Part) -> tree.GroupOf:
        times = tail[0].value if tail and tail[0].kind == "times" else None
        into = tail[0].value if tail and tail[0].kind == "into" else None
        return tree.GroupOf(inner.steps, times, into, self._span(left, tail[0] if tail else right))

    plain_group = group

    def fill(self, left: Token, inner: tree.Steps, right: Token) -> tree.FillOf:
        return tree.FillOf(inner.steps, self._span(left, right))

    def along(self, _word: Token, name: Token, edge: Token) -> _Part:
        return _Part("along", self._name(name), self._span(_word, edge))

    def hold_step(self, word: Token, number: Token, _as: Token, name: Token) -> tree.Special:
        span = self._span(word, name)
        return tree.Special("hold", self._count(number), self._name(name), span)

    def take_step(self, word: Token, name: Token) -> tree.Special:
        return tree.Special("take", None, self._name(name), self._span(word, name))

    def pick_step(
        self, word: Token, _up: Token, number: Token, along: _Part | None = None
    ) -> tree.Special:
        name = along.value if along is not None else None
        return tree.Special("pick", self._count(number), name, self._span(word, along or number))

    def to_last(self, word: Token, _last: Token, number: Token) -> tree.Special:
        return tree.Special("last", self._count(number), None, self._span(word, number))

    def to_before_gap(self, word: Token, number: Token, _before: Token, gap: Token) -> tree.Special:
        return tree.Special("gap", self._count(number), None, self._span(word, gap))

    def to_gap(self, word: Token, gap: Token) -> tree.Special:
        return tree.Special("gap", None, None, self._span(word, gap))

    def evenly(self, spread: Token, word: Token, _x: Token, number: Token) -> tree.EvenlyOf:
        return tree.EvenlyOf(self.word(word), self._count(number), self._span(spread, number))

    # --- pieces -------------------------------------------------------------

    def piece_line(self, word: Token, name: Token, *parts: _Part) -> tree.PieceLine:
        found = {part.kind: part.value for part in parts}
        return tree.PieceLine(
            self._name(name),
            "round" in found,
            found.get("starts") == "ws",
            self._span(word, parts[-1] if parts else name),
        )

    def by_name(self, word: Token, *names: Token) -> _Part:
        span = self._span(names[0], names[-1])
        text = self.original[span.start - self.base : span.end - self.base]
        return _Part("by", tree.Text(" ".join(text.split()), span), self._span(word, names[-1]))

    def cast_on_line(self, word: Token, on: Token, *rest: Any) -> tree.CastOnLine:
        count = self._count(rest[0]) if rest[0].type == "NUMBER" else None
        strand = next((part for part in rest if isinstance(part, tree.Name)), None)
        method = next((part.value for part in rest if isinstance(part, _Part)), None)
        more = any(isinstance(part, Token) and part.type == "MORE" for part in rest)
        return tree.CastOnLine(count, strand, method, self._span(word, rest[-1]), more)

    def bind_off_line(self, word: Token, *rest: Any) -> tree.BindOffLine:
        strand = next((part for part in rest if isinstance(part, tree.Name)), None)
        method = next((part.value for part in rest if isinstance(part, _Part)), None)
        span = (
            self._span(word, rest[-1])
            if rest
            else Span(self.base + word.start_pos, self.base + len(self.original.rstrip()))
        )
        return tree.BindOffLine(strand, method, span)

    def repeats(self, x: Token, number: Token) -> tree.Times:
        return tree.Times(self._count(number), self._span(x, number))

    def for_rows(self, word: Token, number: Token) -> tree.ForRows:
        return tree.ForRows(self._count(number), self._span(word, number))

    def to_measure(self, word: Token, quantity: Quantity) -> tree.ToLength:
        return tree.ToLength(self._length(quantity), 1, None, None, self._span(word, quantity))

    def rows_off(self, sign: Token, number: Token) -> _Part:
        return _Part(
            "rows", (1 if sign == "+" else -1, self._count(number)), self._span(sign, number)
        )

    def measure_off(self, sign: Token, quantity: Quantity) -> _Part:
        value = (1 if sign == "+" else -1, self._length(quantity))
        return _Part("measure", value, self._span(sign, quantity))

    def to_length(self, word: Token, length: Token, offset: _Part | None = None) -> tree.ToLength:
        span = self._span(word, offset or length)
        if offset is None:
            return tree.ToLength(None, 1, None, None, span)
        sign, value = offset.value
        if offset.kind == "rows":
            return tree.ToLength(None, sign, value, None, span)
        return tree.ToLength(None, sign, None, value, span)

    def until_stitches(self, word: Token, number: Token) -> tree.UntilStitches:
        return tree.UntilStitches(self._count(number), self._span(word, number))

    def until_spent(
        self, word: Token, strand: Token, _is: Token, spent: Token, *rest: Token
    ) -> Any:
        keep = self._count(rest[-1]) if rest else None
        return tree.UntilSpent(
            self._name(strand), keep, self._span(word, rest[-1] if rest else spent)
        )

    def work_line(self, word: Token, motif: Token, amount: tree.Amount) -> tree.WorkLine:
        return tree.WorkLine(self._name(motif), amount, self._span(word, amount))

    def join_by_line(self, word: Token, by: _Part, *rest: Any) -> tree.JoinByLine:
        tail = self._length(rest[-1]) if rest else None
        return tree.JoinByLine(by.value, tail, self._span(word, rest[-1] if rest else by))

    def join_line(self, word: Token, *rest: Token) -> tree.JoinLine:
        names = tuple(self._name(part) for part in rest if part.type == "NAME")
        return tree.JoinLine(names, self._span(word, rest[-1]))

    def hold_line(self, word: Token, what: Token, _as: Token, name: Token) -> tree.HoldLine:
        count = self._count(what) if what.type == "NUMBER" else None
        return tree.HoldLine(count, self._name(name), self._span(word, name))

    def take_line(self, word: Token, *names: Token) -> tree.TakeLine:
        return tree.TakeLine(tuple(map(self._name, names)), self._span(word, names[-1]))

    def pick_line(self, word: Token, _up: Token, number: Token, *rest: Any) -> tree.PickLine:
        strand = next((part for part in rest if isinstance(part, tree.Name)), None)
        along = next((part for part in rest if isinstance(part, _Part)), None)
        return tree.PickLine(
            self._count(number),
            strand,
            along.value if along is not None else None,
            self._span(word, rest[-1] if rest else number),
        )

    def begin_line(
        self, word: Token, _round: Token, _after: Token, number: Token
    ) -> tree.BeginLine:
        return tree.BeginLine(self._count(number), self._span(word, number))

    def leave_line(self, word: Token, what: Token, text: Token | None = None) -> tree.LeaveLine:
        return tree.LeaveLine(
            what.type == "LIVE",
            self._text(text) if text is not None else None,
            self._span(word, text or what),
        )

    def spread_line(
        self, word: Token, change: Token, times: Any, plain: tree.Name, over: Any
    ) -> tree.SpreadLine:
        return tree.SpreadLine(self._name(change), times, plain, over, self._span(word, over))
