"""Fingers that slide off a key, and gloves that tap twice."""

import re

import pytest
from playwright.sync_api import Page, expect

from tests.browser.check.test_recheck import read_again
from tests.browser.phone import heading
from tests.browser.pouring import pour_after_check, pour_quickly
from tests.browser.stored import entries, rows
from tests.browser.walk import (
    check_until_recipe,
    field,
    next_page,
    open_machine,
    press,
    start_check,
)

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


def test_a_double_tap_works_out_the_recipe_and_saves_nothing(page: Page) -> None:
    open_machine(page)
    before = len(rows(page))
    start_check(page)
    for name, text, answer in (
        ("How deep", "342", "Hard floor"),
        ("What does the reading", "4.0", "Sharp line"),
    ):
        field(page, name).fill(text)
        next_page(page)
        page.get_by_role("button", name=re.compile(answer)).click()
    next_page(page)
    # The recipe's own action comes up where this one was.
    page.get_by_role("button", name="Work out the recipe").dblclick(delay=120)
    expect(page.get_by_role("button", name="Save to the log")).to_be_visible()
    page.wait_for_timeout(500)
    expect(page.get_by_role("button", name="Save to the log")).to_be_visible()
    assert len(rows(page)) == before


def test_a_double_tap_is_one_tick_one_note_and_one_second_reading(page: Page) -> None:
    open_machine(page)
    buckets = pour_after_check(page)
    page.get_by_role("button", name="Water is in").dblclick()
    expect(page.get_by_role("button", name="Concentrate is in")).to_be_visible()
    expect(page.get_by_role("button", name="Concentrate is in")).to_be_enabled()
    # A tap on a screen, not the button of a mouse.
    box = page.get_by_role("button", name="Concentrate is in").bounding_box()
    assert box is not None
    for _ in range(2):
        page.touchscreen.tap(box["x"] + box["width"] / 2, box["y"] + box["height"] / 2)
    expect(page.get_by_role("button", name="Stirred, it looks even")).to_be_visible()
    page.wait_for_timeout(300)
    expect(page.get_by_role("button", name="Stirred, it looks even")).to_be_visible()
    press(page, "Undo")
    press(page, "Undo")
    pour_quickly(page, buckets)
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    press(page, "Back to the machines")
    page.get_by_role("link", name="Wheel lathe").click()
    read_again(page, "5.3")
    page.get_by_role("button", name="Save to the log").dblclick()
    expect(heading(page)).to_have_text("Saved to the log")
    assert len(entries(page, "recheck")) == 1
