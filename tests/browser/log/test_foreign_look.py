"""What another app's file says of a look may be anything; the entry is shown all the same."""

from typing import Any

import pytest
from playwright.sync_api import Page, expect

from tests.browser.files import start_at, take_in
from tests.browser.phone import heading
from tests.phones import LATHE, setup
from tests.phones import Phone as Writer
from tests.unit.desk.lathe import ask, check

ODD: tuple[Any, ...] = (
    {"decision": 5, "chosen": "x"},
    {"decision": {}, "chosen": "stopped"},
    {"decision": "skim_first", "chosen": 7},
    {"decision": None, "chosen": None},
    {"decision": "another_word", "chosen": "yet_another"},
    "no object",
)


@pytest.mark.parametrize("number", range(len(ODD)))
def test_an_odd_look_takes_no_entry_away(page: Page, number: int) -> None:
    writer = Writer("another app")
    writer.save("machine_set", {"machine": setup()}, 0, LATHE)
    body = check(setup())
    shown = {**ask("plan_check", body), "look": ODD[number]}
    writer.save("check", body, 60, LATHE, shown=shown)
    take_in(page, writer.export(), 2)
    start_at(page, "log")
    page.locator(".log-row").first.click()
    expect(heading(page)).to_have_text("Check")
    expect(page.get_by_role("heading", name="What was typed")).to_be_visible()
