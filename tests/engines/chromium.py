"""Chromium by the same hand, so that the journey of the three engines is one and the same."""

from pathlib import Path

from playwright.sync_api import Page, Playwright

from tests.browser.phone import Phone


class Chromium:
    """One profile; ``restart`` ends every process of the browser and starts it anew."""

    def __init__(self, playwright: Playwright, profile: Path) -> None:
        self._phone = Phone(playwright, profile)
        self._page = self._start()
        browser = self._page.context.browser
        self.name = f"Chromium {browser.version if browser else ''}".strip()

    def _start(self) -> Page:
        return self._phone.start()

    def goto(self, address: str) -> None:
        """Opens an address and waits until it has loaded."""
        self._page.goto(address)

    def evaluate(self, expression: str) -> str:
        """The text that an expression gives, awaited where it is a promise."""
        return str(self._page.evaluate(expression) or "")

    def restart(self) -> None:
        """A new process on the same profile."""
        self._phone.close()
        self._page = self._start()

    def close(self) -> None:
        """Ends the browser; what it has stored stays in the profile."""
        self._phone.close()
