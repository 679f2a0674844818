"""The app opens from a checkpoint and a few lines: what it shows is what all lines together say."""

import json
from collections.abc import Callable
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from pycore.journal.line import opened
from tests.bench.logs import EVERY_S, fill, rows_of
from tests.browser.phone import Phone, heading
from tests.browser.server import Server
from tests.browser.stored import checkpoint, cut_after, put_checkpoint, put_row
from tests.phones import LATHE, id_of, setup
from tests.phones import Phone as Writer

ROWS = 240
BACKUP = ".machine-list ~ p"
SOON_AFTER = "2026-11-30T12:00:00Z"
GRINDER = id_of("axle grinder")
COUNT_READS = """
window.wholeReads = 0;
const real = IDBObjectStore.prototype.getAll;
IDBObjectStore.prototype.getAll = function (...given) {
  if (this.name === "entries" && given[0] === undefined) window.wholeReads += 1;
  return real.apply(this, given);
};
"""


def row(writer: Writer) -> dict[str, Any]:
    """The line that was written last, as the store keeps it."""
    line = json.loads(writer.lines[-1])
    return {"seq": writer.seq, "id": line["id"], "text": writer.lines[-1]}


def shown(page: Page, server: Server) -> tuple[str, int]:
    """The list and the log after a new start, and how often every line was read for them."""
    page.goto("about:blank")
    page.goto(server.address)
    texts = (
        page.locator(".machine-list").inner_text()
        + page.locator(BACKUP).first.inner_text().split(".")[0]
    )
    page.get_by_role("link", name="Open the log").click()
    expect(page.locator(".log-row").first).to_be_visible()
    texts += page.locator("main").inner_text()
    # Whatever is written after a start is written by now.
    page.wait_for_timeout(300)
    return texts, page.evaluate("window.wholeReads")


def changed(**change: Any) -> Callable[[str], str]:
    """A checkpoint with other fields."""
    return lambda text: json.dumps({**json.loads(text), **change})


def moved(**change: Any) -> Callable[[str], str]:
    """A checkpoint that says it stands for something else."""

    def edit(text: str) -> str:
        kept = json.loads(text)
        return json.dumps({**kept, "reach": {**kept["reach"], **change}})

    return edit


WRONG: list[tuple[str, Callable[[str], str | None]]] = [
    ("missing", lambda _: None),
    ("no JSON", lambda text: text[: len(text) // 2]),
    ("nothing in it", lambda _: "{}"),
    ("of another build", changed(build="older")),
    ("another end", moved(head="0" * 64)),
    ("too many lines", moved(count=ROWS + 7)),
    ("another log", moved(log="0" * 32)),
    ("lines from elsewhere", moved(taken=3)),
    ("a place where nothing is", changed(hot=[{"own": True, "key": 9_999, "reached": 1}])),
    ("a place that is none", changed(hot=[{"own": True, "key": "x", "reached": 1}])),
]


@pytest.fixture
def writer() -> Writer:
    """The log in the phone: a lathe with many checks, and a grinder that was set up long ago."""
    writer = Writer("bench")
    for made in rows_of(ROWS):
        writer.lines.append(made["text"])
    writer.seq, writer.prev = ROWS, opened(writer.lines[-1])[1]
    return writer


@pytest.fixture
def page(phone: Phone, server: Server) -> Page:
    """A phone whose store was filled before the app has seen it."""
    page = phone.start()
    # Before the next check is due: when Python says so would differ from start to start.
    page.clock.set_fixed_time(SOON_AFTER)
    fill(page, server, rows_of(ROWS))
    page.add_init_script(COUNT_READS)
    return page


def test_what_is_shown_is_what_the_lines_say(page: Page, server: Server) -> None:
    first, reads = shown(page, server)
    assert reads == 1
    assert "239\N{NO-BREAK SPACE}checks saved" in first
    kept = checkpoint(page)
    assert kept is not None
    assert len(json.loads(kept)["hot"]) < ROWS
    assert shown(page, server) == (first, 0)
    for name, edit in WRONG:
        put_checkpoint(page, edit(kept))
        assert shown(page, server) == (first, 1), name
        assert checkpoint(page) == kept, name


def test_what_came_after_the_checkpoint(page: Page, server: Server, writer: Writer) -> None:
    shown(page, server)
    kept = checkpoint(page)

    # Killed between an entry and the next checkpoint: the entry is there.
    writer.save("note", {"text": "Skimmer belt slips."}, (ROWS + 1) * EVERY_S, LATHE)
    put_row(page, row(writer))
    texts, reads = shown(page, server)
    assert (reads, "Skimmer belt slips." in texts) == (0, True)

    # A machine that is set up now stands in the list, though no checkpoint knows it.
    set_up = json.loads(writer.lines[0])
    at_s = (ROWS + 2) * EVERY_S
    writer.save(
        "machine_set", {"machine": setup("Axle grinder")}, at_s, GRINDER, shown=set_up["shown"]
    )
    put_row(page, row(writer))
    texts, reads = shown(page, server)
    assert (reads, "Axle grinder" in texts) == (0, True)

    # A withdrawal changes what came before, so every line is looked at.
    note = json.loads(writer.lines[-2])["id"]
    writer.save("withdrawal", {"retracts": note, "reason": "Wrong machine."}, at_s + 60, LATHE)
    put_row(page, row(writer))
    texts, reads = shown(page, server)
    # It is listed as taken back, and a start from the next checkpoint says the same.
    assert (reads, "Taken back" in texts) == (1, True)
    assert shown(page, server) == (texts, 0)
    assert checkpoint(page) != kept

    # The end of the log is gone, and what is left is whole.
    cut_after(page, ROWS)
    texts, reads = shown(page, server)
    assert (reads, "Axle grinder" in texts) == (1, False)


def test_the_machines_page_reads_no_more_than_a_start(page: Page, server: Server) -> None:
    shown(page, server)
    page.goto("about:blank")
    page.goto(f"{server.address}#/machines/{LATHE}")
    expect(page.locator(".last-check")).to_be_visible()
    expect(page.get_by_role("link", name="Trend")).to_be_visible()
    # It was asked for while the page was drawn, before it told what speaks for a clean-out.
    page.wait_for_timeout(500)
    assert page.evaluate("window.wholeReads") == 0


def test_older_entries_and_the_backup_are_whole(page: Page, server: Server, writer: Writer) -> None:
    shown(page, server)
    shown(page, server)
    expect(page.locator(".log-row")).to_have_count(100)
    page.get_by_role("button", name="Show 100 older entries").click()
    expect(page.locator(".log-row")).to_have_count(200)
    # A second press so soon would be a double tap.
    page.wait_for_timeout(1_000)
    page.get_by_role("button", name="Show 40 older entries").click()
    expect(page.locator(".log-row")).to_have_count(ROWS)
    assert page.evaluate("window.wholeReads") == 1

    # The first entry is among none of those that a start reads.
    shown(page, server)
    oldest = json.loads(writer.lines[5])["id"]
    page.goto(f"{server.address}#/log/{oldest}")
    expect(heading(page)).to_have_text("Check")
    page.goto("about:blank")
    page.goto(f"{server.address}#/backup")
    expect(page.get_by_text(f"The file holds {ROWS} entries")).to_be_visible()
