"""What `explain` prints, and the page of all rules: both made from the rules themselves."""

from __future__ import annotations

import textwrap

from loopwright.check.registry import all_rules
from loopwright.check.rule import Rule


def list_text() -> str:
    """All rules, one a line."""
    rules = all_rules()
    width = max(len(rule.name) for rule in rules) + 2
    lines = [f"{rule.name:<{width}}{rule.severity:<9}{rule.title}" for rule in rules]
    return "\n".join(lines) + "\n\n“loopwright explain RULE” says more.\n"


def explain_text(rule: Rule) -> str:
    """One rule: what it means, a wrong and a right source."""
    return (
        f"{rule.name} ({rule.severity}): {rule.title}\n\n"
        + textwrap.fill(rule.what, 88)
        + f"\n\nwrong:\n\n{textwrap.indent(rule.wrong, '    ')}"
        + f"\nright:\n\n{textwrap.indent(rule.right, '    ')}"
    )


def rules_page() -> str:
    """The documentation page of all rules, in Markdown."""
    parts = [
        "# The rules\n\nMade from the rules themselves by `make docs`; edit a rule's own file "
        "under `src/loopwright/check/rules/`.\n"
    ]
    for rule in all_rules():
        parts.append(
            f"## {rule.name}\n\n*{rule.severity}*: {rule.title}.\n\n"
            + textwrap.fill(rule.what, 100)
            + f"\n\nWrong:\n\n```\n{rule.wrong}```\n\nRight:\n\n```\n{rule.right}```\n"
        )
    return "\n".join(parts)
