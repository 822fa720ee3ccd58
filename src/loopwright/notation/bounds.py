"""Every bound a source must keep, in one place. Messages that report one take it from here."""

from __future__ import annotations

MAX_BYTES = 8_000_000
"""Bytes of one source file."""

MAX_LINE = 20_000
"""Characters of one line."""

MAX_NUMBER = 1_000_000_000
"""The largest number that may be written, and the most stitches or rows of one piece."""

MAX_SIZES = 100
"""Sizes of one pattern."""

MAX_NESTING = 16
"""Groups inside groups."""

MAX_MARKERS = 1_000
"""Markers that hang at once."""

MAX_MOTIF_ROWS = 200_000
"""Rows of one motif."""

MAX_NAME = 60
"""Characters of a name."""

MAX_UNCLEAR_LINES = 100
"""Lines that cannot be read before the reader gives up."""

MAX_UNCLEAR_CHARACTERS = 50_000
"""Characters of such lines before the reader gives up."""

MAX_LISTED_ROWS = 1_000_000
"""Rows that `rows` lists for one size of one piece."""

MAX_SPREAD_ROWS = 10_000
"""Rows from one change to the next where changes are spread over rows."""

MAX_GEOMETRIC = 2_000
"""Repeats walked singly where a motif multiplies its stitches instead of adding to them."""
