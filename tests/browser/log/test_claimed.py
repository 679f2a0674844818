"""A phone was copied and both went on: what claims one place is seen and decided about."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.claiming import ROWS, brought
from tests.browser.files import start_at
from tests.browser.phone import heading
from tests.browser.stored import entries, folded
from tests.browser.walk import field, press
from tests.phones import id_of


def test_one_of_two_counts(page: Page) -> None:
    old, copy = brought(page)
    places = page.locator(ROWS)
    expect(places).to_have_count(2)
    expect(places.first).to_contain_text("342 mm")
    expect(places.first).to_contain_text("351 mm")
    places.first.click()
    expect(heading(page)).to_have_text("Which of them count?")
    press(page, "Save to the log")
    expect(page.get_by_role("alert")).to_contain_text("Tick what counts")
    page.get_by_text("351 mm").click()
    field(page, "Why").fill("The other one was the wrong machine")
    page.reload()
    expect(page.get_by_role("checkbox", name="351 mm")).to_be_checked()
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    expect(page.get_by_role("status")).to_contain_text("1 entry counts from now on.")
    expect(page.get_by_role("main")).to_contain_text("1 place is left to decide.")
    (own,) = entries(page)
    assert own["kind"] == "decision"
    assert own["body"] == {
        "use": [copy.hash_of(2)],
        "leave": [old.hash_of(2)],
        "reason": "The other one was the wrong machine",
    }
    # pycore folds the same lines to the same state: what is not decided stays in doubt.
    assert folded(page)["strength"]["entry"] == id_of("351 mm")
    press(page, "Decide the next")
    expect(page.get_by_role("heading", name="Not decided")).to_be_visible()
    decided = page.locator(".log-day", has_text="Decided").last
    expect(decided.locator("del")).to_contain_text("342 mm")
    expect(decided).to_contain_text("The other one was the wrong machine")
    start_at(page, "log")
    expect(page.locator(ROWS)).to_have_count(2)
    expect(page.get_by_role("main")).to_contain_text("2 entries are kept apart")


def test_a_name_that_no_line_may_hold_is_refused(page: Page) -> None:
    brought(page)
    page.get_by_role("link", name="Let all of them count").click()
    field(page, "Your name").fill("x" * 41)
    press(page, "Save to the log")
    expect(page.get_by_role("main")).to_contain_text("At most 40 characters, you have 41.")
    assert entries(page) == []


def test_all_of_a_copied_phone_count(page: Page) -> None:
    brought(page)
    page.get_by_role("link", name="Let all of them count").click()
    expect(page.get_by_role("main")).to_contain_text("let all 4 entries count")
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    expect(page.get_by_role("main")).to_contain_text("There is nothing to decide.")
    press(page, "Done")
    expect(page.locator(ROWS)).to_have_count(5)
    expect(page.get_by_role("main")).not_to_contain_text("kept apart")
    # The next start reads only a part of the log, and knows it too.
    page.wait_for_timeout(500)
    start_at(page)
    expect(page.get_by_role("main")).to_contain_text("On hold")
    start_at(page, "log")
    expect(page.locator(ROWS)).to_have_count(5)
    page.get_by_role("link", name="Entries that claim one place").click()
    expect(page.get_by_role("heading", name="Decided")).to_be_visible()
    assert folded(page)["strength"]["entry"] == id_of("360 mm")


def test_a_decision_is_changed_by_a_later_one(page: Page) -> None:
    brought(page)
    for name, before in (("342 mm", 0), ("None of them", 1)):
        page.locator(ROWS, has_text="342 mm").click()
        expect(heading(page)).to_have_text("Which of them count?")
        # What was decided before is ticked.
        expect(page.get_by_role("checkbox", checked=True)).to_have_count(before)
        page.get_by_text(name).click()
        press(page, "Save to the log")
        expect(heading(page)).to_have_text("Saved to the log")
        press(page, "Decide the next")
    decided = page.locator(".log-day", has_text="Decided").last
    expect(decided.locator("del")).to_have_count(2)
    start_at(page, "log")
    expect(page.locator(ROWS)).to_have_count(1)


@pytest.mark.parametrize("place", ["nowhere", "all"])
def test_an_address_of_no_such_place_leads_to_the_list(page: Page, place: str) -> None:
    start_at(page, "log", "claimed", place)
    expect(heading(page)).to_have_text("Entries that claim one place")
    expect(page.get_by_role("main")).to_contain_text("There is nothing to decide.")
