"""All the rules, found by the files that hold them."""

from __future__ import annotations

import importlib
from functools import lru_cache
from pathlib import Path

from loopwright.check import rules
from loopwright.check.context import Context
from loopwright.check.rule import Rule
from loopwright.problem import Problem


@lru_cache(maxsize=1)
def all_rules() -> tuple[Rule, ...]:
    """Every rule, by name. A rule is a module of `check.rules` with a ``RULE``."""
    # Not pkgutil, which loads inspect: a tenth of a check's time.
    files = Path(rules.__path__[0]).glob("[!_]*.py")
    found = [importlib.import_module(f"{rules.__name__}.{path.stem}").RULE for path in files]
    return tuple(sorted(found, key=lambda rule: rule.name))


def rule_named(name: str) -> Rule | None:
    """The rule of that name, or None."""
    return next((rule for rule in all_rules() if rule.name == name), None)


def run_rules(context: Context) -> list[Problem]:
    """The problems of every rule, in no particular order."""
    return [problem for rule in all_rules() for problem in rule.check(context)]
