"""Days are chosen from the phone's calendar, shown in words, and are those of the place."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.fluid import choose, type_all
from tests.browser.phone import Phone
from tests.browser.server import Server
from tests.browser.test_shop import row
from tests.browser.test_wrong_input import assert_refused
from tests.browser.walk import change_group, field, next_page, open_group, open_machine, press


def assert_part_of_a_day_is_refused(page: Page, name: str) -> None:
    """A day without its year is a slip, not a day that nobody gave."""
    box = field(page, name)
    box.fill("")
    box.press_sequentially("0302")
    press(page, "Continue")
    expect(box).to_have_attribute("aria-invalid", "true")
    expect(page.get_by_role("alert").first).to_contain_text("must be a date")


@pytest.mark.usefixtures("machine_on_phone")
def test_day_of_the_zero(page: Page) -> None:
    open_machine(page)
    open_group(page, "instrument")
    choose(page, "Brix")
    next_page(page)
    change_group(page, "zero of the instrument")
    expect(field(page, "On which day")).to_have_value("")
    field(page, "What did it show").fill("0")
    # With the first digit today stands there.
    today = page.evaluate("new Intl.DateTimeFormat('en-CA').format(new Date())")
    expect(field(page, "On which day")).to_have_value(today)
    assert_refused(page, "On which day", "2999-01-01")
    assert_part_of_a_day_is_refused(page, "On which day")
    page.reload()
    expect(field(page, "What did it show")).to_have_value("0")
    field(page, "On which day").fill("2026-01-02")
    next_page(page)
    assert row(page, "Zeroed on") == "Friday, 2 January 2026"


@pytest.mark.usefixtures("machine_on_phone")
def test_day_is_the_same_west_of_greenwich(phone: Phone, server: Server) -> None:
    page = phone.start(timezone="America/New_York")
    page.goto(server.address)
    open_machine(page)
    open_group(page, "drum in use")
    type_all(page, {"Delivered on": "2026-11-02"})
    expect(page.get_by_text("Monday, 2 November 2026")).to_be_visible()
