"""Further rows of the one screen, where the machine or the instrument asks for them."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.check.test_more_readings import with_instrument
from tests.browser.check.test_sump_dips import set_up
from tests.browser.onescreen import begin_one_screen, expect_recipe, result
from tests.browser.phone import picture
from tests.browser.setup.test_changed_unit import measure_stick_in
from tests.browser.stored import entries
from tests.browser.walk import field, open_machine, press


@pytest.mark.usefixtures("machine_on_phone")
def test_inches_by_taps(page: Page) -> None:
    open_machine(page)
    measure_stick_in(page, "in", "17")
    begin_one_screen(page)
    press(page, "Nothing unusual")
    for key in ("1", "3", "Now the parts of an inch", "7/16"):
        press(page, key)
    expect(field(page, "Dip")).to_have_value("13 7/16")
    picture(page, "one-screen-inches")
    field(page, "Reading").fill("4.0")
    expect_recipe(page)
    press(page, "Save and pour")
    press(page, "Right drum, gloves on")
    checks = [entry for entry in entries(page) if entry["kind"] == "check"]
    assert checks[-1]["body"]["dip"]["depth"] == {"text": "13 7/16", "unit": "in"}


@pytest.mark.usefixtures("machine_on_phone")
def test_old_zero_off_the_scale_and_a_warm_glass(page: Page) -> None:
    with_instrument(page, on="2026-01-02")
    begin_one_screen(page)
    press(page, "Nothing unusual")
    field(page, "Dip").fill("342")
    expect(page.get_by_text("The zero is older than a day")).to_be_visible()
    field(page, "Reading").fill("18.5")
    press(page, "Work out the recipe")
    expect(page.get_by_role("alert")).to_contain_text("the app doubles it")
    press(page, "Dilute one to one and read again")
    expect(field(page, "Diluted")).to_have_value("")
    field(page, "Diluted").fill("2.6")
    cool = expect_recipe(page)
    field(page, "Glass").fill("-400")
    expect(result(page)).to_contain_text("No recipe with this temperature of the glass.")
    press(page, "Work out the recipe")
    expect(field(page, "Glass")).to_be_focused()
    field(page, "Glass").fill("28")
    assert expect_recipe(page) != ""
    assert cool != ""
    picture(page, "one-screen-more-rows")
    press(page, "Not diluted")
    expect(field(page, "Reading")).to_have_value("18.5")
    field(page, "Reading").fill("5.0")
    page.get_by_role("link", name="I zeroed it just now").click()
    press(page, "It shows 0")
    # The reading was taken with the old zero: it is asked for anew, on this screen.
    expect(result(page)).to_contain_text("Still to come: reading.")
    expect(field(page, "Dip")).to_have_value("342")


def test_rough_gauge_and_a_check_without_a_reading(page: Page) -> None:
    set_up(page, "A rough gauge")
    press(page, "One screen")
    press(page, "1/2 to 3/4")
    expect(page.get_by_text("1/2 to 3/4 180 L")).to_be_visible()
    picture(page, "one-screen-gauge")
    page.get_by_role("link", name="Read later").click()
    expect(page.get_by_role("heading", level=1)).to_be_visible()
    page.go_back()
    field(page, "Reading").fill("4.0")
    expect_recipe(page)
    press(page, "Guide me")
    expect(field(page, "How much on the gauge")).to_have_count(0)
