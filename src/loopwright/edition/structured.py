"""The pattern as structured data for search engines: a schema.org HowTo, as JSON-LD.

Types and properties are those of schema.org (HowTo, HowToSection, HowToStep, HowToSupply,
HowToTool, Person); nothing is said here that the page does not say.
"""

from __future__ import annotations

from typing import Any

from loopwright.edition.document import Document, Section


def structured(doc: Document, version: str) -> dict[str, Any]:
    """The document as a JSON-LD object. Empty properties are left out."""
    supplies = [
        {
            "@type": "HowToSupply",
            "name": _joined(shade.name, shade.yarn, ", "),
            **_much(shade.amount),
        }
        for shade in doc.shades
    ] or [{"@type": "HowToSupply", "name": yarn} for yarn in doc.yarns]
    tools = [{"@type": "HowToTool", "name": name} for name in (*doc.needles, *doc.notions)]
    facts = {
        "@context": "https://schema.org",
        "@type": "HowTo",
        "name": doc.title,
        "description": doc.summary,
        "author": {"@type": "Person", "name": doc.designer} if doc.designer else None,
        "inLanguage": doc.language,
        "educationalLevel": doc.level,
        "size": ", ".join(doc.sizes),
        "version": version,
        "supply": supplies,
        "tool": tools,
        "step": [_section(section) for section in doc.sections if section.lines],
    }
    return {key: value for key, value in facts.items() if value}


def _joined(first: str, second: str, apart: str) -> str:
    return apart.join(part for part in (first, second) if part)


def _much(amount: str) -> dict[str, str]:
    return {"requiredQuantity": amount} if amount else {}


def _section(section: Section) -> dict[str, Any]:
    steps = []
    for line in section.lines:
        step = {"@type": "HowToStep", "text": _joined(line.text, line.count, " ")}
        if line.label:
            step["name"] = line.label.rstrip(":. \u202f\u00a0")
        steps.append(step)
    found: dict[str, Any] = {"@type": "HowToSection", "itemListElement": steps}
    return {**found, "name": section.heading} if section.heading else found
