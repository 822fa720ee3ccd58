"""Motifs and rows, shaped: their numbers, bodies and claims."""

from __future__ import annotations

import re
from typing import Any

from loopwright.notation import tree
from loopwright.notation.bounds import MAX_NUMBER
from loopwright.notation.lalr import Token
from loopwright.notation.shape_values import TOO_BIG, Part, Values

_LONG_NUMBER = re.compile(r"\d{11}|[2-9]\d{9}|1[0-9]{9}(?<!1000000000)")


class RowLines(Values):
    """Callbacks of motif, edge and row lines, and of the steps in a body."""

    def starts(self, word: Token, side: Token) -> Part:
        return Part("starts", str(side), self._span(word, side))

    def in_round(self, word: Token) -> Part:
        return Part("round", True, self._span(word))

    def in_flat(self, word: Token) -> Part:
        return Part("flat", True, self._span(word))

    def form(self, first: Token, *rest: Token) -> tree.Form:
        span = self._span(first, rest[-1] if rest else None)
        if first.type == "NUMBER":
            return tree.Form(0, self._count(first).values[0], span)
        digits = first[:-1]
        unit = int(digits[:12]) if digits else 1
        if unit > MAX_NUMBER:
            self._slip("number-too-big", "the number is too big", TOO_BIG, span)
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
        found = {part.kind: part.value for part in rest if isinstance(part, Part)}
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
                f"A count in this word is more than any knitting needs. {TOO_BIG}",
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

    def times(self, _x: Token, number: Token) -> Part:
        return Part("times", self._count(number), self._span(_x, number))

    def into(self, number: Token) -> Part:
        return Part("into", self._count(number), self._span(number))

    def group(self, left: Token, inner: tree.Steps, right: Token, *tail: Part) -> tree.GroupOf:
        times = tail[0].value if tail and tail[0].kind == "times" else None
        into = tail[0].value if tail and tail[0].kind == "into" else None
        return tree.GroupOf(inner.steps, times, into, self._span(left, tail[0] if tail else right))

    plain_group = group

    def fill(self, left: Token, inner: tree.Steps, right: Token) -> tree.FillOf:
        return tree.FillOf(inner.steps, self._span(left, right))

    def along(self, _word: Token, name: Token, edge: Token) -> Part:
        return Part("along", self._name(name), self._span(_word, edge))

    def hold_step(self, word: Token, number: Token, _as: Token, name: Token) -> tree.Special:
        span = self._span(word, name)
        return tree.Special("hold", self._count(number), self._name(name), span)

    def take_step(self, word: Token, name: Token) -> tree.Special:
        return tree.Special("take", None, self._name(name), self._span(word, name))

    def pick_step(
        self, word: Token, _up: Token, number: Token, along: Part | None = None
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
