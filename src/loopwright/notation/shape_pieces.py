"""The lines of a piece, shaped: casting on, working, holding, binding off."""

from __future__ import annotations

from typing import Any

from loopwright.notation import tree
from loopwright.notation.lalr import Token
from loopwright.notation.quantity import Quantity
from loopwright.notation.shape_values import Part, Values
from loopwright.notation.source import Span


class PieceLines(Values):
    """Callbacks of the lines that stand in a piece."""

    def piece_line(self, word: Token, name: Token, *parts: Part) -> tree.PieceLine:
        found = {part.kind: part.value for part in parts}
        return tree.PieceLine(
            self._name(name),
            "round" in found,
            found.get("starts") == "ws",
            self._span(word, parts[-1] if parts else name),
        )

    def cast_on_line(self, word: Token, on: Token, *rest: Any) -> tree.CastOnLine:
        count = self._count(rest[0]) if rest[0].type == "NUMBER" else None
        strand = next((part for part in rest if isinstance(part, tree.Name)), None)
        method = next((part.value for part in rest if isinstance(part, Part)), None)
        more = any(isinstance(part, Token) and part.type == "MORE" for part in rest)
        return tree.CastOnLine(count, strand, method, self._span(word, rest[-1]), more)

    def bind_off_line(self, word: Token, *rest: Any) -> tree.BindOffLine:
        strand = next((part for part in rest if isinstance(part, tree.Name)), None)
        method = next((part.value for part in rest if isinstance(part, Part)), None)
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

    def rows_off(self, sign: Token, number: Token) -> Part:
        return Part(
            "rows", (1 if sign == "+" else -1, self._count(number)), self._span(sign, number)
        )

    def measure_off(self, sign: Token, quantity: Quantity) -> Part:
        value = (1 if sign == "+" else -1, self._length(quantity))
        return Part("measure", value, self._span(sign, quantity))

    def to_length(self, word: Token, length: Token, offset: Part | None = None) -> tree.ToLength:
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
        along = next((part for part in rest if isinstance(part, Part)), None)
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
