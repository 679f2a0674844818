"""A dip without a reading, a reading without a dip: typed, refused, saved, found in the log."""

import json
import re

import pytest
from playwright.sync_api import Page, expect

from tests.browser.phone import heading
from tests.browser.setup.test_wrong_input import WRONG, assert_refused
from tests.browser.sidesteps import (
    dip,
    follow,
    open_entry,
    read_first,
    to_machine_from_entry,
)
from tests.browser.stored import entries
from tests.browser.walk import (
    check_until_recipe,
    field,
    next_page,
    open_machine,
    press,
    save_check,
    start_check,
)

pytestmark = pytest.mark.usefixtures("machine_on_phone")


def test_dip_without_a_reading_and_without_a_log(page: Page) -> None:
    open_machine(page)
    dip(page)
    press(page, "Read later")
    expect(heading(page)).to_have_text("What is the usual mix?")
    for text in ["", *WRONG, "0.5", "25"]:
        assert_refused(page, "What is the usual mix", text)
    expect(page.get_by_role("alert")).to_contain_text(re.compile("1.% and 20.%"))
    field(page, "What is the usual mix").fill("3")
    next_page(page)
    expect(heading(page)).to_have_text("Fill up, read later")
    expect(page.get_by_text("Nobody can tell without a reading.")).to_be_visible()
    page.go_back()
    expect(field(page, "What is the usual mix")).to_have_value("3")
    next_page(page)
    press(page, "Save to the log")
    expect(page.get_by_text("The reading is still open.")).to_be_visible()
    open_entry(page)
    expect(page.get_by_text("Still open", exact=True)).to_be_visible()
    expect(page.get_by_text("In each of the")).to_be_visible()
    check = entries(page)[-1]
    assert check["body"]["usual"] == {"text": "3", "unit": "%"}
    assert "reading" not in check["body"]
    assert "strength" not in check["shown"]["assessment"]
    assert check["shown"]["holding"]["pours"]
    to_machine_from_entry(page)
    expect(page.get_by_role("heading", name="Reading still open")).to_be_visible()
    follow(page, "Open the log")
    expect(page.get_by_text("Dip 342 mm, no reading. 6 buckets of the usual mix.")).to_be_visible()


def test_open_reading_ends_with_the_next_whole_check(page: Page) -> None:
    open_machine(page)
    dip(page)
    press(page, "Read later")
    field(page, "What is the usual mix").fill("3")
    next_page(page)
    press(page, "Save to the log")
    next_page(page, "Back to the machines")
    expect(page.get_by_text("Reading still open")).to_be_visible()
    page.get_by_role("link", name="Wheel lathe").click()
    check_until_recipe(page, "400", "5.0")
    save_check(page)
    expect(heading(page)).to_have_text("Machines")
    expect(page.get_by_text("Reading still open")).to_have_count(0)


def test_dip_without_a_reading_after_a_check(page: Page) -> None:
    open_machine(page)
    check_until_recipe(page, "380", "5.4")
    save_check(page)
    page.get_by_role("link", name="Wheel lathe").click()
    dip(page, "352")
    expect(page.get_by_text("Last time 5.4 Brix", exact=False)).to_be_visible()
    press(page, "Read later")
    expect(heading(page)).to_have_text("Fill up, read later")
    expect(page.get_by_text(re.compile("At worst"))).to_be_visible()
    press(page, "Save to the log")
    open_entry(page)
    expect(page.get_by_text(re.compile("At worst"))).to_be_visible()
    whole, held = entries(page)[-2:]
    measured = {name: part for name, part in whole["body"].items() if name != "look"}
    assert held["body"]["last"] == {"check": measured, "at": whole["measured_at"]}
    assert held["shown"]["assumed"] == ["last_recipe_poured", "usual_of_last_recipe", "drift"]
    to_machine_from_entry(page)
    # After a top-up without a reading nobody knows the strength; the mix is the same as before.
    dip(page, "400")
    press(page, "Read later")
    expect(page.get_by_text("Nobody can tell without a reading.")).to_be_visible()
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    again = entries(page)[-1]
    assert "last" not in again["body"]
    assert float(again["body"]["usual"]["text"]) == held["shown"]["shown"]["usual"]["value"]


def test_mix_of_a_correction_is_not_taken_for_the_usual_one(page: Page) -> None:
    open_machine(page)
    check_until_recipe(page, "380", "4.3")
    save_check(page)
    page.get_by_role("link", name="Wheel lathe").click()
    dip(page, "352")
    press(page, "Read later")
    expect(heading(page)).to_have_text("What is the usual mix?")
    field(page, "What is the usual mix").fill("3,5")
    next_page(page)
    expect(page.get_by_text(re.compile("At worst"))).to_be_visible()
    follow(page, "Change: Usual top-up mix")
    field(page, "What is the usual mix").fill("4")
    next_page(page)
    expect(page.get_by_text("4 %", exact=True)).to_be_visible()


def test_clock_that_was_set_back_is_said(page: Page) -> None:
    open_machine(page)
    check_until_recipe(page, "380", "5.4")
    save_check(page)
    page.clock.set_fixed_time("2020-01-01T08:00:00Z")
    page.get_by_role("link", name="Wheel lathe").click()
    dip(page, "352")
    press(page, "Read later")
    expect(page.get_by_role("alert")).to_contain_text("The clock of this phone")
    press(page, "Go on without it")
    expect(heading(page)).to_have_text("What is the usual mix?")


def test_reading_without_a_dip(page: Page) -> None:
    open_machine(page)
    read_first(page)
    press(page, "No dip now")
    expect(heading(page)).to_have_text("Strength only")
    expect(page.get_by_text("Too weak (lean)")).to_be_visible()
    expect(page.get_by_text("No dip, so no recipe", exact=False)).to_be_visible()
    expect(page.get_by_text("In each of the")).to_have_count(0)
    press(page, "Save to the log")
    expect(page.get_by_text("The dip is still open.", exact=False)).to_be_visible()
    open_entry(page)
    expect(page.get_by_text("Still open", exact=True)).to_be_visible()
    check = entries(page)[-1]
    assert check["body"].keys() == {"machine", "reading", "look"}
    assert check["shown"].keys() == {"assessment", "look"}
    to_machine_from_entry(page)
    expect(page.get_by_text("Strength 6.0 %")).to_be_visible()
    follow(page, "Open the log")
    expect(page.get_by_text("Reading 4.0 Brix, 6.0 %. No dip.")).to_be_visible()
    page.go_back()
    # A dip without a reading then starts from that reading.
    dip(page, "352")
    press(page, "Read later")
    field(page, "What is the usual mix").fill("6")
    next_page(page)
    expect(page.get_by_text("Last known: 6.0 %", exact=False)).to_be_visible()


def test_wrong_reading_is_refused_also_when_no_dip_follows(page: Page) -> None:
    open_machine(page)
    start_check(page)
    press(page, "Reading first")
    for text in ["", *WRONG]:
        assert_refused(page, "What does the reading", text)
    expect(page.get_by_role("button", name="No dip now")).to_have_count(0)


def test_dip_can_still_follow_a_strength_without_one(page: Page) -> None:
    open_machine(page)
    read_first(page)
    press(page, "No dip now")
    follow(page, "Take the dip now")
    field(page, "How deep").fill("342")
    expect(page.get_by_role("button", name="No dip now")).to_have_count(0)
    next_page(page)
    page.get_by_role("button", name="Hard floor").click()
    expect(heading(page)).to_have_text("Where should it be?")


@pytest.mark.parametrize(
    ("place", "title"),
    [
        ("holding", "Wheel lathe"),
        ("usual", "Wheel lathe"),
        ("state", "Wheel lathe"),
        ("stock", "Wheel lathe"),
        ("fill", "Wheel lathe"),
    ],
)
def test_place_of_a_check_that_has_not_begun_leads_to_the_machine(
    page: Page, place: str, title: str
) -> None:
    open_machine(page)
    machine = page.url
    page.goto(f"{machine}/{place}")
    expect(page).to_have_url(machine)
    expect(heading(page)).to_have_text(title)


def test_place_without_its_measurement_leads_to_where_it_is_typed(page: Page) -> None:
    open_machine(page)
    machine = page.url
    dip(page)
    page.goto(f"{machine}/state")
    expect(heading(page)).to_have_text("What does the reading say?")
    field(page, "What does the reading").fill("4.0")
    page.goto(f"{machine}/dip")
    field(page, "How deep").fill("")
    page.goto(f"{machine}/holding")
    expect(heading(page)).to_have_text("How deep is the coolant?")


def test_half_a_check_of_an_older_build_is_still_there(page: Page) -> None:
    open_machine(page)
    machine = page.url.rsplit("/", 1)[1]
    older = {
        "id": "older", "order": "dip_first", "dip": "342", "touched": "hard_floor",
        "reading": "4.0", "line": "optical", "aim": "8.5", "kept": [], "prepared": None,
    }  # fmt: skip
    page.evaluate(
        "([name, text]) => localStorage.setItem(name, text)",
        [f"pailwright.draft.walk.{machine}", json.dumps(older)],
    )
    page.reload()
    press(page, "Go on with the check")
    expect(field(page, "How deep")).to_have_value("342")
    page.goto(page.url.replace("dip", "answers"))
    for text in ("342 mm", "4.0 Brix", "8.5 %", "Full mark"):
        expect(page.get_by_text(text, exact=True)).to_be_visible()
    next_page(page, "Work out the recipe")
    expect(page.get_by_text("In each of the")).to_be_visible()


def test_top_up_without_a_reading_is_not_offered_where_there_is_one(page: Page) -> None:
    open_machine(page)
    check_until_recipe(page, "342", "5.4")
    base = page.url.removesuffix("/recipe")
    for place in ("usual", "holding"):
        page.goto(f"{base}/{place}")
        expect(heading(page)).to_have_text("Is everything right?")
        expect(page.get_by_text("5.4 Brix")).to_be_visible()
