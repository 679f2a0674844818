"""The office has removed an entry: a phone that takes the file in has its content no more."""

import pytest
from playwright.sync_api import expect

from pycore.desk.contract.checked import checked
from pycore.journal.entry import read_line
from pycore.journal.file import write_file
from pycore.journal.tombstone import Tombstone, tombstone_of
from tests.browser.faults.saving import start_saving
from tests.browser.files import backup, offer, start_at, take_in
from tests.browser.phone import Phone, picture
from tests.browser.server import Server
from tests.browser.stored import rows, taken


@pytest.mark.usefixtures("machine_on_phone")
def test_its_place_stays_and_its_content_goes(phone: Phone, server: Server) -> None:
    page = phone.start()
    page.goto(server.address)
    expect(page.locator(".machine-row")).to_be_visible()
    start_saving(page, 3, "somebody")
    page.evaluate("window.saving")
    before = rows(page)
    whole = backup(page)
    entry = read_line(before[2]["text"], checked)
    place = Tombstone(entry.id, entry.log, entry.seq, entry.prev, entry.hash)
    stone = tombstone_of(place, "asked for by the person")
    lines = [row["text"] for row in before]
    lines[2] = stone
    take_in(page, write_file(lines, []), 1)
    after = rows(page)
    assert after[2] == {**before[2], "text": stone}
    assert [row for row in after if row["seq"] != 3] == [row for row in before if row["seq"] != 3]
    assert taken(page) == []
    start_at(page, "log")
    expect(page.get_by_text("The content of 1 entry was removed by the office.")).to_be_visible()
    expect(page.get_by_text("somebody 1")).to_be_visible()
    assert page.get_by_text("somebody 2").count() == 0
    picture(page, "log-removed")
    # It can still be written to, and an older file does not bring it back.
    start_saving(page, 1, "later")
    page.evaluate("window.saving")
    offer(page, whole)
    expect(page.get_by_text("Add 1 entry")).to_have_count(0)
    text = backup(page)
    assert stone in text
    assert "somebody 2" not in text
    assert "later 1" in text
