"""Large files and archives in the phone's import: all of it is taken in, or nothing."""

import time
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from tests.bombs import gzip_bomb, zip_bomb
from tests.browser.files import offer, start_at
from tests.browser.phone import heading, wait_until_ready
from tests.browser.stored import rows, taken
from tests.browser.walk import press
from tests.phones import LATHE, check, setup
from tests.phones import Phone as Writer
from tests.properties.asking import ask

BYTES = 10_000_000
WAIT_MS = 300_000
EVERY_S = 1_200

# The longest time between two frames: what a person feels as a page that does not answer.
FRAMES = """
window.gap_ms = 0;
let last = performance.now();
const look = (now) => {
  window.gap_ms = Math.max(window.gap_ms, now - last);
  last = now;
  requestAnimationFrame(look);
};
requestAnimationFrame(look);
"""


def ten_megabytes() -> Writer:
    """One machine and so many checks, each as the app stores it without its recipe."""
    writer = Writer("ten megabytes")
    machine = {"machine": setup()}
    writer.save("machine_set", machine, 0, LATHE, shown=ask("read_machine", machine))
    body = {**machine, **check()}
    shown = {"assessment": ask("plan_check", body)["assessment"]}
    size = 0
    while size < BYTES:
        writer.save("check", body, writer.seq * EVERY_S, LATHE, shown=shown)
        size += len(writer.lines[-1])
    return writer


class Watched:
    """What a person waits for, and what of it is the page's own work (thread time, not the clock).

    Beside other programs a gap between frames says more about them than about the page.
    """

    def __init__(self, page: Page) -> None:
        self._page = page
        self._browser = page.context.new_cdp_session(page)
        self._browser.send("Performance.enable", {"timeDomain": "threadTicks"})
        page.evaluate(FRAMES)
        self.begin()

    def _busy_s(self) -> float:
        metrics = self._browser.send("Performance.getMetrics")["metrics"]
        return float({one["name"]: one["value"] for one in metrics}["TaskDuration"])

    def begin(self) -> None:
        """The next figures count from now on."""
        self._page.evaluate("window.gap_ms = 0")
        self._began_s, self._began_busy_s = time.perf_counter(), self._busy_s()

    def told(self, what: str) -> str:
        """Seconds since the beginning, the longest gap, and the page's own work."""
        took_s = time.perf_counter() - self._began_s
        gap_s = self._page.evaluate("window.gap_ms") / 1_000
        busy_s = self._busy_s() - self._began_busy_s
        return f"{what} {took_s:.1f} s (longest gap {gap_s:.2f} s, page at work {busy_s:.2f} s)"


@pytest.mark.nightly
def test_ten_megabytes_of_entries(page: Page, tmp_path: Path) -> None:
    wait_until_ready(page)
    writer = ten_megabytes()
    text, count = writer.export(), len(writer.lines)
    file = tmp_path / "backup.txt"
    file.write_text(text, encoding="utf-8")
    page.set_default_timeout(WAIT_MS)
    page.evaluate("location.hash = '#/take-in'")
    expect(heading(page)).to_have_text("Take in a file")
    watched = Watched(page)
    page.wait_for_timeout(3_000)
    told = [watched.told("nothing")]
    watched.begin()
    # From a file: what the driver sends itself, it unpacks in the page.
    page.locator("input[type=file]").set_input_files(file)
    expect(page.get_by_text("Reading the file")).to_be_visible()
    add = page.get_by_role("button", name="Add ")
    expect(add).to_be_visible(timeout=WAIT_MS)
    told.append(watched.told("shown"))
    watched.begin()
    add.click()
    expect(page.get_by_text("were added.")).to_be_visible(timeout=WAIT_MS)
    told.append(watched.told("added"))
    print(f"F48: {len(text) / 1e6:.1f} MB, {count} entries: {', '.join(told)}")
    assert sorted(line["text"] for line in taken(page)) == sorted(writer.lines)
    start_at(page)
    expect(page.get_by_role("link", name="Wheel lathe").first).to_be_visible()
    offer(page, text)
    expect(page.get_by_text("Nothing in this file is new here.")).to_be_visible()


def test_an_archive_is_never_opened(page: Page) -> None:
    expect(page.get_by_role("button", name="Add your first machine")).to_be_visible()
    for make in (zip_bomb, gzip_bomb):
        offer(page, make(), "log.txt")
        expect(page.get_by_text("is not an export of a coolant log.")).to_be_visible()
        expect(page.get_by_role("button", name="Add")).to_have_count(0)
    assert taken(page) == rows(page) == []
    press(page, "Back")
    expect(heading(page)).to_have_text("Machines")
