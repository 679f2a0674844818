"""A saved entry is corrected or taken back: old and new are seen, and the new one counts."""

import json

import pytest
from playwright.sync_api import Page, expect

from tests.browser.correcting import (
    change,
    compare,
    correct,
    last,
    open_entry,
    retype,
    save,
    take_back,
)
from tests.browser.files import start_at
from tests.browser.phone import heading
from tests.browser.stored import folded, rows
from tests.browser.walk import check_until_recipe, field, open_machine, press, save_check

pytestmark = pytest.mark.usefixtures("machine_on_phone")


def checked(page: Page, depth: str = "342", reading: str = "4.0") -> None:
    """The machine has one check in its log."""
    open_machine(page)
    check_until_recipe(page, depth, reading)
    save_check(page)


def test_a_reading_is_corrected_and_both_are_seen(page: Page) -> None:
    checked(page)
    before = len(rows(page))
    open_entry(page, "reading 4.0")
    correct(page)
    # The gates are those of the first typing, and a reload keeps what was typed.
    change(page, "Dip")
    field(page, "Dip").fill("9999")
    press(page, "Continue")
    expect(page.get_by_role("alert")).to_contain_text("between")
    expect(field(page, "Dip")).to_have_value("9999")
    page.get_by_role("button", name="Back").click()
    expect(page.get_by_role("main")).not_to_contain_text("9999")
    retype(page, "Reading", "5.3")
    page.reload()
    main = page.get_by_role("main")
    expect(main).to_contain_text("was 4.0")
    compare(page)
    # 4.0 Brix x 1.5 = 6.0 %, lean; 5.3 Brix x 1.5 = 7.95 %, in range.
    expect(main).to_contain_text("In range")
    expect(main.locator("del", has_text="was Too weak")).to_be_visible()
    expect(main).to_contain_text("What was shown and poured since stays as it was")
    field(page, "Your name").fill("KB")
    save(page)
    entry = last(page)
    assert (entry.kind, entry.by) == ("correction", "KB")
    assert entry.body["reason"] == "No reason given"
    assert entry.body["content"]["reading"]["shows"] == {"text": "5.3", "unit": "Brix"}
    assert entry.body["content"]["dip"]["depth"] == {"text": "342", "unit": "mm"}
    assert len(rows(page)) == before + 1
    page.get_by_role("link", name="Open this entry").click()
    expect(main.get_by_role("heading", name="Corrected")).to_be_visible()
    expect(main.locator("del", has_text="was 4.0")).to_be_visible()
    expect(main).to_contain_text("KB")
    page.get_by_text("As it was shown at first").click()
    expect(main.get_by_text("about").last).to_be_visible()
    start_at(page, "log")
    row = page.locator(".log-row", has_text="reading 5.3")
    expect(row).to_contain_text("Corrected")
    expect(row).to_contain_text("In range")
    start_at(page)
    expect(page.get_by_role("main")).to_contain_text("In range")
    # pycore folds the same lines to the same state.
    strength = folded(page)["strength"]
    assert strength["entry"] == entry.body["corrects"]


def test_a_look_a_nitrite_and_the_floor_are_corrected_together(page: Page) -> None:
    checked(page)
    open_entry(page, "reading 4.0")
    correct(page)
    change(page, "Look and smell")
    page.get_by_role("checkbox", name="Oil floats on it").check(force=True)
    press(page, "Continue")
    retype(page, "Nitrite", "8")
    change(page, "The stick touched")
    page.get_by_role("button", name="Chips or sludge").click()
    expect(heading(page)).to_have_text("What was wrong?")
    page.wait_for_timeout(1_100)
    compare(page)
    save(page)
    content = last(page).body["content"]
    assert content["look"] == ["floating_oil"]
    assert content["nitrite"] == {"text": "8", "unit": "mg/L"}
    assert content["dip"]["how"] == "chips"
    shown = json.loads(rows(page)[-1]["text"])["shown"]
    assert shown["look"]["chosen"] == "went_on"
    assert shown["look"]["decision"] != "go_on"


def test_an_entry_is_taken_back_and_put_back(page: Page) -> None:
    checked(page)
    open_entry(page, "reading 4.0")
    take_back(page, "Wrong machine")
    target = last(page).body["retracts"]
    assert last(page).body["reason"] == "Wrong machine"
    assert folded(page).get("strength") is None
    start_at(page)
    page.get_by_role("link", name="Wheel lathe").first.click()
    expect(page.get_by_role("main")).to_contain_text("No check yet")
    start_at(page, "log")
    row = page.locator(".log-row", has_text="Taken back")
    expect(row.locator("del")).to_contain_text("reading 4.0")
    row.click()
    expect(page.get_by_role("link", name="Correct this entry")).to_have_count(0)
    press(page, "Put this entry back")
    expect(heading(page)).to_have_text("Saved to the log")
    assert folded(page)["strength"]["entry"] == target
    start_at(page, "log")
    expect(page.locator(".log-row", has_text="reading 4.0")).not_to_contain_text("Taken back")


def test_a_corrected_entry_that_is_taken_back_shows_what_it_said_last(page: Page) -> None:
    checked(page)
    open_entry(page, "reading 4.0")
    correct(page)
    retype(page, "Reading", "5.3")
    compare(page)
    save(page)
    open_entry(page, "reading 5.3")
    take_back(page, "Wrong machine")
    start_at(page, "log")
    row = page.locator(".log-row", has_text="Taken back")
    expect(row.locator("del")).to_contain_text("reading 5.3")
    row.click()
    main = page.get_by_role("main")
    expect(main.get_by_role("heading", name="Taken back")).to_be_visible()
    expect(main.locator("del", has_text="was 4.0")).to_be_visible()
    expect(main.locator(".fact-row", has_text="Reading").first).to_contain_text("5.3")
    press(page, "Put this entry back")
    expect(heading(page)).to_have_text("Saved to the log")
    start_at(page, "log")
    expect(page.locator(".log-row", has_text="reading 5.3")).to_contain_text("Corrected")


def test_not_saved_is_said_and_the_next_press_stores_it_once(page: Page) -> None:
    checked(page)
    before = len(rows(page))
    open_entry(page, "reading 4.0")
    correct(page)
    retype(page, "Reading", "5.3")
    compare(page)
    page.evaluate(
        """() => {
          const add = IDBObjectStore.prototype.add;
          IDBObjectStore.prototype.add = function () {
            IDBObjectStore.prototype.add = add;
            throw new DOMException("full", "QuotaExceededError");
          };
        }"""
    )
    press(page, "Save to the log")
    expect(page.get_by_role("alert")).to_contain_text("NOT SAVED")
    page.wait_for_timeout(1_100)
    press(page, "Try again")
    expect(heading(page)).to_have_text("Saved to the log")
    assert len(rows(page)) == before + 1
