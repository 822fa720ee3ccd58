"""Makes the parser's tables from the grammar, as text; `lalr` reads them back.

Done by ``make tables`` when the grammar changes, because building them takes longer than reading
a whole pattern. Only this module needs lark; nothing that reads a source imports it.
"""

from __future__ import annotations

import re
import zlib
from typing import Any

FORMAT = 1
START = "line"
_BLANKS = (" ", "\t", "\u00a0")


def mark_of(grammar: str) -> str:
    """What tells whether tables belong to a grammar: its length and checksum."""
    data = grammar.encode("utf-8")
    return f"{FORMAT} {len(data)} {zlib.crc32(data):08x}"


def lark_parser(grammar: str, transformer: Any = None) -> Any:
    """Lark's own parser of one line: what the tables are made from and are tested against."""
    from lark import Lark

    return Lark(
        grammar, parser="lalr", start=[START], transformer=transformer, maybe_placeholders=False
    )


def make_tables(grammar: str) -> str:
    """The tables of a grammar, one fact a line (the form is told in `lalr`).

    Raises lark's GrammarError for a grammar that is none, ValueError for what `lalr` cannot do.
    """
    from lark.parsers.lalr_analysis import Shift

    parser = lark_parser(grammar)
    inner = parser.parser.parser._parse_table
    lexer = parser.parser.lexer
    out = [f"mark {mark_of(grammar)}"]
    ignored = set(parser.ignore_tokens)
    if len(ignored) != 1:
        raise ValueError("the grammar must ignore exactly one terminal")
    # The root lexer's terminals stand in the order in which any lexer tries them.
    root = lexer.root_lexer
    for terminal in root.terminals:
        regexp = terminal.pattern.to_regexp().replace("\n", "\\n")
        word = terminal.pattern.value if terminal.pattern.type == "str" else ""
        if terminal.name in ignored:
            out.append(f"ignore {regexp}")
            continue
        if re.compile(regexp).groups or terminal.pattern.flags:
            raise ValueError(f"{terminal.name}: no groups and no flags, please")
        if any(re.match(regexp, blank) for blank in _BLANKS):
            raise ValueError(f"{terminal.name} begins with a blank")
        out.append(f"str {terminal.name} {word}" if word else f"re {terminal.name} {regexp}")
    strings = [t for t in root.terminals if t.pattern.type == "str"]
    for terminal in root.terminals:
        if terminal.pattern.type == "re" and terminal.name not in ignored:
            # A word that the pattern would take too is told apart by its text, as lark does.
            same = [
                t.name
                for t in strings
                if t.priority == terminal.priority and _takes_all(terminal, t.pattern.value)
            ]
            if same:
                out.append(f"unless {terminal.name} {' '.join(same)}")
    numbers: dict[Any, int] = {}
    for rule in parser.rules:
        if not rule.expansion:
            raise ValueError(f"{rule.origin.name} may be empty")
        numbers[rule] = len(numbers)
        out.append(_rule_line(rule))
    order = _in_order(inner, Shift)
    for state in order:
        actions = []
        for symbol, (action, value) in _sorted(inner.states[state]):
            target = order[value] if action is Shift else -1 - numbers[value]
            actions.append(f"{symbol}={target}")
        out.append(f"state {' '.join(actions)}")
    out.insert(1, f"ends {order[inner.end_states[START]]}")
    return "\n".join(out) + "\n"


def _in_order(inner: Any, shift: Any) -> dict[int, int]:
    """New numbers for the states, from the start on: lark's own change from run to run."""
    order = {inner.start_states[START]: 0}
    waiting = [inner.start_states[START]]
    for state in waiting:
        for _, (action, value) in _sorted(inner.states[state]):
            if action is shift and value not in order:
                order[value] = len(order)
                waiting.append(value)
    return order


def _sorted(actions: dict[str, Any]) -> list[tuple[str, Any]]:
    return sorted(actions.items(), key=lambda item: item[0])


def _takes_all(terminal: Any, word: str) -> bool:
    found = re.match(terminal.pattern.to_regexp(), word)
    return found is not None and found.group() == word


def _rule_line(rule: Any) -> str:
    """``rule LHS SIZE CALLBACK SINGLE CHILD…``: a child is its place, with + where its own children
    are taken in its stead."""
    options = rule.options
    name = rule.alias or options.template_source or rule.origin.name
    single = "?" if options.expand1 and not rule.alias else "!"
    children = [
        f"{at}{'+' if not symbol.is_term and symbol.name.startswith('_') else ''}"
        for at, symbol in enumerate(rule.expansion)
        if options.keep_all_tokens or not (symbol.is_term and symbol.filter_out)
    ]
    return " ".join(
        ["rule", str(rule.origin.name), str(len(rule.expansion)), str(name), single, *children]
    )
