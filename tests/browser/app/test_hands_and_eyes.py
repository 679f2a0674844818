"""What a person sets for hands, eyes and ears holds at once, and after a new start."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.phone import Phone, heading
from tests.browser.pouring import OF_A_BUCKET, pour_all, pour_bucket, start_pouring
from tests.browser.server import Server
from tests.browser.stored import entries
from tests.browser.walk import check_until_recipe, field, next_page, open_machine, press, save_check

# Counts what would be heard: a browser without a loudspeaker still makes the tones.
COUNT_CLICKS = """
window.clicks = 0;
const start = OscillatorNode.prototype.start;
OscillatorNode.prototype.start = function (...given) {
  window.clicks += 1;
  return start.apply(this, given);
};
"""


def _choose(page: Page, group: str, word: str) -> None:
    page.evaluate("() => { location.hash = '#/settings'; }")
    expect(heading(page)).to_have_text("Settings")
    page.get_by_role("radiogroup", name=group).get_by_text(word, exact=True).click()


def _root_px(page: Page) -> float:
    return float(page.evaluate("parseFloat(getComputedStyle(document.documentElement).fontSize)"))


@pytest.mark.usefixtures("machine_on_phone")
def test_text_grows_in_steps_and_stays_so(page: Page) -> None:
    before = _root_px(page)
    _choose(page, "Size of the text", "Largest")
    assert _root_px(page) == before * 1.375
    page.reload()
    expect(heading(page)).to_have_text("Settings")
    assert _root_px(page) == before * 1.375
    assert page.evaluate("document.documentElement.scrollWidth") <= 360
    _choose(page, "Size of the text", "As the phone has it")
    assert _root_px(page) == before


@pytest.mark.usefixtures("machine_on_phone")
def test_a_check_is_typed_on_the_keyboard_of_the_phone(page: Page) -> None:
    _choose(page, "Digits are typed with", "The phone's own keyboard")
    page.evaluate("() => { location.hash = '#/'; }")
    open_machine(page)
    press(page, "Start a check")
    press(page, "Nothing unusual")
    depth = field(page, "How deep")
    assert depth.get_attribute("inputmode") == "decimal"
    expect(page.get_by_role("group", name="Keypad")).to_have_count(0)
    depth.fill("342")
    next_page(page)
    page.get_by_role("button", name="Hard floor").click()
    assert field(page, "What does the reading").get_attribute("inputmode") == "decimal"


@pytest.mark.usefixtures("machine_on_phone")
def test_what_is_saved_bears_the_name_and_nothing_without_one(page: Page) -> None:
    page.evaluate("() => { location.hash = '#/settings'; }")
    name = page.get_by_label("Your name")
    name.fill("x" * 41)
    expect(page.get_by_text("40 letters at the most, and these are 41.")).to_be_visible()
    name.fill("M. Depot")
    page.reload()
    expect(page.get_by_label("Your name")).to_have_value("M. Depot")
    page.evaluate("() => { location.hash = '#/'; }")
    open_machine(page)
    check_until_recipe(page)
    save_check(page)
    set_up, check = entries(page, "machine_set", "check")
    assert "by" not in set_up
    assert check["by"] == "M. Depot"
    page.evaluate("(id) => { location.hash = `#/log/${id}`; }", check["id"])
    expect(page.get_by_text("By M. Depot")).to_be_visible()


@pytest.mark.usefixtures("machine_on_phone")
def test_a_tick_clicks_where_clicks_are_wanted(phone: Phone, server: Server) -> None:
    page = phone.start()
    page.add_init_script(COUNT_CLICKS)
    page.goto(server.address)
    buckets = start_pouring(page)
    pour_bucket(page, 1)
    assert page.evaluate("window.clicks") == 0
    place = page.url
    _choose(page, "Clicks while you pour", "On")
    assert page.evaluate("window.clicks") == 1
    page.evaluate("(url) => { location.href = url; }", place)
    pour_all(page, buckets, first=2)
    ticks = buckets * len(OF_A_BUCKET) - page.evaluate("window.clicks")
    assert page.evaluate("window.clicks") > ticks > 0
