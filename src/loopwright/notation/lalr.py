"""Reads a line by the grammar's tables: lark's LALR(1) automaton and contextual lexer, run lean.

The tables (`grammars/loop.table`, made by `tables`) hold, one fact a line::

    mark FORMAT LENGTH CHECKSUM        the grammar they were made from
    ends STATE                         where a line is whole; state 0 is where it begins
    ignore REGEXP                      what may stand between tokens
    str NAME WORD | re NAME REGEXP     the terminals, in the order in which they are tried
    unless NAME NAME…                  words that the first terminal's pattern would take as well
    rule LHS SIZE CALLBACK ?|! CHILD…  `?`: a single child stands for the whole; `0+`: the
                                       children of child 0 are taken in its stead
    state SYMBOL=NUMBER…               shift or go to a state, or reduce rule -1 - NUMBER

Everything is decoded when it is first needed, so a short source pays for the states it meets. A
terminal is tried by itself until a state has been met often; then one pattern tries them all.
"""

from __future__ import annotations

import re
from typing import Any

_BUSY = 200
"""Tokens read in a state before a pattern of its own is compiled for it."""

_PASS, _ALL, _PICK, _LIST, _ADD, _MIXED = range(6)

Memo = dict[tuple[int, str], "Token"]


class Token(str):
    """A terminal as read. `node` may keep what a callback made of it, where that is the same
    wherever the token stands in a line."""

    __slots__ = ("end_pos", "node", "start_pos", "type")
    type: str
    start_pos: int
    end_pos: int
    node: Any


def token_of(name: str, text: str, start: int, end: int) -> Token:
    token = Token(text)
    token.type = name
    token.start_pos = start
    token.end_pos = end
    token.node = None
    return token


class Unread(Exception):
    """A line that cannot be read from `start` on (up to `end`, where a token stands there).

    `start` is None where the line ends too soon; `names` are the terminals that could follow.
    """

    def __init__(self, names: set[str], start: int | None, end: int | None) -> None:
        super().__init__("the line cannot be read")
        self.names = names
        self.start = start
        self.end = end


class _State:
    """A state's actions, and how the next token is found in it."""

    __slots__ = ("actions", "fast", "gotos", "met", "names", "terminals", "unless")

    def __init__(self, actions: dict[str, int], tables: Tables) -> None:
        self.actions = actions
        self.gotos: dict[str, int] = {}
        self.met = 0
        self.fast: Any = None
        self.names: tuple[str, ...] = ()
        self.terminals, self.unless = tables.lexing(actions)


class Tables:
    """The tables of a grammar, decoded as far as they are needed."""

    def __init__(self, text: str) -> None:
        self.mark = ""
        self.end = 0
        self.words: dict[str, str] = {}
        self.regexps: dict[str, str] = {}
        self.order: list[str] = []
        self.ignore = ""
        self._unless: dict[str, list[str]] = {}
        self._compiled: dict[str, Any] = {}
        self.rules: list[str] = []
        self.states: list[str] = []
        for line in text.split("\n"):
            kind, _, rest = line.partition(" ")
            if kind == "state":
                self.states.append(rest)
            elif kind == "rule":
                self.rules.append(rest)
            elif kind == "str" or kind == "re":
                name, _, value = rest.partition(" ")
                self.order.append(name)
                (self.words if kind == "str" else self.regexps)[name] = value
            elif kind == "unless":
                name, *others = rest.split(" ")
                self._unless[name] = others
            elif kind == "ends":
                self.end = int(rest)
            elif kind == "ignore":
                self.ignore = rest
            elif kind == "mark":
                self.mark = rest
        self.blanks = re.compile(self.ignore).match

    def actions(self, number: int) -> dict[str, int]:
        """What a state does on each symbol."""
        found: dict[str, int] = {}
        for pair in self.states[number].split():
            symbol, _, value = pair.partition("=")
            found[symbol] = int(value)
        return found

    def lexing(self, allowed: dict[str, int] | None) -> tuple[list[str], dict[str, dict[str, str]]]:
        """The terminals to try, in order, and the words told apart by text (None: all)."""
        names = [n for n in self.order if allowed is None or n in allowed]
        unless: dict[str, dict[str, str]] = {}
        told_apart: set[str] = set()
        for name in names:
            same = [n for n in self._unless.get(name, ()) if allowed is None or n in allowed]
            if same:
                unless[name] = {self.words[n]: n for n in same}
                told_apart.update(same)
        return [n for n in names if n not in told_apart], unless

    def try_one(self, name: str, text: str, at: int) -> int:
        """Where a terminal that begins at a place ends; -1 where it does not stand there."""
        word = self.words.get(name)
        if word is not None:
            return at + len(word) if text.startswith(word, at) else -1
        match = self._compiled.get(name)
        if match is None:
            match = self._compiled[name] = re.compile(self.regexps[name]).match
        found = match(text, at)
        return -1 if found is None else found.end()

    def token_at(
        self, terminals: list[str], unless: dict[str, dict[str, str]], text: str, at: int
    ) -> tuple[str, int]:
        """The first of some terminals that stands at a place, with its end; or ("", -1)."""
        for name in terminals:
            end = self.try_one(name, text, at)
            if end >= 0:
                same = unless.get(name)
                return (same.get(text[at:end], name) if same else name), end
        return "", -1

    def skip(self, text: str, at: int) -> int:
        """Past what may stand between tokens."""
        found = self.blanks(text, at)
        return at if found is None else int(found.end())


class Reader:
    """Reads lines by tables. `maker` has a method for each callback of the rules."""

    def __init__(self, tables: Tables, maker: Any) -> None:
        self.tables = tables
        self._maker = maker
        self._states: list[_State | None] = [None] * len(tables.states)
        self._rules: list[Any] = [None] * len(tables.rules)

    # --- decoding -------------------------------------------------------------

    def _state(self, number: int) -> _State:
        found = self._states[number]
        if found is None:
            found = self._states[number] = _State(self.tables.actions(number), self.tables)
        return found

    def _rule(self, number: int) -> tuple[str, int, int, Any, Any]:
        """(left side, size, how, callback, children) of a rule."""
        left, size_text, name, single, *children = self.tables.rules[number].split(" ")
        size = int(size_text)
        places = tuple(int(child.rstrip("+")) for child in children)
        spread = tuple(child.endswith("+") for child in children)
        made: tuple[str, int, int, Any, Any]
        if single == "?" and len(places) == 1 and not spread[0]:
            made = (left, size, _PASS, None, places[0] - size)
        elif left.startswith("_"):
            if spread == (False,):
                made = (left, size, _LIST, None, places[0] - size)
            elif spread == (True, False) and places[0] == 0:
                made = (left, size, _ADD, None, places[1] - size)
            else:
                raise ValueError(f"rule {left}: no way to gather its children")
        else:
            callback = getattr(self._maker, name)
            if any(spread):
                made = (left, size, _MIXED, callback, tuple(zip(places, spread, strict=True)))
            elif places == tuple(range(size)):
                made = (left, size, _ALL, callback, places)
            else:
                made = (left, size, _PICK, callback, places)
        self._rules[number] = made
        return made

    def _goto(self, number: int, symbol: str) -> int:
        """Where a state goes once `symbol` is read. A state that can only pass its value on is
        left out: where its lookahead is wrong, the next state notices."""
        row = self._state(number)
        left, target = symbol, row.actions[symbol]
        while True:
            reduces = set(self._state(target).actions.values())
            only = reduces.pop() if len(reduces) == 1 else 0
            if only >= 0:
                break
            rule = self._rules[-1 - only] or self._rule(-1 - only)
            if rule[1] != 1 or rule[2] != _PASS:
                break
            left = rule[0]
            target = row.actions[left]
        row.gotos[symbol] = target
        return target

    def _hasten(self, row: _State) -> None:
        """Compile one pattern for all that a state takes."""
        tables = self.tables
        parts = [
            f"({re.escape(tables.words[n]) if n in tables.words else tables.regexps[n]})"
            for n in row.terminals
        ]
        row.names = ("", *row.terminals)
        row.fast = re.compile(f"(?:{tables.ignore})?(?:{'|'.join(parts)})").match

    # --- reading -------------------------------------------------------------

    def parse(self, text: str, memo: Memo | None = None) -> Any:
        """What the callbacks made of a line. Raises Unread.

        `memo` keeps tokens by place and text, for lines whose spans count from their start.
        """
        states, rules, end_state = self._states, self._rules, self.tables.end
        stack = [0]
        values: list[Any] = []
        row = states[0] or self._state(0)
        at, length = 0, len(text)
        while True:
            # The next token, by the state that is reached.
            name, start, end = "$END", length, length
            if at < length:
                fast = row.fast
                if fast is not None:
                    found = fast(text, at)
                    if found is not None:
                        index = found.lastindex
                        name = row.names[index]
                        start, end = found.span(index)
                        if name in row.unless:
                            name = row.unless[name].get(text[start:end], name)
                    elif self.tables.skip(text, at) < length:
                        raise self.explain(text)
                else:
                    row.met += 1
                    if row.met > _BUSY and row.terminals:
                        self._hasten(row)
                    start = self.tables.skip(text, at)
                    if start < length:
                        name, end = self.tables.token_at(row.terminals, row.unless, text, start)
                        if end < 0:
                            raise self.explain(text)
            # Reduce what it closes.
            action = row.actions.get(name)
            while action is not None and action < 0:
                left, size, how, callback, kids = rules[-1 - action] or self._rule(-1 - action)
                if how == _PASS:
                    value = values[kids]
                elif how == _ADD:
                    value = values[-size]
                    value.append(values[kids])
                elif how == _LIST:
                    value = [values[kids]]
                elif how == _ALL:
                    value = callback(*values[-size:])
                else:
                    inner = values[-size:]
                    if how == _PICK:
                        value = callback(*[inner[kid] for kid in kids])
                    else:
                        spread: list[Any] = []
                        for kid, many in kids:
                            if many:
                                spread += inner[kid]
                            else:
                                spread.append(inner[kid])
                        value = callback(*spread)
                del values[-size:]
                del stack[-size:]
                values.append(value)
                before = stack[-1]
                place = states[before].gotos.get(left)  # type: ignore[union-attr]
                if place is None:
                    place = self._goto(before, left)
                stack.append(place)
                if name == "$END" and place == end_state:
                    return values[-1]
                row = states[place] or self._state(place)
                action = row.actions.get(name)
            if action is None or name == "$END":
                raise self.explain(text)
            # Shift it.
            stack.append(action)
            row = states[action] or self._state(action)
            at = end
            if name[0] == "_":
                values.append(None)
            elif memo is None:
                values.append(token_of(name, text[start:end], start, end))
            else:
                key = (start, text[start:end])
                token = memo.get(key)
                if token is None or token.type != name:
                    token = memo[key] = token_of(name, key[1], start, end)
                values.append(token)

    def tokens(self, text: str) -> list[Token]:
        """The tokens of a line. Raises Unread for a line that cannot be read."""
        found: list[Token] = []
        trouble = self._plain(text, found)
        if trouble is not None:
            raise trouble
        return found

    # --- what could stand there -------------------------------------------------------------

    def explain(self, text: str) -> Unread:
        """Why a line that cannot be read cannot."""
        trouble = self._plain(text, [])
        assert trouble is not None
        return trouble

    def accepts(self, stack: list[int]) -> set[str]:
        """The terminals that can follow, all reductions before them done."""
        row = self._state(stack[-1])
        return {name for name in row.actions if name.isupper() and self._feed([*stack], name)}

    def _feed(self, stack: list[int], name: str) -> bool:
        """Reduce and shift one terminal without values; False where it cannot follow."""
        while True:
            action = self._state(stack[-1]).actions.get(name)
            if action is None:
                return False
            if action >= 0:
                stack.append(action)
                return True
            left, size, *_ = self._rules[-1 - action] or self._rule(-1 - action)
            del stack[-size:]
            stack.append(self._state(stack[-1]).actions[left])
            if name == "$END" and stack[-1] == self.tables.end:
                return True

    def _plain(self, text: str, found: list[Token]) -> Unread | None:
        """Read a line step by step without callbacks; gives what stops it."""
        tables = self.tables
        stack = [0]
        at = 0
        while True:
            row = self._state(stack[-1])
            start = tables.skip(text, at)
            if start >= len(text):
                return None if self._feed(stack, "$END") else self._stopped(stack, None, None)
            name, end = tables.token_at(row.terminals, row.unless, text, start)
            if end < 0:
                # Another place could take it, or nothing at all.
                name, end = tables.token_at(*tables.lexing(None), text, start)
                allowed = set(row.terminals) or {"<END-OF-FILE>"}
                if end < 0:
                    return Unread(allowed, start, None)
                return Unread(self.accepts(stack) or allowed, start, end)
            if not self._feed(stack, name):
                return self._stopped(stack, start, end)
            found.append(token_of(name, text[start:end], start, end))
            at = end

    def _stopped(self, stack: list[int], start: int | None, end: int | None) -> Unread:
        expected = {name for name in self._state(stack[-1]).actions if name.isupper()}
        return Unread(self.accepts(stack) or expected, start, end)
