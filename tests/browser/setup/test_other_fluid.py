"""A sump that holds one coolant gets another one: said before it is saved."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.fluid import choose
from tests.browser.walk import change_group, field, next_page, open_group, open_machine, press

pytestmark = pytest.mark.usefixtures("machine_on_phone")


def test_another_coolant_is_never_mixed_in(page: Page) -> None:
    never = page.get_by_text("Never mix two")
    open_machine(page)
    open_group(page, "target")
    next_page(page)
    expect(page.get_by_role("button", name="Save the machine")).to_be_visible()
    expect(never).to_have_count(0)
    change_group(page, "concentrate")
    field(page, "Name of the concentrate").fill(" Depot mix ")
    next_page(page)
    expect(never).to_have_count(0)
    change_group(page, "concentrate")
    field(page, "Name of the concentrate").fill("Depot mix 2")
    next_page(page)
    expect(never).to_be_visible()
    next_page(page, "Save the machine")
    # What is in the machine from now on is no other coolant any more.
    page.get_by_role("link", name="Change the set-up").click()
    expect(page.get_by_role("button", name="Save the machine")).to_be_visible()
    expect(never).to_have_count(0)
    change_group(page, "coolant")
    choose(page, "Soluble oil")
    next_page(page)
    # An oil with a semi-synthetic's factor is asked about first.
    press(page, "Keep 1.5")
    expect(never).to_be_visible()
