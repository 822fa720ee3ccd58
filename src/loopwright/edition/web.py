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
from loopwright.edition.direction import joined
from loopwright.edition.html import body_of, shell_of
from loopwright.edition.render import clean, headings, template_folder
from loopwright.edition.structured import structured

if TYPE_CHECKING:
    from markupsafe import Markup

    from loopwright.edition.document import Document, FollowStep


@cache
def _text_of(file: str) -> Markup:
    """The package's own script or style. It is trusted; no text of a pattern ever goes into it."""
    from markupsafe import Markup

    return Markup((template_folder() / file).read_text(encoding="utf-8"))


@cache
def _allowed() -> Markup:
    """The source expression by which the page's policy allows this script and no other."""
    from markupsafe import Markup

    digest = sha256(_text_of("web.js").encode("utf-8")).digest()
    return Markup(f"'sha256-{b64encode(digest).decode('ascii')}'")


def _digest(text: str) -> str:
    return sha256(text.encode("utf-8")).hexdigest()[:12]


def render_page(doc: Document, sizes: Sequence[Document] = ()) -> str:
    """The page: `doc` for all its sizes, `sizes` the document of each in the same order.

    For one size only, `sizes` is empty and `doc` itself is that of the size. No request leaves the
    page; every text of the pattern is escaped, in the markup and in the script's data.
    """
    heading = headings(doc.catalogue)
    shown, alone = clean(doc), [clean(each) for each in sizes]
    body = body_of(shown, heading, web=True)
    lines, ranges = _parted(body, [body_of(each, heading, web=True) for each in alone])
    names = [each.sizes[0] for each in alone] or [""]
    words = said(doc.catalogue)
    plan = {
        "lines": lines,
        "sizes": [
            {"name": name, "page": page, "follow": _follow(each.follow)}
            for name, page, each in zip(names, ranges or [[]], alone or [shown], strict=True)
        ],
    }
    version = _digest(f"{body}\n{_json(plan)}")
    # The same pattern in another edition keeps its name; another text is another version.
    name = _digest(f"{shown.title}\n{shown.designer}")
    data = {"id": name, "version": version, "words": words, **plan}
    web = {
        "css": _text_of("web.css"),
        "script": _text_of("web.js"),
        "allowed": _allowed(),
        "data": _json(data),
        "structured": _json(_whole(structured(shown, version))),
        "names": names if alone else [],
        "words": words,
    }
    return shell_of(shown, heading, body, web)


def _whole(value: Any) -> Any:
    """The same data with no text set apart in another: nobody shows them as they stand."""
    if isinstance(value, str):
        return joined(value)
    if isinstance(value, list):
        return [_whole(item) for item in value]
    return {k: _whole(v) for k, v in value.items()} if isinstance(value, dict) else value


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
            int(_in_round(steps, at)),
            [[f"{row.section}.{row.line}", row.motif, row.row] for row in step.rows],
        ]
        for at, step in enumerate(steps)
    ]


def _in_round(steps: Sequence[FollowStep], at: int) -> bool:
    """Whether a step is worked in the round; of a step between rows, whether the next row is, or
    behind the last one, whether that was."""
    step = steps[at]
    if step.counted:
        return step.round
    after = (s.round for s in steps[at:] if s.counted and s.piece == step.piece)
    before = (s.round for s in reversed(steps[:at]) if s.counted and s.piece == step.piece)
    return next(after, next(before, False))


def _json(value: Any) -> Markup:
    """JSON that may stand in a `<script>`: no character of it can end the element."""
    from markupsafe import Markup

    text = json.dumps(value, ensure_ascii=False, separators=(",", ":"))
    for sign in "<>&\u2028\u2029":
        text = text.replace(sign, f"\\u{ord(sign):04x}")
    return Markup(text)


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
        "stepRound": text("Before Round {n}"),
        "last": text("After the last row"),
        "lastRound": text("After the last round"),
        "repeat": text("repeat {n} of {all}"),
        "times": text("{n} of {all}"),
        "end": text("All is done."),
        "done": text("Done"),
        "back": text("Back"),
        "chart": text("Chart"),
        "close": text("Close"),
        "again": text("Start again"),
        "sure": text("Start again from the beginning?"),
        "keys": text("Keys: right arrow for done, left arrow for back."),
        "mark": text("{line}: done"),
        "older": text("The pattern has changed since you were at {place}."),
        "adopt": text("Go on from there"),
        "awake": text("Keep the screen on"),
    }
