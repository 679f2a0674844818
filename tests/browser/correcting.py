"""Correcting and taking back an entry, found by roles and names."""

from playwright.sync_api import Page, expect

from pycore.desk.contract.checked import checked
from pycore.journal.entry import Entry, read_line
from tests.browser.files import start_at
from tests.browser.phone import heading
from tests.browser.stored import rows
from tests.browser.walk import field, press

GUARD_MS = 1_100
_ANSWERED = """
async () => {
  while (performance.getEntriesByName("core: first answer").length === 0)
    await new Promise((done) => setTimeout(done, 50));
}
"""


def last(page: Page) -> Entry:
    """The last stored line as pycore reads it; a line that it refuses fails the test."""
    return read_line(rows(page)[-1]["text"], checked)


def open_entry(page: Page, part: str) -> None:
    """From the log to the newest entry whose line holds these words."""
    start_at(page, "log")
    page.locator(".log-row").filter(has_text=part).first.click()
    expect(page.get_by_role("link", name="Take this entry back")).to_be_visible()
    # A page goes on without the calculator until it is there, and then nothing is refused.
    page.evaluate(_ANSWERED)


def change(page: Page, label: str) -> None:
    """From the list of fields to one of them."""
    page.get_by_role("link", name=f"Change: {label}", exact=True).click()
    expect(heading(page)).to_have_text(f"{label}: what is right?")


def retype(page: Page, label: str, text: str) -> None:
    """Types one number anew and returns to the list."""
    change(page, label)
    field(page, label).fill(text)
    press(page, "Continue")
    expect(heading(page)).to_have_text("What was wrong?")
    page.wait_for_timeout(GUARD_MS)


def correct(page: Page) -> None:
    """From an entry's page to the list of its fields."""
    page.get_by_role("link", name="Correct this entry").click()
    expect(heading(page)).to_have_text("What was wrong?")


def compare(page: Page) -> None:
    """From the list to old beside new."""
    press(page, "Look at old and new")
    expect(heading(page)).to_have_text("Old beside new")
    expect(page.get_by_role("button", name="Save to the log")).to_be_visible()


def save(page: Page) -> None:
    """Saves what stands beside each other."""
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")


def take_back(page: Page, why: str) -> None:
    """From an entry's page to the page that says Saved."""
    page.get_by_role("link", name="Take this entry back").click()
    page.get_by_text(why, exact=True).click()
    press(page, "Take it back")
    expect(heading(page)).to_have_text("Saved to the log")
