"""No room left: NOT SAVED at once, what was typed stays, the next try stores exactly one row."""

import time
from pathlib import Path
from urllib.parse import urlsplit

from playwright.sync_api import Playwright, expect

from tests.browser.faults.saving import prepared
from tests.browser.files import start_at
from tests.browser.phone import Phone, heading
from tests.browser.server import Server
from tests.browser.stored import rows
from tests.browser.walk import field, press

MORE_THAN_A_DRAFT = 1_500


def test_over_quota_is_said_and_nothing_is_lost(
    playwright: Playwright, server: Server, tmp_path: Path
) -> None:
    phone = Phone(playwright, tmp_path / "profile")
    page = phone.start()
    prepared(page, server.address)
    phone.close()
    page = phone.start()
    page.goto(server.address)
    parts = urlsplit(server.address)
    origin = f"{parts.scheme}://{parts.netloc}"
    browser = page.context.new_cdp_session(page)
    browser.send("Storage.overrideQuotaForOrigin", {"origin": origin, "quotaSize": 1})
    start_at(page, "tell")
    text = "x" * MORE_THAN_A_DRAFT
    field(page, "Note").fill(text)
    before = rows(page)
    started_s = time.perf_counter()
    press(page, "Save to the log")
    expect(page.get_by_text("NOT SAVED")).to_be_visible()
    print(f"NOT SAVED after {time.perf_counter() - started_s:.2f} s")
    assert field(page, "Note").input_value() == text
    assert rows(page) == before
    browser.send("Storage.overrideQuotaForOrigin", {"origin": origin})
    # A press that follows another so soon is taken for a double tap.
    page.wait_for_timeout(1_100)
    press(page, "Try again")
    expect(heading(page)).to_have_text("Saved to the log")
    assert len(rows(page)) == len(before) + 1
    phone.close()
