"""Another way: opened at its own address, saved as what was chosen, and so found in the log."""

import re

import pytest
from playwright.sync_api import Page, expect

from tests.browser.phone import heading
from tests.browser.walk import check_until_recipe, next_page, open_machine, press

pytestmark = pytest.mark.usefixtures("machine_on_phone")


def open_way(page: Page, name: str, depth: str = "440", reading: str = "3.3") -> None:
    """From a new machine to the page of one other way."""
    open_machine(page)
    check_until_recipe(page, depth, reading)
    page.get_by_role("link", name=name).click()
    expect(heading(page)).to_contain_text(name)


@pytest.mark.parametrize(
    ("name", "reading", "said"),
    [
        ("Take some out", "7.3", "TAKE OUT"),
        ("Carry it with", "3.3", "The coolant comes from this sump"),
        ("Let the level fall", "3.3", "Pour nothing until"),
    ],
)
def test_chosen_way_is_what_the_log_shows(page: Page, name: str, reading: str, said: str) -> None:
    open_way(page, name, reading=reading)
    expect(page.get_by_text(said).first).to_be_visible()
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    page.get_by_role("link", name="Open this entry").click()
    expect(heading(page)).to_have_text("Check")
    expect(page.get_by_role("heading", level=2, name=name)).to_be_visible()
    expect(page.get_by_text(said).first).to_be_visible()


def test_back_leads_to_the_recipe_and_the_main_one_is_saved(page: Page) -> None:
    open_way(page, "Strong buckets first", "342", "4.0")
    expect(page.get_by_text("read again before the rest")).to_be_visible()
    page.go_back()
    expect(heading(page)).to_have_text("Pour this")
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    page.get_by_role("link", name="Open this entry").click()
    expect(page.get_by_text("In each of the 6 buckets")).to_have_count(1)
    expect(page.get_by_text("read again before the rest")).to_have_count(0)


def test_address_of_a_way_that_is_not_there_leads_to_the_recipe(page: Page) -> None:
    open_machine(page)
    check_until_recipe(page)
    for wrong in ("99", "0", "x", "1.5"):
        page.evaluate("(to) => { location.hash = location.hash + to; }", f"/way/{wrong}")
        expect(page).to_have_url(re.compile("/recipe$"))
        expect(heading(page)).to_have_text("Pour this")


def test_a_recipe_beside_the_aim_says_why(page: Page) -> None:
    open_machine(page)
    # 8.3 % for an aim of 8 %, with half a point near enough.
    check_until_recipe(page, "342", "4.0")
    page.get_by_text("Where this comes from").click()
    expect(page.get_by_text("About 8.3 % is near enough to 8 %")).to_be_visible()


def test_best_reachable_has_its_own_address_and_can_be_saved(page: Page) -> None:
    open_machine(page)
    check_until_recipe(page, "420", "2.0")
    press(page, "Use the best reachable")
    expect(heading(page)).to_have_text("Pour this")
    expect(page.get_by_text("The range is out of reach")).to_be_visible()
    page.reload()
    expect(page.get_by_text("The range is out of reach")).to_be_visible()
    next_page(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
