"""A browser whose store fails on demand: ``window.fault`` says how, from any moment on."""

from playwright.sync_api import Page, expect

from tests.browser.phone import heading
from tests.browser.walk import field, press

HOOKS = """
window.fault = { strict: [], refuse: "", times: 0, abortFrom: 0, requests: 0, alter: false };
window.deletions = 0;
const { fault } = window;
const begin = IDBDatabase.prototype.transaction;
IDBDatabase.prototype.transaction = function (names, mode, options) {
  const all = [names].flat();
  if (mode === "readwrite" && (all.includes("entries") || all.includes("taken")))
    fault.strict.push(options?.durability ?? "default");
  if (fault.times > 0) {
    fault.times -= 1;
    throw new DOMException("made by a test", fault.refuse);
  }
  return begin.apply(this, [names, mode, options]);
};
for (const [kind, name] of [
  [IDBObjectStore, "get"], [IDBObjectStore, "add"], [IDBObjectStore, "openCursor"],
  [IDBIndex, "get"], [IDBIndex, "getKey"],
]) {
  const real = kind.prototype[name];
  kind.prototype[name] = function (...given) {
    if (fault.alter && name === "add" && this.name === "entries")
      given[0] = { ...given[0], text: given[0].text.replace('"note"', '"nota"') };
    const request = real.apply(this, given);
    fault.requests += 1;
    if (fault.abortFrom > 0 && fault.requests >= fault.abortFrom)
      queueMicrotask(() => {
        try {
          (this.transaction ?? this.objectStore.transaction).abort();
        } catch {
          // The request before this one has ended it already.
        }
      });
    return request;
  };
}
const drop = IDBFactory.prototype.deleteDatabase;
IDBFactory.prototype.deleteDatabase = function (...given) {
  window.deletions += 1;
  return drop.apply(this, given);
};
"""
CLEAR = "Object.assign(window.fault, { times: 0, abortFrom: 0, requests: 0, alter: false })"
WITNESS = "JSON.parse(localStorage.getItem('pailwright.witness') ?? 'null')?.count ?? 0"
# A press that follows another so soon is taken for a double tap.
DOUBLE_TAP_MS = 1_100


def type_note(page: Page, text: str) -> None:
    """A note in its form, not saved yet."""
    page.evaluate("location.hash = '#/handover'")
    expect(heading(page)).not_to_have_text("Note")
    page.evaluate("location.hash = '#/tell'")
    expect(heading(page)).to_have_text("Note")
    field(page, "Note").fill(text)


def save_note(page: Page) -> bool:
    """Presses Save; whether the page calls it saved."""
    press(page, "Save to the log")
    said = page.get_by_text("NOT SAVED")
    saved = page.get_by_role("heading", name="Saved to the log")
    expect(said.or_(saved).first).to_be_visible()
    return saved.is_visible()


def try_again(page: Page) -> None:
    """Without the fault the same press stores it."""
    page.evaluate(CLEAR)
    page.wait_for_timeout(DOUBLE_TAP_MS)
    press(page, "Try again")
    expect(heading(page)).to_have_text("Saved to the log")
