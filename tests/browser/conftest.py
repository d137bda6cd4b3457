"""A real Chromium against the live server."""

import os
from collections.abc import Callable, Iterator

import pytest
from django.test import Client
from playwright.sync_api import Browser, Page, expect, sync_playwright

from accounts.models import User
from tests.absent import absent
from tests.browser.chromium import find_chromium, start_chromium, what_is_missing

# Playwright's synchronous face runs an event loop in this thread, where Django then refuses the database.
os.environ["DJANGO_ALLOW_ASYNC_UNSAFE"] = "true"

# Two browsers, a server each and what they print share a small machine's cores: what is expected may take its time.
expect.set_options(timeout=20_000)


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    missing = what_is_missing()
    if missing:
        absent(missing)
    with sync_playwright() as playwright:
        running = start_chromium(playwright, find_chromium())
        yield running
        running.close()


@pytest.fixture
def open_as(browser, live_server, school) -> Iterator[Callable[..., Page]]:
    """Opens a page in a browser of its own: `open_as(owner, width=1280)`; None is someone signed out.

    Paths given to `page.goto` may start with / . Whatever the content security policy refuses fails the test.
    """
    contexts = []
    refused: list[str] = []

    def opened(person: User | None, *, width: int = 1280, height: int = 900, **options) -> Page:
        context = browser.new_context(base_url=live_server.url, viewport={"width": width, "height": height}, **options)
        contexts.append(context)
        context.on(
            "console", lambda said: refused.append(said.text) if "Content Security Policy" in said.text else None
        )
        if person is not None:
            client = Client()
            client.force_login(person, backend="accounts.backends.NameOrEmailBackend")
            cookie = client.cookies["countfold_session"]
            context.add_cookies([{"name": cookie.key, "value": cookie.value, "url": live_server.url}])
        return context.new_page()

    yield opened
    for context in contexts:
        for page in context.pages:
            page.wait_for_load_state("networkidle")
        context.close()
    assert refused == []


@pytest.fixture
def opened(open_as) -> Iterator[Callable[..., Page]]:
    """As `open_as`, for pages that never stop asking for news: they are left before their browser closes."""
    pages = []

    def opening(*args, **options) -> Page:
        pages.append(open_as(*args, **options))
        return pages[-1]

    yield opening
    for context in {page.context for page in pages}:
        context.set_offline(False)
        for page in context.pages:
            page.unroute_all(behavior="ignoreErrors")
            page.goto("about:blank")
