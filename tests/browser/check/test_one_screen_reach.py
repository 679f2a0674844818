"""The one screen where the target is out of reach: the way on stays in sight."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.onescreen import open_one_screen, result, type_check
from tests.browser.phone import PHONE_SIZE

pytestmark = pytest.mark.usefixtures("machine_on_phone")


@pytest.mark.parametrize(
    ("depth", "reading", "said"),
    [
        ("418", "3.3", "Too weak: the room left is not enough."),
        ("440", "3.3", "no room for a stronger mix"),
        ("440", "7.3", "Strong coolant harms the skin."),
    ],
)
def test_way_on_is_in_sight(page: Page, depth: str, reading: str, said: str) -> None:
    open_one_screen(page)
    type_check(page, depth, reading)
    expect(result(page)).to_contain_text(said)
    # Said once: the number and its likely range stand in one line.
    expect(result(page).locator(".result-range")).to_contain_text("likely")
    box = page.get_by_role("button", name="See what can be done").bounding_box()
    assert box is not None
    assert box["y"] + box["height"] <= PHONE_SIZE[1], box
    assert page.evaluate("document.scrollingElement.scrollHeight") <= PHONE_SIZE[1]
