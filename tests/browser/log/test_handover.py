"""The shift's page, and one machine's entries on their way to another phone."""

import pytest
from playwright.sync_api import Page, expect

from pycore.journal.file import PHONE, read_file
from tests.browser.files import saved_file, start_at, take_in
from tests.browser.phone import heading
from tests.browser.stored import rows
from tests.browser.walk import check_until_recipe, open_machine, press, save_check
from tests.phones import workshop


def take_shift_in(page: Page) -> None:
    """A morning of two phones, taken in from their files."""
    for phone in workshop():
        take_in(page, phone.export(), len(phone.lines))


def test_page_names_what_is_open_due_low_stopped_and_said(page: Page) -> None:
    expect(page.get_by_role("button", name="Add your first machine")).to_be_visible()
    page.clock.set_fixed_time("2026-11-25T14:00:00Z")
    start_at(page, "handover")
    expect(
        page.get_by_text("Nothing is open, due, outside its range, low or stopped.")
    ).to_be_visible()
    start_at(page)
    take_shift_in(page)
    start_at(page, "handover")
    expect(page.get_by_text("2 of 3 buckets are in")).to_be_visible()
    expect(page.get_by_text("stopped: wrong drum, set")).to_be_visible()
    expect(page.get_by_text("Do not top up.").first).to_be_visible()
    expect(page.get_by_role("heading", name="Re-checks")).to_be_visible()
    # Two buckets have gone in since its dip.
    expect(page.get_by_role("heading", name="Low sumps")).to_have_count(0)
    expect(page.get_by_text("Skimmer belt slips; ordered. (RO, ")).to_be_visible()
    expect(page.get_by_role("heading", name="Poured without a record")).to_be_visible()
    expect(page.get_by_text("A machine without a set-up:").first).to_be_visible()
    press(page, "Pass the log on as a file")
    expect(heading(page)).to_have_text("Backup")


@pytest.mark.usefixtures("machine_on_phone")
def test_a_weak_machine_is_told_until_something_is_poured(page: Page) -> None:
    open_machine(page)
    check_until_recipe(page)
    save_check(page)
    start_at(page, "handover")
    expect(page.get_by_text("Wheel lathe: Too weak (lean), 6.0")).to_be_visible()
    title = page.get_by_role("heading", name="Outside the range, no pour in the log since")
    expect(title).to_be_visible()
    low = page.get_by_role("heading", name="Low sumps")
    expect(low).to_be_visible()
    expect(page.get_by_text("154 L in it, room for 44 L.")).to_be_visible()
    start_at(page)
    page.get_by_role("link", name="Wheel lathe").first.click()
    page.get_by_role("link", name="Write something down").click()
    page.get_by_role("link", name="Buckets poured").click()
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    start_at(page, "handover")
    expect(page.get_by_text("Nothing is open, due, outside its range")).to_be_visible()
    expect(title.or_(low)).to_have_count(0)


@pytest.mark.usefixtures("machine_on_phone")
def test_one_machine_leaves_without_the_others(page: Page) -> None:
    open_machine(page)
    check_until_recipe(page)
    save_check(page)
    take_shift_in(page)
    start_at(page)
    page.get_by_role("link", name="Wheel lathe").first.click()
    expect(heading(page)).to_have_text("Wheel lathe")
    page.get_by_role("link", name="Hand over to another phone").click()
    expect(page.get_by_text("The file holds the last 2 entries")).to_be_visible()
    text = saved_file(page, "Hand over the file")[1]
    assert read_file(text, PHONE).lines == [row["text"] for row in rows(page)]
    start_at(page)
    expect(page.get_by_text("2 entries of this phone are in no backup yet.")).to_be_visible()
