"""The invented shop in the app: beside the own entries, never among them, gone without a trace."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.files import start_at
from tests.browser.looking import Look
from tests.browser.phone import Phone, Theme, heading, wait_until_ready
from tests.browser.server import Server
from tests.browser.stored import rows, taken
from tests.browser.walk import leave, press, set_up_machine

DATABASES = "async () => (await indexedDB.databases()).map(({ name }) => name).sort()"
NOTES = "Object.keys(localStorage).filter((name) => name.startsWith('pailwright-example'))"


def look_at_example(page: Page) -> None:
    page.get_by_role("link", name="Look at an example shop").click()
    expect(page.get_by_role("link", name="Wheel lathe").first).to_be_visible()


def test_example_comes_and_goes_without_a_trace(page: Page) -> None:
    look_at_example(page)
    expect(page.get_by_text("Invented example")).to_be_visible()
    for name in ("Axle grinder", "Band saw", "Boring mill", "Drill line", "Milling machine"):
        expect(page.get_by_role("link", name=name).first).to_be_visible()
    page.get_by_role("link", name="Wheel lathe").first.click()
    page.get_by_role("link", name="Write something down").click()
    page.get_by_role("link", name="Buckets poured").click()
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    # The phone's own database was opened when its empty list was shown, and holds nothing.
    assert (rows(page), taken(page)) == ([], [])
    press(page, "Remove it")
    expect(page.get_by_role("button", name="Add your first machine")).to_be_visible()
    assert page.evaluate(DATABASES) == ["pailwright"]
    assert page.evaluate(NOTES) == []
    assert (rows(page), taken(page)) == ([], [])


def test_own_entries_stay_apart(page: Page) -> None:
    set_up_machine(page, {"Name of the machine": "Own machine"})
    before = rows(page)
    page.goto(page.url.split("#")[0] + "?example#/")
    expect(page.get_by_role("link", name="Axle grinder").first).to_be_visible()
    expect(page.get_by_role("link", name="Own machine")).to_have_count(0)
    press(page, "Remove it")
    expect(page.get_by_role("link", name="Own machine").first).to_be_visible()
    expect(page.get_by_role("link", name="Axle grinder")).to_have_count(0)
    assert rows(page) == before


@pytest.mark.parametrize("place", ["backup", "take-in", "table"])
def test_nothing_leaves_the_example_and_nothing_comes_in(page: Page, place: str) -> None:
    look_at_example(page)
    page.goto(f"{page.url.split('#')[0]}#/{place}")
    expect(heading(page)).to_have_text("Not in the example")
    expect(page.locator("input[type=file]")).to_have_count(0)


def test_example_opens_without_a_network(phone: Phone, server: Server) -> None:
    page = phone.start()
    page.goto(server.address)
    wait_until_ready(page)
    server.kill()
    look_at_example(page)
    page.reload()
    expect(page.get_by_text("Invented example")).to_be_visible()


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_look_at_the_example(phone: Phone, server: Server, theme: Theme) -> None:
    page = phone.start(theme)
    page.goto(server.address)
    look_at_example(page)
    look = Look(f"{theme}-example")
    look(page)
    leave(page, page.get_by_role("link", name="Drill line").first)
    look(page)
    start_at(page, "log")
    look(page)
    start_at(page, "backup")
    look(page)
    assert look.wrong == []
    assert len(look.seen) == 4
