"""Lines that an older build put into quarantine are looked at anew, once by each build."""

from playwright.sync_api import Page, expect

from tests.browser.files import start_at, take_in
from tests.browser.phone import wait_until_ready
from tests.browser.stored import taken
from tests.phones import LATHE, check, setup
from tests.phones import Phone as Writer
from tests.properties.asking import ask

# As the older build left them: marked, and that build has looked.
_MARK = """
async (text) => {
  const done = (request) => new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  const db = await done(indexedDB.open("pailwright"));
  const tx = db.transaction(["taken", "about"], "readwrite");
  const store = tx.objectStore("taken");
  const [rows, keys] = await Promise.all([done(store.getAll()), done(store.getAllKeys())]);
  rows.forEach((row, i) => {
    if (row.text === text) store.put({ ...row, whole: false }, keys[i]);
  });
  await done(tx.objectStore("about").delete("first"));
  db.close();
}
"""
_BUILD = """
async (build) => {
  const done = (request) => new Promise((resolve) => {
    request.onsuccess = () => resolve(request.result);
  });
  const db = await done(indexedDB.open("pailwright"));
  const about = db.transaction("about", "readwrite").objectStore("about");
  if (build !== "") await done(about.put({ name: "looked", text: build }));
  const found = await done(about.get("looked"));
  db.close();
  return found?.text ?? "";
}
"""


def marks(page: Page) -> list[bool]:
    """Whether each line that was taken in is in quarantine, in the order of their numbers."""
    lines = sorted(taken(page), key=lambda one: one["text"].split('"seq":')[1][:2])
    return [not one["whole"] for one in lines]


def test_a_newer_build_lifts_the_marks_of_what_it_can_read(page: Page) -> None:
    wait_until_ready(page)
    writer = Writer("older")
    machine = {"machine": setup()}
    writer.save("machine_set", machine, 0, LATHE, shown=ask("read_machine", machine))
    body = {**machine, **check("400", "5.3")}
    shown = {"assessment": ask("plan_check", body)["assessment"]}
    writer.save("check", body, 60, LATHE, shown=shown)
    # What no build can read: its content has another form.
    writer.save("check", {"dip": "deep"}, 120, LATHE)
    take_in(page, writer.export(), 2)
    assert marks(page) == [False, False, True]
    page.evaluate(_MARK, writer.lines[1])
    page.evaluate(_BUILD, "an older build")
    assert marks(page) == [False, True, True]
    start_at(page)
    row = page.get_by_role("link", name="Wheel lathe").first
    expect(row).not_to_contain_text("No check yet")
    assert marks(page) == [False, False, True]
    texts = [one["text"] for one in taken(page)]
    assert sorted(texts) == sorted(writer.lines)
    start_at(page, "log")
    expect(page.get_by_text("1 line that was taken in is damaged")).to_be_visible()
    # The same build has looked: it does not look again at every start.
    assert page.evaluate(_BUILD, "") != "an older build"
    page.evaluate(_MARK, writer.lines[1])
    start_at(page)
    wait_until_ready(page)
    page.wait_for_timeout(2_000)
    assert marks(page) == [False, True, True]
    start_at(page, "log")
    expect(page.get_by_text("2 lines that were taken in are damaged")).to_be_visible()
