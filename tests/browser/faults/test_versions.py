"""One build, whatever is asked of it: links, a stopped service worker, time, foreign parts."""

import re
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from tests.browser.faults.builds import FOREIGN_ID, build_id, put_in_place, with_foreign_part
from tests.browser.faults.host import Host
from tests.browser.phone import Phone, heading, wait_until_ready
from tests.browser.server import Server
from tests.browser.stored import rows
from tests.browser.walk import check_until_recipe, open_machine, save_check

pytestmark = pytest.mark.usefixtures("machine_on_phone")

PLACES = [
    "", "?x=1", "#/log", "#/machines/no-such", "index.html", "machines/7", "sub/path/x?y=2#/log",
    "%2e%2e/up", "a" * 300, "#m=ZZZZZ",
]  # fmt: skip
NOT_HERE = ["nothing.js", "assets/late.js", "py-000000000000/pyodide.mjs", "_headers", "licences"]
FETCHED = "(name) => fetch(name).then((got) => `status ${got.status}`, (error) => error.name)"
AGED_S = 400 * 86_400


def test_ten_links_and_no_file_that_is_not_there(phone: Phone, server: Server) -> None:
    page = phone.start()
    page.goto(server.address)
    wait_until_ready(page)
    server.kill()
    for place in PLACES:
        page.goto("about:blank")
        page.goto(server.address + place)
        expect(heading(page)).to_be_visible()
        script = page.evaluate("document.querySelector('script[src]').src")
        assert script.startswith(f"{server.address}assets/index-"), place
    # An error, never the first page in its place.
    assert [page.evaluate(FETCHED, name) for name in NOT_HERE] == ["TypeError"] * len(NOT_HERE)
    phone.problems.clear()


def test_a_stopped_service_worker_comes_back_offline(phone: Phone, server: Server) -> None:
    page = phone.start()
    page.goto(server.address)
    wait_until_ready(page)
    server.kill()
    session = page.context.new_cdp_session(page)
    session.send("ServiceWorker.enable")
    session.send("ServiceWorker.stopAllWorkers")
    page.reload()
    wait_until_ready(page)
    page.evaluate("location.hash = '#/about'")
    expect(page.get_by_text(build_id(), exact=True)).to_be_visible()
    phone.problems.clear()


def test_four_hundred_days_later_nothing_is_refused_and_the_age_is_told(
    phone: Phone, server: Server
) -> None:
    page = phone.start()
    page.goto(server.address)
    wait_until_ready(page)
    page.evaluate("location.hash = '#/about'")
    since = page.get_by_text("On this phone since").locator("xpath=..").inner_text()
    now_ms = page.evaluate("Date.now()")
    page.clock.set_fixed_time(now_ms / 1000 + AGED_S)
    page.goto(server.address)
    page.reload()
    open_machine(page)
    check_until_recipe(page)
    save_check(page)
    assert len(rows(page)) == 2
    page.evaluate("location.hash = '#/about'")
    assert page.get_by_text("On this phone since").locator("xpath=..").inner_text() == since


def new_phone(phone: Phone, host: Host) -> Page:
    """A phone on which the copy takes the place of what it has."""
    page = phone.start()
    page.goto(host.address)
    offer = page.get_by_role("button", name="Use it now")
    offer.click()
    expect(offer).to_have_count(0)
    expect(heading(page)).to_be_visible()
    return page


@pytest.mark.parametrize("part", ["index", "worker"])
def test_parts_of_two_builds_calculate_nothing(
    loud_phone: Phone, host: Host, site: Path, tmp_path: Path, part: str
) -> None:
    put_in_place(with_foreign_part(tmp_path / "next", part), site)
    page = new_phone(loud_phone, host)
    expect(page.get_by_text("The calculator did not start")).to_be_visible()
    expect(page.get_by_text(re.compile("^Not ready without internet"))).to_be_visible()
    # The log is still there to be read.
    expect(page.get_by_role("link", name="Wheel lathe")).to_be_visible()


def test_a_service_worker_of_another_build_promises_nothing(
    loud_phone: Phone, host: Host, site: Path, tmp_path: Path
) -> None:
    put_in_place(with_foreign_part(tmp_path / "next", "sw"), site)
    page = new_phone(loud_phone, host)
    expect(page.get_by_text("Not ready without internet.")).to_be_visible()
    page.evaluate("location.hash = '#/about'")
    expect(page.get_by_text(f"files are of build {FOREIGN_ID}")).to_be_visible()
