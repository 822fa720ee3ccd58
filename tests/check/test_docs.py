"""The page of rules is made from the rules."""

from __future__ import annotations

from pathlib import Path

import loopwright.check
from loopwright.check.explain import rules_page


def test_the_page_is_up_to_date() -> None:
    page = Path(loopwright.check.__file__).parent / "RULES.md"
    assert page.read_text("utf-8") == rules_page(), "run “make docs”"
