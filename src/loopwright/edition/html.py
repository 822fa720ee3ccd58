"""The HTML edition: one page that needs nothing but itself."""

from __future__ import annotations

from functools import cache
from typing import TYPE_CHECKING

from loopwright.edition.render import clean, environment, headings, template_folder

if TYPE_CHECKING:
    from markupsafe import Markup

    from loopwright.edition.document import Document


@cache
def _style() -> Markup:
    """The package's own style sheet. It is trusted; no text of a pattern ever goes into it."""
    from markupsafe import Markup

    return Markup((template_folder() / "pattern.css").read_text(encoding="utf-8"))


def render_html(doc: Document) -> str:
    """The whole pattern as one self-contained page: no script, no request, light and dark.

    Every string of `doc` is escaped. The same page, set on paper, is the PDF edition.
    """
    template = environment().get_template("pattern.html")
    return template.render(doc=clean(doc), heading=headings(doc.catalogue), css=_style())
