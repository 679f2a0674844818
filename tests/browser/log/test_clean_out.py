"""A clean-out from the first tick to the new charge, through a killed phone, or stopped early."""

import json
from collections.abc import Callable

import pytest
from playwright.sync_api import Page, expect

from pycore.journal.file import write_file
from tests.browser.files import start_at, take_in
from tests.browser.looking import Look
from tests.browser.phone import Phone, Theme, heading
from tests.browser.server import Server
from tests.browser.stored import entries, rows
from tests.browser.walk import check_until_recipe, field, open_machine, press, save_check
from tests.phones import Phone as Writer

# Later than what this page writes, whatever day it is.
_SOON_S = 20 * 365 * 86_400
TO_THE_REST = [
    ("Get ready", "All is ready"),
    ("Skim the oil", "Oil is off"),
    ("Cleaner into the old coolant", "Cleaner is in"),
    ("Let the cleaner run", "It has run"),
    ("Isolate and lock", "Isolated and locked"),
    ("Old coolant out", "The sump is empty"),
    ("Chips and sludge out", "It is clean"),
    ("First rinse", "The rinse has run"),
    ("Rinse out", "The rinse is out"),
    ("Second rinse", "The second rinse is out"),
]


def begin(page: Page) -> None:
    page.get_by_role("link", name="Wheel lathe").click()
    page.get_by_role("link", name="Clean out and charge anew").click()
    press(page, "Begin the clean-out")


def tick(page: Page, title: str, button: str) -> None:
    expect(heading(page)).to_have_text(title)
    press(page, button)


def to_the_rest(page: Page, look: Callable[[Page], None]) -> None:
    """Every state until the rinse is out, with what is asked for on the way."""
    main = page.get_by_role("main")
    for title, button in TO_THE_REST:
        expect(heading(page)).to_have_text(title)
        if title == "Old coolant out":
            field(page, "Waste (may stay empty)").fill("about 190")
            press(page, button)
            expect(main).to_contain_text("Amount of waste must be")
            field(page, "Waste (may stay empty)").fill("190")
            # A refusal belongs to what was typed, and goes with it.
            expect(main).not_to_contain_text("Amount of waste must be")
            field(page, "Where it went").fill("Drum 4")
        look(page)
        tick(page, title, button)
    expect(heading(page)).to_have_text("What stays behind")
    press(page, "That stays behind")
    expect(main).to_contain_text("Enter the amount that is left.")
    field(page, "Left in the sump").fill("6")
    field(page, "Its strength").fill("1")
    look(page)
    press(page, "That stays behind")


@pytest.mark.usefixtures("machine_on_phone")
@pytest.mark.parametrize("theme", ["light", "dark"])
def test_whole_clean_out_through_a_killed_phone(phone: Phone, server: Server, theme: Theme) -> None:
    page = phone.start(theme)
    page.goto(server.address)
    look = Look(f"{theme}-clean")
    page.get_by_role("link", name="Wheel lathe").click()
    page.get_by_role("link", name="Clean out and charge anew").click()
    expect(page.get_by_text("No finished clean-out in this log.")).to_be_visible()
    look(page)
    press(page, "Begin the clean-out")
    to_the_rest(page, look)
    expect(page.get_by_role("button", name="Bucket 1 is in")).to_be_enabled()
    look(page)
    press(page, "Bucket 1 is in")
    press(page, "Bucket 2 is in")
    expect(page.get_by_text("2 of 22 buckets are in.")).to_be_visible()
    # The phone dies in the middle of the charge.
    phone.close()
    page = phone.start(theme)
    page.goto(server.address)
    page.get_by_role("link", name="Wheel lathe").click()
    press(page, "Go on with the clean-out")
    expect(page.get_by_text("2 of 22 buckets are in.")).to_be_visible()
    press(page, "Undo")
    for n in range(2, 23):
        press(page, f"Bucket {n} is in")
    field(page, "Lot of the drum").fill("A 1302")
    press(page, "The charge is in")
    tick(page, "Let it mix", "It has mixed")
    field(page, "Refractometer reading").fill("5.2")
    field(page, "First-fill pH").fill("9.2")
    expect(page.get_by_text("That is 7.8")).to_be_visible()
    look(page)
    press(page, "Save the new charge")
    expect(heading(page)).to_have_text("New charge saved")
    look(page)
    assert look.wrong == []
    check_entries(page)
    # What was written down on the way stood in the log and on no page.
    (cleaned,) = entries(page, "clean_out")
    start_at(page, "log", cleaned["id"])
    for told in ("190 L", "Drum 4", "6 L", "A 1302", "The sump is empty"):
        expect(page.get_by_role("main")).to_contain_text(told)


def check_entries(page: Page) -> None:
    """What the log holds afterwards."""
    (cleaned,) = entries(page, "clean_out")
    body = cleaned["body"]
    assert body["finished"] is True
    assert len(body["steps"]) == 13
    times = [step["at"] for step in body["steps"]]
    assert times == sorted(times)
    assert body["waste"] == {"text": "190", "unit": "L"}
    assert body["left_strength"] == {"text": "1", "unit": "%"}
    (row,) = body["charge"]
    assert (row["count"], row["water"]["text"], row["concentrate"]["text"]) == (22, "8", "700")
    assert (body["lot"], body["waste_note"]) == ("A 1302", "Drum 4")
    (check,) = entries(page, "check")
    assert check["body"]["reading"]["shows"] == {"text": "5.2", "unit": "Brix"}
    assert check["body"]["ph"] == {"text": "9.2", "unit": "1"}
    setup = entries(page, "machine_set")[-1]["body"]["machine"]
    assert setup["fluid"]["first_fill_ph"] == {"text": "9.2", "unit": "1"}
    states = [entry["body"]["state"] for entry in entries(page, "machine_state")]
    assert states == ["clean_out", "in_use"]


@pytest.mark.usefixtures("machine_on_phone")
def test_stopped_early_says_what_was_reached(page: Page) -> None:
    begin(page)
    page.get_by_role("link", name="Stop here").click()
    press(page, "Nothing was done: end it without an entry")
    assert entries(page, "clean_out") == []
    page.get_by_role("link", name="Clean out and charge anew").click()
    press(page, "Begin the clean-out")
    for title, button in TO_THE_REST[:2]:
        tick(page, title, button)
    press(page, "Leave this step out")
    press(page, "Leave this step out")
    tick(page, "Isolate and lock", "Isolated and locked")
    page.get_by_role("link", name="Stop here").click()
    expect(page.get_by_role("main")).to_contain_text("Isolated and locked")
    field(page, "Why, and what").fill("Pump for the waste is broken.")
    press(page, "Save as not finished")
    expect(heading(page)).to_have_text("Saved to the log")
    (stopped,) = entries(page, "clean_out")
    body = stopped["body"]
    assert body["finished"] is False
    assert [step["state"] for step in body["steps"]] == ["ready", "skimmed", "locked"]
    assert body["remarks"] == "Pump for the waste is broken."
    assert [e["body"]["state"] for e in entries(page, "machine_state")] == ["clean_out"]


@pytest.mark.usefixtures("machine_on_phone")
def test_a_clean_out_from_another_phone_ends_the_recipe_of_the_old_charge(page: Page) -> None:
    open_machine(page)
    check_until_recipe(page)
    save_check(page)
    open_machine(page)
    recipe = page.get_by_role("link", name="Pour the recipe of")
    expect(recipe).to_be_visible()
    machine = json.loads(rows(page)[0]["text"])["machine"]
    other = Writer("other")
    other.save("clean_out", {"finished": True}, _SOON_S, machine=machine)
    take_in(page, write_file(other.lines, []), 1)
    start_at(page, f"machines/{machine}")
    expect(page.get_by_text("No check yet.")).to_be_visible()
    expect(recipe).to_have_count(0)


@pytest.mark.usefixtures("machine_on_phone")
def test_a_tag_is_not_lost_to_a_word_of_the_same_minutes(page: Page) -> None:
    open_machine(page)
    machine = json.loads(rows(page)[0]["text"])["machine"]
    tag, other = Writer("tag"), Writer("other")
    tag.save("machine_state", {"state": "on_hold", "reason": "wrong_drum"}, _SOON_S, machine)
    other.save("machine_state", {"state": "in_use"}, _SOON_S + 60, machine)
    take_in(page, write_file(tag.lines + other.lines, []), 2)
    start_at(page, f"machines/{machine}")
    expect(page.get_by_text("On hold").first).to_be_visible()
    press(page, "Start a check")
    expect(heading(page)).to_have_text("On hold")
