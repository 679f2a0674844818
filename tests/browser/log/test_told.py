"""What is written down without a check: buckets by habit, additives, notes, states of a machine."""

import pytest
from playwright.sync_api import Page, expect

from pycore.desk.contract.checked import checked
from pycore.journal.entry import Entry, read_line
from tests.browser.files import start_at
from tests.browser.looking import Look
from tests.browser.phone import Phone, Theme, heading
from tests.browser.server import Server
from tests.browser.stored import rows
from tests.browser.walk import (
    check_until_recipe,
    field,
    leave,
    on_machine,
    open_machine,
    press,
    save_check,
    start_check,
)


def tell(page: Page, what: str) -> None:
    """Opens a page of what can be told of the wheel lathe."""
    start_at(page)
    page.get_by_role("link", name="Wheel lathe").first.click()
    page.get_by_role("link", name="Write something down").click()
    leave(page, page.get_by_role("link", name=what))


def store(page: Page) -> None:
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")


def last(page: Page) -> Entry:
    """The last stored line as pycore reads it; a line that it refuses fails the test."""
    return read_line(rows(page)[-1]["text"], checked)


@pytest.mark.usefixtures("machine_on_phone")
def test_two_buckets_of_about_three_per_cent(page: Page) -> None:
    open_machine(page)
    tell(page, "Buckets poured")
    press(page, "One bucket more")
    store(page)
    expect(page.get_by_text("2 buckets of about 3 %")).to_be_visible()
    entry = last(page)
    assert entry.kind == "pour"
    row = {"count": 2, "kind": "mix", "strength": {"text": "3", "unit": "%"}, "about": True}
    assert entry.body == {"pours": [row], "finished": True}


@pytest.mark.usefixtures("machine_on_phone")
def test_one_bucket_of_water_with_a_remark_outlasts_a_reload(page: Page) -> None:
    open_machine(page)
    tell(page, "Buckets poured")
    page.get_by_text("Water", exact=True).click()
    field(page, "Remarks").fill("<b>Pump</b> ran dry")
    page.reload()
    expect(field(page, "Remarks")).to_have_value("<b>Pump</b> ran dry")
    store(page)
    assert last(page).body["pours"] == [{"count": 1, "kind": "water", "about": True}]
    page.get_by_role("link", name="Open this entry").click()
    expect(page.get_by_text("<b>Pump</b> ran dry")).to_be_visible()
    start_at(page, "log")
    expect(page.get_by_text("1 bucket of water")).to_be_visible()


@pytest.mark.usefixtures("machine_on_phone")
def test_what_others_poured_additive_and_note(page: Page) -> None:
    open_machine(page)
    tell(page, "Somebody poured")
    page.get_by_text("Concentrate", exact=True).click()
    store(page)
    assert last(page).body == {"what": "concentrate"}
    tell(page, "Additive put in")
    press(page, "Save to the log")
    expect(page.get_by_text("Write a few words first.")).to_be_visible()
    field(page, "Which additive").fill("Defoamer")
    field(page, "How much").fill("50")
    store(page)
    amount = {"text": "50", "unit": "mL"}
    assert last(page).body == {"name": "Defoamer", "amount": amount}
    start_at(page, "handover")
    page.get_by_role("link", name="Write a note for the next shift").click()
    field(page, "Note").fill("Skimmer belt slips.")
    store(page)
    entry = last(page)
    assert (entry.kind, entry.machine, entry.body) == ("note", "", {"text": "Skimmer belt slips."})
    start_at(page, "handover")
    expect(page.get_by_text("Skimmer belt slips.")).to_be_visible()
    expect(page.get_by_text("somebody poured something")).to_be_visible()


@pytest.mark.usefixtures("machine_on_phone")
def test_due_checks_rest_while_the_machine_does(page: Page) -> None:
    open_machine(page)
    start_check(page)
    field(page, "How deep").fill("342")
    page.get_by_role("button", name="Go on").or_(page.locator(".main-action")).first.click()
    start_at(page)
    tell(page, "State of the machine")
    page.get_by_text("Shut down", exact=True).click()
    page.get_by_label("Why").select_option("holiday")
    store(page)
    assert last(page).body == {"state": "shutdown", "reason": "holiday"}
    press(page, "Done")
    expect(page.get_by_text("Its checks rest until it is in use again.")).to_be_visible()
    start_at(page)
    expect(page.get_by_text("Shut down")).to_be_visible()
    start_at(page, "handover")
    expect(page.get_by_role("heading", name="Low sumps")).to_have_count(0)
    tell(page, "State of the machine")
    page.get_by_text("In use", exact=True).click()
    store(page)
    press(page, "Done")
    expect(page.get_by_text("Its checks rest until it is in use again.")).to_have_count(0)


@pytest.mark.usefixtures("machine_on_phone")
@pytest.mark.parametrize("theme", ["light", "dark"])
def test_look_at_what_is_told(phone: Phone, server: Server, theme: Theme) -> None:
    page = on_machine(phone, server, theme)
    look = Look(f"{theme}-told")
    check_until_recipe(page)
    save_check(page)
    start_at(page)
    page.get_by_role("link", name="Wheel lathe").first.click()
    leave(page, page.get_by_role("link", name="Write something down"))
    look(page)
    for what in ("Somebody poured", "Additive put in", "Note", "Buckets poured"):
        tell(page, what)
        look(page)
    store(page)
    look(page)
    tell(page, "State of the machine")
    page.get_by_text("Stopped", exact=True).click()
    look(page)
    store(page)
    press(page, "Done")
    expect(page.get_by_text("Pour nothing in.")).to_be_visible()
    look(page)
    start_at(page)
    look(page)
    start_at(page, "log")
    look(page)
    assert look.wrong == []
    assert len(look.seen) == 10
