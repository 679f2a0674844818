"""Installs that fail: cut files, no room; the app says so and promises nothing (F21, F29)."""

from pathlib import Path
from typing import Any
from urllib.parse import urlsplit

import pytest
from playwright.sync_api import Page, expect

from tests.browser.faults.builds import listed
from tests.browser.faults.host import Host
from tests.browser.phone import Phone, wait_until_ready
from tests.browser.stored import rows
from tests.browser.walk import set_up_machine

# One install from a page without the app, so that each try takes only as long as its fetches.
INSTALL = """
async () => {
  globalThis.maker ??= trustedTypes.createPolicy("app", { createScriptURL: (url) => url });
  const found = await navigator.serviceWorker.register(maker.createScriptURL("./sw.js"));
  const worker = found.installing ?? found.waiting ?? found.active;
  while (!["redundant", "installed", "activating", "activated"].includes(worker.state))
    await new Promise((done) => worker.addEventListener("statechange", done, { once: true }));
  const state = worker.state;
  if (state !== "redundant") await found.unregister();
  return state;
}
"""
CACHED = "caches.keys().then((all) => Promise.all(all.map((name) => caches.delete(name))))"
UNAVAILABLE = "Works only with internet in this browser window."


def try_install(page: Page) -> str:
    """The state in which the new service worker ends."""
    return str(page.evaluate(INSTALL))


def cuts(size: int) -> list[int]:
    """At nothing, one byte, the half and the last but one."""
    return sorted({0, 1, size // 2, size - 1})


def assert_every_cut_fails(page: Page, host: Host, site: Path, turn: int | None) -> int:
    """Cuts each listed file once, or in every way with ``turn`` None; how many were tried."""
    page.goto(f"{host.address}licences.json")
    tried = 0
    for number, name in enumerate(listed(site)):
        ways = cuts((site / name).stat().st_size)
        for cut in ways if turn is None else [ways[(number + turn) % len(ways)]]:
            host.fail(cut={name: cut})
            assert try_install(page) == "redundant", f"{name} cut to {cut} bytes"
            tried += 1
    return tried


def test_a_cut_file_ends_the_install_and_the_next_start_mends_it(
    loud_phone: Phone, host: Host, site: Path
) -> None:
    page = loud_phone.start()
    tried = assert_every_cut_fails(page, host, site, turn=0)
    print(f"{tried} installs with a cut file, all redundant")
    page.evaluate(CACHED)
    host.fail(cut={"licences.json": 100})
    page.goto(host.address)
    expect(page.get_by_text(UNAVAILABLE)).to_be_visible()
    page.goto(f"{host.address}#/about")
    expect(page.get_by_text("install failed: licences.json")).to_be_visible()
    host.fail()
    page.goto(host.address)
    page.reload()
    wait_until_ready(page)
    # Nothing is left of the caches of installs that failed.
    assert page.evaluate("caches.keys().then((all) => all.length)") == 1


@pytest.mark.nightly
def test_every_file_cut_in_every_way(loud_phone: Phone, host: Host, site: Path) -> None:
    page = loud_phone.start()
    tried = assert_every_cut_fails(page, host, site, turn=None)
    print(f"{tried} installs with a cut file, all redundant")
    host.fail()
    assert try_install(page) != "redundant"


def test_a_damaged_copy_in_the_browsers_cache_fails_one_install_only(
    loud_phone: Phone, host: Host, site: Path
) -> None:
    page = loud_phone.start()
    page.goto(f"{host.address}licences.json")
    (name,) = (one for one in listed(site) if one.startswith("assets/year"))
    host.fail(altered=[name])
    # Kept by the browser for a year, by the header that its name has earned.
    page.evaluate("(name) => fetch(name).then((got) => got.text())", name)
    host.fail()
    assert try_install(page) == "redundant"
    assert try_install(page) != "redundant"


def test_no_room_for_the_files_and_the_log_goes_on(loud_phone: Phone, host: Host) -> None:
    page = loud_phone.start()
    page.goto(f"{host.address}licences.json")
    parts = urlsplit(host.address)
    too_little: dict[str, Any] = {
        "origin": f"{parts.scheme}://{parts.netloc}",
        "quotaSize": 3_000_000,
    }
    page.context.new_cdp_session(page).send("Storage.overrideQuotaForOrigin", too_little)
    page.goto(host.address)
    expect(page.get_by_text(UNAVAILABLE)).to_be_visible()
    set_up_machine(page)
    assert len(rows(page)) == 1
