"""Takes a picture in every theme, once of each place, and makes the contact sheets."""

from __future__ import annotations

import html
import re
from dataclasses import dataclass, field
from pathlib import Path

from playwright.sync_api import Page, expect

from tests.browser.phone import PHONE_SIZE, PICTURES, Theme, heading
from tests.screens.measure import broken, faint, measured
from tests.screens.torn import torn

FOLDER = PICTURES / "screens"
THEMES: tuple[Theme, ...] = ("light", "dark")
# A page has settled once pycore has answered; what it still waits for is seen on the picture.
SETTLE_MS = 400
# The action that stays in sight would lie over what stands below it on a long picture.
PLACE = """
(place) => document.querySelectorAll(".actions-stay").forEach((one) => {
  one.style.position = place;
})
"""
SHEET_PX, TILE_PX, TILE_HIGH_PX = 1960, 180, 460


@dataclass
class Album:
    """The pictures of one language, in the order in which they were taken."""

    language: str
    mode: str = "guided"
    names: list[str] = field(default_factory=list)
    elsewhere: list[str] = field(default_factory=list)
    wrong: list[str] = field(default_factory=list)

    def take(self, page: Page, name: str) -> None:
        """What stands there now, in each theme."""
        expect(heading(page)).to_be_visible()
        page.wait_for_timeout(SETTLE_MS)
        self.names.append(f"{len(self.names) + 1:03}-{self.mode}-{re.sub('[^a-z0-9]+', '-', name)}")
        for theme in THEMES:
            page.emulate_media(color_scheme=theme)
            path = FOLDER / f"{self.language}-{theme}-{self.names[-1]}.png"
            page.evaluate(PLACE, "static")
            page.screenshot(path=path, full_page=True, animations="disabled")
            page.evaluate(PLACE, "")
            found = [*faint(page), *broken(page)]
            self.wrong += [f"{self.names[-1]} {theme} {one}" for one in found]
        self.wrong += [f"{self.names[-1]} {found}" for found in [*measured(page), *torn(page)]]

    def open(self, page: Page, place: str, name: str) -> None:
        """Goes to a place and takes it, unless the app leads elsewhere from there."""
        page.evaluate("(place) => { location.hash = place; }", f"#/{place}")
        expect(heading(page)).to_be_visible()
        page.wait_for_timeout(SETTLE_MS)
        if page.evaluate("location.hash") == f"#/{place}":
            self.take(page, name)
        else:
            self.elsewhere.append(name)

    def sheets(self, page: Page) -> list[Path]:
        """One contact sheet for each theme; long pages are cut at the bottom."""
        page.set_viewport_size({"width": SHEET_PX, "height": 800})
        made = []
        for theme in THEMES:
            listing = FOLDER / f"{self.language}-{theme}.html"
            listing.write_text(self._listing(theme), encoding="utf-8")
            page.goto(listing.as_uri())
            made.append(PICTURES / f"screens-{self.language}-{theme}.png")
            page.screenshot(path=made[-1], full_page=True)
        page.set_viewport_size({"width": PHONE_SIZE[0], "height": PHONE_SIZE[1]})
        return made

    def _listing(self, theme: Theme) -> str:
        tiles = "".join(
            f"<figure><div><img src='{self.language}-{theme}-{name}.png'></div>"
            f"<figcaption>{html.escape(name)}</figcaption></figure>"
            for name in self.names
        )
        style = (
            "body{display:flex;flex-wrap:wrap;gap:12px;margin:12px}"
            "body{background:#888;font:11px sans-serif}"
            f"figure{{margin:0;width:{TILE_PX}px}}img{{width:100%;display:block}}"
            f"div{{max-height:{TILE_HIGH_PX}px;overflow:hidden}}"
        )
        return f"<!doctype html><meta charset=utf-8><style>{style}</style>{tiles}"
