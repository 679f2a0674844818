"""Trend with no check, with one, two and three hundred: each says what it can and fits."""

import re

import pytest
from playwright.sync_api import Page, expect

from tests.bench.logs import fill, rows_of
from tests.browser.looking import Look
from tests.browser.phone import Phone, heading
from tests.browser.server import Server
from tests.phones import LATHE
from tests.screens import laid_out

AT_ONCE = 100


def _looked(page: Page, look: Look, name: str) -> None:
    look(page, name)
    look.wrong += [f"{name}: {one}" for one in laid_out.cut(page)]


@pytest.mark.parametrize("checks", [0, 1, 2, 300])
def test_log_and_trend_of_any_size(phone: Phone, server: Server, checks: int) -> None:
    page = phone.start()
    # The first row is the set-up of the machine.
    fill(page, server, rows_of(checks + 1))
    look = Look(f"light-{checks}-checks")
    page.goto(f"{server.address}#/log")
    page.reload()
    rows = page.locator(".log-row")
    expect(rows).to_have_count(min(checks + 1, AT_ONCE))
    said = {0: "No check saved yet.", 1: "1 check saved."}.get(checks, f"{checks} checks saved.")
    expect(page.get_by_text(said)).to_be_visible()
    older = page.get_by_role("button", name="older")
    expect(older).to_have_count(1 if checks + 1 > AT_ONCE else 0)
    _looked(page, look, "log")

    page.goto(f"{server.address}#/machines/{LATHE}/trend")
    expect(heading(page)).to_have_text("Trend")
    main = page.get_by_role("main")
    if checks == 0:
        expect(main).to_contain_text("No reading in this time.")
    page.get_by_role("radio", name="All").check(force=True)
    # The band stands there before the first reading does.
    expect(page.locator(".chart canvas").first).to_be_visible()
    if checks in (1, 2):
        # A line through two points says nothing, so nothing is said of one.
        expect(page.locator(".trend-said")).to_contain_text("so far. A trend appears after 3.")
    if checks == 300:
        expect(page.locator(".trend-said")).to_contain_text(re.compile(r"first, [\d.]+\s% last"))
    _looked(page, look, "trend")
    if checks:
        page.get_by_role("button", name="Show the same numbers as a table").click()
        expect(page.locator(".trend-table tbody tr").first).to_be_visible()
        _looked(page, look, "table")
    assert look.wrong == []
