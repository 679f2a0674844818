"""A unit that changes under a check never gives the digits another meaning."""

import re

import pytest
from playwright.sync_api import Page, expect

from tests.browser.phone import heading
from tests.browser.walk import field, next_page, open_machine, start_check

pytestmark = pytest.mark.usefixtures("machine_on_phone")


def measure_stick_in(page: Page, unit: str, full_depth: str) -> None:
    """From the machine's own page: another unit on the stick, and the full mark typed anew."""
    page.get_by_role("link", name="Change the set-up").click()
    expect(heading(page)).to_have_text("Is the set-up right?")
    page.get_by_role("link", name="Change: units").click()
    page.get_by_role("combobox", name="Dip stick").select_option(unit)
    next_page(page)
    page.get_by_role("link", name="Change: size").click()
    field(page, "Depth at the full mark").fill(full_depth)
    next_page(page)
    next_page(page, "Save the machine")


def test_dip_is_asked_for_anew_when_the_stick_has_another_unit(page: Page) -> None:
    open_machine(page)
    start_check(page)
    field(page, "How deep").fill("120")
    expect(page.get_by_text("= 54 L")).to_be_visible()
    next_page(page)
    for _ in range(3):
        page.go_back()
    expect(heading(page)).to_have_text("Wheel lathe")
    measure_stick_in(page, "in", "17")
    expect(heading(page)).to_have_text("Wheel lathe")
    page.get_by_role("button", name=re.compile("check")).click()
    expect(field(page, "How deep")).to_have_value("")
