"""The HTML edition for a screen: the page of all sizes, and what its script needs.

Without a script the page is whole: all sizes, both units. With it the maker picks a size and a
unit and follows the rows one by one. The page of a size is the one that would be built for that
size alone; only the lines that differ from the page of all sizes are kept, so a page of many
sizes stays small.
"""

from __future__ import annotations

import json
from base64 import b64encode
from collections.abc import Sequence
from functools import cache
from hashlib import sha256
from typing import TYPE_CHECKING, Any

from loopwright.edition.catalogue import Catalogue
from loopwright.edition.html import style
from loopwright.edition.render import clean, clean_string, environment, headings, template_folder
from loopwright.edition.structured import structured

if TYPE_CHECKING:
    from markupsafe import Markup

    from loopwright.edition.document import Document, FollowStep


@cache
def _script() -> Markup:
    """The package's own script. It is trusted; no text of a pattern ever goes into it."""
    from markupsafe import Markup

    return Markup((template_folder() / "web.js").read_text(encoding="utf-8"))


@cache
def _allowed() -> str:
    """The source expression by which the page's policy allows this script and no other."""
    digest = sha256(str(_script()).encode("utf-8")).digest()
    return f"'sha256-{b64encode(digest).decode('ascii')}'"


def render_page(doc: Document, sizes: Sequence[Document] = ()) -> str:
    """The page: `doc` for all its sizes, `sizes` the document of each in the same order.

    For one size only, `sizes` is empty and `doc` itself is that of the size. No request leaves the
    page; every text of the pattern is escaped, in the markup and in the script's data.
    """
    heading = headings(doc.catalogue)
    body = _body(doc, heading)
    names = [each.sizes[0] for each in sizes]
    lines, ranges = _parted(body, [_body(each, heading) for each in sizes])
    follow = [_follow(each.follow) for each in sizes] or [_follow(doc.follow)]
    words = said(doc.catalogue)
    plan = {
        "lines": lines,
        "sizes": [
            {"name": name, "page": page, "follow": steps}
            for name, page, steps in zip(names or [""], ranges or [[]], follow, strict=True)
        ],
    }
    known = clean_string(f"{doc.title}\n{doc.designer}")
    data = {
        # The same pattern in another edition keeps its name; another text, another version.
        "id": sha256(known.encode("utf-8")).hexdigest()[:12],
        "version": sha256(f"{body}\n{_json(plan)}".encode()).hexdigest()[:12],
        "words": words,
        **plan,
    }
    from markupsafe import Markup

    return (
        environment()
        .get_template("pattern.html")
        .render(
            doc=clean(doc),
            heading=heading,
            css=style(),
            web={
                "css": Markup((template_folder() / "web.css").read_text(encoding="utf-8")),
                "script": _script(),
                "allowed": _allowed(),
                "data": Markup(_json(data)),
                "structured": Markup(_json(structured(clean(doc), str(data["version"])))),
                "names": [clean_string(name) for name in names],
                "words": words,
            },
            main=Markup(body),
        )
    )


def _body(doc: Document, heading: dict[str, str]) -> str:
    """What stands in the page's `<main>`."""
    return (
        environment().get_template("parts.html").render(doc=clean(doc), heading=heading, web=True)
    )


def _parted(base: str, pages: Sequence[str]) -> tuple[list[str], list[list[list[int]]]]:
    """The lines that `base` has not got, and each page as runs of lines: where from, how many.

    Lines are counted through those of `base` and then on through the lines that are given.
    """
    there: dict[str, int] = {}
    for number, line in enumerate(base.split("\n")):
        there.setdefault(line, number)
    first_new = base.count("\n") + 1
    new: list[str] = []
    runs: list[list[list[int]]] = []
    for page in pages:
        mine: list[list[int]] = []
        for line in page.split("\n"):
            at = there.get(line)
            if at is None:
                at = there[line] = first_new + len(new)
                new.append(line)
            if mine and sum(mine[-1]) == at:
                mine[-1][1] += 1
            else:
                mine.append([at, 1])
        runs.append(mine)
    return new, runs


def _follow(steps: Sequence[FollowStep]) -> list[list[Any]]:
    """The steps as the script reads them: times, tick, counted, piece, before, round, rows."""
    return [
        [
            step.times,
            "" if step.tick is None else f"{step.tick[0]}.{step.tick[1]}",
            int(step.counted),
            step.piece,
            step.before,
            int(step.round),
            [[f"{row.section}.{row.line}", row.motif, row.row] for row in step.rows],
        ]
        for step in steps
    ]


def _json(value: Any) -> str:
    """JSON that may stand in a `<script>`: no character of it can end the element."""
    text = json.dumps(value, ensure_ascii=False, separators=(",", ":"))
    for sign in "<>&\u2028\u2029":
        text = text.replace(sign, f"\\u{ord(sign):04x}")
    return text


def said(words: Catalogue) -> dict[str, str]:
    """What the switches and the row counter say. `{…}` stands for a number or a text."""
    text = words.text
    return {
        "switches": text("Size and units"),
        "size": text("Size"),
        "all": text("All sizes"),
        "units": text("Measures"),
        "both": text("Both"),
        "metric": text("Metric"),
        "inches": text("Inches"),
        "start": text("Follow row by row"),
        "kept": text("Your place is kept in this browser, for this pattern only."),
        "lost": text("This browser does not let the page keep your place."),
        "choose": text("Choose your size first."),
        "follow": text("Row by row"),
        "row": text("Row {n} of {all}"),
        "round": text("Round {n} of {all}"),
        "step": text("Before Row {n}"),
        "last": text("After the last row"),
        "repeat": text("repeat {n} of {all}"),
        "times": text("{n} of {all}"),
        "end": text("All is done."),
        "done": text("Done"),
        "back": text("Back"),
        "chart": text("Chart"),
        "close": text("Close"),
        "again": text("Start again"),
        "sure": text("Start again from the first row?"),
        "keys": text("Keys: right arrow for done, left arrow for back."),
        "mark": text("{line}: done"),
        "older": text("The pattern has changed since you were at {place}."),
        "adopt": text("Go on from there"),
        "awake": text("Keep the screen on"),
    }
