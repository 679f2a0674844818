"""``python -m tests.bench.logs``: the log's page on a phone's screen as the log grows.

Reading is from the app's start to the list of the latest entries: at the first start every line is
read, at later ones the part that a checkpoint leads to. Opening is from the press on the last one
to its page, "all" from the press on the older ones to every line read; page MB is what the
page's JavaScript holds before that, all MB after it. Machine is a start at the machine's own page
to its last check, with the rows that it has read ten seconds later and the megabytes that it holds
then. Garbage is collected before megabytes are read. Pictures lie below tests/.output. With sizes
behind the name: those logs, such as ``100000``.
"""

import argparse
import json
import tempfile
import time
from pathlib import Path
from typing import Any

from playwright.sync_api import Page, expect, sync_playwright

from pycore.desk import handle
from tests.browser.phone import Phone, heading, picture
from tests.browser.server import Server
from tests.browser.stored import Addressed, blank_page
from tests.phones import LATHE, check, id_of, setup
from tests.phones import Phone as Writer

SIZES = (0, 1, 2, 300, 1_000, 20_000)
AT_ONCE = 500
WAIT_MS = 60_000
EVERY_S = 1_200
# What the page still asks for once it is drawn has come by then.
AFTER_MS = 10_000

OPEN = """
async (log) => {
  const opened = indexedDB.open("pailwright", 2);
  opened.onupgradeneeded = () => {
    const db = opened.result;
    db.createObjectStore("entries", { keyPath: "seq" }).createIndex("id", "id", { unique: true });
    db.createObjectStore("about", { keyPath: "name" }).add({ name: "log", text: log });
    db.createObjectStore("taken", { autoIncrement: true });
  };
  window.db = await new Promise((done, fail) => {
    opened.onsuccess = () => done(opened.result);
    opened.onerror = () => fail(opened.error);
  });
}
"""
ADD = """
(rows) => new Promise((done, fail) => {
  const tx = window.db.transaction("entries", "readwrite");
  for (const row of rows) tx.objectStore("entries").add(row);
  tx.oncomplete = () => done();
  tx.onerror = () => fail(tx.error);
})
"""


def _answer(op: str, body: dict[str, Any]) -> dict[str, Any]:
    result: dict[str, Any] = json.loads(
        handle(json.dumps({"v": 1, "id": "a", "op": op, "body": body}))
    )["result"]
    return result


def rows_of(count: int, first_s: int = 0, every_s: int = EVERY_S) -> list[dict[str, Any]]:
    """So many rows: the set-up of the wheel lathe, then checks as the app stores them.

    ``first_s`` is when the first was made, in seconds after the morning of the examples.
    """
    writer = Writer("bench")
    machine = {"machine": setup()}
    shown = _answer("read_machine", machine)
    body = {**machine, **check()}
    said = {"assessment": _answer("plan_check", body)["assessment"]}
    for place in range(count):
        if place == 0:
            writer.save("machine_set", machine, first_s, LATHE, shown=shown)
        else:
            writer.save("check", body, first_s + place * every_s, LATHE, shown=said)
    return [
        {"seq": seq, "id": id_of(f"bench {seq}"), "text": line}
        for seq, line in enumerate(writer.lines, 1)
    ]


def fill(page: Page, server: Addressed, rows: list[dict[str, Any]]) -> None:
    """Puts the rows into the phone's database before the app has opened it."""
    blank_page(page, server)
    page.evaluate(OPEN, id_of("log of bench"))
    for start in range(0, len(rows), AT_ONCE):
        page.evaluate(ADD, rows[start : start + AT_ONCE])
    page.evaluate("window.db.close()")


def started(page: Page, count: int) -> float:
    """Seconds from a new start at the log's page to its list."""
    started_s = time.perf_counter()
    page.reload()
    if count > 0:
        expect(page.locator(".log-row").first).to_be_visible(timeout=WAIT_MS)
    else:
        expect(page.get_by_text("No check saved yet.")).to_be_visible()
    return time.perf_counter() - started_s


def opened(page: Page, count: int) -> float:
    """Seconds from the press on the last entry to its page."""
    started_s = time.perf_counter()
    page.locator(".log-row").first.click()
    expect(heading(page)).to_have_text("Check" if count > 1 else "Set-up of the machine")
    return time.perf_counter() - started_s


def all_read(page: Page) -> float:
    """Seconds until the older entries are there."""
    page.go_back()
    older = page.get_by_role("button", name="older")
    if older.count() == 0:
        return 0.0
    started_s = time.perf_counter()
    older.click()
    expect(page.locator(".log-row").nth(150)).to_be_visible(timeout=WAIT_MS)
    return time.perf_counter() - started_s


# How many rows the page has got out of its database.
COUNT_ROWS = """
globalThis.rowsRead = 0;
for (const name of ["get", "getAll"]) {
  const real = IDBObjectStore.prototype[name];
  IDBObjectStore.prototype[name] = function (...given) {
    const request = real.apply(this, given);
    if (this.name !== "about") request.addEventListener("success", () => {
      globalThis.rowsRead += [request.result ?? []].flat().length;
    });
    return request;
  };
}
"""


def held_mb(page: Page) -> float:
    """Megabytes of what the page's JavaScript holds, without its garbage."""
    session = page.context.new_cdp_session(page)
    try:
        session.send("HeapProfiler.collectGarbage")
        return float(session.send("Runtime.getHeapUsage")["usedSize"]) / 1e6
    finally:
        session.detach()


def machine_page(page: Page) -> list[float]:
    """Seconds from a start at the machine's page to its last check, rows read, megabytes."""
    page.add_init_script(COUNT_ROWS)
    page.goto(page.url.split("#")[0] + f"#/machines/{LATHE}")
    started_s = time.perf_counter()
    page.reload()
    expect(page.locator(".last-check")).to_be_visible(timeout=WAIT_MS)
    took_s = time.perf_counter() - started_s
    page.wait_for_timeout(AFTER_MS)
    return [took_s, page.evaluate("rowsRead"), held_mb(page)]


def measured(page: Page, server: Server, count: int) -> list[float]:
    """Seconds of the first and a later start, to the last entry's page and to all; megabytes."""
    # Only the part behind the sign changes: the blank page stays until it is loaded again.
    page.goto(f"{server.address}#/log")
    first_s = started(page, count)
    # The checkpoint is written after the list is drawn.
    page.wait_for_timeout(1_000)
    later_s = started(page, count)
    picture(page, f"log-{count}")
    held = held_mb(page)
    if count == 0:
        return [first_s, later_s, 0.0, held, 0.0, held, 0.0, 0.0, 0.0]
    log_page = [first_s, later_s, opened(page, count), held, all_read(page), held_mb(page)]
    return [*log_page, *(machine_page(page) if count > 1 else (0.0, 0.0, 0.0))]


def main() -> None:
    """Prints the figures."""
    parser = argparse.ArgumentParser(prog="python3 -m tests.bench logs")
    parser.add_argument("sizes", nargs="*", type=int, default=SIZES, help="entries of each log")
    wanted = parser.parse_args()
    titles = (
        "first s",
        "later s",
        "open last s",
        "page MB",
        "all s",
        "all MB",
        "machine s",
        "its rows",
        "its MB",
    )
    print(f"{'entries':>9}{''.join(f'{title:>13}' for title in titles)}")
    with sync_playwright() as driver, tempfile.TemporaryDirectory() as folder:
        server = Server()
        try:
            for count in wanted.sizes:
                phone = Phone(driver, Path(folder) / str(count))
                page = phone.start()
                fill(page, server, rows_of(count))
                figures = measured(page, server, count)
                print(f"{count:>9,}{''.join(f'{one:>13.2f}' for one in figures)}", flush=True)
                phone.close()
        finally:
            server.kill()


if __name__ == "__main__":
    main()
