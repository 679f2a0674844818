"""What holds for one check only: concentrate at hand and a lower mark; typed, refused, saved."""

import re

import pytest
from playwright.sync_api import Page, expect

from tests.browser.phone import heading
from tests.browser.setup.test_changed_unit import measure_stick_in
from tests.browser.setup.test_wrong_input import WRONG, assert_refused
from tests.browser.sidesteps import (
    follow,
    open_entry,
    to_machine_from_entry,
    until_answers,
)
from tests.browser.stored import entries
from tests.browser.walk import field, next_page, open_machine, press, start_check

pytestmark = pytest.mark.usefixtures("machine_on_phone")


def test_concentrate_at_hand(page: Page) -> None:
    open_machine(page)
    until_answers(page)
    expect(page.get_by_text("Concentrate at hand")).to_have_count(0)
    next_page(page, "Work out the recipe")
    follow(page, "Not enough concentrate?")
    expect(field(page, "How much concentrate")).to_have_value("")
    for text in [*WRONG, "3 mm"]:
        assert_refused(page, "How much concentrate", text)
    field(page, "How much concentrate").fill("2")
    next_page(page)
    expect(page.get_by_text("There is not enough concentrate at hand for the aim.")).to_be_visible()
    page.go_back()
    expect(heading(page)).to_have_text("Is everything right?")
    expect(page.get_by_text("2 L", exact=True)).to_be_visible()
    next_page(page, "Work out the recipe")
    press(page, "Use the best reachable")
    # What the limit changed stands there before and after, and the log keeps both.
    changed = re.compile(
        r"aimed at 8.0\s%, about 7\.\d\s%|filled to about \d+\sL instead of 198\sL"
    )
    expect(page.locator(".reasons")).to_contain_text(changed)
    press(page, "Save to the log")
    open_entry(page)
    expect(page.get_by_text("Concentrate at hand", exact=True)).to_be_visible()
    check = entries(page)[-1]
    assert check["body"]["concentrate_at_hand"] == {"text": "2", "unit": "L"}
    assert check["shown"]["request"]["stock"] == {"concentrate_l": 2}


def test_what_the_stock_decides_is_not_said_to_be_the_easiest(page: Page) -> None:
    open_machine(page)
    until_answers(page)
    next_page(page, "Work out the recipe")
    follow(page, "Not enough concentrate?")
    field(page, "How much concentrate").fill("6")
    next_page(page)
    expect(page.get_by_text("There is not enough concentrate at hand for the aim.")).to_be_visible()
    reasons = page.locator(".reasons")
    expect(reasons).to_contain_text("Whole marks only")
    expect(reasons).not_to_contain_text("easiest to make and carry")


def test_concentrate_is_taken_back_and_changes_its_unit_only_without_digits(page: Page) -> None:
    open_machine(page)
    until_answers(page)
    page.goto(page.url.replace("answers", "stock"))
    field(page, "How much concentrate").fill("2500")
    expect(page.get_by_role("button", name=re.compile("^In "))).to_have_count(0)
    field(page, "How much concentrate").fill("")
    press(page, "In mL")
    expect(page.get_by_role("button", name=re.compile("^In "))).to_have_text("In L")
    field(page, "How much concentrate").fill("2500")
    next_page(page)
    expect(page.get_by_text("2500 mL", exact=True)).to_be_visible()
    follow(page, "Change: Concentrate at hand")
    press(page, "There is enough")
    expect(heading(page)).to_have_text("Is everything right?")
    expect(page.get_by_text("Concentrate at hand")).to_have_count(0)


def test_fill_to_less_than_the_full_mark(page: Page) -> None:
    open_machine(page)
    until_answers(page)
    expect(page.get_by_text("Full mark", exact=True)).to_be_visible()
    follow(page, "Change: Fill up to")
    for text in [*WRONG, "0", "441"]:
        assert_refused(page, "Fill up to", text)
    expect(page.get_by_role("alert")).to_contain_text("440")
    field(page, "Fill up to").fill("400")
    expect(page.get_by_text("= 180 L")).to_be_visible()
    next_page(page)
    expect(page.get_by_text("400 mm", exact=True)).to_be_visible()
    next_page(page, "Work out the recipe")
    expect(page.get_by_text("Filled to 400 mm only: room 26 L")).to_be_visible()
    press(page, "Save to the log")
    open_entry(page)
    expect(page.get_by_text("400 mm", exact=True)).to_be_visible()
    assert entries(page)[-1]["body"]["fill_to_depth"] == {"text": "400", "unit": "mm"}
    to_machine_from_entry(page)
    until_answers(page)
    expect(page.get_by_text("Full mark", exact=True)).to_be_visible()


def test_lower_mark_is_taken_back_and_asked_about_when_unusual(page: Page) -> None:
    open_machine(page)
    until_answers(page)
    follow(page, "Change: Fill up to")
    field(page, "Fill up to").fill("30")
    press(page, "Continue")
    press(page, "Keep 30 mm")
    expect(heading(page)).to_have_text("Is everything right?")
    follow(page, "Change: Fill up to")
    press(page, "To the full mark")
    expect(heading(page)).to_have_text("Is everything right?")
    expect(page.get_by_text("Full mark", exact=True)).to_be_visible()


def test_lower_mark_in_inches_by_taps_and_forgotten_with_the_stick(page: Page) -> None:
    open_machine(page)
    measure_stick_in(page, "in", "17")
    expect(heading(page)).to_have_text("Wheel lathe")
    start_check(page)
    field(page, "How deep").fill("13 7/16")
    page.goto(page.url.replace("dip", "fill"))
    expect(field(page, "Fill up to")).to_be_visible()
    for key in ("1", "5"):
        press(page, key)
    press(page, "Now the parts of an inch")
    press(page, "1/2")
    expect(field(page, "Fill up to")).to_have_value("15 1/2")
    press(page, "Back")
    next_page_by(page, "Now the parts of an inch", "Continue")
    press(page, "Continue")
    expect(heading(page)).to_have_text("Is everything right?")
    expect(page.get_by_text("15 1/2 in")).to_be_visible()
    page.goto(page.url.replace("/answers", ""))
    measure_stick_in(page, "mm", "440")
    expect(heading(page)).to_have_text("Wheel lathe")
    until_answers(page)
    expect(page.get_by_text("Full mark", exact=True)).to_be_visible()


def next_page_by(page: Page, button: str, then: str) -> None:
    """Presses a button whose page stays, and waits for the button that takes its place."""
    press(page, button)
    expect(page.get_by_role("button", name=then, exact=True)).to_be_visible()


def test_what_was_typed_off_the_way_outlives_the_page(page: Page) -> None:
    open_machine(page)
    until_answers(page)
    follow(page, "Change: Fill up to")
    field(page, "Fill up to").fill("40")
    page.go_back()
    page.goto(page.url.replace("answers", "stock"))
    field(page, "How much concentrate").fill("1,5")
    page.reload()
    expect(field(page, "How much concentrate")).to_have_value("1,5")
    page.goto(page.url.replace("stock", "fill"))
    expect(field(page, "Fill up to")).to_have_value("40")
