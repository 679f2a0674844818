"""The guided check from the machine to the saved recipe by keyboard, found by accessible names."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.keyboard import enter, tab_to
from tests.browser.phone import heading
from tests.browser.stored import rows
from tests.browser.walk import field, open_machine, start_check

pytestmark = pytest.mark.usefixtures("machine_on_phone")


def at_page(page: Page, title: str) -> None:
    """The page is there, and reading starts at its heading."""
    expect(heading(page)).to_have_text(title)
    expect(heading(page)).to_be_focused()


def test_the_guided_check_by_keyboard_alone(page: Page) -> None:
    open_machine(page)
    before = len(rows(page))
    enter(page, "button", "Start a check")
    at_page(page, "Look and smell first")
    enter(page, "button", "Nothing unusual")
    at_page(page, "How deep is the coolant?")
    tab_to(page, "textbox", "How deep is the coolant?")
    page.keyboard.type("9999")
    page.keyboard.press("Enter")
    expect(page.get_by_role("alert")).to_contain_text("between")
    # What was typed stays, and is described by the refusal.
    box = field(page, "How deep is the coolant?")
    expect(box).to_have_value("9999")
    expect(box).to_have_accessible_description(page.get_by_role("alert").inner_text())
    for _ in range(4):
        enter(page, "button", "Delete the last digit")
    for digit in "342":
        enter(page, "button", digit)
    enter(page, "button", "Continue")
    enter(page, "button", "Hard floor")
    at_page(page, "What does the reading say?")
    tab_to(page, "textbox", "What does the reading say?")
    page.keyboard.type("4.0")
    enter(page, "button", "Continue")
    enter(page, "button", "Sharp line")
    at_page(page, "Where should it be?")
    enter(page, "button", "Continue")
    enter(page, "button", "Work out the recipe")
    expect(page.get_by_text("In each of the")).to_be_visible()
    enter(page, "button", "Save to the log")
    at_page(page, "Saved to the log")
    assert len(rows(page)) == before + 1


def test_digits_go_to_the_field_wherever_the_focus_is(page: Page) -> None:
    open_machine(page)
    start_check(page)
    at_page(page, "How deep is the coolant?")
    # They went nowhere: the page has one field, and its heading had the focus.
    page.keyboard.type("3429")
    page.keyboard.press("Backspace")
    box = field(page, "How deep is the coolant?")
    expect(box).to_have_value("342")
    # In the field itself a key types once.
    tab_to(page, "textbox", "How deep is the coolant?")
    page.keyboard.press("End")
    page.keyboard.type("5")
    expect(box).to_have_value("3425")
    # What belongs to the browser stays the browser's.
    heading(page).focus()
    page.keyboard.press("Control+1")
    expect(box).to_have_value("3425")
