"""Off the ordinary way of a check: with a part left open, or with something for this once only."""

from playwright.sync_api import Page, expect

from tests.browser.phone import heading
from tests.browser.walk import field, next_page, pass_since, press, start_check


def dip(page: Page, depth: str = "342") -> None:
    """From the machine's own page past the dip to the reading."""
    start_check(page)
    field(page, "How deep").fill(depth)
    next_page(page)
    page.get_by_role("button", name="Hard floor").click()
    pass_since(page)
    expect(heading(page)).to_have_text("What does the reading say?")


def read_first(page: Page, reading: str = "4.0") -> None:
    """From the machine's own page past the reading to the dip."""
    start_check(page)
    press(page, "Reading first")
    field(page, "What does the reading").fill(reading)
    next_page(page)
    page.get_by_role("button", name="Sharp line").click()
    expect(heading(page)).to_have_text("How deep is the coolant?")


def until_answers(page: Page, depth: str = "342", reading: str = "4.0") -> None:
    """From the machine's own page to the answers."""
    dip(page, depth)
    field(page, "What does the reading").fill(reading)
    next_page(page)
    page.get_by_role("button", name="Sharp line").click()
    expect(heading(page)).to_have_text("Where should it be?")
    next_page(page)
    expect(heading(page)).to_have_text("Is everything right?")


def to_machine(page: Page) -> None:
    """From the page that says Saved to the machine's own page."""
    next_page(page, "Back to the machines")
    page.get_by_role("link", name="Wheel lathe").click()
    expect(heading(page)).to_have_text("Wheel lathe")


def follow(page: Page, link: str) -> None:
    """Follows a link by its whole name."""
    page.get_by_role("link", name=link, exact=True).click()


def open_entry(page: Page) -> None:
    """From the page that says Saved to the entry."""
    expect(heading(page)).to_have_text("Saved to the log")
    follow(page, "Open this entry")
    expect(heading(page)).to_have_text("Check")


def to_machine_from_entry(page: Page) -> None:
    """From an entry back over the page that says Saved."""
    page.go_back()
    expect(heading(page)).to_have_text("Saved to the log")
    to_machine(page)
