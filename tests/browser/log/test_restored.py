"""Backup, everything deleted, backup taken in again: the same entries and the same trend."""

import pytest
from playwright.sync_api import Page, expect

from pycore.journal.file import PHONE, read_file
from tests.browser.files import backup, offer, start_at, take_in
from tests.browser.phone import heading
from tests.browser.stored import rows, taken
from tests.browser.walk import check_until_recipe, open_machine, press, save_check


def _lines(text: str) -> list[str]:
    file = read_file(text, PHONE)
    assert (file.findings, file.missing) == ([], 0)
    return file.lines


def _seen(page: Page) -> tuple[str, str, str]:
    """What the log and the trend of the machine say, and the trend's table."""
    start_at(page)
    page.get_by_role("link", name="Wheel lathe").first.click()
    expect(heading(page)).to_have_text("Wheel lathe")
    machine = page.url.split("#/")[1]
    start_at(page, machine, "trend")
    expect(page.locator(".chart canvas").first).to_be_visible()
    trend = page.locator(".trend-said").inner_text()
    press(page, "Show the same numbers as a table")
    expect(page.locator(".trend-table tbody tr").first).to_be_visible()
    table = page.locator(".trend-table").inner_text()
    start_at(page, machine, "log")
    expect(page.get_by_role("main")).to_contain_text("Dip 342 mm")
    return trend, table, page.locator(".log-list").inner_text()


def _delete_all(page: Page) -> None:
    """As the phone's own settings do it: database, notes, files of the app, service worker."""
    origin = page.evaluate("location.origin")
    page.goto("about:blank")
    session = page.context.new_cdp_session(page)
    session.send("Storage.clearDataForOrigin", {"origin": origin, "storageTypes": "all"})
    session.detach()
    page.goto(origin)


@pytest.mark.usefixtures("machine_on_phone")
def test_all_is_there_again_after_everything_was_deleted(page: Page) -> None:
    for _ in range(2):
        open_machine(page)
        check_until_recipe(page)
        save_check(page)
    before = _seen(page)
    count = len(rows(page))
    text = backup(page)
    _delete_all(page)
    expect(page.get_by_role("button", name="Add your first machine")).to_be_visible()
    assert rows(page) == []
    offer(page, text.replace('"342"', '"392"', 1))
    expect(page.get_by_role("main")).to_contain_text("changed or dam")
    assert taken(page) == []
    take_in(page, text, count)
    assert _seen(page) == before
    assert _lines(backup(page)) == _lines(text)
