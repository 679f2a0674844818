"""A tag that hangs when a clean-out begins: it comes off by a named person, or it stays."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.files import start_at
from tests.browser.log.test_mishap import hang_tag
from tests.browser.phone import heading
from tests.browser.stored import entries
from tests.browser.walk import field, open_machine, press

pytestmark = pytest.mark.usefixtures("machine_on_phone")
GUARD_MS = 1_100


def begin(page: Page) -> None:
    """From an empty list to the question about the tag."""
    open_machine(page)
    hang_tag(page)
    page.get_by_role("link", name="Clean out and charge anew").click()
    expect(page.get_by_role("main")).to_contain_text("On hold")
    press(page, "Begin the clean-out")
    expect(heading(page)).to_have_text("A tag hangs on this machine")
    page.wait_for_timeout(GUARD_MS)
    press(page, "Begin the clean-out")
    expect(page.get_by_role("alert")).to_have_text("Choose what becomes of the tag.")


def test_a_tag_that_stays_outlasts_the_clean_out(page: Page) -> None:
    begin(page)
    page.get_by_role("radio", name="It stays").check(force=True)
    press(page, "Begin the clean-out")
    expect(heading(page)).to_have_text("Get ready")
    press(page, "All is ready")
    expect(heading(page)).to_have_text("Skim the oil")
    assert [line["body"]["state"] for line in entries(page, "machine_state")] == ["on_hold"]
    start_at(page)
    expect(page.get_by_role("link", name="Wheel lathe").first).to_contain_text("On hold")


def test_a_tag_comes_off_by_a_named_person_with_a_reason(page: Page) -> None:
    begin(page)
    page.get_by_role("radio", name="It comes off now").check(force=True)
    field(page, "Your name").fill("")
    press(page, "Begin the clean-out")
    expect(page.get_by_text("Write why it comes off.")).to_be_visible()
    expect(page.get_by_text("Write your name or initials")).to_be_visible()
    field(page, "Why it comes off").fill("The laboratory says drain")
    field(page, "Your name").fill("KB")
    press(page, "Begin the clean-out")
    expect(heading(page)).to_have_text("Get ready")
    last = entries(page, "machine_state")[-1]
    assert (last["by"], last["body"]) == (
        "KB",
        {"state": "clean_out", "remarks": "The laboratory says drain"},
    )
    start_at(page)
    row = page.get_by_role("link", name="Wheel lathe").first
    expect(row).to_contain_text("Clean-out")
    expect(row).not_to_contain_text("On hold")
