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


@pytest.fixture
def opened(browser: Any, tmp_path: Path) -> Iterator[Callable[..., Any]]:
    """Opens a page from its text; fails where the page asks for anything or says an error."""
    contexts: list[Any] = []
    bad: list[str] = []

    def open_page(html: str, width: int = 768, scheme: str = "light", **context: Any) -> Any:
        file = tmp_path / f"page-{len(contexts)}.html"
        file.write_text(html, encoding="utf-8")
        made = browser.new_context(
            viewport={"width": width, "height": 900}, color_scheme=scheme, **context
        )
        contexts.append(made)
        page = made.new_page()
        page.set_default_timeout(8000)

        def asked(request: Any) -> None:
            if request.url != file.as_uri() and not request.url.startswith("data:"):
                bad.append(request.url)

        page.on("request", asked)
        page.on("pageerror", lambda error: bad.append(str(error)))
        page.on("console", lambda m: bad.append(m.text) if m.type in ("error", "warning") else None)
        page.goto(file.as_uri())
        return page

    yield open_page
    for context in contexts:
        context.close()
    assert bad == []
