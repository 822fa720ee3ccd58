"""The lines of the pattern block, shaped: texts, sizes, measures, gauges, needles."""

from __future__ import annotations

from typing import Any

from loopwright.notation import tree
from loopwright.notation.lalr import Token
from loopwright.notation.quantity import LENGTH_MM, Quantity
from loopwright.notation.shape_values import Part, Values
from loopwright.notation.source import Span
from loopwright.problem import ERROR, Edit, Fix, Problem

_THICKEST_MM = 100.0
"""From memory: arms are knitted on, and needles of 50 mm are sold."""


class HeaderLines(Values):
    """Callbacks of the pattern's own lines."""

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

    def on_needle(self, word: Token, quantity: Quantity) -> Part:
        return Part("needle", self._length(quantity), self._span(word, quantity))

    def worked(self, word: Token) -> Part:
        return Part("worked", "round" if word.type == "ROUND" else "flat", self._span(word))

    def blocking(self, when: Token, word: Token) -> Part:
        return Part("blocking", str(when), self._span(when, word))

    def gauge_line(
        self, word: Token, stitches: Token, rows: Token, over: Quantity, *parts: Any
    ) -> tree.GaugeLine:
        found, end = self._labelled(parts, over)
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

    def weighs(self, word: Token, quantity: Quantity) -> Part:
        return Part("weighs", self._weight(quantity), self._span(word, quantity))

    def measures(self, word: Token, width: Token, _x: Token, height: Quantity) -> Part:
        high = self._length(height)
        wide = Quantity(self._floats(width), high.unit, self._span(width))
        return Part("measures", (wide, high), self._span(word, height))

    def swatch_line(self, word: Token, stitches: Token, rows: Token, *parts: Any) -> Any:
        found, end = self._labelled(parts, rows)
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
        quantities = self._thin_first(*quantities)
        return tree.NeedleLine(
            kind,
            quantities[0],
            quantities[1] if len(quantities) > 1 else None,
            self._span(word, rest[-1]),
        )

    def _thin_first(self, size: Quantity, length: Quantity | None = None) -> list[Quantity]:
        """The thickness and the length: a needle is thinner than it is long, and none is thicker
        than a fist. Where the line has it otherwise, what it most likely means is read on."""
        both = [size] if length is None else [size, length]
        if not size.is_length:
            return both
        thick = max(size.values) * LENGTH_MM[size.unit or ""]
        written = self._as_written(size)
        if length is not None and length.is_length:
            if thick < min(length.values) * LENGTH_MM[length.unit or ""]:
                return both
            other = self._as_written(length)
            edits = (Edit(size.span, other), Edit(length.span, written))
            self.problems.append(
                Problem(
                    "line-unclear",
                    ERROR,
                    "the needle is thicker than it is long",
                    f"A needle's thickness stands first, and its length behind it: this one would "
                    f"be {written} thick and {other} long.",
                    self._span(size, length),
                    help=f"write {other} {written}.",
                    fix=Fix("name the thickness first", edits),
                )
            )
            return [length, size]
        if length is None and thick > _THICKEST_MM:
            self._slip(
                "line-unclear",
                "the needle has no thickness",
                f"A needle's thickness stands first, and none is {written} thick.",
                size.span,
                f"name the thickness before the length, as in 4 mm {written}.",
            )
            return [Quantity(size.values, None, size.span)]
        return both

    def _as_written(self, quantity: Quantity) -> str:
        return self.original[quantity.span.start - self.base : quantity.span.end - self.base]

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

    def join_by_line(self, word: Token, by: Part, *rest: Any) -> tree.JoinByLine:
        tail = self._length(rest[-1]) if rest else None
        return tree.JoinByLine(by.value, tail, self._span(word, rest[-1] if rest else by))
