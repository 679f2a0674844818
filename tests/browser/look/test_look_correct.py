"""Every page of putting an entry right in both themes: a picture, axe, no sideways scrolling."""

import pytest

from tests.browser.correcting import change, compare, correct, open_entry, retype, save
from tests.browser.files import start_at
from tests.browser.looking import Look
from tests.browser.phone import Phone, Theme
from tests.browser.server import Server
from tests.browser.walk import check_until_recipe, on_machine, press, save_check


@pytest.mark.usefixtures("machine_on_phone")
@pytest.mark.parametrize("theme", ["light", "dark"])
def test_pages_of_a_correction(phone: Phone, server: Server, theme: Theme) -> None:
    page = on_machine(phone, server, theme)
    check_until_recipe(page)
    save_check(page)
    look = Look(f"{theme}-correct")
    open_entry(page, "reading 4.0")
    look(page, "entry")
    correct(page)
    change(page, "The stick touched")
    look(page)
    page.get_by_role("button", name="Back").click()
    change(page, "Look and smell")
    look(page)
    page.get_by_role("button", name="Back").click()
    change(page, "Reading")
    look(page)
    page.get_by_role("button", name="Back").click()
    retype(page, "Reading", "5.3")
    look(page)
    compare(page)
    look(page)
    save(page)
    look(page, "saved")
    page.get_by_role("link", name="Open this entry").click()
    page.get_by_role("heading", name="Corrected").wait_for()
    look(page, "corrected")
    page.get_by_role("link", name="Take this entry back").click()
    page.get_by_text("Entered twice").click()
    look(page)
    press(page, "Take it back")
    page.get_by_role("link", name="Open this entry").click()
    page.get_by_role("heading", name="Taken back").wait_for()
    look(page, "taken back")
    start_at(page, "log")
    page.locator(".log-row", has_text="Taken back").wait_for()
    look(page)
    assert len(look.seen) == 11
    assert look.wrong == []
