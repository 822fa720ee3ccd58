"""What the code asks its catalogues for, read out of it without running it."""

from __future__ import annotations

import ast
from collections.abc import Iterator

SINGLE = ("t", "say", "text", "Note")
"""Calls whose first argument is a message."""
PLURAL = ("n", "many")
"""Calls whose first two arguments are a message for one and a message for more."""
AGREED = ("several",)
"""Calls whose first argument is a message that has both forms in other languages only."""


def _strings(node: ast.expr, known: dict[str, list[str]]) -> Iterator[str]:
    """The string, or the strings of a choice, that an argument is."""
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        yield node.value
    elif isinstance(node, ast.IfExp):
        yield from _strings(node.body, known)
        yield from _strings(node.orelse, known)
    elif isinstance(node, ast.Name):
        yield from known.get(node.id, [])


def _assigned(body: list[ast.AST]) -> dict[str, list[str]]:
    """The strings that are given to each name, in order; a name of a pair has its own."""
    found: dict[str, list[str]] = {}
    for node in body:
        if not isinstance(node, ast.Assign):
            continue
        for target in node.targets:
            if isinstance(target, ast.Name):
                found.setdefault(target.id, []).extend(_strings(node.value, {}))
            elif isinstance(target, ast.Tuple) and isinstance(node.value, ast.Tuple):
                for name, value in zip(target.elts, node.value.elts, strict=False):
                    if isinstance(name, ast.Name):
                        found.setdefault(name.id, []).extend(_strings(value, {}))
    return found


def messages_of(tree: ast.Module) -> tuple[set[str], set[tuple[str, str]]]:
    """The messages that a module passes to its catalogue, and its pairs of one and more."""
    single: set[str] = set()
    pairs: set[tuple[str, str]] = set()
    shared = _assigned(list(tree.body))
    functions = [node for node in ast.walk(tree) if isinstance(node, ast.FunctionDef)]
    for scope in [tree, *functions]:
        # In the order of the text, which `ast.walk` does not keep.
        nodes = sorted(
            (node for node in ast.walk(scope) if hasattr(node, "lineno")),
            key=lambda node: (node.lineno, node.col_offset),
        )
        known = {**shared, **(_assigned(nodes) if scope is not tree else {})}
        for node in nodes:
            if not isinstance(node, ast.Call) or not node.args:
                continue
            called = node.func
            name = called.attr if isinstance(called, ast.Attribute) else getattr(called, "id", "")
            if name in SINGLE:
                single.update(_strings(node.args[0], known))
            elif name in AGREED:
                pairs.update((text, text) for text in _strings(node.args[0], known))
            elif name in PLURAL and len(node.args) > 1:
                one, many = (list(_strings(arg, known)) for arg in node.args[:2])
                assert len(one) == len(many), f"line {node.lineno}: {one} and {many}"
                pairs.update(zip(one, many, strict=True))
    return single, pairs
