"""A look at a screen: a picture, nothing serious for axe, no sideways scrolling."""

import re
from typing import Any

from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Page

from tests.browser.phone import heading, picture

SERIOUS = {"serious", "critical"}
# Half a millimetre on a phone; rounding of a fraction of a pixel.
SLACK_PX = 1


class Look:
    """Looks at each screen once, and remembers what was wrong and what was seen."""

    def __init__(self, kind: str) -> None:
        self.kind, self.seen, self.wrong = kind, list[str](), list[str]()

    def __call__(self, page: Page, named: str | None = None) -> None:
        title = named or heading(page).inner_text()
        name = re.sub(r"[^a-z]+", "-", title.lower()).strip("-")
        if name in self.seen:
            return
        self.seen.append(name)
        picture(page, f"{self.kind}-{len(self.seen):02}-{name}")
        found: list[dict[str, Any]] = Axe().run(page).response["violations"]
        self.wrong += [
            f"{name}: {entry['id']} {entry['nodes'][0]['html'][:160]}"
            for entry in found
            if entry["impact"] in SERIOUS
        ]
        wide = page.evaluate("document.documentElement.scrollWidth - window.innerWidth")
        if wide > SLACK_PX:
            self.wrong.append(f"{name}: {wide} px wider than the window")
