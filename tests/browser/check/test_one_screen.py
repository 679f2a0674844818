"""The check on one screen beside the guided walk: the same recipe, gates and entries."""

import re

import pytest
from playwright.sync_api import Page, expect

from tests.browser.keyboard import enter, tab_to
from tests.browser.onescreen import (
    entries_of,
    expect_recipe,
    open_one_screen,
    result,
    type_check,
)
from tests.browser.phone import heading
from tests.browser.pouring import pour_bucket
from tests.browser.walk import (
    check_until_recipe,
    field,
    next_page,
    open_machine,
    press,
    start_check,
)

pytestmark = pytest.mark.usefixtures("machine_on_phone")


def recipe_page(page: Page) -> str:
    """Everything that the recipe's own page says."""
    expect(page.get_by_role("heading", name="Take care")).to_be_visible()
    return page.get_by_role("main").inner_text()


def test_both_ways_of_checking_say_and_store_the_same(page: Page) -> None:
    open_machine(page)
    check_until_recipe(page)
    guided = recipe_page(page)
    press(page, "Save to the log")
    press(page, "Start pouring")
    press(page, "Right drum, gloves on")
    pour_bucket(page, 1)
    for _ in range(4):
        press(page, "Undo")
    press(page, "Undo")
    page.get_by_role("link", name="Stop here").click()
    press(page, "That is all")
    press(page, "Back to the machines")

    open_one_screen(page)
    type_check(page)
    line = expect_recipe(page)
    assert line == "6 buckets, each 6 L water and 1.2 L concentrate"
    result(page).get_by_role("link", name="More about this recipe").click()
    assert recipe_page(page) == guided
    page.go_back()
    press(page, "Save and pour")
    expect(heading(page)).to_have_text("Before the first bucket")
    press(page, "Right drum, gloves on")

    for kind in ("check", "plan"):
        first, second = entries_of(page, kind)
        assert first == second
    # One tick a bucket, and the amounts of the whole bucket beside it.
    expect(page.get_by_text("6 L water and 1.2 L concentrate")).to_be_visible()
    for n in range(1, 7):
        press(page, f"Bucket {n} is poured")
    expect(heading(page)).to_have_text("All in")
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    poured = entries_of(page, "pour")[-1]["body"]
    assert (poured["finished"], [row["count"] for row in poured["pours"]]) == (True, [6])
    # Back from a pour that is over leads to no second one.
    page.go_back()
    expect(heading(page)).to_have_text("Saved to the log")


def test_changing_over_keeps_what_was_typed(page: Page) -> None:
    open_machine(page)
    start_check(page)
    field(page, "How deep").fill("342")
    next_page(page)
    page.get_by_role("button", name="Hard floor").click()
    field(page, "What does the reading").fill("4.")
    press(page, "One screen")
    expect(field(page, "Dip")).to_have_value("342")
    expect(field(page, "Reading")).to_have_value("4.")
    expect(page.get_by_role("link", name="Change: The stick touched, Hard floor")).to_be_visible()
    field(page, "Reading").fill("4.2")
    line = expect_recipe(page)
    press(page, "Guide me")
    # The first question that is open, with all before it answered.
    expect(heading(page)).to_have_text("How well could you read it?")
    page.reload()
    page.get_by_role("button", name="Sharp line").click()
    expect(heading(page)).to_have_text("Where should it be?")
    next_page(page)
    expect(page.get_by_text("4.2 Brix", exact=True)).to_be_visible()
    press(page, "One screen")
    assert expect_recipe(page) == line
    # The phone remembers how it was used last.
    page.reload()
    expect(heading(page)).to_have_text("The check on one screen")
    press(page, "Back")
    page.goto(re.sub("#.*", "", page.url))
    page.get_by_role("link", name="Wheel lathe").click()
    expect(page.get_by_role("switch", name="Check on one screen")).to_be_checked()
    press(page, "Go on with the check")
    expect(field(page, "Dip")).to_have_value("342")


def test_nothing_is_offered_before_look_and_smell(page: Page) -> None:
    open_one_screen(page)
    field(page, "Dip").fill("342")
    field(page, "Reading").fill("4.0")
    expect(result(page)).to_contain_text("Still to come: look and smell.")
    press(page, "Work out the recipe")
    expect(page.get_by_role("alert")).to_have_text("Look and smell first")
    page.get_by_role("link", name="Something").click()
    expect(heading(page)).to_have_text("Look and smell first")
    page.get_by_text("Oil floats on it").click()
    press(page, "Continue")
    press(page, "Skimmed, go on")
    assert expect_recipe(page).startswith("6 buckets")
    # Somebody who has looked and not yet answered is led to the list by the guided walk too.
    page.get_by_role("link", name="Change: Look and smell").click()
    expect(page.get_by_role("checkbox", name="Oil floats on it")).to_be_checked()


def test_the_gates_are_those_of_the_guided_pages(page: Page) -> None:
    open_machine(page)
    start_check(page)
    field(page, "How deep").fill("9999")
    press(page, "Continue")
    refusal = page.get_by_role("alert").inner_text()
    assert "between" in refusal
    press(page, "One screen")
    expect(result(page)).to_contain_text("Still to come: reading.")
    field(page, "Reading").fill("25")
    expect(result(page)).to_contain_text("No recipe with this dip depth.")
    # Nothing is told off while somebody still types.
    expect(page.get_by_role("alert")).to_have_count(0)
    press(page, "Work out the recipe")
    expect(page.get_by_role("alert")).to_have_text(refusal)
    expect(field(page, "Dip")).to_have_value("9999")
    expect(field(page, "Dip")).to_be_focused()
    expect(field(page, "Dip")).to_have_accessible_description(refusal)

    field(page, "Dip").fill("342")
    expect(result(page)).to_contain_text("Reading 25 Brix is unusual.")
    press(page, "Work out the recipe")
    expect(page.get_by_role("heading", name="Reading 25 Brix is unusual.")).to_be_visible()
    press(page, "Read again")
    expect(field(page, "Reading")).to_have_value("25")
    press(page, "Work out the recipe")
    press(page, "Keep 25 Brix")
    expect(result(page).get_by_text("About")).to_be_visible()


# Every question of the page reaches the worker so many milliseconds late.
SLOW = """
const post = Worker.prototype.postMessage;
Worker.prototype.postMessage = function (...given) {
  setTimeout(() => post.apply(this, given), window.late_ms ?? 0);
};
"""
WATCH = """
() => {
  const area = document.querySelector(".result");
  window.seen = [];
  const note = () => window.seen.push(area.innerText.trim());
  new MutationObserver(note).observe(area, { subtree: true, childList: true, characterData: true });
}
"""


def test_an_old_recipe_never_stands_beside_new_numbers(page: Page) -> None:
    page.add_init_script(SLOW)
    page.reload()
    open_one_screen(page)
    press(page, "Nothing unusual")
    lines = {}
    field(page, "Reading").fill("4.0")
    for depth in ("300", "200", "342"):
        field(page, "Dip").fill(depth)
        expect(page.get_by_text("mm").first).to_be_visible()
        lines[depth] = expect_recipe(page)
    assert len(set(lines.values())) == 3
    spoken = result(page).get_by_role("status")
    expect(spoken).to_contain_text(lines["342"].split(",")[0].replace(" ", "\N{NO-BREAK SPACE}"))
    page.evaluate(WATCH)
    page.evaluate("window.late_ms = 4_000")
    key = page.get_by_role("button", name="5", exact=True)
    before = key.bounding_box()
    field(page, "Dip").fill("300")
    expect(result(page)).to_contain_text("…")
    # The keys stay under the thumb.
    assert key.bounding_box() == before
    assert spoken.inner_text() == ""
    page.wait_for_timeout(300)
    field(page, "Dip").fill("200")
    assert expect_recipe(page) == lines["200"]
    seen = [text.replace("\N{NO-BREAK SPACE}", " ") for text in page.evaluate("window.seen")]
    assert "…" in seen
    for text in seen:
        assert lines["300"] not in text
        assert lines["342"] not in text
    # Said only once the keys have rested.
    expect(spoken).to_contain_text("concentrate")


def test_from_the_machine_to_the_first_bucket_by_keyboard(page: Page) -> None:
    open_machine(page)
    tab_to(page, "switch", "Check on one screen")
    page.keyboard.press("Space")
    for role, name in (("button", "Start a check"), ("button", "Nothing unusual")):
        tab_to(page, role, name)
        page.keyboard.press("Enter")
    # The row that was answered is gone; the dip has the focus.
    expect(field(page, "Dip")).to_be_focused()
    page.keyboard.type("342")
    page.keyboard.press("Enter")
    expect(field(page, "Reading")).to_be_focused()
    for key in ("4", "Decimal sign", "0"):
        tab_to(page, "button", key)
        page.keyboard.press("Enter")
    tab_to(page, "link", "Change: The stick touched")
    page.keyboard.press("Enter")
    tab_to(page, "button", "Hard floor")
    page.keyboard.press("Enter")
    assert expect_recipe(page).startswith("6 buckets")
    tab_to(page, "button", "Save and pour")
    page.keyboard.press("Enter")
    enter(page, "button", "Right drum, gloves on")
    expect(heading(page)).to_have_text("Bucket 1 of 6")
