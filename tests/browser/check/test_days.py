"""Days have three parts with the month by name, are shown in words, and are those of the place."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.fluid import assert_day_refused, choose, day_parts, set_day, shown_day, type_all
from tests.browser.phone import Phone
from tests.browser.server import Server
from tests.browser.setup.test_shop import row
from tests.browser.walk import change_group, field, next_page, open_group, open_machine

DAY = "On which day"


@pytest.mark.usefixtures("machine_on_phone")
def test_day_of_the_zero(page: Page) -> None:
    open_machine(page)
    open_group(page, "instrument")
    choose(page, "Brix")
    next_page(page)
    change_group(page, "zero of the instrument")
    assert shown_day(page, DAY) == ""
    field(page, "What did it show").fill("0")
    # With the first digit today stands there.
    today = page.evaluate("new Intl.DateTimeFormat('en-CA').format(new Date())")
    expect(day_parts(page, DAY)[2]).to_have_value(today[:4])
    assert shown_day(page, DAY) == today
    set_day(page, DAY, "2999-01-01")
    assert_day_refused(page, DAY, "2999-01-01")
    # A day that no calendar has, and one of which a part is missing: field, got, allowed.
    set_day(page, DAY, "2026-02-30")
    assert_day_refused(
        page, DAY, "must be a day of the calendar with its month and year, like 2026-11-25."
    )
    expect(page.get_by_role("alert").first).to_contain_text("You typed “2026-02-30”")
    day_parts(page, DAY)[2].fill("")
    assert_day_refused(page, DAY, "You typed “?-02-30”")
    page.reload()
    expect(field(page, "What did it show")).to_have_value("0")
    assert shown_day(page, DAY) == "-02-30"
    set_day(page, DAY, "2026-01-02")
    expect(page.get_by_text("Friday, 2 January 2026")).to_be_visible()
    next_page(page)
    assert row(page, "Zeroed on") == "Friday, 2 January 2026"


@pytest.mark.usefixtures("machine_on_phone")
def test_a_digit_typed_after_another_is_no_other_day(page: Page) -> None:
    open_machine(page)
    open_group(page, "drum in use")
    day, month, year = day_parts(page, "Delivered on")
    day.press_sequentially("12")
    month.select_option(label="November")
    year.press_sequentially("2026")
    expect(page.get_by_text("Thursday, 12 November 2026")).to_be_visible()
    day.press("End")
    day.press("Backspace")
    expect(page.get_by_text("Sunday, 1 November 2026")).to_be_visible()
    expect(day).to_have_value("1")


@pytest.mark.usefixtures("machine_on_phone")
def test_day_is_the_same_west_of_greenwich(phone: Phone, server: Server) -> None:
    page = phone.start(timezone="America/New_York")
    page.goto(server.address)
    open_machine(page)
    open_group(page, "drum in use")
    type_all(page, {"Delivered on": "2026-11-02"})
    expect(page.get_by_text("Monday, 2 November 2026")).to_be_visible()
