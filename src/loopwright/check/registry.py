"""All the rules, found by the files that hold them."""

from __future__ import annotations

import importlib
import pkgutil
from functools import lru_cache

from loopwright.check import rules
from loopwright.check.context import Context
from loopwright.check.rule import Rule
from loopwright.problem import Problem


@lru_cache(maxsize=1)
def all_rules() -> tuple[Rule, ...]:
    """Every rule, by name. A rule is a module of `check.rules` with a ``RULE``."""
    found = [
        importlib.import_module(f"{rules.__name__}.{module.name}").RULE
        for module in pkgutil.iter_modules(rules.__path__)
    ]
    return tuple(sorted(found, key=lambda rule: rule.name))


def rule_named(name: str) -> Rule | None:
    """The rule of that name, or None."""
    return next((rule for rule in all_rules() if rule.name == name), None)


def run_rules(context: Context) -> list[Problem]:
    """The problems of every rule, in no particular order."""
    return [problem for rule in all_rules() for problem in rule.check(context)]
