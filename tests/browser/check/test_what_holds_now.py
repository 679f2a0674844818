"""What is said of a check holds now: a factor that came later, a recipe that is old or given up."""

import re
from datetime import datetime, timedelta

import pytest
from playwright.sync_api import Page, expect

from tests.browser.fluid import choose
from tests.browser.phone import heading
from tests.browser.pouring import pour_bucket, start_pouring
from tests.browser.stored import entries
from tests.browser.walk import (
    check_until_recipe,
    field,
    next_page,
    open_group,
    open_machine,
    press,
    start_check,
)

pytestmark = pytest.mark.usefixtures("machine_on_phone")


def _without_factor(page: Page) -> None:
    open_machine(page)
    open_group(page, "factor")
    choose(page, "I don't know it")
    next_page(page)
    next_page(page, "Save the machine")


def test_a_factor_entered_from_a_check_is_saved_and_gives_the_recipe(page: Page) -> None:
    _without_factor(page)
    start_check(page)
    field(page, "How deep").fill("342")
    next_page(page)
    page.get_by_role("button", name=re.compile("Hard floor")).click()
    field(page, "What does the reading").fill("4.0")
    next_page(page)
    page.get_by_role("button", name=re.compile("Sharp line")).click()
    next_page(page, "Continue")
    expect(heading(page)).to_have_text("No recipe without the factor")
    page.get_by_role("link", name="Enter the factor").click()
    choose(page, "Multiply the reading")
    field(page, "Multiply the reading by").fill("1.5")
    next_page(page)
    expect(heading(page)).to_have_text("Where is the factor from?")
    choose(page, "Data sheet")
    next_page(page)
    expect(heading(page)).to_have_text("Is the set-up right?")
    next_page(page, "Save the machine")
    expect(heading(page)).to_have_text("Wheel lathe")
    page.evaluate("() => { location.hash += '/recipe'; }")
    expect(page.get_by_text(re.compile("In each of the"))).to_be_visible()


def test_an_old_recipe_says_so(page: Page) -> None:
    open_machine(page)
    check_until_recipe(page)
    press(page, "Save to the log")
    old = page.get_by_text("More than half a day old")
    expect(heading(page)).to_have_text("Saved to the log")
    expect(old).to_have_count(0)
    (check,) = entries(page, "check")
    saved = datetime.fromisoformat(check["measured_at"])
    page.clock.install(time=saved + timedelta(hours=11, minutes=50))
    page.reload()
    expect(heading(page)).to_have_text("Saved to the log")
    expect(old).to_have_count(0)
    page.clock.fast_forward("20:00")
    expect(old).to_be_visible()
    # "Check again before you pour", and the main action poured.
    expect(page.locator(".main-action")).to_have_text("Start a check")
    expect(page.get_by_role("button", name="Start pouring")).to_be_visible()
    press(page, "Start a check")
    expect(heading(page)).to_have_text("Look and smell first")


def test_a_recipe_that_was_given_up_is_not_expected_any_more(page: Page) -> None:
    start_pouring(page)
    page.get_by_role("link", name="Stop here").click()
    press(page, "That is all")
    expect(heading(page)).to_have_text("Saved to the log")
    press(page, "Back to the machines")
    page.get_by_role("link", name="Wheel lathe").first.click()
    expect(page.get_by_text("Recipe given up: nothing was poured")).to_be_visible()
    expect(page.get_by_text("Expected after the recipe")).to_have_count(0)


def test_a_part_that_was_poured_before_the_rest_was_given_up_is_not_denied(page: Page) -> None:
    start_pouring(page)
    pour_bucket(page, 1)
    page.get_by_role("link", name="Stop here").click()
    press(page, "The rest comes later")
    page.get_by_role("link", name="Go on pouring").click()
    expect(heading(page)).to_have_text(re.compile("Bucket 2 of"))
    page.get_by_role("link", name="Stop here").click()
    press(page, "That is all")
    expect(heading(page)).to_have_text("Saved to the log")
    assert [len(pour["body"]["pours"]) for pour in entries(page, "pour")] == [1, 0]
    press(page, "Back to the machines")
    page.get_by_role("link", name="Wheel lathe").first.click()
    expect(page.get_by_text("Expected after the recipe")).to_be_visible()
    expect(page.get_by_text("nothing was poured")).to_have_count(0)
