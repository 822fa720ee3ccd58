"""Debian's Chromium, driven by Playwright; the tests are skipped where either is missing."""

from __future__ import annotations

import shutil
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest

FLAGS = [
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
]


@pytest.fixture(scope="session")
def browser() -> Iterator[Any]:
    playwright = pytest.importorskip("playwright.sync_api")
    found = shutil.which("chromium") or shutil.which("chromium-browser")
    if found is None:
        pytest.skip("Chromium is not installed")
    with playwright.sync_playwright() as driver:
        chromium = driver.chromium.launch(executable_path=found, args=FLAGS)
        yield chromium
        chromium.close()


@pytest.fixture(scope="session")
def kept() -> dict[str, list[Any]]:
    """The pages that are open, by what their contexts were made with: to make one takes Chromium
    as long as to show three pages in it."""
    return {}


@pytest.fixture
def opened(
    browser: Any, kept: dict[str, list[Any]], tmp_path: Path
) -> Iterator[Callable[..., Any]]:
    """Opens a page from its text; fails where the page asks for anything or says an error.

    Each call shows another page with a store of its own, or, with `page`, the next in that one.
    Pages are shown again in later tests, with an empty store and nothing listening.
    """
    in_use: dict[str, list[Any]] = {}
    files: list[str] = []
    bad: list[str] = []

    def asked(request: Any) -> None:
        if request.url not in files and not request.url.startswith("data:"):
            bad.append(request.url)

    def broke(error: Any) -> None:
        bad.append(str(error))

    def said(message: Any) -> None:
        if message.type in ("error", "warning"):
            bad.append(message.text)

    listeners = {"request": asked, "pageerror": broke, "console": said}

    def another(context: dict[str, Any]) -> Any:
        """A page that this test has not in use yet."""
        key = repr(sorted(context.items()))
        mine = in_use.setdefault(key, [])
        here = kept.setdefault(key, [])
        if len(here) == len(mine):
            here.append(browser.new_context(**context).new_page())
            here[-1].set_default_timeout(8000)
        page = here[len(mine)]
        mine.append(page)
        for event, listener in listeners.items():
            page.on(event, listener)
        return page

    def open_page(
        html: str,
        width: int = 768,
        scheme: str = "light",
        reduced_motion: str = "no-preference",
        page: Any = None,
        **context: Any,
    ) -> Any:
        file = tmp_path / f"page-{len(files)}.html"
        file.write_text(html, encoding="utf-8")
        files.append(file.as_uri())
        if page is None:
            page = another(context)
        else:
            page.evaluate("localStorage.clear()")
        page.set_viewport_size({"width": width, "height": 900})
        page.emulate_media(media="screen", color_scheme=scheme, reduced_motion=reduced_motion)
        page.goto(file.as_uri())
        return page

    yield open_page
    for key, pages in in_use.items():
        for page in pages:
            try:
                page.evaluate("localStorage.clear()")
                page.goto("about:blank")
                for event, listener in listeners.items():
                    page.remove_listener(event, listener)
            except Exception:  # it is stuck: later tests get others
                kept.pop(key, None)
    assert bad == []
