"""The page in a real browser: its switches, its row counter, and what it must never do."""

from __future__ import annotations

import re
from collections.abc import Callable
from functools import cache
from pathlib import Path
from typing import Any

import pytest
from shared.editions import EXAMPLES
from shared.editions import text_of as example

from loopwright.build import BuildOptions, build_editions
from loopwright.compile import check_source
from loopwright.notation.source import Source

Open = Callable[..., Any]


@cache
def html_of(text: str, **options: Any) -> str:
    checked = check_source(Source.of("a.loop", text))
    made, failed = build_editions(checked, BuildOptions(kinds=("html",), **options), "a")
    assert not failed
    return made[0][1].decode("utf-8")


THROW = example("skerry-throw")

# What a size's page has of the page built for that size alone: all but the picture of the cloth.
SHOWN = """() => {
  const copy = document.getElementById("pattern").cloneNode(true);
  for (const part of copy.querySelectorAll("#switches, .tick, .cloth")) part.remove();
  return copy.innerHTML.replace(/^\\s*\\n/gm, "");
}"""


def _pick(page: Any, size: int) -> None:
    # Not by force: that would not wait for a page that still scrolls to its row.
    page.locator('input[name="size"]').nth(size).check()


def _visible(page: Any) -> str:
    return str(page.inner_text("main"))


@pytest.mark.parametrize("name", EXAMPLES)
def test_each_size_shows_what_a_page_of_that_size_alone_shows(opened: Open, name: str) -> None:
    text = example(name)
    page = opened(html_of(text))
    names = page.locator('input[name="size"] + span').all_inner_texts()
    whole = page.evaluate(SHOWN)
    alone = None
    for number, size in enumerate(names[1:], 1):
        _pick(page, number)
        alone = opened(html_of(text, size=size), page=alone)
        assert page.evaluate(SHOWN) == alone.evaluate(SHOWN)
    if names:
        _pick(page, 0)
        assert page.evaluate(SHOWN) == whole


def test_a_size_changes_every_number(opened: Open) -> None:
    page = opened(html_of(THROW))
    assert "180 (240, 300) sts" in _visible(page)
    _pick(page, 2)
    shown = _visible(page)
    assert "cast on 240 sts" in shown
    assert "180" not in shown
    assert "300 sts" not in shown
    assert "Rep Rows 3–6, 133 more times" in shown


@pytest.mark.parametrize(
    ("language", "units", "there", "gone"),
    [
        ("en", "metric", " cm", " in"),
        ("en", "inches", " in", " cm"),
        ("fr", "metric", " cm", " po"),
        ("fr", "inches", " po", " cm"),
        ("de", "metric", " cm", " in"),
    ],
)
def test_a_unit_stands_alone(
    opened: Open, language: str, units: str, there: str, gone: str
) -> None:
    page = opened(html_of(THROW, language=language))
    page.locator(f'input[name="units"][value="{units}"]').check(force=True)
    shown = _visible(page)
    figure = r"[0-9½¼¾⅓⅔⅛⅜⅝⅞)]"
    assert re.search(figure + there + r"\b", shown)
    assert not re.search(figure + gone + r"\b", shown)
    # In French “m” is a stitch too.
    weights = "g" if language == "fr" else "m|g"
    other = r"(yd|oz)\b" if units == "metric" else rf"({weights})\b"
    assert not re.search(figure + " " + other, shown)
    # A notice in another language stands in English too, behind a stroke of its own.
    assert not re.search(figure + r"[^/]* / [0-9½¼¾]", shown)
    page.locator('input[name="units"][value="both"]').check(force=True)
    assert "90 cm / 35½ " in _visible(page)


def _start(page: Any, size: int = 2) -> None:
    _pick(page, size)
    page.click("#start")


def test_the_counter_keeps_its_place_across_a_reload(opened: Open) -> None:
    page = opened(html_of(THROW))
    _start(page)
    for _ in range(16):
        page.click("#done")
    where = page.inner_text("#where")
    assert where == "Row 16 of 540 · repeat 3 of 133"
    assert "Row 4 (WS)" in page.inner_text("li.now")
    page.reload()
    assert page.inner_text("#where") == where
    assert page.locator('input[name="size"]').nth(2).is_checked()
    assert "cast on 240 sts" in _visible(page)
    # Each size has a place of its own.
    _pick(page, 1)
    assert page.inner_text("#where") == "Before Row 1"
    _pick(page, 2)
    assert page.inner_text("#where") == where


@pytest.mark.parametrize(
    ("kind", "before", "first", "after"),
    [
        ("flat", "Before Row 1", "Row 1 of 3", "After the last row"),
        ("round", "Before Round 1", "Round 1 of 3", "After the last round"),
    ],
)
def test_steps_between_rounds_are_told_by_rounds(
    opened: Open, kind: str, before: str, first: str, after: str
) -> None:
    rows = "rounds" if kind == "round" else "rows"
    text = f'pattern "P"\npiece p {kind}\n  cast on 20\n  {rows} 3: knit\n  bind off\n'
    page = opened(html_of(text))
    page.click("#start")
    assert page.inner_text("#where") == before
    page.click("#done")
    assert page.inner_text("#where").partition(" ·")[0] == first
    for _ in range(3):
        page.click("#done")
    assert page.inner_text("#where") == after


def test_the_arrows_tick_rows_and_take_them_back(opened: Open) -> None:
    page = opened(html_of(THROW))
    _start(page)
    for _ in range(4):
        page.keyboard.press("ArrowRight")
    assert page.inner_text("#where").startswith("Row 4 of 540")
    assert page.locator("li.done").count() == 3
    page.keyboard.press("ArrowLeft")
    assert page.inner_text("#where").startswith("Row 3 of 540")
    page.keyboard.press("Enter")  # the button for done has the focus
    assert page.inner_text("#where").startswith("Row 4 of 540")


def test_a_tick_goes_to_its_line_and_back(opened: Open) -> None:
    page = opened(html_of(THROW))
    _start(page)
    ticks = page.locator(".tick")
    ticks.nth(3).click()  # cast on, rows 1–2, row 3, row 4
    assert page.inner_text("#where").startswith("Row 5 of 540")
    assert page.locator('.tick[aria-pressed="true"]').count() == 4
    ticks.nth(3).click()
    assert page.inner_text("#where").startswith("Row 4 of 540")
    # The line of the repeat: all of it, and back.
    repeat = page.locator("li.repeat .tick").first
    repeat.click()
    assert page.inner_text("#where").startswith("Row 539 of 540")
    repeat.click()
    assert page.inner_text("#where") == "Row 7 of 540 · repeat 1 of 133"


def test_to_the_end(opened: Open) -> None:
    page = opened(html_of(example("gull-hat")))
    _start(page)
    total = int(page.locator("#progress").get_attribute("max"))
    for _ in range(total):
        page.keyboard.press("ArrowRight")
    assert page.inner_text("#where") == "All is done."
    assert page.locator("#done").is_disabled()
    assert page.locator(".tick").count() == page.locator("li.done").count()


@pytest.mark.parametrize("width", [320, 768, 1280])
def test_the_row_stays_in_view_and_its_chart_row_is_marked(opened: Open, width: int) -> None:
    page = opened(html_of(THROW), width=width, reduced_motion="reduce")
    _start(page)
    for number in range(1, 14):
        page.keyboard.press("ArrowRight")
        line = page.locator("li.now").bounding_box()
        bar = page.locator("#counter").bounding_box()
        assert line["y"] >= 0
        assert line["y"] + line["height"] <= bar["y"] + 1
        marked = page.eval_on_selector_all(
            ".charted .row.now", "all => all.map(e => e.dataset.row)"
        )
        # Rows 1 and 2 are garter; then the four rows of the motif again and again.
        assert marked == ([] if number < 3 else [str((number - 3) % 4 + 1)])
    assert page.evaluate("document.documentElement.scrollWidth") <= width


def test_short_rows_are_marked_each_time_that_they_are_worked(opened: Open) -> None:
    page = opened(html_of(example("sandpiper-sock")))
    page.click("#start")
    # The heel's two rows, five times over, are drawn as ten.
    line = page.locator("li.row", has_text="Sl1, k to 1 st before gap, ssk, k1, turn.").first
    line.locator(".tick").click()
    marks = []
    page.keyboard.press("ArrowLeft")
    for _ in range(11):
        marks.append(
            page.eval_on_selector_all(
                '.charted[data-motif="turn-heel"] .row.now', "all => all.map(e => e.dataset.row)"
            )
        )
        page.keyboard.press("ArrowRight")
    assert marks == [*([str(n)] for n in range(1, 11)), []]


# Each table of a narrow page: whether it runs over, and each figure with what stands before it.
NARROW = """() => [...document.querySelectorAll(".wide, .measured")].map((box) => ({
  over: box.scrollWidth - box.clientWidth,
  told: [...box.querySelectorAll(".stacks tbody tr")].map((row) => [...row.cells].map((cell) => [
    getComputedStyle(cell, "::before").content, cell.offsetLeft,
    row.closest("table").tHead.rows[0].cells[cell.cellIndex].textContent.trim(),
  ])),
}))"""


@pytest.mark.parametrize("name", ["rowan-yoke", "skerry-throw"])
@pytest.mark.parametrize("language", ["en", "de"])
def test_on_a_narrow_page_a_table_stands_whole(opened: Open, name: str, language: str) -> None:
    page = opened(html_of(example(name), language=language))
    page.set_viewport_size({"width": 1280, "height": 800})
    assert {cell[0] for box in page.evaluate(NARROW) for row in box["told"] for cell in row} == {
        "none"
    }
    page.set_viewport_size({"width": 320, "height": 800})
    boxes = page.evaluate(NARROW)
    assert len(boxes) > 1 and [box["over"] for box in boxes] == [0] * len(boxes)
    rows = [row for box in boxes for row in box["told"]]
    assert rows
    for head, *cells in rows:
        assert head[0] == "none" and cells
        assert all(left == head[1] for _, left, _ in cells), "one below the other"
        assert all(before.startswith(f'"{label}') for before, _, label in cells)


def test_targets_are_large_enough(opened: Open) -> None:
    page = opened(html_of(THROW), width=320)
    _start(page)
    found = page.locator("button:visible, .switches fieldset input").all()
    assert len(found) > 10
    for target in found:
        box = target.bounding_box()
        assert box["width"] >= 44, target
        assert box["height"] >= 44, target


def test_another_version_offers_the_old_place(opened: Open, browser: Any, tmp_path: Path) -> None:
    file = tmp_path / "same.html"
    file.write_text(html_of(THROW), encoding="utf-8")
    context = browser.new_context()
    page = context.new_page()
    page.goto(file.as_uri())
    _start(page)
    for _ in range(5):
        page.click("#done")
    where = page.inner_text("#where")
    file.write_text(html_of(THROW.replace("carry", "bring").replace("Carry", "Bring")), "utf-8")
    page.goto(file.as_uri())
    assert page.locator("#counter").is_hidden()
    assert where in page.inner_text("#older")
    page.click("#older button")
    assert page.inner_text("#where") == where
    context.close()


def test_a_size_is_asked_for_first(opened: Open) -> None:
    page = opened(html_of(THROW))
    page.click("#start")
    assert page.inner_text("#told") == "Choose your size first."
    assert page.locator("#counter").is_hidden()


def test_what_lies_in_the_store_is_not_trusted(opened: Open) -> None:
    page = opened(html_of(THROW))
    _start(page)
    page.click("#done")
    for value in (
        "null",
        "[]",
        "{",
        '{"size": "<img>", "places": {"throw": "x"}}',
        '{"places": 7}',
    ):
        page.evaluate(
            "value => { for (const k of Object.keys(localStorage)) localStorage[k] = value }", value
        )
        page.reload()
        assert page.locator("#switches").is_visible()
        assert page.locator("main img:not(.cloth)").count() == 0


def test_many_repeats_answer_at_once(opened: Open) -> None:
    text = (
        'pattern "Long"\nmotif m over 2n\n  row 1: * k1 p1 *\n  row 2: * p1 k1 *\n'
        "piece p flat\n  cast on 20\n  work m x400000000\n  bind off\n"
    )
    page = opened(html_of(text))
    page.click("#start")
    page.locator("li.repeat .tick").click()
    assert page.inner_text("#where") == "After the last row"
    page.click("#back")
    assert "repeat 399999999 of 399999999" in page.inner_text("#where")


def test_without_a_script_the_page_is_whole(opened: Open) -> None:
    page = opened(html_of(THROW), java_script_enabled=False)
    assert "180 (240, 300) sts" in page.locator("main").inner_text()
    assert page.locator("#switches").is_hidden()
    assert page.locator("#counter").is_hidden()


def test_a_hostile_size_and_title_stay_text(opened: Open) -> None:
    evil = "</script><img src=x onerror=alert(1)>{{ 7*7 }}<!--"
    text = THROW.replace("Skerry Throw", evil).replace("Marit Solheim", evil)
    page = opened(html_of(text))
    assert page.inner_text("h1") == evil
    for number in (1, 2, 3, 0):
        _pick(page, number)
        assert page.inner_text("h1") == evil
        assert page.locator("img:not(.cloth)").count() == 0


@pytest.mark.parametrize("name", ["skerry-throw", "gull-hat", "drift-shawl"])
@pytest.mark.parametrize("width", [320, 1280])
def test_axe_finds_no_violation(opened: Open, name: str, width: int) -> None:
    axe = pytest.importorskip("axe_playwright_python.sync_playwright").Axe()
    # The page's own policy would keep the checker out as it keeps out everything else.
    page = opened(html_of(example(name)), width, bypass_csp=True)

    def violations(scheme: str, media: str = "screen") -> list[Any]:
        page.emulate_media(media=media, color_scheme=scheme)
        return list(axe.run(page).response["violations"])

    for scheme, media in (("light", "screen"), ("dark", "screen"), ("light", "print")):
        assert violations(scheme, media) == [], (scheme, media)
    page.emulate_media(media="screen")
    if page.locator('input[name="size"]').count():
        _pick(page, 1)
    page.click("#start")
    for _ in range(5):
        page.click("#done")
    for scheme in ("light", "dark"):
        assert violations(scheme) == [], scheme
