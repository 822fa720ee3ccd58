"""What the README shows is what the program prints."""

from __future__ import annotations

from pathlib import Path

from loopwright.check.printing import problems_text
from loopwright.compile import check_source
from loopwright.notation.source import Source

ROOT = Path(__file__).parent.parent


def test_the_printed_error_is_true() -> None:
    text = (ROOT / "examples" / "skerry-throw.loop").read_text("utf-8")
    slip = text.replace("k1 sl1 wyif * k2", "k1 sl1 wyif * k3")
    checked = check_source(Source.of("throw.loop", slip))
    assert problems_text(checked.problems, checked.source) in (ROOT / "README.md").read_text(
        "utf-8"
    )
