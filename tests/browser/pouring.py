"""A pour, tick by tick, as a person does it."""

import re

from playwright.sync_api import Page, expect

from tests.browser.phone import heading
from tests.browser.walk import check_until_recipe, has_button, open_machine, press

# The states of one bucket in their order.
OF_A_BUCKET = ("Water is in", "Concentrate is in", "Stirred, it looks even", "Poured")
# After a tick the next one rests for a second, since gloves often tap twice.
REST_MS = 1_000


def start_pouring(page: Page, depth: str = "342", reading: str = "4.0") -> int:
    """From the list to the first bucket, by a clock of ours; how many buckets there are."""
    take_clock(page)
    open_machine(page)
    return pour_after_check(page, depth, reading)


def pour_after_check(page: Page, depth: str = "342", reading: str = "4.0") -> int:
    """From the machine's own page to the first bucket; how many buckets there are."""
    check_until_recipe(page, depth, reading)
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    return to_first_bucket(page)


def to_first_bucket(page: Page) -> int:
    """From the page that says Saved to the first bucket; how many buckets there are."""
    press(page, "Start pouring")
    expect(heading(page)).to_have_text("Before the first bucket")
    press(page, "Right drum, gloves on")
    expect(heading(page)).to_have_text(re.compile(r"Bucket 1 of \d+"))
    return int(heading(page).inner_text().split()[-1])


def take_clock(page: Page) -> None:
    """Opens this place anew with a clock that runs as ever and can be moved on by ``pass_rest``.

    Before anything has begun: what waits in the page must wait by this clock.
    """
    page.clock.install()
    page.add_init_script("globalThis.hasOurClock = true")
    page.reload()


def pass_rest(page: Page) -> None:
    """Moves our clock past the rest after a press; by a phone's own clock the next press waits."""
    if not page.evaluate("() => globalThis.hasOurClock === true"):
        return
    page.clock.fast_forward(REST_MS)
    # The rest of a tick begins a moment after it is drawn.
    while page.locator(".tick-row .main-action[aria-disabled=true]").count():
        page.clock.fast_forward(REST_MS)


def pour_bucket(page: Page, n: int) -> None:
    """Ticks a whole bucket, state by state."""
    expect(heading(page)).to_have_text(re.compile(f"Bucket {n} of"))
    for state in OF_A_BUCKET:
        if state != "Poured" and not has_button(page, state):
            continue
        press(page, state)
        # The next state stands there before it is pressed: "Poured" of two buckets is one name.
        expect(page.get_by_role("button", name=state, exact=True)).to_have_count(0)
        pass_rest(page)


def pour_quickly(page: Page, buckets: int) -> None:
    """The same from the first bucket on with one tick for each."""
    press(page, "One tick for each bucket")
    for n in range(1, buckets + 1):
        if has_button(page, "The pump has run"):
            press(page, "The pump has run")
        press(page, f"Bucket {n} is poured")
    expect(heading(page)).to_have_text("All in")


def pour_all(page: Page, buckets: int, first: int = 1) -> None:
    """Ticks every bucket that is left, past a half-way run of the pump."""
    for n in range(first, buckets + 1):
        if has_button(page, "The pump has run"):
            press(page, "The pump has run")
            pass_rest(page)
        pour_bucket(page, n)
    expect(heading(page)).to_have_text("All in")
