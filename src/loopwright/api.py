"""The verbs of the public API, over texts and values; nothing here touches the disk."""

from __future__ import annotations

from collections.abc import Sequence

from loopwright.build import BuildOptions, build_editions
from loopwright.check.checked import Checked
from loopwright.compile import check_source
from loopwright.fit.resize import Wish
from loopwright.fit.resize import resize as resize_checked
from loopwright.notation.source import Source
from loopwright.record import replace


def read(text: str, name: str = "source.loop") -> Source:
    """A source of a text; `name` is what messages call it."""
    return Source.of(name, text)


def check(source: Source | str) -> Checked:
    """Check every rule for every size."""
    return check_source(read(source) if isinstance(source, str) else source)


def resize(
    checked: Checked,
    width: str | None = None,
    length: str | None = None,
    size: str | None = None,
    *,
    gauge: Sequence[str] = (),
    scale: str | None = None,
    add_size: str | None = None,
    only: str | None = None,
) -> Source:
    """A source with the counts for a new width or length (such as ``150cm``), gauge
    (``18 stitches 26 rows = 10 cm``), scale (``80%``) or list of sizes.

    Raises ValueError for what cannot be read, CannotResize where a line stops it.
    """
    wish = Wish.of(
        checked.pattern,
        width,
        length,
        size,
        gauge=gauge,
        scale=scale,
        add_size=add_size,
        only=only,
    )
    return resize_checked(checked, wish, check_source).source


def render(checked: Checked, kind: str = "pdf", options: BuildOptions | None = None) -> bytes:
    """One edition (``pdf``, ``html`` or ``text``) as bytes.

    Raises ValueError where the pattern has errors, OSError where the PDF's native libraries
    are missing.
    """
    chosen = replace(options or BuildOptions(), kinds=(kind,))
    made, failed = build_editions(checked, chosen, "pattern")
    if failed:
        raise OSError(failed[0])
    return made[0][1]
