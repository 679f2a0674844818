"""The database's files are damaged while the browser is closed: an alarm, nothing is deleted."""

import re
import shutil
import time
from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Playwright, expect

from tests.browser.faults.saving import prepared, start_saving
from tests.browser.phone import Phone
from tests.browser.practice import get_sump
from tests.browser.server import Server
from tests.browser.stored import rows, taken

SAVES = 5
NOTED_S = 60
COUNT_DELETIONS = """
window.deletions = 0;
const real = IDBFactory.prototype.deleteDatabase;
IDBFactory.prototype.deleteDatabase = function (...rest) {
  window.deletions += 1;
  return real.apply(this, rest);
};
"""


def _largest(folder: Path) -> Path:
    return max(folder.glob("*.log"), key=lambda path: path.stat().st_size)


def cut_end(folder: Path) -> None:
    """The newest entries are gone, and what is left is whole."""
    content = _largest(folder).read_bytes()
    _largest(folder).write_bytes(content[: len(content) * 9 // 10])


def flip_bytes(folder: Path) -> None:
    """64 bytes in the middle are others."""
    content = bytearray(_largest(folder).read_bytes())
    middle = len(content) // 2
    for place in range(middle, middle + 64):
        content[place] ^= 0xFF
    _largest(folder).write_bytes(bytes(content))


def spoil_current(folder: Path) -> None:
    """The file that names the others is garbage."""
    (folder / "CURRENT").write_bytes(b"garbage")


def delete_manifest(folder: Path) -> None:
    """The list of files is gone."""
    for path in folder.glob("MANIFEST-*"):
        path.unlink()


def _until_noted(profile: Path, count: int) -> None:
    """The browser keeps notes outside the database for seconds before it writes them down."""
    noted, folder = f'"count":{count}'.encode(), profile / "Default" / "Local Storage" / "leveldb"
    end_s = time.monotonic() + NOTED_S
    while not any(noted in path.read_bytes() for path in folder.glob("*.log")):
        assert time.monotonic() < end_s, "the second record is not on the disk"
        time.sleep(0.2)


DAMAGES: list[Callable[[Path], None]] = [
    cut_end,
    flip_bytes,
    spoil_current,
    delete_manifest,
    shutil.rmtree,
]


@pytest.mark.parametrize("damage", DAMAGES, ids=lambda damage: damage.__name__)
def test_damage_is_an_alarm(
    playwright: Playwright, server: Server, tmp_path: Path, damage: Callable[[Path], None]
) -> None:
    profile = tmp_path / "profile"
    phone = Phone(playwright, profile)
    page = phone.start()
    prepared(page, server.address)
    start_saving(page, SAVES, "note")
    page.evaluate("window.saving")
    written = len(rows(page))
    assert written > SAVES
    _until_noted(profile, written)
    phone.close()
    (folder,) = (profile / "Default" / "IndexedDB").glob("*.leveldb")
    damage(folder)
    page = phone.start()
    page.add_init_script(COUNT_DELETIONS)
    page.goto(server.address)
    alarm = page.get_by_role("alert").filter(has_text="had reached at least entry")
    closed = page.get_by_role("heading", name="The log cannot be read", exact=True)
    expect(alarm.or_(closed).first).to_be_visible()
    if closed.is_visible():
        print(f"{damage.__name__}: {page.inner_text('body')}")
        expect(page.get_by_role("button", name="Try again")).to_be_visible()
    else:
        said = alarm.inner_text()
        print(f"{damage.__name__}: {said}")
        reached, left = re.search(r"had reached at least entry (\d+)\. Only (\d+) ", said).groups()  # type: ignore[union-attr]
        assert int(reached) == written
        # What is left of a log that lost its end is closed, and lies with the lines of others.
        assert rows(page) == []
        assert int(left) == len(taken(page)) < written
        assert (int(left) > 0) is (damage is cut_end)
        alarm.get_by_role("link").click()
        expect(page.get_by_role("button", name="Take in a backup file")).to_be_visible()
    # Nothing was thrown away, and the calculator works all the same.
    assert page.evaluate("window.deletions") == 0
    page.goto(f"{server.address}#/practice")
    page.reload()
    get_sump(page, "7")
    expect(page.get_by_role("main")).to_contain_text("mm")
    phone.close()
