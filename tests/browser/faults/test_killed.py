"""SIGKILL right after Saved: every acknowledged entry is there, and no number is missing.

A killed process is not a power cut: nothing here says what a disk does without power.
"""

import json
import shutil
import sys
import time
from pathlib import Path

import pytest
from playwright.sync_api import ConsoleMessage, Error, Playwright

from pycore.desk.contract.checked import checked
from pycore.journal.chain import chains_of
from pycore.journal.entry import read_line
from tests.browser.faults.saving import kill_browser, prepared, start_saving, texts
from tests.browser.phone import Phone, heading
from tests.browser.server import Server
from tests.browser.stored import rows, taken

pytestmark = pytest.mark.skipif(sys.platform != "linux", reason="needs /proc")
LIMIT_S = 60


class Seen:
    """What a phone has called saved, as told outside its browser."""

    def __init__(self) -> None:
        self.marks: list[str] = []

    def __call__(self, message: ConsoleMessage) -> None:
        if message.text.startswith("saved "):
            self.marks.append(message.text.removeprefix("saved "))


def killed_after(phone: Phone, profile: Path, address: str, kill: int, seen: Seen) -> None:
    """Opens the app, lets it save, and kills it as soon as some saves were seen."""
    page = phone.start()
    page.on("console", seen)
    if kill == 0:
        prepared(page, address)
    else:
        page.goto(address)
    before = len(seen.marks)
    start_saving(page, 1_000, f"kill {kill}")
    started_s = time.monotonic()
    while len(seen.marks) < before + 2 + kill % 4 and time.monotonic() - started_s < LIMIT_S:
        page.wait_for_timeout(5)
    assert len(seen.marks) > before
    assert kill_browser(profile) > 0
    try:
        phone.close()
    except Error:
        # Its browser is gone already.
        phone.forget()


@pytest.mark.parametrize(
    "kills", [pytest.param(10, id="10"), pytest.param(60, id="60", marks=pytest.mark.nightly)]
)
def test_no_acknowledged_entry_is_lost(
    playwright: Playwright, server: Server, tmp_path: Path, kills: int
) -> None:
    profile, seen = tmp_path / "profile", Seen()
    phone = Phone(playwright, profile)
    for kill in range(kills):
        killed_after(phone, profile, server.address, kill, seen)
    page = phone.start()
    page.goto(server.address)
    stored = texts(page)
    lost = [mark for mark in seen.marks if mark not in stored]
    print(f"{kills} kills, {len(seen.marks)} acknowledged, {len(lost)} lost, {len(stored)} stored")
    # Where they are instead, and what the page says of it: once all were gone, and nobody knew why.
    closed = [json.loads(line["text"])["kind"] for line in taken(page)]
    free_mb = shutil.disk_usage(tmp_path).free // 2**20
    said = heading(page).inner_text()
    assert lost == [], f"{len(stored)} stored, closed: {closed}, page: {said}, {free_mb} MB free"
    assert len(stored) == len(set(stored))
    entries = [read_line(row["text"], checked) for row in rows(page)]
    chains = chains_of(entries, ())
    assert (chains.forks, chains.gaps, chains.breaks) == ((), (), ())
    assert json.loads(rows(page)[-1]["text"])["seq"] == len(entries)
    assert page.get_by_role("alert").count() == 0
    phone.close()
