"""`dataclass`, `field` and `replace` as of `dataclasses`, without its cost at every start.

For a type checker they are those of `dataclasses`; `loopwright.recording` is what runs.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from dataclasses import dataclass, field, replace
else:
    from loopwright.recording import dataclass, field, replace

__all__ = ["dataclass", "field", "replace"]
