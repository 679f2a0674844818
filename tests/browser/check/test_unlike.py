"""A reading beside the last one: asked once, with two equal answers, and written down."""

import pytest
from playwright.sync_api import Locator, Page, expect

from tests.browser.onescreen import begin_one_screen, expect_recipe, result
from tests.browser.phone import heading
from tests.browser.stored import entries
from tests.browser.walk import (
    check_until_recipe,
    field,
    open_machine,
    press,
    save_check,
    start_check,
)

# Types the last digit, and saves as soon as the recipe stands there.
SAVE_AT_ONCE = """() => new Promise((done) => {
  const look = new MutationObserver(() => {
    const save = [...document.querySelectorAll("button.main-action")]
      .find(({ textContent }) => textContent === "Save and pour");
    if (save === undefined) return;
    look.disconnect();
    save.click();
    done();
  });
  look.observe(document.body, { subtree: true, childList: true, characterData: true });
  const keys = [...document.querySelectorAll("button.key")];
  keys.find(({ textContent }) => textContent === "0").click();
})"""

pytestmark = pytest.mark.usefixtures("machine_on_phone")


def checked_once(page: Page) -> None:
    """The machine has a check of 250 mm and 4.1 Brix, and its page is open."""
    open_machine(page)
    check_until_recipe(page, "250", "4.1")
    save_check(page)
    open_machine(page)


def question(page: Page) -> Locator:
    """What is asked about a number that was typed."""
    return page.get_by_role("region", name="Is that right?")


def type_dip(page: Page, depth: str) -> None:
    """Begins a check and goes on from the dip."""
    start_check(page)
    field(page, "How deep").fill(depth)
    press(page, "Continue")


def type_reading(page: Page, reading: str) -> None:
    """Goes on from the page after the dip, and from the reading."""
    page.get_by_role("button", name="Hard floor").click()
    field(page, "What does the reading").fill(reading)
    press(page, "Continue")


def assert_equal_answers(asked: Locator, *names: str) -> None:
    """Neither answer is easier to press than the other, and both are large enough."""
    boxes = [asked.get_by_role("button", name=name).bounding_box() for name in names]
    widths = [box["width"] for box in boxes if box]
    assert widths == pytest.approx([widths[0]] * len(names), abs=1)
    assert min(box["height"] for box in boxes if box) >= 60


def test_a_decimal_sign_left_out_is_asked_about_once(page: Page) -> None:
    checked_once(page)
    type_dip(page, "248")
    type_reading(page, "0.4")
    asked = question(page)
    expect(asked).to_contain_text("Last time 4.1")
    expect(asked).to_contain_text("nothing poured since")
    expect(asked).to_contain_text("Or is it 4.0")
    assert_equal_answers(asked, "Read again", "Keep")
    press(page, "Read again")
    expect(field(page, "What does the reading")).to_have_value("0.4")
    # 0.4 leaves the target out of reach; 2.0 does not, and is unlike 4.1 too.
    field(page, "What does the reading").fill("2.0")
    page.wait_for_timeout(1_100)
    press(page, "Continue")
    expect(asked).not_to_contain_text("Or is it")
    asked.get_by_role("button", name="Keep").click()
    # Kept, it is not asked about again, and the log says that it was.
    page.get_by_role("button", name="Sharp line").click()
    expect(heading(page)).to_have_text("Where should it be?")
    press(page, "Continue")
    press(page, "Work out the recipe")
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    assert entries(page, "check")[-1]["shown"]["kept"] == ["body.reading.shows 2 Brix unlike_last"]
    page.get_by_role("link", name="Open this entry").click()
    expect(page.get_by_role("main")).to_contain_text("Asked about and kept")


def test_on_one_screen_no_recipe_stands_before_the_answer(page: Page) -> None:
    checked_once(page)
    begin_one_screen(page)
    press(page, "Nothing unusual")
    field(page, "Dip").fill("248")
    field(page, "Reading").fill("2.0")
    expect(result(page)).to_contain_text("unusual")
    press(page, "Work out the recipe")
    asked = question(page)
    expect(asked).to_contain_text("Last time 4.1")
    asked.get_by_role("button", name="Keep").click()
    expect_recipe(page)


def test_on_one_screen_save_asks_the_log_where_it_was_not_asked_yet(page: Page) -> None:
    checked_once(page)
    begin_one_screen(page)
    press(page, "Nothing unusual")
    field(page, "Dip").fill("248")
    field(page, "Reading").fill("2.")
    # Nobody is as quick: before the keys have rested, so before the log was asked.
    page.evaluate(SAVE_AT_ONCE)
    expect(result(page)).to_contain_text("unusual")
    page.wait_for_timeout(1_000)
    expect(heading(page)).to_have_text("The check on one screen")
    assert len(entries(page, "check")) == 1


def test_a_first_reading_far_from_the_target_is_asked_about(page: Page) -> None:
    open_machine(page)
    type_dip(page, "342")
    type_reading(page, "0.5")
    asked = question(page)
    expect(asked).to_contain_text("far from the target")
    expect(asked).to_contain_text("Or is it 5.0")


def test_an_unusual_level_is_asked_about_once_also_at_a_first_check(page: Page) -> None:
    open_machine(page)
    type_dip(page, "34")
    asked = question(page)
    expect(asked).to_contain_text("88 mm to 440 mm")
    assert_equal_answers(asked, "Measure again", "Keep")
    press(page, "Measure again")
    expect(field(page, "How deep")).to_have_value("34")
    page.wait_for_timeout(1_100)
    press(page, "Continue")
    asked.get_by_role("button", name="Keep").click()
    page.get_by_role("button", name="Hard floor").click()
    expect(heading(page)).to_have_text("What does the reading say?")
    page.go_back()
    page.go_back()
    expect(field(page, "How deep")).to_have_value("34")
    press(page, "Continue")
    # Kept, it is not asked about again.
    expect(heading(page)).to_have_text("What did the stick touch?")
