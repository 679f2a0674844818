"""The numbers of a recipe and of a pour from 1 m and in daylight, as far as a picture tells."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.phone import Phone, Theme, heading
from tests.browser.server import Server
from tests.browser.walk import check_until_recipe, open_machine, press
from tests.screens.afar import seen

# ISO 9241-303, from memory: at least 16', better 20' to 22'.
LEAST_ARCMIN = 16.0
# A shop by a window, and 4.3:1 is what is left there of 16:1.
WINDOW_LUX, SUN_LUX = 10_000, 100_000
# What WCAG 2.2, 1.4.3 asks of large text in any light.
LEAST_RATIO = 3.0


def _look(page: Page, place: str, theme: Theme) -> None:
    numbers = page.locator(".amount-value b:visible")
    expect(numbers.first).to_be_visible()
    for number in numbers.all():
        one = seen(number)
        print(
            f"{place} {theme} {number.inner_text()}: {one.arcmin:.1f}' at 1 m, read with an "
            f"acuity of {one.acuity:.2f}; contrast {one.ratio(0):.1f}:1, by a window "
            f"{one.ratio(WINDOW_LUX):.1f}:1, in the sun {one.ratio(SUN_LUX):.1f}:1"
        )
        assert one.arcmin >= LEAST_ARCMIN
        assert one.ratio(WINDOW_LUX) >= LEAST_RATIO


@pytest.mark.usefixtures("machine_on_phone")
@pytest.mark.parametrize("theme", ["light", "dark"])
def test_numbers_are_large_and_clear_enough(phone: Phone, server: Server, theme: Theme) -> None:
    page = phone.start(theme)
    page.goto(server.address)
    open_machine(page)
    check_until_recipe(page)
    _look(page, "recipe", theme)
    press(page, "Save to the log")
    press(page, "Start pouring")
    press(page, "Right drum, gloves on")
    expect(heading(page)).to_contain_text("Bucket 1 of")
    _look(page, "pour", theme)
