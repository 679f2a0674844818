"""Every page of a check, a pour and what follows, in both languages: sizes, gaps, lines, widths."""

from dataclasses import dataclass, field

import pytest
from playwright.sync_api import Page, expect

from tests.browser.phone import Phone, Theme, heading
from tests.browser.server import Server
from tests.screens import laid_out
from tests.screens.measure import faint, measured
from tests.screens.take import LANGUAGES, walk_past
from tests.screens.torn import torn
from tests.screens.under_bar import FRAMES, half_under

SETTLE_MS = 250
THEMES: tuple[Theme, ...] = ("light", "dark")
# Pages that are read before anything is pressed: they are longer than a phone, and have no keys.
READ_FIRST = {"look", "trend", "pour-ready"}


@dataclass
class Looker:
    """Measures each page that the walk leads past."""

    language: str
    mode: str = "guided"
    seen: list[str] = field(default_factory=list)
    wrong: list[str] = field(default_factory=list)

    def take(self, page: Page, name: str) -> None:
        """Measures what stands there now."""
        expect(heading(page)).to_be_visible()
        page.wait_for_timeout(SETTLE_MS)
        page.evaluate(FRAMES)
        self.seen.append(name)
        # First of all: others turn the phone, after which the page moves its rows.
        found = half_under(page)
        found += [*measured(page), *laid_out.parted(page), *laid_out.cut(page)]
        found += [*laid_out.close(page), *laid_out.focus(page), *torn(page)]
        if name not in READ_FIRST:
            found += laid_out.main_action(page)
        for theme in THEMES:
            page.emulate_media(color_scheme=theme)
            found += [f"{theme} {one}" for one in (*faint(page), *laid_out.faint_lines(page))]
        page.emulate_media(color_scheme="light")
        self.wrong += [f"{self.language} {self.mode} {name}: {one}" for one in found]

    def open(self, page: Page, place: str, name: str) -> None:
        """Goes to a place and measures it, unless the app leads elsewhere from there."""
        page.evaluate("(place) => { location.hash = place; }", f"#/{place}")
        expect(heading(page)).to_be_visible()
        page.wait_for_timeout(SETTLE_MS)
        page.evaluate(FRAMES)
        if page.evaluate("location.hash") == f"#/{place}":
            self.take(page, name)


@pytest.mark.usefixtures("machine_on_phone")
@pytest.mark.parametrize("language", LANGUAGES)
def test_pages_fit_the_glove_and_the_eye(phone: Phone, server: Server, language: str) -> None:
    page = phone.start()
    page.goto(server.address)
    looker = Looker(language)
    walk_past(page, looker, of_machine=("trend",), of_phone=("log",))
    assert len(looker.seen) > 30
    print("\n".join(looker.wrong))
    assert looker.wrong == []
