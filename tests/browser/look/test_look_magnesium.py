"""Where magnesium is worked it is said on the one screen, and again before the first bucket."""

import pytest
from playwright.sync_api import expect

from tests.browser.fluid import choose
from tests.browser.looking import Look
from tests.browser.onescreen import begin_one_screen, expect_recipe, type_check
from tests.browser.phone import Phone, Theme, heading
from tests.browser.server import Server
from tests.browser.walk import next_page, on_machine, open_group, press

pytestmark = pytest.mark.usefixtures("machine_on_phone")

SAID = "Magnesium is worked here. Only coolant made for it."


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_magnesium_is_said_on_every_way_to_a_pour(
    phone: Phone, server: Server, theme: Theme
) -> None:
    page = on_machine(phone, server, theme)
    open_group(page, "metals")
    page.get_by_role("checkbox", name="Magnesium").check(force=True)
    choose(page, "No, or not known")
    next_page(page)
    next_page(page, "Save the machine")
    look = Look(f"{theme}-magnesium")
    begin_one_screen(page)
    type_check(page)
    expect_recipe(page)
    expect(page.get_by_text(SAID)).to_be_visible()
    look(page)
    press(page, "Save and pour")
    expect(heading(page)).to_have_text("Before the first bucket")
    expect(page.get_by_text(SAID)).to_be_visible()
    look(page)
    assert len(look.seen) == 2
    assert look.wrong == []
