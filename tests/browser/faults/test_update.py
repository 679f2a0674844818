"""A new version on the host, whole or not, and never two in one page (F22 to F24, F30)."""

import re
import shutil
import time
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from tests.browser.faults.builds import build_id, next_build, put_in_place
from tests.browser.faults.host import Host
from tests.browser.handing import hand_over
from tests.browser.phone import Phone, heading, wait_until_ready
from tests.browser.stored import rows
from tests.browser.walk import field, open_machine, start_check
from web.build.bundle import WITHDRAW
from web.build.paths import DIST

pytestmark = pytest.mark.usefixtures("machine_on_phone")

NEW_FILES = """
performance.getEntriesByType("resource")
  .map((one) => one.name).filter((name) => name.includes(".2."))
"""
FORGET = """
async (ending) => {
  for (const name of await caches.keys()) {
    const cache = await caches.open(name);
    for (const request of await cache.keys())
      if (new URL(request.url).pathname.endsWith(ending)) await cache.delete(request);
  }
}
"""
FETCHED = "(name) => fetch(name).then((got) => `status ${got.status}`, (error) => error.name)"


def start(phone: Phone, host: Host) -> Page:
    """The app of the copy, served from the phone by now."""
    page = phone.start()
    page.goto(host.address)
    wait_until_ready(page)
    return page


def assert_build(page: Page, build: str) -> None:
    """The build that the page says it is."""
    page.evaluate("location.hash = '#/about'")
    expect(heading(page)).to_have_text("About this app")
    expect(page.get_by_text(build, exact=True)).to_be_visible()


def test_an_update_with_a_wrong_file_is_told_and_changes_nothing(
    loud_phone: Phone, host: Host, site: Path, tmp_path: Path
) -> None:
    page = start(loud_phone, host)
    put_in_place(next_build(tmp_path / "next"), site)
    (site / "licences.json").write_bytes((DIST / "licences.json").read_bytes())
    page.reload()
    wait_until_ready(page)
    assert_build(page, build_id())
    expect(page.get_by_text("A newer version was not taken")).to_be_visible()
    expect(page.get_by_text("licences.json", exact=True)).to_be_visible()
    assert page.evaluate(NEW_FILES) == []
    page.reload()
    page.evaluate("location.hash = '#/'")
    wait_until_ready(page)


def test_a_whole_update_waits_for_a_yes_and_the_draft_outlives_it(
    loud_phone: Phone, host: Host, site: Path, tmp_path: Path
) -> None:
    new = next_build(tmp_path / "next")
    # A host that lets browsers keep the service worker's script for a year.
    host.fail(headers={"sw.js": {"Cache-Control": "public, max-age=31536000"}})
    page = start(loud_phone, host)
    open_machine(page)
    start_check(page)
    field(page, "How deep").fill("342")
    put_in_place(new, site)
    started_s = time.perf_counter()
    page.goto(host.address)
    page.reload()
    expect(page.get_by_text("New version ready.")).to_be_visible()
    print(f"offered after {time.perf_counter() - started_s:.1f} s")
    assert page.evaluate(NEW_FILES) == []
    assert_build(page, build_id())
    page.goto(host.address)
    page.get_by_role("button", name="Use it now").click()
    # The page loads anew by itself once the new service worker has taken over.
    expect(page.locator("script[src*='.2.']").first).to_be_attached()
    expect(page.get_by_text("New version ready.")).to_have_count(0)
    wait_until_ready(page)
    scripts = page.evaluate("[...document.scripts].map((one) => one.src)")
    assert scripts
    assert all(".2." in script for script in scripts)
    assert_build(page, build_id(site))
    page.goto(host.address)
    open_machine(page)
    # No "Start a check": the one that was begun goes on.
    page.get_by_role("button", name=re.compile("check")).click()
    expect(field(page, "How deep")).to_have_value("342")


def test_a_version_that_is_withdrawn_comes_from_the_host_and_the_log_stays(
    loud_phone: Phone, host: Host, site: Path, tmp_path: Path
) -> None:
    page = start(loud_phone, host)
    put_in_place(next_build(tmp_path / "next"), site)
    shutil.copy(WITHDRAW, site / "sw.js")
    page.reload()
    # The page loads anew by itself once the other service worker has taken over.
    expect(page.locator("script[src*='.2.']").first).to_be_attached()
    expect(page.get_by_role("link", name="Wheel lathe")).to_be_visible()
    scripts = page.evaluate("[...document.scripts].map((one) => one.src)")
    assert scripts
    assert all(".2." in script for script in scripts)
    assert len(rows(page)) == 1
    # A file that is shared meanwhile is not for the host.
    hand_over(page, page.url.split("#")[0], b"a log")
    expect(page.get_by_text("Choose the file")).to_be_visible()


def test_a_lost_file_is_mended_only_with_its_own_content(
    loud_phone: Phone, host: Host, site: Path
) -> None:
    page = start(loud_phone, host)
    own = (site / "licences.json").read_bytes()
    (site / "licences.json").write_bytes(own + b"\n")
    page.evaluate(FORGET, "licences.json")
    # Whatever the host has under this name now, it is not this build's.
    assert page.evaluate(FETCHED, "licences.json") == "TypeError"
    page.reload()
    expect(page.get_by_text("a file on this phone is damaged")).to_be_visible()
    assert_build(page, build_id())
    expect(page.get_by_text("damaged: licences.json")).to_be_visible()
    (site / "licences.json").write_bytes(own)
    page.goto(host.address)
    page.reload()
    wait_until_ready(page)
    assert page.evaluate(FETCHED, "licences.json") == "status 200"
