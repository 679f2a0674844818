"""What an apprentice does: gets a sump, works it out and compares."""

import re

from playwright.sync_api import Page, expect

from tests.browser.phone import heading, wait_until_ready
from tests.browser.walk import field, next_page, press
from tests.properties.asking import ask

STEPS = {
    "volume": "How many litres?",
    "strength": "How strong is it?",
    "room": "How much room?",
    "take_out": "How much comes out?",
    "top_up": "How strong a top-up?",
    "pours": "Which buckets?",
}


def dealt(level: str, number: str) -> dict[str, object]:
    """The same sump as the page shows, asked natively."""
    return ask("deal_practice", {"level": level, "number": {"text": number, "unit": "1"}})


def right_numbers(level: str, number: str) -> dict[str, float]:
    """The right number of each step."""
    body = {"check": dealt(level, number)["check"], "answers": {}}
    return {one["step"]: one["right"]["value"] for one in ask("judge_practice", body)["steps"]}


def open_practice(page: Page) -> None:
    """From the list, over the cards."""
    wait_until_ready(page)
    page.get_by_role("link", name="Learn and practise").click()
    expect(heading(page)).to_have_text("Learn and practise")
    next_page(page, "Practise on an invented sump")


def get_sump(page: Page, number: str, level: str = "Weak, with room", mode: str = "each") -> None:
    """From the first page of practice to its first step."""
    page.get_by_role("radio", name=re.compile(level)).check(force=True)
    when = "After each step" if mode == "each" else "At the end"
    page.get_by_role("radio", name=when).check(force=True)
    field(page, "Number of the sump").fill(number)
    press(page, "Get a sump")
    expect(heading(page)).to_have_text(STEPS["volume"])


def answer(page: Page, step: str, text: str) -> None:
    """Types a number at a step."""
    expect(heading(page)).to_have_text(STEPS[step])
    field(page, STEPS[step]).fill(text)


def pour(page: Page, count: str, water: str, concentrate: str) -> None:
    """Fills in one kind of bucket and goes on to how it came out."""
    expect(heading(page)).to_have_text(STEPS["pours"])
    for name, text in (
        ("Buckets", count),
        ("Water", water),
        ("Concentrate", concentrate),
    ):
        field(page, name).fill(text)
    press(page, "See how it came out")
