"""A phone: one profile that outlives its browser, at 360 × 640, with every trouble noted."""

from collections.abc import Sequence
from pathlib import Path
from typing import Literal

from playwright.sync_api import BrowserContext, Locator, Page, Playwright, expect

from tests.chromium import chromium_path, launch_arguments
from web.build.paths import ROOT

PICTURES = ROOT / "tests" / ".output"
PHONE_SIZE = (360, 640)
DESK_SIZE = (1280, 800)
# Starting Python takes a second or two here; a slow machine gets much longer.
LIMIT_MS = 30_000

NOTE_VIOLATIONS = """
document.addEventListener("securitypolicyviolation", (event) => {
  console.error(`policy: ${event.violatedDirective} ${event.blockedURI} ${event.sample}`);
});
"""
Theme = Literal["light", "dark"]


class Phone:
    """A browser profile in a folder; ``start`` opens it, ``close`` ends the browser's processes."""

    def __init__(
        self,
        playwright: Playwright,
        profile: Path,
        size: tuple[int, int] = PHONE_SIZE,
        arguments: Sequence[str] = (),
    ) -> None:
        self._playwright, self._profile, self._size = playwright, profile, size
        self._arguments = [*launch_arguments, *arguments]
        self._context: BrowserContext | None = None
        self.problems: list[str] = []

    def start(
        self,
        theme: Theme = "light",
        locale: str = "en-GB",
        timezone: str = "Europe/Berlin",
        more: Sequence[str] = (),
    ) -> Page:
        """Opens the profile in a new browser process and returns its page. more: arguments."""
        self._context = self._playwright.chromium.launch_persistent_context(
            self._profile,
            executable_path=chromium_path(),
            args=[*self._arguments, *more],
            viewport={"width": self._size[0], "height": self._size[1]},
            service_workers="allow",
            color_scheme=theme,
            locale=locale,
            timezone_id=timezone,
            has_touch=True,
        )
        self._context.set_default_timeout(LIMIT_MS)
        expect.set_options(timeout=LIMIT_MS)
        self._context.add_init_script(NOTE_VIOLATIONS)
        page = self._context.pages[0]
        self._listen(page)
        return page

    def _listen(self, page: Page) -> None:
        page.on("pageerror", lambda error: self.problems.append(f"error: {error}"))
        page.on(
            "console",
            lambda said: (
                self.problems.append(f"{said.type}: {said.text}")
                if said.type in ("error", "warning")
                else None
            ),
        )

    def forget(self) -> None:
        """After its processes were killed: there is nothing left to end."""
        self._context = None

    def close(self) -> None:
        """Ends the browser; the profile stays."""
        if self._context is not None:
            self._context.close()
            self._context = None


def wait_until_ready(page: Page) -> None:
    """Waits for the promise that the app works without internet."""
    # By the whole text: "Not ready without internet" is no promise.
    ready = page.get_by_text("Ready without internet", exact=True).or_(
        page.get_by_text("Works without internet", exact=True)
    )
    expect(ready.first).to_be_visible()


def heading(page: Page) -> Locator:
    """The heading of the screen."""
    return page.get_by_role("heading", level=1)


def picture(page: Page, name: str) -> Path:
    """A screenshot of the whole page below tests/.output."""
    PICTURES.mkdir(parents=True, exist_ok=True)
    path = PICTURES / f"{name}.png"
    page.screenshot(path=path, full_page=True, animations="disabled")
    return path
