"""The page as it is set on paper: one page that needs nothing but itself."""

from __future__ import annotations

from functools import cache
from typing import TYPE_CHECKING

from loopwright.edition.render import clean, environment, headings, template_folder

if TYPE_CHECKING:
    from markupsafe import Markup

    from loopwright.edition.document import Document


@cache
def style() -> Markup:
    """The package's own style sheet. It is trusted; no text of a pattern ever goes into it."""
    from markupsafe import Markup

    return Markup((template_folder() / "pattern.css").read_text(encoding="utf-8"))


def render_html(doc: Document) -> str:
    """The whole pattern as one self-contained page: no script, no request, light and dark.

    Every string of `doc` is escaped. Set on paper it is the PDF edition; `edition.web` adds the
    switches to it that a screen can have.
    """
    shown, heading = clean(doc), headings(doc.catalogue)
    body = environment().get_template("parts.html").render(doc=shown, heading=heading, web=False)
    from markupsafe import Markup

    template = environment().get_template("pattern.html")
    return template.render(doc=shown, heading=heading, css=style(), web=None, main=Markup(body))
