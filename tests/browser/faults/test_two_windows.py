"""Two windows that save at once: every save has a row of its own, and no number is missing."""

import pytest
from playwright.sync_api import expect

from pycore.desk.contract.checked import checked
from pycore.journal.chain import chains_of
from pycore.journal.entry import read_line
from tests.browser.faults.saving import prepared, start_saving, texts
from tests.browser.phone import Phone
from tests.browser.server import Server
from tests.browser.stored import blank_page, rows


@pytest.mark.parametrize(
    "saves", [pytest.param(20, id="20"), pytest.param(200, id="200", marks=pytest.mark.nightly)]
)
def test_two_windows_save_side_by_side(phone: Phone, server: Server, saves: int) -> None:
    page = phone.start()
    prepared(page, server.address)
    other = page.context.new_page()
    other.goto(f"{server.address}#/log")
    expect(other.locator(".log-row").first).to_be_visible()
    for window, mark in ((page, "one"), (other, "two")):
        start_saving(window, saves, mark)
    for window in (page, other):
        window.evaluate("window.saving")
    stored = texts(page)
    entries = [read_line(row["text"], checked) for row in rows(page)]
    print(f"{saves} saves in each of 2 windows: {len(stored)} rows")
    assert len(stored) == len(set(stored)) == 2 * saves
    assert [entry.seq for entry in entries] == list(range(1, 2 * saves + 2))
    chains = chains_of(entries, ())
    assert (chains.forks, chains.gaps, chains.breaks) == ((), (), ())


# What the store must not do: the number is read in one transaction and used in another, with put.
CARELESS = """
async ([mark, count]) => {
  const done = (request) => new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  const opened = indexedDB.open("careless", 1);
  opened.onupgradeneeded = () => opened.result.createObjectStore("rows", { keyPath: "seq" });
  const db = await done(opened);
  for (let n = 0; n < count; n += 1) {
    const last = await done(db.transaction("rows").objectStore("rows").openCursor(null, "prev"));
    const row = { seq: (last?.key ?? 0) + 1, mark: `${mark} ${n}` };
    await done(db.transaction("rows", "readwrite").objectStore("rows").put(row));
  }
  return (await done(db.transaction("rows").objectStore("rows").count()));
}
"""


def test_two_windows_can_overwrite_each_other(phone: Phone, server: Server) -> None:
    """The control: where a store is careless they do, so the test above can fail."""
    page = phone.start()
    blank_page(page, server)
    other = page.context.new_page()
    blank_page(other, server)
    saves = 200
    page.evaluate(f"(given) => {{ window.saving = ({CARELESS})(given); }}", ["one", saves])
    other.evaluate(f"(given) => {{ window.saving = ({CARELESS})(given); }}", ["two", saves])
    kept = max(window.evaluate("window.saving") for window in (page, other))
    print(f"control: {2 * saves} careless saves, {kept} rows")
    assert kept < 2 * saves
