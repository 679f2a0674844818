"""The database's files are damaged while the browser is closed: an alarm, nothing is deleted."""

import shutil
from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Playwright, expect

from tests.browser.faults.saving import prepared, start_saving
from tests.browser.phone import Phone, heading
from tests.browser.server import Server

SAVES = 5
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


def cut_half(folder: Path) -> None:
    """The newest entries are gone, and what is left is whole."""
    content = _largest(folder).read_bytes()
    _largest(folder).write_bytes(content[: len(content) // 2])


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


DAMAGES: list[Callable[[Path], None]] = [
    cut_half,
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
    phone.close()
    (folder,) = (profile / "Default" / "IndexedDB").glob("*.leveldb")
    damage(folder)
    page = phone.start()
    page.add_init_script(COUNT_DELETIONS)
    page.goto(server.address)
    alarm = page.get_by_role("alert")
    again = page.get_by_role("button", name="Try again")
    expect(alarm.or_(again).first).to_be_visible()
    said = heading(page).inner_text()
    print(f"{damage.__name__}: {alarm.first.inner_text() if alarm.count() else said}")
    # Never an ordinary empty list, and nothing was thrown away.
    assert alarm.count() or said != "Machines"
    assert page.evaluate("window.deletions") == 0
    phone.close()
