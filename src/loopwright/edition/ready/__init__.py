"""The templates, compiled beforehand by ``make records``; `mark_of` tells whether they still are.

Jinja takes longer to compile the page's template than to fill it. A module here is used only where
its mark is that of the template as it lies in its folder and of the Jinja that runs; otherwise, and
where there is none, Jinja compiles the template as ever.
"""

from __future__ import annotations

from zlib import crc32


def module_of(template: str) -> str:
    """The name of the module of a template, such as ``pattern.html``."""
    return f"{__name__}.{template.replace('.', '_')}"


def mark_of(text: str, jinja: str) -> str:
    """What tells whether compiled code belongs to a template's text and a version of Jinja."""
    data = text.encode("utf-8")
    return f"{jinja} {len(data)} {crc32(data):08x}"
