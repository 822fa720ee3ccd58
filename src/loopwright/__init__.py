"""Loopwright compiles a small row language for hand-knitting to a checked stitch model.

The public names: `read` a text, `check` it, `resize` it, `render` it.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

__version__ = "0.1.0"

if TYPE_CHECKING:
    from loopwright.api import check, read, render, resize

__all__ = ["__version__", "check", "read", "render", "resize"]


def __getattr__(name: str) -> Any:
    # Looked up when first used: the command line needs none of them to start.
    if name in ("read", "check", "resize", "render"):
        from loopwright import api

        return getattr(api, name)
    raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
