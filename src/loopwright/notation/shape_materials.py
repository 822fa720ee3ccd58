"""The blocks of one line, shaped: yarns, shades, strands, stitches of the file."""

from __future__ import annotations

from typing import Any

from loopwright.notation import tree
from loopwright.notation.lalr import Token
from loopwright.notation.quantity import Quantity
from loopwright.notation.shape_values import BALL, Part, Values


class MaterialLines(Values):
    """Callbacks of yarn, shade, strand and stitch lines."""

    def weight(self, word: Token, number: Token) -> Part:
        return Part("weight", self._count(number), self._span(word, number))

    def fibre(self, word: Token, text: Token) -> Part:
        return Part("fibre", self._text(text), self._span(word, text))

    def yarn_line(self, word: Token, name: Token, *rest: Any) -> tree.YarnLine:
        text = self._text(rest[0]) if isinstance(rest[0], Token) else None
        quantities = tuple(part for part in rest if isinstance(part, Quantity))
        for quantity in quantities:
            # The weight of a ball comes first; behind it stands its length.
            self._missing(quantity, BALL, "200 m" if quantity is not quantities[0] else "100 g")
        found = {part.kind: part.value for part in rest if isinstance(part, Part)}
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

    def colour(self, code: Token) -> Part:
        return Part("colour", str(code), self._span(code))

    def stripes(self, word: Token, *stripes: tree.Stripe) -> Part:
        return Part("stripes", stripes, self._span(word, stripes[-1]))

    def shade_line(self, word: Token, name: Token, *rest: Any) -> tree.ShadeLine:
        tokens = [part for part in rest if isinstance(part, Token)]
        text = self._text(tokens[0]) if tokens[0].type == "STRING" else None
        part = rest[-1] if isinstance(rest[-1], Part) else None
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

    def takes(self, word: Token, number: Token) -> Part:
        return Part("takes", self._count(number), self._span(word, number))

    def makes(self, word: Token, number: Token) -> Part:
        return Part("makes", self._count(number), self._span(word, number))

    def eats(self, word: Token, number: Token) -> Part:
        return Part("eats", self._one(number), self._span(word, number))

    def how(self, text: Token) -> Part:
        return Part("how", self._text(text), self._span(text))

    def stitch_line(self, word: Token, name: Token, *rest: Any) -> tree.StitchLine:
        text = self._text(rest[0]) if isinstance(rest[0], Token) else None
        found = {part.kind: part.value for part in rest if isinstance(part, Part)}
        return tree.StitchLine(
            self._name(name),
            text,
            found.get("takes"),
            found.get("makes"),
            found.get("eats"),
            found.get("how"),
            self._span(word, rest[-1]),
        )
