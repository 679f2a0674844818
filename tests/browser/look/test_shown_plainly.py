"""What stands where: no per cent without a factor, nothing to pour can be saved, large numbers."""

import re

import pytest
from playwright.sync_api import Page, expect

from tests.browser.fluid import choose
from tests.browser.phone import heading
from tests.browser.pouring import pour_after_check
from tests.browser.stored import entries
from tests.browser.walk import (
    check_until_recipe,
    field,
    next_page,
    open_group,
    open_machine,
    press,
    set_up_machine,
    start_check,
)

pytestmark = pytest.mark.usefixtures("machine_on_phone")

SIZES = """
(name) => [...document.querySelectorAll(name)]
  .map((one) => parseFloat(getComputedStyle(one).fontSize))
"""
RECIPE_PX, POUR_PX = 44, 56


def test_without_a_factor_no_per_cent_appears(page: Page) -> None:
    open_machine(page)
    open_group(page, "factor")
    choose(page, "I don't know it")
    next_page(page)
    expect(heading(page)).to_have_text("Is the set-up right?")
    next_page(page, "Save the machine")
    start_check(page)
    field(page, "How deep").fill("342")
    next_page(page)
    page.get_by_role("button", name=re.compile("Hard floor")).click()
    field(page, "What does the reading").fill("4.0")
    page.wait_for_timeout(500)
    assert "%" not in page.get_by_role("main").inner_text()
    next_page(page)
    page.get_by_role("button", name=re.compile("Sharp line")).click()
    expect(heading(page)).to_have_text("Is everything right?")
    assert "%" not in page.get_by_role("main").inner_text()


def test_nothing_to_pour_is_saved(page: Page) -> None:
    open_machine(page)
    check_until_recipe(page, "440", "5.3")
    expect(heading(page)).to_have_text("Nothing to pour")
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    (check,) = entries(page, "check")
    assert check["body"]["dip"]["depth"]["text"] == "440"
    assert check["shown"]["plan"]["totals"]["buckets"] == 0
    expect(page.get_by_role("button", name="Start pouring")).to_have_count(0)


def test_amounts_are_read_from_afar(page: Page) -> None:
    open_machine(page)
    check_until_recipe(page)
    sizes = page.evaluate(SIZES, ".amount-value b")
    assert len(sizes) >= 2
    assert min(sizes) >= RECIPE_PX
    page.go_back()
    next_page(page, "Work out the recipe")
    press(page, "Save to the log")
    press(page, "Start pouring")
    press(page, "Right drum, gloves on")
    expect(heading(page)).to_have_text(re.compile("Bucket 1 of"))
    assert min(page.evaluate(SIZES, ".instruction .amount-value b")) >= POUR_PX


def test_work_that_is_due_stands_first(page: Page) -> None:
    page.get_by_role("link", name="Add a machine").click()
    set_up_machine(page, {"Name of the machine": "Axle grinder"}, begin=None)
    page.get_by_role("button", name="Back").click()
    names = page.locator(".machine-name")
    expect(names).to_have_count(2)
    # Neither was ever checked: by their names.
    expect(names).to_have_text(["Axle grinder", "Wheel lathe"])
    page.get_by_role("link", name="Wheel lathe").click()
    pour_after_check(page)
    press(page, "Water is in")
    page.evaluate("() => { location.hash = '#/'; }")
    expect(names).to_have_text(["Wheel lathe", "Axle grinder"])
    expect(page.locator(".machine-row").first).to_contain_text("0 of 6 buckets poured")
