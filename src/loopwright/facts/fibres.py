"""How fibres behave in a cloth, told by the words of a yarn."""

from __future__ import annotations

import re

from loopwright.facts.tables import table


def behaviours(made_of: str) -> tuple[str, ...]:
    """A sentence for each fibre that the words of a yarn name, in the order of the table."""
    return tuple(
        row["line"]
        for row in table("fibres")
        if re.search(rf"\b({row['words']})\b", made_of, re.IGNORECASE)
    )
