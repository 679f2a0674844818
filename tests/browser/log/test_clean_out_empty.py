"""A sump that was emptied, the clean-out not ended: nothing of before is shown or poured again."""

import re
import time
from datetime import timedelta

import pytest
from playwright.sync_api import Page, expect

from tests.browser.files import start_at, take_in
from tests.browser.log.test_clean_out_open import charged_in_part, machine_id, stop, until_empty
from tests.browser.phone import PHONE_SIZE, heading
from tests.browser.stored import entries
from tests.browser.walk import check_until_recipe, open_machine, press, save_check
from tests.phones import MORNING_S, moment, typed
from tests.phones import Phone as Writer

pytestmark = pytest.mark.usefixtures("machine_on_phone")

TO_LEFT = [
    *("ready", "skimmed", "cleaner_in", "ran", "locked", "drained", "chips_out"),
    *("rinsed", "rinse_out", "rinsed_again", "left"),
]


def soon_s() -> int:
    """A time later than what this page has written."""
    return int(time.time()) - MORNING_S + 300


def begin_emptied(page: Page) -> None:
    """A recipe of the old charge, and then the sump is empty."""
    open_machine(page)
    check_until_recipe(page)
    save_check(page)
    page.get_by_role("link", name="Wheel lathe").click()
    page.get_by_role("link", name="Clean out and charge anew").click()
    press(page, "Begin the clean-out")
    until_empty(page)


def expect_emptied(page: Page, said: str = "Emptied") -> None:
    """In the list and at the machine: no old reading as the present one, and no old recipe."""
    start_at(page)
    row = page.get_by_role("link", name=re.compile("Wheel lathe"))
    expect(row).to_contain_text(said)
    expect(row).not_to_contain_text("Too weak")
    start_at(page, "machines", machine_id(page))
    main = page.get_by_role("main")
    expect(main).to_contain_text(said)
    expect(page.get_by_role("link", name="Pour the recipe of")).to_have_count(0)


def tag(page: Page, state: str) -> None:
    """Somebody says on another phone how the machine is used."""
    other = Writer(f"phone that says {state}")
    other.save("machine_state", {"state": state}, soon_s(), machine_id(page))
    take_in(page, other.export(), 1)


def test_a_machine_that_is_set_in_use_again_stays_emptied(page: Page) -> None:
    begin_emptied(page)
    stop(page)
    tag(page, "in_use")
    expect_emptied(page)
    press(page, "Go on with the clean-out")
    press(page, "Go on where it stopped")
    expect(heading(page)).to_have_text("Chips and sludge out")


def test_one_that_is_begun_from_the_start_stays_emptied(page: Page) -> None:
    begin_emptied(page)
    stop(page)
    start_at(page, "machines", machine_id(page), "clean-out")
    expect(page.get_by_role("main")).to_contain_text("is it still isolated and locked")
    press(page, "Begin from the start")
    expect(heading(page)).to_have_text("Get ready")
    expect_emptied(page)


def test_a_sump_stays_emptied_beyond_what_a_start_reads(page: Page) -> None:
    begin_emptied(page)
    stop(page)
    start_at(page, "machines", machine_id(page), "clean-out")
    press(page, "Begin from the start")
    press(page, "All is ready")
    stop(page)
    other = Writer("the other phone")
    for number in range(120):
        other.save("note", {"text": "x"}, soon_s() + number, machine_id(page))
    take_in(page, other.export(), 120)
    # The first start after it keeps what the next ones read.
    expect_emptied(page)
    expect_emptied(page)


def test_a_clock_that_is_set_back_hides_no_own_clean_out(page: Page) -> None:
    begin_emptied(page)
    stop(page)
    before = entries(page, "clean_out")[-1]["measured_at"]
    page.clock.install(time=time.time() - timedelta(days=2).total_seconds())
    page.reload()
    expect_emptied(page)
    assert entries(page, "clean_out")[-1]["measured_at"] == before


def test_a_charge_that_is_in_is_not_called_empty(page: Page) -> None:
    charged_in_part(page)
    expect_emptied(page, "New charge")


def test_a_check_during_it_is_the_newer_one(page: Page) -> None:
    begin_emptied(page)
    start_at(page, "machines", machine_id(page))
    check_until_recipe(page)
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    expect(page.get_by_role("button", name="Start pouring")).to_be_visible()
    start_at(page)
    expect(page.get_by_role("link", name=re.compile("Wheel lathe"))).not_to_contain_text("Emptied")


def test_a_tag_is_asked_about_before_one_goes_on(page: Page) -> None:
    begin_emptied(page)
    stop(page)
    tag(page, "on_hold")
    start_at(page, "machines", machine_id(page), "clean-out")
    press(page, "Go on where it stopped")
    expect(heading(page)).to_have_text("A tag hangs on this machine")
    page.get_by_role("radio", name="It stays").check(force=True)
    press(page, "Begin the clean-out")
    expect(heading(page)).to_have_text("Chips and sludge out")


def test_volumes_in_another_unit_stay_in_their_own_entry(page: Page) -> None:
    steps = [{"state": state, "at": moment(soon_s())} for state in TO_LEFT[:6]]
    other = Writer("the other phone")
    body = {"finished": False, "steps": steps, "waste": typed("50", "US gal")}
    other.save("clean_out", body, soon_s(), machine_id(page))
    take_in(page, other.export(), 1)
    start_at(page, "machines", machine_id(page), "clean-out")
    go_on = page.get_by_role("button", name="Go on where it stopped")
    box = go_on.bounding_box()
    assert box is not None
    assert box["y"] + box["height"] <= PHONE_SIZE[1]
    go_on.click()
    expect(heading(page)).to_have_text("Chips and sludge out")
    stop(page)
    assert "waste" not in entries(page, "clean_out")[-1]["body"]
    assert entries(page, "withdrawal") == []


def test_more_buckets_than_the_recipe_has_and_a_missing_step(page: Page) -> None:
    machine = machine_id(page)
    row = {"count": 30, "kind": "mix", "water": typed("8", "L"), "concentrate": typed("700", "mL")}
    left = {"left": typed("6", "L"), "left_strength": typed("1", "%")}
    steps = [{"state": state, "at": moment(soon_s())} for state in TO_LEFT]
    other = Writer("the other phone")
    body = {"finished": False, "steps": steps, **left, "charge": [row]}
    other.save("clean_out", body, soon_s(), machine)
    take_in(page, other.export(), 1)
    start_at(page, "machines", machine, "clean-out")
    press(page, "Go on where it stopped")
    expect(page.get_by_role("button", name="The charge is in")).to_be_visible()
    third = Writer("a third phone")
    body = {"finished": False, "steps": [steps[0], steps[7]]}
    third.save("clean_out", body, soon_s() + 60, machine)
    stop(page)
    take_in(page, third.export(), 1)
    start_at(page, "machines", machine, "clean-out")
    press(page, "Go on where it stopped")
    # Nothing behind a step that nobody ticked is taken for done.
    expect(heading(page)).to_have_text("Skim the oil")
