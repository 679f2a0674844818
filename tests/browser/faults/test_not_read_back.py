"""NOT SAVED: pressed again it is the same entry, and what was answered anew is what is stored."""

import re
from datetime import datetime, timedelta
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from tests.browser.faults.faulty import DOUBLE_TAP_MS
from tests.browser.files import start_at
from tests.browser.log.test_mishap import hang_tag
from tests.browser.look.test_look_first import looked, tick
from tests.browser.phone import heading
from tests.browser.pouring import pour_all, start_pouring
from tests.browser.sidesteps import to_machine
from tests.browser.stored import entries
from tests.browser.walk import check_until_recipe, field, next_page, open_machine, press

pytestmark = pytest.mark.usefixtures("machine_on_phone")

BLIND = """
() => {
  globalThis.sees = IDBObjectStore.prototype.get;
  IDBObjectStore.prototype.get = function (...given) {
    if (this.name === "entries") throw new DOMException("made by a test", "DataError");
    return globalThis.sees.apply(this, given);
  };
}
"""
FULL = """
() => {
  const add = IDBObjectStore.prototype.add;
  IDBObjectStore.prototype.add = function () {
    IDBObjectStore.prototype.add = add;
    throw new DOMException("made by a test", "QuotaExceededError");
  };
}
"""
SEEING = "() => { IDBObjectStore.prototype.get = globalThis.sees; }"


def press_twice(page: Page, name: str, again: str) -> None:
    """Not saved by the first press; the second one comes when a new entry would have a new time."""
    page.evaluate(BLIND)
    press(page, name)
    expect(page.get_by_text("NOT SAVED")).to_be_visible()
    page.evaluate(SEEING)
    page.wait_for_timeout(DOUBLE_TAP_MS)
    press(page, again)
    expect(heading(page)).to_have_text("Saved to the log")


def poured(page: Page) -> None:
    """From the list to the machine's page with a second reading due."""
    pour_all(page, start_pouring(page))
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    to_machine(page)
    (pour,) = entries(page, "pour")
    due = datetime.fromisoformat(pour["body"]["recheck_due_at"])
    page.clock.install(time=due + timedelta(seconds=20))
    page.reload()


def test_a_look_that_ended_the_check(page: Page) -> None:
    looked(page, "Grey, brown or black")
    press_twice(page, "Record it and stop here", "Record it and stop here")
    assert len(entries(page, "check")) == 1


def test_a_second_reading(page: Page) -> None:
    poured(page)
    page.get_by_role("button", name="Enter the reading").click()
    field(page, "What does the reading").fill("5.3")
    next_page(page)
    page.get_by_role("button", name=re.compile("Sharp line")).click()
    expect(heading(page)).to_have_text("Expected and found")
    press_twice(page, "Save to the log", "Try again")
    assert len(entries(page, "recheck")) == 1


def test_no_second_reading(page: Page) -> None:
    poured(page)
    page.get_by_role("link", name="I will not read again").click()
    press_twice(page, "Close it without a reading", "Close it without a reading")
    assert len(entries(page, "recheck")) == 1


def test_what_was_typed_since_is_saved(page: Page) -> None:
    poured(page)
    page.get_by_role("link", name="I will not read again").click()
    page.evaluate(BLIND)
    press(page, "Close it without a reading")
    expect(page.get_by_text("NOT SAVED")).to_be_visible()
    page.evaluate(SEEING)
    page.wait_for_timeout(DOUBLE_TAP_MS)
    field(page, "Why not").fill("Glass is broken.")
    press(page, "Close it without a reading")
    expect(heading(page)).to_have_text("Saved to the log")
    assert entries(page, "recheck")[-1]["body"]["remarks"] == "Glass is broken."


def not_saved(page: Page) -> str:
    """From the list to a recipe that could not be saved; its place in the app."""
    open_machine(page)
    check_until_recipe(page)
    page.evaluate(FULL)
    press(page, "Save to the log")
    expect(page.get_by_text("NOT SAVED")).to_be_visible()
    return str(page.evaluate("location.hash"))


def saved_at(page: Page, place: str) -> dict[str, Any]:
    """The check that the recipe's page stores."""
    page.evaluate("(place) => { location.hash = place; }", place)
    expect(page.get_by_text("In each of the").first).to_be_visible()
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    (check,) = entries(page, "check")
    return check


def test_a_look_that_was_answered_anew(page: Page) -> None:
    place = not_saved(page)
    page.evaluate("(place) => { location.hash = place; }", place.replace("recipe", "look"))
    tick(page, "Oil floats on it")
    next_page(page)
    press(page, "Skimmed, go on")
    expect(field(page, "How deep")).to_be_visible()
    check = saved_at(page, place)
    assert check["body"]["look"] == ["floating_oil"]
    assert check["shown"]["look"]["chosen"] == "done_first"


def test_a_tag_that_was_hung_meanwhile(page: Page) -> None:
    place = not_saved(page)
    start_at(page, "machines", place.split("/")[2])
    hang_tag(page)
    press(page, "Go on with the check")
    press(page, "I have seen it. Make the check")
    expect(field(page, "How deep")).to_be_visible()
    (tag,) = entries(page, "machine_state")
    assert saved_at(page, place)["body"]["despite"] == tag["id"]
