"""No room left: NOT SAVED at once, what was typed stays, the next try stores exactly one row."""

import time
from pathlib import Path
from urllib.parse import urlsplit

import pytest
from playwright.sync_api import Page, Playwright, expect

from pycore.journal.file import PHONE, read_file
from tests.browser.faults.saving import prepared
from tests.browser.files import backup, start_at
from tests.browser.phone import Phone, heading
from tests.browser.server import Server
from tests.browser.stored import rows
from tests.browser.walk import field, press

MORE_THAN_A_DRAFT = 1_500
# The browser keeps its old figure of a place that is open for 30 s (measured).
OLD_FIGURE_S = 35


def _set_quota(page: Page, server: Server, **quota: int) -> None:
    parts = urlsplit(server.address)
    browser = page.context.new_cdp_session(page)
    origin = f"{parts.scheme}://{parts.netloc}"
    browser.send("Storage.overrideQuotaForOrigin", {"origin": origin, **quota})


@pytest.mark.parametrize("lost", ["before", pytest.param("while open", marks=pytest.mark.nightly)])
def test_over_quota_is_said_and_nothing_is_lost(
    playwright: Playwright, server: Server, tmp_path: Path, lost: str
) -> None:
    phone = Phone(playwright, tmp_path / "profile")
    page = phone.start()
    prepared(page, server.address)
    if lost == "before":
        phone.close()
        page = phone.start()
        page.goto(server.address)
    _set_quota(page, server, quotaSize=1)
    start_at(page, "tell")
    text = "x" * MORE_THAN_A_DRAFT
    field(page, "Note").fill(text)
    before = rows(page)
    if lost == "while open":
        page.wait_for_timeout(OLD_FIGURE_S * 1_000)
    started_s = time.perf_counter()
    press(page, "Save to the log")
    expect(page.get_by_text("NOT SAVED")).to_be_visible()
    print(f"{lost}: NOT SAVED after {time.perf_counter() - started_s:.2f} s")
    assert field(page, "Note").input_value() == text
    assert rows(page) == before
    other = page.context.new_page()
    other.goto(server.address)
    expect(other.locator(".machine-row")).to_be_visible()
    assert read_file(backup(other), PHONE).lines == [row["text"] for row in before]
    other.close()
    _set_quota(page, server)
    # A press that follows another so soon is taken for a double tap.
    page.wait_for_timeout(1_100)
    press(page, "Try again")
    expect(heading(page)).to_have_text("Saved to the log")
    assert rows(page)[:-1] == before
    assert len(rows(page)) == len(before) + 1
    phone.close()
