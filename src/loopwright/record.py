"""`dataclass`, `field` and `replace` as of `dataclasses`, without its cost at every start, and
`names_of` a value's fields.

For a type checker the three are those of `dataclasses`; `loopwright.recording` is what runs.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from loopwright.recording import names_of

if TYPE_CHECKING:
    from dataclasses import dataclass, field, replace  # noqa: TID251
else:
    from loopwright.recording import dataclass, field, replace

__all__ = ["dataclass", "field", "names_of", "replace"]
