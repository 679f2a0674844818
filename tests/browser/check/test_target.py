"""The target of a check: two keys go to whole steps, and what they led to was typed by nobody."""

from playwright.sync_api import Page, expect

from tests.browser.phone import heading
from tests.browser.sidesteps import dip
from tests.browser.walk import field, next_page, open_machine, press, set_up_machine


def test_an_aim_between_two_steps_goes_to_the_next_whole_one(page: Page) -> None:
    set_up_machine(page, {"Aim": "7.25"})
    press(page, "Back")
    open_machine(page)
    dip(page)
    field(page, "What does the reading").fill("4.0")
    next_page(page)
    press(page, "Sharp line")
    expect(heading(page)).to_have_text("Where should it be?")
    steps = page.get_by_role("group", name="Where should it be?")
    aim = steps.get_by_role("status")
    less, more = steps.get_by_role("button").first, steps.get_by_role("button").last
    expect(aim).to_have_text("7.25\u00a0%")
    more.click()
    expect(aim).to_have_text("7.5\u00a0%")
    more.click()
    expect(aim).to_have_text("8\u00a0%")
    for found in ("7.5", "7"):
        less.click()
        expect(aim).to_have_text(f"{found}\u00a0%")
    less.click()
    expect(page.get_by_role("alert")).to_have_text("Aim must be between 7\u00a0% and 9\u00a0%.")
    expect(aim).to_have_text("7\u00a0%")
