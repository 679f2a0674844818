"""Fingers that slide off a key, and gloves that tap twice."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.phone import heading
from tests.browser.stored import rows
from tests.browser.walk import check_until_recipe, field, open_machine, start_check

pytestmark = pytest.mark.usefixtures("machine_on_phone")


def test_a_finger_that_slides_off_a_key_types_nothing(page: Page) -> None:
    open_machine(page)
    start_check(page)
    places = [
        page.get_by_role("button", name=name, exact=True).bounding_box() for name in ("5", "6")
    ]
    (x, y), (beside, _) = (
        (box["x"] + box["width"] / 2, box["y"] + box["height"] / 2) for box in places if box
    )
    page.mouse.move(x, y)
    page.mouse.down()
    page.mouse.move(beside, y)
    page.mouse.up()
    expect(field(page, "How deep")).to_have_value("")
    page.mouse.click(x, y)
    expect(field(page, "How deep")).to_have_value("5")


def test_two_quick_taps_save_one_entry(page: Page) -> None:
    open_machine(page)
    before = len(rows(page))
    check_until_recipe(page)
    page.get_by_role("button", name="Save to the log").dblclick()
    expect(heading(page)).to_have_text("Saved to the log")
    assert len(rows(page)) == before + 1


def test_two_quick_taps_tick_one_state(page: Page) -> None:
    open_machine(page)
    check_until_recipe(page)
    for button, after in (
        ("Save to the log", "Saved to the log"),
        ("Start pouring", "Before the first bucket"),
        ("Right drum, gloves on", "Bucket 1 of"),
    ):
        page.get_by_role("button", name=button, exact=True).dblclick()
        expect(heading(page)).to_contain_text(after)
        page.wait_for_timeout(300)
        expect(heading(page)).to_contain_text(after)
    page.get_by_role("button", name="Water is in", exact=True).dblclick()
    page.wait_for_timeout(300)
    expect(page.get_by_role("button", name="Concentrate is in", exact=True)).to_be_visible()
