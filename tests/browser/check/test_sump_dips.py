"""Checks where the level is no plain dip: scale, gauge, from the top, divided, waiting."""

import re
from datetime import UTC, datetime

from playwright.sync_api import Page, expect

from tests.browser.phone import heading
from tests.browser.pouring import pour_all, to_first_bucket
from tests.browser.setup.sumpwalk import BOX, SHAPES, choose
from tests.browser.setup.test_wrong_input import assert_refused
from tests.browser.stored import entries
from tests.browser.walk import (
    field,
    has_button,
    next_page,
    open_group,
    press,
    save_check,
    set_up_machine,
    start_check,
)


def set_up(page: Page, *answers: str, height: str = "", wait: str = "", mix: str = "") -> None:
    """A measured box, 288 L at 400 mm, whose level is taken as the answers say."""
    set_up_machine(page, SHAPES[BOX], kind=BOX)
    open_group(page, "taking the level")
    for answer in answers:
        choose(page, answer)
    if height:
        field(page, "Height of that point").fill(height)
    if wait:
        page.get_by_role("combobox", name="Wait after the stop").select_option(wait)
    if mix:
        page.get_by_role("combobox", name="Mix before").select_option(mix)
    next_page(page)
    next_page(page, "Save the machine")
    start_check(page)


def to_recipe(page: Page) -> None:
    """From the page of the reading to the end."""
    expect(heading(page)).to_have_text("What does the reading say?")
    field(page, "What does the reading").fill("4.0")
    next_page(page)
    page.get_by_role("button", name="Sharp line").click()
    expect(heading(page)).to_have_text("Where should it be?")
    next_page(page)
    expect(heading(page)).to_have_text("Is everything right?")


def dip_and_read(page: Page) -> None:
    """From the page of the dip to the recipe of 250 mm on a hard floor."""
    field(page, "How deep").fill("250")
    next_page(page)
    page.get_by_role("button", name="Hard floor").click()
    to_recipe(page)
    next_page(page, "Work out the recipe")


def test_printed_scale_is_read_in_the_plates_unit(page: Page) -> None:
    set_up(page, "Volume on a printed scale")
    for text in ("", "1e3", "-5", "9999999"):
        assert_refused(page, "How much on the scale", text)
    field(page, "How much on the scale").fill("180")
    expect(page.get_by_text("= 180 L")).to_be_visible()
    next_page(page)
    to_recipe(page)
    expect(page.get_by_text("The stick touched")).to_have_count(0)
    next_page(page, "Work out the recipe")
    save_check(page)
    assert entries(page)[-1]["body"]["dip"] == {"depth": {"text": "180", "unit": "L"}}


def test_gauge_between_two_marks(page: Page) -> None:
    set_up(page, "A rough gauge")
    assert_refused(page, "How much on the gauge", "3")
    page.get_by_role("button", name="1/2 to 3/4").click()
    expect(page.get_by_text("1/2 to 3/4 = 180 L")).to_be_visible()
    next_page(page)
    to_recipe(page)
    expect(page.get_by_text("1/2 to 3/4")).to_be_visible()
    next_page(page, "Work out the recipe")
    # A quarter of the sump is three buckets: half of them may stand above the mark.
    expect(page.get_by_text("stop at the mark that it may not pass")).to_be_visible()
    page.get_by_text("Where this comes from").click()
    # Nobody has read a depth.
    expect(page.get_by_text("Rough gauge: about 180 L in the sump")).to_be_visible()
    save_check(page)
    dip = entries(page)[-1]["body"]["dip"]
    assert dip == {
        "depth": {"text": "1/2", "unit": "1"},
        "gauge_to": {"text": "3/4", "unit": "1"},
    }


def test_from_the_top_with_a_waiting_time(page: Page) -> None:
    set_up(page, "From a point at the top", height="500", wait="5")
    expect(page.get_by_text("Stop the pump and wait 5 minutes.")).to_be_visible()
    assert_refused(page, "How far down is it", "20")
    field(page, "How far down is it").fill("180")
    # 320 mm deep: 320 × 0.72 L.
    expect(page.get_by_text("= 230 L")).to_be_visible()
    next_page(page)
    to_recipe(page)


def test_running_pump_says_so(page: Page) -> None:
    set_up(page, "Pump running")
    expect(page.get_by_text("Leave the pump running")).to_be_visible()


def test_blocked_screen_is_no_recipe(page: Page) -> None:
    set_up(page, "Yes, a dirty and a clean side")
    field(page, "How deep").fill("342")
    next_page(page)
    for text in ("", "1e3", "-5", "600"):
        assert_refused(page, "And on the clean side", text)
    field(page, "And on the clean side").fill("300")
    expect(page.get_by_text("stand far apart")).to_be_visible()
    next_page(page)
    page.get_by_role("button", name="Hard floor").click()
    to_recipe(page)
    press(page, "Work out the recipe")
    alert = page.get_by_role("alert").first
    expect(alert).to_contain_text("The two sides stand 42 mm apart; 20 mm is the most. No recipe")
    page.get_by_role("link", name="Change: dip on the clean side").click()
    field(page, "And on the clean side").fill("340")
    next_page(page)
    # Back to where the change was asked for: the recipe, or the answers on the way to it.
    expect(heading(page)).to_have_text(re.compile("Pour this|Is everything right"))
    if has_button(page, "Work out the recipe"):
        next_page(page, "Work out the recipe")
    save_check(page)
    assert entries(page)[-1]["body"]["dip"]["clean_side"] == {"text": "340", "unit": "mm"}


def test_another_way_of_reading_asks_for_the_dip_anew(page: Page) -> None:
    set_up(page)
    field(page, "How deep").fill("180")
    expect(page.get_by_text("= 130 L")).to_be_visible()
    page.go_back()
    page.go_back()
    expect(heading(page)).to_have_text("Wheel lathe")
    open_group(page, "taking the level")
    choose(page, "Volume on a printed scale")
    next_page(page)
    next_page(page, "Save the machine")
    start_check(page)
    expect(field(page, "How much on the scale")).to_have_value("")


def test_a_level_that_was_not_at_rest_is_told_and_counts_as_rough(page: Page) -> None:
    set_up(page)
    field(page, "How deep").fill("250")
    next_page(page)
    page.get_by_role("button", name="Still draining back").click()
    to_recipe(page)
    expect(page.get_by_text("Dipped before it had drained back.")).to_be_visible()
    next_page(page, "Work out the recipe")
    save_check(page)
    entry = entries(page)[-1]
    # What the stick stood on was not said.
    assert entry["body"]["dip"] == {"depth": {"text": "250", "unit": "mm"}, "waited": False}
    assert entry["shown"]["assessment"]["level"]["depth_mm"]["u"] == 8
    page.get_by_role("link", name="Open the log").click()
    page.locator(".log-row").first.click()
    expect(page.get_by_text("Level at the dip")).to_be_visible()
    expect(page.get_by_text("Still draining back")).to_be_visible()
    expect(page.get_by_text("The stick touched")).to_have_count(0)


def test_nothing_drains_back_where_the_level_is_true_while_the_pump_runs(page: Page) -> None:
    set_up(page, "Pump running")
    expect(page.get_by_text("Leave the pump running")).to_be_visible()
    field(page, "How deep").fill("250")
    next_page(page)
    expect(page.get_by_role("button", name="Hard floor")).to_be_visible()
    expect(page.get_by_role("button", name="Still draining back")).to_have_count(0)


def test_a_machine_mixes_as_long_as_its_set_up_says(page: Page) -> None:
    set_up(page, mix="120")
    dip_and_read(page)
    save_check(page)
    steps = entries(page)[-1]["shown"]["plan"]["steps"]
    assert [step["minutes"] for step in steps if step["kind"] == "run"] == [120]
    page.get_by_role("link", name="Open the log").click()
    page.locator(".log-row").first.click()
    set_up_facts = page.get_by_role("main").get_by_text("Mix before the second reading")
    expect(set_up_facts).to_be_visible()


def test_a_reading_that_is_due_on_another_day_says_which(page: Page) -> None:
    page.clock.install(time=datetime.now(UTC).replace(hour=21, minute=0))
    page.add_init_script("globalThis.hasOurClock = true")
    page.reload()
    set_up(page, mix="480")
    dip_and_read(page)
    press(page, "Save to the log")
    pour_all(page, to_first_bucket(page))
    expect(
        page.get_by_text(re.compile(r"Reading due at \w{3} \d+ \w{3}, \d+:\d\d"))
    ).to_be_visible()
