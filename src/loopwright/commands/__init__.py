"""The commands, one a file: the words of its options, and what it does.

A command's module has `HELP` (a line), `EXAMPLE` (a call), `options(parser)` and `run(args)`,
which gives the exit status. It is imported by `cli.py`, and imports what is heavy only in `run`.
"""

from __future__ import annotations

COMMANDS = (
    "new", "check", "rows", "yarn", "plan", "build", "fit", "resize", "picture", "format",
    "compare", "explain", "doctor",
)  # fmt: skip
"""In the order in which ``--help`` lists them; `COMMAND.py` holds each (`format_.py` format)."""
