"""A question answered at the machine shows its keys and its main action at once."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.phone import PHONE_SIZE, heading
from tests.browser.walk import check_until_recipe, field, open_machine, save_check, start_check
from tests.screens.under_bar import FRAMES

ASKED_WITH_KEYS = {"How deep is the coolant?", "What does the reading say?", "Where should it be?"}
HEIGHT = "document.documentElement.scrollHeight"
# As much as keys have between them: less looks as if the bar had cut the page.
LEAST_BELOW_BAR_PX = 6
# A taller phone has higher keys.
KEY_PX = {640: 60, 750: 72, 800: 84}
BELOW_BAR = """
() => document.querySelector("h1").getBoundingClientRect().top -
  document.querySelector("header").getBoundingClientRect().bottom
"""


@pytest.mark.usefixtures("machine_on_phone")
def test_questions_with_keys_need_no_scrolling(page: Page) -> None:
    heights: dict[str, int] = {}
    below_bar_px: dict[str, float] = {}

    def measure(_: Page) -> None:
        heights[heading(page).inner_text()] = page.evaluate(HEIGHT)
        below_bar_px[heading(page).inner_text()] = page.evaluate(BELOW_BAR)

    open_machine(page)
    check_until_recipe(page, at_page=measure)
    save_check(page)
    page.get_by_role("link", name="Wheel lathe").first.click()
    start_check(page)
    # The number of last time takes a line more.
    expect(page.get_by_text("Last time 342")).to_be_visible()
    again = page.evaluate(HEIGHT)
    field(page, "How deep").fill("340")
    for high_px, key_px in KEY_PX.items():
        page.set_viewport_size({"width": PHONE_SIZE[0], "height": high_px})
        page.evaluate(FRAMES)
        box = page.get_by_role("button", name="5", exact=True).bounding_box()
        assert box is not None
        assert box["height"] >= key_px
        assert page.evaluate(HEIGHT) <= high_px
    assert heights.keys() >= ASKED_WITH_KEYS
    too_high = {name: px for name, px in heights.items() if px > PHONE_SIZE[1]}
    assert not too_high.keys() & ASKED_WITH_KEYS
    assert min(below_bar_px.values()) >= LEAST_BELOW_BAR_PX, below_bar_px
    assert again <= PHONE_SIZE[1]


@pytest.mark.usefixtures("machine_on_phone")
def test_main_action_stays_in_sight_below_a_long_list(page: Page) -> None:
    open_machine(page)
    assert page.evaluate(HEIGHT) > PHONE_SIZE[1]
    box = page.get_by_role("button", name="Start a check").bounding_box()
    assert box is not None
    assert box["y"] + box["height"] <= PHONE_SIZE[1]


def test_a_newcomer_sees_at_once_how_to_begin(page: Page) -> None:
    begin = page.get_by_role("button", name="Add your first machine")
    expect(begin).to_be_visible()
    box = begin.bounding_box()
    assert box is not None
    assert box["y"] + box["height"] <= PHONE_SIZE[1]
