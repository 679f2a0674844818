"""No target stands half under the bar with the main action, where a finger would meet both."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.phone import PHONE_SIZE, heading
from tests.browser.walk import check_until_recipe, open_machine
from tests.screens.under_bar import FRAMES, half_under, half_under_by_keys

HEIGHTS_PX = range(560, 731, 17)
SETTLE_MS = 150
# Pages of a machine whose main action stays in sight, and a link to the one with the most targets.
PLACES = ("", "/answers", "/recipe")


def _settle(page: Page) -> None:
    """Waits for what a new size brings: the page moves its rows a frame after it was told."""
    page.wait_for_timeout(SETTLE_MS)
    page.evaluate(FRAMES)


def _go(page: Page, place: str) -> None:
    page.evaluate("(place) => { location.hash = place; }", place)
    expect(heading(page)).to_be_visible()
    page.locator("main").get_by_role("link").last.wait_for()


@pytest.mark.usefixtures("machine_on_phone")
def test_nothing_is_half_under_the_bar_at_any_height(page: Page) -> None:
    open_machine(page)
    machine = f"#/{page.url.split('#/')[1]}"
    check_until_recipe(page)
    found = []
    for place in PLACES:
        _go(page, machine + place)
        for height in HEIGHTS_PX:
            page.set_viewport_size({"width": PHONE_SIZE[0], "height": height})
            _settle(page)
            found += [f"{place} {height}: {one}" for one in half_under(page)]
        page.set_viewport_size({"width": PHONE_SIZE[0], "height": PHONE_SIZE[1]})
        _settle(page)
        found += [f"{place} {one}" for one in half_under_by_keys(page)]
    print("\n".join(found))
    assert found == []


@pytest.mark.usefixtures("machine_on_phone")
def test_what_changed_further_down_is_made_up_for_at_the_top(page: Page) -> None:
    open_machine(page)
    _go(page, f"#/{page.url.split('#/')[1]}")
    found = []
    for height in HEIGHTS_PX:
        page.evaluate("() => scrollTo(0, 40)")
        _settle(page)
        page.set_viewport_size({"width": PHONE_SIZE[0], "height": height})
        _settle(page)
        page.evaluate("() => scrollTo(0, 0)")
        _settle(page)
        found += [f"{height}: {one}" for one in half_under(page)]
    assert found == []


@pytest.mark.usefixtures("machine_on_phone")
def test_what_moves_stands_well_for_a_search_of_targets_too(page: Page) -> None:
    """Below the screen nothing is seen, but axe counts what the bar does not cover there."""
    open_machine(page)
    check_until_recipe(page)
    _go(page, f"{page.url.split('#')[1].rsplit('/', 1)[0]}/answers")
    _settle(page)
    boxes = [one.bounding_box() for one in page.get_by_role("link").all()]
    rests = [box["y"] + box["height"] - PHONE_SIZE[1] for box in boxes if box is not None]
    covered = [rest for rest in rests if 0.5 < rest < 60]
    assert covered
    assert min(covered) >= 24


@pytest.mark.usefixtures("machine_on_phone")
def test_a_press_right_after_scrolling_moves_nothing(page: Page) -> None:
    """Let go over something else than it began on, a press would be lost."""
    open_machine(page)
    pressed = page.get_by_role("link", name="Open the log")
    box = pressed.bounding_box()
    assert box is not None
    moved = []
    for way in range(7, 70, 9):
        page.evaluate("() => { document.activeElement.blur(); scrollTo(0, 0); }")
        page.mouse.move(box["x"] + 40, box["y"] - way + box["height"] / 2)
        page.wait_for_timeout(SETTLE_MS)
        # So early in a frame, its scrolling is told only in the next one.
        page.evaluate(
            """(way) => new Promise((done) =>
                requestAnimationFrame(() => done(scrollTo(0, way))))""",
            way,
        )
        page.mouse.down()
        expect(pressed).to_be_focused()
        page.wait_for_timeout(SETTLE_MS)
        moved.append(page.evaluate("(way) => scrollY - way", way))
        page.mouse.move(1, 1)
        page.mouse.up()
    assert moved == [0] * len(moved)
