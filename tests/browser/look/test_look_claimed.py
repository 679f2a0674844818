"""The pages on which people decide about entries that claim one place, as in test_look.py."""

import pytest
from playwright.sync_api import expect

from tests.browser.claiming import ROWS, brought
from tests.browser.looking import Look
from tests.browser.phone import Phone, Theme, heading
from tests.browser.server import Server
from tests.browser.walk import press


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_pages_of_a_place_that_is_claimed_twice(phone: Phone, server: Server, theme: Theme) -> None:
    page = phone.start(theme)
    page.goto(server.address)
    look = Look(f"{theme}-claimed")
    brought(page)
    look(page)
    page.get_by_role("link", name="Let all of them count").click()
    expect(heading(page)).to_have_text("Let all of them count")
    look(page)
    page.get_by_role("button", name="Back").click()
    page.locator(ROWS).first.click()
    press(page, "Save to the log")
    expect(page.get_by_role("alert")).to_contain_text("Tick what counts")
    look(page)
    page.get_by_text("351 mm").click()
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    look(page)
    press(page, "Decide the next")
    expect(page.get_by_role("heading", name="Decided", exact=True)).to_be_visible()
    decided = Look(f"{theme}-decided")
    decided(page)
    assert len(look.seen) == 4
    assert look.wrong + decided.wrong == []
