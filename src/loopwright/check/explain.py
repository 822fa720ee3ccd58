"""What `explain` prints, and the page of all rules: both made from the rules themselves."""

from __future__ import annotations

import textwrap

from loopwright.check.registry import all_rules
from loopwright.check.rule import Rule
from loopwright.notation.hidden import visible


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
        + f"\n\nwrong:\n\n{textwrap.indent(visible(rule.wrong), '    ')}"
        + f"\nright:\n\n{textwrap.indent(visible(rule.right), '    ')}"
    )


def rules_page() -> str:
    """The documentation page of all rules, in Markdown."""
    parts = [
        "# The rules\n\nMade from the rules themselves by `make docs`; edit a rule's own file "
        "under `src/loopwright/check/rules/`.\n"
    ]
    for rule in all_rules():
        wrong, right = visible(rule.wrong), visible(rule.right)
        parts.append(
            f"## {rule.name}\n\n*{rule.severity}*: {rule.title}.\n\n"
            + textwrap.fill(rule.what, 100)
            + f"\n\nWrong:\n\n```\n{wrong}```\n\nRight:\n\n```\n{right}```\n"
        )
    return "\n".join(parts)
