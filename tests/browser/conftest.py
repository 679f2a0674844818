"""A server and a phone for each test; whatever the page complains about fails the test."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Page, Playwright, sync_playwright

from tests.browser.phone import Phone
from tests.browser.server import Server


@pytest.fixture(scope="session")
def playwright() -> Iterator[Playwright]:
    """The driver of the browser."""
    with sync_playwright() as driver:
        yield driver


@pytest.fixture
def server() -> Iterator[Server]:
    """web/dist on a port of this computer."""
    started = Server()
    yield started
    started.kill()


@pytest.fixture
def phone(playwright: Playwright, tmp_path: Path) -> Iterator[Phone]:
    """A phone that has never seen the app."""
    fresh = Phone(playwright, tmp_path / "profile")
    yield fresh
    fresh.close()
    assert fresh.problems == []


@pytest.fixture
def page(phone: Phone, server: Server) -> Page:
    """The app's first page on a fresh phone."""
    opened = phone.start()
    opened.goto(server.address)
    return opened
