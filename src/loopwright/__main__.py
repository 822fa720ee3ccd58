"""``python -m loopwright``."""

from loopwright.cli import entry

entry()
