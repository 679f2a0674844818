"""A clean-out that goes on or was stopped: what leads at its machine, what is said of the sump."""

import re

import pytest
from playwright.sync_api import Page, expect

from tests.browser.files import start_at
from tests.browser.log.test_clean_out import TO_THE_REST, begin, tick, to_the_rest
from tests.browser.looking import Look
from tests.browser.phone import heading
from tests.browser.pouring import pour_bucket, start_pouring
from tests.browser.stored import entries
from tests.browser.walk import (
    check_until_recipe,
    field,
    next_page,
    open_group,
    open_machine,
    pass_by,
    press,
    save_check,
)

pytestmark = pytest.mark.usefixtures("machine_on_phone")

UNTIL_EMPTY = TO_THE_REST[:6]


def until_empty(page: Page) -> None:
    for title, button in UNTIL_EMPTY:
        tick(page, title, button)
    expect(heading(page)).to_have_text("Chips and sludge out")


def stop(page: Page, why: str = "") -> None:
    page.get_by_role("link", name="Stop here").click()
    if why:
        field(page, "Why, and what").fill(why)
    press(page, "Save as not finished")
    expect(heading(page)).to_have_text("Saved to the log")


def machine_id(page: Page) -> str:
    return str(entries(page, "machine_set")[0]["machine"])


def test_it_leads_in_the_list_and_at_its_machine(page: Page) -> None:
    open_machine(page)
    check_until_recipe(page)
    save_check(page)
    begin(page)
    until_empty(page)
    start_at(page)
    row = page.get_by_role("link", name=re.compile("Wheel lathe"))
    expect(row).to_contain_text("Clean-out under way: step 7 of 14")
    # The old reading is of what is gone.
    expect(row).to_contain_text("Emptied")
    expect(row).not_to_contain_text("Too weak")
    look = Look("light-clean-open")
    look(page)
    press(page, "Go on with the clean-out: Wheel lathe")
    expect(heading(page)).to_have_text("Chips and sludge out")
    start_at(page, "machines", machine_id(page))
    expect(page.get_by_role("heading", name="Before the clean-out: check")).to_be_visible()
    expect(page.get_by_role("link", name="Pour the recipe of")).to_have_count(0)
    look(page)
    press(page, "Go on with the clean-out")
    expect(heading(page)).to_have_text("Chips and sludge out")
    assert look.wrong == []


def test_one_that_was_stopped_goes_on_where_it_was(page: Page) -> None:
    begin(page)
    for title, button in TO_THE_REST[:2]:
        tick(page, title, button)
    press(page, "Leave this step out")
    press(page, "Leave this step out")
    tick(page, "Isolate and lock", "Isolated and locked")
    stop(page, "Pump for the waste is broken.")
    start_at(page)
    row = page.get_by_role("link", name=re.compile("Wheel lathe"))
    expect(row).to_contain_text("Clean-out not finished")
    start_at(page, "machines", machine_id(page))
    main = page.get_by_role("main")
    expect(main).to_contain_text("Pump for the waste is broken.")
    press(page, "Go on with the clean-out")
    expect(main).to_contain_text("Reached last: Isolated and locked.")
    look = Look("light-clean-stopped")
    look(page)
    press(page, "Go on where it stopped")
    expect(heading(page)).to_have_text("Old coolant out")
    expect(page.get_by_text("Step 6 of 14")).to_be_visible()
    press(page, "The sump is empty")
    stop(page)
    # It stands in the later one, and would count twice.
    (taken_back,) = entries(page, "withdrawal")
    assert taken_back["body"]["retracts"] == entries(page, "clean_out")[0]["id"]
    first, second = (entry["body"]["steps"] for entry in entries(page, "clean_out"))
    assert second[: len(first)] == first
    assert [step["state"] for step in second] == ["ready", "skimmed", "locked", "drained"]
    assert look.wrong == []


def charged_in_part(page: Page) -> None:
    """Two buckets of the new charge are in, and then it is stopped."""
    begin(page)
    to_the_rest(page, pass_by)
    expect(page.get_by_role("button", name="Bucket 1 is in")).to_be_enabled()
    press(page, "Bucket 1 is in")
    press(page, "Bucket 2 is in")
    expect(page.get_by_text("2 of 22 buckets are in.")).to_be_visible()
    stop(page)


def test_buckets_that_were_in_are_told_and_counted_on(page: Page) -> None:
    charged_in_part(page)
    start_at(page, "log")
    told = "put in: 2 buckets of 8 L water and 700 mL concentrate each"
    expect(page.get_by_role("main")).to_contain_text(told)
    start_at(page, "machines", machine_id(page), "clean-out")
    press(page, "Go on where it stopped")
    expect(page.get_by_text("2 of 22 buckets are in.")).to_be_visible()
    press(page, "Bucket 3 is in")
    expect(page.get_by_text("3 of 22 buckets are in.")).to_be_visible()


def test_after_another_set_up_what_is_in_the_sump_is_asked_for_again(page: Page) -> None:
    charged_in_part(page)
    start_at(page, "machines", machine_id(page))
    open_group(page, "name")
    field(page, "Name of the machine").fill("Wheel lathe, hall 2")
    next_page(page)
    next_page(page, "Save the machine")
    start_at(page, "machines", machine_id(page), "clean-out")
    press(page, "Go on where it stopped")
    expect(heading(page)).to_have_text("What stays behind")
    expect(field(page, "Left in the sump")).to_have_value("")


def test_a_pour_and_a_clean_out_know_of_each_other(page: Page) -> None:
    start_pouring(page)
    pour_bucket(page, 1)
    machine = machine_id(page)
    start_at(page, "machines", machine, "clean-out")
    main = page.get_by_role("main")
    expect(main).to_contain_text("A recipe is still being poured here.")
    press(page, "Begin the clean-out")
    for title, button in UNTIL_EMPTY[:-1]:
        tick(page, title, button)
        page.clock.fast_forward(1000)
    start_at(page, "machines", machine)
    expect(page.get_by_role("link", name="Go on pouring")).to_be_visible()
    press(page, "Go on with the clean-out")
    press(page, "The sump is empty")
    start_at(page, "machines", machine)
    page.get_by_role("link", name="Close the old pour").click()
    expect(heading(page)).to_have_text("Nothing more of this")
    expect(main).to_contain_text("came after this recipe")
    expect(page.get_by_role("button", name="Poured")).to_have_count(0)
