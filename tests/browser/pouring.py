"""A pour, tick by tick, as a person does it."""

import re

from playwright.sync_api import Page, expect

from tests.browser.phone import heading
from tests.browser.walk import check_until_recipe, has_button, press, set_up_machine

# The states of one bucket in their order.
OF_A_BUCKET = ("Water is in", "Concentrate is in", "Stirred, it looks even", "Poured")
MOST_TICKS = 80


def start_pouring(page: Page, depth: str = "342", reading: str = "4.0") -> int:
    """From an empty phone to the first bucket; how many buckets there are."""
    set_up_machine(page)
    return pour_after_check(page, depth, reading)


def pour_after_check(page: Page, depth: str = "342", reading: str = "4.0") -> int:
    """From the machine's own page to the first bucket; how many buckets there are."""
    check_until_recipe(page, depth, reading)
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    press(page, "Start pouring")
    expect(heading(page)).to_have_text("Before the first bucket")
    press(page, "Right drum, gloves on")
    expect(heading(page)).to_have_text(re.compile(r"Bucket 1 of \d+"))
    return int(heading(page).inner_text().split()[-1])


def pour_bucket(page: Page, n: int) -> None:
    """Ticks a whole bucket, state by state."""
    expect(heading(page)).to_have_text(re.compile(f"Bucket {n} of"))
    for state in OF_A_BUCKET:
        if state != "Poured" and not has_button(page, state):
            continue
        press(page, state)
        # The next state stands there before it is pressed: "Poured" of two buckets is one name.
        expect(page.get_by_role("button", name=state, exact=True)).to_have_count(0)


def pour_all(page: Page, buckets: int, first: int = 1) -> None:
    """Ticks every bucket that is left, past a half-way run of the pump."""
    for n in range(first, buckets + 1):
        if has_button(page, "The pump has run"):
            press(page, "The pump has run")
        pour_bucket(page, n)
    expect(heading(page)).to_have_text("All in")
