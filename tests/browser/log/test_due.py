"""How often a shop checks is a fact of its log, and every page calls the same machines due."""

import json
import re
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from tests.browser.files import start_at, take_in
from tests.browser.looking import Look
from tests.browser.phone import Phone, Theme, heading, wait_until_ready
from tests.browser.pouring import pour_after_check, pour_all
from tests.browser.server import Server
from tests.browser.stored import entries
from tests.browser.walk import (
    check_until_recipe,
    field,
    next_page,
    open_machine,
    press,
    save_check,
    set_up_machine,
    start_check,
)
from tests.phones import MORNING_S, typed
from tests.phones import Phone as Writer

pytestmark = pytest.mark.usefixtures("machine_on_phone")
NOTE = "pailwright.care"
DAY_S = 86_400


def facts(page: Page) -> list[dict[str, Any]]:
    """What was said of the shop, in order."""
    return [line["body"] for line in entries(page, "shop_set")]


def days_later(page: Page, days: int) -> None:
    """The app is opened again so many days after it was last used."""
    page.clock.install(time=datetime.now(UTC) + timedelta(days=days))
    page.reload()
    start_at(page)


def checked(page: Page) -> None:
    """From the list to a saved check."""
    open_machine(page)
    check_until_recipe(page, "400", "5.3")
    save_check(page)
    start_at(page)


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_an_interval_kept_on_the_phone_moves_into_the_log_and_counts_on_every_page(
    phone: Phone, server: Server, theme: Theme
) -> None:
    page = phone.start(theme)
    page.goto(server.address)
    checked(page)
    old = {"check": " 5 ", "cleanOut": ""}
    page.evaluate("([name, text]) => localStorage.setItem(name, text)", [NOTE, json.dumps(old)])
    days_later(page, 6)
    row = page.get_by_role("link", name="Wheel lathe").first
    # "26 Nov 26" was read as a slip.
    expect(row).to_contain_text(re.compile(r"Check due since \d+ \w+ \d{4}"))
    assert facts(page) == [{"check_every_d": {"text": "5", "unit": "1"}}]
    assert page.evaluate("(name) => localStorage.getItem(name)", NOTE) is None
    look = Look(f"{theme}-due")
    look(page)
    row.click()
    expect(page.get_by_role("main")).to_contain_text("Check due since")
    look(page)
    page.get_by_role("link", name="Trend").click()
    expect(page.get_by_text(re.compile(r"Due since .*: at least every 5 days\."))).to_be_visible()
    start_at(page, "handover")
    expect(page.get_by_role("heading", name="Checks due")).to_be_visible()
    expect(page.get_by_text(re.compile(r"due since .*: at least every 5 days\."))).to_be_visible()
    look(page)
    assert not look.wrong


def test_the_check_that_is_overdue_longest_is_offered(page: Page) -> None:
    checked(page)
    page.clock.install(time=datetime.now(UTC) + timedelta(days=2))
    page.reload()
    page.get_by_role("link", name="Add a machine").click()
    set_up_machine(page, {"Name of the machine": "Axle grinder"}, begin=None)
    check_until_recipe(page, "400", "5.3")
    save_check(page)
    offered = page.get_by_role("button", name=re.compile("^Start a check: "))
    expect(offered).to_have_text("Start a check: Axle grinder")
    # Both are due then, the wheel lathe two days longer.
    page.clock.install(time=datetime.now(UTC) + timedelta(days=12))
    page.reload()
    start_at(page)
    expect(page.get_by_text("Check due since")).to_have_count(2)
    expect(offered).to_have_text("Start a check: Wheel lathe")
    # What was begun goes first.
    page.get_by_role("link", name="Axle grinder").first.click()
    start_check(page)
    field(page, "How deep").fill("380")
    next_page(page)
    start_at(page)
    expect(page.get_by_text("Check due since")).to_have_count(2)
    expect(page.get_by_role("button", name="Go on with the check: Axle grinder")).to_be_visible()


def test_a_reading_that_is_not_due_yet_waits_for_an_overdue_check(page: Page) -> None:
    checked(page)
    page.clock.install(time=datetime.now(UTC) + timedelta(days=9))
    page.reload()
    page.get_by_role("link", name="Add a machine").click()
    set_up_machine(page, {"Name of the machine": "Axle grinder"}, begin=None)
    pour_all(page, pour_after_check(page))
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    start_at(page)
    expect(page.get_by_text("Check due since")).to_have_count(1)
    expect(page.get_by_role("button", name="Start a check: Wheel lathe")).to_be_visible()
    page.clock.fast_forward("31:00")
    page.reload()
    start_at(page)
    expect(page.get_by_role("button", name="Enter the reading: Axle grinder")).to_be_visible()


def test_an_interval_is_set_refused_and_taken_back(page: Page) -> None:
    checked(page)
    days_later(page, 8)
    expect(page.get_by_role("link", name="Wheel lathe").first).to_contain_text("Check due since")
    start_at(page, "care")
    field(page, "Check at least every").fill("0")
    press(page, "Save to the log")
    expect(page.get_by_role("alert")).to_contain_text("1")
    assert facts(page) == []
    field(page, "Check at least every").fill("14")
    press(page, "Save to the log")
    expect(heading(page)).not_to_have_text("How often to check and clean")
    start_at(page)
    wait_until_ready(page)
    expect(page.get_by_role("button", name=re.compile("Start"))).to_be_visible()
    expect(page.get_by_role("link", name="Wheel lathe").first).not_to_contain_text("Check due")
    start_at(page, "care")
    expect(field(page, "Check at least every")).to_have_value("14")
    field(page, "Check at least every").fill("")
    press(page, "Save to the log")
    expect(heading(page)).not_to_have_text("How often to check and clean")
    start_at(page)
    expect(page.get_by_role("link", name="Wheel lathe").first).to_contain_text("Check due since")
    typed = [fact["check_every_d"]["text"] for fact in facts(page)]
    assert typed == ["14", ""]
    start_at(page, "log")
    expect(page.get_by_text("Days from check to check: 14")).to_be_visible()
    expect(page.get_by_text("Days from check to check: as published")).to_be_visible()


def test_a_check_that_was_put_back_counts_again(page: Page) -> None:
    checked(page)
    last = entries(page, "check")[-1]
    other = Writer("other shift")
    ago_s = int(datetime.now(UTC).timestamp()) - MORNING_S - 9 * DAY_S
    # Its pH is looked for, so it is asked about together with the last check.
    old = {**last["body"], "ph": typed("9.0", "1")}
    of = last["machine"]
    other.save("check", old, ago_s, of, shown=last["shown"])
    other.save("withdrawal", {"retracts": last["id"], "reason": "Wrong machine"}, 0, of)
    take_in(page, other.export(), 2)
    start_at(page)
    due = page.get_by_text("Check due since")
    expect(due).to_be_visible()
    start_at(page, "log")
    page.locator(".log-row", has_text="Taken back").click()
    press(page, "Put this entry back")
    expect(heading(page)).to_have_text("Saved to the log")
    # From the store this phone's own lines come before those of the other one.
    start_at(page)
    expect(page.get_by_role("button", name="Start a check: Wheel lathe")).to_be_visible()
    page.wait_for_timeout(2_000)
    expect(due).to_have_count(0)
