"""The check on one screen, as a person uses it."""

import re
from typing import Any

from playwright.sync_api import Locator, Page, expect

from tests.browser.phone import heading
from tests.browser.stored import entries
from tests.browser.walk import field, open_machine, press

# What differs between two checks that say the same: who, when, and the place in the log.
OWN = ("id", "seq", "prev", "hash", "measured_at", "wall", "now", "check")


def open_one_screen(page: Page) -> None:
    """From the list to the one screen of a machine, nothing answered."""
    open_machine(page)
    begin_one_screen(page)


def begin_one_screen(page: Page) -> None:
    """The same from the machine's own page."""
    page.get_by_role("switch", name="Check on one screen").click()
    press(page, "Start a check")
    expect(heading(page)).to_have_text("The check on one screen")


def result(page: Page) -> Locator:
    """The area on top, where the recipe stands or what it waits for."""
    return page.get_by_role("region", name="Recipe")


def expect_recipe(page: Page) -> str:
    """Waits for a recipe; returns its line as people read it."""
    line = result(page).locator(".result-main")
    expect(line).to_be_visible()
    return line.inner_text().replace("\N{NO-BREAK SPACE}", " ")


def type_check(page: Page, depth: str = "342", reading: str = "4.0") -> None:
    """Answers every row, with the same answers as the walk through the guided pages."""
    press(page, "Nothing unusual")
    field(page, "Dip").fill(depth)
    field(page, "Reading").fill(reading)
    for key, answer in (("The stick touched", "Hard floor"), ("How it was read", "Sharp line")):
        page.get_by_role("link", name=f"Change: {key}").click()
        page.get_by_role("main").get_by_role("button", name=re.compile(answer)).click()
        expect(heading(page)).to_have_text("The check on one screen")


def without_own(part: Any) -> Any:
    """An entry, or a part of it, without what is its own."""
    if isinstance(part, dict):
        return {name: without_own(value) for name, value in part.items() if name not in OWN}
    return [without_own(value) for value in part] if isinstance(part, list) else part


def entries_of(page: Page, kind: str) -> list[Any]:
    """What the phone's log has of one kind, as far as two equal checks agree."""
    return [without_own(entry) for entry in entries(page, kind)]
