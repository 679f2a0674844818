"""The one screen to look at: sizes for a glove, both themes, narrow, large text, on a desk."""

from typing import Any

import pytest
from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Page, expect

from tests.browser.onescreen import begin_one_screen, expect_recipe, open_one_screen, type_check
from tests.browser.phone import DESK_SIZE, PHONE_SIZE, Phone, Theme, heading, picture
from tests.browser.server import Server
from tests.browser.walk import field, next_page, open_group, open_machine, press

pytestmark = pytest.mark.usefixtures("machine_on_phone")

SERIOUS = {"serious", "critical"}
SLACK_PX = 1
LEAST_PX = 60
# What a tap on each control really meets: the control, or something that lies inside it.
TARGETS = """
() => [...document.querySelectorAll("button, a, input")]
  .filter((one) => one.getClientRects().length > 0)
  .map((one) => {
    const after = getComputedStyle(one, "::after");
    const isOver = after.content !== "none" && after.position === "absolute";
    const box = (isOver ? one.offsetParent : one).getBoundingClientRect();
    const middle = [box.x + box.width / 2, box.y + box.height / 2];
    const hit = document.elementFromPoint(...middle);
    return {
      name: one.getAttribute("aria-label") ?? one.innerText,
      width: box.width,
      height: box.height,
      isMet: hit === null || one === hit || one.contains(hit),
    };
  })
"""


def wider_px(page: Page) -> int:
    """By how much the page is wider than its window."""
    wide: int = page.evaluate("document.documentElement.scrollWidth - window.innerWidth")
    return wide


def complaints(page: Page) -> list[str]:
    """What axe finds serious, and controls too small for a glove."""
    found: list[dict[str, Any]] = Axe().run(page).response["violations"]
    wrong = [
        f"{entry['id']} {entry['nodes'][0]['html'][:160]}"
        for entry in found
        if entry["impact"] in SERIOUS
    ]
    targets = page.evaluate(TARGETS)
    assert len(targets) > 10
    wrong += [
        f"{one['name']}: {one['width']:.0f} x {one['height']:.0f}, met: {one['isMet']}"
        for one in targets
        if min(one["width"], one["height"]) < LEAST_PX - 0.5 or not one["isMet"]
    ]
    return wrong


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_one_screen_at_phone_size(phone: Phone, server: Server, theme: Theme) -> None:
    page = phone.start(theme)
    page.goto(server.address)
    open_one_screen(page)
    picture(page, f"one-screen-{theme}-1-empty")
    assert complaints(page) == []
    type_check(page)
    expect_recipe(page)
    picture(page, f"one-screen-{theme}-2-recipe")
    assert complaints(page) == []
    # The usual check needs no scrolling.
    assert page.evaluate("document.documentElement.scrollHeight") <= PHONE_SIZE[1]
    field(page, "Dip").fill("9999")
    press(page, "Work out the recipe")
    expect(page.get_by_role("alert")).to_be_visible()
    picture(page, f"one-screen-{theme}-3-refused")
    assert complaints(page) == []


def test_one_screen_narrow_large_and_on_a_desk(page: Page) -> None:
    open_one_screen(page)
    type_check(page)
    expect_recipe(page)
    large = "document.documentElement.style.fontSize = '200%'"
    for name, size, script in (
        ("narrow", (320, 568), "0"),
        ("on-its-side", (640, 360), "0"),
        ("desk", DESK_SIZE, "0"),
        ("large", PHONE_SIZE, large),
        ("narrow-large", (320, 568), large),
    ):
        page.set_viewport_size({"width": size[0], "height": size[1]})
        page.evaluate(script)
        picture(page, f"one-screen-{name}")
        assert wider_px(page) <= SLACK_PX, name


def test_where_to_pour_is_told_before_the_first_bucket(page: Page) -> None:
    place = "At the conveyor's return, not beside the suction"
    open_machine(page)
    open_group(page, "Where it is poured in")
    field(page, "Pour here").fill("x" * 121)
    press(page, "Continue")
    expect(page.get_by_role("alert")).to_have_text("This must have 120 letters or fewer.")
    field(page, "Pour here").fill(place)
    picture(page, "setup-pour-here")
    next_page(page)
    expect(page.get_by_text(place)).to_be_visible()
    press(page, "Save the machine")
    begin_one_screen(page)
    type_check(page)
    expect_recipe(page)
    press(page, "Save and pour")
    expect(heading(page)).to_have_text("Before the first bucket")
    expect(page.get_by_text(f"Pour here: {place}")).to_be_visible()
    picture(page, "pour-here")
