"""What is stored on the phone, seen from outside the app, and how to damage it."""

import json
from typing import Any, Protocol

from playwright.sync_api import Page

from tests.properties.asking import ask

LATER = "2100-01-01T00:00:00+00:00"

_RUN = """
async ([job, given]) => {
  const jobs = {
    rows: (db) => db.transaction("entries").objectStore("entries").getAll(),
    taken: (db) => db.transaction("taken").objectStore("taken").getAll(),
    cut: (db) => {
      const range = IDBKeyRange.lowerBound(given, true);
      return db.transaction("entries", "readwrite").objectStore("entries").delete(range);
    },
    put: (db) => db.transaction("entries", "readwrite").objectStore("entries").put(given),
    about: (db) => db.transaction("about").objectStore("about").get(given),
    tell: (db) => db.transaction("about", "readwrite").objectStore("about").put(given),
    untell: (db) => db.transaction("about", "readwrite").objectStore("about").delete(given),
  };
  const done = (request) => new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  const db = await done(indexedDB.open("pailwright"));
  try {
    return (await done(jobs[job](db))) ?? null;
  } finally {
    db.close();
  }
}
"""
_OLD = """
async ([log, rows]) => {
  const opened = indexedDB.open("pailwright", 1);
  opened.onupgradeneeded = () => {
    const entries = opened.result.createObjectStore("entries", { keyPath: "seq" });
    entries.createIndex("id", "id", { unique: true });
    for (const row of rows) entries.add(row);
    opened.result.createObjectStore("about", { keyPath: "name" }).add({ name: "log", text: log });
  };
  await new Promise((resolve, reject) => {
    opened.onsuccess = () => {
      opened.result.close();
      resolve();
    };
    opened.onerror = () => reject(opened.error);
  });
}
"""


def rows(page: Page) -> list[dict[str, Any]]:
    """The rows of the phone's own log, by number."""
    found: list[dict[str, Any]] = page.evaluate(_RUN, ["rows", None])
    return found


def entries(page: Page, *kinds: str) -> list[dict[str, Any]]:
    """The phone's own entries in order, as they are stored: of some kinds, or all."""
    found = [json.loads(row["text"]) for row in rows(page)]
    return [entry for entry in found if not kinds or entry["kind"] in kinds]


def folded(page: Page) -> dict[str, Any]:
    """The only machine as pycore finds it on the phone; nothing there may be refused."""
    lines = [row["text"] for row in [*rows(page), *taken(page)]]
    log = ask("fold_log", {"lines": lines, "now": LATER})
    assert log["counts"]["quarantined"] == 0
    (machine,) = log["machines"]
    return dict(machine)


def taken(page: Page) -> list[dict[str, Any]]:
    """The lines that came from elsewhere or from a log that was closed."""
    found: list[dict[str, Any]] = page.evaluate(_RUN, ["taken", None])
    return found


def cut_after(page: Page, seq: int) -> None:
    """Takes the end of the log away, as a damaged disk does."""
    page.evaluate(_RUN, ["cut", seq])


def put_row(page: Page, row: dict[str, Any]) -> None:
    """Puts another row under a number."""
    page.evaluate(_RUN, ["put", row])


def about(page: Page, name: str) -> str | None:
    """The text that the database keeps under a name beside the log, if there is one."""
    found: dict[str, str] | None = page.evaluate(_RUN, ["about", name])
    return None if found is None else found["text"]


def put_about(page: Page, name: str, text: str | None) -> None:
    """Puts another text in its place, or takes it away."""
    if text is None:
        page.evaluate(_RUN, ["untell", name])
    else:
        page.evaluate(_RUN, ["tell", {"name": name, "text": text}])


def checkpoint(page: Page) -> str | None:
    """The text of the checkpoint that a start goes by, if there is one."""
    return about(page, "first")


def put_checkpoint(page: Page, text: str | None) -> None:
    """Puts another text in its place, or takes it away."""
    put_about(page, "first", text)


class Addressed(Protocol):
    """What has the app's address: any server."""

    @property
    def address(self) -> str:
        """Ends with a slash."""


def blank_page(page: Page, server: Addressed) -> None:
    """An empty page at the app's own address, from where its database can be made."""
    empty = "<!doctype html><title>Empty</title><link rel='icon' href='data:,'>"
    page.route(server.address, lambda route: route.fulfill(body=empty, content_type="text/html"))
    page.goto(server.address)
    page.unroute(server.address)


def store_as_version_1(page: Page, log: str, stored: list[dict[str, Any]]) -> None:
    """The database of the first version of the app, before this one has opened it."""
    page.evaluate(_OLD, [log, stored])
