"""Where the app must not store, addresses that mean harm, and labels of other machines."""

import random
from pathlib import Path

import pytest
from playwright.sync_api import Dialog, Playwright, Request, expect

from tests.browser.faults.host import Host
from tests.browser.phone import Phone, heading, wait_until_ready
from tests.browser.practice import get_sump
from tests.browser.server import Server
from tests.browser.stored import entries, rows
from tests.browser.walk import (
    check_until_recipe,
    field,
    open_machine,
    save_check,
    set_up_machine,
    start_check,
)

NAME = "depot.example"
SEED = 49
FRAGMENTS = 1_000
HARM = [
    "javascript:alert(1)", "//evil.example/", "https://evil.example/#m=22222", "data:text/html,x",
    "m=javascript:alert(1)", "m=<img src=x onerror=alert(1)>", "m=%00", "m=%E0%A4%A", "m=",
    "m=22222&m=33333", "/machines/__proto__", "/machines/constructor/dip", "/log/../../x",
    "/machines/new/save", "/%2e%2e/", "m=" + "7" * 5_000, "/practice/<b>", "wifi:S:depot;;",
]  # fmt: skip
VISIT = """
async (fragments) => {
  for (const one of fragments) {
    location.hash = one;
    await new Promise((done) => setTimeout(done, 0));
  }
  await new Promise((done) => setTimeout(done, 500));
}
"""
STORED = "indexedDB.databases().then((all) => all.map((one) => one.name))"
FRAMED = """
() => {
  const frame = document.createElement("iframe");
  frame.src = "./index.html";
  document.body.replaceChildren(frame);
}
"""


def test_plain_http_stores_nothing_says_why_and_calculates(
    playwright: Playwright, host: Host, tmp_path: Path
) -> None:
    rules = f"--host-resolver-rules=MAP {NAME} 127.0.0.1"
    phone = Phone(playwright, tmp_path / "plain", arguments=[rules])
    page = phone.start()
    place = host.address.replace("localhost", NAME)
    page.goto(place)
    assert page.evaluate("isSecureContext") is False
    expect(page.get_by_text("This page was not opened with https")).to_be_visible()
    assert page.evaluate(STORED) == []
    page.goto(f"{place}#/practice")
    get_sump(page, "7")
    expect(page.get_by_role("main")).to_contain_text("mm")
    phone.close()


def test_inside_a_foreign_page_nothing_is_stored(loud_phone: Phone, host: Host) -> None:
    host.fail(sends_headers=False)
    page = loud_phone.start()
    # Any page of a host without headers; that it is the same host makes no difference to the app.
    page.goto(f"{host.address}manifest.en.webmanifest")
    page.evaluate(FRAMED)
    frame = page.frame_locator("iframe")
    expect(frame.get_by_text("This app stands inside another page")).to_be_visible()
    # Frame and page have one address here, so one store.
    assert page.evaluate(STORED) == []


def odd_fragments() -> list[str]:
    """A thousand, with the seed's own luck."""
    chance = random.Random(SEED)
    signs = "/#?&=%:;<>\"'\\. mM7K3F42_-äß\u202e\u0000\u2028"
    odd = ["".join(chance.choices(signs, k=chance.randint(0, 40))) for _ in range(FRAGMENTS)]
    return [*HARM, *odd][:FRAGMENTS]


@pytest.mark.usefixtures("machine_on_phone")
def test_a_thousand_addresses_do_nothing(phone: Phone, server: Server) -> None:
    page = phone.start()
    page.goto(server.address)
    wait_until_ready(page)
    before = rows(page)
    heard: list[str] = []

    def on_dialog(dialog: Dialog) -> None:
        heard.append(dialog.message)
        dialog.dismiss()

    def on_request(request: Request) -> None:
        if not request.url.startswith(server.address):
            heard.append(request.url)

    page.on("dialog", on_dialog)
    page.on("request", on_request)
    page.evaluate(VISIT, odd_fragments())
    assert heard == []
    assert page.url.startswith(server.address)
    assert rows(page) == before
    assert page.evaluate("({}).x === undefined")
    page.evaluate("location.hash = '#/'")
    expect(page.get_by_role("link", name="Wheel lathe")).to_be_visible()


@pytest.mark.usefixtures("machine_on_phone")
def test_a_label_of_another_machine_takes_no_draft_along(phone: Phone, server: Server) -> None:
    page = phone.start()
    page.goto(server.address)
    wait_until_ready(page)
    page.get_by_role("link", name="Add a machine").click()
    set_up_machine(page, {"Name of the machine": "Axle grinder"}, begin=None)
    page.get_by_role("link", name="Give it a short code").click()
    code = page.get_by_text("-", exact=False)
    expect(heading(page)).to_have_text("Code of the machine")
    expect(code.first).to_be_visible()
    label = next(entry["body"]["code"] for entry in entries(page) if "code" in entry["body"])
    page.goto(f"{server.address}#/")
    open_machine(page)
    start_check(page)
    field(page, "How deep").fill("342")
    at_lathe = page.url
    before = rows(page)
    page.goto(f"{server.address}#m={label}")
    expect(heading(page)).to_have_text("Axle grinder")
    page.go_back()
    expect(field(page, "How deep")).to_have_value("342")
    other = page.context.new_page()
    other.goto(f"{server.address}#m={label}")
    expect(heading(other)).to_have_text("Axle grinder")
    check_until_recipe(other, depth="300")
    assert rows(page) == before
    save_check(other)
    page.goto(at_lathe)
    page.reload()
    expect(field(page, "How deep")).to_have_value("342")
    machines = {entry["body"]["machine"]["name"]: entry["machine"] for entry in entries(page)[:2]}
    assert entries(page)[-1]["machine"] == machines["Axle grinder"]
    assert entries(page)[-1]["body"]["dip"]["depth"]["text"] == "300"
