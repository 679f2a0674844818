"""``python3 -m tests.browser.picture``: takes the README's picture of the recipe page."""

import sys
import tempfile
from pathlib import Path

from playwright.sync_api import sync_playwright

from tests.browser.phone import Phone
from tests.browser.server import Server
from tests.browser.walk import check_until_recipe, set_up_machine
from web.build.paths import SHARED

PICTURE = SHARED / "demo" / "recipe.png"


def main() -> int:
    """Writes the picture from the built app; returns the exit status."""
    server = Server()
    try:
        with tempfile.TemporaryDirectory() as profile, sync_playwright() as playwright:
            phone = Phone(playwright, Path(profile))
            page = phone.start()
            page.goto(server.address)
            set_up_machine(page)
            check_until_recipe(page)
            PICTURE.parent.mkdir(parents=True, exist_ok=True)
            page.screenshot(path=PICTURE, full_page=True, animations="disabled")
            phone.close()
    finally:
        server.kill()
    print(f"Wrote {PICTURE}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
