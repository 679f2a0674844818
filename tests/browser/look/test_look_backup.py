"""Backup, taking in and handover in both themes, as in test_look.py."""

import pytest
from playwright.sync_api import expect

from tests.browser.files import offer, start_at, take_in
from tests.browser.looking import Look
from tests.browser.phone import Phone, Theme, heading
from tests.browser.server import Server
from tests.browser.stored import cut_after
from tests.browser.walk import check_until_recipe, open_machine, save_check
from tests.phones import newer_phone, workshop

pytestmark = pytest.mark.usefixtures("machine_on_phone")


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_pages_of_the_log_as_files(phone: Phone, server: Server, theme: Theme) -> None:
    page = phone.start(theme)
    page.goto(server.address)
    look = Look(f"{theme}-files")
    open_machine(page)
    check_until_recipe(page)
    save_check(page)
    look(page)
    start_at(page, "backup")
    expect(page.get_by_text("The file holds 2 entries")).to_be_visible()
    look(page)
    start_at(page, "table")
    expect(page.get_by_text("The table has 2 rows")).to_be_visible()
    look(page)
    text = newer_phone().export()
    offer(page, text[: len(text) - 40])
    look(page)
    Look(f"{theme}-refused")(page)
    for writer in workshop():
        take_in(page, writer.export(), len(writer.lines))
    start_at(page, "handover")
    expect(page.get_by_role("heading", name="Pouring not finished")).to_be_visible()
    look(page)
    start_at(page)
    page.get_by_role("link", name="Wheel lathe").first.click()
    page.get_by_role("link", name="Hand over to another phone").click()
    expect(page.get_by_text("The file holds the last")).to_be_visible()
    look(page)
    cut_after(page, 1)
    start_at(page, "missing")
    expect(page.get_by_text("Only 1 entry of it is here.")).to_be_visible()
    look(page)
    start_at(page)
    expect(heading(page)).to_have_text("Machines")
    alarm = Look(f"{theme}-alarm")
    alarm(page)
    assert len(look.seen) == 7
    assert look.wrong + alarm.wrong == []
