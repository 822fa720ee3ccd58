"""What every line is made of, as the parser reduces it: names, texts, numbers, quantities."""

from __future__ import annotations

from typing import Any

from loopwright.notation import tree
from loopwright.notation.bounds import MAX_NAME, MAX_NUMBER
from loopwright.notation.lalr import Token
from loopwright.notation.quantity import UNIT_WORDS, Quantity, read_number
from loopwright.notation.source import Span
from loopwright.problem import ERROR, Problem

BALL = "g or oz, and m or yd"
"""The units of what a yarn's ball weighs and how long it is."""
_COULD_BE = {BALL: "grams, metres", "g or oz": "grams, ounces"}
TOO_BIG = f"Loopwright counts up to {MAX_NUMBER:,}."


class Part:
    """A labelled part of a line (``starts ws``, ``weighs 11 g``) on its way to its statement."""

    __slots__ = ("kind", "span", "value")

    def __init__(self, kind: str, value: Any, span: Span) -> None:
        self.kind = kind
        self.value = value
        self.span = span


class Values:
    """The small parts of lines, and what is wrong with them.

    `original` is the line as written (the parser sees it lowered), `base` is added to every
    span, `problems` collects what is wrong with a value whose line is well formed, and
    `size_lists` how many numbers each size list has.
    """

    def __init__(self) -> None:
        self.original = ""
        self.base = 0
        self.problems: list[Problem] = []
        self.size_lists: list[tuple[int, Span]] = []

    def _span(self, first: Any, last: Any = None) -> Span:
        last = first if last is None else last
        return Span(
            first.start_pos + self.base if type(first) is Token else first.span.start,
            last.end_pos + self.base if type(last) is Token else last.span.end,
        )

    def _labelled(self, parts: tuple[Any, ...], end: Any) -> tuple[dict[str, Any], Any]:
        """Labelled parts by their kinds (a bare name is a fabric), and the last one (or `end`)."""
        found: dict[str, Any] = {}
        for end in parts:
            if isinstance(end, tree.Name):
                found["fabric"] = end
            else:
                found[end.kind] = end.value
        return found, end

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
                f"{self._spelled(token)} is more than any knitting needs. {TOO_BIG}",
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
                f"{text} could be {_COULD_BE.get(units, 'centimetres, inches')} or something else: "
                f"a quantity carries its unit ({units}).",
                quantity.span,
                f"write {text} {example.rsplit(maxsplit=1)[-1]}, or another of these units.",
            )

    def _length(self, quantity: Quantity) -> Quantity:
        known = quantity.is_length
        return self._measured(quantity, known, "length", "weight", "cm, mm, in, m or yd", "90 cm")

    def _weight(self, quantity: Quantity) -> Quantity:
        return self._measured(quantity, quantity.is_weight, "weight", "length", "g or oz", "50 g")

    def _measured(
        self, quantity: Quantity, fits: bool, wanted: str, other: str, units: str, example: str
    ) -> Quantity:
        """The quantity, where its unit `fits` what is wanted; else without a unit."""
        self._missing(quantity, units, example)
        if quantity.unit is None or fits:
            return quantity
        self._slip(
            "unit-missing",
            f"a {wanted} is wanted here",
            f"This is a {other} ({quantity.unit}), and the line speaks of a {wanted}.",
            quantity.span,
            f"give it in {units}.",
        )
        return Quantity(quantity.values, None, quantity.span)

    def in_name(self, name: Token) -> tree.Name:
        return self._name(name)

    def by_name(self, word: Token, *names: Token) -> Part:
        span = self._span(names[0], names[-1])
        text = self.original[span.start - self.base : span.end - self.base]
        return Part("by", tree.Text(" ".join(text.split()), span), self._span(word, names[-1]))
